"""Benchmarks: `make bench`, never part of the tests."""

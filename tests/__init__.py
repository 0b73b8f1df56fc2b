"""The tests mirror the package; tests/outside/ holds the checks against published sources."""

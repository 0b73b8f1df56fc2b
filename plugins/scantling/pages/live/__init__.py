"""The plan page that answers a reader: the engine in their browser, the controls, the shopping trip.

`session` and what it imports run in the browser; the rest is for the build.
"""

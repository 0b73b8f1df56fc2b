"""The validator of HTML that the tests hold the site to.

python -m tools.validator      fetches it once into the user's cache
"""

from __future__ import annotations

import sys

from tools.npm_tool import NpmTool

VALIDATOR = NpmTool("html-validate", "10.17.0", "bin/html-validate.mjs")
"""Newest that runs on Node.js 20."""

if __name__ == "__main__":
    VALIDATOR.fetch()
    sys.exit(0)

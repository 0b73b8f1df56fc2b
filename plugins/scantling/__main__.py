"""`python -m scantling` is the same as the command `scantling`."""

import sys

from scantling.cli import main

if __name__ == "__main__":
    sys.exit(main())

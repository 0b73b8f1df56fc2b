# Everything runs in .venv/, which the first command makes from any Python 3.11 or newer.

# the first Python on the PATH that is new enough and can make an environment; `make PYTHON=...` names another
PYTHON ?= $(shell for p in python3 python3.13 python3.12 python3.11 python3.14 python; do \
	"$$p" -c '$(FITS)' 2>/dev/null && echo "$$p" && break; done)
FITS := import ensurepip, sys; sys.exit(sys.version_info < (3, 11))
PY := .venv/bin/python

.DEFAULT_GOAL := help
.PHONY: help site serve test check format bench docs lock clean python venv venv-dev chromium

help: ## show what there is to make
	@grep -E '^[a-z-]+:.*## ' $(MAKEFILE_LIST) | sed -E 's/^([a-z-]+):.*## /  make \1\t/' | expand -t 18

site: venv ## build the catalog into site/
	@$(PY) -m tools.live site
	@$(PY) -m tools.site

serve: venv ## live preview at http://127.0.0.1:8000/ (ARGS="-a localhost:9000" goes to mkdocs serve)
	@$(PY) -m tools.live site
	@$(PY) -m mkdocs serve --dirty $(ARGS)

test: venv-dev chromium ## lint, types and every test (ARGS="-k name" goes to pytest)
	@$(PY) -m tools.live test
	@$(PY) -m tools.validator
	@$(PY) -m tools.gate test $(ARGS)

check: venv-dev ## lint and types, and the five longest functions
	@$(PY) -m tools.gate check

format: venv-dev ## let ruff set the code and mend what it can
	@$(PY) -m ruff check --fix .; $(PY) -m ruff format .

bench: venv-dev ## run the benchmarks (ARGS="name", DATA=folder of published instances)
	@$(PY) -m tests.bench $(ARGS) $(if $(DATA),--data "$(DATA)")

docs: venv-dev ## write the pages of docs/ that are made from the code
	@$(PY) -m tests.outside
	@$(PY) -m tools.reference

lock: venv-dev ## write the versions now installed to tools/constraints.txt
	@$(PYTHON) -m tools.bootstrap lock

clean: ## remove all that was made, .venv/ included
	rm -rf .venv .cache site out dist build .pytest_cache .mypy_cache .ruff_cache .hypothesis
	find plugins tests tools -name __pycache__ -type d -prune -exec rm -rf {} +

python:
	@"$(PYTHON)" -c '$(FITS)' 2>/dev/null || { echo "Python 3.11 or newer with its venv module is needed." >&2; \
	echo "Install it (Debian: apt-get install python3-venv), or name one: make PYTHON=/path/to/python3" >&2; exit 1; }

venv: python
	@$(PYTHON) -m tools.bootstrap run

venv-dev: python
	@$(PYTHON) -m tools.bootstrap dev

chromium: venv-dev
	@$(PY) -m tools.chromium

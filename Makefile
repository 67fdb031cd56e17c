# The same few commands for a shop, for a developer and for CI. Each sets up what it needs; `make` alone lists them.
#
# Everything is installed into .venv from requirements.txt, and nothing that this file does not name is fetched. To use
# another Python: make site PYTHON=python3.12

SHELL := /bin/bash
.SHELLFLAGS := -eu -o pipefail -c
.DEFAULT_GOAL := help

PYTHON ?= python3
BOOK ?= kb
VENV := .venv
RUN := $(VENV)/bin/python
READY := $(VENV)/.ready
PACKAGES := $(VENV)/.packages

# The publishing engine's notice about its own future is not ours to show in a shop.
export NO_MKDOCS_2_WARNING := 1
export PIP_DISABLE_PIP_VERSION_CHECK := 1
export PYTHONUTF8 := 1
export LC_ALL := C.UTF-8

# An environment remembers the folder it was made in, so a folder that was moved or copied gets a new one.
ifneq ($(wildcard $(PACKAGES)),)
ifneq ($(file <$(PACKAGES)),$(CURDIR))
$(shell rm -f '$(PACKAGES)')
endif
endif

.PHONY: help
help: ## list these commands
	@sed -nE 's/^([a-z]+):.*## (.*)/make \1\t\2/p' $(firstword $(MAKEFILE_LIST)) | expand -t 14

$(PACKAGES): requirements.txt
	@command -v $(PYTHON) >/dev/null || { echo "There is no $(PYTHON) on this machine. Install Python 3.11 or newer, then run this again."; exit 1; }
	@$(PYTHON) -c 'import sys; sys.exit(sys.version_info < (3, 11))' || { \
	  echo "$(PYTHON) is $$($(PYTHON) -V 2>&1), and bezelbook needs Python 3.11 or newer. Install one, or name it: make site PYTHON=python3.11"; exit 1; }
	@$(PYTHON) -c 'import ensurepip, venv' 2>/dev/null || { \
	  echo "$(PYTHON) came without venv. On Debian or Ubuntu: apt-get install python3-venv. Then run this again."; exit 1; }
	@echo "Setting up .venv from requirements.txt. This happens once, and again when that file changes."
	@$(PYTHON) -m venv --clear $(VENV)
	@$(RUN) -m pip install -qq --require-hashes --requirement requirements.txt || { \
	  echo "The packages could not be fetched: see above. This step, once, needs the network; then run this again."; exit 1; }
	@printf '%s' '$(CURDIR)' > $@

$(READY): $(PACKAGES) pyproject.toml
	@$(RUN) -m pip install -qq --no-deps --no-build-isolation --editable .
	@touch $@

.PHONY: setup
setup: $(READY) ## make .venv and nothing else

BEZELBOOK := $(VENV)/bin/bezelbook

.PHONY: site
site: $(READY) ## check the book and build the site
	@read=0; $(BEZELBOOK) check --book '$(BOOK)' || read=$$?; \
	if [ $$read -ne 0 ] && [ $$read -ne 2 ]; then exit $$read; fi; \
	$(BEZELBOOK) site --book '$(BOOK)'; \
	if [ $$read -eq 2 ]; then \
	  echo "The site is in site/, without the files named above: they could not be read. Mend them, then run make site again."; exit 2; fi
	@echo "The site is in site/. Open site/index.html in a browser: it needs no server and no network."

.PHONY: check
check: $(READY) ## read the book and say what is wrong, contradicted or missing
	@$(BEZELBOOK) check --book '$(BOOK)'

.PHONY: schema
schema: $(READY) ## write schema/ again after a kind changed
	@$(BEZELBOOK) schema

.PHONY: test
test: lint browser ## everything that CI asks: style, types, layers, tests, coverage
	@echo "The tests run in parts, as many at once as there are cores; what each part says is shown when it has ended."
	@rm -rf $(CAME_OUT)
	@$(MAKE) --no-print-directory --keep-going --output-sync=target --jobs="$$(getconf _NPROCESSORS_ONLN)" $(PARTS)
	@$(RUN) -m tests.in_all $(CAME_OUT)
	@echo "Covered by the tests, branch by branch (values, kinds, reasoning and rules must be whole):"
	@$(RUN) -m coverage report --format=total --fail-under=0 | sed 's/$$/ % of everything/'
	@$(RUN) -m coverage report --fail-under=100 \
	  --include='*/bezelbook/values/*,*/bezelbook/kinds/*,*/bezelbook/reasoning/*,*/bezelbook/rules/*' || { \
	  echo "Some of it is not reached by any test: the lines and branches are named above."; exit 1; }
	@echo "Everything holds: style, types, layers, tests and coverage."

# Every test is in one part: it is counted or it is not, and what is not is in a folder of APART or in none of them.
# The longest are begun first. A part is a process of its own, so that no answer kept from a test whose lines are not
# counted can hide lines from one whose lines are, however the parts fall together.
APART := tests/laws tests/simulator
PARTS := tests/laws uncounted counted tests/simulator
CAME_OUT := .came_out
PART = $(RUN) -m pytest --junitxml='$(CAME_OUT)/$(subst /,-,$@).xml'

.PHONY: counted
counted: $(READY)
	@$(PART) -m 'not no_cover' --cov --cov-report=

.PHONY: uncounted
uncounted: $(READY)
	@$(PART) -m no_cover $(APART:%=--ignore=%)

.PHONY: $(APART)
$(APART): $(READY)
	@$(PART) -m no_cover $@

.PHONY: lint
lint: $(READY) ## the quick part of make test: style, types, layers
	@$(RUN) -m ruff check .
	@$(RUN) -m ruff format --check . || { echo "make fmt mends that."; exit 1; }
	@$(RUN) -m mypy
	@$(VENV)/bin/lint-imports --no-logo

.PHONY: browser
browser:
	@if [ -n "$${BEZELBOOK_CHROMIUM:-}" ] || command -v chromium >/dev/null; then :; \
	elif [ "$$(id -u)" = 0 ] && command -v apt-get >/dev/null; then \
	  echo "Installing Debian's chromium for the browser tests."; \
	  export DEBIAN_FRONTEND=noninteractive; \
	  { apt-get update -qq && apt-get install -y -qq --no-install-recommends chromium fonts-liberation >/dev/null; } || \
	    echo "That did not work, so the browser tests are going to fail."; \
	else \
	  echo "The browser tests need Chromium and are going to fail without it. On Debian: apt-get install chromium."; \
	  echo "Where it has another name or place: BEZELBOOK_CHROMIUM=/path/to/it make test"; \
	fi

.PHONY: fmt
fmt: $(READY) ## mend the style where a machine can
	@$(RUN) -m ruff check --fix-only --quiet .
	@$(RUN) -m ruff format .

.PHONY: bench
bench: $(READY) ## speeds as ratios, and made-up shops in which no firm answer may be wrong; SEED=... makes them again
	@$(RUN) -m tests.bench $(SEED)

.PHONY: fuzz
fuzz: $(READY) ## the tests of laws, with new made-up cases and many more of them
	@$(RUN) -m pytest --hypothesis-profile=long tests/laws
	@echo "No law was broken."

.PHONY: audit
audit: $(READY) ## is what is installed what the lock names, and does it fit together
	@$(RUN) -m pip check
	@diff --label 'requirements.txt' --label 'installed' -U0 \
	  <(sed -nE 's/^([a-z0-9.-]+==[^ ]+).*/\1/p' requirements.txt | sort) \
	  <($(RUN) -m pip freeze --all --exclude-editable | tr 'A-Z_' 'a-z-' | sort)
	@echo "What is installed is what requirements.txt names, and it fits together."

.PHONY: lock
lock: $(READY) ## write requirements.txt again after pyproject.toml changed; newer versions with UPGRADE=--upgrade
	@CUSTOM_COMPILE_COMMAND='make lock' $(VENV)/bin/pip-compile --quiet $(UPGRADE) --generate-hashes --allow-unsafe \
	  --no-strip-extras --no-emit-options --all-build-deps --extra dev --output-file requirements.txt pyproject.toml
	@echo "requirements.txt is written. The next command installs from it."

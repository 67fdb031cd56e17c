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
	@$(RUN) -m pip install -qq --require-hashes --requirement requirements.txt
	@printf '%s' '$(CURDIR)' > $@

$(READY): $(PACKAGES) pyproject.toml
	@$(RUN) -m pip install -qq --no-deps --no-build-isolation --editable .
	@touch $@

.PHONY: setup
setup: $(READY) ## make .venv and nothing else

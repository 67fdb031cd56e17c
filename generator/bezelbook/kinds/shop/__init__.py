"""The shop itself."""

"""Interface modules."""

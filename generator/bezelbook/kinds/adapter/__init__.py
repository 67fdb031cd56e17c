"""Wiring adapters."""

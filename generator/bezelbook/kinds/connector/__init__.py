"""Connectors."""

"""Mounts."""

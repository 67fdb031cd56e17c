"""Speakers."""

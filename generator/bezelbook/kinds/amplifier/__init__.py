"""Amplifiers."""

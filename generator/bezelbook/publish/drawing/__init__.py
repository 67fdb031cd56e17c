"""Drawings to scale, made of numbers that can be read back from them."""

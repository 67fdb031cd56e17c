"""Pieces that come off: what lies over what, what holds them, what it takes."""

"""Questions that nobody could answer."""

"""Head units."""

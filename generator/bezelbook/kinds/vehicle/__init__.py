"""Vehicle platforms."""

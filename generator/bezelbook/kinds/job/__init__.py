"""Jobs to come."""

"""What gets used up, and tools."""

"""What to offer when a wish does not go in: another thing, mount or place, or to keep what is there."""

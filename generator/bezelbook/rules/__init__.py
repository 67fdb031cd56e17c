"""The rules by which the book checks itself, a fault a file."""

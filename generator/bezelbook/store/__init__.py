"""The only code that reads or writes the book."""

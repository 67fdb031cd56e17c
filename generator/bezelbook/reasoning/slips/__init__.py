"""Numbers that arithmetic explains better than the trade does, in every record."""

"""What became of what the team settled."""

"""What the team settled."""

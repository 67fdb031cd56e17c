"""What lies on the shelf."""

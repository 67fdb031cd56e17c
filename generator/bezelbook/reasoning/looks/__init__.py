"""What is worth looking at next: how much each look would settle, for how often it is asked and how long it takes."""

"""What comes off before what, and in which order, as the notes of a vehicle together have it."""

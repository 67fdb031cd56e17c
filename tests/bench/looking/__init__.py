"""How many minutes of looking it takes until half of what was open is settled, by which look is taken first."""

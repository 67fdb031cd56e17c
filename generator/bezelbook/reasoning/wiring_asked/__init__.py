"""Which pieces of wiring a job takes, asked in words or as plain data, and the whole answer as plain data."""

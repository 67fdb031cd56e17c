"""A screen that stands off the dash over the controls near its opening: what it covers, however it is set."""

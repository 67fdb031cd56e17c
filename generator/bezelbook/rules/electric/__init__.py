"""Rules about what is electric: loads, resistors, fuses, factory amplifiers."""

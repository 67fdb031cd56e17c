"""Loads, dissipation, current, wire and fuses: exact fractions of plain units, and never a value that nobody proved."""

"""Rules about wiring: what cavities carry, what adapters pass and what still works afterwards."""

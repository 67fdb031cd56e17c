"""What is left behind in a car's wiring: what works, how modules are set, and what no note may tell."""

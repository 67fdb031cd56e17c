"""What pages show of a car's wiring: plugs, the chain for each job, what is kept, what an adapter is right for."""

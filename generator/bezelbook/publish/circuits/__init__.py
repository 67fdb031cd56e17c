"""What pages show of a car's wiring: its plugs, the chain for each job, what is kept, and what an adapter is right for."""

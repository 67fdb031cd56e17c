"""Rules about plugs: which one a place has, and which are easily taken for one another."""

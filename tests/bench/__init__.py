"""How fast the tool is, as ratios within one run; never a test, since machines are noisy."""

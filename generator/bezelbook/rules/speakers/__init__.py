"""Places for speakers: holes, depths, rings, tabs, glass, the other side."""

"""Places for speakers as pages show them: what was read there, what goes in, and which rings would do on each side."""

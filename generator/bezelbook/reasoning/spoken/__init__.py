"""Free words at the counter about a speaker: where, on which side, which one or how large, and how it is fitted."""

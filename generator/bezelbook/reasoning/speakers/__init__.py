"""What goes in at a place for a speaker: both clearances, the hole, spacers and gaskets, screws and bolt patterns."""

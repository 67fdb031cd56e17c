"""What pages say of clips, packs, what gets used up, and minutes."""

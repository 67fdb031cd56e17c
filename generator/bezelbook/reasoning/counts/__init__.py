"""What to have ready for a job: clips and packs, what gets used up, and minutes, from what past jobs wrote back."""

"""What the shop keeps: names, times, what was asked and never answered, what lies about."""

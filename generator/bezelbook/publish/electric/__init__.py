"""What pages say of loads, heat, current, wire and fuses."""

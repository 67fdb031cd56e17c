"""What a car's plugs carry, the pieces that join them to what goes in, what is kept, and what must not be confused."""

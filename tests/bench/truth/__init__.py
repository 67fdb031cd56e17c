"""How much of what is false in a made-up book its rules find, how often they are wrong, and what that costs."""

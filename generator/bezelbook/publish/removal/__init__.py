"""The page of a vehicle that says what comes off first, written so that somebody new to the trade can follow it."""

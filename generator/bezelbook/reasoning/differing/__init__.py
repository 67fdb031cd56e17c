"""What two notes differ in, or leave blank, that would make both of them true."""

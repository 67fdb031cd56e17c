"""Whether any room agrees with some notes as they are written: an oracle that shares nothing with the tool."""

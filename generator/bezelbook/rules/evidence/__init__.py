"""How far notes can be relied on: hearsay, copies, one witness, old ones, blanks that would split them."""

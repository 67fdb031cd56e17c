"""Pure answers, a question a file: nothing here reads a file, a clock or a network."""

"""Knowledge as site files: plain values with a path, a text and the record they came from."""

"""Several readings of one quantity in one state: whether they agree, what they come to, and which one stands apart."""

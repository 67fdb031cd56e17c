"""Notes of one place that cannot all be true: the smallest sets of them, and the arithmetic that would explain one."""

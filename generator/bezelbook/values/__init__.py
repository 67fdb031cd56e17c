"""The words every kind of record shares: quantities, days, ids and the closed word lists."""

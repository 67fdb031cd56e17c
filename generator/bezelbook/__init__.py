"""A vehicle-audio shop's parts-compatibility book: what was seen, what it proves, and what nobody looked at."""

__version__ = "0.1.0"

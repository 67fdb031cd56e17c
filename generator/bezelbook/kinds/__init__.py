"""The kinds of record a book holds, each with its folder and its model."""

from bezelbook.kinds.catalog import KINDS, Kind

__all__ = ["KINDS", "Kind"]

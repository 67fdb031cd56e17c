"""Faces of two rows of three as a person counts them, for every corner, direction and view."""

# Counted from the upper left, by hand; every other corner is one of these turned over.
FROM_UPPER_LEFT: dict[str, tuple[str, ...]] = {
    "row by row": ("123", "456"),
    "column by column": ("135", "246"),
    "rows there and back": ("123", "654"),
    "columns there and back": ("145", "236"),
}
CORNERS = ("upper-left", "upper-right", "lower-left", "lower-right")
VIEWS = ("mating face", "wire entry")


def as_seen(direction: str, corner: str, view: str) -> tuple[str, ...]:
    """The face by hand: turned over at the corner, and once more when it was seen from behind."""
    rows = FROM_UPPER_LEFT[direction]
    rows = rows[::-1] if corner.startswith("lower") else rows
    rows = tuple(row[::-1] for row in rows) if corner.endswith("right") else rows
    return tuple(row[::-1] for row in rows) if view == "wire entry" else rows

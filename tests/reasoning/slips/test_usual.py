"""The limits of the trade's own table (common practice, no source), field by field."""

import pytest

from bezelbook.kinds.record import Record
from bezelbook.reasoning.slips.odd import odd_numbers
from tests.reasoning.making import record

BOX = {"name": "box", "size_class": "double"}
SIX = {"name": "six", "speaker_kind": "coaxial", "nominal": "6 1/2 in"}
FOAM = {"form": "foam", "name": "foam", "foam_kind": "sheet"}
PIN = {"form": "fastener", "name": "pin", "fastener_kind": "fir-tree clip"}


@pytest.mark.parametrize(
    ("folder", "base", "field", "inside", "outside"),
    [
        ("head_units", BOX, "body_depth", ("20 mm", "220 mm"), ("19.9 mm", "221 mm")),
        ("head_units", BOX, "fuse", ("0.5 A", "300 A"), ("0.4 A", "301 A")),
        ("speakers", SIX, "mounting_depth", ("8 mm", "200 mm"), ("7.9 mm", "201 mm")),
        ("speakers", SIX, "cut_out", ("30 mm", "300 mm"), ("29 mm", "301 mm")),
        ("speakers", SIX, "impedance", ("1 ohm", "16 ohm"), ("0.9 ohm", "2 kohm")),
        ("speakers", SIX, "dc_resistance", ("0.8 ohm", "14 ohm"), ("0.7 ohm", "15 ohm")),
        ("supplies", FOAM, "free_thickness", ("0.8 mm", "50 mm"), ("0.7 mm", "51 mm")),
        ("supplies", FOAM, "width", ("3 mm", "50 mm"), ("2 mm", "51 mm")),
        ("supplies", PIN, "shank", ("3 mm", "12 mm"), ("2 mm", "13 mm")),
        ("supplies", PIN, "length", ("6 mm", "60 mm"), ("5 mm", "61 mm")),
        ("mounts", {"name": "ring", "mount_kind": "spacer"}, "thickness", ("3 mm", "60 mm"), ("0.5 mm", "61 mm")),
    ],
)
def test_a_number_is_odd_outside_its_limits_only(
    folder: str, base: dict[str, str], field: str, inside: tuple[str, str], outside: tuple[str, str]
) -> None:
    assert [odd_numbers(_with(folder, base, field, typed)) for typed in inside] == [(), ()]
    assert [odd.field for typed in outside for odd in odd_numbers(_with(folder, base, field, typed))] == [
        field.replace("_", " ")
    ] * 2


def test_what_only_a_bench_note_says_has_the_limits_of_its_part() -> None:
    note = record("notes", "n", {"form": "bench", "part": "box", "readings": [{"of": "body_depth", "reads": "6.5 mm"}]})
    (odd,) = odd_numbers(note)
    assert (odd.path, odd.usual, odd.waits) == (("readings", 0, "reads"), "20 to 220 mm", False)


def _with(folder: str, base: dict[str, str], field: str, typed: str) -> Record:
    made: Record = record(folder, "x", {**base, field: typed})
    return made

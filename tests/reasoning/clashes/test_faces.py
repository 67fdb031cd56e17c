"""Readings that lie the same way apart everywhere look as if they were taken from two faces."""

from bezelbook.reasoning.clashes.faces import other_face
from tests.reasoning.making import record


def depths(name: str, centre: str, corner: str) -> object:
    readings = [
        {"of": "depth", "reads": reads, "zones": [zone], "datum": "sub-dash face"}
        for zone, reads in (("centre", centre), ("lower-left", corner))
    ]
    return record("notes", name, {"form": "measured", "vehicle": "v", "place": "p", "readings": readings})


def test_205_and_150_beside_223_and_168_are_18_apart() -> None:
    found = other_face([depths("a", "205 mm", "150 mm"), depths("b", "223 mm", "168 mm")])  # type: ignore[list-item]
    assert found is not None
    assert (found.why, found.meant) == ("face", "18 mm (0.71 in)")


def test_apart_by_different_amounts_is_no_face() -> None:
    assert other_face([depths("a", "205 mm", "150 mm"), depths("b", "223 mm", "160 mm")]) is None  # type: ignore[list-item]


def test_three_notes_are_no_two_faces() -> None:
    notes = [depths(name, "205 mm", "150 mm") for name in ("a", "b", "c")]
    assert other_face(notes) is None  # type: ignore[arg-type]

"""What an author filled in, read out field by field."""

from typing import Any

import pytest

from bezelbook.reasoning.quote_fields import MOST, Path, fields_said
from tests.reasoning.making import CAR, HOLE, record

METERED = {
    "form": "metered",
    "plug": "square-24",
    "view": "mating face",
    "cavities": [{"cavity": 4, "carries": "constant", "volts": "12.4 V"}, {"cavity": 8, "carries": "ground"}],
}
AFTER = {"form": "after", "times": [{"scope": "bench", "took": "25 min", "first_time": "first time"}]}
SEEN = {"form": "seen", "pieces": ["bezel", {"piece": "vent", "fasteners": [{"kind": "clip", "count": 4}]}]}


def said(content: dict[str, Any], at: Path = ()) -> str:
    state = {} if content["form"] == "bench" else {"vehicle": CAR, "place": HOLE}
    return fields_said(record("notes", "n", content | state), at)


@pytest.mark.parametrize(
    ("content", "line"),
    [
        (METERED, "plug square-24; view mating face; cavities 4 (carries constant, volts 12.4 V), 8 (carries ground)"),
        (AFTER, "times bench (took 25 min, first time)"),
        (SEEN, "pieces bezel, vent (fasteners clip (count 4))"),
        ({"form": "seen", "aerials": [{}]}, "aerials nothing"),
        (
            {"form": "bench", "part": "box", "circuits": {"ground": "passes", "constant": "passes"}},
            "part box; circuits ground: passes, constant: passes",
        ),
    ],
)
def test_each_field_is_said_with_its_label_and_a_piece_by_the_first_thing_it_says(
    content: dict[str, Any], line: str
) -> None:
    assert said(content) == line


def test_the_car_the_author_and_what_was_left_empty_are_not_said() -> None:
    assert said({"form": "seen", "author": "rk", "date": "2026-03-02", "words": "Nothing much.", "near": []}) == ""


def test_a_note_that_fills_in_very_much_is_cut_short_and_says_so() -> None:
    many = {
        "tell": "round vents",
        "plug": "long-20",
        "populated": 14,
        "amplifier": "there",
        "amplifier_where": "left boot",
        "speakers_counted": 6,
        "membrane": "there",
        "grille": "slots",
    }
    assert said({"form": "seen", **many}).count("; ") == MOST
    assert said({"form": "seen", **many}).endswith("; and 2 more")
    six = {name: many[name] for name in list(many)[:MOST]}
    assert said({"form": "seen", **six}).endswith("; speakers counted 6; tell round vents")


def test_with_a_path_only_what_it_leads_to_is_said() -> None:
    pieces = [
        {"piece": "strip", "hooks": "One at the end.", "took": "3 min"},
        {"piece": "tray", "plugs": ["outlet"], "took": "4 min"},
    ]
    content = {"form": "seen", "plug": "long 20", "pieces": pieces}
    assert said(content, ("plug",)) == "plug long 20"
    assert said(content, ("pieces", 1)) == "pieces tray (plugs outlet, took 4 min)"
    assert said(content, ("pieces", 1, "plugs", 0)) == "pieces tray (plugs outlet)"
    assert said(content, ("pieces", 0, "piece")) == "pieces strip"
    whole = "pieces strip (hooks One at the end., took 3 min), tray (plugs outlet, took 4 min)"
    assert said(content, ("pieces",)) == whole
    assert said(content, ("pieces", 7)) == whole, "there is no eighth"
    assert said(content, ("pieces", 2)) == whole, "nor a third"
    assert said(content, ("pieces", "tray")) == whole, "a thing in a list goes by its number"
    assert said(content, ("plug", 0)) == "plug long 20"
    assert said(content, ("pieces", 0, "pull")) == "pieces strip (hooks One at the end., took 3 min)"
    assert said(content, ("vehicle",)) == ""
    assert said(content) == f"plug long 20; {whole}"

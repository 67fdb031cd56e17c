"""All that the trade's own worked examples say must be found is found in their books (common practice, no source)."""

from pathlib import Path

import pytest

from bezelbook.checking import check
from bezelbook.finding import Finding
from bezelbook.kinds import KINDS
from bezelbook.kinds.record import Record
from bezelbook.knowledge_base import knowledge_base
from bezelbook.store.book import load_book

BOOKS = Path(__file__).parents[1] / "books"


def found(name: str, *more: Record) -> list[Finding]:
    return list(check(knowledge_base([*load_book(BOOKS / name).records, *more])).findings)


@pytest.mark.parametrize(
    ("rule", "quotes"),
    [
        ("depth-ladder-reversed", ("c-deeper-they-say", "b-deep-does-not")),
        ("mount-not-said", ("c-deeper-they-say", "e-six-and-a-half")),
        ("split-not-said", ("c-deeper-they-say",)),
        ("unit-slip", ("e-six-and-a-half",)),
        ("copied-job", ("a-short-goes-in", "f-copy-of-a")),
    ],
)
def test_the_worked_opening(rule: str, quotes: tuple[str, ...]) -> None:
    assert [finding.notes for finding in found("worked") if finding.rule == rule] == [quotes]


def test_nothing_but_that_is_argued_over_in_the_worked_opening() -> None:
    assert not [finding for finding in found("worked") if finding.rule.endswith("for-all")]


def test_six_and_a_half_is_read_back() -> None:
    (slip,) = [finding for finding in found("worked") if finding.rule == "unit-slip"]
    assert slip.proposals[0].words.endswith("165.1 mm (6 1/2 in)")


def test_the_right_door_was_only_assumed() -> None:
    (one,) = [finding for finding in found("doors") if finding.rule == "other-side-assumed"]
    assert (one.place, one.notes) == ("front-door-right", ("left-measured",))


def test_a_bracket_of_110_beside_a_speaker_of_156_on_four_holes() -> None:
    said = {"name": "noted bracket", "mount_kind": "bracket", "tabs_in": "127 mm caliper", "tabs_out": "143 mm caliper"}
    holes = {"patterns": [{"state": "ready", "count": 4, "circle": "110 mm caliper"}]}
    bracket = KINDS["mounts"].reader.validate_python({**said, "holes": holes, "id": "noted-bracket"})
    (one,) = [finding for finding in found("doors", bracket) if finding.rule == "spacing-for-circle-of-a-mount"]
    assert "155.6 mm" in one.proposals[0].words


def test_a_speaker_that_fits_only_with_the_tabs_out_asks_where_they_were() -> None:
    note = KINDS["notes"].reader.validate_python(
        {
            "form": "tried",
            "vehicle": "compact-hatch-2",
            "place": "front-door-left",
            "what": "deep-sixty-three",
            "verdict": "goes in",
            "sure": "fitted",
            "mounts": ["tab-bracket"],
            "id": "through-the-bracket",
        }
    )
    assert [finding.notes for finding in found("doors", note) if finding.rule == "tabs-not-said"] == [(note.id,)]

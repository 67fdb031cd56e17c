"""Each line that is offered can be typed as it stands but for the gaps, and states nothing that nobody knows."""

import shlex
from collections.abc import Iterable
from dataclasses import replace
from typing import Any

import pytest

from bezelbook.cli import parser
from bezelbook.cli.decide import decision_of
from bezelbook.finding import Finding, Quote, Sort
from bezelbook.kinds.decision.record import Decision
from bezelbook.kinds.record import Record
from bezelbook.pipeline import Knowledge
from bezelbook.publish.settle_lines import OPEN, Way, likeliest, ways_to_settle
from bezelbook.reasoning.proposal import NEW_SPLIT, Proposal
from bezelbook.values.words import AXES, Axis
from tests.publish.test_monday_page import FOUND
from tests.reasoning import making

METERED = making.record(
    "notes",
    "b-note",
    {
        "form": "metered",
        "vehicle": making.CAR,
        "place": making.HOLE,
        "plug": "the big one",
        "cavities": [{"cavity": 1, "carries": "ground"}],
    },
)
QUOTES = (Quote("a-note", ""), Quote("b-note", ""))


def offered(first: Record, other: Record, *proposals: Proposal, sort: Sort = "conflict") -> list[str]:
    """The lines for two notes of a van that has early and late builds, without what begins and ends each."""
    van = making.vehicle(splits={"build": making.split("early", "late")})
    found = replace(FOUND, key="k", quotes=QUOTES, proposals=proposals)
    ways = ways_to_settle(making.book(van, making.unit(), first, other), found, sort)
    return [way.line.removeprefix("bezelbook decide k ").removesuffix(f' --reason "{OPEN}"') for way in ways]


def axis(name: Axis) -> Proposal:
    return Proposal(name, "words")


def pair(**other: Any) -> tuple[Record, Record]:
    """Two notes of one box; where the other says no more, neither says where the loom was or what mount it had."""
    blank: dict[str, Any] = {"loom": None, "mounts": None}
    return making.tried(**blank), making.tried("b-note", **({"verdict": "does not"} | blank | other))


@pytest.mark.parametrize(
    ("name", "said", "line"),
    [
        ("loom", {"loom": "behind"}, "both-true --differs loom --read a-note loom=aside"),
        ("loom", {"loom": "aside"}, "one-stands --strike a-note"),
        ("glass", {}, "both-true --differs glass --read a-note glass=up --read b-note glass=down"),
        ("build", {"splits": {"build": "late"}}, "both-true --differs build --read a-note splits.build=early"),
        ("mount", {"mounts": ["kit"]}, f'both-true --differs mount --read a-note "mounts={OPEN}"'),
        ("how sure", {"sure": "told"}, "one-stands --strike b-note"),
        ("scope", {}, "no-problem"),
    ],
)
def test_what_must_have_differed_is_written_in_and_what_nobody_knows_is_left_open(
    name: Axis, said: dict[str, Any], line: str
) -> None:
    assert offered(*pair(**said), axis(name))[0] == line


def test_a_reading_is_against_what_it_is_quoted_with() -> None:
    """With the loom aside nothing had more room than the reading, so that the loom explains no yes beside it."""
    tape = making.measured("b-note", making.reading("depth", "100 mm", "centre"), loom="behind")
    first, _ = pair()
    assert offered(first, tape, axis("loom"))[0] == "both-true --differs loom --read a-note loom=aside"
    assert offered(first, making.changed(tape, loom="aside"), axis("loom"))[0] == "one-stands --strike a-note"


def test_where_nobody_looked_everything_is_left_open() -> None:
    said = {"splits": {"build": "late"}}
    assert offered(*pair(**said), axis("build"), sort="gap")[0] == f'both-true --read a-note "splits.build={OPEN}"'
    assert offered(*pair(loom="behind"), axis("loom"), sort="gap")[0] == f'both-true --read a-note "loom={OPEN}"'


def test_a_split_that_the_book_has_not_got_is_given_to_the_vehicle_in_the_same_line() -> None:
    new = Proposal("build", "a change in the run", split=NEW_SPLIT)
    assert offered(*pair(), new)[0] == (
        f'both-true --differs build --new-split {making.CAR} "name{OPEN}" "one{OPEN}=tell{OPEN}" '
        f'"other{OPEN}=tell{OPEN}" --read a-note "splits.name{OPEN}=one{OPEN}" '
        f'--read b-note "splits.name{OPEN}=other{OPEN}"'
    )
    van = making.vehicle()
    anywhere = replace(FOUND, key="k", quotes=QUOTES, proposals=(new,), vehicle="")
    assert not any("--new-split" in way.line for way in ways_to_settle(making.book(van, *pair()), anywhere, "conflict"))
    alone = replace(FOUND, key="k", quotes=QUOTES[:1], proposals=(new,))
    assert not any("--new-split" in way.line for way in ways_to_settle(making.book(van, *pair()), alone, "conflict"))


def test_of_several_splits_only_the_one_is_asked_that_it_turns_on() -> None:
    splits = {"build": making.split("early", "late"), "roof": making.split("low", "high")}
    found = replace(FOUND, key="k", quotes=QUOTES, proposals=(Proposal("build", "the roof", split="roof"),))
    ways = ways_to_settle(making.book(making.vehicle(splits=splits), making.unit(), *pair()), found, "conflict")
    read = [way.line for way in ways if "--read" in way.line]
    assert len(read) == 1
    assert "splits.roof=" in read[0]
    assert "splits.build=" not in read[0]


def test_what_both_say_is_not_asked_again() -> None:
    lines = offered(*pair(), axis("tool"), axis("one is wrong"))
    assert [line.split()[0] for line in lines] == ["one-stands", "one-stands", "go-and-look", "no-problem"]


def test_the_weaker_note_is_the_first_to_be_struck() -> None:
    lines = offered(making.tried(), making.tried("b-note", sure="told", verdict="does not"))
    assert lines[:2] == ["one-stands --strike b-note", "one-stands --strike a-note"]


def test_where_nobody_looked_there_is_no_loser() -> None:
    lines = offered(*pair(), sort="gap")
    assert [line.split()[0] for line in lines] == ["go-and-look", "no-problem"]


def test_a_slip_is_read_as_its_rule_says() -> None:
    proposal = Proposal("unit", "words", ("a-note", "measured_to=to the middle"))
    assert offered(*pair(), proposal, sort="slip")[0] == 'both-true --read a-note "measured_to=to the middle"'


def test_the_list_names_what_is_proposed_and_never_that_it_may_be_left() -> None:
    look, strike = Way("look", "l", proposed=False), Way("strike", "s")
    assert likeliest((look, strike)) == strike
    assert likeliest((look,)) is None


@pytest.mark.parametrize("key", ["plain/key", "two words, and a comma", 'a "quote"', "it's $HOME", "back`tick"])
def test_a_shell_reads_the_key_that_was_meant(key: str) -> None:
    for way in ways_to_settle(making.book(), replace(FOUND, key=key, quotes=()), "conflict", "my book"):
        words = shlex.split(way.line)
        assert words[2] == key
        assert words[words.index("--book") + 1] == "my book"


def filled(line: str) -> str:
    """A line with words in its gaps that each field takes."""
    for field, value in {"plugs": "on", "glass": "up", "tabs": "in", "loom": "aside", "datum": "kit seat"}.items():
        line = line.replace(f"{field}={OPEN}", f"{field}={value}")
    return line.replace(OPEN, "late")


def every(knowledge: Knowledge) -> Iterable[tuple[Finding, Way]]:
    sorts = {rule.name: rule.sort for rule in knowledge.rules}
    for finding in knowledge.findings:
        for way in ways_to_settle(knowledge.book, finding, sorts[finding.rule]):
            yield finding, way


def test_every_line_of_the_worked_example_is_a_command_that_writes_a_decision(worked: Knowledge) -> None:
    """With words in the gaps for the team's own, the command line takes it and its decision is one."""
    lines = list(every(worked))
    assert len(lines) > len(worked.findings)
    for finding, way in lines:
        given = parser().parse_args(shlex.split(filled(way.line))[1:])
        decision = Decision.model_validate({"id": "d", **decision_of(given)})
        assert decision.question == finding.key


def test_every_axis_can_be_proposed() -> None:
    for name in AXES:
        assert offered(*pair(), axis(name))
        assert offered(making.roomy("a-note"), METERED, axis(name))

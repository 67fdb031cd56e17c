"""One more split stands in a vehicle's file, and the rest of it is as it was typed."""

import pytest

from bezelbook.store.decision_file import decision_name, with_split
from bezelbook.store.yaml_text import read_yaml
from bezelbook.values.complaint import Wrong

SPLIT = {"values": {"small": {"tell": "a knob"}, "large": {"tell": "no knob"}}}
HEAD = "name: A car  # ours\nmodel_years: 4\n"
BLOCK = "splits:  # how they differ\n    build:\n        values: {early: {}, late: {}}\n\n"
PLACES = "places:\n  dash: {kind: plain opening, side: centre}\n"
TEXTS = {
    "no splits yet": HEAD + PLACES,
    "nothing below it": HEAD + "splits:\n" + PLACES,
    "an empty one": HEAD + "splits: {}\n" + PLACES,
    "in braces": HEAD + "splits: {build: {values: {early: {}, late: {}}}}\n" + PLACES,
    "line by line": HEAD + BLOCK + PLACES,
    "at the end of the file": HEAD + PLACES + BLOCK,
    "without a last line end": (HEAD + PLACES + BLOCK).rstrip(),
    "with a comment in it": HEAD + BLOCK.replace("    build", "    # seen in year 3\n    build") + PLACES,
}


@pytest.mark.parametrize("text", TEXTS.values(), ids=TEXTS)
def test_the_file_says_what_it_said_and_one_split_more(text: str) -> None:
    before, after = read_yaml(text.encode()), read_yaml(with_split(text, "screen", SPLIT).encode())
    assert after.faults == ()
    assert isinstance(before.value, dict)
    assert after.value == {**before.value, "splits": {**(before.value.get("splits") or {}), "screen": SPLIT}}
    untouched = [line for line in text.splitlines() if not line.startswith("splits")]
    assert [line for line in with_split(text, "screen", SPLIT).splitlines() if line in untouched] == untouched


def test_a_split_that_is_there_is_not_written_over() -> None:
    with pytest.raises(Wrong, match="build"):
        with_split(TEXTS["in braces"], "build", SPLIT)


def test_a_decision_is_named_after_its_question_and_no_two_alike() -> None:
    assert decision_name("unit-slip/hatch-2/dash, no mount", ()) == "unit-slip-hatch-2-dash-no-mount"
    assert decision_name("a/b", {"a-b", "a-b-2"}) == "a-b-3"
    long = decision_name("x" * 200, {"x" * 60})
    assert len(long) <= 64
    assert long.endswith("-2")

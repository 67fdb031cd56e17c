from typing import Any

import pytest

from bezelbook.kinds.note.removal import Fasteners
from bezelbook.reasoning.order.drive import drives_of, drives_said
from tests.rules.case_books import book_of

BOOK = book_of(
    {
        "book": {
            "supplies": {
                "dash-screw": {
                    "form": "fastener",
                    "name": "dash screw",
                    "fastener_kind": "self-tapping screw",
                    "drive": "7 mm hex",
                },
                "some-screw": {"form": "fastener", "name": "some screw", "fastener_kind": "machine screw"},
            }
        }
    }
)


def of(**said: Any) -> set[str]:
    return set(drives_of(BOOK, Fasteners.model_validate(said)))


@pytest.mark.parametrize("words", ["7 mm hex", "7mm hex screw", "9/32 hex", "hex 7", "hex-head 7 mm", "7 hex"])
def test_seven_millimetres_is_spoken_of_in_many_ways(words: str) -> None:
    assert set(drives_said(words)) == {"hex 7"}


@pytest.mark.parametrize("words", ["six-lobe 20", "T20", "t-20 screw", "star 20", "security six-lobe 20"])
def test_so_is_a_six_lobe(words: str) -> None:
    assert set(drives_said(words)) == {"six-lobe 20"}


@pytest.mark.parametrize("words", ["cross 2", "cross screw", "cross-head screws", "cross recess"])
def test_and_a_cross(words: str) -> None:
    assert set(drives_said(words)) == {"cross"}


@pytest.mark.parametrize("words", ["5 mm screw", "grey sail clip", "the one behind the cross-car beam", "M5 x 20"])
def test_a_length_a_clip_or_a_place_is_no_drive(words: str) -> None:
    assert not drives_said(words)


def test_a_half_millimetre_may_be_written_with_a_comma() -> None:
    assert set(drives_said("5,5 mm hex")) == set(drives_said("7/32 hex")) == {"hex 5.5"}


def test_the_record_tells_it_where_the_words_do_not() -> None:
    assert of(kind="dash screw") == {"hex 7"}
    assert of(kind="some screw") == set()
    assert of(kind="a screw of theirs") == set()


def test_the_odd_one_counts_beside_the_others_and_not_alone() -> None:
    assert of(kind="7 mm hex", odd_one="lower left is a six-lobe 20") == {"hex 7", "six-lobe 20"}
    assert of(kind="screws", odd_one="one six-lobe 20") == set()

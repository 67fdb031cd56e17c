from typing import Any

import pytest
from pydantic import ValidationError

from bezelbook.kinds.note.removal import Fasteners, First, Overlap, PieceOff, RemovalSeen, ToolUsed
from bezelbook.kinds.record import Part

PIECE = {"piece": "centre-bezel"}


def off(**fields: Any) -> PieceOff:
    return PieceOff.model_validate({**PIECE, **fields})


def test_a_piece_by_name_is_enough() -> None:
    bezel = off()
    assert (bezel.first, bezel.fasteners, bezel.pull, bezel.safety, bezel.took) == ((), (), (), None, None)


def test_pieces_and_moves_keep_their_order() -> None:
    seen = RemovalSeen.model_validate({"pieces": [{"piece": "upper-strip"}, PIECE]})
    assert [one.piece for one in seen.pieces] == ["upper-strip", "centre-bezel"]
    assert off(pull=["inward", "rearward"]).pull == ("inward", "rearward")


def test_a_piece_a_tool_and_what_comes_first_may_be_a_name_alone() -> None:
    assert RemovalSeen.model_validate({"pieces": ["centre-bezel"]}).pieces == (off(),)
    bezel = off(first=["upper-strip"], tools=["7 mm socket"], fasteners=["white sail clip"])
    assert (bezel.first[0].piece, bezel.first[0].why) == ("upper-strip", None)
    assert (bezel.tools[0].tool, bezel.fasteners[0].kind) == ("7 mm socket", "white sail clip")


def test_a_habit_is_told_from_a_must() -> None:
    first = off(first=[{"piece": "glovebox", "why": "habit"}, {"piece": "upper-strip", "why": "overlap"}]).first
    assert [one.why for one in first] == ["habit", "overlap"]


@pytest.mark.parametrize("field", ["torque", "wait", "procedure"])
def test_a_piece_near_a_restraint_carries_the_word_and_nothing_to_do_about_it(field: str) -> None:
    assert off(safety="restraint near").safety == "restraint near"
    with pytest.raises(ValidationError, match="extra"):
        off(**{field: "whatever"})


@pytest.mark.parametrize(
    ("piece", "wrong"),
    [
        (PieceOff, {}),
        (PieceOff, {"piece": "Centre bezel"}),
        (PieceOff, {**PIECE, "lead_edge": "this one"}),
        (PieceOff, {**PIECE, "pull": "up"}),
        (PieceOff, {**PIECE, "pull": ["hard"]}),
        (PieceOff, {**PIECE, "safety": "airbag"}),
        (PieceOff, {**PIECE, "took": 3}),
        (PieceOff, {**PIECE, "cup": 0}),
        (PieceOff, {**PIECE, "clips_lost": -1}),
        (First, {"why": "habit"}),
        (First, {"piece": "glovebox", "why": "because"}),
        (Fasteners, {"count": 4}),
        (Fasteners, {"kind": "screw", "length": 12}),
        (Overlap, {"piece": "a"}),
        (Overlap, {"piece": "a", "over": "b", "how": "tucks under"}),
        (ToolUsed, {"reach": ["long"]}),
        (ToolUsed, {"tool": "7 mm", "reach": ["far"]}),
    ],
)
def test_a_piece_says_which_value_it_does_not_take(piece: type[Part], wrong: dict[str, Any]) -> None:
    with pytest.raises(ValidationError):
        piece.model_validate(wrong)

from bezelbook.reasoning.order.precedence import NOT_SAID, Before, Shared, habits, musts, shared_screws
from tests.reasoning.order.trim import first, over, seen


def test_whatever_lies_over_overlaps_or_traps_a_piece_is_off_before_it() -> None:
    note = seen(
        "a",
        lies_over=[
            over("a", "b"),
            over("c", "d", how="lies over"),
            over("e", "f", how="overlaps the edge"),
            over("g", "h", how="traps"),
        ],
    )
    assert [(one.first, one.then, *one.why) for one in musts([note])] == [
        ("a", "b", "lies over"),
        ("c", "d", "lies over"),
        ("e", "f", "overlaps the edge of"),
        ("g", "h", "traps"),
    ]


def test_a_piece_that_needs_another_first_comes_after_it_whatever_the_reason_but_habit() -> None:
    ways = [first("z", why, why=why) for why in ("overlap", "reach", "cable", "screw")]
    note = seen("a", pieces=[*ways, first("z", "unsaid", why=None), first("z", "glovebox", why="habit")])
    found = {one.first: one.why for one in musts([note])}
    assert found == {
        "overlap": ("lies over",),
        "reach": ("reach",),
        "cable": ("cable",),
        "screw": ("screw",),
        "unsaid": (NOT_SAID,),
    }
    assert habits([note]) == (Before("glovebox", "z", ("habit",), ("a",)),)


def test_a_pair_is_named_once_with_every_reason_and_everybody_who_says_so() -> None:
    notes = [
        seen("a", lies_over=[over("x", "y")]),
        seen("b", pieces=[first("y", "x", why="reach")]),
        seen("c", pieces=[first("y", "x", why=None)]),
    ]
    [one] = musts(notes)
    assert one == Before("x", "y", ("lies over", "reach"), ("a", "b", "c"))
    assert one.says_why
    [unsaid] = musts(notes[2:])
    assert not unsaid.says_why


def test_a_piece_is_never_before_itself() -> None:
    assert musts([seen("a", lies_over=[over("x", "x")], pieces=[first("y", "y")])]) == ()


def test_pieces_that_share_a_screw_are_a_group_whoever_names_them_in_which_order() -> None:
    notes = [seen("a", shares_screw=["x", "y"]), seen("b", shares_screw=["y", "x"]), seen("c", shares_screw=["x"])]
    assert shared_screws(notes) == (Shared(("x", "y"), ("a", "b")),)


def test_groups_that_share_a_screw_come_by_name_whichever_note_is_read_first() -> None:
    notes = [seen("a", shares_screw=["y", "z"]), seen("b", shares_screw=["p", "q"])]
    assert [one.pieces for one in shared_screws(notes)] == [("p", "q"), ("y", "z")]
    assert [one.pieces for one in shared_screws(notes[::-1])] == [("p", "q"), ("y", "z")]

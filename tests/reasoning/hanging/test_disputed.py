"""An answer hangs on notes when its size lies where they contradict each other."""

from bezelbook.reasoning.hanging.disputed import disputed, hanging_on
from bezelbook.reasoning.hanging.things import things_at
from tests.reasoning import making

MM = 1_000_000
UNITS = [making.unit(f"u{depth}", body_depth=f"{depth} ± 1 mm caliper") for depth in (110, 150, 165, 170, 185)]
YES = making.tried("yes", what="u170")
NO = making.tried("no", what="u150", verdict="does not", reason="depth")


def test_the_answers_between_a_deep_yes_and_a_shallow_no_hang_on_them() -> None:
    """170 went in and 150 did not: 150, 165 and 170 are argued over, 110 and 185 are not."""
    more = [making.tried(f"n{depth}", what=f"u{depth}", verdict="not tried") for depth in (110, 165, 185)]
    book = making.book(*UNITS, YES, NO, *more)
    assert disputed(book, [YES, NO]) == {"depth": (151 * MM, 169 * MM)}
    assert hanging_on(book, things_at(book, making.CAR, making.HOLE), [YES, NO]) == 3


def test_a_thing_of_unknown_size_hangs_on_them_too() -> None:
    book = making.book(*UNITS, YES, NO, making.tried("odd", what="something", verdict="not tried"))
    assert hanging_on(book, things_at(book, making.CAR, making.HOLE), [YES, NO]) == 3


def test_notes_that_agree_leave_what_somebody_asked_about() -> None:
    asked = making.record("questions", "q", {"words": "x", "vehicle": making.CAR, "what": "u185"})
    other = making.record("questions", "r", {"words": "y", "vehicle": making.CAR, "what": "u165"})
    book = making.book(*UNITS, YES, asked, other)
    assert disputed(book, [YES]) == {}
    assert hanging_on(book, things_at(book, making.CAR, making.HOLE), [YES]) == 2
    assert hanging_on(book, things_at(book, "no-car", ""), []) == 1


def test_a_size_that_a_thing_has_not_is_not_argued_over() -> None:
    cone = making.tried("cone", what="cone", sizes={"mounting_depth": "63 ± 1 mm"})
    wide = making.tried("wide", what="w190")
    narrow = making.tried("narrow", what="u150", verdict="does not", reason="width")
    book = making.book(*UNITS, making.unit("w190", body_width="190 ± 1 mm caliper"), wide, narrow, cone)
    assert hanging_on(book, things_at(book, making.CAR, making.HOLE), [wide, narrow]) == 2

"""The trade's trim and the boot of its job sheet, from records: examples worked by hand, common practice, no source."""

from fractions import Fraction
from pathlib import Path

import pytest

from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.knowledge_base import KnowledgeBase, knowledge_base
from bezelbook.reasoning.order.accounts import accounts_of
from bezelbook.reasoning.order.asking import asked_of
from bezelbook.reasoning.order.removal import Removal, removals_at
from bezelbook.store.book import load_book
from tests.reasoning.order.trim import pieces

CAR = "large-sedan-2"


@pytest.fixture(scope="module")
def book(books: Path) -> KnowledgeBase:
    loaded = load_book(books / "trim")
    assert loaded.complaints == ()
    return knowledge_base(loaded.records)


@pytest.fixture(scope="module")
def car(book: KnowledgeBase) -> Vehicle:
    return book.vehicles[CAR]


@pytest.fixture(scope="module")
def boot(book: KnowledgeBase, car: Vehicle) -> Removal:
    [found] = removals_at(book, car, "boot-left")
    return found


def test_the_boot_comes_apart_in_the_order_of_the_sheet(boot: Removal) -> None:
    assert pieces(boot) == [
        "sill-plate",
        "bolster-left",
        "cargo-hook-left",
        "boot-lining-left",
        "module-bracket",
        "receiver-module",
    ]


def test_the_bracket_nuts_are_reached_only_after_the_lining(boot: Removal) -> None:
    bracket = boot.steps[4]
    [reach] = bracket.first
    assert (reach.first, reach.why) == ("boot-lining-left", ("reach",))
    assert set(reach.notes) == {"boot-by-mw", "boot-by-jo"}
    [tool] = bracket.tools
    assert (tool.name, tool.reach, tool.not_here) == ("Ten on a swivel", ("swivel",), ("Powered driver.",))
    [bolts] = bracket.held
    assert (bolts.name, bolts.most) == ("Ten bolt", 3)
    assert [said.what for said in bolts.odd_ones] == ["One goes up behind."]


def test_a_hook_that_one_note_has_is_in_and_asked_about(book: KnowledgeBase, car: Vehicle, boot: Removal) -> None:
    lining = boot.steps[3]
    assert [said.what for said in lining.hooks] == ["A hook along the front edge."]
    asked = [one.what for one in asked_of(book, car, boot)]
    assert "hooks on the left boot lining, in one of two jobs: A hook along the front edge." in asked
    assert "7 or 6 × Push rivet on the left boot lining" in asked
    assert lining.held[0].most == 7


def test_a_copied_job_is_one_job(boot: Removal) -> None:
    lining = boot.steps[3]
    assert (lining.lists, lining.out_of) == (2, 2)
    assert lining.took is not None
    # 9 min and 14 min, the second written down twice.
    assert (lining.took.jobs, lining.took.median) == (2, Fraction(690))


def test_what_only_one_list_has_but_the_lining_asks_for_is_needed(boot: Removal) -> None:
    assert {step.stands for step in boot.steps} == {"needed"}
    assert [step.lists for step in boot.steps] == [1, 1, 1, 2, 2, 2]


def test_the_parts_go_back_as_the_sheet_has_it(boot: Removal) -> None:
    refit = [said.what for step in reversed(boot.steps) for said in step.refit]
    assert refit == ["Plugs before seating.", "Module ground before the lining.", "Seal seated over the lining edge."]


def test_early_has_the_circle_and_late_has_none(book: KnowledgeBase, car: Vehicle) -> None:
    early, late = removals_at(book, car, "dash-centre")
    assert [dict(build)["build"] for build in early.builds] == ["early"]
    [circle] = early.argued
    assert set(circle.pieces) == {"top-strip", "side-panel"}
    assert {note for before in circle.befores for note in before.notes} == {"strip-over-side", "side-over-strip"}
    assert late.argued == ()


def test_the_glovebox_is_a_habit_and_no_must(book: KnowledgeBase, car: Vehicle) -> None:
    _, late = removals_at(book, car, "dash-centre")
    assert pieces(late) == ["climate-panel", "radio-bezel"]
    assert [(one.first, one.then) for one in late.habits] == [("glovebox", "climate-panel")]
    assert "bezel-the-old-way" not in late.notes
    assert [one.note.id for one in accounts_of(book, car).aside] == ["bezel-the-old-way"]


def test_the_shelf_is_a_gap(book: KnowledgeBase, car: Vehicle) -> None:
    [shelf] = removals_at(book, car, "shelf-left")
    assert not shelf.written
    [gap] = asked_of(book, car, shelf)
    assert gap.what == "nobody wrote what comes off first"

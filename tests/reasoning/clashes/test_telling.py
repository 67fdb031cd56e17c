"""A clash as the team reads it."""

from bezelbook.reasoning.clashes.openings import opening_clashes
from bezelbook.reasoning.clashes.telling import (
    blanks_of,
    loss_of,
    path_of,
    proposals_of,
    quoted,
    says_of,
    slip_path,
)
from bezelbook.reasoning.losses import SALE_LOST
from tests.reasoning.clashes.made import CAR, DASH, book, measured, tried, unit

WIDTHS = (182, 183, 181, 182, 183, 181, 182, 173)


def test_a_clash_is_read_aloud_in_a_minute() -> None:
    notes = [measured(f"n{index}", ("width", f"{mm} ± 2 mm")) for index, mm in enumerate(WIDTHS)]
    said = book(*notes)
    (clash,) = opening_clashes(said, CAR, DASH)
    assert says_of(clash.first) == "no one width makes both of these notes true"
    assert len(quoted(clash)) == 6
    assert loss_of(clash) is SALE_LOST
    proposals = proposals_of(said, CAR, DASH, clash.first)
    assert proposals[-1].words == "one of them is wrong: read it again"
    assert len({proposal.words for proposal in proposals}) == len(proposals) <= 6
    assert {slip_path(clash, note) for note in clash.first.notes} == {("readings",)}


def test_blanks_are_proposed_only_where_one_is_blank() -> None:
    units = [unit("deep", "170 ± 1 mm caliper")]
    full, blank = tried("a", "deep", "goes in", plugs="on"), tried("b", "deep", "does not", plugs="on", loom=None)
    said = book(*units, full, blank)
    found = blanks_of(said, said.vehicles[CAR], DASH, (full, blank))  # type: ignore[arg-type]
    assert [one.axis for one in found] == ["loom"]
    assert path_of(full) == ("verdict",)  # type: ignore[arg-type]

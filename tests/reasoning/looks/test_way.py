from collections.abc import Mapping
from fractions import Fraction
from functools import partial

from bezelbook.kinds.record import Record
from bezelbook.reasoning.looks.look import CHASSIS, Promise, Todo
from bezelbook.reasoning.looks.met import Read, Room, Spot
from bezelbook.reasoning.looks.readings import TRIED
from bezelbook.reasoning.looks.way import Bundles, Way, Ways
from bezelbook.reasoning.looks.weighing import Weighed
from bezelbook.reasoning.needs import Need, Needs, needs_of_unit
from bezelbook.values.span import Span, around
from bezelbook.values.words import NINTHS
from tests.reasoning import making

MM = 1_000_000


def todo(what: str, minutes: int) -> Todo:
    return Todo(None, None, (), what, "caliper", minutes, CHASSIS)


def tells(what: str, minutes: int, *spots: str, lengths: tuple[int, ...]) -> Way:
    """A look that reads these spots to a millimetre, as long as its outcome says."""

    def read(number: int) -> Mapping[Spot, Span]:
        return {spot: around(lengths[number] * MM, MM) for spot in spots}

    return Way(todo(what, minutes), read)


def measures(minutes: int, need: Need, lengths: tuple[int, ...]) -> Way:
    """A look at the unit on the bench."""

    def read(needs: Needs, number: int) -> Needs:
        unit = making.unit(**{f"body_{need}": f"{lengths[number]} ± 1 mm caliper"})
        return needs_of_unit(making.book(unit), unit)

    return Way(todo(f"body {need}", minutes), needs=read)


def read_by(ways: Ways, number: int) -> Read:
    told = (way.tells(number) for way in ways if way.tells)
    return Read({spot: span for of in told for spot, span in of.items()})


def bundles(*ways: Way, records: tuple[Record, ...] = (making.unit(),)) -> Bundles:
    base = making.book(*records)
    place = making.place(base)
    needs = needs_of_unit(base, base.head_units["box"])
    room = partial(Room, setting=making.setting(base))
    return Bundles(needs, [[Weighed(needs, room(rooms)) for rooms in place.accounts]], ways, read_by)


# A box of 178 x 100 x 110 and 32 of plug, each ± 1 but for the plug's ± 5: it goes in at 182 and 110, and at 150 deep.
ROOMY = {"width": 190, "height": 120}
WIDE = (182,) * TRIED
DEEP, SHALLOW = 200, 100


def front(*widths: int) -> Way:
    return tells("front", 2, "width", lengths=widths or WIDE)


def depth(minutes: int = 2, *depths: int) -> Way:
    return tells("depth", minutes, *NINTHS, lengths=depths or (DEEP,) * TRIED)


HIGH = making.measured("tape", making.reading("height", "110 ± 1 mm"))


def test_looks_that_settle_it_only_together_share_their_minutes() -> None:
    both = bundles(front(), depth(3), records=(making.unit(), HIGH))
    assert {one.what: promise for one, promise in both.promises()} == {
        "front": Promise(Fraction(0), Fraction(1), frozenset({todo("depth", 3)})),
        "depth": Promise(Fraction(0), Fraction(1), frozenset({todo("front", 2)})),
    }


def test_a_look_that_settles_it_alone_pays_by_its_own_minutes() -> None:
    """The depth is too small in three outcomes: then nobody needs the front."""
    depths = (*(SHALLOW,) * 3, *(DEEP,) * (TRIED - 3))
    both = dict(bundles(front(), depth(2, *depths), records=(making.unit(), HIGH)).promises())
    found = {one.what: promise for one, promise in both.items()}
    assert found["depth"] == Promise(Fraction(3, 7), Fraction(1), frozenset({todo("front", 2)}))
    assert found["front"] == Promise(Fraction(0), Fraction(1), frozenset({todo("depth", 2)}))


def test_what_changes_nothing_is_no_look() -> None:
    useless = tells("height again", 1, "height", lengths=(110,) * TRIED)
    found = {one.what for one, _ in bundles(front(), depth(), useless, records=(making.unit(), HIGH)).promises()}
    assert found == {"front", "depth"}


def test_what_takes_more_minutes_than_it_is_worth_still_pays_a_little() -> None:
    """Six of seven are settled by the front alone; the depth, of 40 minutes, would settle the last as well."""
    widths = (*(170,) * (TRIED - 1), 182)
    found = {
        one.what: promise
        for one, promise in bundles(front(*widths), depth(40), records=(making.unit(), HIGH)).promises()
    }
    assert found["front"] == Promise(Fraction(6, 7), Fraction(6, 7))
    assert found["depth"] == Promise(Fraction(0), Fraction(1), frozenset({todo("front", 2)}))


def test_where_nothing_settles_it_there_is_no_promise() -> None:
    assert list(bundles(front()).promises()) == []


def test_a_look_at_the_unit_counts_with_what_the_opening_reads() -> None:
    blank = making.unit(body_depth=None)
    ways = (depth(2), measures(2, "depth", (110,) * TRIED))
    found = dict(bundles(*ways, records=(blank, making.roomy())).promises())
    assert len(found) == 2
    assert all(one.alone == 0 and one.share == 1 and len(one.others) == 1 for one in found.values())


def test_an_outcome_that_no_note_allows_is_not_counted() -> None:
    """What went in at 110 leaves no depth of 100: only the others count."""
    depths = (*(SHALLOW,) * 4, *(DEEP,) * (TRIED - 4))
    tried = making.tried(plugs="off")
    [promise] = [promise for _, promise in bundles(depth(2, *depths), records=(making.unit(), tried)).promises()]
    assert promise.alone == 1


def test_where_no_outcome_can_be_nothing_is_settled() -> None:
    never = depth(2, *(SHALLOW,) * TRIED)
    assert list(bundles(never, records=(making.unit(), making.tried(plugs="off"))).promises()) == []


def test_accounts_that_see_it_differently_settle_nothing() -> None:
    no = making.tried("no", author="jo", verdict="does not", reason="width")
    argued = (making.unit(), making.roomy(), making.tried("yes", author="rk", plugs="off"), no)
    one = bundles(depth(), records=argued)
    assert len(one.settings[0]) > 1
    assert one.share(frozenset(one.ways)) == 0


def test_a_look_that_pays_better_alone_than_with_all_that_are_worth_it_together_counts_alone() -> None:
    """The front is too small in three outcomes; in the others it takes the depth of the opening and of the unit too."""
    widths = (*(170,) * 3, *(182,) * (TRIED - 3))
    ways = (front(*widths), depth(), measures(2, "depth", (110,) * TRIED))
    found = {
        todo.what: promise for todo, promise in bundles(*ways, records=(making.unit(body_depth=None), HIGH)).promises()
    }
    assert found["front"] == Promise(Fraction(3, 7), Fraction(3, 7))
    assert found["depth"] == Promise(Fraction(0), Fraction(1), frozenset({todo("front", 2), todo("body depth", 2)}))


def test_a_firm_yes_by_one_account_and_a_firm_no_by_another_settle_nothing() -> None:
    def hole(named: str, width: int) -> Record:
        return making.measured(
            named, making.reading("width", f"{width} ± 1 mm"), making.reading("height", "110 ± 1 mm")
        )

    one = bundles(depth(), records=(making.unit(), hole("wide", 190), hole("narrow", 170)))
    [accounts] = one.settings
    read = read_by(frozenset(one.ways), 0)
    met = [(account, account.room.met(one.needs, read)) for account in accounts]
    assert {account.view(one.needs, found) for account, found in met if found} == {True, False}
    assert one.share(frozenset(one.ways)) == 0

"""What is known more exactly settles no less, and what is only printed settles nothing."""

from collections.abc import Iterator
from dataclasses import replace

from tests.laws.oracle import Oracle
from tests.laws.random_worlds import world_of
from tests.laws.records import FIRM, Written
from tests.laws.small_world import Part, Reading, Size, World

BLANK = dict.fromkeys(("width", "height", "depth", "bend"))
SEEDS = range(7_000, 7_400)


def sharper(world: World) -> Iterator[World]:
    """The world with one of its ± read exactly."""
    for index, note in enumerate(world.notes):
        if isinstance(note, Reading) and note.reads.give:
            read = replace(note, reads=Size(note.reads.middle))
            yield replace(world, notes=(*world.notes[:index], read, *world.notes[index + 1 :]))
    for index, part in enumerate(world.parts):
        for name, size in part.sizes.items():
            if size and size.give:
                exact = part.resized({name: Size(size.middle)})
                yield replace(world, parts=(*world.parts[:index], exact, *world.parts[index + 1 :]))


def consistent(world: World) -> bool:
    """Whether all notes of a world can be true together."""
    return len(Oracle(world).largest_sets[0]) == len(world.notes)


def test_a_smaller_plus_minus_never_makes_a_firm_answer_unfirm() -> None:
    kept = 0
    for world in map(world_of, SEEDS):
        for exact in filter(consistent, sharper(world)):
            for rough, fine in zip(Written(world).verdicts(), Written(exact).verdicts(), strict=True):
                assert rough not in FIRM or fine == rough, f"{world}"
                kept += rough in FIRM
    assert kept > 100


def larger(part: Part) -> Part:
    """The same part with every known size one unit larger."""
    return part.resized({name: size and replace(size, middle=size.middle + 1) for name, size in part.sizes.items()})


def firm_only(verdicts: list[str]) -> list[str]:
    """The verdicts, with everything that is neither firm nor argued over as one word."""
    return [word if word in (*FIRM, "argued over") else "open" for word in verdicts]


def test_a_printed_figure_never_carries_a_firm_answer_whatever_it_is() -> None:
    settled = 0
    for world in map(world_of, SEEDS):
        recorded = replace(world, asks=tuple(replace(ask, typed=False) for ask in world.asks))
        grown = replace(recorded, parts=tuple(map(larger, world.parts)))
        one, other = (firm_only([*Written(made, by="printed").verdicts()]) for made in (recorded, grown))
        assert one == other, f"{world}"
        settled += len(one) - one.count("open")
    assert settled > 50


def test_a_blank_size_and_a_printed_one_settle_the_same() -> None:
    for world in map(world_of, SEEDS[:200]):
        recorded = replace(world, asks=tuple(replace(ask, typed=False) for ask in world.asks))
        blank = replace(recorded, parts=tuple(part.resized(BLANK) for part in world.parts))
        printed = firm_only([*Written(recorded, by="printed").verdicts()])
        assert firm_only([*Written(blank).verdicts()]) == printed, f"{world}"

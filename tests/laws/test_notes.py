"""What a further note may change: a true one never turns a firm answer round, a weak one never changes a verdict."""

from dataclasses import replace
from random import Random

import pytest

from bezelbook.knowledge_base import knowledge_base
from bezelbook.reasoning.answer import answer, place_of
from tests.laws.oracle import Oracle
from tests.laws.random_worlds import world_of
from tests.laws.records import FIRM, PLACE, VEHICLE, Written, record, verdict
from tests.laws.small_world import Tried, World

SEEDS = range(6_000, 6_400)


def consistent(world: World) -> bool:
    """Whether all notes of a world can be true together."""
    return len(Oracle(world).largest_sets[0]) == len(world.notes)


def with_kits_named(world: World) -> World:
    """The world whose questions name their kit: a note with another kit would add a way to fit the thing."""
    return replace(world, asks=tuple(replace(ask, kit=ask.kit or world.kits[0].name) for ask in world.asks))


def test_a_firm_answer_stands_whatever_true_strong_notes_are_added() -> None:
    stood = 0
    for world in map(with_kits_named, filter(consistent, map(world_of, SEEDS))):
        final = Written(world).verdicts()
        for count in range(len(world.notes)):
            earlier = Written(replace(world, notes=world.notes[:count])).verdicts()
            for before, after in zip(earlier, final, strict=True):
                assert before not in FIRM or after == before, f"{world}"
                stood += before in FIRM
    assert stood > 100


def test_a_strong_note_that_is_not_true_never_turns_a_firm_answer_into_the_other_one() -> None:
    for world in map(with_kits_named, map(world_of, SEEDS)):
        before = Written(replace(world, notes=world.notes[:-1])).verdicts()
        for one, other in zip(before, Written(world).verdicts(), strict=True):
            assert {one, other} != set(FIRM) or not consistent(replace(world, notes=world.notes[:-1])), f"{world}"


@pytest.mark.parametrize("sure", ["told", "eyeballed", "worked out"])
def test_weak_notes_never_change_a_verdict(sure: str) -> None:
    for seed in SEEDS[:200]:
        world, other = world_of(seed), world_of(seed + 1_000)
        written = Written(world)
        tried = [note for note in (*world.notes, *other.notes) if isinstance(note, Tried)]
        weak = [
            record("notes", f"weak-{number}", written.note(note) | {"sure": sure}) for number, note in enumerate(tried)
        ]
        place = place_of(knowledge_base([*written.records(), *weak]), VEHICLE, PLACE)
        found = [verdict(place, written.question(ask)) for ask in world.asks]
        assert found == written.verdicts(), f"world {seed}"


def test_neither_the_order_of_the_notes_nor_the_names_of_their_files_matter() -> None:
    for seed in SEEDS:
        world, dice = world_of(seed), Random(seed)  # noqa: S311 - shuffling cards needs no cryptography
        names = dice.sample(range(100), len(world.notes))
        notes = [replace(note, name=f"note-{name}") for note, name in zip(world.notes, names, strict=True)]
        dice.shuffle(notes)
        assert Written(replace(world, notes=tuple(notes))).verdicts() == Written(world).verdicts(), f"world {seed}"


def test_an_answer_is_the_same_to_the_letter_whatever_order_the_records_are_read_in() -> None:
    for seed in SEEDS[:100]:
        written, dice = Written(world_of(seed)), Random(seed)  # noqa: S311 - shuffling cards needs no cryptography
        records = written.records()
        book = knowledge_base(records)
        dice.shuffle(records)
        for ask in written.world.asks:
            question = written.question(ask)
            assert answer(knowledge_base(records), question).plain() == answer(book, question).plain()


def test_the_same_note_twice_changes_no_verdict() -> None:
    for world in map(world_of, SEEDS[:200]):
        copies = tuple(replace(note, name=f"{note.name}-copy") for note in world.notes)
        assert Written(replace(world, notes=(*world.notes, *copies))).verdicts() == Written(world).verdicts()

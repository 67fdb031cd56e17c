"""The standard car radio blocks as records of their shape, and as notes of what their contacts carry.

`iso10487_contacts.csv` beside this file has the contacts of ISO 10487 (part 1 is of 1992-11-15) as secondary sources
paraphrase them, each row with how it is known: of the standard itself only the title page was read, and two of those
sources contradict each other on whether it assigns functions at all. Contacts 1 to 3 of block A differ from car to
car; the three chambers of block C are told of in one place only, and their grouping is from memory. Some vehicles have
the constant and the switched contact the other way round: same plug, other function.

`iso10487_places.csv` has where the contacts of blocks A and B lie, as secondary sources draw them: the socket on the
car's loom, looked at from its wires, odd above even. How block C is laid out, nothing that was read says.
"""

import csv
from functools import cache
from pathlib import Path

import pytest

from bezelbook.checking import check
from bezelbook.kinds.note.record import Metered
from bezelbook.knowledge_base import KnowledgeBase, knowledge_base
from bezelbook.publish.drawing.face import face, face_words
from bezelbook.store.book import load_book
from tests.publish.reading_html import Element, parsed

DATA = Path(__file__).parent / "data"
BLOCKS = {"A": "radio-block-a", "B": "radio-block-b"}
SIDES = {"rear right": "right rear", "front right": "right front", "front left": "left front", "rear left": "left rear"}
# The sources' words for a contact, in the shop's.
CIRCUITS = {
    "permanent supply +12 V (memory)": "constant",
    "switched output +12 V for aerial motor/amp (150-300 mA quoted)": "aerial feed",
    "illumination / dimmer input": "illumination",
    "switched supply +12 V (ignition/accessory)": "accessory",
    "ground": "ground",
} | {f"{theirs} {sign}": f"{ours} {sign}" for theirs, ours in SIDES.items() for sign in "+-"}

Contacts = dict[tuple[str, int], str]


def rows(name: str = "contacts") -> list[dict[str, str]]:
    with (DATA / f"iso10487_{name}.csv").open(encoding="utf-8", newline="") as lines:
        return list(csv.DictReader(lines))


def agreed() -> Contacts:
    """What each contact carries by those rows on which several sources agree."""
    known = [row for row in rows() if row["confidence"] in ("high", "medium")]
    return {(BLOCKS[row["chamber"]], int(row["contact"][1:])): CIRCUITS[row["function"]] for row in known}


@cache
def book() -> KnowledgeBase:
    loaded = load_book(Path(__file__).parents[1] / "books" / "iso10487")
    assert loaded.complaints == ()
    return knowledge_base(loaded.records)


def told_of(vehicle: str) -> Contacts:
    """What the notes made on a vehicle say that the contacts of each block carry."""
    notes = [note for note in book().notes_at(vehicle, "dash-centre") if isinstance(note, Metered)]
    return {(note.plug, one.cavity): one.carries for note in notes for one in note.cavities}


@pytest.mark.parametrize(("chambers", "block"), [("A", "a"), ("B", "b"), (("C1", "C2", "C3"), "c")])
def test_a_block_has_a_cavity_for_every_contact(chambers: str | tuple[str, ...], block: str) -> None:
    contacts = [row["contact"] for row in rows() if row["chamber"] in chambers]
    assert book().connectors[f"radio-block-{block}"].cavities == len(contacts)


def test_the_notes_say_of_every_contact_what_several_sources_agree_on_and_nothing_more() -> None:
    assert told_of("as-taught-1") == agreed()
    assert len(agreed()) == 13


def test_what_is_read_and_not_metered_is_only_told() -> None:
    assert {note.sure for note in book().notes.values() if isinstance(note, Metered)} == {"told"}


def test_the_same_plug_carries_other_things_in_another_car() -> None:
    here, there = told_of("as-taught-1"), told_of("exchanged-1")
    exchanged = {(BLOCKS["A"], 4), (BLOCKS["A"], 7)}
    assert {contact for contact in there if there[contact] != here[contact]} == exchanged
    assert {there[contact] for contact in exchanged} == {here[contact] for contact in exchanged}


def test_and_nobody_complains_about_that() -> None:
    assert check(book()).findings == ()
    pointing = [one.id for one in book().pointers_to("connector", BLOCKS["A"]) if one.kind == "note"]
    assert pointing == ["as-taught-block-a", "exchanged-block-a"]


def drawn(block: str) -> Element:
    svg = face(book().connectors[block])
    assert svg is not None
    return parsed(svg)


def numbers_drawn(block: str) -> list[list[str]]:
    """The numbers in the drawing of a block, row by row from the top and from left to right, by where they stand."""
    words = [one for one in drawn(block).all("text") if one.text.isdigit()]
    at = {one.text: (float(one.attributes["y"]), float(one.attributes["x"])) for one in words}
    heights = sorted({y for y, _ in at.values()})
    return [sorted((number for number in at if at[number][0] == y), key=lambda n: at[n][1]) for y in heights]


@pytest.mark.parametrize("chamber", BLOCKS)
def test_a_block_is_drawn_as_its_face_which_is_the_mirror_image_of_what_is_published(chamber: str) -> None:
    published = [row["contacts"].split() for row in rows("places") if row["chamber"] == chamber]
    assert numbers_drawn(BLOCKS[chamber]) == [line[::-1] for line in published]
    assert any("mirror image" in words for words in face_words(book().connectors[BLOCKS[chamber]]))
    contacts = [row["contact"].removeprefix(chamber) for row in rows() if row["chamber"] == chamber]
    assert sorted(number for line in published for number in line) == contacts


def test_of_a_block_whose_rows_nobody_knows_there_is_no_drawing() -> None:
    block = book().connectors["radio-block-c"]
    assert face(block) is None
    assert face_words(block) == ("no drawing: its rows and columns are not looked at",)

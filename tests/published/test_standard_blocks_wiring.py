"""The standard car radio blocks, wired: a lead by the published contact table, in cars that follow it and do not.

`iso10487_contacts.csv` has the contacts of ISO 10487 as secondary sources paraphrase them, each row with how it is
known (see `test_car_radio_connector.py`). Some vehicles have the constant and the switched contact the other way round:
same plug, other function.
"""

from typing import Any

import pytest

from bezelbook.knowledge_base import knowledge_base
from bezelbook.reasoning.circuits.cars import Car, cars_of
from bezelbook.reasoning.circuits.chain import chain
from bezelbook.reasoning.circuits.contents import contents
from bezelbook.reasoning.circuits.jobs import Job
from bezelbook.reasoning.circuits.suits import adapter_suits
from bezelbook.reasoning.circuits.table import table
from tests.published.test_car_radio_connector import agreed, book
from tests.reasoning.making import record

ENDS = {"radio-block-a": "a", "radio-block-b": "b"}


def lead() -> Any:
    """A lead that takes every circuit from its published contact, and was made for no car by name."""
    ways = {
        circuit: {"does": "passes", "between": [ENDS[block], "c"], "cavities": {ENDS[block]: contact}}
        for (block, contact), circuit in agreed().items()
    }
    ends: dict[str, Any] = {end: {"connector": block, "side": "unit side"} for block, end in ENDS.items()}
    content = {
        "name": "Published lead",
        "adapter_kind": "plug-in",
        "ends": ends | {"c": {"ends_in": "leads"}},
        "circuits": ways,
    }
    return record("adapters", "published-lead", content)


def metered(vehicle: str) -> Car:
    """A car in which the meter bears out what is told of it, counted as the blocks are."""
    told = [note for note in book().notes.values() if getattr(note, "vehicle", "") == vehicle]
    notes = [note.model_copy(update={"sure": None, "view": "wire entry", "job": "one"}) for note in told]
    others = [record for kind, records in book().records.items() if kind != "note" for record in records.values()]
    base = knowledge_base([*others, *notes, lead()])
    [car] = cars_of(base, base.vehicles[vehicle], "dash-centre")
    return car


@pytest.mark.parametrize("block", ENDS)
def test_what_is_told_of_a_block_is_said_and_no_more(block: str) -> None:
    [car] = cars_of(book(), book().vehicles["as-taught-1"], "dash-centre")
    held = contents(car, block)
    assert {circuit: one.state for circuit, one in held.items()} == {
        circuit: "said" for (of, _), circuit in agreed().items() if of == block
    }


def test_in_a_car_as_taught_the_lead_feeds_a_radio_from_the_published_contacts() -> None:
    found = chain(metered("as-taught-1"), Job("replace the radio"))
    assert (found.verdict, [one.record.id for one in found.pieces]) == ("complete", ["published-lead"])
    used = {row.circuit for row in table(found) if row.becomes in ("used", "capped")}
    assert used == set(agreed().values())


def test_with_constant_and_accessory_exchanged_the_same_lead_is_wrong_and_not_offered() -> None:
    car = metered("exchanged-1")
    suit = adapter_suits(car, car.book.adapters["published-lead"])
    assert (suit.is_, suit.why) == ("wrong", "it takes constant from cavity 4, and this car has accessory there")
    assert chain(car, Job("replace the radio")).pieces == ()

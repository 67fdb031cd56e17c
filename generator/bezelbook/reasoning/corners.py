"""The room of a place as plain numbers, so that a typed size can be compared without asking the notes again."""

from collections.abc import Iterator
from typing import Any

from bezelbook.reasoning.bounds import STRICT, Either, Leaf, Number, Under, nanometres
from bezelbook.reasoning.cells import Demand, Setting, demands
from bezelbook.reasoning.needs import NEEDS, needs_of_sizes
from bezelbook.reasoning.outlook import clearance
from bezelbook.reasoning.question import Asked
from bezelbook.reasoning.room import Place, Rooms
from bezelbook.reasoning.room_span import room_spans
from bezelbook.values.quantity import read_quantity

# Any body at all: only which spots it asks about matters here.
ANY_BODY = needs_of_sizes({need: read_quantity("1 mm", "length") for need in NEEDS[:2] + NEEDS[4:5]}, None)


def corners(place: Place, asked: Asked) -> dict[str, Any]:
    """For each account and setting: the cells a body meets, how much of each is sure, and every way to fall short.

    Lengths are whole nanometres. `sure` is the largest need that certainly fits, the house clearance taken off where
    only readings carry it; `least` and `most` bound the room; `measured` says whether a reading bounds it on both
    sides. `stack` is the index of the setting's mounts among those asked about. Each leaf is a list of noes; a need
    falls short of one when it reaches the threshold of every cell named.
    """
    return {
        "accounts": [
            {"settings": [_setting(place, rooms, asked, setting) for setting in asked.settings]}
            for rooms in place.accounts
        ]
    }


def body_demands(place: Place, setting: Setting) -> tuple[Demand, ...]:
    """The spots that any body asks about in a setting: width, height, and the depth of each ninth behind the hole."""
    return demands(place.frame, ANY_BODY, setting)[0]


def _setting(place: Place, rooms: Rooms, asked: Asked, setting: Setting) -> dict[str, Any]:
    wanted = body_demands(place, setting)
    leaves = rooms.leaves(setting)
    proven = room_spans(rooms.fitted(), setting, wanted)
    readings = room_spans(rooms.measured(), setting, wanted)
    cells = []
    for demand, room, yes, reading in zip(wanted, room_spans(rooms, setting, wanted), proven, readings, strict=True):
        house = clearance(place.frame, demand.need)
        cells.append(
            {
                "need": demand.need,
                "ninth": demand.ninth,
                "sure": max(yes.least, room.least - house),
                "least": room.least,
                "most": room.most,
                "measured": reading.most is not None and reading.least > demand.shift,
                "clearance": house,
            }
        )
    told: list[list[dict[str, int]]] = []
    for leaf in leaves:
        noes = list(_noes(leaf, wanted))
        if noes not in told:
            told.append(noes)
    return {"stack": asked.stacks.index(setting.stack), "cells": cells, "leaves": told}


def _noes(leaf: Leaf, wanted: tuple[Demand, ...]) -> Iterator[dict[str, int]]:
    reach = [leaf.reach(demand.cell) for demand in wanted]
    seen = []
    for either in leaf.eithers:
        no = _no(leaf, either, wanted, reach)
        if no is not None and no not in seen:
            seen.append(no)
            yield no


def _no(
    leaf: Leaf, either: Either, wanted: tuple[Demand, ...], reach: list[dict[Number, int]]
) -> dict[str, int] | None:
    """One no in terms of what is asked; None when nothing that could be asked would break it."""
    thresholds: dict[str, int] = {}
    for one in either.options:
        limit = _limit(leaf, one)
        if limit is None:
            return None
        if leaf.at(one.cell) >= limit:
            continue
        index = next((index for index, reached in enumerate(reach) if one.cell in reached), None)
        if index is None:
            return None
        # The first whole nanometre that reaches it: any "strictly more" in the limit rounds up.
        at = wanted[index].shift - nanometres(reach[index][one.cell] - limit)
        thresholds[str(index)] = max(at, thresholds.get(str(index), at))
    return thresholds


def _limit(leaf: Leaf, one: Under) -> int | None:
    """The value that an option keeps its cell under, at the largest that its need can be; None when nothing tells."""
    if one.need is None:
        return one.by
    reached = leaf.reach(one.need)
    tops = [top.by - reached[top.cell] for top in _plain_tops(leaf) if top.cell in reached]
    # Below a need that is itself below its top: twice "strictly less", so the first value too many is one lower.
    return one.by + min(tops) - STRICT if tops else None


def _plain_tops(leaf: Leaf) -> Iterator[Under]:
    """The upper bounds that no choice can get around: the only option that the least solution leaves of an either."""
    for either in leaf.eithers:
        left = [one for one in either.options if one.need is not None or leaf.holds(one)]
        if len(left) == 1 and left[0].need is None:
            yield left[0]

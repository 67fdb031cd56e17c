"""Whether a part goes in in every room that the notes still allow, in none, or neither, with what the house leaves."""

from typing import Literal

from bezelbook.reasoning.cells import Demand, Frame, Setting, demands
from bezelbook.reasoning.needs import Need, Needs
from bezelbook.reasoning.room import Rooms

Outlook = Literal["always", "never", "open"]


def outlook(rooms: Rooms, needs: Needs, settings: tuple[Setting, ...]) -> Outlook:
    """Whether a part fits in every room that these notes allow, in none, or neither, over all the settings.

    Notes that allow no room at all settle nothing.
    """
    if not rooms.possible:
        return "open"
    if all(always_fits(rooms, needs, setting) for setting in settings):
        return "always"
    return "open" if any(rooms.takes(needs, setting) for setting in settings) else "never"


def always_fits(rooms: Rooms, needs: Needs, setting: Setting) -> bool:
    """Whether every demand is met for certain, with the house clearance where readings rather than a yes carry it.

    What asks nothing of this opening is not said to fit it.
    """
    sure, plug = demands(rooms.frame, needs, setting)
    wanted = sure + plug
    if not wanted or rooms.refuses(needs, setting, wanted):
        return False
    if not rooms.refuses(needs, setting, [with_clearance(rooms.frame, demand) for demand in wanted]):
        return True
    proven = rooms.fitted()
    return all(
        not rooms.refuses(needs, setting, (with_clearance(rooms.frame, demand),))
        or not proven.refuses(needs, setting, (demand,))
        for demand in wanted
    )


def with_clearance(frame: Frame, demand: Demand) -> Demand:
    """The same demand with the room the house likes to leave."""
    return demand._replace(shift=demand.shift - clearance(frame, demand.need))


def clearance(frame: Frame, need: Need) -> int:
    """The house clearance for a need, in nanometres; a nose needs none of its own beyond the height's."""
    house = frame.book.shop.clearances
    by_need = {"width": house.width, "depth": house.depth, "plug": house.depth}
    return by_need.get(need, house.height).base

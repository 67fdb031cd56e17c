from dataclasses import replace
from typing import Any

from bezelbook.kinds.record import Record
from bezelbook.reasoning.looks.met import Read, Room, Spot
from bezelbook.reasoning.looks.weighing import Weighed
from bezelbook.reasoning.needs import needs_of_unit
from bezelbook.values.span import Span, around
from bezelbook.values.words import NINTHS
from tests.reasoning import making

MM = 1_000_000


def weighed(*records: Record, mounts: tuple[str, ...] = (), **state: Any) -> Weighed:
    base = making.book(*records)
    setting = making.setting(base, *mounts, **state)
    return Weighed(needs_of_unit(base, base.head_units["box"]), Room(making.place(base).accounts[0], setting))


def view(one: Weighed, **read: int) -> bool | None:
    spans: dict[Spot, Span] = {spot.replace("_", "-"): around(length * MM, MM) for spot, length in read.items()}
    found = one.room.met(one.needs, Read(spans))
    assert found is not None
    return one.view(one.needs, found)


DEEP = {ninth.replace("-", "_"): 200 for ninth in NINTHS}


def test_it_goes_in_when_every_demand_is_met_for_certain() -> None:
    # A body of 178 x 100 x 110 with 32 ± 5 of plug, each ± 1.
    one = weighed(making.unit())
    assert view(one, width=182, height=110, **DEEP) is True
    assert view(one, width=182, height=110) is None
    assert view(one, width=180, height=110, **DEEP) is True
    assert view(one, width=179, height=110, **DEEP) is None


def test_one_demand_that_is_certainly_not_met_is_a_no() -> None:
    one = weighed(making.unit())
    assert view(one, width=176) is False
    assert view(one, width=177) is None
    assert view(one, width=182, height=110, **{**DEEP, "lower_left": 100}) is False


def test_a_plug_that_may_leave_anywhere_is_short_only_where_all_are() -> None:
    one = weighed(making.unit(plug_exit=None))
    tight = dict.fromkeys(DEEP, 125)
    assert view(one, width=182, height=110, **tight) is False
    assert view(one, width=182, height=110, **{**tight, "centre": 200}) is None
    assert view(one, width=182, height=110, **DEEP) is True


def test_without_its_plug_the_body_alone_is_asked_about() -> None:
    one = weighed(making.unit(plug_and_bend=None), plugs_on=False)
    assert view(one, width=182, height=110, **DEEP) is True


def test_what_is_not_known_of_the_part_is_open() -> None:
    one = weighed(making.unit(body_depth=None))
    assert view(one, width=182, height=110, **DEEP) is None
    assert view(one, width=170, height=110, **DEEP) is False


def test_what_went_in_elsewhere_in_the_same_place_is_met_whatever_its_size() -> None:
    """The very part went in without its plug: the front and the body are met, however coarsely they are known."""
    coarse = making.unit(body_width="178 ± 4 mm", body_depth="110 ± 9 mm")
    one = weighed(coarse, making.tried(plugs="off"))
    assert one.tried
    assert view(one) is None
    assert view(one, **DEEP) is True
    other = weighed(coarse, making.unit("other"), making.tried(what="other", plugs="off"))
    assert other.tried == ()
    assert view(other, **DEEP) is None


def test_it_asks_for_what_it_is_said_to_ask_for() -> None:
    one = weighed(making.unit())
    found = one.room.met(one.needs, Read({"width": around(182 * MM, MM)}))
    assert found is not None
    wide = replace(one.needs, spans={**one.needs.spans, "width": Span(190 * MM, 191 * MM)})
    assert one.view(wide, found) is False


def test_what_nothing_shows_to_be_met_is_unsure() -> None:
    one = weighed(making.unit(), making.roomy())
    assert {demand.need for demand in one.unsure} == {"depth", "plug"}
    whole = making.measured("wire", making.reading("depth", "205 ± 1 mm"))
    assert weighed(making.unit(), making.roomy(), whole).unsure == frozenset()
    near = making.measured("wire", making.reading("depth", "142 ± 1 mm"))
    assert {(demand.need, demand.ninth) for demand in weighed(making.unit(), making.roomy(), near).unsure} == {
        ("plug", "right")
    }


def test_what_went_in_needs_no_room_left_over_nor_the_very_same_way_of_fitting() -> None:
    """It went in with the loom behind it, so it does with the loom aside, whatever the house likes to leave."""
    shop = making.shop(clearances={"width": "2 mm", "height": "2 mm", "depth": "2 mm"})
    coarse = making.unit(body_width="178 ± 4 mm", body_depth="110 ± 9 mm")
    for loom in ("behind", "aside"):
        one = weighed(shop, coarse, making.tried(plugs="off", loom=loom))
        assert view(one, **DEEP) is True
        assert {demand.need for demand in one.unsure} == {"plug"}


def test_what_went_in_through_a_narrower_hole_does_so_through_a_wider_one() -> None:
    kits = [making.mount(name, presents={"width": f"{mm} ± 1 mm"}) for name, mm in (("narrow", 182), ("wide", 190))]
    coarse = making.unit(body_width="180 ± 15 mm")
    one = weighed(coarse, *kits, making.tried(mounts=["narrow"]), mounts=("wide",))
    assert "width" not in {demand.need for demand in one.unsure}
    assert "width" in {demand.need for demand in weighed(coarse, *kits, making.tried(), mounts=("wide",)).unsure}

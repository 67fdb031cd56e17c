from typing import Any

import pytest
from pydantic import ValidationError

from bezelbook.kinds.job.record import Job

WISH = {"want": "replace", "what": "short-double"}
LEAST = {"id": "may-04", "tag": "may-04", "vehicle": "compact-hatch-2", "wishes": [WISH]}


def job(**fields: Any) -> Job:
    return Job.model_validate({**LEAST, **fields})


def test_a_tag_a_vehicle_and_a_wish_are_enough() -> None:
    bare = job()
    assert (bare.year, bare.splits, bare.must_keep, bare.cutting) == (None, {}, (), None)


@pytest.mark.parametrize("missing", ["tag", "vehicle", "wishes"])
def test_none_of_them_can_be_left_out(missing: str) -> None:
    with pytest.raises(ValidationError, match=missing):
        Job.model_validate({field: value for field, value in LEAST.items() if field != missing})


@pytest.mark.parametrize("field", ["customer", "name", "phone", "plate", "address", "about"])
def test_it_has_no_room_for_a_person(field: str) -> None:
    with pytest.raises(ValidationError, match="extra"):
        job(**{field: "somebody"})


def test_a_wish_may_settle_its_place_and_its_mounts() -> None:
    wish = job(wishes=[{**WISH, "place": "dash-centre", "mounts": ["proud-kit"]}]).wishes[0]
    assert (wish.place, wish.mounts) == ("dash-centre", ("proud-kit",))


@pytest.mark.parametrize(
    ("field", "wrong"),
    [
        ("tag", "Mr. Body"),
        ("vehicle", "his hatch"),
        ("year", 0),
        ("wishes", []),
        ("wishes", [{"what": "short-double"}]),
        ("wishes", [{"want": "buy", "what": "short-double"}]),
        ("must_keep", ["everything"]),
        ("cutting", True),
        ("day", "monday"),
        ("in_hand", ["Short double"]),
    ],
)
def test_a_field_says_which_value_it_does_not_take(field: str, wrong: object) -> None:
    with pytest.raises(ValidationError, match=field):
        job(**{field: wrong})

from typing import Any

from bezelbook.kinds.record import Record
from bezelbook.reasoning.next_best.buying import mounts_with, to_buy
from tests.reasoning import making


def stock(thing: str, **content: Any) -> Record:
    made: Record = making.record("shelf", f"{thing}-here", {"thing": thing, "count": 1, "place": "wall", **content})
    return made


def test_what_lies_on_the_shelf_is_not_bought_and_what_nobody_counted_is() -> None:
    base = making.book(making.unit(), making.unit("deep"), making.mount(), stock("box"), stock("kit", count=0))
    assert to_buy(base, ["box", "deep", None, "kit", "deep"]) == ("deep", "kit")


def test_a_mount_brings_what_it_needs_and_words_stay_as_they_are() -> None:
    base = making.book(making.mount(needs_too=["strap"]), making.mount("strap", mount_kind="rear support"))
    assert list(mounts_with(base, ["kit", '"some kit"'])) == ["kit", "strap", '"some kit"']
    assert to_buy(base, ['"some kit"']) == ('"some kit"',)

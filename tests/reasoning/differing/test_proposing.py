"""What differs comes first, then what one note leaves blank, then what both do; what both say alike is no proposal."""

from bezelbook.reasoning.differing.proposing import what_differs
from bezelbook.reasoning.proposal import Proposal
from tests.reasoning import making


def test_what_both_say_differently_comes_first() -> None:
    first = making.tried("a", mounts=["kit"], loom="aside", tabs="in", cut="nothing", glass="up", plugs="on")
    second = making.tried("b", mounts=None, loom="behind", tabs="in", cut="nothing", glass="up", plugs=None)
    said = what_differs(making.vehicle(), first, second)
    assert said[0] == Proposal("loom", "the loom: aside in a, behind in b")
    assert {one.axis for one in said} == {"loom", "mount", "plugs"}


def test_what_both_leave_blank_comes_last() -> None:
    said = what_differs(None, making.tried("a", tabs=None, glass="up"), making.tried("b", tabs=None), ("tabs", "glass"))
    assert [one.words for one in said] == ["the glass: b does not say", "the tabs: a and b do not say"]


def test_an_axis_that_only_one_of_them_has_is_no_proposal() -> None:
    reading = making.measured("m", making.reading("depth", "205 mm"))
    assert what_differs(None, making.tried("a"), reading, ("datum", "plugs")) == ()

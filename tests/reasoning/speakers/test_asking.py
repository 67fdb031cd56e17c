"""Questions about speakers as plain data."""

from typing import Any

import pytest

from bezelbook.reasoning.asking import read_question
from bezelbook.reasoning.question import Question
from bezelbook.reasoning.speakers.asking import is_speaker_question
from bezelbook.reasoning.speakers.question import SpeakerQuestion
from bezelbook.values.complaint import Wrong
from tests.reasoning.making import length, unit
from tests.reasoning.speakers.doors import CAR, DOOR, book, foam, mount, speaker

OF = book(unit(), foam(), mount("ring", thickness="8 mm caliper"), speaker("named", name="The Good One"))
NOTHING_SAID = '"what" is missing or empty. Write a speaker\'s file name, or sizes such as {"mounting_depth": "63 mm"}.'


def read(**data: Any) -> Any:
    return read_question(OF, {"vehicle": CAR, "place": DOOR, "what": "six", **data}).read


def test_a_speaker_by_its_file_name_or_by_its_name() -> None:
    assert read() == SpeakerQuestion(CAR, DOOR, speaker="six")
    assert read(what="the good one").speaker == "named"


def test_a_state_in_full() -> None:
    state = {"mounts": ["ring"], "tabs": "out", "gasket": "foam", "glass": "up", "cut": "a rib"}
    assert read(state=state, year=2) == SpeakerQuestion(
        CAR, DOOR, year=2, mounts=("ring",), cut="a rib", tabs="out", glass="up", gasket="foam", speaker="six"
    )
    assert read(state={"glass": "down", "gasket": "none"}) == SpeakerQuestion(CAR, DOOR, speaker="six")
    assert read(state={"gasket": ""}).gasket is None


def test_sizes_by_their_long_names_and_by_short_ones() -> None:
    sizes = {"depth": "63 mm", "hole": "140 mm", "front": "12 mm", "flange": "150 mm"}
    found = read(what=sizes)
    assert (found.speaker, dict(found.sizes)) == (
        None,
        {
            "mounting_depth": length("63 mm"),
            "cut_out": length("140 mm"),
            "front_height": length("12 mm"),
            "flange": length("150 mm"),
        },
    )
    assert read(what={"like": "six", "mounting_depth": "63 mm"}).speaker == "six"


def test_every_size_of_a_speaker_may_be_typed() -> None:
    others = ("basket", "basket_short", "cut_out", "cut_out_short", "excursion", "flange_short", "bolt_circle")
    sizes = dict.fromkeys(("mounting_depth", "front_height", "flange", *others), "60 mm")
    assert read(what=sizes).sizes == {name: length("60 mm") for name in sizes}


@pytest.mark.parametrize(
    ("data", "complaint"),
    [
        ({"what": "sixx"}, 'the book has no speaker "sixx". Did you mean "six"?.'),
        ({"what": None}, NOTHING_SAID),
        ({"what": {}}, NOTHING_SAID),
        (
            {"what": {"like": "six"}},
            'no size is given in what. Give at least one, such as {"mounting_depth": "63 mm"}.',
        ),
        ({"what": {"like": "sixx", "depth": "63 mm"}}, 'the book has no speaker "sixx". Did you mean "six"?.'),
        ({"what": {"width": "63 mm"}}, 'there is no "width" in what. Did you mean "depth"?.'),
        ({"what": {"depth": 63}}, 'depth is a bare number, 63. Write "63 mm" or "63 in".'),
        (
            {"what": "box"},
            "box is a head unit, and door-left does not take a box. Ask about a dash opening, or about a speaker here.",
        ),
        ({"state": {"loom": "aside"}}, 'there is no "loom" in state. One of: mounts, tabs, gasket, glass, cut.'),
        ({"state": {"tabs": "off"}}, "tabs is 'off'. Write one of: in, out."),
        ({"state": {"gasket": 3}}, 'gasket is not a name. Write a foam\'s file name, or "none".'),
        ({"state": {"gasket": "foan"}}, 'the book has no foam "foan". Did you mean "foam"?.'),
    ],
)
def test_what_cannot_be_read_says_what_is_wrong_and_what_would_mend_it(data: dict[str, Any], complaint: str) -> None:
    with pytest.raises(Wrong) as wrong:
        read(**data)
    assert f"{wrong.value.what}. {wrong.value.mend}." == complaint


@pytest.mark.parametrize(
    ("what", "kind"),
    [
        ("six", SpeakerQuestion),
        ("box", Question),
        ({"mounting_depth": "63 mm"}, SpeakerQuestion),
        ({"like": "six", "depth": "63 mm"}, SpeakerQuestion),
        ({"depth": "63 mm"}, Question),
    ],
)
def test_a_place_that_takes_both_is_asked_about_what_is_named(what: Any, kind: type) -> None:
    assert isinstance(read(place="seat", what=what), kind)


def test_nothing_at_all_is_no_speaker() -> None:
    with pytest.raises(Wrong, match="Write a head unit"):
        read(place="seat", what=None)


def test_an_opening_is_never_asked_about_a_speaker() -> None:
    assert not is_speaker_question(OF, "plain opening", "six")


def test_a_reading_about_a_speaker_holds_no_question_about_an_opening() -> None:
    found = read_question(OF, {"vehicle": CAR, "place": DOOR, "what": "six"})
    assert found.question is None
    assert found.took == ()


def test_a_bolt_circle_alone_says_nothing_of_whether_it_goes_in() -> None:
    with pytest.raises(Wrong) as wrong:
        read(what={"bolt_circle": "156 mm", "flange": "170 mm"})
    assert wrong.value.what == "bolt_circle, flange says nothing of whether it goes in"
    assert wrong.value.mend == 'Add a size such as {"mounting_depth": "63 mm"}'
    assert read(what={"bolt_circle": "156 mm", "mounting_depth": "50 mm"}).sizes.keys() == {
        "bolt_circle",
        "mounting_depth",
    }


def test_a_foam_by_the_name_on_its_reel() -> None:
    of = book(foam("strip", name="The Soft Strip"))
    data = {"vehicle": CAR, "place": DOOR, "what": "six", "state": {"gasket": "the soft strip"}}
    assert read_question(of, data).read == SpeakerQuestion(CAR, DOOR, gasket="strip", speaker="six")

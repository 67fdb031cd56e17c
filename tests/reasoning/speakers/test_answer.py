"""The whole answer about a speaker."""

from typing import Any, get_type_hints

from bezelbook.kinds.supply.record import Foam
from bezelbook.reasoning.plain import PlainAnswer, PlainFor, PlainNumber
from bezelbook.reasoning.speakers.answer import speaker_answer
from bezelbook.reasoning.speakers.question import SpeakerQuestion
from tests.reasoning.speakers.doors import (
    BUILDS,
    CAR,
    DOOR,
    DOORS,
    SHELF,
    ask,
    book,
    car,
    foam,
    mount,
    roomy,
    shop,
    tried,
)

BRACKET = mount(
    "bracket",
    mount_kind="bracket",
    tabs_in="120 mm caliper",
    tabs_out="140 mm caliper",
    thickness="1 mm caliper",
    needs_too=["ring", "gone"],
    holes={"to_drill": ["one of 4 mm"]},
    cannot_be_undone=["Break out the tabs"],
)
RING = mount("ring", thickness="8 mm caliper", cannot_be_undone=["Glue it"])


def test_an_answer_has_the_keys_that_one_about_an_opening_has() -> None:
    plain = ask(book(roomy())).plain()
    assert tuple(plain) == tuple(get_type_hints(PlainAnswer))
    assert plain["for"].keys() == get_type_hints(PlainFor).keys()
    assert plain["number"] is not None
    assert plain["number"].keys() == get_type_hints(PlainNumber).keys()
    assert ask(book()).plain()["number"] is None


def test_a_whole_answer_as_plain_data() -> None:
    """By hand: the hole leaves 140 less 130, of which the house wants 1; glass and front leave 10 and want none."""
    of = book(shop(width="1 mm"), roomy(), tried(date="2026-01-02"))
    from_the_door = "from the door metal by putty"
    assert ask(of).plain() == {
        "verdict": "goes in",
        "until_settled": None,
        "for": {
            "vehicle": CAR,
            "place": DOOR,
            "splits": {},
            "mounts": [[]],
            "cut": "nothing",
            "loom": "does not apply",
            "plugs": "does not apply",
            "what": "six",
            "words": "six in the door left of the Van, with no mount, no gasket, nothing cut, glass run all the way",
            "tabs": "does not apply",
            "glass": "run all the way down",
            "gasket": "none",
        },
        "number": {
            "need": "basket",
            "where": "the hole",
            "asks": "130 mm (5.12 in)",
            "room": "there is 140 mm (5.51 in) ± 1 mm",
            "to_spare": "10 mm (0.39 in)",
            "words": "basket: it asks 130 mm (5.12 in) at the hole; there is 140 mm (5.51 in) ± 1 mm, "
            "so 10 mm (0.39 in) is left; the house wants 1 mm (0.04 in)",
        },
        "sure": "fitted",
        "witnesses": 1,
        "notes": [
            {
                "note": "n",
                "author": "rk",
                "date": "2026-01-02",
                "sure": "fitted",
                "words": "six: goes in [no mount, nothing cut, glass down, gasket none]",
                "why": "carries the answer",
            },
            {
                "note": "roomy",
                "author": None,
                "date": None,
                "sure": "measured",
                "words": f"cut-out 140 ± 1 mm {from_the_door}; rear depth to glass down 70 ± 1 mm {from_the_door}; "
                f"front clearance 20 ± 1 mm {from_the_door}",
                "why": "carries the answer",
            },
        ],
        "argued": [],
        "unknown": [
            {
                "what": "the worst point of the glass's way was not looked at",
                "look": "putty on the magnet and run the glass, 5 min",
                "changes": "how deep a speaker may be",
            },
            {
                "what": "no figure shows that its cone clears the grille when it plays: its record has no excursion",
                "look": "putty inside the grille, play it loud, 3 min",
                "changes": "how thick a ring may be",
            },
        ],
        "needs": ["restraint near: the vehicle's service information comes first, and a qualified person"],
        "instead": [],
    }


def test_for_exactly_what() -> None:
    splits: dict[str, Any] = {
        "build": {"values": {"early": {}, "late": {}}},
        "body": {"values": {"van": {}, "bus": {}}},
    }
    of = book(car(splits=splits), BRACKET, RING, foam(), roomy())
    found = ask(of, splits={"build": "late"}, mounts=["bracket", "ring"], tabs="out", gasket="foam", cut="a rib")
    said = found.plain()["for"]
    assert said["words"] == (
        "six in the door left of the Van, late, body not known, with bracket and ring, tabs out, foam, a rib cut, "
        "glass run all the way"
    )
    assert (said["splits"], said["mounts"]) == ({"build": "late", "body": "not looked"}, [["bracket", "ring"]])
    assert (said["tabs"], said["glass"], said["gasket"]) == ("out", "run all the way down", "foam")
    assert (said["loom"], said["plugs"], said["what"]) == ("does not apply", "does not apply", "six")


def test_a_question_that_says_little_is_for_what_is_usual() -> None:
    said = ask(book(BRACKET), {"basket": "130 mm"}, glass="up", mounts=["bracket"]).plain()["for"]
    assert said["words"] == "130 mm in the door left of the Van, with bracket, no gasket, nothing cut, glass up"
    assert (said["tabs"], said["glass"], said["gasket"], said["what"]) == ("not looked", "up", "none", "130 mm")
    shelf = ask(book(), where=SHELF).plain()["for"]
    assert (shelf["words"], shelf["tabs"]) == (
        "six in the shelf of the Van, with no mount, no gasket, nothing cut",
        "does not apply",
    )


def test_tabs_matter_as_soon_as_one_of_the_mounts_has_them() -> None:
    made_for = mount(
        "tabbed",
        mount_kind="bracket",
        tabs_in="120 mm caliper",
        tabs_out="140 mm caliper",
        made_for=[{"vehicle": CAR, "place": DOOR}],
    )
    said = ask(book(made_for, RING), mounts=None).plain()["for"]
    assert {("ring",), ("tabbed",)} <= set(map(tuple, said["mounts"]))
    assert said["tabs"] == "not looked"


def test_what_else_it_takes() -> None:
    of = book(BRACKET, RING, roomy())
    assert ask(of, mounts=["bracket"], tabs="out").needs == (
        "bracket",
        "ring with it",
        "drill: one of 4 mm",
        "cannot be undone: Break out the tabs",
        "restraint near: the vehicle's service information comes first, and a qualified person",
    )
    assert "cannot be undone: Break out the tabs" not in ask(of, mounts=["bracket"], tabs="in").needs
    assert "cannot be undone: Glue it" in ask(of, mounts=["ring"]).needs
    assert ask(of, where=SHELF).needs == ()


def test_notes_beside_an_answer_say_why_they_stand_there() -> None:
    notes = [tried("up", glass="up"), tried("told", sure="told"), tried("old"), tried("new", replaces="old")]
    found = ask(book(*notes))
    assert {one.note.id: one.why for one in found.notes} == {
        "new": "carries the answer",
        "up": "same thing, in another state",
        "told": "only told",
        "old": "replaced by new",
    }


def test_what_cannot_be_true_together_is_argued_over() -> None:
    notes = [tried("yes", splits={"build": "late"}), tried("no", verdict="does not", splits={"build": "late"})]
    of = book(car(splits=BUILDS), *notes)
    found = ask(of, splits={"build": "late"})
    assert (found.verdict, found.until_settled) == ("argued over", "does not")
    assert {one.note.id for one in found.argued} == {"yes", "no"}
    assert found.plain()["argued"][0]["words"].startswith("six: ")
    assert ask(of, splits={"build": "early"}).argued == ()


def test_a_condition_says_how_sure_the_yes_would_be() -> None:
    found = ask(book(RING, tried(mounts=["ring"])), mounts=None)
    assert (found.verdict, found.sure, found.witnesses) == ("goes in if", "fitted", 1)
    assert ask(book(tried(cut=None))).sure == "worked out"
    assert ask(book()).sure is None


def test_a_place_that_is_handed_in_need_not_be_read_again() -> None:
    assert speaker_answer(book(roomy()), SpeakerQuestion(CAR, DOOR, speaker="six")).verdict == "goes in"
    assert isinstance(foam(), Foam)


def test_a_place_where_nothing_is_near_needs_no_caution() -> None:
    quiet = car(places={**DOORS, DOOR: {**DOORS[DOOR], "safety": "none"}})
    assert ask(book(quiet, roomy())).needs == ()

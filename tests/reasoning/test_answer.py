"""A whole answer: never a bare yes or no, but for exactly what, by which number, how sure, and what is unknown."""

import json
from typing import Any

import pytest

from bezelbook.reasoning.answer import Answer, answer, place_of
from bezelbook.reasoning.question import Question
from tests.reasoning.making import (
    CAR,
    HOLE,
    ask,
    book,
    measured,
    mount,
    place,
    reading,
    record,
    roomy,
    shop,
    split,
    tried,
    unit,
    vehicle,
)

DEEP = measured("deep", reading("depth", "205 ± 3 mm"), author="rk", date="2026-02-03")
NO = {"verdict": "does not", "sure": "dry-fitted", "reason": "depth"}
BUILDS = vehicle(splits={"build": split("early", "late"), "audio": split("base", bears_on={"subjects": ["plug"]})})
MADE = {"made_for": [{"vehicle": CAR, "place": HOLE}]}


BOX = "box: goes in [no mount, nothing cut, loom aside]"


def why(found: Answer) -> dict[str, str]:
    return {quoted.note.id: quoted.why for quoted in found.notes}


def test_a_yes_says_how_sure_and_how_many_jobs() -> None:
    found = ask(book(unit(), tried("a", job="one"), tried("b", job="two")), "box")
    assert (found.verdict, found.until_settled, found.sure, found.witnesses) == ("goes in", None, "fitted", 2)
    assert why(found) == {"a": "carries the answer", "b": "carries the answer"}


def test_what_is_argued_over_counts_as_a_no_until_it_is_settled() -> None:
    found = ask(book(unit(), tried("yes"), tried("no", **NO)), "box")
    assert (found.verdict, found.until_settled, found.sure, found.witnesses) == ("argued over", "does not", None, 0)
    assert [(one.note.id, one.words, one.why) for one in found.argued] == [
        (
            "no",
            "box: does not, because of depth [no mount, nothing cut, loom aside]",
            "cannot be true together with another",
        ),
        ("yes", BOX, "cannot be true together with another"),
    ]
    assert [(one["note"], one["words"]) for one in found.plain()["argued"]] == [
        (one.note.id, one.words) for one in found.argued
    ]


def test_notes_that_argue_about_another_build_are_not_shown() -> None:
    argued = [tried("yes", splits={"build": "early"}), tried("no", splits={"build": "early"}, **NO)]
    of = book(BUILDS, unit(), *argued, tried("late", splits={"build": "late"}))
    assert ask(of, "box", splits={"build": "late"}).argued == ()
    assert len(ask(of, "box", splits={"build": "early"}).argued) == 2


def test_contrary_notes_are_quoted_where_the_answer_stands_all_the_same() -> None:
    two = [measured("a", reading("depth", "205 ± 3 mm")), measured("b", reading("depth", "170 ± 3 mm"))]
    found = ask(book(unit(), roomy(), *two), "box")
    assert (found.verdict, {quoted.note.id for quoted in found.argued}) == ("goes in", {"a", "b"})


def test_a_condition_ends_the_sentence_and_carries_what_it_would_carry() -> None:
    found = ask(book(BUILDS, unit(), tried(splits={"build": "late"}, job="one")), "box")
    assert (found.verdict, found.needs, found.sure, found.witnesses) == (
        "goes in if",
        ("the build is late",),
        "fitted",
        1,
    )
    assert [one.split for one in found.conditions] == [("build", "late")]
    assert why(found) == {"a-note": "carries the answer"}


def test_a_condition_that_no_question_can_hold_carries_nothing() -> None:
    found = ask(book(unit(), tried(cut=None, job="one")), "box")
    assert (found.verdict, found.sure, found.witnesses) == ("goes in if", "worked out", 0)
    assert [(one.words, one.why) for one in found.notes] == [
        ("box: goes in [no mount, loom aside]", "same thing, in another state")
    ]


def test_where_nobody_has_tried_nothing_is_sure() -> None:
    found = ask(book(unit()), "box")
    assert (found.verdict, found.sure, found.witnesses, found.notes, found.spot) == (
        "nobody has tried",
        None,
        0,
        (),
        None,
    )


def test_weak_notes_and_those_set_aside_are_quoted_beside() -> None:
    notes = [
        tried("told", sure="told"),
        tried("slip", what="x", sizes={"depth": "6 mm"}),
        tried("old"),
        tried("new", replaces="old"),
    ]
    told = ask(book(unit(), *notes), "box").notes
    assert [one.words for one in told if one.note.id == "told"] == [BOX]
    found = why(ask(book(unit(), *notes), "box"))
    assert found["told"] == "only told"
    assert found["slip"].startswith("depth 6 mm is outside the usual")
    assert (found["old"], found["new"]) == ("replaced by new", "carries the answer")


def test_the_same_thing_in_another_state_is_quoted_too() -> None:
    found = ask(
        book(unit(), unit("other"), tried("off", cut="one rib"), tried("other", what="other"), DEEP, roomy()), "box"
    )
    assert why(found)["off"] == "same thing, in another state"
    assert "other" not in why(found)


def test_for_exactly_what_is_said_in_a_sentence() -> None:
    of = book(BUILDS, unit(name="two-high A"), mount("ring", name="the ring"), mount("kit", name="the kit"))
    found = ask(of, "box", splits={"build": "late"}, state={"mounts": ["ring", "kit"]})
    assert found.for_words == (
        "two-high A in the dash centre of the small van, late, with the ring and the kit, "
        "nothing cut, loom aside, plugs on"
    )


def test_what_is_not_known_is_part_of_that_sentence() -> None:
    car = vehicle(
        splits={"build": split("early", "late")},
        places={HOLE: {"kind": "plain opening", "side": "centre", "name": "radio hole"}},
    )
    of = book(car, unit(), mount("a", name="kit A", **MADE), mount("b", name="kit B", **MADE))
    found = ask(of, "box", state={"cut": "one rib", "loom": "behind", "plugs": "off"})
    assert found.for_words == (
        "box in the radio hole of the small van, build not known, with kit A or kit B, "
        "one rib cut, loom behind, plugs off"
    )


def test_a_split_that_bears_on_this_place_alone_is_part_of_it_too() -> None:
    car = vehicle(splits={"build": split("early", "late", bears_on={"places": [HOLE]})})
    found = ask(book(car, unit()), "box")
    assert "of the small van, build not known, with no mount," in found.for_words
    assert found.unknown[0].what == "the build is not known"


def test_what_else_the_mount_needs_is_said_when_one_mount_is_meant() -> None:
    strap = mount("strap", name="rear strap")
    kit = mount(
        "kit",
        name="the kit",
        needs_too=["strap", "not-in-the-book"],
        holes={"to_drill": ["strap: 5.5 mm"]},
        cannot_be_undone=["cut the bridge"],
    )
    of = book(unit(), strap, kit, mount("other"), DEEP, roomy())
    found = ask(of, "box", state={"mounts": ["kit"]})
    assert found.needs == ("the kit", "rear strap with it", "drill: strap: 5.5 mm", "cannot be undone: cut the bridge")
    assert answer(of, Question(CAR, HOLE, unit="box", mounts=("never seen",))).needs == ()
    if_late = book(BUILDS, unit(), kit, strap, tried(splits={"build": "late"}, mounts=["kit"]))
    assert ask(if_late, "box", state={"mounts": ["kit"]}).needs == ("the build is late", *found.needs)


def test_with_several_mounts_to_choose_from_none_is_needed_yet() -> None:
    of = book(unit(), mount("a", **MADE), mount("b", **MADE), DEEP, roomy())
    assert ask(of, "box").needs == ()


@pytest.mark.parametrize(("safety", "said"), [(None, False), ("none", False), ("restraint near", True)])
def test_what_could_hurt_someone_is_said_and_nothing_more(safety: str | None, *, said: bool) -> None:
    hole: dict[str, Any] = {"kind": "plain opening", "side": "centre"} | ({"safety": safety} if safety else {})
    found = ask(book(vehicle(places={HOLE: hole}), unit(), DEEP, roomy()), "box")
    caution = "restraint near: the vehicle's service information comes first, and a qualified person"
    assert found.needs == ((caution,) if said else ())


def test_a_place_that_the_vehicle_does_not_list_can_still_be_answered_for() -> None:
    of = book(unit(), tried(place="roof"))
    found = answer(of, Question(CAR, "roof", unit="box"))
    assert (found.verdict, found.needs) == ("goes in", ())
    assert "in the roof of the small van" in found.for_words


def test_a_place_may_be_handed_in_and_asked_many_times() -> None:
    of = book(unit(), tried(), DEEP)
    here = place(of)
    for question in (Question(CAR, HOLE, unit="box"), Question(CAR, HOLE, unit="box", plugs="off")):
        assert answer(of, question, here).plain() == answer(of, question).plain()
    assert place_of(of, CAR, HOLE).evidence.standing


def test_as_plain_data_it_holds_what_the_command_line_promises() -> None:
    notes = [tried("a", job="one", author="rk", date="2026-02-03", splits={"build": "late"}), tried("t", sure="told")]
    of = book(BUILDS, unit(), *notes, record("notes", "s", {"form": "seen", "vehicle": CAR, "place": HOLE}), DEEP)
    plain = ask(of, "box", splits={"build": "late"}).plain()
    assert list(plain) == [
        *(
            "verdict",
            "until_settled",
            "for",
            "number",
            "sure",
            "witnesses",
            "notes",
            "argued",
            "unknown",
            "needs",
            "instead",
        )
    ]
    assert json.loads(json.dumps(plain)) == plain
    assert plain["for"] == {
        "vehicle": CAR,
        "place": HOLE,
        "splits": {"build": "late"},
        "mounts": [[]],
        "cut": "nothing",
        "loom": "aside",
        "plugs": "on",
        "what": "box",
        "words": ask(of, "box", splits={"build": "late"}).for_words,
    }
    carried, told = plain["notes"]
    assert carried == {
        "note": "a",
        "author": "rk",
        "date": "2026-02-03",
        "sure": "fitted",
        "words": "box: goes in [late, no mount, nothing cut, loom aside]",
        "why": "carries the answer",
    }
    assert (told["sure"], told["author"], told["why"]) == ("told", None, "only told")
    assert plain["unknown"][0].keys() == {"what", "look", "changes"}


def test_what_is_open_is_not_looked_and_sizes_are_asked_by_their_name() -> None:
    deep = [measured(build, reading("depth", "205 ± 3 mm"), splits={"build": build}) for build in ("early", "late")]
    plain = ask(book(BUILDS, *deep), {"depth": "150 mm", "plug": "32 mm"}, state={"plugs": "off"}).plain()
    assert (plain["for"]["splits"], plain["for"]["what"], plain["for"]["plugs"]) == (
        {"build": "not looked"},
        "150 mm x 32 mm",
        "off",
    )
    assert [note["sure"] for note in plain["notes"]] == ["measured", "measured"]


def test_the_number_is_in_both_units_the_shop_s_first() -> None:
    sizes = {"depth": "150 mm", "plug": "32 mm", "exit": "right"}
    number = ask(book(DEEP), sizes).plain()["number"]
    assert number is not None
    assert number == {
        "need": "plug",
        "where": "right",
        "asks": "182 mm (7.17 in)",
        "room": "there is 205 mm (8.07 in) ± 3 mm",
        "to_spare": "23 mm (0.91 in)",
        "words": "plug and body together ask 182 mm (7.17 in) at the right; there is 205 mm (8.07 in) ± 3 mm",
    }
    inches = ask(book(DEEP, shop(units_first="in")), sizes).plain()["number"]
    assert inches == {
        "need": "plug",
        "where": "right",
        "asks": "7.17 in (182 mm)",
        "room": "there is 8.07 in (205 mm) ± 3 mm",
        "to_spare": "0.91 in (23 mm)",
        "words": "plug and body together ask 7.17 in (182 mm) at the right; there is 8.07 in (205 mm) ± 3 mm",
    }


def test_the_number_of_a_no_is_the_one_that_is_certainly_short() -> None:
    rough = measured("m", reading("width", "200 ± 40 mm"), reading("height", "98 ± 1 mm"))
    number = ask(book(unit(), rough), "box").plain()["number"]
    assert number is not None
    assert number["words"] == ("height: it asks 100 mm (3.94 in) ± 1 mm; there is 98 mm (3.86 in) ± 1 mm")


def test_where_only_one_end_of_the_room_is_known_nothing_is_said_to_be_spare() -> None:
    number = ask(book(unit(), tried()), "box").plain()["number"]
    assert number is not None
    assert number["to_spare"] is None
    assert ask(book(unit()), "box").plain()["number"] is None

from typing import Any

from bezelbook.reasoning.wiring_asked.answer import NO_PAIR, wiring_answer
from bezelbook.reasoning.wiring_asked.plain import PlainWiring
from bezelbook.reasoning.wiring_asked.question import JobAsked, WiringQuestion
from tests.reasoning.circuits.a_car import CAR, DASH, DOOR, EVERYTHING, after, book, plug_in, seen, tee, vehicle
from tests.reasoning.circuits.test_two_piece import box, display, van
from tests.reasoning.making import record

LATE = {"build": "late"}


def answered(*records: Any, jobs: tuple[JobAsked, ...] = ("replace the radio",), **content: Any) -> PlainWiring:
    places = (DOOR,) if "speaker lead" in jobs else (DASH,)
    return wiring_answer(book(*records), WiringQuestion(CAR, places, jobs, **content)).plain()


def test_it_says_for_what_it_holds() -> None:
    found = answered(splits=LATE, year=3, jobs=("keep it and amplify", "add a sub"))
    assert found["for"] == "Small van, late, year 3: keep the radio, amplify the fronts or keep the radio, add a sub"
    assert (found["vehicle"], found["splits"]) == (CAR, LATE)
    assert answered()["for"] == "Small van: replace the radio"
    assert [one["job"] for one in found["answers"]] == ["keep it and amplify", "add a sub"]


def test_builds_to_which_the_same_is_said_are_one_and_the_others_are_told_from_the_seat() -> None:
    early, late = answered(seen("one", splits=LATE), plug_in())["answers"]
    assert (early["builds_words"], late["builds_words"]) == ("early", "late")
    assert late["tell"] == "early: Round vents; late: Square vents"
    assert late["builds"] == [LATE | {"audio": "base"}, LATE | {"audio": "upgraded"}]
    assert (early["verdict"], late["verdict"]) == ("plug not looked", "complete if")


def test_where_all_builds_are_alike_there_is_nothing_to_tell() -> None:
    [one] = answered()["answers"]
    assert (one["builds_words"], one["tell"]) == ("", "")


def test_what_is_known_of_the_car_leaves_the_other_builds_out() -> None:
    for known in ({"splits": LATE}, {"year": 3}):
        [late] = answered(seen("one", splits=LATE), plug_in(), **known)["answers"]
        assert late["builds"] == [LATE | {"audio": "base"}, LATE | {"audio": "upgraded"}]


def test_builds_of_which_the_same_is_said_by_other_notes_are_one() -> None:
    notes = [after(f"n-{one}", kept=["camera"], splits=LATE | {"audio": one}) for one in ("base", "upgraded")]
    base = vehicle().model_dump(mode="json", exclude={"id"}, exclude_none=True)
    base["splits"]["audio"]["bears_on"] = {"subjects": ["circuits", "amplifier", "kept"]}
    [one] = answered(vehicle(**base), *notes, splits=LATE)["answers"]
    assert one["builds"] == [LATE | {"audio": "base"}, LATE | {"audio": "upgraded"}]
    lost = after("n-upgraded", lost=["camera"], splits=LATE | {"audio": "upgraded"})
    assert len(answered(vehicle(**base), notes[0], lost, splits=LATE)["answers"]) == 2


def test_the_radio_and_the_amplifier_that_were_named_are_the_ones_that_are_answered_for() -> None:
    radio = record("head_units", "radio", {"name": "A radio", "size_class": "double", "needs": ["reverse"]})
    amp = {"name": "Amp", "origin": "added", "inputs": [{"level": "high", "wakes": "there"}]}
    [found] = answered(seen("one"), plug_in("plug-in", *EVERYTHING), radio, unit="radio", splits=LATE)["answers"]
    assert [lack["circuit"] for lack in found["lacks"]] == ["reverse"]
    wakes = (seen("one"), tee(), record("amplifiers", "amp", amp))
    [found] = answered(*wakes, jobs=("keep it and amplify",), amplifier="amp", splits=LATE)["answers"]
    assert [lack["must"] for lack in found["lacks"] if lack["circuit"] == "accessory"] == [False]


def test_every_job_has_its_answer() -> None:
    [aerial] = answered(jobs=("aerial",))["answers"]
    assert (aerial["job"], aerial["words"]) == ("aerial", "nobody has looked which plug the aerial has")
    [lead] = answered(seen("one", place=DOOR, splits={}), jobs=("speaker lead",))["answers"]
    words = "no speaker lead in the book fits it"
    assert (lead["job"], lead["place"], lead["words"]) == ("speaker lead", DOOR, words)
    [one] = answered(jobs=("two-piece radio",))["answers"]
    assert (one["verdict"], one["words"]) == ("nothing mates", NO_PAIR)


def test_a_radio_in_two_pieces_is_answered_for_each_pair_of_the_book() -> None:
    pair = (display(), box(goes_with=["display"]))
    found = answered(van(), seen("one"), plug_in(), *pair, jobs=("two-piece radio",))["answers"]
    assert found
    assert "nothing mates" not in {one["verdict"] for one in found}

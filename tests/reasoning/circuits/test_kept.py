from typing import Any

from bezelbook.reasoning.circuits.kept import Kept, kept_and_lost
from bezelbook.values.words import FUNCTIONS
from tests.reasoning.circuits.a_car import after, chained, module, plug_in, seen, tried


def goes(*records: Any, function: str = "camera") -> Kept:
    [found] = [one for one in kept_and_lost(chained(*records)) if one.function == function]
    return found


def test_every_function_is_there_and_a_blank_is_no_promise() -> None:
    found = kept_and_lost(chained())
    assert tuple(one.function for one in found) == FUNCTIONS
    assert {(one.goes, one.words, one.notes) for one in found} == {
        ("not looked", "not looked: ask at the write-back", ())
    }


def test_what_was_kept_in_this_build_is_kept_with_the_module_that_the_note_names() -> None:
    assert goes(after("one", kept=["camera"])) == Kept("camera", "kept", "kept in this build", ("one",))
    boxed = goes(module(), tried("one", kept=["camera"], adapters=["box", "some lead"]))
    assert boxed == Kept("camera", "kept with a module", "kept, with the The box fitted", ("one",))
    two = goes(module(), module("cube"), tried("one", kept=["camera"], adapters=["box", "cube"]))
    assert two.words == "kept, with the The box or The cube fitted"


def test_kept_by_one_and_lost_by_another_is_argued_over_and_taken_as_lost() -> None:
    found = goes(after("one", kept=["camera"]), after("two", lost=["camera"]))
    words = "some kept it and some lost it in this build"
    assert found == Kept("camera", "argued over", words, ("one", "two"))
    assert found.until_settled == "lost"


def test_a_car_that_came_back_shows_what_was_lost() -> None:
    found = goes(after("one", lost=["camera"], comeback="Camera was black."))
    assert (found.goes, found.until_settled, found.notes) == ("lost", "", ("one",))


def test_hearsay_and_other_builds_say_nothing() -> None:
    assert goes(tried("one", kept=["camera"], sure="told")).goes == "not looked"
    assert goes(after("one", lost=["camera"], splits={"build": "early"})).goes == "not looked"


def test_on_a_car_that_may_have_been_another_build_a_loss_counts_and_a_gain_does_not() -> None:
    lost = goes(after("one", lost=["camera"], splits={}))
    words = "lost on a car that may have been this build: count on no more"
    assert lost == Kept("camera", "lost", words, ("one",))
    maybe = goes(after("one", kept=["camera"], splits={}))
    assert maybe == Kept("camera", "not looked", "kept on a car that may have been another build", ("one",))
    assert goes(after("one", lost=["camera"], splits={}), after("two", kept=["camera"])).goes == "kept"


def test_a_box_of_the_chain_is_believed_as_printed_where_nobody_tried() -> None:
    keeps = {"camera": "partly", "chimes": "kept", "menus": "lost", "clock": "not looked"}
    box = module(needs=["constant"], outputs={"accessory": {}}, keeps=keeps)
    chain = (seen("one"), plug_in("plug-in", "constant", "ground"), box)
    found = {one: goes(*chain, function=one) for one in keeps}
    assert {one: (kept.goes, kept.words) for one, kept in found.items()} == {
        "camera": ("partly", "partly with the The box, as printed; nobody here has tried"),
        "chimes": ("kept with a module", "kept with the The box, as printed; nobody here has tried"),
        "menus": ("lost", "lost with the The box, as printed; nobody here has tried"),
        "clock": ("not looked", "not looked: ask at the write-back"),
    }


def test_a_sound_that_goes_through_the_radio_goes_with_it() -> None:
    found = goes(seen("one", sound_paths=["chimes"]), function="chimes")
    words = "goes through the radio or its speakers, and no module here is said to keep it"
    assert found == Kept("chimes", "lost", words, ("one",))
    assert goes(seen("one", sound_paths=["chimes"], splits={"build": "early"}), function="chimes").goes == "not looked"


def test_what_becomes_of_it_is_said_once() -> None:
    assert goes(after("one", lost=["camera"])).said == "lost in this build"
    assert goes(after("one", lost=["camera"]), after("two", kept=["camera"])).said.startswith("argued over: some kept")
    assert goes().said == "not looked"
    assert goes(after("one", kept=["camera"], splits={})).said.startswith("not looked: kept on a car")

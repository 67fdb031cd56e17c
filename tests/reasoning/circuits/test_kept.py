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
    assert {one.goes for one in found} == {"not looked"}


def test_what_was_kept_in_this_build_is_kept_with_the_module_that_the_note_names() -> None:
    assert goes(after("one", kept=["camera"])) == Kept("camera", "kept", "kept in this build", ("one",))
    boxed = goes(module(), tried("one", kept=["camera"], adapters=["box", "some lead"]))
    assert (boxed.goes, boxed.words) == ("kept with a module", "kept, with the The box fitted")


def test_kept_by_one_and_lost_by_another_is_argued_over_and_taken_as_lost() -> None:
    found = goes(after("one", kept=["camera"]), after("two", lost=["camera"]))
    assert (found.goes, found.until_settled, found.notes) == ("argued over", "lost", ("one", "two"))


def test_a_car_that_came_back_shows_what_was_lost() -> None:
    found = goes(after("one", lost=["camera"], comeback="Camera was black."))
    assert (found.goes, found.until_settled, found.notes) == ("lost", "", ("one",))


def test_hearsay_and_other_builds_say_nothing() -> None:
    assert goes(tried("one", kept=["camera"], sure="told")).goes == "not looked"
    assert goes(after("one", lost=["camera"], splits={"build": "early"})).goes == "not looked"


def test_on_a_car_that_may_have_been_another_build_a_loss_counts_and_a_gain_does_not() -> None:
    assert goes(after("one", lost=["camera"], splits={})).goes == "lost"
    maybe = goes(after("one", kept=["camera"], splits={}))
    assert (maybe.goes, maybe.notes) == ("not looked", ("one",))
    assert goes(after("one", lost=["camera"], splits={}), after("two", kept=["camera"])).goes == "kept"


def test_a_box_of_the_chain_is_believed_as_printed_where_nobody_tried() -> None:
    keeps = {"camera": "partly", "chimes": "kept", "menus": "lost", "clock": "not looked"}
    box = module(needs=["constant"], outputs={"accessory": {}}, keeps=keeps)
    chain = (seen("one"), plug_in("plug-in", "constant", "ground"), box)
    found = {one: goes(*chain, function=one).goes for one in keeps}
    assert found == {"camera": "partly", "chimes": "kept with a module", "menus": "lost", "clock": "not looked"}


def test_a_sound_that_goes_through_the_radio_goes_with_it() -> None:
    found = goes(seen("one", sound_paths=["chimes"]), function="chimes")
    assert (found.goes, found.notes) == ("lost", ("one",))
    assert found.words.startswith("goes through the radio or its speakers")
    assert goes(seen("one", sound_paths=["chimes"], splits={"build": "early"}), function="chimes").goes == "not looked"


def test_what_becomes_of_it_is_said_once() -> None:
    assert goes(after("one", lost=["camera"])).said == "lost in this build"
    assert goes(after("one", lost=["camera"]), after("two", kept=["camera"])).said.startswith("argued over: some kept")
    assert goes().said == "not looked"
    assert goes(after("one", kept=["camera"], splits={})).said.startswith("not looked: kept on a car")

import pytest

from bezelbook.reasoning.circuits.jobs import Job
from bezelbook.reasoning.circuits.remedies import Lack, lacks
from tests.reasoning.circuits.a_car import SPEAKERS, chained, every_cavity, metered, module, plug_in, seen, tee, tried


def lack(*records: object, circuit: str = "accessory", job: str = "replace the radio") -> Lack:
    chain = chained(seen("one", ground_points=["the bolt under the tray"]), *records, job=Job(job))  # type: ignore[arg-type]
    [found] = [one for one in lacks(chain) if one.circuit == circuit]
    return found


BARE = plug_in("plug-in", "left front +", ways={"accessory": "not there", "ground": "not there"})


def test_what_must_be_fed_comes_first_and_says_why() -> None:
    found = lacks(chained(seen("one"), BARE))
    assert [one.must for one in found] == sorted((one.must for one in found), reverse=True)
    assert lack(BARE).why == "the The plug-in has no lead for it"


def test_accessory_comes_from_a_box_with_its_limit_or_from_the_fuse_box_with_a_relay() -> None:
    box = module(outputs={"accessory": {"most": "2 A"}}, needs_adapter=["other", "gone-lead"])
    first, fuse = lack(BARE, box, plug_in("other", made_for=[])).remedies
    assert first == "the The box, 2 A at most, with a relay for more, which wants the The other and gone lead"
    assert fuse == (
        "a fuse in the fuse box that comes and goes with the key, with a relay for more than the radio's own lead"
    )


def test_an_amplifier_may_wake_from_the_signal() -> None:
    found = lack(tee("tee", ways={"accessory": "not there"}), job="keep it and amplify")
    assert found.remedies[-1] == "an amplifier that wakes from the signal"
    taps = tee("tee", cut=(), ways=dict.fromkeys(SPEAKERS[4:], "tapped") | {"accessory": "not there"})
    assert lack(taps, job="add a sub").remedies == found.remedies
    assert lack(BARE).remedies == found.remedies[:-1]


@pytest.mark.parametrize("circuit", ["park brake", "speed", "reverse"])
def test_what_must_never_be_made_up_comes_off_the_bus_or_not_at_all(circuit: str) -> None:
    fake = module("fake", needs=["constant"], outputs={circuit: {}})
    assert lack(BARE, fake, circuit=circuit).remedies == (
        "a module that reads the true signal off the bus, or go without: it is never made up",
    )
    true = module("true", outputs={circuit: {}})
    assert lack(BARE, true, circuit=circuit).remedies[0] == "the The true"


@pytest.mark.parametrize(
    ("circuit", "words"),
    [
        ("constant", "a lead of its own from the battery, with a fuse beside it"),
        ("ground", "a ground of its own: the bolt under the tray"),
        ("illumination", "a fuse that comes with the side lights, or go without: the display keeps its day colours"),
        ("left rear +", "look in the plug for the cavities; failing that, new leads to the speakers"),
        ("microphone", "a lead that keeps it, or go without"),
        (
            "amplifier turn-on",
            "the turn-on lead of the new radio, run to what wakes the amplifier: meter there what that is",
        ),
    ],
)
def test_every_other_circuit_has_a_remedy_of_its_own(circuit: str, words: str) -> None:
    box = seen("box", None, amplifier="there")
    assert lack(BARE, box, circuit=circuit).remedies == (words,)


def test_every_ground_point_that_was_noted_is_named_once() -> None:
    other = seen("two", None, ground_points=["the bolt under the tray", "the seat rail"])
    assert lack(BARE, other, circuit="ground").remedies == (
        "a ground of its own: the bolt under the tray or the seat rail",
    )


def test_with_no_ground_point_noted_any_bare_metal_is_metered() -> None:
    [found] = [one for one in lacks(chained(seen("one"), BARE)) if one.circuit == "ground"]
    assert found.remedies == ("a ground of its own: bare metal, metered to the battery",)


def test_what_only_has_to_go_on_to_the_radio_is_metered_through() -> None:
    found = lack(tee("tee", ways={"bus": "unknown"}), circuit="bus", job="keep it and amplify")
    assert found.remedies == (
        "meter it on the bench before anything goes in: what does not go through is lost to the radio",
    )


def test_a_box_for_another_build_is_no_remedy() -> None:
    other = module(outputs={"accessory": {}}, made_for=["another-car"])
    assert len(lack(BARE, other).remedies) == 1


def test_a_box_of_its_own_for_the_wheel_is_named() -> None:
    box = module("wheel-box", module_kind="wheel buttons", needs=["constant"], made_for=[])
    assert lack(BARE, box, circuit="wheel buttons").remedies == (
        "the The wheel-box",
        "a lead that keeps it, or go without",
    )
    assert len(lack(BARE, box, circuit="camera").remedies) == 1
    eye = module("eye", module_kind="camera", needs=["constant"], made_for=[])
    assert lack(BARE, eye, circuit="camera").remedies == ("the The eye", "a lead that keeps it, or go without")
    assert len(lack(BARE, eye, circuit="wheel buttons").remedies) == 1


def test_without_a_chain_nothing_is_lacking() -> None:
    assert lacks(chained()) == ()


def test_a_box_whose_lead_takes_the_place_of_a_radio_that_stays_is_looked_at_first() -> None:
    box = module(outputs={"accessory": {}}, needs_adapter=["other"])
    bare = tee("tee", ways={"accessory": "not there"})
    apart = lack(bare, box, plug_in("other", made_for=[]), job="keep it and amplify").remedies[0]
    assert apart == (
        "the The box, which wants the The other: that takes the radio's place in the plug, "
        "so look first whether the two go together"
    )
    in_line = lack(bare, box, tee("other", made_for=[]), job="keep it and amplify").remedies[0]
    assert in_line == "the The box, which wants the The other"
    gone = lack(bare, box, job="keep it and amplify").remedies[0]
    assert gone == "the The box, which wants the other"


def test_a_pair_that_the_car_does_not_have_is_no_loss() -> None:
    found = {one.circuit for one in lacks(chained(every_cavity(), plug_in()))}
    assert "left rear +" not in found
    assert "reverse" in found


def test_a_box_that_wants_a_lead_which_fakes_a_signal_or_is_wrong_here_is_not_offered() -> None:
    box = module(outputs={"speed": {}}, needs_adapter=["other"])
    fake = plug_in("other", made_for=[], ways={"park brake": "makes"})
    assert lack(BARE, box, fake, circuit="speed").remedies[0].startswith("a module that reads")
    failed = tried("two", adapters=["other"], verdict="does not", reason="circuit")
    assert lack(BARE, box, plug_in("other"), failed, circuit="speed").remedies[0].startswith("a module that reads")
    assert lack(BARE, box, plug_in("other"), circuit="speed").remedies[0] == "the The box, which wants the The other"


def test_what_is_in_the_plug_is_taken_from_there_first() -> None:
    lit = metered("meter", (3, "illumination"), (6, "left front +"), (7, "reverse"))
    usual = "a fuse that comes with the side lights, or go without: the display keeps its day colours"
    without = plug_in("plug-in", "constant", ways={"illumination": "not there", "left front +": "not there"})
    assert lack(without, lit, circuit="illumination").remedies == (
        "a lead from cavity 3 of the plug, metered first",
        usual,
    )
    assert lack(without, lit, circuit="left front +").remedies == ("a lead from cavity 6 of the plug, metered first",)
    assert lack(without, lit, circuit="reverse").remedies == (
        "a lead from cavity 7 of the plug, metered first",
        "a module that reads the true signal off the bus, or go without: it is never made up",
    )
    once = metered("once", (4, "illumination"), sure="told")
    assert lack(without, once, circuit="illumination").remedies[0] == "a lead from cavity 4 of the plug, metered first"
    blind = metered("blind", (1, "illumination"), view=None)
    either = "a lead from cavity 1 or 4 of the plug, metered first"
    assert lack(without, blind, circuit="illumination").remedies[0] == either, "counted from nobody knows which side"
    told = metered("told", (4, "illumination"), (5, "illumination"), sure="told")
    argued = metered("other", (4, "illumination"))
    assert lack(without, told, circuit="illumination").remedies == (usual,), "two cavities for one circuit: neither"
    assert lack(without, lit, argued, circuit="illumination").remedies == (usual,), "argued over: no cavity is promised"

from typing import Any

from bezelbook.kinds.record import Record
from bezelbook.publish.removal.step_lines import StepLines, minutes, step_lines
from bezelbook.publish.removal.trade_words import DIRECTIONS, FASTENERS, REACH, FirstUse
from bezelbook.reasoning.order.clocked import Clocked, clocked
from tests.reasoning import making
from tests.reasoning.order import trim

SCREW = {"form": "fastener", "name": "Short hex screw", "fastener_kind": "self-tapping screw", "drive": "7 mm hex"}
BOLT = {"form": "fastener", "name": "Bolt", "fastener_kind": "bolt"}
SUPPLIES = (making.record("supplies", "short-hex-screw", SCREW), making.record("supplies", "bolt", BOLT))
CAR = trim.car("strip", "bezel", "lid-left")


def written(*notes: Record, piece: str = "bezel", argued: frozenset[str] = frozenset()) -> StepLines:
    base = trim.book(CAR, *SUPPLIES, *notes)
    [order] = trim.orders(base)
    number, step = next((number, one) for number, one in enumerate(order.steps, 1) if one.piece == piece)
    return step_lines(base, number, step, {"strip": "wood strip"}, FirstUse(), argued)


def lines(*notes: Record, **more: Any) -> dict[str, tuple[str, ...]]:
    return dict(written(*notes, **more).lines)


def off(**content: Any) -> Record:
    return trim.seen("a", date="2026-01-02", pieces=[{"piece": "bezel", **content}])


def test_everything_that_the_hands_need_stands_in_the_order_in_which_they_need_it() -> None:
    note = trim.seen(
        "a",
        shares_screw=["bezel", "lid-left"],
        pieces=[
            "strip",
            {
                **trim.first("bezel", "strip"),
                "hidden": "One behind the blank.",
                "tools": [{"tool": "seven", "reach": ["swivel", "long"], "not_here": "Powered driver."}],
                "fasteners": [{"kind": "bolt", "count": 1}, {"kind": "clip", "count": 2}],
                "lead_edge": "left",
                "pull": ["toward you", "up"],
                "hooks": "Two, at the right.",
                "plugs": ["hazard"],
                "took": "4 min",
                "cup": 2,
            },
        ],
    )
    assert list(lines(note).items()) == [
        ("Only after", ("wood strip: it lies over this",)),
        ("Look for", ("a hidden fixing: One behind the blank.",)),
        ("Take", ("seven (swivel, long) – not here: Powered driver.",)),
        ("Undo", ("1 × Bolt",)),
        ("Mind", ("one screw holds lid left too, which is loose once it is out",)),
        ("Start at", ("the left edge",)),
        ("Ease out", ("2 × clip",)),
        ("Pull", ("toward you, then up",)),
        ("Unhook last", ("Two, at the right.",)),
        ("Stop if", ("it bends, or does not move with its one screw out: something still holds it",)),
        ("Unplug", ("the plug of the hazard",)),
        ("Into cup", ("2",)),
        ("It took", ("4 min (one job, thin)",)),
    ]
    assert written(note).asked == ()
    assert written(note).tools == ("seven (swivel, long)",)


def test_what_nobody_wrote_is_asked_and_says_all_the_same_when_to_stop() -> None:
    found = written(off())
    assert [label for label, _ in found.lines] == ["Stop if"]
    assert [question.split("?")[0] for question in found.asked] == [
        "What holds it",
        "Which edge do you start at",
        "Which way does it come",
        "Which tool",
        "Is anything plugged into it",
    ]


def test_a_piece_says_where_it_sits_when_somebody_wrote_it() -> None:
    car = making.vehicle(trim={"bezel": {"side": "left", "where": "below the vents"}})
    base = trim.book(car, off())
    [step] = trim.orders(base)[0].steps
    found = step_lines(base, 1, step, {}, FirstUse(), frozenset())
    assert found.where == "On the left, as you sit in the car facing forward: below the vents."


def test_what_is_unplugged_is_named_as_a_plug() -> None:
    plug = making.record(
        "connectors",
        "hazard-6",
        {"name": "Hazard six", "shell": "square", "cavities": 6, "shell_colours": ["blue", "grey"]},
    )
    bare = making.record("connectors", "bare", {"name": "Bare one", "shell": "round"})
    said = off(plugs=["hazard-6", "bare", "screen lead", "clock", "nothing"])
    base = trim.book(CAR, plug, bare, said)
    [step] = trim.orders(base)[0].steps
    found = step_lines(base, 1, step, {}, FirstUse(), frozenset())
    assert dict(found.lines)["Unplug"] == (
        "Hazard six",
        "Bare one",
        "screen lead",
        "the plug of the clock",
        "nothing: no wire goes to it",
    )
    explained = dict(found.explained)
    assert explained["Hazard six"] == "the name of a blue or grey plug with 6 places for wires"
    assert explained["Bare one"] == "the name of a plug"
    assert "latch" in explained["unplug"]


def test_with_a_restraint_near_nothing_is_said_of_how_it_comes_off() -> None:
    found = written(off(safety="restraint near", hidden="Secret.", fasteners=["bolt"], tools=["seven"]))
    assert (found.lines, found.asked, found.tools, found.marks) == ((), (), (), ())
    [near] = found.cautions
    assert "service information" in near.now


def test_where_nobody_wrote_the_tool_the_screws_say_it_and_it_says_so() -> None:
    said = lines(off(fasteners=["short-hex-screw", "bolt", "some clip"]))
    assert said["Take"] == ("7 mm hex – by its screws; nobody wrote the tool",)
    assert "Take" not in lines(off(fasteners=["some clip"]))


def test_each_reason_to_wait_is_in_words() -> None:
    for why, words in (
        ("overlap", "it lies over this"),
        ("reach", "no hand or tool gets past it"),
        ("cable", "a cable holds the two together"),
        ("screw", "a screw sits behind it"),
        (None, "somebody took it off first and did not write why"),
    ):
        note = trim.seen("a", pieces=["strip", trim.first("bezel", "strip", why=why)])
        assert lines(note)["Only after"] == (f"wood strip: {words}",)
    trapped = trim.seen("b", lies_over=[trim.over("strip", "bezel", how="traps")])
    assert lines(off(), trapped)["Only after"] == ("wood strip: it traps this",)


def test_what_is_argued_over_says_who_says_so_and_asks_nobody_to_do_it() -> None:
    note = trim.seen("a", date="2026-01-02", lies_over=[trim.over("strip", "bezel"), trim.over("lid-left", "bezel")])
    found = written(note, argued=frozenset({"strip", "bezel"}))
    assert dict(found.lines)["Argued over"] == ("wood strip: it lies over this (a, 2026-01-02)",)
    assert dict(found.lines)["Only after"] == ("lid left: it lies over this",)
    assert "Argued over: look which edge lies on top before you pull." in found.marks


def test_what_is_odd_about_a_step_is_marked() -> None:
    assert written(off()).marks == ()
    [some] = written(off(), trim.seen("b", pieces=["lid-left"])).marks
    assert some.startswith("In 1 of 2 jobs only. Leave it on unless you see that it holds or covers what comes after")
    layer = trim.seen("a", lies_over=[trim.over("strip", "bezel")])
    assert written(layer).marks == (
        "Somebody saw it here; nobody wrote whether it comes off. Look what is behind it before you start.",
    )
    stray = written(trim.seen("a", pieces=["not-listed"]), piece="not-listed")
    assert stray.marks == ("Not on the vehicle's list of pieces.",)
    assert stray.where == "Nobody wrote on which side it is."


def test_where_it_is_and_what_could_hurt_is_said() -> None:
    found = written(off(safety="restraint near"))
    assert (found.where, [one.safety for one in found.cautions]) == ("In the middle.", ["restraint near"])
    assert written(off(safety="none")).cautions == ()
    assert written(trim.seen("a", pieces=["lid-left"]), piece="lid-left").where.startswith("On the left")


def test_the_cup_is_the_number_of_the_step_and_another_one_is_recalled() -> None:
    assert lines(off(fasteners=["clip"], cup=5))["Into cup"] == ("1 (last time it was cup 5)",)
    assert lines(off(fasteners=["clip"], cup=1))["Into cup"] == ("1",)


def test_words_of_the_trade_are_explained() -> None:
    found = written(off(fasteners=["short-hex-screw"], pull=["rearward"], tools=[{"tool": "x", "reach": ["stubby"]}]))
    explained = dict(found.explained)
    assert explained["Short hex screw"] == FASTENERS["self-tapping screw"]
    assert explained["rearward"] == DIRECTIONS["rearward"]
    assert explained["stubby"] == REACH["stubby"]
    assert "bezel" in explained


def test_minutes_have_their_range_where_there_is_one() -> None:
    times = [(240, trim.seen("a")), (240, trim.seen("b")), (600, trim.seen("c"))]
    found = clocked(times)
    assert found is not None
    assert minutes(found) == "4 min (4 min to 10 min)"
    only = clocked(times[:2])
    assert isinstance(only, Clocked)
    assert minutes(only) == "4 min"

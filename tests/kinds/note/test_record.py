from typing import Any

import pytest
from pydantic import TypeAdapter, ValidationError

from bezelbook.kinds.note.record import AnyNote, Bench, Measured, Note, Tried

READER: TypeAdapter[AnyNote] = TypeAdapter(Note)
CAR = {"id": "some-file", "vehicle": "compact-hatch-2", "place": "dash-centre"}
TRIED = {**CAR, "form": "tried", "what": "short-double", "verdict": "goes in", "sure": "fitted"}
DEPTH = {"of": "depth", "reads": "203 ± 2 mm"}
LEAST: dict[str, dict[str, Any]] = {
    "tried": TRIED,
    "measured": {**CAR, "form": "measured", "readings": [DEPTH]},
    "seen": {**CAR, "form": "seen"},
    "metered": {
        **CAR,
        "form": "metered",
        "plug": "square 24",
        "cavities": [{"cavity": 1, "carries": "constant"}],
    },
    "bench": {"id": "some-file", "form": "bench", "part": "short-double"},
    "after": {**CAR, "form": "after"},
}


def note(form: str, **fields: Any) -> AnyNote:
    return READER.validate_python({**LEAST[form], **fields})


@pytest.mark.parametrize("form", LEAST)
def test_each_of_the_six_forms_loads_with_what_it_cannot_do_without(form: str) -> None:
    assert note(form).form == form


@pytest.mark.parametrize(("form", "missing"), [(form, field) for form, least in LEAST.items() for field in least])
def test_and_with_nothing_less(form: str, missing: str) -> None:
    less = {field: value for field, value in LEAST[form].items() if field != missing}
    with pytest.raises(ValidationError):
        READER.validate_python(less)


@pytest.mark.parametrize("form", LEAST)
def test_a_note_that_nobody_signed_or_dated_loads(form: str) -> None:
    loaded = note(form)
    assert (loaded.author, loaded.date, loaded.job) == (None, None, None)


def test_a_note_typed_in_the_bay_needs_five_things_at_most() -> None:
    assert set(TRIED) - {"id", "form"} == {"vehicle", "place", "what", "verdict", "sure"}


def test_a_form_that_nobody_knows_is_refused() -> None:
    with pytest.raises(ValidationError, match="form"):
        READER.validate_python({**LEAST["seen"], "form": "guessed"})


@pytest.mark.parametrize("verdict", ["goes in", "goes in if", "does not", "not tried"])
@pytest.mark.parametrize("sure", ["fitted", "dry-fitted", "measured", "eyeballed", "told", "worked out"])
def test_a_note_says_its_verdict_and_how_sure_in_shop_words(verdict: str, sure: str) -> None:
    loaded = note("tried", verdict=verdict, sure=sure)
    assert isinstance(loaded, Tried)
    assert (loaded.verdict, loaded.sure) == (verdict, sure)


@pytest.mark.parametrize(
    ("form", "field", "wrong"),
    [
        ("tried", "verdict", "too close"),
        ("tried", "verdict", "argued over"),
        ("tried", "sure", "certain"),
        ("tried", "where", ["middle"]),
        ("tried", "reason", "it is too big"),
        ("tried", "short_by", 15),
        ("tried", "sizes", {"depth": 6.5}),
        ("tried", "date", "2026-02-29"),
        ("tried", "author", "A. Body"),
        ("tried", "numbers", True),
        ("measured", "readings", []),
        ("measured", "readings", [{**DEPTH, "datum": "the front"}]),
        ("measured", "readings", [{**DEPTH, "zones": "most"}]),
        ("seen", "amplifier", False),
        ("metered", "cavities", []),
        ("metered", "cavities", [{"cavity": 0, "carries": "constant"}]),
        ("metered", "view", "from behind"),
        ("bench", "vehicle", "compact-hatch-2"),
        ("after", "times", [{"scope": "bench", "took": 25}]),
        ("after", "resistors", [{"value": "20 W"}]),
        ("after", "adapters", "late-t"),
        ("after", "used", [{"count": 6}]),
        ("tried", "undo", True),
        ("tried", "screen_set", {"tilt": 5}),
        ("tried", "sizes", {"mounting_depth": 63}),
        ("measured", "other_side", "same"),
        ("measured", "rake", "12 mm"),
        ("measured", "controls", [{"what": "vent"}]),
        ("measured", "bolt_holes", {"kind": "screws"}),
        ("seen", "pieces", [{"pull": ["up"]}]),
        ("seen", "factory_speaker", {"impedance": 2}),
        ("seen", "accessory_supply", "red wire"),
        ("seen", "photos", "one.jpg"),
        ("metered", "sure", "certain"),
        ("metered", "channels", [{"band": "low"}]),
        ("bench", "circuits", {"red": "passes"}),
        ("bench", "circuits", {"constant": "yes"}),
    ],
)
def test_a_field_says_which_value_it_does_not_take(form: str, field: str, wrong: object) -> None:
    with pytest.raises(ValidationError, match=field):
        note(form, **{field: wrong})


def test_a_reading_keeps_what_was_typed_and_may_lack_its_face() -> None:
    loaded = note("measured", readings=[{"of": "depth", "reads": "7 9/16 in ± 1/8 in", "zones": "all"}])
    assert isinstance(loaded, Measured)
    reading = loaded.readings[0]
    assert (reading.reads.base, reading.reads.give) == (192_087_500, 3_175_000)
    assert (reading.reads.typed, reading.zones, reading.datum) == ("7 9/16 in ± 1/8 in", "all", None)


def test_a_bench_note_may_be_words_alone() -> None:
    loaded = note("bench", words="One corner is bent.")
    assert isinstance(loaded, Bench)
    assert loaded.readings == ()


def test_a_bench_note_may_contradict_what_an_adapter_s_record_says_of_a_circuit() -> None:
    loaded = note("bench", part="late-t", circuits={"accessory": "not there", "constant": {"does": "passes"}})
    assert isinstance(loaded, Bench)
    assert {circuit: said.does for circuit, said in loaded.circuits.items()} == {
        "accessory": "not there",
        "constant": "passes",
    }

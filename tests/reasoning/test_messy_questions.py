"""Questions as people type them: whatever the case, the signs and the spelling, they mean what a shop means by them."""

from collections.abc import Mapping
from fractions import Fraction
from typing import Any

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from bezelbook.reasoning.asking import read_question
from bezelbook.reasoning.question import Question
from bezelbook.reasoning.said_sizes import SIZES, SaidSizes, sizes_said
from bezelbook.reasoning.speakers.question import SpeakerQuestion
from bezelbook.reasoning.spoken.places import takes_speaker
from bezelbook.reasoning.vocabulary import FILLERS, SAME_WORDS, folded_words, vocabulary
from bezelbook.reasoning.wiring_asked.question import WiringQuestion
from bezelbook.reasoning.words import Choice, read_words
from bezelbook.values.complaint import Wrong
from tests.reasoning.a_shop import SHOP, a_shop

MM = 1_000_000
MM_OF = {"mm": Fraction(1), "in": Fraction(254, 10), "cm": Fraction(10)}

# --- folding ---

# What a shop types, and the words that it comes to.
SAID = {
    "": "",
    "  \t\n ": "",
    "HATCH Mk2": "hatch gen 2",
    "hatch mk 2": "hatch gen 2",
    "hatch MKII": "hatch gen 2",
    "hatch mark iii": "hatch gen 3",
    "Hatch Gen2": "hatch gen 2",
    "hatch 2nd gen": "hatch gen 2",
    "2nd generation hatch": "gen 2 hatch",
    "hatch, second generation": "hatch gen 2",
    "first gen van": "gen 1 van",
    "third gen": "gen 3",
    "the 4th": "the gen 4",
    "second-hand unit": "second hand unit",
    "178×100×150": "178 x 100 x 150",
    "178*100": "178 x 100",
    '6½"': '6½"',
    "6 1⁄2″": '6 1/2"',
    "6–1/2 in.": "6 1/2 in",
    "2-3/8”": '2 3/8"',
    "6.5''": '6.5"',
    '6.5" deep "short double"': '6.5" deep short double',
    "165 +/- 1 mm": "165 ± 1 mm",
    "165 +/−1mm": "165 ±1mm",
    "165 +- 1": "165 ± 1",
    "165,5 mm": "165,5 mm",
    "dash,165 deep.": "dash 165 deep",
    "late/early": "late early",
    "w/ flush-kit?!": "w flush kit",
    "178w x 100h x 150d": "178 wide x 100 high x 150 deep",
    "2din": "2 din",
    "Fun… 🚗 café": "fun caf",
    "driver’s": "driver s",
    "\x00\ud800\u202e": "",
}


@pytest.mark.parametrize(("typed", "words"), SAID.items(), ids=repr)
def test_words_are_folded_as_a_shop_means_them(typed: str, words: str) -> None:
    assert " ".join(folded_words(typed)) == words


@given(st.text(max_size=60))
def test_any_text_folds_to_words_of_few_signs(text: str) -> None:
    words = folded_words(text)
    assert all(word and not set(word) - set('abcdefghijklmnopqrstuvwxyz0123456789./"±¼½¾⅛⅜⅝⅞,') for word in words)


@given(st.lists(st.sampled_from(sorted(SAID)), max_size=4).map(" ".join))
def test_folding_what_is_folded_changes_nothing(text: str) -> None:
    once = folded_words(text)
    assert folded_words(" ".join(once)) == once


def test_a_hundred_thousand_words_fold_at_once() -> None:
    assert len(folded_words("hatch 2nd gen, 6½ in × 4; " * 20_000)) == 140_000


def test_words_that_tell_nothing_are_folded_words() -> None:
    assert all(folded_words(word) == (word,) for word in FILLERS)


def test_every_pattern_is_one_that_a_browser_has_too() -> None:
    """No lookbehind, no named group, no flag: what stands behind a $ is a group's number."""
    for pattern, instead in SAME_WORDS:
        assert not any(only_python in pattern for only_python in ("(?P", "(?<", "(?i", r"\Z", r"\A"))
        assert "\\" not in instead


# --- sizes ---


def said(text: str, *, beside_unit: bool = False) -> SaidSizes:
    return sizes_said(folded_words(text), beside_unit=beside_unit)


def in_mm(found: SaidSizes) -> dict[str, float]:
    return {need: size.base / MM for need, size in found.sizes.items()}


# What a shop types, and the millimetres that it means.
READ: Mapping[str, dict[str, float]] = {
    "165 mm": {"depth": 165},
    "165mm deep": {"depth": 165},
    "16.5 cm": {"depth": 165},
    "165 millimetres": {"depth": 165},
    "16,5 centimeters deep": {"depth": 165},
    '6 1/2"': {"depth": 165.1},
    "6-1/2 in deep": {"depth": 165.1},
    "6½ inches": {"depth": 165.1},
    "6 ½ inch": {"depth": 165.1},
    "6 1⁄2”": {"depth": 165.1},
    "2 3/8 in": {"depth": 60.325},
    "182 mm wide": {"width": 182},
    "111 mm high": {"height": 111},
    "111 mm tall": {"height": 111},
    "depth 165 mm": {"depth": 165},
    "width 178 mm height 100 mm depth 150 mm": {"width": 178, "height": 100, "depth": 150},
    "178 mm width 100 mm height 150 mm depth": {"width": 178, "height": 100, "depth": 150},
    "178 mm wide, 100 mm high and 150 mm deep": {"width": 178, "height": 100, "depth": 150},
    "178w 100h 150d": {"width": 178, "height": 100, "depth": 150},
    "178 x 100 x 150 mm": {"width": 178, "height": 100, "depth": 150},
    "178×100×150mm": {"width": 178, "height": 100, "depth": 150},
    "7 x 4 x 6 1/2 in": {"width": 177.8, "height": 101.6, "depth": 165.1},
    "178 x 100 mm": {"width": 178, "height": 100},
    "178 x 100 mm 150 deep": {"width": 178, "height": 100, "depth": 150},
    # A bare number, by the trade's limits: chassis 20 to 220 deep, and 2 to 9 means inches.
    "165": {"depth": 165},
    "96": {"depth": 96},
    "6.5": {"depth": 165.1},
    "2": {"depth": 50.8},
    "9": {"depth": 228.6},
    "16.5": {"depth": 165},
    "18 wide": {"width": 180},
    "7 wide": {"width": 177.8},
    "4 high": {"height": 101.6},
    "7x4x6.5": {"width": 177.8, "height": 101.6, "depth": 165.1},
    "182 x 111": {"width": 182, "height": 111},
    "18.2 x 11.1": {"width": 182, "height": 111},
    # Beyond every limit it is what it says.
    "500": {"depth": 500},
    # "in" is a word where nothing is that many inches.
    "a 165 in the hole": {"depth": 165},
    "165 in": {"depth": 165},
    "6 in": {"depth": 152.4},
    # No sizes.
    "": {},
    "year 3": {},
    "2 din": {},
    "double 2-DIN 165 mm": {"depth": 165},
    "1.5 din": {},
    "4 doors": {},
    "a 4 door, 165 deep": {"depth": 165},
    "0 mm": {},
    "0 x 100 x 150 mm": {},
    "3/7 in": {},
    "1.000,5 mm": {},
    "12345678 mm": {},
    "minus": {},
}


@pytest.mark.parametrize(("typed", "sizes"), READ.items())
def test_sizes_are_read_as_a_shop_means_them(typed: str, sizes: dict[str, float]) -> None:
    assert in_mm(said(typed)) == sizes


@pytest.mark.parametrize(
    ("typed", "give"), [("165 ± 1 mm", 1), ("165 mm ± 2 mm", 2), ("165 +/- 1 mm deep", 1), ("6 1/2 in ± 1/8 in", 3.175)]
)
def test_a_plus_minus_is_read_with_its_size(typed: str, give: float) -> None:
    assert said(typed).sizes["depth"].give == give * MM


def test_a_size_without_plus_minus_is_exact() -> None:
    assert said("165 mm deep").sizes["depth"].give is None


@given(st.integers(1, 3000), st.sampled_from(("deep", "wide", "high")))
def test_a_bare_number_takes_the_first_unit_that_makes_it_usual_and_the_others_are_offered(
    tenths: int, word: str
) -> None:
    """Whatever it is read as, the trade's limits say so; here with fractions, from the limits alone."""
    need = {"deep": "depth", "wide": "width", "high": "height"}[word]
    low, high = {"depth": (20, 229), "width": (40, 300), "height": (25, 200)}[need]
    usual = [unit for unit in ("mm", "in", "cm") if low <= Fraction(tenths, 10) * MM_OF[unit] <= high]
    found = said(f"{tenths / 10} {word}")
    [(read_as, size)] = found.sizes.items()
    assert read_as == need
    assert size.base == Fraction(tenths, 10) * MM_OF[usual[0] if usual else "mm"] * MM
    [told] = found.took
    assert told.startswith(f"{tenths / 10} read as {usual[0] if usual else 'mm'}")
    assert [f"{unit} would be" in told for unit in ("mm", "in", "cm")] == [unit in usual[1:] for unit in MM_OF]


def test_saying_which_it_is_settles_it() -> None:
    found = said("7 inch 165 165 deep")
    assert (in_mm(found), found.rivals) == ({"depth": 165}, ())
    assert found.took == ("165 read as mm", "7 inch was not read as a size")


def test_a_number_that_nobody_can_read_is_told_and_does_not_stand_in_the_way() -> None:
    found = said("3/7 in 165")
    assert in_mm(found) == {"depth": 165}
    assert found.took == ("3/7 in was not read as a size", "165 read as mm")


@given(st.text(alphabet='0123456789 /x.,½¼±"indepmcwh', max_size=40))
def test_no_text_of_numbers_brings_it_down(text: str) -> None:
    found = said(text)
    assert all(size.base > 0 for size in found.sizes.values())


def test_a_browser_reads_the_pattern_too() -> None:
    assert not any(only_python in SIZES.pattern for only_python in ("(?P", "(?<", "(?i", r"\Z"))


# --- whole questions ---

BOOK = a_shop()
OPENING = ("compact-hatch-2", "dash-centre")


def reading(text: str) -> Question | SpeakerQuestion | Choice:
    found = read_words(BOOK, text).read
    assert not isinstance(found, WiringQuestion)
    return found


def asks(text: str) -> str:
    found = reading(text)
    return found.ask if isinstance(found, Choice) else "nothing"


def brief(text: str) -> dict[str, Any]:
    """What a question comes to, without what was left as it usually is."""
    found = reading(text)
    assert isinstance(found, Question), found
    sizes: dict[str, Any] = {need: size.base / MM for need, size in found.sizes.items()}
    said: dict[str, Any] = {"splits": found.splits, "year": found.year, "mounts": found.mounts, "unit": found.unit}
    assert (found.vehicle, found.place) == OPENING
    return {key: value for key, value in (said | sizes).items() if value}


MEANT: Mapping[str, dict[str, Any]] = {
    "hatch 2 dash 165 deep": {"depth": 165},
    "HATCH MK2, DASH: 165 DEEP???": {"depth": 165},
    "will a 165 go in the hatch": {"depth": 165},
    "put a 165 in hatch 2 please": {"depth": 165},
    "2nd gen hatch 6½″": {"depth": 165.1},
    "hatch two 178×100×165mm": {"width": 178, "height": 100, "depth": 165},
    "hatch 7x4x6.5": {"width": 177.8, "height": 101.6, "depth": 165.1},
    "hatch 7 x 4 x 6.5": {"width": 177.8, "height": 101.6, "depth": 165.1},
    "hatch 6 1/2 deep": {"depth": 165.1},
    "hatch 9 in": {"depth": 228.6},
    "hatch 2 in the dash, short double": {"unit": "short-double"},
    'hatch 2 "short double"': {"unit": "short-double"},
    "hatch (short-double)": {"unit": "short-double"},
    "does the Short Double, seven inch fit the hatch?": {"unit": "short-double"},
    "slim double facelift hatch": {"unit": "short-double", "splits": {"build": "late"}},
    "slim double pre-facelift hatch, upgraded": {
        "unit": "short-double",
        "splits": {"build": "early", "audio": "upgraded"},
    },
    "slim double hatch late early late": {"unit": "short-double", "splits": {"build": "late"}},
    # Words that may mean either of two splits mean neither.
    "slim double hatch the same": {"unit": "short-double"},
    "hatch year 4 double din 165 mm": {"width": 178, "height": 100, "depth": 165, "year": 4},
    "hatch year 0 165 mm": {"depth": 165},
    "hatch 165 deep, proud kit then half-inch ring": {"depth": 165, "mounts": ("proud-kit", "half-inch-ring")},
    "hatch 165 deep, half-inch ring then flush kit": {"depth": 165, "mounts": ("half-inch-ring", "flush-kit")},
    "hatch 165 deep, the usual kit (flush-kit)": {"depth": 165, "mounts": ("flush-kit",)},
    "short double in the hatch, but 150 mm deep": {"unit": "short-double", "depth": 150},
    # Named more often than the other, so that an answer to what was asked can be added to the words.
    "black one hatch short double": {"unit": "short-double"},
    "short double or floating ten, hatch. short double": {"unit": "short-double"},
    "left front door or dash of the hatch 165": {"depth": 165},
}


@pytest.mark.parametrize(("typed", "meant"), MEANT.items())
def test_a_question_means_what_a_shop_means_by_it(typed: str, meant: dict[str, Any]) -> None:
    assert brief(typed) == meant


ASKED = {
    "": "Which vehicle?",
    "165 deep": "Which vehicle?",
    "short double": "Which vehicle?",
    "does it fit": "Which vehicle?",
    "second generation 165": "Which vehicle?",
    "van 165 deep": "Which vehicle?",
    "workhorse 165 deep": "Which vehicle?",
    "hatch or roadster 165 deep": "Which vehicle?",
    "hatch 3 165 deep": "Which vehicle?",
    "hatch gen 3 165 deep": "Which vehicle?",
    "hatch mk3 165 deep": "Which vehicle?",
    "new van 165": "Which vehicle?",
    "does the short double go in the van 2": "Which place?",
    "van 2 rear door, short double": "rear door is no opening that takes a box. Which place?",
    "van 2 rear door 165": "The book has no 6 1/2 in speaker of that sort. How deep is it, or which other one?",
    "roadster 165": "Which place?",
    "roadster door short double": "door is no opening that takes a box. Which place?",
    "roadster door 143": "Is 143 its depth, or the hole it needs?",
    "hatch dash": "Which one, or how deep is it?",
    "hatch 2": "Which one, or how deep is it?",
    "hatch double": "How deep is it?",
    "hatch black one": "Which one?",
    "short double or floating ten, hatch": "Which one?",
    "hatch short double usual kit": "Which mount?",
    "hatch 178 x 100": "How deep is it?",
    "hatch 18 wide": "How deep is it?",
    "hatch 7 inch 165": "Which of these is its depth?",
}


@pytest.mark.parametrize(("typed", "ask"), ASKED.items())
def test_what_is_left_open_is_asked_and_never_guessed(typed: str, ask: str) -> None:
    assert asks(typed) == ask


@pytest.mark.parametrize("typed", ["van 2 dash 165", "the van mk2, 165 in its radio opening", "workhorse 2 dash 165"])
def test_the_generation_tells_two_vehicles_apart(typed: str) -> None:
    found = reading(typed)
    assert isinstance(found, Question)
    assert (found.vehicle, found.place) == ("cargo-van-2", "dash-centre")


def test_the_other_generation_is_the_other_vehicle() -> None:
    for typed in ("van 3 165", "van gen 3 165", "cargo van mk3 165", "workhorse 3 165"):
        found = reading(typed)
        assert isinstance(found, Question)
        assert found.vehicle == "cargo-van-3"


def test_a_word_of_one_opening_alone_names_it() -> None:
    found = reading("van 2, 165 deep, on the shelf")
    assert isinstance(found, Question)
    assert found.place == "overhead"


@pytest.mark.parametrize("typed", ASKED)
def test_every_answer_offered_leads_on_when_its_words_are_added(typed: str) -> None:
    found = reading(typed)
    assert isinstance(found, Choice)
    for _, words in found.options:
        assert asks(f"{typed} {words}") != found.ask


def test_a_year_that_was_never_built_is_told() -> None:
    took = read_words(BOOK, "hatch year 12 165 mm deep").took
    assert took == ("year 12 was left out: the Compact hatch, second generation ran 6 model years",)


def test_only_the_vehicles_that_may_be_meant_are_offered() -> None:
    for typed in ("van 165", "workhorse 165"):
        found = reading(typed)
        assert isinstance(found, Choice)
        assert [words for _, words in found.options] == ["cargo van 2", "cargo van 3"]


def test_a_vehicle_without_an_opening_has_no_place_to_offer() -> None:
    found = reading("roadster 165")
    assert isinstance(found, Choice)
    assert found.options == ()


words_of_the_book = sorted({word for phrase in vocabulary(BOOK) for word in phrase.words})
messy = st.lists(
    st.one_of(
        st.sampled_from(words_of_the_book), st.sampled_from(sorted(SAID)), st.sampled_from(sorted(READ)), st.text()
    ),
    max_size=10,
).map(" ".join)


@given(messy)
@example("2nd generation hatch REPLACE:THE:RADIO")
def test_whatever_is_typed_is_read_as_a_question_of_the_book_or_asked_about(text: str) -> None:
    found = read_words(BOOK, text).read
    if isinstance(found, WiringQuestion):
        assert set(found.places) <= set(BOOK.vehicles[found.vehicle].places)
        assert found.jobs
        return
    if isinstance(found, Choice):
        assert found.ask.endswith("?")
        return
    vehicle = BOOK.vehicles[found.vehicle]
    if isinstance(found, SpeakerQuestion):
        assert takes_speaker(vehicle.places[found.place])
        assert found.speaker or found.sizes
        return
    assert vehicle.places[found.place].kind == "plain opening" or found.place == "overhead"
    assert found.unit in {None, *BOOK.head_units}
    assert found.unit or "depth" in found.sizes
    assert all(value in vehicle.splits[axis].values for axis, value in found.splits.items())
    assert set(found.mounts or ()) <= set(BOOK.mounts)
    assert found.year is None or 1 <= found.year <= vehicle.model_years


@given(messy, st.sampled_from(("", " ", ", ", "?! ", "\n", "\t")))
def test_neither_case_nor_blanks_nor_signs_between_words_matter(text: str, sign: str) -> None:
    shouted = sign.join(f"{word} " for word in text.upper().lower().split())
    assert read_words(BOOK, shouted) == read_words(BOOK, " ".join(text.lower().split()))


def test_a_hundred_kilobytes_are_read_or_asked_about() -> None:
    assert asks("what " * 20_000) == "Which vehicle?"
    assert brief("blah " * 20_000 + "hatch 165 deep") == {"depth": 165}
    assert asks("9" * 100_000) == "Which vehicle?"


# --- the same question as plain data ---

ALIKE: Mapping[str, dict[str, Any]] = {
    "hatch 2 dash short double": {"what": "short-double"},
    "hatch 2 dash late short double": {"what": "short-double", "splits": {"build": "late"}},
    "hatch 2 dash year 2 165 mm": {"what": {"depth": "165 mm"}, "year": 2},
    "hatch 2 dash 178 x 100 x 165 mm": {"what": {"width": "178 mm", "height": "100 mm", "depth": "165 mm"}},
    "hatch 2 dash 165 ± 2 mm flush kit": {"what": {"depth": "165 ± 2 mm"}, "state": {"mounts": ["flush-kit"]}},
    "hatch 2 dash short double 150 mm deep": {"what": {"depth": "150 mm", "like": "short-double"}},
}


@pytest.mark.parametrize(("words", "data"), ALIKE.items())
def test_words_and_plain_data_are_one_question(words: str, data: dict[str, Any]) -> None:
    plain = read_question(BOOK, {"vehicle": "compact-hatch-2", "place": "dash-centre", **data})
    assert read_question(BOOK, {"words": words}).read == plain.read


def test_neither_takes_a_door_for_an_opening() -> None:
    assert asks("hatch left front door short double") == "left front door is no opening that takes a box. Which place?"
    with pytest.raises(Wrong, match="take a box"):
        read_question(BOOK, {"vehicle": "compact-hatch-2", "place": "front-door-left", "what": "short-double"})


json_like = st.recursive(
    st.one_of(st.none(), st.booleans(), st.integers(), st.floats(), st.text(max_size=6), st.sampled_from(sorted(SHOP))),
    lambda inner: st.one_of(st.lists(inner, max_size=3), st.dictionaries(st.text(max_size=6), inner, max_size=3)),
    max_leaves=6,
)
KEYS = ("vehicle", "place", "splits", "year", "state", "what", "words", "extra")
RIGHT: dict[str, Any] = {"vehicle": "compact-hatch-2", "place": "dash-centre", "what": {"depth": "165 mm"}}
INNER = ("build", "mounts", "cut", "loom", "plugs", "depth", "plug", "exit", "like")


def outcome(data: Mapping[str, Any]) -> object:
    try:
        return read_question(BOOK, data).read
    except Wrong as wrong:
        return wrong


@given(
    st.dictionaries(
        st.sampled_from(KEYS), st.one_of(json_like, st.dictionaries(st.sampled_from(INNER), json_like)), max_size=2
    )
)
def test_whatever_stands_in_a_question_is_read_or_refused_with_a_mend(changes: dict[str, Any]) -> None:
    found = outcome({**RIGHT, **changes})
    if isinstance(found, Wrong):
        assert all((found.what, found.mend, len(str(found)) < 1000))
    else:
        assert isinstance(found, Question)

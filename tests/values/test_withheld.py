"""What no output may carry is withheld, and what only looks like it is not.

The plates, numbers and people are made up; the forms are common practice, no source.
"""

import pytest

from bezelbook.values.withheld import found_in, withheld

HIDDEN = {
    "a chassis number": ["1M8GDM9AXKP042788", "stamped 9ZZZZZ1JZXW000001 under the glass"],
    "a phone number": [
        "+44 20 7946 0958",
        "call 555-123-4567",
        "(555) 123-4567 after six",
        "ring him on 79460958",
        "his mobile: 0171 555 0123",
    ],
    "a plate": [
        "AB12 CDE",
        "AB-123-CD",
        "the 7ABC123 car",
        "ABC-1234",
        "M-AB 1234",
        "plate: X12 YZ",
        "reg no KL 99 TR",
    ],
    "a person": ["someone@example.com", "Mr Smith's car", "for Mrs. O'Neil", "customer is Jane", "owner was Jane Doe"],
    "a tightening figure": [
        "25 Nm",
        "25 N·m",
        "18 ft-lb",
        "18 ft lbs",
        "40 in lbs",
        "10 lb ft",
        "2,5 kgf m",
        "tighten the nuts to 9",
    ],
    "work on a restraint, for which the vehicle's service information rules": [
        "unplug the airbag first",
        "disconnect battery, then the yellow airbag plug",
        "airbag: wait 10 min",
        "wait three minutes for the SRS",
    ],
}
SHOWN = [
    "M5",
    "M5 x 20",
    "12 V",
    "6 x 9",
    "6 x 9 in",
    "T20",
    "7 mm hex",
    "9/32",
    "182 x 53 mm",
    "165.1 mm (6 1/2 in)",
    "ISO 7736",
    "DIN 75490",
    "ISO 10487",
    "ring 14.5",
    "Used a ring. (fitted, db, 2025-06-05)",
    "rings 8 10 12 15 18 on the shelf, ring 10 12 15 fits too",
    "call back on 2025-06-05",
    "square 24",
    "long 24 offset key",
    "A4 permanent",
    "4 AWG",
    "2026-01-02",
    "2026-01-02 and 2025-12-31",
    "110, 150, 165, 170, 185",
    "0.5 to 2 bay-hours",
    "8 x 0.5 mm",
    "hatch-2",
    "compact-hatch-2",
    "plate 4 mm thick",
    "the plate is 18 mm",
    "reg",
    "call it 10 mm",
    "ring of 12.7 mm",
    "text says 165",
    "Restraint near: stop. Vehicle service information, qualified person.",
    "curtain airbag behind the pillar: left alone",
    "belt guide near",
    "seat belt light stays off",
    "5.5 m of wire",
    "0.27 V",
    "T-late",
    "AUX-IN 12 V",
    "USB-C 5 V",
    "4 Nominal",
    "10 cm",
    "6 in deep",
    "asked 4 times; 3 answers hang on it",
    "the owner was happy",
    "customer is waiting",
    "Used to be in his old van.",
    "dr",
    "wait for the glue",
    "110 mm from 4 to 12 o'clock",
    "depth 0 170 185 200 mm",
]


@pytest.mark.parametrize(("what", "text"), [(what, text) for what, texts in HIDDEN.items() for text in texts])
def test_it_is_withheld_and_said_what_it_was(what: str, text: str) -> None:
    assert f"withheld: {what}" in withheld(text)
    assert what in list(found_in(text))


@pytest.mark.parametrize("text", SHOWN)
def test_a_shops_own_words_are_shown_as_they_are(text: str) -> None:
    assert withheld(text) == text
    assert list(found_in(text)) == []


@pytest.mark.parametrize("text", [text for texts in HIDDEN.values() for text in texts])
def test_withholding_twice_changes_nothing_more(text: str) -> None:
    assert withheld(withheld(text)) == withheld(text)


def test_only_the_words_themselves_are_withheld() -> None:
    assert withheld("went in, tightened to 9 as they say") == "went in, withheld: a tightening figure as they say"
    assert withheld("deep one, Mr Smith, 165 mm") == "deep one, withheld: a person, 165 mm"

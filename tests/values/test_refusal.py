"""A refusal says what is wrong and what would mend it, and whatever it proposes can be read."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bezelbook.values.complaint import BareNumber
from bezelbook.values.grammar import Form, reads
from bezelbook.values.refusal import refusal
from tests.values.spoken import SIZES, mangled, singles, with_give

LENGTH = Form("length")
SIZE = Form("length", sized=True)
PLAIN = Form("length", plus_minus=False)


def proposals(mend: str) -> list[str]:
    """The texts that a mend tells a person to write."""
    said = mend.removeprefix("Write each size in its own field: ").removeprefix("Write ")
    return said.replace(", then ", " or ").split(" or ")


@pytest.mark.parametrize(
    ("text", "form", "said"),
    [
        ("165", LENGTH, "165 is a bare number. Write 165 mm or 165 in."),
        ("165 ± 1", LENGTH, "165 ± 1 is a bare number. Write 165 ± 1 mm or 165 ± 1 in."),
        ("165 caliper", SIZE, "165 caliper is a bare number. Write 165 mm caliper or 165 in caliper."),
        ("95", Form("time"), "95 is a bare number. Write 95 min or 95 h."),
        ("15", Form("angle"), "15 is a bare number. Write 15 deg."),
        (
            "",
            LENGTH,
            "there is no text where a length belongs. Write it like 165 mm or 6 1/2 in, or leave the field out.",
        ),
        ("165\tmm", LENGTH, '"165 mm" has odd marks or spaces. Write 165 mm.'),
        ("1 / 2 in", LENGTH, '"1 / 2 in" has odd marks or spaces. Write 1/2 in.'),
        ("5. mm", LENGTH, '"5. mm" has odd marks or spaces. Write 5 mm.'),
        ("1 ft + 2 in", LENGTH, '"1 ft + 2 in" has odd marks or spaces. Write 1 ft 2 in.'),
        ("165 mm (printed)", SIZE, '"165 mm (printed)" has odd marks or spaces. Write 165 mm printed.'),
        (
            "165 mm calliper",
            SIZE,
            '"165 mm calliper" ends in a word other than caliper or printed. Write 165 mm caliper.',
        ),
        ("165 mm beside it", SIZE, '"165 mm beside it" says more than a length. Write 165 mm.'),
        ("-5 mm", LENGTH, '"-5 mm" has a sign, and a length here never goes below nothing. Write 5 mm.'),
        ("-5", LENGTH, '"-5" has a sign, and a length here never goes below nothing. Write 5 mm or 5 in.'),
        (
            "165 mm printed",
            LENGTH,
            '"165 mm printed" says how it was measured, which this field does not take. Write 165 mm.',
        ),
        ("165 ± 1 mm", PLAIN, '"165 ± 1 mm" has a ±, which this field does not take. Write 165 mm.'),
        ("165 mm ± 1 mm", PLAIN, '"165 mm ± 1 mm" has a ±, which this field does not take. Write 165 mm.'),
        ("165 ± 1", PLAIN, '"165 ± 1" has a ±, which this field does not take. Write 165 mm or 165 in.'),
        ("165 ± 0 mm", LENGTH, '"165 ± 0 mm" has a ± of nothing. Write 165 mm.'),
        ("6.5 in ± 1", LENGTH, '"6.5 in ± 1" has a ± without a unit. Write 6.5 in ± 1 mm or 6.5 in ± 1 in.'),
        ("165 ± 1 mn", LENGTH, '"1 mn" ends in "mn", which is not a unit of length here. Write 1 mm or 1 in.'),
        ("165 mn ± 1 mm", LENGTH, '"165 mn" ends in "mn", which is not a unit of length here. Write 165 mm or 165 in.'),
        ("9 ± 1 ± 2 mm", LENGTH, '"9 ± 1 ± 2 mm" has more than one ±. Write it like 165 mm or 6 1/2 in.'),
        ("about 165 mm", LENGTH, '"about 165 mm" says more than a length. Write 165 mm.'),
        ("Ø165 mm", LENGTH, '"Ø165 mm" says more than a length. Write 165 mm.'),
        ("165 mm or 6.5 in", LENGTH, '"165 mm or 6.5 in" says more than a length. Write 165 mm or 6.5 in.'),
        ("1e3 mm", LENGTH, '"1e3 mm" is not a length. Write it like 165 mm or 6 1/2 in.'),
        ("± 5 mm", LENGTH, '"± 5 mm" says more than a length. Write 5 mm.'),
    ],
)
def test_a_refusal_names_the_fault_and_the_mend(text: str, form: Form, said: str) -> None:
    assert str(refusal(text, form)) == said


def test_only_a_bare_number_is_refused_as_one() -> None:
    assert isinstance(refusal("165", LENGTH), BareNumber)
    assert not isinstance(refusal("165 mm ± 1", LENGTH), BareNumber)


forms = st.builds(Form, st.sampled_from(sorted(SIZES)), st.booleans(), st.booleans(), st.booleans())
good = st.sampled_from(sorted(SIZES)).flatmap(
    lambda name: singles(name).map(lambda item: item[0]) | with_give(name).map(lambda item: item[0])
)


@given(mangled(good) | good | st.text(max_size=12), forms)
def test_whatever_a_refusal_proposes_can_be_read(text: str, form: Form) -> None:
    if reads(text, form):
        return
    wrong = refusal(text, form)
    assert wrong.what
    assert not wrong.what.endswith(".")
    if wrong.mend.startswith(("Write it", "Write each size in its own field")) and "field:" not in wrong.mend:
        return
    assert [way for way in proposals(wrong.mend) if not reads(way, form)] == []

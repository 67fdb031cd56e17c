"""An id is lower-case words joined by hyphens, and a file name on every machine."""

import re
import string

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pydantic import TypeAdapter, ValidationError

from bezelbook.values.ident import ID_PATTERN, Id, id_complaint, is_id

IDS = TypeAdapter(Id)
# The device names that Windows reserves, by its documentation on naming files.
RESERVED = [
    *("con", "prn", "aux", "nul"),
    *(f"{name}{digit}" for name in ("com", "lpt") for digit in range(1, 10)),
]

words = st.text(string.ascii_lowercase + string.digits, min_size=1, max_size=12)


@given(st.lists(words, min_size=1, max_size=5).map("-".join))
def test_words_joined_by_hyphens_are_an_id(text: str) -> None:
    assert is_id(text) == (text not in RESERVED)


@pytest.mark.parametrize("text", RESERVED)
def test_names_that_windows_keeps_are_no_ids_but_may_begin_one(text: str) -> None:
    assert not is_id(text)
    assert is_id(f"{text}-kit")
    assert is_id(f"{text}x")


@pytest.mark.parametrize(
    "text", ["", "-", "a-", "-a", "a--b", "A", "a b", "a_b", "a.b", "é", "a\n", "con\n", "a" * 65, "٣"]
)
def test_nothing_else_is_an_id(text: str) -> None:
    assert not is_id(text)


def test_the_longest_id_has_64_letters() -> None:
    assert is_id("a" * 64)


@given(words | st.text(max_size=8) | st.sampled_from([*RESERVED, "con\n"]))
def test_the_pattern_the_model_and_the_complaint_agree(text: str) -> None:
    try:
        IDS.validate_python(text)
        read = True
    except ValidationError:
        read = False
    assert read == (re.search(ID_PATTERN, text) is not None) == is_id(text) == (id_complaint(text) is None)


@pytest.mark.parametrize(
    ("text", "mend"),
    [
        ("Compact Hatch 2", "Write compact-hatch-2"),
        ("compact_hatch", "Write compact-hatch"),
        ("porte-arrière", "Write porte-arriere"),
        ("con", "Write con-1"),
        ("CON", "Write con-1"),
        ("?", "Write words such as compact-hatch-2"),
        ("a" * 70, f"Write {'a' * 64}"),
    ],
)
def test_a_name_that_would_do_is_proposed(text: str, mend: str) -> None:
    wrong = id_complaint(text)
    assert wrong
    assert wrong.mend == mend


@given(st.text(min_size=1, max_size=90))
def test_what_is_proposed_is_an_id(text: str) -> None:
    wrong = id_complaint(text)
    if wrong and not wrong.mend.startswith("Write words"):
        assert is_id(wrong.mend.removeprefix("Write "))


def test_a_complaint_says_which_rule_is_broken() -> None:
    said = {text: str(id_complaint(text)) for text in ("nul", "a" * 65, "A b")}
    assert "is a name that Windows keeps for itself" in said["nul"]
    assert "is longer than 64 letters" in said["a" * 65]
    assert "is not a name made of lower-case words" in said["A b"]


def test_the_schema_holds_the_pattern() -> None:
    assert IDS.json_schema() == {"type": "string", "pattern": ID_PATTERN}

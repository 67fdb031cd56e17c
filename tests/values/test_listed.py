"""Several things are said in one breath."""

import pytest

from bezelbook.values.listed import counted, listed


@pytest.mark.parametrize(
    ("words", "joined", "said"),
    [
        ([], "and", ""),
        (["left"], "and", "left"),
        (["left", "right"], "and", "left and right"),
        (["no mount", "flush kit", "pocket"], "or", "no mount, flush kit or pocket"),
    ],
)
def test_the_last_two_are_joined_by_the_word(words: list[str], joined: str, said: str) -> None:
    assert listed(words, joined) == said


def test_one_note_is_no_notes() -> None:
    assert [counted("a"), counted("ab"), counted("", "job")] == ["1 note", "2 notes", "0 jobs"]

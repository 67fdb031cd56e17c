"""The sentence says which of the two leaves it blank, or what each says."""

from bezelbook.kinds.note.record import AnyNote, Tried
from bezelbook.reasoning.differing.worded import worded
from tests.reasoning import making


def loom(note: AnyNote) -> str | None:
    assert isinstance(note, Tried)
    return note.loom


def test_the_sentence_for_the_team() -> None:
    aside, behind, blank = (
        making.tried(name, loom=way) for name, way in (("a", "aside"), ("b", "behind"), ("c", None))
    )
    assert worded("loom", (aside, behind), loom) == "the loom: aside in a, behind in b"
    assert worded("cut", (aside, blank), loom) == "a cut: c does not say whether anything was cut"
    assert worded("sound", (blank, blank), loom, "ask") == "the sound: c and c do not say which the car was; ask"

"""A blank that is unlike its author weighs more, and what was weighed is said."""

from tests.reasoning import making
from tests.reasoning.differing.a_clash import no, why, yes


def test_whoever_always_says_and_this_time_did_not_is_named() -> None:
    usual = [making.tried(f"n{number}", what="tiny", author="ab") for number in range(2)]
    tiny = making.unit("tiny", body_depth="60 ± 1 mm caliper")
    plain = next(one for one in why(yes(loom=None), no(loom="behind"), tiny, *usual) if one.axis == "loom")
    unlike = next(
        one for one in why(yes(loom=None, author="ab"), no(loom="behind"), tiny, *usual) if one.axis == "loom"
    )
    assert unlike.weight > plain.weight
    assert unlike.because == ("ab always says otherwise",)
    assert plain.because == ()

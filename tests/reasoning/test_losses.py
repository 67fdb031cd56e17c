"""What not knowing costs: whole ranges in plain words, and the middle by which faults are ranked."""

from fractions import Fraction

from bezelbook.reasoning import losses
from bezelbook.reasoning.losses import Loss

EVERY = [loss for loss in vars(losses).values() if isinstance(loss, Loss)]


def test_a_loss_is_said_in_bay_hours_with_what_happens() -> None:
    """0.5 to 2 bay-hours for a chassis found too deep with the dash open: common practice, no source."""
    said = losses.TOO_DEEP.words
    assert said.startswith("0.5 to 2 bay-hours: ")
    assert said.endswith("(common practice, no source)")
    assert losses.TOO_DEEP.middle == Fraction(5, 4)


def test_every_loss_is_a_range_and_no_two_say_the_same() -> None:
    assert all(0 < loss.least < loss.most for loss in EVERY)
    assert len({loss.what for loss in EVERY}) == len(EVERY) > 20

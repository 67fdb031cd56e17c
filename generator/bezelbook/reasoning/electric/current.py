"""How much current an amplifier draws at most."""

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

from bezelbook.kinds.amplifier.record import Amplifier, Gives
from bezelbook.reasoning.electric.amounts import Range, amount

# How much of what it draws an amplifier gives on, and the car's supply while it runs. Trade 4.9: common practice,
# without a source.
GIVES_ON = {"switching": Fraction(8, 10), "linear": Fraction(5, 10)}
RUNNING_VOLTS = Fraction(138, 10)


@dataclass(frozen=True, slots=True)
class Draw:
    """What an amplifier draws in A, a clean tone on all channels: both ends where its class is not looked."""

    amps: Range
    watts: Fraction
    unknown: tuple[str, ...]


def current(watts: Fraction, gives_on: Fraction, volts: Fraction = RUNNING_VOLTS) -> Fraction:
    """The current in A that so many watts of sound take: P/(eff·V)."""
    return watts / (gives_on * volts)


def draw(amplifier: Amplifier) -> Draw | None:
    """What an amplifier draws at most by the power its record gives it; None when no power is written down.

    Of several loads it is the one that gives most. A line of power that says no number of channels is read as all.
    """
    totals = tuple(_totals(amplifier))
    if not totals:
        return None
    watts = max(total for total, _ in totals)
    efficiencies = [GIVES_ON[amplifier.amplifier_class]] if amplifier.amplifier_class else sorted(GIVES_ON.values())
    unknown = [] if amplifier.amplifier_class else ["switching or linear is not looked"]
    unknown += sorted({why for _, why in totals if why})
    return Draw(Range(current(watts, efficiencies[-1]), current(watts, efficiencies[0])), watts, tuple(unknown))


def _totals(amplifier: Amplifier) -> Iterator[tuple[Fraction, str]]:
    """The watts of each line, and what was not looked on it."""
    for gives in amplifier.power:
        channels = _channels(amplifier, gives)
        unsaid = "" if channels else "how many channels give it at once is not looked, and taken as one"
        yield amount(gives.watts) * (channels or 1), unsaid


def _channels(amplifier: Amplifier, gives: Gives) -> int | None:
    if gives.channels is not None or amplifier.channels is None:
        return gives.channels
    return amplifier.channels // 2 if gives.bridged == "bridged" else amplifier.channels

"""What a screen does to the controls near it, in the shop's words."""

from fractions import Fraction

from bezelbook.reasoning.screens.between import FAR
from bezelbook.reasoning.screens.cover import FINGER, Over
from bezelbook.reasoning.screens.heights import Window
from bezelbook.reasoning.screens.offset import touching
from bezelbook.reasoning.screens.screen_at import Lying, ScreenAt
from bezelbook.reasoning.screens.usable import Usable
from bezelbook.values.listed import listed
from bezelbook.values.shown import show_length, show_mm

TENTH = 100_000  # nanometres, to which lengths are shown
_FINGER_WORDS = show_mm(round(FINGER))


def verdict_words(found: ScreenAt, first: str) -> str:
    """The verdict as a sentence without its dot; lengths in both units with `first` first."""
    if found.lying is None or found.verdict == "not looked":
        return "controls near it: not looked"
    usable = found.lying.usable
    if found.verdict == "usable":
        what = listed(list(dict.fromkeys(over.control.what for over in usable.overs)))
        return f"leaves the {what} free, however it is set"
    if found.verdict == "usable if set":
        return f"usable if the middle of the screen is set {_windows(usable, first)}{_lean_words(found.lying)}"
    if found.verdict == "covers":
        return (
            f"covers the {usable.worst.control.what} by {_by(usable.worst, usable, first)} at best, however it is set"
        )
    return _close_words(usable, first)


def _close_words(usable: Usable, first: str) -> str:
    worst, by = usable.worst, _by(usable.worst, usable, first)
    if worst.by(usable.best).high <= 0:
        windows = _windows(usable, first)
        return f"too close: where its body sits decides whether the middle of the screen comes {windows}, as it must"
    if not worst.control.outlined:
        return f"may cover the {worst.control.what}, by {by}: where it starts and ends was not looked at"
    return f"too close at the {worst.control.what}: offer it up first (at best over it by {by})"


def control_words(over: Over, lying: Lying, first: str) -> str:
    """What becomes of one control at the best setting."""
    by = over.by(lying.usable.best)
    if by.high <= -FINGER:
        return "free"
    if by.high <= 0:
        gap = show_length(-round(by.high), first)
        return f"free by {gap} at worst: crowded, a finger wants {_FINGER_WORDS}"
    told = "may be covered" if by.low <= 0 else "covered" if over.control.sure else "covered, if this build has it"
    return f"{told}, by {_by(over, lying.usable, first)}{_touch(over, lying, first)}"


def crowd_words(found: ScreenAt, first: str) -> str:
    """The controls that stay free at the best setting and yet leave no room for a finger; empty if there are none."""
    if found.lying is None or found.verdict not in ("usable", "usable if set") or not found.lying.usable.crowded:
        return ""
    usable = found.lying.usable
    what = listed(list(dict.fromkeys(over.control.what for over in usable.crowded)))
    gap = min(-over.by(usable.best).high for over in usable.crowded)
    return f"crowds the {what}: {show_length(round(gap), first)} left at worst, and a finger wants {_FINGER_WORDS}"


def height_words(height: Fraction, first: str) -> str:
    """A height of the screen's middle as against the middle of the opening."""
    return f"{_off_middle(height, first)} the middle of the opening"


def _off_middle(height: Fraction, first: str) -> str:
    if not round(height / TENTH):
        return "level with"
    return f"{show_length(abs(round(height)), first)} {'above' if height > 0 else 'below'}"


def _by(over: Over, found: Usable, first: str) -> str:
    by = over.by(found.best)
    if by.low < 0 or by.high - by.low > 2 * FINGER:
        return f"{show_length(round(by.high), first)} at most" if by.high < FAR / 2 else "nobody knows how much"
    return f"{show_length(round(by.middle), first)} ± {show_mm(round((by.high - by.low) / 2))}"


def _touch(over: Over, lying: Lying, first: str) -> str:
    told = touching(lying.outline, over.control)
    if told.clear_from is None or told.touch == "not looked":
        return ""
    if told.touch == "touches":
        return ", and touched at every offset"
    if told.touch == "clears":
        return ", not touched"
    return f", not touched from {show_length(round(told.clear_from), first)} off the dash on"


def _lean_words(lying: Lying) -> str:
    lean = lying.usable.lean
    return "" if lean is None or lean == lying.outline.flattest else f", leaning {Fraction(lean, 1000)}°"


def _windows(found: Usable, first: str) -> str:
    return listed([_window(window, found.reach, first) for window in found.free], "or")


def _window(window: Window, reach: Window, first: str) -> str:
    """A window of heights; an end that is no more than that of the reach is left out, unless both are."""
    low, high = _inward(window)
    down, up = window.low <= reach.low, window.high >= reach.high
    if down and not up:
        return f"no higher than {height_words(high, first)}"
    if up and not down:
        return f"no lower than {height_words(low, first)}"
    return f"from {_off_middle(low, first)} to {height_words(high, first)}"


def _inward(window: Window) -> tuple[Fraction, Fraction]:
    """The ends rounded inward to what is shown, so that what is read off is still inside."""
    low, high = -(-window.low // TENTH) * TENTH, window.high // TENTH * TENTH
    return (Fraction(low), Fraction(high)) if low <= high else (window.low, window.high)

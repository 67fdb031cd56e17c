"""What it costs when something was not known, in hours of one bay and one person (common practice, no source)."""

from dataclasses import dataclass
from fractions import Fraction


@dataclass(frozen=True, slots=True)
class Loss:
    """One way to lose time: what happens, and the bay-hours it takes, from `least` to `most`."""

    what: str
    least: Fraction
    most: Fraction

    @property
    def middle(self) -> Fraction:
        """Halfway between the two, in bay-hours."""
        return (self.least + self.most) / 2

    @property
    def words(self) -> str:
        """As one line for the team."""
        return f"{_shown(self.least)} to {_shown(self.most)} bay-hours: {self.what} (common practice, no source)"


def _shown(hours: Fraction) -> str:
    return f"{float(hours):g}"


def _loss(least: str, most: str, what: str) -> Loss:
    return Loss(what, Fraction(least), Fraction(most))


WRONG_HARNESS = _loss("0.3", "1.5", "the wrong harness is fetched, and found when the plugs do not mate")
CLIPS_GONE = _loss("0.5", "1.5", "clips are gone and no spares there: a rattle, or a car held a day")
TOO_DEEP = _loss("0.5", "2", "it proves too deep with the dash open, and goes back")
LAST_BIT = _loss("0.5", "1", "it goes in but its plugs do not, and it will not seat")
TWEETER_GONE = _loss("1", "1.5", "a blown tweeter or an amplifier with no load")
GLASS_HIT = _loss("2", "4", "the glass comes down on a magnet")
GRILLE_BUZZ = _loss("0.7", "1.5", "the panel touches the surround, and the car comes back with a buzz")
WHISTLE = _loss("0.7", "1", "holes left open whistle, and the car comes back")
NO_SOUND = _loss("1", "3", "no sound: the factory amplifier protects itself")
FLAT_BATTERY = _loss("1", "3", "the radio never turns on, or never off")
OUT_OF_PHASE = _loss("0.3", "1", "one channel the wrong way round: thin bass")
SOUND_LOST = _loss("1", "3", "a warning sound or a button is lost, and the job is done again")
TRIM_BROKEN = _loss("0.5", "2", "a hook or a tab snaps because nobody knew of it")
COVERED = _loss("0.7", "1.5", "the screen covers a switch, and everything comes out again")
QUOTED_SHORT = _loss("1", "2.5", "quoted too short, and the next customer waits")
NOISE = _loss("1", "3", "noise from a ground or a level")
CAMERA_BLACK = _loss("1", "2", "the camera stays black")
WATER_IN = _loss("1", "2", "water in the door")
CUT_WRONG = _loss("1", "3", "something is cut or drilled that should not be")
BOUGHT_TWICE = _loss("0.1", "0.5", "the same thing is bought twice or fetched twice")
SALE_LOST = _loss("0.2", "1", "a job that would have gone in is sent away")
WALK = _loss("0.1", "0.3", "a walk back to the shelf, or ten minutes asking round")
SOMEONE_HURT = _loss("1", "8", "somebody may be hurt")

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


WRONG_HARNESS = Loss(
    "the wrong harness is fetched, and found when the plugs do not mate", Fraction("0.3"), Fraction("1.5")
)
CLIPS_GONE = Loss("clips are gone and no spares there: a rattle, or a car held a day", Fraction("0.5"), Fraction("1.5"))
TOO_DEEP = Loss("it proves too deep with the dash open, and goes back", Fraction("0.5"), Fraction("2"))
LAST_BIT = Loss("it goes in but its plugs do not, and it will not seat", Fraction("0.5"), Fraction("1"))
TWEETER_GONE = Loss("a blown tweeter or an amplifier with no load", Fraction("1"), Fraction("1.5"))
GLASS_HIT = Loss("the glass comes down on a magnet", Fraction("2"), Fraction("4"))
GRILLE_BUZZ = Loss(
    "the panel touches the surround, and the car comes back with a buzz", Fraction("0.7"), Fraction("1.5")
)
WHISTLE = Loss("holes left open whistle, and the car comes back", Fraction("0.7"), Fraction("1"))
NO_SOUND = Loss("no sound: the factory amplifier protects itself", Fraction("1"), Fraction("3"))
FLAT_BATTERY = Loss("the radio never turns on, or never off", Fraction("1"), Fraction("3"))
OUT_OF_PHASE = Loss("one channel the wrong way round: thin bass", Fraction("0.3"), Fraction("1"))
SOUND_LOST = Loss("a warning sound or a button is lost, and the job is done again", Fraction("1"), Fraction("3"))
TRIM_BROKEN = Loss("a hook or a tab snaps because nobody knew of it", Fraction("0.5"), Fraction("2"))
COVERED = Loss("the screen covers a switch, and everything comes out again", Fraction("0.7"), Fraction("1.5"))
QUOTED_SHORT = Loss("quoted too short, and the next customer waits", Fraction("1"), Fraction("2.5"))
NOISE = Loss("noise from a ground or a level", Fraction("1"), Fraction("3"))
CAMERA_BLACK = Loss("the camera stays black", Fraction("1"), Fraction("2"))
WATER_IN = Loss("water in the door", Fraction("1"), Fraction("2"))
CUT_WRONG = Loss("something is cut or drilled that should not be", Fraction("1"), Fraction("3"))
BOUGHT_TWICE = Loss("the same thing is bought twice or fetched twice", Fraction("0.1"), Fraction("0.5"))
SALE_LOST = Loss("a job that would have gone in is sent away", Fraction("0.2"), Fraction("1"))
WALK = Loss("a walk back to the shelf, or ten minutes asking round", Fraction("0.1"), Fraction("0.3"))
SOMEONE_HURT = Loss("somebody may be hurt", Fraction("1"), Fraction("8"))

"""How shops say places, sides and speakers: each way of saying a thing comes to one word, in a browser too."""

from collections.abc import Mapping

# Each is replaced in turn in folded words; common practice, no source.
SHOP_WORDS: tuple[tuple[str, str], ...] = (
    (r"\b[2-5] doors?\b", "|"),  # a body, and no place in it
    (r"\b(?:spkrs?|spks?|speekers?|speakrs?|spekers?|speakers|loudspeakers?)\b", "speaker"),
    (r"\b(?:coaxials?|coaxes|coaxs|co ax)\b", "coax"),
    (r"\b(?:components?|comps)\b", "component"),
    (r"\b(?:tweeters|twts?|tweets?|twtrs?|tweters?)\b", "tweeter"),
    (r"\b(?:subs|subwoofers?|sub woofers?|woofers?)\b", "sub"),
    (r"\b(?:mids|midrange|mid range)\b", "midrange"),
    (r"\b(?:front stage|fronts)\b", "front speaker"),
    (r"\brears\b", "rear speaker"),
    (r"\b(?:drivers?|passengers?)(?: s)?(?: side)?\b", "seatside"),
    (r"\b(?:near ?side|off ?side|kerb ?side)\b", "seatside"),
    (r"\b(?:left hand|lefthand|left|lhs|lh|lft|l h s|l h|l)(?: side)?\b", "left"),
    (r"\b(?:right hand|righthand|right|rhs|rh|rght|rite|r h s|r h|r)(?: side)?\b", "right"),
    (r"\b(?:center|centre|ctr|middle)\b", "centre"),
    (r"\b(?:fl|lf)\b", "front left"),
    (r"\b(?:fr|rf)\b", "front right"),
    (r"\b(?:rl|lr)\b", "rear left"),
    (r"\brr\b", "rear right"),
    (r"\b(?:frnt|frt|fwd)\b", "front"),
    (r"\b(?:back|bk)\b", "rear"),
    (r"\b(?:doors|drs?|dor|dors)\b", "door"),
    (r"\b(?:mirror (?:triangles?|corners?)|mirrors?|sail panels?|sails?|triangles?)\b", "sail"),
    (r"\b(?:rear )?(?:parcel|package|hat) (?:shelf|shelves|tray)\b", "shelf"),
    (r"\b(?:rear )?(?:decks?|shelves|shelf)\b", "shelf"),
    (r"\b(?:kick panels?|kicks?|foot ?wells?)\b", "kick"),
    (r"\b(?:a )?pillars?\b", "pillar"),
    (r"\b(?:quarters?)(?: panels?)?\b", "quarter"),
    (r"\b(?:spare )?(?:wheel )?wells?\b", "well"),
    (r"\b(?:load|cargo) (?:bay|area)s?\b", "loadbay"),
    (r"\bunder (?:the )?(?:(?:rear|front) )?(?:bench|seats?)\b", "underseat"),
    (r"\boverheads?\b|\bover head\b", "overhead"),
    (r"\bcorners\b", "corner"),
)
# Words that alone show that a place for a speaker is meant.
PLACE_WORDS = ("door", "sail", "shelf", "kick", "pillar", "quarter", "well", "loadbay", "corner")
# Words that tell places of one vehicle apart, each of which has to be one of the place's own.
TELLING_WORDS = (*PLACE_WORDS, "front", "rear", "upper", "lower", "dash", "underseat", "overhead")
# A car that has no other doors has front doors, whatever its book calls them.
NEEDLESS_WORDS = ("front", "lower")
SIDES = ("left", "right", "centre")
# Words for speakers, and which kinds of them they mean.
SPEAKER_WORDS: Mapping[str, tuple[str, ...]] = {
    "speaker": (),
    "coax": ("coaxial",),
    "component": ("component",),
    "tweeter": ("tweeter",),
    "sub": ("subwoofer",),
    "midrange": ("mid",),
    "corner": (),
    "cutout": (),
    "bcd": (),
}

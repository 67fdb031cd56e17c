"""How a length is said by somebody who reads it off a tool: rounded, in millimetres or inches, wrong within its ±."""

from random import Random

from tests.simulator.box_world import MM

IN_64 = 396_875
# What a scale is divided into, coarsest first; a book takes no more than four decimals of a millimetre.
MM_STEPS = (MM, MM // 2, MM // 10, MM // 100, MM // 1000, MM // 10_000)
INCH_STEPS = (4 * IN_64, IN_64)


def in_mm(length: int) -> str:
    """A length as millimetres, exactly."""
    whole, rest = divmod(abs(length), MM)
    decimals = f".{rest:06}".rstrip("0").rstrip(".")
    return f"{'-' if length < 0 else ''}{whole}{decimals} mm"


def in_inches(length: int) -> str:
    """A length that is a whole number of 64ths of an inch, as a fraction."""
    whole, rest = divmod(length // IN_64, 64)
    down = 64
    while rest and not rest % 2:
        rest, down = rest // 2, down // 2
    words = [str(whole)] if whole or not rest else []
    words += [f"{rest}/{down}"] if rest else []
    return f"{' '.join(words)} in"


def read_off(dice: Random, true: int, give: int) -> str:
    """What somebody reads whose error is smaller than `give`, on a scale fine enough for that; exact for 0."""
    return read_between(dice, true - give + 1, true + give - 1) if give else read_between(dice, true, true)


def read_between(dice: Random, low: int, high: int) -> str:
    """A reading that is no smaller than one length and no larger than another."""
    inches = INCH_STEPS if dice.random() < 0.15 else ()
    for step in (*inches, *MM_STEPS[dice.choice((0, 0, 0, 1, 2, 2, 3)) :]):
        ticks = range(max(1, -(-low // step)), high // step + 1)
        if ticks:
            value = tick(dice, ticks) * step
            return in_inches(value) if step in inches else in_mm(value)
    return in_mm(max(low, 0))


def tick(dice: Random, ticks: range) -> int:
    """One of these ticks of a scale: anywhere, or as far out as there is, which is where mistakes would show."""
    return dice.choice((dice.choice(ticks), dice.choice(ticks), ticks[0], ticks[-1]))


def rounded_badly(dice: Random, true: int) -> str:
    """What is printed on a box: to the whole millimetre at best, and as often as not a few beside it."""
    beside = dice.choice((0, 0, 1, -1, 2, -3, 6, -8))
    return in_mm(max(1, round(true / MM) + beside) * MM)


def measured_on_the_bench(dice: Random, true: int, house: int, *, signed: bool = False) -> str:
    """A size as a careful record has it: by caliper with the house ±, or with a ± of its own."""
    sign = "+" if signed and true >= 0 else "-" if signed else ""
    give = dice.choice((MM // 10, MM // 5, MM // 2, MM, 2 * MM))
    way = dice.choice(("caliper", "caliper", "caliper ±", "±"))
    text = read_off_signed(dice, true, house if way == "caliper" else give)
    spread = "" if way == "caliper" else f" ± {in_mm(give)}"
    return f"{sign}{text}{spread}{' caliper' if 'caliper' in way else ''}"


def read_off_signed(dice: Random, true: int, give: int) -> str:
    """How large a length is, whichever sign it has; one that is nearly nothing is said exactly."""
    return read_off(dice, abs(true), give) if abs(true) > give else in_mm(abs(true))

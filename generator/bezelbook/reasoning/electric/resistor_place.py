"""On which circuits of a job a load resistor has any business at all."""

from typing import Literal, NamedTuple

from bezelbook.reasoning.electric.resistor_rule import ResistorRule

Amplifier = Literal["kept", "gone", "not there", "not looked"]
Speaker = Literal["taken away", "still driven", "not looked"]
WHERE = (
    "Only on circuits of a factory amplifier that stays and whose speaker is taken away. A circuit that still drives "
    "its speaker gets none, and where the factory amplifier itself is gone none is needed."
)
FIXED = (
    "Fix it to metal, clear of foam, tape and loom: at its rated power its body is over 100\u00a0°C. Feel it after ten "
    "minutes: warm, not hot."
)


class Want(NamedTuple):
    """Whether one circuit gets a load resistor, and why."""

    says: Literal["needs it", "none", "unknown", "argued over"]
    why: str


def wants(amplifier: Amplifier, speaker: Speaker, rule: ResistorRule | None) -> Want:
    """Whether a circuit gets one: what became of its amplifier and of its speaker, and what is proven for the package.

    `rule` is None when the package is not known.
    """
    if amplifier in ("gone", "not there"):
        return Want("none", f"its factory amplifier is {amplifier}")
    if speaker == "still driven":
        return Want("none", "it still drives its speaker")
    if amplifier == "not looked":
        return Want("unknown", "whether a factory amplifier is there and stays is not looked")
    if speaker == "not looked":
        return Want("unknown", "whether its speaker is taken away is not said")
    return _by_rule(rule)


def _by_rule(rule: ResistorRule | None) -> Want:
    if rule is None:
        return Want("unknown", "which audio package it is, is not looked")
    if rule.says == "not needed":
        return Want("none", "it was tried without on this package and works")
    if rule.says == "unknown":
        return Want("unknown", "nobody has tried this package with and without")
    proven = ", ".join(dict.fromkeys(one.resistor.value.typed for one in rule.proven))
    return Want(rule.says, f"{proven} proven on this package")

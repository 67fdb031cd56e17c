"""What a car's supply asks to be minded before anything is connected to it."""

from bezelbook.kinds.vehicle.record import Vehicle

CAUTIONS = {
    "12 V": "",
    "12 V from a converter": (
        "Its 12 V comes from a converter, which must be neither overloaded nor drained: read what it gives off its "
        "label before an amplifier is hung on it."
    ),
    "48 V present": (
        "There is 48 V in this car: leave its wires and its battery alone, and take 12 V only where 12 V was metered. "
        "The vehicle's service information comes first, and a qualified person."
    ),
    "high voltage present": (
        "There is high voltage in this car: keep off anything orange and off the battery; its 12 V comes from a "
        "converter, which must be neither overloaded nor drained. The vehicle's service information comes first, and "
        "a qualified person."
    ),
}
NOT_LOOKED = (
    "What feeds its 12 V side is not looked: look for orange cable and for a 48 V mark before anything is hung on it."
)


def supply_caution(vehicle: Vehicle) -> str:
    """The caution that goes with a car's supply; empty for a plain 12 V one, and said when nobody looked."""
    return CAUTIONS[vehicle.supply] if vehicle.supply else NOT_LOOKED

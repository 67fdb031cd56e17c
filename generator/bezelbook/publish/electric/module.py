"""What a module's page says of how much its outputs carry."""

from bezelbook.kinds.module.record import Module
from bezelbook.reasoning.electric.output_limit import limit

# What carries a load; a signal does not.
FEEDS = ("constant", "accessory", "ignition", "illumination", "amplifier turn-on", "aerial feed", "camera supply")


def output_lines(module: Module) -> tuple[tuple[str, str], ...]:
    """Each output that feeds something, with the most it gives, or where to look."""
    found = []
    for circuit, output in module.outputs.items():
        said = limit(output, None)
        if output.most is not None:
            found.append((circuit, f"{output.most.typed} and no more: what draws more wants a relay"))
        elif circuit in FEEDS:
            found.append((circuit, f"{said.why}: {said.look}"))
    return tuple(found)

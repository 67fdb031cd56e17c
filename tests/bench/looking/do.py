"""Something that one can do to know more, and how many minutes it takes."""

from collections.abc import Mapping
from dataclasses import dataclass

from bezelbook.reasoning.builds import Build
from bezelbook.reasoning.looks.bench_looks import BODY, BODY_MINUTES, MOUNT_MINUTES, PLUG_MINUTES
from bezelbook.reasoning.looks.opening_looks import EACH_MINUTES, OFFER_MINUTES

Where = tuple[str, str]
FRONT: tuple[str, ...] = tuple(size for size in BODY if size != "depth")
DEEP, SIZES, PLUGGED, MOUNT = ("depth",), (*BODY, "rear"), ("plug", "exit"), ("hole", "offset")
WHOLE = ("all of it",)
MINUTES: Mapping[tuple[str, ...], int] = {
    FRONT: EACH_MINUTES,
    DEEP: EACH_MINUTES,
    SIZES: BODY_MINUTES,
    PLUGGED: PLUG_MINUTES,
    MOUNT: MOUNT_MINUTES,
    WHOLE: OFFER_MINUTES,
}


@dataclass(frozen=True, order=True)
class Do:
    """Reading the front or the depth of a build of an opening, measuring a unit or a kit, or offering a unit up.

    What is offered up is the `WHOLE` unit, at a build of an opening, with these `mounts`.
    """

    where: Where | None
    build: Build
    part: str
    sizes: tuple[str, ...]
    mounts: tuple[str, ...] = ()

    @property
    def minutes(self) -> int:
        """As long as the tool itself reckons with."""
        return MINUTES[self.sizes]

    @property
    def is_offer(self) -> bool:
        """Whether a unit is offered up."""
        return self.sizes == WHOLE

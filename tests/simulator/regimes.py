"""How far the notes of a shop can be relied on: the honest shop, and shops in which strong notes state a falsehood."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field, replace
from random import Random

from tests.simulator.box_world import World
from tests.simulator.doors.jobs import DoorJob
from tests.simulator.jobs import Job
from tests.simulator.notes import Content, Note, is_strong

# What a note says instead of the truth about a job; the same content where it cannot be told so.
Falsehood = Callable[[Random, World, Job | DoorJob, Content], Content]


@dataclass(frozen=True)
class Regime:
    """How often a strong note is made false, and in which ways, each by the name that the note's memory keeps."""

    name: str
    share: float = 0.0
    ways: Mapping[str, Falsehood] = field(default_factory=dict)

    def told(self, dice: Random, world: World, job: Job | DoorJob, note: Note) -> Note:
        """The note as it gets into the book; what is weak or false anyway stays as it is."""
        if note.false or not is_strong(note.content) or dice.random() >= self.share:
            return note
        ways = {name: way(dice, world, job, note.content) for name, way in self.ways.items()}
        able = {name: made for name, made in ways.items() if made != note.content}
        if not able:
            return note
        name = dice.choice(sorted(able))
        return replace(note, content=able[name], false=name)


def other_verdict(_dice: Random, _world: World, _job: Job | DoorJob, content: Content) -> Content:
    """What went in did not, and the other way round."""
    turned = {"goes in": "does not", "does not": "goes in"}.get(str(content.get("verdict")))
    about_it = ("reason", "where", "hit", "short_by", "to_spare")
    return (
        {key: said for key, said in content.items() if key not in about_it} | {"verdict": turned} if turned else content
    )


HONEST = Regime("honest")
# No shop is like that: it shows that whoever checks the answers would notice.
UPSIDE_DOWN = Regime("upside down", 0.5, {"the other verdict": other_verdict})

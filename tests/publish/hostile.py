"""A book in which every text that an author may type tries to be something else than text."""

from typing import Any

from bezelbook.kinds.record import Record
from tests.reasoning import making

TEXTS = (
    '<script>document.title = "taken"</script>',
    '"><img src=x onerror="document.title=1">',
    "{{ 7 * 7 }} {% raw %}",
    "# heading {#top}",
    "</script><h1>no</h1>",
    "`code` **bold** [link](javascript:alert(1))",
    "\u202eright to left\u202c עברית",
    "a" * 100 + "-" + "b" * 15,
    "line\n\n## two {#main}\n\n---\n\tthree",
)
LONG = "x" * 60


def words(number: int) -> str:
    """One of the texts."""
    return TEXTS[number % len(TEXTS)]


def records() -> tuple[Record, ...]:
    """A shop, a vehicle, parts and notes of every form, with these texts wherever an author may type one."""
    return (
        making.shop(name=words(0), about=words(1), people={"rk": words(2)}),
        _vehicle(),
        making.unit(name=words(7), also=[words(0), words(5)], about=words(8), own_plug=words(1)),
        making.unit(LONG, name=words(6)),
        making.mount(
            name=words(3), also=[words(4)], about=words(1), holes={"to_drill": [words(0)]}, cannot_be_undone=[words(4)]
        ),
        *_notes(),
        *_others(),
    )


def _vehicle() -> Record:
    values = {"early": {"tell": words(0), "also": [words(3)]}, "late": {"tell": words(5)}}
    return making.vehicle(
        name=words(0),
        also=[words(1), words(7)],
        about=words(2),
        vehicle_class=words(4),
        splits={"build": {"values": values}},
        places={
            making.HOLE: {"kind": "plain opening", "side": "centre", "name": words(5), "also": [words(2)]},
            "front-door": {"kind": "door lower", "side": "left", "name": words(3), "safety": "restraint near"},
        },
        trim={"strip": {"name": words(4), "side": "left"}},
    )


def _others() -> tuple[Record, ...]:
    """A record of every other kind."""
    content: dict[str, dict[str, Any]] = {
        "connectors": {
            "name": words(0),
            "also": [words(1)],
            "about": words(8),
            "shell": "square",
            "shell_colours": [words(3)],
            "looks_like": [{"connector": "gone", "difference": words(0)}],
        },
        "speakers": {"name": words(5), "speaker_kind": "mid", "nominal": words(4), "about": words(8)},
        "amplifiers": {"name": words(1), "origin": "added", "air_path": words(8)},
        "modules": {"name": words(3), "module_kind": "data", "settings": [{"name": words(0), "does": words(8)}]},
        "adapters": {
            "name": words(2),
            "adapter_kind": "T",
            "ends": {"a": {"ends_in": words(0)}},
            "circuits": {"constant": {"does": "tapped", "lead": words(4)}},
            "known_faults": [words(8)],
        },
        "supplies": {"name": words(7), "form": "other", "size": words(1), "purpose": words(8)},
        "shelf": {"thing": "another", "count": 1, "place": words(0), "about": words(8)},
        "decisions": {
            "question": words(8),
            "decided": "go and look",
            "reason": words(0),
            "notes": [{"note": "went-in", "said": words(3)}],
            "look": {"what": words(8)},
        },
        "questions": {"words": words(8), "what": words(1)},
        "jobs": {"tag": "a-tag", "vehicle": making.CAR, "wishes": [{"want": "add", "what": words(0)}]},
    }
    return tuple(making.record(folder, "another", said) for folder, said in content.items())


def _notes() -> tuple[Record, ...]:
    at: dict[str, Any] = {"vehicle": making.CAR, "place": making.HOLE}
    seen = {"form": "seen", **at, "tell": words(3), "hidden": words(8), "plug": words(0)}
    seen |= {"fasteners": [{"kind": f"clip {words(0)}"}], "factory_speaker": {"channel": words(1)}}
    metered = {"form": "metered", **at, "plug": words(0), "cavities": [{"cavity": 1, "carries": words(5)}]}
    bench = {"form": "bench", "part": "box", "words": words(8), "readings": [{"of": words(0), "reads": "3 mm"}]}
    after = {"form": "after", **at, "settings": words(2), "kept": [words(0)], "comeback": words(1)}
    after |= {"times": [{"scope": words(0), "took": "1 h"}], "used": [words(1)]}
    after |= {"clips": [{"kind": f"clip {words(1)}", "handled": 1, "lost": 2}]}
    after |= {"resistors": [{"value": "20 ohm", "with_it": words(0), "without_it": words(1)}]}
    return (
        making.tried("went-in", words=words(8), splits={"build": "late"}, kept=[words(0)]),
        making.tried(
            "did-not",
            what=words(1),
            sizes={"depth": "300 mm caliper"},
            verdict="does not",
            hit=words(0),
            mounts=[words(4)],
        ),
        making.tried("slip", what=words(0), sizes={"depth": "6.5 mm"}, words=words(3)),
        making.tried("told", what=words(5), sure="told", cut=words(0)),
        making.measured(
            "tape", making.reading("depth", "205 ± 3 mm", hits=words(0)), words=words(8), splits={"build": "late"}
        ),
        making.record("notes", "seen", seen),
        making.record("notes", "metered", metered),
        making.record("notes", "bench", bench),
        making.record("notes", "after", after),
        making.tried("lost", vehicle="gone", what=words(0), words=words(8)),
    )

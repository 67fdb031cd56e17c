"""A small shop's book for the questions that people ask it, with the names that lead astray."""

from bezelbook.knowledge_base import KnowledgeBase
from tests.rules.case_books import book_of

OPENING = {"kind": "plain opening", "side": "centre"}
DOOR = {"kind": "door lower", "side": "left"}
DOUBLE = {"size_class": "double", "body_depth": "96 ± 1 mm"}

SHOP = {
    "vehicles": {
        "compact-hatch-2": {
            "name": "Compact hatch, second generation",
            "also": ["hatch two"],
            "vehicle_class": "compact hatch",
            "generation": 2,
            "model_years": 6,
            "splits": {
                "build": {
                    "values": {
                        "early": {"years": [1, 2, 3], "also": ["pre-facelift"]},
                        "late": {"years": [3, 4, 5, 6], "also": ["facelift", "the same"]},
                    }
                },
                "audio": {"values": {"base": {"also": ["the same"]}, "upgraded": {}}},
            },
            "places": {
                "dash-centre": {**OPENING, "name": "radio opening", "also": ["dash"]},
                "front-door-left": {**DOOR, "name": "left front door"},
            },
        },
        "cargo-van-2": {
            "name": "Cargo van, second generation",
            "also": ["van 2", "workhorse"],
            "vehicle_class": "cargo van",
            "generation": 2,
            "model_years": 8,
            "places": {
                "dash-centre": {**OPENING, "name": "radio opening", "also": ["dash"]},
                "overhead": {"kind": "overhead console", "side": "centre", "also": ["shelf over the screen"]},
                "rear-door": {**DOOR, "kind": "rear door"},
            },
        },
        "cargo-van-3": {
            "name": "Cargo van, third generation",
            "also": ["workhorse"],
            "vehicle_class": "cargo van",
            "generation": 3,
            "model_years": 2,
            "places": {"dash-centre": OPENING},
        },
        "roadster-1": {
            "name": "Small roadster",
            "vehicle_class": "roadster",
            "generation": 1,
            "model_years": 2,
            "places": {"door": DOOR},
        },
    },
    "head_units": {
        "short-double": {**DOUBLE, "name": "Short double, seven inch", "also": ["slim double", "black one"]},
        "floating-ten": {**DOUBLE, "name": "Floating ten inch", "also": ["big screen", "black one"]},
    },
    "mounts": {
        "flush-kit": {"name": "Flush kit", "also": ["usual kit"], "mount_kind": "kit", "proud": "flush"},
        "proud-kit": {"name": "Proud kit", "also": ["usual kit"], "mount_kind": "kit", "proud": "22 mm caliper"},
        "half-inch-ring": {"name": "Half-inch ring", "mount_kind": "spacer", "thickness": "1/2 in caliper"},
    },
    "notes": {
        "worded": {
            "form": "tried",
            "vehicle": "compact-hatch-2",
            "place": "dash-centre",
            "what": "short-double",
            "verdict": "goes in",
            "sure": "fitted",
            "mounts": ["kit from the Bottom-Shelf"],
        },
        "on-the-bench": {"form": "bench", "part": "short-double"},
        "seen": {"form": "seen", "vehicle": "compact-hatch-2", "place": "dash-centre", "mounts": "none"},
    },
}


def a_shop() -> KnowledgeBase:
    """The book."""
    return book_of({"book": SHOP})

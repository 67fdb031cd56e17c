"""A book whose vehicle, places and speakers are called as in no other book, so that nothing is matched by phrase."""

from typing import Any

from bezelbook.knowledge_base import KnowledgeBase
from tests.rules.case_books import book_of

SPEAKER = {"speaker_kind": "coaxial", "nominal": "130 mm", "mounting_depth": "48 mm caliper"}
SHOP: dict[str, Any] = {
    "vehicles": {
        "grain-cart-4": {
            "name": "Grain cart",
            "vehicle_class": "grain cart",
            "generation": 4,
            "model_years": 9,
            "places": {
                "aft-hatch-l": {"kind": "rear door", "side": "left", "name": "aft flap", "other_side": "aft-hatch-r"},
                "aft-hatch-r": {"kind": "rear door", "side": "right", "name": "aft flap", "other_side": "aft-hatch-l"},
                "foot-r": {"kind": "kick panel", "side": "right"},
                "roof": {"kind": "overhead console", "side": "centre"},
            },
        }
    },
    "speakers": {
        "red-thirteen": {**SPEAKER, "name": "Red thirteen", "also": ["red one"]},
        "blue-thirteen": {**SPEAKER, "name": "Blue thirteen", "also": ["blue 130"]},
    },
    "mounts": {"proud-plate": {"name": "8 mm proud plate", "mount_kind": "plate"}},
}


def an_odd_shop() -> KnowledgeBase:
    """The book."""
    return book_of({"book": SHOP})

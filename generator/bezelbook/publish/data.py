"""The data scripts: what the browser is told, as scripts that a page opened from a folder may load."""

import json
from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from bezelbook.publish.address import BOOK_SCRIPT, FINDINGS_LOG, vehicle_script
from bezelbook.publish.book_data import book_data
from bezelbook.publish.findings_log import findings_log
from bezelbook.publish.knowledge import Knowledge
from bezelbook.publish.opening import Opening
from bezelbook.publish.shown import shown
from bezelbook.publish.site_file import SiteFile
from bezelbook.publish.speakers.place import Places
from bezelbook.publish.vehicle_data import vehicle_data


def data_files(knowledge: Knowledge, openings: Sequence[Opening], speakers: Places) -> Iterator[SiteFile]:
    """What was found, as programs read it; a script for the book and one a vehicle, loaded when it is named."""
    yield SiteFile(BOOK_SCRIPT, _script("book", book_data(knowledge)))
    log = findings_log(knowledge.rules, knowledge.findings, knowledge.places, knowledge.why)
    yield SiteFile(FINDINGS_LOG, json.dumps(log, indent=1) + "\n")
    for vehicle in knowledge.book.vehicles:
        told = vehicle_data(knowledge.book, vehicle, openings, speakers)
        yield SiteFile(vehicle_script(vehicle), _script("vehicle", told), f"vehicles/{vehicle}")


def _script(what: str, data: Mapping[str, Any]) -> str:
    """A call that hands over data as it may be shown: plain ASCII, and nothing that could end a script in a page."""
    told = json.dumps(shown(data), separators=(",", ":")).replace("</", r"<\/")
    return f"bezelbook.{what}({told});\n"

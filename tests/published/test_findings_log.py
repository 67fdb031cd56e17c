"""The log of findings has the shape that SARIF 2.1.0 asks for.

Source: OASIS, Static Analysis Results Interchange Format 2.1.0 (errata 01), section 3 and its JSON schema, of which the
objects that the log uses are written down here in our own words; `additionalProperties` is false there as here.
"""

from pathlib import Path
from typing import Any

import jsonschema

from bezelbook.pipeline import knowledge_of
from bezelbook.publish.findings_log import findings_log

TEXT = {
    "type": "object",
    "required": ["text"],
    "properties": {"text": {"type": "string"}},
    "additionalProperties": False,
}
LEVEL = {"enum": ["none", "note", "warning", "error"]}
LINE = {"type": "integer", "minimum": 1}


def strict(required: list[str], **properties: Any) -> dict[str, Any]:
    return {"type": "object", "required": required, "properties": properties, "additionalProperties": False}


REGION = strict(["startLine"], startLine=LINE, startColumn=LINE)
ARTIFACT = strict(["uri"], uri={"type": "string", "format": "uri-reference"})
PHYSICAL = strict(["artifactLocation"], artifactLocation=ARTIFACT, region=REGION)
LOCATION = strict([], id={"type": "integer", "minimum": -1}, physicalLocation=PHYSICAL, message=TEXT)
LOCATIONS = {"type": "array", "items": LOCATION}
RULE = strict(
    ["id"], id={"type": "string"}, shortDescription=TEXT, fullDescription=TEXT, help=TEXT, properties={"type": "object"}
)
RESULT = strict(
    ["message"],
    ruleId={"type": "string"},
    ruleIndex={"type": "integer", "minimum": -1},
    level=LEVEL,
    message=TEXT,
    locations=LOCATIONS,
    relatedLocations=LOCATIONS,
    partialFingerprints={"type": "object", "additionalProperties": {"type": "string"}},
    properties={"type": "object"},
)
NOTIFICATION = strict(["message"], level=LEVEL, message=TEXT, locations=LOCATIONS)
INVOCATION = strict(
    ["executionSuccessful"],
    executionSuccessful={"type": "boolean"},
    toolExecutionNotifications={"type": "array", "items": NOTIFICATION},
)
DRIVER = strict(
    ["name"],
    name={"type": "string"},
    version={"type": "string"},
    rules={"type": "array", "items": RULE, "uniqueItems": True},
)
RUN = strict(
    ["tool"],
    tool=strict(["driver"], driver=DRIVER),
    columnKind={"enum": ["utf16CodeUnits", "unicodeCodePoints"]},
    invocations={"type": "array", "items": INVOCATION},
    results={"type": "array", "items": RESULT},
)
LOG = strict(
    ["version", "runs"],
    **{"$schema": {"type": "string"}, "version": {"const": "2.1.0"}, "runs": {"type": "array", "items": RUN}},
)


def log_of(book: Path) -> dict[str, Any]:
    known = knowledge_of(book)
    complaints = [("kb/a b.yaml:0:0", "not read")]
    return findings_log(known.rules, known.findings, known.places, known.why, complaints)


def test_the_log_has_the_published_shape(worked_book: Path) -> None:
    log = log_of(worked_book)
    jsonschema.Draft7Validator(LOG, format_checker=jsonschema.FormatChecker()).validate(log)
    [run] = log["runs"]
    assert run["results"]
    rules = [rule["id"] for rule in run["tool"]["driver"]["rules"]]
    assert all(rules[one["ruleIndex"]] == one["ruleId"] for one in run["results"])
    assert len({str(one["partialFingerprints"]) for one in run["results"]}) == len(run["results"])


def test_its_addresses_are_relative_and_its_places_begin_at_one(worked_book: Path) -> None:
    [run] = log_of(worked_book)["runs"]
    places = [one["locations"][0]["physicalLocation"] for one in run["results"]]
    assert all(one["artifactLocation"]["uri"].startswith(f"{worked_book.name}/") for one in places)
    [told] = run["invocations"][0]["toolExecutionNotifications"]
    where = told["locations"][0]["physicalLocation"]
    assert where == {"artifactLocation": {"uri": "kb/a%20b.yaml"}, "region": {"startLine": 1, "startColumn": 1}}

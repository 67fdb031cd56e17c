"""What the rules found in the exchange format SARIF 2.1.0, for whatever shows findings beside the files they are in."""

import hashlib
from collections.abc import Iterable, Iterator, Mapping, Sequence
from typing import Any
from urllib.parse import quote

from bezelbook import __version__
from bezelbook.finding import Finding
from bezelbook.publish.address import built, rule_page
from bezelbook.publish.knowledge import RulePage
from bezelbook.publish.shown import shown
from bezelbook.values.words import Weight

# Names of fields and their meaning: OASIS, Static Analysis Results Interchange Format 2.1.0, section 3.
LEVELS: Mapping[Weight, str] = {"stop": "error", "look first": "warning", "tidy up": "note"}
SCHEMA = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json"
# How a finding is known again after its lines have moved: by its key, which is made of no line and no note.
FINGERPRINT = "questionKey/v1"


def findings_log(
    rules: Sequence[RulePage],
    findings: Iterable[Finding],
    places: Mapping[str, Sequence[str]],
    why: Mapping[str, str],
    complaints: Sequence[tuple[str, str]] = (),
) -> dict[str, Any]:
    """The whole log as plain data, with nothing in it that no output may carry.

    `places` has for each finding's key where its quotes stand, as path:line:column with a path from the top of the
    repository; `why` says by key why it stands where it stands; `complaints` are the place and the text of each
    complaint about a file that could not be read.
    """
    order = {rule.name: index for index, rule in enumerate(rules)}
    driver = {
        "name": "bezelbook",
        "version": __version__,
        "rules": [_rule(rule) for rule in rules],
    }
    run = {
        "tool": {"driver": driver},
        "columnKind": "unicodeCodePoints",
        "invocations": [_invocation(complaints)],
        "results": [_result(one, order[one.rule], places.get(one.key, ()), why.get(one.key, "")) for one in findings],
    }
    return shown({"$schema": SCHEMA, "version": "2.1.0", "runs": [run]})


def _rule(rule: RulePage) -> dict[str, Any]:
    cases = [str(case["name"]) for case in rule.cases if case["expect"] == "fires"]
    silent = [str(case["name"]) for case in rule.cases if case.get("near_miss")]
    told = [rule.says, f"It speaks up when: {'; '.join(cases)}."]
    told += [f"It looks like it, but is not, when: {'; '.join(silent)}."] if silent else []
    return {
        "id": rule.name,
        "shortDescription": {"text": rule.title},
        "fullDescription": {"text": rule.says},
        "help": {"text": " ".join(told)},
        "properties": {"sort": rule.sort, "page": built(rule_page(rule.name))},
    }


def _invocation(complaints: Sequence[tuple[str, str]]) -> dict[str, Any]:
    told = [
        {"level": "error", "message": {"text": text}, "locations": [_location(place)]} for place, text in complaints
    ]
    return {"executionSuccessful": True, **({"toolExecutionNotifications": told} if told else {})}


def _result(finding: Finding, rule: int, places: Sequence[str], why: str) -> dict[str, Any]:
    quoted = list(zip(places, finding.quotes, strict=False))
    related = [
        _location(place) | {"id": number, "message": {"text": quote.words}}
        for number, (place, quote) in enumerate(quoted[1:], 1)
    ]
    result = {
        "ruleId": finding.rule,
        "ruleIndex": rule,
        "level": LEVELS[finding.weight],
        "message": {"text": " ".join(_told(finding))},
        "locations": [_location(place) for place, _ in quoted[:1]],
        "partialFingerprints": {FINGERPRINT: hashlib.sha256(finding.key.encode()).hexdigest()},
        "properties": {"weight": finding.weight, "costs": finding.loss.words, "why here": why},
    }
    return result | ({"relatedLocations": related} if related else {})


def _told(finding: Finding) -> Iterator[str]:
    """The finding as a few sentences."""
    yield f"{finding.says.rstrip('.')}."
    if finding.quotes:
        yield f"It says: {finding.quotes[0].words.rstrip('.')}."
    yield f"The difference: {finding.difference.rstrip('.')}."
    yield f"{finding.question} {' / '.join(finding.answers)}."


def _location(place: str) -> dict[str, Any]:
    path, line, column = place.rsplit(":", 2)
    region = {"startLine": max(1, int(line)), "startColumn": max(1, int(column))}
    return {"physicalLocation": {"artifactLocation": {"uri": quote(path)}, "region": region}}

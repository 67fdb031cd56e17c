"""A finding is known again by its key, weighs what SARIF calls it, and carries nothing that is to be withheld."""

from dataclasses import replace

from bezelbook.publish.findings_log import findings_log
from tests.publish.pages_of import RULE
from tests.publish.test_monday_page import FOUND


def test_weights_are_levels_and_the_fingerprint_is_of_the_key() -> None:
    found = [replace(FOUND, weight=weight, key=f"too-much/{weight}") for weight in ("stop", "look first", "tidy up")]
    moved = [replace(one, says="it is worded anew", quotes=()) for one in found]
    results = [findings_log([RULE], some, {}, {})["runs"][0]["results"] for some in (found, moved)]
    assert [one["level"] for one in results[0]] == ["error", "warning", "note"]
    assert [one["partialFingerprints"] for one in results[0]] == [one["partialFingerprints"] for one in results[1]]


def test_a_phone_number_is_in_no_text_of_it() -> None:
    log = findings_log([RULE], [replace(FOUND, says="call 555-123-4567")], {FOUND.key: ("kb/a.yaml:2:3",)}, {})
    assert "4567" not in str(log)
    assert "withheld: a phone number" in str(log)

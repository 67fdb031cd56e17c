"""What the parts in which the tests were run came to together."""

import sys
from collections import Counter as Tally
from collections.abc import Iterable
from pathlib import Path
from xml.etree import ElementTree as ET

NOT_PASSED = ("failures", "errors", "skipped")


def in_all(reports: Iterable[Path]) -> str:
    """One line for all parts, from what each of them wrote down."""
    parsed = [ET.parse(report) for report in reports]  # noqa: S314 - written by our own runs a moment ago
    suites = [suite.attrib for report in parsed for suite in report.iter("testsuite")]
    tally = Tally({name: sum(int(suite[name]) for suite in suites) for name in ("tests", *NOT_PASSED)})
    passed = tally["tests"] - sum(tally[name] for name in NOT_PASSED)
    others = "".join(f", {tally[name]} {name}" for name in NOT_PASSED if tally[name])
    return f"In all, of {len(suites)} parts: {passed} passed{others}"


if __name__ == "__main__":
    sys.stdout.write(in_all(sorted(Path(sys.argv[1]).glob("*.xml"))) + "\n")

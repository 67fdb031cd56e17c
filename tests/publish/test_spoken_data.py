"""What the browser is told of speaker words is plain data without what only Python reads."""

import json

from bezelbook.publish.spoken_data import spoken_data


def test_it_is_plain_data_that_a_browser_reads() -> None:
    told = json.dumps(spoken_data())
    assert not any(only_python in told for only_python in ("\\\\b", "\\\\d", "(?P"))
    assert spoken_data()["sides"] == ["left", "right", "centre"]

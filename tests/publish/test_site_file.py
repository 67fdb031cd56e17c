from dataclasses import FrozenInstanceError

import pytest

from bezelbook.publish.site_file import SiteFile


def test_a_file_of_the_site_does_not_change() -> None:
    file = SiteFile("index.md", "text")
    assert file.source is None
    with pytest.raises(FrozenInstanceError):
        file.text = "other"  # type: ignore[misc]

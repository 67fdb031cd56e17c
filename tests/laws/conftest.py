"""Laws are tried on thousands of worlds, which counting lines would slow fourfold: what they reach is not counted."""

import pytest


@pytest.hookimpl(tryfirst=True)
def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Coverage comes from the tests of each module; these are asked for one thing only, that the law holds."""
    for item in items:
        if "/laws/" in item.path.as_posix():
            item.add_marker(pytest.mark.no_cover)

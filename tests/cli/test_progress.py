"""Whoever waits longer than a moment is told what for, and nobody else is."""

from time import sleep

import pytest

from bezelbook.cli.progress import told_when_slow


def test_a_quick_thing_is_done_in_silence(capsys: pytest.CaptureFixture[str]) -> None:
    with told_when_slow("Reading", patience=60):
        pass
    assert capsys.readouterr() == ("", "")


def test_a_slow_thing_is_told_once_on_the_side(capsys: pytest.CaptureFixture[str]) -> None:
    with told_when_slow("Reading kb", patience=0.01):
        sleep(0.2)
    assert capsys.readouterr() == ("", "Reading kb …\n")


def test_after_a_fault_nothing_more_is_told(capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(ValueError, match="oh"), told_when_slow("Reading", patience=0.05):
        raise ValueError("oh")
    sleep(0.1)
    assert capsys.readouterr() == ("", "")

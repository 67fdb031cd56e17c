"""A complaint is one line that says where, what and how to mend it."""

from pathlib import Path

import pytest

from bezelbook.store.complaints import Complaint, shown_path


def test_a_complaint_is_where_what_and_how() -> None:
    complaint = Complaint("kb/notes/2026/x.yaml", 14, 3, "what", "mend")
    assert str(complaint) == "kb/notes/2026/x.yaml:14:3: what. mend."


def test_a_question_ends_as_one() -> None:
    assert str(Complaint("x.yaml", 1, 1, "what", 'Did you mean "that"?')) == 'x.yaml:1:1: what. Did you mean "that"?'


def test_complaints_sort_by_place() -> None:
    places = [("b", 1, 1), ("a", 10, 1), ("a", 2, 9), ("a", 2, 1)]
    sorted_places = [(c.path, c.line, c.column) for c in sorted(Complaint(*place, "what", "mend") for place in places)]
    assert sorted_places == [("a", 2, 1), ("a", 2, 9), ("a", 10, 1), ("b", 1, 1)]


def test_a_path_is_shown_from_where_the_command_runs(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)
    assert shown_path(tmp_path / "kb" / "x.yaml") == "kb/x.yaml"
    assert shown_path(Path("kb") / "x.yaml") == "kb/x.yaml"
    assert shown_path(tmp_path.parent / "x.yaml") == (tmp_path.parent / "x.yaml").as_posix()


def test_a_name_that_is_no_text_is_shown_all_the_same() -> None:
    assert shown_path(Path("kb/\udcff.yaml")) == "kb/\ufffd.yaml"

"""The parts in which the tests are run are added up."""

from pathlib import Path

from tests.in_all import in_all


def report(folder: Path, part: str, **counts: int) -> None:
    said = " ".join(f'{name}="{counts.get(name, 0)}"' for name in ("tests", "failures", "errors", "skipped"))
    (folder / f"{part}.xml").write_text(f"<testsuites><testsuite {said}/></testsuites>", encoding="utf-8")


def test_what_passed_in_any_part_is_counted_and_what_did_not_is_named(tmp_path: Path) -> None:
    report(tmp_path, "counted", tests=1200)
    report(tmp_path, "others", tests=34, skipped=1)
    assert in_all(sorted(tmp_path.iterdir())) == "In all, of 2 parts: 1233 passed, 1 skipped"
    report(tmp_path, "third", tests=3, failures=1, errors=1)
    assert in_all(sorted(tmp_path.iterdir())) == "In all, of 3 parts: 1234 passed, 1 failures, 1 errors, 1 skipped"

"""A new shop's first minute: a folder that checks, answers and builds."""

from pathlib import Path

import pytest

from tests.cli.conftest import Run


def test_a_new_book_checks_with_0(run: Run, tmp_path: Path) -> None:
    ran = run("start", "shop")
    assert ran.code == 0
    files = sum(path.is_file() for path in (tmp_path / "shop").rglob("*"))
    assert ran.out.startswith(f"{files} files written to shop. Write the shop's name into kb/shop.yaml, then:\n")
    assert run("check", "--strict", "--book", "shop/kb").said == "1 record read; 0 findings.\n"


def test_an_empty_folder_will_do(run: Run, tmp_path: Path) -> None:
    (tmp_path / "shop").mkdir()
    assert run("start", "shop").code == 0


@pytest.mark.parametrize("there", ["kb/shop.yaml", ".hidden", "a folder/x"])
def test_a_folder_with_anything_in_it_is_left_alone(run: Run, tmp_path: Path, there: str) -> None:
    path = tmp_path / "shop" / there
    path.parent.mkdir(parents=True)
    path.write_bytes(b"mine")
    ran = run("start", "shop")
    assert (ran.code, ran.out) == (3, "")
    assert ran.err == "bezelbook: shop is not an empty folder. Name a new folder, or one with nothing in it.\n"
    assert [one for one in (tmp_path / "shop").rglob("*") if one.is_file()] == [path]


def test_what_it_says_to_do_next_works(run: Run, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    said = run("start", "shop").out.splitlines()
    steps = [line.split() for line in said if line.startswith("  ")]
    assert [step[-1] for step in steps] == ["shop", "check", "site"]
    monkeypatch.chdir(tmp_path / "shop")
    built = [run(*step[1:]) for step in steps[1:]]
    assert [ran.code for ran in built] == [0, 0]
    assert (tmp_path / "shop" / "site" / "index.html").is_file()


def test_an_empty_book_asks_which_vehicle(run: Run) -> None:
    run("start", "shop")
    assert run("ask", "--book", "shop/kb", "hatch 165").said.startswith(
        "The book holds no vehicle yet: write the first one"
    )

"""Building the site: what stands in its way is said, and nothing but a site is ever replaced."""

import subprocess
from pathlib import Path
from typing import Any

import pytest

from tests.cli.conftest import BOOK, Run, Write


class Engine:
    """Stands in for the publishing engine: remembers how it was called, and ends as it is told to."""

    def __init__(self) -> None:
        self.calls: list[tuple[list[str], dict[str, str]]] = []
        self.ends = (0, "", "")

    def __call__(self, arguments: list[str], **more: Any) -> subprocess.CompletedProcess[str]:
        self.calls.append((arguments, more["env"]))
        code, out, err = self.ends
        return subprocess.CompletedProcess(arguments, code, out, err)


@pytest.fixture
def engine(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> Engine:
    found = Engine()
    monkeypatch.setattr("bezelbook.cli.site.subprocess.run", found)
    (tmp_path / "mkdocs.yml").write_text("site_name: x\nplugins: [bezelbook]\n", "utf-8")
    return found


def test_the_engine_is_handed_the_book_the_settings_and_where_to_build(
    run: Run, write: Write, engine: Engine, tmp_path: Path
) -> None:
    write()
    ran = run("site", "--today", "2026-05-06")
    assert (ran.code, ran.err) == (0, "")
    assert ran.out == "The site is in site. Open site/index.html in a browser: it needs no server and no network.\n"
    [(arguments, environment)] = engine.calls
    assert arguments[-4:] == ["--config-file", str(tmp_path / "mkdocs.yml"), "--site-dir", str(tmp_path / "site")]
    assert "--strict" in arguments
    assert environment["BEZELBOOK_BOOK"] == str(tmp_path / "kb")
    assert environment["BEZELBOOK_TODAY"] == "2026-05-06"


def test_without_a_day_the_book_s_own_counts(run: Run, write: Write, engine: Engine) -> None:
    write()
    run("site")
    assert "BEZELBOOK_TODAY" not in engine.calls[0][1]


def test_without_settings_it_says_where_to_run(run: Run, write: Write) -> None:
    write()
    ran = run("site")
    assert (ran.code, ran.out) == (3, "")
    assert ran.err == (
        "bezelbook: there is no mkdocs.yml here. Run this where the book's mkdocs.yml is, or name it with --config.\n"
    )


def test_what_the_engine_says_of_a_failure_is_shown(run: Run, write: Write, engine: Engine) -> None:
    write()
    engine.ends = (1, "a page went wrong\n", "Aborted\n")
    ran = run("site")
    assert (ran.code, ran.out) == (3, "")
    assert ran.err.startswith("a page went wrong\nAborted\n")
    assert "bezelbook: the site could not be built: the engine's own words are above." in ran.err


def test_an_unread_file_is_left_out_and_ends_with_2(run: Run, write: Write, engine: Engine) -> None:
    write(**{"notes/2026/b.yaml": "form: tried\n"})
    ran = run("site")
    assert ran.code == 2
    assert len(engine.calls) == 1
    assert "some files could not be read and are left out" in ran.err


@pytest.mark.parametrize("out", ["kb", "kb/site", ".", "..", "elsewhere", "mkdocs.yml"])
def test_nothing_but_a_site_is_ever_replaced(run: Run, write: Write, engine: Engine, tmp_path: Path, out: str) -> None:
    """The engine empties the folder that it builds into."""
    write()
    (tmp_path / "elsewhere").mkdir()
    (tmp_path / "elsewhere" / "thesis.odt").write_bytes(b"mine")
    ran = run("site", "--out", out)
    assert (ran.code, engine.calls) == (3, [])
    assert ran.err.startswith(f"bezelbook: {out} holds something other than a site. Name a new folder with --out")


@pytest.mark.parametrize("there", [None, "", "index.html", "404.html", "assets/x.css"])
def test_a_new_an_empty_and_a_built_folder_are_built_into(
    run: Run, write: Write, engine: Engine, tmp_path: Path, there: str | None
) -> None:
    write()
    if there is not None:
        (tmp_path / "out" / there).parent.mkdir(parents=True, exist_ok=True)
        (tmp_path / "out").mkdir(exist_ok=True)
        if there:
            (tmp_path / "out" / there).write_bytes(b"")
    assert run("site", "--out", "out").code == 0
    assert len(engine.calls) == 1


def test_a_site_is_built_without_the_file_that_cannot_be_read_and_its_home_page_says_so(
    run: Run, tmp_path: Path
) -> None:
    run("start", "shop")
    for name, text in {**BOOK, "notes/2026/b.yaml": "form: tried\n"}.items():
        path = tmp_path / "shop" / "kb" / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(text, "utf-8")
    ran = run("site", "--book", "shop/kb", "--config", "shop/mkdocs.yml", "--out", "shop/site")
    assert ran.code == 2, ran.said
    assert ran.out.startswith("The site is in shop/site.")
    home = (tmp_path / "shop" / "site" / "index.html").read_text("utf-8")
    assert "notes/2026/b.yaml" in home

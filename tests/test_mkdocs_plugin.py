"""The engine publishes what `bezelbook pages` writes, and shows what is wrong while somebody mends it."""

import shutil
from pathlib import Path
from typing import Any

import pytest
from mkdocs.config import load_config
from mkdocs.config.defaults import MkDocsConfig
from mkdocs.exceptions import PluginError
from mkdocs.structure.files import File, Files
from mkdocs.structure.pages import Page

from bezelbook import mkdocs_plugin
from bezelbook.mkdocs_plugin import BezelbookPlugin
from bezelbook.pipeline import open_book, write_pages


@pytest.fixture
def book(books: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A copy of the worked example, as the book that is to be published."""
    copied = tmp_path / "book"
    shutil.copytree(books / "worked", copied)
    monkeypatch.setenv("BEZELBOOK_BOOK", str(copied))
    return copied


@pytest.fixture
def config(root: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> MkDocsConfig:
    """The project's own settings."""
    monkeypatch.setenv("NO_MKDOCS_2_WARNING", "1")
    return load_config(str(root / "mkdocs.yml"), site_dir=str(tmp_path / "site"))


def started(config: MkDocsConfig, command: str = "build") -> BezelbookPlugin:
    plugin = BezelbookPlugin()
    plugin.on_startup(command=command, dirty=False)
    plugin.on_config(config)
    config.plugins._current_plugin = "bezelbook"
    return plugin


def files_of(plugin: BezelbookPlugin, config: MkDocsConfig) -> dict[str, File]:
    return {file.src_uri: file for file in plugin.on_files(Files([]), config=config)}


def test_the_engine_gets_exactly_what_the_command_writes(book: Path, config: MkDocsConfig, tmp_path: Path) -> None:
    write_pages(open_book(book), tmp_path / "pages")
    written = {
        path.relative_to(tmp_path / "pages").as_posix(): path.read_bytes()
        for path in (tmp_path / "pages").rglob("*")
        if path.is_file()
    }
    handed = {path: file.content_bytes for path, file in files_of(started(config), config).items()}
    assert handed == written


def test_of_a_page_of_the_book_the_engine_reads_the_headings_only(book: Path, config: MkDocsConfig) -> None:
    plugin = started(config)
    file = files_of(plugin, config)["vehicles/compact-hatch-2.md"]
    page = Page(None, file, config)
    page.read_source(config)
    assert page.markdown is not None
    headings = plugin.on_page_markdown(page.markdown, page=page, config=config, files=Files([]))
    assert all(line.startswith("#") for line in headings.splitlines() if line)
    body = plugin.on_page_content("<h1>the engine's</h1>", page=page, config=config, files=Files([]))
    assert body.startswith('<h1 id="top">compact hatch')
    assert '<svg class="tape"' in body


def test_a_page_of_the_shops_own_is_left_alone(book: Path, config: MkDocsConfig, tmp_path: Path) -> None:
    plugin = started(config)
    files_of(plugin, config)
    own = Page(None, File("own.md", str(tmp_path), str(tmp_path), use_directory_urls=False), config)
    assert plugin.on_page_markdown("text *as it is*", page=own, config=config, files=Files([])) == "text *as it is*"
    assert plugin.on_page_content("<p>html</p>", page=own, config=config, files=Files([])) == "<p>html</p>"


def test_the_book_is_watched_and_the_site_is_the_shops(book: Path, config: MkDocsConfig) -> None:
    plugin = started(config)
    assert str(book) in config.watch
    files_of(plugin, config)
    assert config.site_name == "The worked example"


def test_without_a_name_in_the_environment_the_book_lies_beside_the_settings(
    config: MkDocsConfig, root: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.delenv("BEZELBOOK_BOOK", raising=False)
    assert started(config).book == root / "kb"


def test_the_date_in_the_environment_is_the_books(
    book: Path, config: MkDocsConfig, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("BEZELBOOK_TODAY", "2031-01-01")
    assert "2031-01-01" in files_of(started(config), config)["index.md"].content_string


def test_the_engines_own_scripts_are_not_published(book: Path, config: MkDocsConfig, tmp_path: Path) -> None:
    theirs = File("assets/javascripts/bundle.js", str(tmp_path), str(tmp_path), use_directory_urls=False)
    found = started(config).on_files(Files([theirs]), config=config)
    assert "assets/javascripts/bundle.js" not in {file.src_uri for file in found}


def broken(_: Path, __: str | None = None) -> Any:
    raise ValueError("index.md points at <nowhere>")


def test_a_fault_stops_a_build(book: Path, config: MkDocsConfig, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(mkdocs_plugin, "knowledge_of", broken)
    with pytest.raises(PluginError, match="points at <nowhere>"):
        files_of(started(config), config)


def test_while_serving_a_fault_is_a_page(book: Path, config: MkDocsConfig, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(mkdocs_plugin, "knowledge_of", broken)
    files = files_of(started(config, "serve"), config)
    assert files.keys() == {"index.md"}
    assert "points at &lt;nowhere&gt;" in files["index.md"].content_string


def test_our_look_is_laid_over_the_engines_where_the_settings_name_no_other(
    book: Path, config: MkDocsConfig, root: Path, tmp_path: Path
) -> None:
    before = list(config.theme.dirs)
    started(config)
    assert config.theme.dirs == before
    (tmp_path / "docs").mkdir()
    (tmp_path / "mkdocs.yml").write_text("site_name: x\ntheme: {name: material}\ndocs_dir: docs\n", encoding="utf-8")
    plain = load_config(str(tmp_path / "mkdocs.yml"))
    started(plain)
    assert plain.theme.dirs[0] == str(root / "site_overrides" / "theme")

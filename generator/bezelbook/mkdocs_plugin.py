"""How the publishing engine gets the pages of a book: it is handed the very values that `bezelbook pages` writes."""

import os
from pathlib import Path
from typing import Any

from mkdocs.config.defaults import MkDocsConfig
from mkdocs.exceptions import PluginError
from mkdocs.plugins import BasePlugin
from mkdocs.structure.files import File, Files
from mkdocs.structure.pages import Page

from bezelbook.pipeline import knowledge_of
from bezelbook.publish.page_text import bodies, fault_page, headings_of
from bezelbook.publish.pages import site_files

# In a wheel our look lies in the package, in a checkout beside it.
HOMES = (Path(__file__).parent, Path(__file__).parents[2])
THEME = next((home for home in HOMES if (home / "site_overrides").is_dir()), HOMES[0]) / "site_overrides" / "theme"


class BezelbookPlugin(BasePlugin):  # type: ignore[type-arg] # it has no settings
    """Adds a book's pages to the site; `bezelbook site` names the book and its date in the environment."""

    def on_startup(self, *, command: str, **_: Any) -> None:
        """Remember whether somebody is looking while the book changes."""
        self.serving = command == "serve"

    def on_config(self, config: MkDocsConfig) -> MkDocsConfig:
        """Watch the book, and lay our look over the engine's where mkdocs.yml names no other."""
        self.book = Path(config.config_file_path).parent / os.environ.get("BEZELBOOK_BOOK", "kb")
        config.watch.append(str(self.book))
        if not config.theme.custom_dir:
            config.theme.dirs.insert(0, str(THEME))
        return config

    def on_files(self, files: Files, *, config: MkDocsConfig) -> Files:
        """Add the book's files and drop the engine's scripts; while serving, a fault is a page and no dead end."""
        try:
            knowledge = knowledge_of(self.book, os.environ.get("BEZELBOOK_TODAY"))
            made, config.site_name = site_files(knowledge), knowledge.book.shop.name
        except (OSError, ValueError) as fault:
            if not self.serving:
                raise PluginError(str(fault)) from fault
            made = (fault_page(str(fault)),)
        self.bodies = bodies(made)
        for file in [file for file in files if file.src_uri.startswith("assets/javascripts/")]:
            files.remove(file)
        for one in made:
            files.append(File.generated(config, one.path, content=one.text))
        return files

    def on_page_markdown(self, markdown: str, *, page: Page, **_: Any) -> str:
        """Of a page of the book, the engine reads the headings only."""
        return headings_of(markdown) if page.file.src_uri in self.bodies else markdown

    def on_page_content(self, html: str, *, page: Page, **_: Any) -> str:
        """The body of a page of the book is ready."""
        return self.bodies.get(page.file.src_uri, html)

"""What a shop installs: the wheel alone, in a folder with nothing else in it, starts, checks and builds a book."""

import os
import subprocess
import sys
import sysconfig
from dataclasses import dataclass
from pathlib import Path

import pytest

from bezelbook import __version__
from tests.publish.reading_html import parsed

PIP = [sys.executable, "-m", "pip", "--quiet", "--disable-pip-version-check", "--no-input"]
OFFLINE = ["--no-index", "--no-deps"]
# Nothing of the checkout, and nothing of this run, reaches the other environment.
ENVIRONMENT = {
    name: value for name, value in os.environ.items() if not name.startswith(("PYTHON", "COV", "BEZELBOOK", "VIRTUAL"))
}


@dataclass(frozen=True)
class Shop:
    """An environment in which the wheel is installed, and an empty folder to work in."""

    folder: Path
    commands: Path

    def run(self, command: str, *arguments: str, folder: str = "") -> str:
        """What a command says, which must end with 0."""
        return ran([str(self.commands / command), *arguments], self.folder / folder)


def ran(command: list[str], folder: Path) -> str:
    done = subprocess.run(command, cwd=folder, env=ENVIRONMENT, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stdout + done.stderr
    return done.stdout


@pytest.fixture(scope="module")
def shop(root: Path, tmp_path_factory: pytest.TempPathFactory) -> Shop:
    """The wheel built and installed offline; what it depends on is what runs these tests."""
    wheels, environment, folder = (tmp_path_factory.mktemp(name) for name in ("wheels", "environment", "shop"))
    ran([*PIP, "wheel", *OFFLINE, "--no-build-isolation", "--wheel-dir", str(wheels), str(root)], folder)
    [wheel] = wheels.iterdir()
    ran([sys.executable, "-m", "venv", "--without-pip", str(environment)], folder)
    paths = {"base": str(environment), "platbase": str(environment)}
    # One path, behind the environment's own: so the tool is the wheel's, and only what it needs comes from here.
    installed = Path(sysconfig.get_path("purelib", vars=paths))
    (installed / "dependencies.pth").write_text(sysconfig.get_path("purelib") + "\n", "utf-8")
    ran([*PIP, "--python", str(environment), "install", *OFFLINE, str(wheel)], folder)
    return Shop(folder, Path(sysconfig.get_path("scripts", vars=paths)))


@pytest.fixture(scope="module")
def site(shop: Shop) -> Path:
    """The site of a book just started."""
    shop.run("bezelbook", "start", "ours")
    assert shop.run("bezelbook", "check", "--strict", folder="ours") == "1 record read; 0 findings.\n"
    assert "is of format 1, the newest there is" in shop.run("bezelbook", "upgrade", folder="ours")
    assert shop.run("bezelbook", "site", folder="ours").startswith("The site is in site.")
    return shop.folder / "ours" / "site"


def test_what_runs_is_the_wheel_and_not_the_checkout(shop: Shop, root: Path) -> None:
    asked = "import bezelbook, bezelbook.mkdocs_plugin as p; print(bezelbook.__file__, p.THEME, bezelbook.__version__)"
    package, theme, version = shop.run("python", "-c", asked).split()
    assert version == __version__
    for path in (package, theme):
        assert Path(path).is_relative_to(shop.commands.parent)
        assert not Path(path).is_relative_to(root)


def test_the_page_carries_our_look_and_our_scripts(site: Path, root: Path) -> None:
    theme = root / "site_overrides" / "theme"
    ours = [path for folder in ("styles", "scripts") for path in sorted((theme / folder).iterdir())]
    assert ours
    for path in ours:
        assert (site / path.relative_to(theme)).read_bytes() == path.read_bytes()
    home = parsed((site / "index.html").read_text("utf-8"))
    asked_for = {one.attributes.get("href", "") for one in home.all("link", rel="stylesheet")}
    asked_for |= {one.attributes["src"] for one in home.all("script") if "src" in one.attributes}
    wanted = {path.relative_to(theme).as_posix() for path in ours if path.suffix in (".css", ".js")}
    assert wanted <= asked_for
    assert all((site / address).is_file() for address in asked_for)


def test_no_file_of_the_site_names_a_folder_of_this_machine(site: Path, shop: Shop, root: Path) -> None:
    files = [path for path in site.rglob("*") if path.is_file()]
    assert files
    folders = [str(folder).encode() for folder in (root, shop.folder, shop.commands.parent)]
    assert [path for path in files if any(folder in path.read_bytes() for folder in folders)] == []

"""The shape of the project: what each part must have beside it, and what nothing may hold."""

import ast
import re
import tomllib
from collections.abc import Iterator
from importlib.metadata import distributions
from pathlib import Path
from typing import Any

import pytest
import yaml
from packaging.requirements import Requirement
from packaging.specifiers import SpecifierSet
from packaging.utils import canonicalize_name

from bezelbook.kinds import KINDS, Kind

ROOT = Path(__file__).resolve().parents[1]
PACKAGE = ROOT / "generator" / "bezelbook"
IGNORED = frozenset((ROOT / ".gitignore").read_text(encoding="utf-8").splitlines())


def is_made(folder: Path) -> bool:
    """Whether a command made this folder, so that it is no part of the project."""
    return folder.name == ".git" or bool({f"/{shown(folder)}/", f"{folder.name}/"} & IGNORED)


def files_below(folder: Path) -> Iterator[Path]:
    for entry in sorted(folder.iterdir()):
        if entry.is_dir():
            if not is_made(entry):
                yield from files_below(entry)
        elif entry.name != ".git":  # a file of that name says where another checkout keeps its history
            yield entry


def folders_below(folder: Path) -> Iterator[Path]:
    for entry in sorted(folder.iterdir()):
        if entry.is_dir() and not is_made(entry):
            yield entry
            yield from folders_below(entry)


def shown(path: Path) -> str:
    return path.relative_to(ROOT).as_posix()


def text_of(path: Path) -> str | None:
    """What a text file says; None for any other file."""
    try:
        text = path.read_text(encoding="utf-8")
    except UnicodeDecodeError:
        return None
    return None if "\0" in text else text


PROJECT = tuple(files_below(ROOT))
SOURCES = tuple(path for path in PROJECT if PACKAGE in path.parents)
MODULES = tuple(path for path in SOURCES if path.suffix == ".py")
RULES = tuple(path for path in MODULES if path.parent.parent == PACKAGE / "rules" and path.name != "__init__.py")
KIND_FOLDERS = {path.parent.name for path in MODULES if path.match("kinds/*/record.py")}

by_path = pytest.mark.parametrize("module", MODULES, ids=shown)
by_rule = pytest.mark.parametrize("rule", RULES, ids=lambda rule: rule.stem)
by_kind = pytest.mark.parametrize("kind", KINDS.values(), ids=lambda kind: kind.name)


# --- the map ---


def map_lines() -> list[str]:
    """The lines of the folder map: the fenced block of DEVELOPERS.md that names the package."""
    text = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")
    blocks = re.findall(r"^```[^\n]*\n(.*?)^```", text, flags=re.MULTILINE | re.DOTALL)
    maps = [block for block in blocks if re.search(r"^generator/bezelbook/", block, flags=re.MULTILINE)]
    assert len(maps) == 1, "DEVELOPERS.md has one folder map, with whole paths from the top of the project"
    return [line for line in maps[0].splitlines() if line.strip()]


def mapped() -> dict[str, list[Path]]:
    """For each path of the map, what it stands for; `<kind>` in it stands for any one name."""
    found = {}
    for path in (line.split()[0] for line in map_lines()):
        matches = sorted(ROOT.glob(re.sub(r"<[^>]+>", "*", path.rstrip("/"))))
        found[path] = [match for match in matches if match.is_dir()] if path.endswith("/") else matches
    return found


def test_every_line_of_the_map_says_what_is_there() -> None:
    wordless = [line for line in map_lines() if not re.fullmatch(r"\S+ {2,}\S.*", line)]
    assert wordless == []


def test_every_path_of_the_map_exists() -> None:
    assert [path for path, found in mapped().items() if not found] == []


def test_every_part_of_the_tool_is_on_the_map() -> None:
    on_map = {path for found in mapped().values() for path in found}
    parts = [*folders_below(PACKAGE), *(module for module in MODULES if module.parent == PACKAGE)]
    assert [shown(part) for part in parts if part not in on_map and part.name != "__init__.py"] == []


def test_every_folder_at_the_top_is_on_the_map() -> None:
    on_map = {path.relative_to(ROOT).parts[0] for found in mapped().values() for path in found}
    tops = [folder.name for folder in sorted(ROOT.iterdir()) if folder.is_dir() and not is_made(folder)]
    assert [top for top in tops if not top.startswith(".") and top not in on_map] == []


# --- every module ---


def has_its_own_test(module: Path) -> bool:
    mirror = ROOT / "tests" / module.relative_to(PACKAGE).parent / f"test_{module.stem}.py"
    return mirror.is_file()


def test_every_module_has_its_test_at_the_mirrored_place() -> None:
    exempt = set(RULES)  # a rule's cases are its test
    untested = [m for m in MODULES if m.name != "__init__.py" and m not in exempt and not has_its_own_test(m)]
    assert [shown(module) for module in untested] == []


@by_path
def test_a_module_says_in_one_sentence_what_it_knows(module: Path) -> None:
    said = ast.get_docstring(ast.parse(module.read_text(encoding="utf-8")))
    assert said, "it has no docstring"
    if module in RULES:
        said = said.partition("\n\n")[0]  # the rest of a rule's docstring is its page
    assert said.endswith((".", "?"))
    assert not re.search(r"\n\n|[.?!]\s+[A-Z]", said), "it is more than one sentence"


def test_no_module_is_a_drawer_for_odds_and_ends() -> None:
    drawers = {"util", "utils", "helper", "helpers", "common", "misc", "manager"}
    scripts = [path for path in PROJECT if path.suffix in {".py", ".js"}]
    found = [path for path in scripts if drawers & {path.stem.removeprefix("test_"), path.parent.name}]
    assert [shown(path) for path in found] == []


@pytest.mark.parametrize("source", SOURCES, ids=shown)
def test_no_file_is_longer_than_a_person_reads_at_once(source: Path) -> None:
    text = text_of(source)
    assert text is None or text.count("\n") <= 250


@by_path
def test_no_function_is_longer_than_a_screen(module: Path) -> None:
    functions = (
        node
        for node in ast.walk(ast.parse(module.read_text(encoding="utf-8")))
        if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef)
    )
    long = {f.name: length for f in functions if (length := (f.end_lineno or f.lineno) - f.lineno + 1) > 40}
    assert long == {}


def test_the_plugin_only_wraps() -> None:
    assert (PACKAGE / "mkdocs_plugin.py").read_text(encoding="utf-8").count("\n") < 60


# --- every rule ---


def test_the_rules_folder_holds_groups_of_rules_and_their_cases_and_nothing_else() -> None:
    stems = [rule.stem for rule in RULES]
    assert len(set(stems)) == len(stems), "two rules have one name"
    beside = {path for rule in RULES for path in (rule, rule.with_suffix(".cases.yaml"))}
    inits = {path.parent / "__init__.py" for path in beside} | {PACKAGE / "rules" / "__init__.py"}
    assert {path for path in SOURCES if PACKAGE / "rules" in path.parents} == beside | inits


@by_rule
def test_a_rule_has_a_case_that_fires_a_clean_one_and_a_near_miss(rule: Path) -> None:
    cases = yaml.safe_load(rule.with_suffix(".cases.yaml").read_bytes())["cases"]
    kinds_of_case = {(case["expect"], case.get("near_miss", False)) for case in cases}
    assert kinds_of_case >= {("fires", False), ("silent", False), ("silent", True)}
    assert kinds_of_case <= {("fires", False), ("silent", False), ("silent", True)}


@by_rule
def test_a_rule_names_each_case_once(rule: Path) -> None:
    names = [case["name"] for case in yaml.safe_load(rule.with_suffix(".cases.yaml").read_bytes())["cases"]]
    assert all(names)
    assert len(names) == len(set(names))


# --- every kind ---


def test_every_kind_folder_is_a_kind_of_the_book() -> None:
    folders = {path.name for path in folders_below(PACKAGE / "kinds") if path.parent.name == "kinds"}
    assert folders == KIND_FOLDERS == {kind.name for kind in KINDS.values()}


@by_kind
@pytest.mark.parametrize("beside", ["record.py", "example.yaml", "page.html"])
def test_a_kind_has_its_model_its_example_and_its_page(kind: Kind, beside: str) -> None:
    assert (PACKAGE / "kinds" / kind.name / beside).is_file()


@by_kind
def test_a_kind_has_its_schema_and_its_place_in_the_book(kind: Kind) -> None:
    assert (ROOT / "schema" / f"{kind.name}.schema.json").is_file()
    place = ROOT / "kb" / kind.folder
    assert place.with_suffix(".yaml").is_file() if kind.single else place.is_dir()


# --- what nothing may hold ---

FORBIDDEN = {
    # Patterns are written so that they do not match their own text.
    "an unfinished place": r"\b(?:TO[D]O|FIX[M]E|X[X]X)\b",
    "a package registry": (
        r"py[p]i\.org|python[h]osted\.org|np[m]js\.(?:com|org)|deb\.[d]ebian\.org|cr[a]tes\.io|proxy\.[g]olang\.org|ruby[g]ems\.org"
    ),
    "a path of one machine": r"(?<![\w.<>/-])/(?:work|root|home|Users)/|(?<!\w)[A-Z]:\\Users",
    "a folder that is not in the project": r"\.\./shared\b",
}


@pytest.mark.parametrize("pattern", FORBIDDEN.values(), ids=FORBIDDEN.keys())
def test_no_file_of_the_project_holds(pattern: str) -> None:
    search = re.compile(pattern).search
    found = [
        f"{shown(path)}:{number}: {line.strip()[:100]}"
        for path in PROJECT
        if ROOT / "kb" not in path.parents  # what a shop writes in its book is its own affair
        for number, line in enumerate((text_of(path) or "").splitlines(), start=1)
        if search(line)
    ]
    assert found == []


def project_table() -> dict[str, Any]:
    """What pyproject.toml says of the project itself."""
    tables: dict[str, dict[str, Any]] = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))
    return tables["project"]


def test_the_lock_names_every_dependency_with_its_hashes() -> None:
    project = project_table()
    wanted = [*project["dependencies"], *project["optional-dependencies"]["dev"]]
    names = {re.split(r"[=<>!~;\[ ]", want)[0].lower() for want in wanted}
    lock = (ROOT / "requirements.txt").read_text(encoding="utf-8")
    pinned = set(re.findall(r"^([a-z0-9.-]+)(?:\[[a-z0-9,-]+\])?==\S+ \\\n +--hash=sha256:", lock, flags=re.MULTILINE))
    assert names - pinned == set()
    assert len(pinned) == len(re.findall(r"^[a-z]", lock, flags=re.MULTILINE))
    exact = {want for want in wanted if "==" in want}
    assert {want for want in exact if f"\n{want} \\\n" not in f"\n{lock}"} == set()


def test_a_package_that_is_asked_for_with_an_extra_is_locked_with_it() -> None:
    # Otherwise an installer may look at a newer release for the extra alone, and refuse it for want of a hash.
    lock = (ROOT / "requirements.txt").read_text(encoding="utf-8")
    locked = {
        pinned.name: pinned.extras for pinned in map(Requirement, re.findall(r"^([a-z]\S+) \\$", lock, re.MULTILINE))
    }
    asks = [
        (package.name, Requirement(ask))
        for package in distributions()
        if canonicalize_name(package.name) in locked
        for ask in package.requires or ()
    ]
    needed = [
        (name, ask) for name, ask in asks if ask.extras and (not ask.marker or ask.marker.evaluate({"extra": ""}))
    ]
    assert [
        f"{name} asks for {ask}" for name, ask in needed if not ask.extras <= locked.get(ask.name, ask.extras)
    ] == []
    assert "coverage" in {ask.name for _, ask in needed}


def test_every_locked_package_installs_on_the_oldest_python_that_is_promised() -> None:
    oldest = project_table()["requires-python"].removeprefix(">=")
    asks = {package.name: package.metadata["Requires-Python"] for package in distributions()}
    assert {name: ask for name, ask in asks.items() if ask and oldest not in SpecifierSet(ask)} == {}

"""The cases that lie beside each rule: books in which it must speak up, and books in which it must not."""

from collections.abc import Mapping
from importlib.resources import files
from typing import Any

from bezelbook.store.yaml_text import read_yaml


def rule_cases(rule: str) -> tuple[Mapping[str, Any], ...]:
    """The cases of a rule by its name, as plain data in the order of the file."""
    name = f"{rule.replace('-', '_')}.cases.yaml"
    [path] = (group / name for group in files("bezelbook.rules").iterdir() if (group / name).is_file())
    whole: Any = read_yaml(path.read_bytes()).value
    return tuple(whole["cases"])

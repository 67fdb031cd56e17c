"""The fields of a kind as a person fills them in: which must be there, what each means and what it takes."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from bezelbook.kinds.catalog import Kind

Schema = Mapping[str, Any]
# Fields within fields within fields are told; what lies deeper is told where it is first met.
DEEPEST = 3
MANY = 8


@dataclass(frozen=True, slots=True)
class Line:
    """One field: `takes` are the words or the sort of value it takes, `inside` the fields of a thing with its own."""

    name: str
    must: str
    says: str
    takes: str
    inside: tuple["Line", ...]


@dataclass(frozen=True, slots=True)
class Form:
    """One form that a file of a kind can have: its word (empty where there is one form only), and its fields."""

    name: str
    says: str
    lines: tuple[Line, ...]


def forms_of(kind: Kind) -> tuple[Form, ...]:
    """The forms of a kind, each with its fields those that must be there first; the file's name is no field."""
    schema: Schema = kind.reader.json_schema()
    defs: Schema = schema.get("$defs", {})
    return tuple(_form(_resolved(root, defs), defs) for root in schema.get("oneOf", [schema]))


def _form(root: Schema, defs: Schema) -> Form:
    name = root["properties"].get("form", {}).get("const", "")
    return Form(name, root.get("description", ""), tuple(_lines(root, defs, DEEPEST)))


def _resolved(schema: Schema, defs: Schema) -> Schema:
    """What a reference points at, with what is said at the reference itself."""
    if "$ref" not in schema:
        return schema
    there: Schema = defs[schema["$ref"].rpartition("/")[2]]
    here = {key: value for key, value in schema.items() if key != "$ref"}
    return {**there, **here}


def _lines(root: Schema, defs: Schema, deep: int) -> Iterator[Line]:
    must = root.get("required", ())
    fields = sorted(root.get("properties", {}).items(), key=lambda field: field[0] not in must)
    for name, schema in fields:
        if name != "id":
            shapes = list(_parts(schema, defs))
            keys = [key for shape in shapes if _is_map(shape) for key in shape["properties"]]
            parts = [part for shape in shapes for part in (_values(shape, defs) if _is_map(shape) else [shape])]
            inside = [part for part in parts if "properties" in part] if deep > 1 else []
            yield Line(
                name,
                "must be there" if name in must else "",
                schema.get("description", ""),
                " · ".join(filter(None, [f"for each of {', '.join(keys)}" if keys else "", _takes(schema, parts)])),
                tuple(line for part in inside for line in _lines(part, defs, deep - 1)),
            )


def _parts(schema: Schema, defs: Schema) -> Iterator[Schema]:
    """Every shape that a field may have: each choice, each thing on a list, each value of a map."""
    found = _resolved(schema, defs)
    for key in ("anyOf", "oneOf"):
        for choice in found.get(key, ()):
            yield from _parts(choice, defs)
    if "items" in found:
        yield from _parts(found["items"], defs)
    for values in found.get("patternProperties", {}).values():
        yield from _parts(values, defs)
    if not {"anyOf", "oneOf", "items", "patternProperties"} & found.keys():
        yield found


def _is_map(shape: Schema) -> bool:
    """Whether fields are many and all of one shape, so that one of them tells of all."""
    fields = list(shape.get("properties", {}).values())
    return len(fields) >= MANY and all(_bare(one) == _bare(fields[0]) for one in fields)


def _bare(schema: Schema) -> Schema:
    return {key: value for key, value in schema.items() if key not in ("title", "description", "default")}


def _values(shape: Schema, defs: Schema) -> list[Schema]:
    return list(_parts(next(iter(shape["properties"].values())), defs))


def _takes(schema: Schema, parts: list[Schema]) -> str:
    words = [str(word) for part in parts for word in part.get("enum", [part["const"]] if "const" in part else [])]
    kinds = " or ".join(kind.replace("_", " ") for kind in schema.get("x-names", ()))
    free = dict.fromkeys(word for part in parts for word in part.get("examples", ()))
    said = [*dict.fromkeys(words)]
    said += [f"the file name of a record: {kinds}"] if kinds else []
    said += ["or words"] if schema.get("x-in-words") else []
    return " · ".join([*said, f"such as {', '.join(free)}"] if free else said)

"""What the text of one file says as a record of its kind, or everything that is wrong with it."""

from pydantic import ValidationError

from bezelbook.kinds import Kind
from bezelbook.kinds.record import Record
from bezelbook.store.model_errors import Mistake, mistakes
from bezelbook.store.place import Fault
from bezelbook.store.schema_files import file_schema
from bezelbook.store.yaml_text import Parsed, read_yaml


def read_record(data: bytes, kind: Kind, name: str) -> tuple[Record | None, tuple[Fault, ...]]:
    """Read a file's bytes as the record of this kind and name; with any fault there is no record."""
    parsed = read_yaml(data)
    if not isinstance(parsed.value, dict):
        return None, parsed.faults or (_no_fields(parsed),)
    record, wrong = _validated(parsed.value, kind, name)
    said = {(fault.line, fault.column) for fault in parsed.faults}
    placed = [_placed(mistake, parsed) for mistake in wrong]
    # What the text got wrong reaches the model as a blank; only the first complaint about a place helps.
    faults = (*parsed.faults, *(fault for fault in placed if (fault.line, fault.column) not in said))
    return (None if faults else record), faults


def _validated(value: dict[str, object], kind: Kind, name: str) -> tuple[Record | None, list[Mistake]]:
    wrong = [Mistake(("id",), at_key=True, what=_ID_WRITTEN, mend="Take the line out")] if "id" in value else []
    data = {**value, "id": name}
    try:
        record: Record = kind.reader.validate_python(data)
    except ValidationError as error:
        return None, [*wrong, *mistakes(error, data, file_schema(kind))]
    return record, wrong


_ID_WRITTEN = "an id is not written in a file; the file's name is its id"


def _placed(mistake: Mistake, parsed: Parsed) -> Fault:
    """Put a mistake at its key or its value, or at the start of the nearest thing around it that is there."""
    path = mistake.path
    place = parsed.key_places.get(path) if mistake.at_key else parsed.places.get(path)
    while not place:
        path = path[:-1]
        place = parsed.places.get(path)
    return Fault(place.line, place.column, mistake.what, mistake.mend)


def _no_fields(parsed: Parsed) -> Fault:
    what = "this file is empty" if parsed.value is None else "a record is made of lines that say key: value"
    return Fault(1, 1, what, "Start from an example of this kind")

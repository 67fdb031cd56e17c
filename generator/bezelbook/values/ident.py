"""What may name a record: lower-case words joined by hyphens, safe as a file name on every machine."""

import re
import unicodedata
from typing import Annotated

from pydantic import AfterValidator, WithJsonSchema

from bezelbook.values.complaint import Wrong, checked

LONGEST = 64
_RESERVED = r"(?:con|prn|aux|nul|com[1-9]|lpt[1-9])"

# `$(?!\n)` is the end of the text in Python and in a browser alike.
ID_PATTERN = rf"^(?!{_RESERVED}$)(?=.{{1,{LONGEST}}}$)[a-z0-9]+(?:-[a-z0-9]+)*$(?!\n)"
_ID = re.compile(ID_PATTERN)


def is_id(text: str) -> bool:
    """Say whether the text may name a record."""
    return _ID.match(text) is not None


def id_complaint(text: str) -> Wrong | None:
    """Say why the text may not name a record, with a name that may; nothing when it may."""
    if is_id(text):
        return None
    mended = _mended(text)
    return Wrong(f'"{text}" {_fault(text)}', f"Write {mended or 'words such as compact-hatch-2'}")


def _fault(text: str) -> str:
    if re.fullmatch(_RESERVED, text):
        return "is a name that Windows keeps for itself"
    if len(text) > LONGEST:
        return f"is longer than {LONGEST} letters"
    return "is not a name made of lower-case words (a to z, 0 to 9) joined by hyphens"


def _mended(text: str) -> str:
    plain = unicodedata.normalize("NFKD", text).encode("ascii", "ignore").decode().lower()
    words = re.findall(r"[a-z0-9]+", plain)
    name = "-".join(words)[:LONGEST].rstrip("-")
    return f"{name}-1" if re.fullmatch(_RESERVED, name) else name


_SCHEMA = WithJsonSchema({"type": "string", "pattern": ID_PATTERN})

Id = Annotated[str, AfterValidator(checked(id_complaint)), _SCHEMA]
"""A field that holds the name of a record."""

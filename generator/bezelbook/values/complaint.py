"""What a complaint says: what is wrong, and what would mend it."""

from collections.abc import Callable

from pydantic_core import PydanticCustomError


def sentences(what: str, mend: str) -> str:
    """Join what is wrong and what would mend it, each ending as a sentence does."""
    return f"{what}. {mend}" if mend.endswith("?") else f"{what}. {mend}."


class Wrong(ValueError):
    """Something a person wrote that cannot be read. Its parts end without a dot; `str()` adds them."""

    def __init__(self, what: str, mend: str) -> None:
        super().__init__(sentences(what, mend))
        self.what = what
        self.mend = mend


class BareNumber(Wrong):
    """A number without its unit; `number` is the number as it was written."""

    def __init__(self, number: str, mend: str) -> None:
        super().__init__(f"{number} is a bare number", mend)
        self.number = number


def field_error(wrong: Wrong) -> PydanticCustomError:
    """Wrap a complaint so that it survives a model, with its parts in the context of the error.

    Its type is `bezel`, or `bare_number` with the number in the context too.
    """
    context = {"what": wrong.what, "mend": wrong.mend}
    if isinstance(wrong, BareNumber):
        return PydanticCustomError("bare_number", "{what}. {mend}.", {**context, "number": wrong.number})
    return PydanticCustomError("bezel", "{what}. {mend}.", context)


def checked(complaint: Callable[[str], Wrong | None]) -> Callable[[str], str]:
    """Make a field validator of a function that gives the complaint about a text, or nothing."""

    def check(text: str) -> str:
        wrong = complaint(text)
        if wrong:
            raise field_error(wrong)
        return text

    return check

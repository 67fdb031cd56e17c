"""What a text that is not YAML most likely got wrong, in shop words."""

from yaml import MarkedYAMLError

from bezelbook.store.place import Fault

_UNCLOSED = "did not find expected ',' or"
_KNOWN: tuple[tuple[str, str, str], ...] = (
    (
        "mapping values are not allowed",
        "this line has a second colon, or starts further in than the line above",
        "Put text that holds a colon in quotes, or line the key up with its neighbours",
    ),
    (
        "found unexpected end of stream",
        "a quote is opened here and never closed",
        "Close it, or take it out",
    ),
    (
        _UNCLOSED,
        "a bracket is opened here and not closed after a comma-separated list",
        "Close it, and put a comma between the entries",
    ),
    (
        "block sequence entries are not allowed",
        "a list starts on the same line as its key",
        "Start it on the next line, each entry after a hyphen",
    ),
    (
        "did not find expected '-' indicator",
        "a list stops here without a line that follows from it",
        "Start each entry with a hyphen, right below the one above; quote text that goes on after a quote",
    ),
    (
        "did not find expected key",
        "this line does not belong with the lines above",
        "Line it up with its neighbours; quote text that goes on after a quote",
    ),
    (
        "could not find expected ':'",
        "a line here has no colon",
        "Write key: value, or line the text up with the value it belongs to",
    ),
    (
        "found unknown escape character",
        "a backslash stands in double quotes",
        "Use single quotes around text with a backslash",
    ),
    (
        "found invalid Unicode character escape code",
        "a backslash stands in double quotes",
        "Use single quotes around text with a backslash",
    ),
    (
        "did not find expected node content",
        "something is opened before this and nothing follows",
        "Close it, or take it out",
    ),
    (
        "found a tab character",
        "a tab stands where spaces belong",
        "Indent with spaces",
    ),
    (
        "found undefined tag handle",
        "a tag starts here",
        "Take it out, or put the text in quotes",
    ),
    (
        "exceeded maximum nesting depth",
        "this is nested far too deep",
        "Write it flatter",
    ),
)
# The parser stops where it notices these; the mistake is where they began.
_BEGAN_EARLIER = ("found unexpected end of stream", "could not find expected ':'", _UNCLOSED)


def syntax_fault(error: MarkedYAMLError, text: str) -> Fault:
    """Turn the parser's error about this text into a fault."""
    problem = error.problem or "it stops without a word"
    mark = error.problem_mark
    if error.context_mark and problem.startswith(_BEGAN_EARLIER):
        mark = error.context_mark
    line, column = (mark.line, mark.column) if mark else (0, 0)
    if "cannot start any token" in problem:
        what, mend = _odd_start(_character(text, line, column))
    else:
        what, mend = _worded(problem)
    return Fault(line + 1, column + 1, what, mend)


def _worded(problem: str) -> tuple[str, str]:
    for start, what, mend in _KNOWN:
        if problem.startswith(start):
            return what, mend
    return f"this cannot be read as YAML: {problem}", "Compare it with a record that loads"


def _odd_start(character: str) -> tuple[str, str]:
    if character == "\t":
        return "a tab stands where spaces belong", "Indent with spaces"
    return f"text may not start with {character}", "Put it in quotes"


def _character(text: str, line: int, column: int) -> str:
    return text.splitlines()[line][column]

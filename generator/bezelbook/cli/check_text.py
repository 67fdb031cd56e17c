"""What `bezelbook check` prints for a person: the heaviest and dearest first, gaps only as many as a Monday takes."""

from collections.abc import Iterator, Mapping

from bezelbook.cli.outcome import USUAL_BOOK, counted
from bezelbook.finding import Finding, Sort
from bezelbook.pipeline import Book
from bezelbook.publish.mentions import place_words
from bezelbook.publish.settle_lines import likeliest, ways_to_settle

MOST_GAPS = 20


def text_of(book: Book, sorts: Mapping[str, Sort], *, every: bool) -> list[str]:
    """The lines: complaints, then findings; gaps beyond the first twenty are only counted unless `every` is wanted."""
    complaints = [str(complaint) for complaint in book.loaded.complaints]
    gaps = [one.key for one in book.findings if sorts[one.rule] == "gap"]
    left = set() if every else set(gaps[MOST_GAPS:])
    blocks = [
        [*_finding(book, one), *_settle(book, one, sorts[one.rule])] for one in book.findings if one.key not in left
    ]
    if left:
        blocks.append(
            [f"and {counted(len(left), 'more gap')} that {'costs' if len(left) == 1 else 'cost'} less: --all"]
        )
    told = [*complaints, *([""] if complaints and blocks else []), *_apart(blocks)]
    return [*told, *([""] if told else []), _last(book)]


def _apart(blocks: list[list[str]]) -> Iterator[str]:
    for number, block in enumerate(blocks):
        yield from ["", *block] if number else block


def _last(book: Book) -> str:
    left_out = len({complaint.path for complaint in book.loaded.complaints})
    unread = f", {counted(left_out, 'file')} left out" if left_out else ""
    return f"{counted(len(book.loaded.records), 'record')} read{unread}; {counted(len(book.findings), 'finding')}."


def _finding(book: Book, finding: Finding) -> list[str]:
    quotes = zip(book.places_of(finding), finding.quotes, strict=True)
    where = f"{place_words(book.base, finding.vehicle, finding.place)}: " if finding.vehicle else ""
    return [
        f"{finding.weight}: {where}{finding.says} ({finding.rule})",
        *(f"  {place}: {quote.words}" for place, quote in quotes),
        *(f"  perhaps {proposal.words}" for proposal in finding.proposals),
        f"  {finding.question} {' / '.join(finding.answers)}",
        f"  {book.checked.ranks[finding.key].words}; costs {finding.loss.words}",
    ]


def _settle(book: Book, finding: Finding, sort: Sort) -> Iterator[str]:
    """The line that settles it in the likeliest way, where a decision can."""
    folder = book.folder.as_posix()
    ways = ways_to_settle(book.base, finding, sort, "" if folder == USUAL_BOOK else folder)
    way = likeliest(ways) if finding.key in book.checked.raised else None
    if way:
        yield f"  settle: {way.line}"

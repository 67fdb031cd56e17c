"""Ninths of an opening as a person names them: whole rows and columns where there are such."""

import re
from collections.abc import Iterable

from bezelbook.values.listed import listed
from bezelbook.values.words import NINTHS, Ninth

ROWS: dict[str, tuple[Ninth, ...]] = {"upper": NINTHS[:3], "middle": NINTHS[3:6], "lower": NINTHS[6:]}
COLUMNS: dict[str, tuple[Ninth, ...]] = {"left": NINTHS[0::3], "centre": NINTHS[1::3], "right": NINTHS[2::3]}


def ninths_said(ninths: Iterable[Ninth]) -> str:
    """`upper and middle row`, `left column`, or one by one, in the order of the nine; all of them are `everywhere`."""
    named = set(ninths)
    if named == set(NINTHS):
        return "everywhere"
    for sort, lines in (("row", ROWS), ("column", COLUMNS)):
        whole = [line for line, members in lines.items() if named.issuperset(members)]
        if whole:
            rest = named.difference(*(lines[line] for line in whole))
            return listed([f"{listed(whole)} {sort}", *(ninth for ninth in NINTHS if ninth in rest)])
    return listed([ninth for ninth in NINTHS if ninth in named])


_ONE = "|".join(sorted(NINTHS, key=len, reverse=True))
_ONE_BY_ONE = re.compile(rf"(?<![\w-])(?:{_ONE})(?: and (?:{_ONE}))+(?![\w-])")


def lines_said(text: str) -> str:
    """Text in which ninths named one by one with `and`, as books have them from before, are named by whole lines."""
    return _ONE_BY_ONE.sub(lambda run: ninths_said(one for one in NINTHS if one in run[0].split(" and ")), text)

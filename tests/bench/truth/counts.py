"""What was counted over many made-up books, and the lines in which it is told."""

from collections import Counter as Tally
from collections.abc import Iterator
from dataclasses import dataclass, field, fields

from tests.bench.truth.answers import wrong_answers
from tests.bench.truth.books import Judged
from tests.bench.truth.right import doubts_what_is_true, is_false_alarm, is_right
from tests.bench.truth.turning import Case, cases
from tests.simulator.falsehoods import WAYS

# From so many firings on the precision of a rule is told.
ENOUGH = 30
# Strong notes at the place, the false one among them.
CROWDS = (("1", 1), ("2", 2), ("3 to 5", 5), ("6 and more", 10_000))
NEAR, MOST_ASKED = 15, 40


@dataclass
class Counts:
    """Everything that is counted; each tally by what its lines are about."""

    notes: Tally[str] = field(default_factory=Tally)
    false: Tally[str] = field(default_factory=Tally)
    detectable: Tally[str] = field(default_factory=Tally)
    flagged: Tally[str] = field(default_factory=Tally)
    alarms: Tally[str] = field(default_factory=Tally)
    doubts: Tally[str] = field(default_factory=Tally)
    right: Tally[str] = field(default_factory=Tally)
    judged: Tally[str] = field(default_factory=Tally)
    answers: Tally[str] = field(default_factory=Tally)
    cases: list[Case] = field(default_factory=list)

    def add(self, book: Judged) -> None:
        """Count one more book."""
        self.notes[book.regime] += len(book.made.notes)
        self.cases += cases(book)
        for one in book.fired:
            found = is_right(book, one)
            self.judged[one.rule] += found is not None
            self.right[one.rule] += found is True
            self.alarms[one.rule] += book.regime == "honest" and is_false_alarm(book, one)
            self.doubts[one.rule] += book.regime == "honest" and doubts_what_is_true(book, one)
        if book.regime == "corrupted":
            self._corrupted(book)
            self.answers += wrong_answers(book, NEAR, MOST_ASKED)

    def take_in(self, other: "Counts") -> None:
        """Add what was counted elsewhere, as if its books had been counted here after all others."""
        for name, tally in self._tallies():
            tally.update(getattr(other, name))
        self.cases += other.cases

    def _tallies(self) -> Iterator[tuple[str, Tally[str]]]:
        yield from ((one.name, tally) for one in fields(self) if isinstance(tally := getattr(self, one.name), Tally))

    def _corrupted(self, book: Judged) -> None:
        for where in book.places:
            crowd = next(name for name, most in CROWDS if len(book.written.strong_at(where)) <= most)
            for note in book.false_at(where):
                if note.false not in WAYS or book.written.where(note) != where:
                    continue  # a slip such as honest people make, or of the other side and counted there
                for about in ("all", str(note.false), crowd):
                    self.false[about] += 1
                    self.detectable[about] += book.detectable[note.name]
                    self.flagged[about] += book.detectable[note.name] and note.name in book.flagged
                self.flagged["beside"] += not book.detectable[note.name] and note.name in book.flagged

    def lines(self) -> Iterator[str]:
        """What a person reads of it."""
        yield from self._found()
        alarms, notes = sum(self.alarms.values()), self.notes["honest"]
        yield f"honest notes            {notes:,}; {alarms} false alarms between strong ones, {share(alarms, notes, 2)}"
        doubts = +self.doubts
        which = f": {', '.join(f'{rule} {count}' for rule, count in doubts.most_common())}" if doubts else ""
        yield f"honest notes in doubt   {doubts.total()} conflicts and slips name a true one for nothing{which}"
        for rule in sorted(self.judged):
            few = "" if self.judged[rule] >= ENOUGH else f" (under {ENOUGH})"
            yield f"  {rule:<38} right {share(self.right[rule], self.judged[rule])} of {self.judged[rule]}{few}"
        yield from self._wrong()
        yield from self._turned()

    def _found(self) -> Iterator[str]:
        whole, able = self.false["all"], self.detectable["all"]
        hidden = share(whole - able, whole)
        yield f"corrupted notes         {whole:,} of {self.notes['corrupted']:,}; {hidden} nobody could find"
        beside = f"{self.flagged['beside']} of the others"
        yield f"flagged                 {share(self.flagged['all'], able)} of {able:,} detectable, and {beside}"
        crowds = [name for name, _ in CROWDS]
        for about in sorted(set(self.false) - {"all", *crowds}) + crowds:
            words = f"strong notes at the place: {about}" if about in crowds else about
            found = f"{share(self.flagged[about], self.detectable[about])} of {self.detectable[about]} detectable"
            yield f"  {words:<38} {found}, of {self.false[about]} false"

    def _wrong(self) -> Iterator[str]:
        unflagged, ideal = self.answers["unflagged"], self.answers["unflagged by an ideal detector"]
        times = f"{unflagged / ideal:.2f} times " if ideal else "and "
        yield f"firm answers            {self.answers['firm']:,} where a note is false, {self.answers['wrong']} wrong"
        yield f"wrong and unflagged     {unflagged}, {times}the {ideal} of an ideal detector"

    def _turned(self) -> Iterator[str]:
        every, usual = len(self.cases), " and ".join(sorted(self.usual)) or "nothing"
        hits, guessed = sum(case.hit for case in self.cases), sum(bool(case.axes & self.usual) for case in self.cases)
        yield f"what clashes turn on    {every} cases; among the first two proposals in {share(hits, every)}"
        yield f"  {f'always saying {usual}':<38} {share(guessed, every)}"
        for regime, count in Tally(case.regime for case in self.cases).most_common():
            found = sum(case.hit for case in self.cases if case.regime == regime)
            yield f"  {f'where the shop is: {regime}':<38} {share(found, count)} of {count}"
        for axis, count in self._axes.most_common():
            found = sum(case.hit for case in self.cases if axis in case.axes)
            yield f"  {axis:<38} {share(found, count)} of {count}"

    @property
    def usual(self) -> frozenset[str]:
        """The two commonest axes."""
        return frozenset(axis for axis, _ in self._axes.most_common(2))

    @property
    def _axes(self) -> Tally[str]:
        return Tally(axis for case in self.cases for axis in sorted(case.axes))


def share(part: int, whole: int, digits: int = 1) -> str:
    """A share in per cent; of nothing, nothing can be told."""
    return f"{100 * part / whole:.{digits}f} %" if whole else "-"

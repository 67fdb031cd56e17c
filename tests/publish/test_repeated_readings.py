from bezelbook.kinds.record import Record
from bezelbook.publish.address import Links
from bezelbook.publish.repeated_readings import RepeatedReading, repeated_readings
from tests.publish.pages_of import pages_about
from tests.reasoning import making

PAGE = f"vehicles/{making.CAR}.md"


def width(named: str, *reads: str, **content: str | None) -> Record:
    readings = [making.reading("width", one, tool="caliper") for one in reads]
    return making.measured(named, *readings, job=f"job-{named}", author=named, date="2026-03-05", **content)


def told(*records: Record) -> tuple[RepeatedReading, ...]:
    book = making.book(*records)
    return repeated_readings(book, making.place(book).evidence, Links(PAGE, book))


def test_every_job_has_its_row_with_how_far_it_is_off() -> None:
    """By hand: 5 apart with ± 3 and ± 4 is just 1."""
    [one] = told(width("a", "185 ± 3 mm"), width("b", "180 ± 4 mm"))
    assert [(row.by, row.reads, row.how, row.off, row.apart) for row in one.rows] == [
        ("a, 2026-03-05", "185 mm (7.28 in) ± 3 mm", "caliper", "1.00", False),
        ("b, 2026-03-05", "180 mm (7.09 in) ± 4 mm", "caliper", "1.00", False),
    ]
    assert one.rows[0].at == f"{making.CAR}.html#note-a"


def test_what_is_too_far_never_reads_as_one() -> None:
    [one] = told(width("a", "185.001 ± 3 mm"), width("b", "180 ± 4 mm"))
    assert [row.off for row in one.rows] == ["1.01", "1.01"]
    [just] = told(width("a", "184.99 ± 3 mm"), width("b", "180 ± 4 mm"))
    assert [row.off for row in just.rows] == ["1.00", "1.00"]


def test_what_does_not_agree_comes_first() -> None:
    heights = [
        making.measured(n, making.reading("height", f"{mm} ± 1 mm"), job=f"j{n}") for n, mm in (("c", 100), ("d", 105))
    ]
    first, second = told(width("a", "180 ± 1 mm"), width("b", "180 ± 1 mm"), *heights)
    assert (first.what, second.what) == ("height", "width")


def test_the_houses_tolerance_and_several_readings_of_one_job_are_said() -> None:
    [one] = told(width("a", "180 mm", "181 mm"), width("b", "180 ± 1 mm"))
    assert one.rows[0].reads.endswith(", the house's ±, from 2 readings")
    assert one.repeats.startswith("read again within a job")


def test_the_page_names_the_one_apart_and_where_to_look_first() -> None:
    some = (width(name, "182 ± 1 mm") for name in ("a", "b", "c"))
    whole = pages_about(*some, width("e", "176 ± 1 mm"))[PAGE]
    assert "Read more than once" in whole.text
    [row] = whole.all("tr", kind="apart")
    assert "e, 2026-03-05" in row.text
    assert "stands apart" in row.text
    assert "Look first at:" in whole.text
    links = [link.attributes["href"] for link in row.all("a")]
    assert links == [f"{making.CAR}.html#note-e"]


def test_a_place_that_is_no_opening_tells_it_too() -> None:
    door = {"kind": "door lower", "side": "left"}
    car = making.vehicle(places={making.HOLE: {"kind": "plain opening", "side": "centre"}, "door": door})
    notes = (
        making.measured(
            name,
            {"of": "cut-out", "reads": f"{mm} ± 1 mm", "tool": "caliper"},
            place="door",
            job=f"job-{name}",
        )
        for name, mm in (("a", 145), ("b", 144))
    )
    assert "cut-out" in pages_about(car, *notes)[PAGE].all("div", kind="votes")[0].text


def test_one_reading_alone_is_not_told_of() -> None:
    assert "Read more than once" not in pages_about(width("a", "180 ± 1 mm"))[PAGE].text

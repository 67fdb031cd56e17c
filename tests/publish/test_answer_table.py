from bezelbook.publish.address import HOME, Links
from bezelbook.publish.answer_table import answer_table, open_cell
from bezelbook.publish.opening import Opening
from tests.reasoning import making

TO = Links("vehicles/compact-hatch-2.md", making.book())


def test_every_head_unit_has_its_answer_for_the_unknown_build_and_for_each(dash: Opening) -> None:
    table = answer_table(dash, TO)
    assert table.builds == ("build not known", "early", "late")
    assert {row.name: [cell.verdict for cell in row.cells] for row in table.rows} == {
        "two-high A": ["goes in if", "nobody has tried", "goes in"],
        "two-high deep": ["nobody has tried", "nobody has tried", "does not"],
        "two-high with disc": ["nobody has tried", "nobody has tried", "does not"],
    }


def test_each_answer_opens_in_full(dash: Opening) -> None:
    late = answer_table(dash, TO).rows[0].cells[2]
    assert (late.words, late.reason, late.build) == ("Goes in", "fitted · one job", "late")
    assert late.at == "../index.html#ask=compact%20hatch%202%20centre%20dash%20late%20two%20high%20a"
    assert open_cell(dash, "two-high-a", Links(HOME, dash.book)).at.startswith("index.html#ask=")


def test_where_all_cars_are_one_there_is_one_column() -> None:
    opening = Opening(making.book(making.unit()), making.CAR, making.HOLE)
    assert answer_table(opening, TO).builds == ("any car",)

from bezelbook.kinds.record import Record
from bezelbook.publish.screens import letter_of
from tests.publish.pages_of import pages_about
from tests.publish.reading_html import Element
from tests.reasoning import making
from tests.reasoning.screens.dashes import control, floater, ruled

CAR, UNIT = f"vehicles/{making.CAR}.md", "head-units/floater.md"


def page(*records: Record, path: str = CAR) -> Element:
    return pages_about(*records)[path]


def test_a_screen_is_drawn_over_its_controls_with_what_becomes_of_each() -> None:
    [figure] = page(floater(), ruled(control(near="25 ± 1 mm"))).all("figure", kind="over")
    assert "usable if the middle of the screen is set no higher than 3.5 mm (0.14 in) above" in figure.text
    assert "Drawn with the middle of the screen 6.5 mm (0.26 in) below the middle of the opening" in figure.text
    assert next(one.text.split() for one in figure.all("li"))[:3] == ["A", "hazard", "switch:"]
    [title] = figure.all("title")
    assert "A hazard switch: free" in title.text
    assert [link.attributes["href"] for link in figure.all("a")][1] == f"{making.CAR}.html#note-ruled"


def test_where_nobody_looked_it_says_where_to_look_and_draws_nothing() -> None:
    whole = page(floater(), ruled())
    assert not whole.all("figure", kind="over")
    assert "controls near it: not looked" in whole.text
    assert "tape from the edge of the opening, 5 min" in whole.text
    assert "outline of the screen of floater" in page(floater(width="240 mm printed"), ruled(control())).text


def test_a_book_without_such_a_screen_says_nothing_of_it() -> None:
    assert "Screens that stand off" not in page(making.unit(), ruled(control())).text
    assert "What its screen covers" not in page(making.unit(), path="head-units/box.md").text


def test_what_does_not_go_in_is_not_drawn() -> None:
    narrow = making.measured("narrow", making.reading("width", "150 ± 1 mm"), controls=[control()])
    assert "Screens that stand off" not in page(floater(), narrow).text


def test_what_is_crowded_is_said() -> None:
    assert "crowds the hazard switch" in page(floater(), ruled(control(near="5 ± 1 mm", far="25 ± 1 mm"))).text


def test_each_build_and_mounting_that_differs_has_its_own() -> None:
    car = making.vehicle(splits={"build": making.split("early", "late")})
    unit = making.changed(floater(), body_height="50 ± 1 mm caliper")
    here = [{"vehicle": making.CAR, "place": making.HOLE}]
    kits = [
        making.mount(
            name,
            made_for=here,
            presents={"height": "53 ± 1 mm caliper", "ninths": [f"{row}-left", row, f"{row}-right"]},
        )
        for name, row in (("high", "upper"), ("low", "lower"))
    ]
    whole = page(car, unit, ruled(control(near="20 ± 1 mm"), splits={"build": "late"}), *kits)
    titles = [figure.all("strong")[0].text for figure in whole.all("figure", kind="over")]
    assert titles == ["floater, late, with high", "floater, late, with low"]
    unit_page = pages_about(car, unit, ruled(control(near="20 ± 1 mm"), splits={"build": "late"}), *kits)[UNIT]
    assert [row.text for row in unit_page.all("dd") if row.text.startswith("late, with ")]


def test_the_page_of_a_unit_says_what_it_covers_where() -> None:
    whole = page(floater(), ruled(control(near="25 ± 1 mm")), path=UNIT)
    [row] = [row for row in whole.all("dd") if row.text.startswith("usable if the middle")]
    assert row.text.endswith("above the middle of the opening")
    assert "Nobody has measured the controls near any opening" in page(floater(), ruled(), path=UNIT).text


def test_after_z_the_letters_begin_again() -> None:
    assert [letter_of(number) for number in (0, 25, 26, 51, 52)] == ["A", "Z", "A1", "Z1", "A2"]


def test_hostile_controls_give_a_page() -> None:
    odd = [
        control("<b>knob</b>", near="9000 m", far="1 mm"),
        control("flat", near="0.0001 mm", far="0.0001 mm", starts="5 mm", ends="5 mm"),
        control("back", beyond="left", starts="900 mm", ends="-900 mm", far=None),
        control("huge", beyond="bottom", near="1 mm", far="40 m", starts="-40 m", ends="40 m"),
    ] * 9
    unit = floater(width="0.001 mm caliper", height="90 m caliper", tilt_least="-400 deg", tilt_most="720 deg")
    whole = page(unit, ruled(*odd), making.unit())
    [figure] = whole.all("figure", kind="over")
    assert "<b>knob</b>" in figure.text

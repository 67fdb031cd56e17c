from bezelbook.reasoning.question import Question, asked
from bezelbook.reasoning.screens.beside_answer import screens_told
from tests.reasoning import making
from tests.reasoning.screens.dashes import control, floater, ruled, told

FREE = "leaves the hazard switch free, however it is set"
FAR_OFF = control(near="200 ± 1 mm", far="220 ± 1 mm")


def test_a_line_says_what_becomes_of_the_controls() -> None:
    assert told(making.book(floater(), ruled(FAR_OFF))) == (f"screen: {FREE}",)


def test_a_thing_without_a_screen_has_no_line() -> None:
    book = making.book(making.unit(), ruled(control()))
    assert told(book, "box") == told(book, None, sizes={"depth": making.length("100 mm")}) == ()
    place = making.place(book)
    put = asked(place.frame, place.evidence, Question(making.CAR, making.HOLE, unit="box"))
    assert screens_told(place, put, "box").missing == ()


def test_each_build_has_its_line() -> None:
    car = making.vehicle(splits={"build": making.split("early", "late")})
    book = making.book(car, floater(), ruled(FAR_OFF, splits={"build": "late"}))
    assert told(book) == ("screen (early): controls near it: not looked", f"screen (late): {FREE}")
    assert told(book, splits={"build": "late"}) == (f"screen: {FREE}",)


def test_a_mounting_is_named_where_it_makes_a_difference() -> None:
    unit = making.changed(floater(), body_height="50 ± 1 mm caliper")
    here = [{"vehicle": making.CAR, "place": making.HOLE}]
    upper = {"height": "53 ± 1 mm caliper", "ninths": ["upper-left", "upper", "upper-right"]}
    lower = {"height": "53 ± 1 mm caliper", "ninths": ["lower-left", "lower", "lower-right"]}
    kits = making.mount("high", presents=upper, made_for=here), making.mount("low", presents=lower, made_for=here)
    lines = told(making.book(unit, ruled(control()), *kits))
    assert {line.partition(":")[0] for line in lines} == {"screen (with high)", "screen (with low)"}
    assert told(making.book(unit, ruled(), *kits)) == ("screen: controls near it: not looked",)


def test_what_is_crowded_has_a_line_of_its_own() -> None:
    lines = told(making.book(floater(), ruled(control(near="5 ± 1 mm", far="25 ± 1 mm"))))
    assert [line.startswith("screen: crowds") for line in lines] == [False, True]


def test_the_shops_own_unit_comes_first() -> None:
    inches = making.shop(units_first="in")
    [one] = told(making.book(inches, floater(), ruled(control(near="25 ± 1 mm", far="45 ± 1 mm"))))
    assert one == (
        "screen: usable if the middle of the screen is set no higher than 0.14 in (3.5 mm) above the middle of the "
        "opening"
    )
    crowded = making.book(inches, floater(), ruled(control(near="5 ± 1 mm", far="25 ± 1 mm")))
    assert told(crowded)[1] == (
        "screen: crowds the hazard switch: 0.14 in (3.5 mm) left at worst, and a finger wants 10 mm"
    )


def test_millimetres_come_first_where_the_shop_says_nothing_else() -> None:
    crowded = making.book(floater(), ruled(control(near="5 ± 1 mm", far="25 ± 1 mm")))
    assert told(crowded)[1] == (
        "screen: crowds the hazard switch: 3.5 mm (0.14 in) left at worst, and a finger wants 10 mm"
    )
    assert "3.5 mm (0.14 in) above" in told(making.book(floater(), ruled(control(near="25 ± 1 mm"))))[0]


def test_a_build_and_a_mounting_are_both_named_where_both_make_a_difference() -> None:
    unit = making.changed(floater(), body_height="50 ± 1 mm caliper")
    here = [{"vehicle": making.CAR, "place": making.HOLE}]
    upper = {"height": "53 ± 1 mm caliper", "ninths": ["upper-left", "upper", "upper-right"]}
    lower = {"height": "53 ± 1 mm caliper", "ninths": ["lower-left", "lower", "lower-right"]}
    kits = making.mount("high", presents=upper, made_for=here), making.mount("low", presents=lower, made_for=here)
    car = making.vehicle(splits={"build": making.split("early", "late")})
    lines = told(making.book(car, unit, ruled(control(), splits={"build": "late"}), *kits))
    assert {line.partition(":")[0] for line in lines} == {
        "screen (early)",
        "screen (late, with high)",
        "screen (late, with low)",
    }


def test_what_nobody_looked_at_is_asked_of_every_build_and_mounting() -> None:
    car = making.vehicle(splits={"build": making.split("early", "late")})
    late = ruled(control(near="1 ± 1 mm", ends=None), splits={"build": "late"})
    book = making.book(car, floater(), late)
    place = making.place(book)
    put = asked(place.frame, place.evidence, Question(making.CAR, making.HOLE, unit="floater"))
    missing = [one.what for one in screens_told(place, put, "floater").missing]
    assert missing[0] == "controls beyond the top, bottom, left, right of the opening: none measured"
    assert "where the hazard switch starts and ends" in missing


def test_it_changes_no_verdict_and_stands_among_the_unknowns() -> None:
    """The same question with and without a control that is covered: nothing else differs."""
    notes = making.roomy(), making.measured("deep", making.reading("depth", "250 ± 2 mm"))
    covered = ruled(
        control(beyond="left", near="1 ± 1 mm", ends=None), readings=[making.reading("width", "190 ± 1 mm")]
    )
    plain = making.ask(making.book(floater(), *notes), "floater")
    screen = making.ask(making.book(floater(), *notes, covered), "floater")
    assert plain.verdict == screen.verdict == "goes in"
    assert any(line.startswith("screen:") for line in screen.needs)
    assert "where the hazard switch starts and ends" in [one.what for one in screen.unknown]

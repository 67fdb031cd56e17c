from bezelbook.publish.ninths import Depth, depths
from bezelbook.publish.opening import Opening
from tests.reasoning import making

MM = 1_000_000
LATE = (("build", "late"),)


def test_the_worked_example_is_150_at_the_duct_and_205_elsewhere(dash: Opening) -> None:
    nine = {one.ninth: one for one in depths(dash.room, LATE)}
    assert nine["lower-left"] == Depth("lower-left", 147 * MM, 153 * MM, "heater duct")
    assert {one.words("mm") for name, one in nine.items() if name != "lower-left"} == {"205 mm (8.07 in) ± 3 mm"}
    assert nine["lower-left"].both("mm") == ("150 mm ± 3 mm", "5.91 in")
    assert nine["lower-left"].both("in") == ("5.91 in ± 3 mm", "150 mm")


def test_a_build_that_nobody_measured_is_blank(dash: Opening) -> None:
    nine = depths(dash.room, (("build", "early"),))
    assert not any(one.measured for one in nine)
    assert {one.words("mm") for one in nine} == {"not looked"}
    assert nine[0].both("mm") == ("not looked", "")


def test_the_shallowest_reading_names_what_stops_it() -> None:
    deep = making.measured("deep", making.reading("depth", "155 ± 8 mm", hits="beam"))
    near = making.measured(
        "near",
        making.reading("depth", "150 ± 3 mm", "upper", hits="duct"),
        making.reading("width", "184 mm", hits="edge"),
    )
    by_eye = making.measured("by-eye", making.reading("depth", "90 mm", "left", tool="eye", hits="ghost"))
    fitted = making.tried()
    place = making.place(making.book(making.unit(), deep, near, by_eye, fitted))
    stops = {one.ninth: one.hits for one in depths(place, ())}
    assert (stops["left"], stops["upper"]) == ("beam", "duct")


def test_a_reading_that_is_argued_over_is_drawn_all_the_same() -> None:
    tape = making.measured("tape", making.reading("depth", "90 ± 3 mm"))
    place = making.place(making.book(making.unit(), tape, making.tried()))
    assert len(place.accounts) == 2
    assert {one.words("mm") for one in depths(place, ())} == {"90 mm (3.54 in) ± 3 mm"}


def test_of_readings_that_differ_one_is_drawn() -> None:
    near, deep = (making.measured(f"at-{mm}", making.reading("depth", f"{mm} ± 3 mm")) for mm in (90, 150))
    nine = depths(making.place(making.book(near, deep)), ())
    assert {one.least // MM for one in nine} <= {87, 147}

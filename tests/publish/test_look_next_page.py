from bezelbook.kinds.record import Record
from tests.publish.pages_of import pages_about
from tests.publish.reading_html import Element
from tests.reasoning import making

PAGE = "look-next.md"
NOSE = {"nose_width": "170 ± 1 mm caliper", "nose_height": "95 ± 1 mm caliper"}
DEEP = making.measured("wire", making.reading("depth", "205 ± 3 mm"))


def page(*records: Record) -> Element:
    return pages_about(*records)[PAGE]


def test_a_look_says_where_what_with_what_how_long_and_what_it_settles() -> None:
    [look] = page(making.unit(**NOSE), making.roomy()).all("section", kind="look")
    assert look.all("p", kind="where")[0].text == "small van, dash centre"
    assert look.all("a")[0].attributes["href"] == "vehicles/small-van-1.html#place-dash-centre"
    for words in (
        "Depth from the sub-dash face: all nine ninths",
        "With depth gauge · 2 min · settles on average 0.9 of 1 open answer",
        "box small van, dash centre in 6 of 7 cases",
    ):
        assert words in look.text
    assert look.all("details")[0].all("a")[0].attributes["href"] == "head-units/box.html"


def test_the_build_to_look_at_is_named_with_the_look_and_with_what_it_settles() -> None:
    car = making.vehicle(splits={"build": making.split("early", "late")})
    looks = page(car, making.unit(**NOSE), making.roomy()).all("section", kind="look")
    wheres = {look.all("p", kind="where")[0].text for look in looks}
    assert {"small van, dash centre, early", "small van, dash centre, late"} <= wheres
    for look in looks:
        if look.all("p", kind="where")[0].text.endswith("late"):
            assert "dash centre, late" in look.all("details")[0].text
            assert "dash centre, early" not in look.all("details")[0].text


def test_a_look_on_the_bench_needs_no_car() -> None:
    whole = page(making.unit(**NOSE, body_depth="110 mm printed"), making.roomy(), DEEP)
    assert [heading.text for heading in whole.all("h2")] == ["On the bench, no car needed", "Nothing to look at"]
    [look] = whole.all("section", kind="look")
    assert look.all("p", kind="where")[0].text == "on the bench"
    assert "settles 1 of 1 open answer" in look.text
    assert "whatever it reads" in look.text
    assert "No look would settle a head unit's answer here: small van." in whole.text


def test_what_is_too_close_is_offered_up() -> None:
    near = making.measured("wire", making.reading("depth", "142 ± 1 mm"))
    sizes = {"body_width": "178 ± 0.2 mm caliper", "body_height": "100 ± 0.2 mm caliper"}
    known = {**NOSE, **sizes, "nose_width": "170 ± 0.2 mm caliper", "nose_height": "95 ± 0.2 mm caliper"}
    plug = {"plug_and_bend": "30 ± 0.1 mm caliper"}
    short = making.unit("short", **known, **plug, body_depth="111.5 ± 0.2 mm caliper")
    deep = making.unit("deep", **known, **plug, body_depth="112.5 ± 0.2 mm caliper")
    looks = page(short, deep, making.roomy(), near).all("section", kind="look")
    assert len(looks) == 2
    for look, unit, other in zip(looks, ("deep", "short"), ("short", "deep"), strict=True):
        assert look.all("p", kind="where")[0].text == "small van, dash centre"
        for words in (
            f"Offer up {unit} with no mount, nothing cut, loom aside, plugs on",
            "With the unit itself · 5 min · settles on average 1.5 of 2 open answers",
            f"{unit} small van, dash centre whether it goes in or not",
            f"{other} small van, dash centre if it goes in, or if it does not",
        ):
            assert words in look.text


def test_what_a_look_settles_only_with_others_is_said_apart() -> None:
    printed = making.unit(**NOSE, body_depth="110 mm printed")
    alone, other = page(printed, making.unit("known", **NOSE), making.roomy()).all("section", kind="look")
    assert "settles on average 0.9 of 1 open answer, and 1 answer together with other looks" in alone.text
    assert "settles nothing by itself, 1 answer together with other looks" in other.text
    assert "box small van, dash centre together with other looks" in other.text


def test_the_best_are_listed_first_and_lead_to_the_rest() -> None:
    names = ("one", "two", "three", "four", "five", "six", "seven")
    places = {name: {"kind": "plain opening", "side": "centre"} for name in names}
    whole = page(making.vehicle(places=places), making.unit(**NOSE))
    [best] = whole.all("ol", kind="best")
    links = [link.attributes["href"].removeprefix("#") for link in best.all("a")]
    assert links == [f"look-{number}" for number in range(1, 13)]
    assert all(len(whole.all("section", id=link)) == 1 for link in links)
    assert len(whole.all("section", kind="look")) == 14


def test_where_nothing_is_open_it_says_so() -> None:
    whole = page()
    assert "Nothing that somebody could look at would settle an answer." in whole.text
    assert whole.all("section") == []


def test_the_vehicle_and_the_monday_list_lead_here() -> None:
    pages = pages_about(making.unit(**NOSE), making.roomy())
    at = [link.attributes["href"] for link in pages[f"vehicles/{making.CAR}.md"].all("a")]
    assert f"../look-next.html#next-{making.CAR}" in at
    assert "look-next.html" in [link.attributes["href"] for link in pages["monday.md"].all("a")]

from tests.publish.pages_of import pages_about
from tests.reasoning import making

PAGE = "head-units/box.md"


def test_it_shows_its_sizes_and_what_else_was_typed() -> None:
    page = pages_about(making.unit(also=["the box"], about="On the shelf.", body_depth='6 1/2" caliper', fuse="10 A"))[
        PAGE
    ]
    rows = {row.all("th")[0].text: [cell.text for cell in row.all("td")] for row in page.all("tr") if row.all("td")}
    assert rows["body depth"] == ['6 1/2" caliper', "165.1 mm (6 1/2 in)", "± 0.2 mm, the house's", "caliper"]
    assert rows["nose width"][0] == "not looked"
    assert "Also called the box." in page.text
    assert "On the shelf." in page.text
    assert {one.all("dt")[0].text: one.all("dd")[0].text for one in page.all("div") if len(one.all("dt")) == 1}[
        "fuse"
    ] == "10 A"


def test_it_says_where_it_would_go_and_where_nobody_has_tried() -> None:
    other = making.record(
        "vehicles",
        "other-van",
        {
            "name": "other van",
            "vehicle_class": "van",
            "generation": 1,
            "model_years": 2,
            "places": {"slot": {"kind": "pocket", "side": "centre"}},
        },
    )
    page = pages_about(making.unit(), making.tried(), other)[PAGE]
    [answers] = page.all("dl", kind="answers")
    assert "small van, dash centre" in answers.text
    assert "Goes in" in answers.text
    assert "other van" not in answers.text
    assert "Nobody has tried: one opening." in page.text


def test_it_quotes_where_it_was_tried_and_what_the_bench_said() -> None:
    bench = making.record("notes", "ruled", {"form": "bench", "part": "box", "words": "ruled twice"})
    page = pages_about(making.unit(), making.tried(words="went well"), bench)[PAGE]
    [tried] = [one for one in page.all("figure", kind="said") if "went well" in one.text]
    assert tried.all("a")[0].attributes["href"] == f"../vehicles/{making.CAR}.html#note-a-note"
    assert [one.attributes["id"] for one in page.all("figure") if "id" in one.attributes] == ["note-ruled"]
    assert "Nobody has tried it." in pages_about(making.unit())[PAGE].text

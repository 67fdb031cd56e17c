from tests.publish.pages_of import pages_about
from tests.reasoning import making

PAGE = "mounts/kit.md"


def test_it_shows_the_hole_it_offers_and_how_far_it_holds_a_part_out() -> None:
    page = pages_about(
        making.mount(presents={"width": "182 mm caliper", "ninths": ["upper", "left"]}, proud="+22 ± 0.5 mm caliper")
    )[PAGE]
    rows = {row.all("th")[0].text: row.all("td")[0].text for row in page.all("tr") if row.all("td")}
    assert rows["width"] == "182 mm caliper"
    assert rows["proud"] == "+22 ± 0.5 mm caliper"
    assert rows["thickness"] == "not looked"
    assert "Behind this hole: upper, left of the opening." in page.text
    assert "Behind this hole: all nine of the opening." in pages_about(making.mount())[PAGE].text


def test_it_leads_to_the_places_it_was_made_for() -> None:
    made_for = [
        {"vehicle": making.CAR, "place": making.HOLE, "splits": {"build": "late"}},
        {"vehicle": making.CAR, "place": "elsewhere"},
        {"vehicle": "gone", "place": "x"},
    ]
    page = pages_about(making.mount(made_for=made_for))[PAGE]
    links = {link.text: link.attributes["href"] for link in page.all("a")}
    assert links["small van, dash centre"] == f"../vehicles/{making.CAR}.html#place-{making.HOLE}"
    assert links["small van, elsewhere"] == f"../vehicles/{making.CAR}.html"
    assert "small van, dash centre, late" in page.text
    assert "gone, x" in page.text


def test_it_names_what_it_cannot_do_without() -> None:
    page = pages_about(making.mount(needs_too=["ring", "gone-ring"]), making.mount("ring"))[PAGE]
    assert [link.attributes["href"] for link in page.all("a") if link.text == "ring"] == ["ring.html"]
    assert "gone ring" in page.text


def test_it_quotes_where_it_was_used_and_what_the_bench_said() -> None:
    bench = making.record("notes", "ruled", {"form": "bench", "part": "kit"})
    page = pages_about(making.unit(), making.mount(), making.tried(mounts=["kit"]), bench)[PAGE]
    assert [link.text for link in page.all("a") if link.attributes["href"].endswith("#note-a-note")] == [
        "small van, dash centre"
    ]
    assert [one.attributes["id"] for one in page.all("figure") if "id" in one.attributes] == ["note-ruled"]
    assert "No note names it." in pages_about(making.mount())[PAGE].text


def test_a_bench_note_about_a_part_and_a_mount_of_one_name_is_quoted_once() -> None:
    bench = making.record("notes", "ruled", {"form": "bench", "part": "kit"})
    pages = pages_about(making.mount(), making.unit("kit"), bench)
    assert "note-ruled" in [one.attributes.get("id") for one in pages["head-units/kit.md"].all("figure")]
    assert pages[PAGE].all("figure") == []

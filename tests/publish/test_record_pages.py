from typing import Any

import pytest

from bezelbook.kinds import KINDS
from bezelbook.kinds.record import Record
from bezelbook.publish.record_pages import LIST_HEADINGS, PART_HEADINGS, called
from tests.publish.pages_of import pages_about
from tests.publish.reading_html import Element
from tests.reasoning import making

SQUARE = {"name": "Square 24", "shell": "square", "cavities": 24}


def connector(named: str = "square-24", /, **content: Any) -> Record:
    made: Record = making.record("connectors", named, SQUARE | content)
    return made


def hrefs(page: Element, words: str) -> list[str]:
    return [link.attributes["href"] for link in page.all("a") if link.text == words]


def terms(page: Element) -> dict[str, str]:
    return {row.all("dt")[0].text: row.all("dd")[0].text for row in page.all("div") if row.all("dt")}


def test_a_part_shows_what_was_typed_of_it() -> None:
    page = pages_about(connector(also=["the square one"], rows=2, width="41 mm caliper"))["connectors/square-24.md"]
    assert page.all("h1")[0].text == "Square 24"
    assert "Connector · square · 24 cavities" in page.text
    assert "the square one" in page.text
    assert terms(page)["rows"].strip() == "2"
    assert terms(page)["width"].strip() == "41 mm caliper"


def test_a_connector_shows_its_face_and_says_what_is_not_drawn() -> None:
    page = pages_about(connector(rows=2, columns=12))["connectors/square-24.md"]
    [drawing] = page.all("svg", kind="face")
    assert len(drawing.all("rect", kind="cavity")) == 24
    said = [one.text for one in page.all("figcaption")[0].all("li")]
    assert "No numbers in its cavities: how they are counted is not looked." in said
    blank = pages_about(connector())["connectors/square-24.md"]
    assert blank.all("svg", kind="face") == []
    assert "No drawing: its rows and columns are not looked at." in blank.text


def test_a_connector_leads_to_what_it_must_not_be_taken_for_and_is_led_to_from_there() -> None:
    double = {"connector": "offset", "difference": "Rib on the right."}
    looks_like = [double, {"connector": "gone-one", "difference": "?"}]
    pages = pages_about(connector(looks_like=looks_like), connector("offset", name="Offset key"))
    page = pages["connectors/square-24.md"]
    assert hrefs(page, "Offset key") == ["offset.html"]
    assert terms(page)["Offset key"] == "Rib on the right."
    assert "gone one" in terms(page)
    assert hrefs(pages["connectors/offset.md"], "Square 24") == ["square-24.html"]


def test_a_part_quotes_the_notes_that_name_it_by_any_of_its_names() -> None:
    seen = making.record("notes", "seen", {"form": "seen", **at(), "plug": "The Square 24", "words": "Plug is here."})
    page = pages_about(making.vehicle(), connector(also=["the square 24"]), seen)["connectors/square-24.md"]
    assert [one.text for one in page.all("blockquote")] == ["plug The Square 24 – Plug is here."]
    assert "No note names it." in pages_about(connector())["connectors/square-24.md"].text


def test_what_the_bench_said_of_a_part_is_quoted_in_full_on_its_page() -> None:
    bench = making.record("notes", "ruled", {"form": "bench", "part": "square-24", "words": "One corner is chipped."})
    page = pages_about(connector(), bench)["connectors/square-24.md"]
    assert [one.attributes["id"] for one in page.all("figure") if "id" in one.attributes] == ["note-ruled"]


def test_a_bench_note_about_two_parts_of_one_name_is_quoted_once() -> None:
    bench = making.record("notes", "ruled", {"form": "bench", "part": "box"})
    pages = pages_about(making.unit(), connector("box"), bench)
    assert len(pages["head-units/box.md"].all("figure", id="note-ruled")) == 1
    assert pages["connectors/box.md"].all("figure", id="note-ruled") == []


def test_an_adapter_shows_each_end_and_what_becomes_of_each_circuit() -> None:
    late = {
        "name": "The T",
        "adapter_kind": "T",
        "ends": {"a": {"connector": "square-24", "side": "unit side"}, "b": {"connector": "gone"}, "c": {}},
        "circuits": {
            "constant": "passes",
            "left front +": {
                "does": "broken out",
                "between": ["a", "b"],
                "out_at": {"a": "c"},
                "lead": "white",
                "cavities": {"a": 9},
                "known_by": "meter",
            },
            "speed": {"does": "makes", "made_by": "bus-box"},
        },
    }
    box = making.record("modules", "bus-box", {"name": "Bus box", "module_kind": "data", "keeps": {"chimes": "kept"}})
    pages = pages_about(connector(), box, making.record("adapters", "late-t", late))
    page = pages["adapters/late-t.md"]
    assert terms(page)["a"] == "Square 24, unit side"
    assert (terms(page)["b"], terms(page)["c"]) == ("gone, side not looked", "not looked")
    rows = {row.all("th")[0].text: [cell.text.strip() for cell in row.all("td")] for row in page.all("tr")[1:]}
    assert rows["constant"] == ["passes", ""]
    assert rows["left front +"] == ["broken out, a to b", "from a at c; white lead; cavity 9 at a; by meter"]
    assert rows["speed"][0] == "makes, Bus box"
    assert hrefs(page, "Bus box") == ["../modules/bus-box.html"]
    assert terms(pages["modules/bus-box.md"])["chimes"] == "kept"
    assert hrefs(pages["modules/bus-box.md"], "The T") == ["../adapters/late-t.html"]


@pytest.mark.parametrize(
    ("folder", "content", "says"),
    [
        ("speakers", {"speaker_kind": "tweeter", "nominal": "25 mm"}, "Speaker · tweeter · sold as 25 mm"),
        ("amplifiers", {"origin": "factory", "channels": 6}, "Amplifier · factory · 6 channels"),
        ("modules", {"module_kind": "chime"}, "Interface module · chime"),
        ("supplies", {"form": "tool", "tool_kind": "hex socket"}, "Tool"),
    ],
)
def test_a_part_says_what_it_is(folder: str, content: dict[str, Any], says: str) -> None:
    page = pages_about(making.record(folder, "one", {"name": "The one"} | content))[f"{folder}/one.md"]
    assert page.all("p", kind="kind")[0].text == says


def at() -> dict[str, str]:
    return {"vehicle": making.CAR, "place": making.HOLE}


def test_what_is_counted_stands_on_one_page_and_leads_to_the_thing() -> None:
    shelf = making.record("shelf", "tray-3", {"thing": "kit", "count": 2, "left": "3 m", "counted_on": "2026-04-20"})
    blank = making.record("shelf", "tray-4", {"thing": "gone-thing", "count": 0, "about": "Who took them?"})
    page = pages_about(making.mount(name="Flush kit"), shelf, blank)["shelf.md"]
    assert [one.text for one in page.all("h2")] == ["Flush kit", "gone thing"]
    assert hrefs(page, "What it is") == ["mounts/kit.html"]
    assert "2, 3 m left · place not written · counted 2026-04-20" in page.text
    assert "0 · place not written · counted on no known day" in page.text
    assert "Who took them?" in page.text


def test_what_was_settled_quotes_what_was_weighed() -> None:
    weighed = [{"note": "a", "said": "170 does not"}, {"note": "gone-note"}]
    settled = {"question": "which kit", "decided": "go and look", "reason": "Two kits.", "notes": weighed}
    note = making.record("notes", "a", {"form": "seen", **at()})
    page = pages_about(making.vehicle(), note, making.record("decisions", "kit", settled))["decisions.md"]
    assert page.all("h2")[0].attributes["id"] == "decision-kit"
    assert page.all("h2")[0].text == "Go and look"
    assert [one.text for one in page.all("li")] == ["a: 170 does not", "gone note"]
    assert hrefs(page, "a") == [f"vehicles/{making.CAR}.html#note-a"]
    assert "not signed, no date" in page.text


def test_what_is_asked_most_stands_first() -> None:
    asked = [
        making.record("questions", name, {"words": f"{name}?", "times": times})
        for name, times in (("a", 1), ("b", 4), ("c", 4))
    ]
    page = pages_about(*asked)["questions.md"]
    assert [one.text for one in page.all("h2")] == ["b?", "c?", "a?"]


def test_the_job_that_comes_first_stands_first_and_one_without_a_day_last() -> None:
    plain = {"vehicle": making.CAR, "wishes": [{"want": "add", "what": "sub"}]}
    days: dict[str, dict[str, str]] = {"later": {"day": "2026-05-04"}, "soon": {"day": "2026-05-01"}, "any": {}}
    jobs = [making.record("jobs", name, {"tag": name, **plain, **day}) for name, day in days.items()]
    page = pages_about(making.vehicle(), *jobs)["jobs.md"]
    assert [one.text for one in page.all("h2")] == ["soon", "later", "any"]
    assert hrefs(page, "small van") == [f"vehicles/{making.CAR}.html"] * 3


@pytest.mark.parametrize(("path", "heading"), [(kind.page, kind.heading) for kind in KINDS.values() if kind.page])
def test_a_list_with_nothing_on_it_says_so(path: str, heading: str) -> None:
    page = pages_about()[f"{path}.md"]
    assert page.all("h1")[0].text == heading
    assert "Nothing yet." in page.text


def test_every_kind_that_has_no_page_module_of_its_own_has_a_heading() -> None:
    of_their_own = {"shop", "vehicle", "head_unit", "mount", "note"}
    assert of_their_own | PART_HEADINGS.keys() | LIST_HEADINGS.keys() == {kind.name for kind in KINDS.values()}
    assert not PART_HEADINGS.keys() & LIST_HEADINGS.keys()


def test_what_has_no_name_is_called_as_its_file() -> None:
    assert called(making.record("shelf", "tray-3", {"thing": "kit", "count": 2})) == "tray 3"
    assert called(making.mount(name="Flush kit")) == "Flush kit"

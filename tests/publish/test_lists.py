from tests.publish.pages_of import pages_about
from tests.reasoning import making


def test_vehicles_stand_with_their_other_names_and_their_notes() -> None:
    page = pages_about(making.vehicle(also=["van one", "the van"]), making.unit(), making.tried())["vehicles.md"]
    [item] = page.all("li")
    assert item.text == "small van one notevan one, the van"
    assert item.all("a")[0].attributes["href"] == f"vehicles/{making.CAR}.html"


def test_parts_stand_with_the_notes_that_name_them() -> None:
    page = pages_about(making.unit(), making.mount(also=["that kit"]), making.tried(mounts=["kit"]))["parts.md"]
    assert [item.text for item in page.all("li")] == [
        "box double · tried in one note",
        "kit kit · used in one notethat kit",
    ]


def test_parts_of_the_other_kinds_stand_under_their_own_headings() -> None:
    speaker = {"name": "Slim six", "speaker_kind": "coaxial", "nominal": "6 1/2 in", "also": ["the slim one"]}
    page = pages_about(making.record("speakers", "slim-six", speaker))["parts.md"]
    assert [one.text for one in page.all("h2")] == ["Head units", "Mounts", "Speakers", "Also in the book"]
    assert [item.text for item in page.all("li") if item.all("a")] == ["Slim sixthe slim one"]


def test_the_shelf_and_the_other_lists_are_reached_from_the_parts() -> None:
    links = {one.attributes["href"] for one in pages_about()["parts.md"].all("a")}
    assert {"shelf.html", "decisions.html", "questions.html", "jobs.html"} <= links


def test_an_empty_book_has_lists_that_say_so() -> None:
    pages = pages_about()
    assert "No head unit is in the book yet." in pages["parts.md"].text
    assert "No mount is in the book yet." in pages["parts.md"].text
    assert "Every note points at something." in pages["loose-notes.md"].text


def test_a_note_that_points_at_nothing_is_listed() -> None:
    page = pages_about(making.tried("lost", vehicle="gone"))["loose-notes.md"]
    assert [one.attributes["id"] for one in page.all("figure")] == ["note-lost"]


def test_the_shop_shows_what_it_likes_to_leave_and_how_far_it_trusts_its_tools() -> None:
    shop = making.shop(about="An invented shop.", people={"rk": "lead installer"}, tools={"tape": "1/8 in"})
    page = pages_about(shop)["shop.md"]
    rows = {row.all("th")[0].text: row.all("td")[0].text for row in page.all("tr")}
    assert rows["glass"] == "5 mm"
    assert rows["tape"] == "± 1/8 in"
    assert "An invented shop." in page.text
    assert "lead installer" in page.text

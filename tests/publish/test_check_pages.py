from dataclasses import replace

from bezelbook.publish.knowledge import Knowledge
from bezelbook.publish.page_text import bodies
from bezelbook.publish.site_file import SiteFile
from tests.publish.pages_of import pages_about
from tests.publish.reading_html import parsed
from tests.publish.test_monday_page import FOUND, RECORDS


def test_a_rule_shows_the_cases_it_is_tested_with() -> None:
    page = pages_about()["checks/too-much.md"]
    assert page.all("h1")[0].text == "Too much of it"
    assert [heading.text for heading in page.all("h3")] == ["Too much", "Nearly", "None"]
    for words in (
        "form: tried",
        "The book proposes: less.",
        "The rest of this little book",
        "name: van",
        "Nothing.",
    ):
        assert words in page.text


def test_a_rule_leads_to_what_it_finds_now_on_the_monday_list() -> None:
    pages = pages_about(*RECORDS, findings=[FOUND, replace(FOUND, key="another", vehicle="")])
    links = [link for item in pages["checks/too-much.md"].all("li") for link in item.all("a")]
    assert [(link.text, link.attributes["href"]) for link in links] == [
        ("small van, dash centre", "../monday.html#question-1"),
        ("on the bench", "../monday.html#question-2"),
    ]
    listed = pages["checks.md"].text
    assert listed.count("Two questions now.") == 1
    assert "cannot all be true · two questions now" in listed


def test_the_list_names_every_rule_with_its_sentence() -> None:
    [item] = pages_about()["checks.md"].all("li")
    assert "There is more of it than there is." in item.text
    assert item.all("a")[0].attributes["href"] == "checks/too-much.html"


def test_every_rule_of_the_book_has_a_page_with_all_its_cases(
    worked: Knowledge, worked_files: tuple[SiteFile, ...]
) -> None:
    pages = bodies(worked_files)
    for rule in worked.rules:
        shown = [heading.text.lower() for heading in parsed(pages[f"checks/{rule.name}.md"]).all("h3")]
        assert sorted(shown) == sorted(case["name"].lower() for case in rule.cases)

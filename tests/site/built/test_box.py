"""The one box, as somebody at a counter uses it."""

import re
from collections.abc import Callable
from pathlib import Path
from urllib.parse import unquote

import pytest
from playwright.sync_api import Locator, Page, expect

from tests.site.watch import Watch

Home = Callable[[Path, str], Page]


def words_in(page: Page) -> Locator:
    return page.get_by_label("Will it go in?")


def ticket(page: Page) -> Locator:
    return page.locator(".ticket")


def verdict(page: Page) -> Locator:
    return ticket(page).locator(".verdict").first


def option(page: Page, words: str) -> Locator:
    return page.locator(".option").filter(has_text=re.compile(rf"^{words}"))


def asked(page: Page) -> str:
    """The words in the address."""
    return unquote(page.evaluate("location.hash")).removeprefix("#ask=")


# --- an answer ---


def test_shop_words_are_answered_while_they_are_typed(at_home: Home, worked_site: Path) -> None:
    page = at_home(worked_site, "")
    words_in(page).press_sequentially("hatch 2 dash late two-high A")
    expect(verdict(page)).to_have_text("Goes in.")
    expect(page.locator(".examples")).to_be_hidden()


def test_the_answer_stands_in_the_order_that_a_counter_needs(at_home: Home, worked_site: Path) -> None:
    page = at_home(worked_site, "hatch 2 late two-high A")
    expect(verdict(page)).to_have_text("Goes in.")
    parts = ticket(page).locator(":scope > *").evaluate_all("(all) => all.map((one) => one.className)")
    assert parts == ["verdict", "for", "number", "sure", "part", "part", "part", "drawn"]
    expect(ticket(page).locator(".for")).to_contain_text("two-high A in the centre dash of the compact hatch")
    expect(ticket(page).locator(".sure")).to_have_text("fitted · one job")
    headings = ticket(page).locator("h3").all_inner_texts()
    assert headings == ["Not known", "What else it needs", "Who says so"]


def test_nothing_unknown_is_said_and_what_is_unknown_waits_where_it_changes_nothing(
    page: Page, at_home: Home, worked_site: Path
) -> None:
    at_home(worked_site, "")
    plain = {"verdict": "goes in", "until_settled": None, "for": {"words": "x", "place": "p"}, "number": None}
    rest = {"sure": "fitted", "witnesses": 2, "notes": [], "argued": [], "unknown": [], "needs": [], "instead": []}
    vehicle = {"name": "v", "notes": {}, "places": {"p": {"name": "p", "at": "#"}}}
    made = page.evaluate(
        "([answer, added, vehicle]) => bezelbook.ticket.ticket(answer, added, vehicle, null).innerText",
        [plain | rest, {"looks": [], "stands": []}, vehicle],
    )
    assert "Nothing unknown." in made
    missing = {"what": "where its plug leaves", "look": "look at it", "changes": "the ninth"}
    firm, open_ = (
        page.evaluate(
            "([answer, added, vehicle]) => bezelbook.ticket.ticket(answer, added, vehicle, null).outerHTML",
            [plain | rest | {"verdict": word, "unknown": [missing]}, {"looks": [], "stands": []}, vehicle],
        )
        for word in ("does not", "nobody has tried")
    )
    assert "<summary>" in firm
    assert "and it does not change this answer" in firm
    assert "where its plug leaves" in firm
    assert "<summary>" not in open_
    assert "fitted · two jobs" in made


def test_goes_in_if_is_one_sentence_with_its_condition(at_home: Home, worked_site: Path) -> None:
    page = at_home(worked_site, "hatch 2 two-high A")
    expect(verdict(page)).to_have_text("Goes in if the build is late.")
    expect(ticket(page).locator(".look")).to_contain_text("a square plug behind the left vent")


def test_argued_over_says_what_holds_until_it_is_settled(at_home: Home, counter_site: Path) -> None:
    page = at_home(counter_site, "van 2 dash disc double")
    expect(verdict(page)).to_have_text("Argued over.")
    expect(ticket(page).locator(".until")).to_have_text("Until settled: does not.")
    expect(ticket(page)).to_contain_text("These cannot all be true:")


def test_notes_stand_quoted_with_the_weak_beside_and_those_set_aside_struck_through(
    at_home: Home, worked_site: Path
) -> None:
    page = at_home(worked_site, "hatch 2 late two-high deep")
    expect(ticket(page).locator(".said.strong").first).to_contain_text("two-high deep: does not")
    expect(ticket(page).locator(".said.weak")).to_have_count(2)
    aside = ticket(page).locator(".said.aside")
    expect(aside).to_contain_text("outside the usual 20 to 220 mm")
    expect(aside.locator("blockquote")).to_have_css("text-decoration-line", "line-through")


def test_a_note_leads_to_all_that_it_says(at_home: Home, worked_site: Path) -> None:
    page = at_home(worked_site, "hatch 2 late two-high A")
    ticket(page).locator(".said a").first.click()
    expect(page).to_have_url(re.compile(r"vehicles/compact-hatch-2\.html#note-"))
    expect(page.locator(":target")).to_be_visible()


# --- asking for the one thing that is missing ---


def test_it_asks_for_the_vehicle_then_the_place_then_the_thing_with_buttons(at_home: Home, counter_site: Path) -> None:
    page = at_home(counter_site, "something")
    expect(page.get_by_role("heading", name="Which vehicle?")).to_be_visible()
    option(page, "cargo van").click()
    expect(page.get_by_role("heading", name="Which place?")).to_be_visible()
    option(page, "radio opening").click()
    expect(page.get_by_role("heading", name="Which one, or how deep is it?")).to_be_visible()
    option(page, "Slim double").click()
    expect(ticket(page)).to_be_visible()
    assert asked(page) == "something cargo van 2 dash slim double"


def test_it_asks_for_the_thing_and_offers_to_take_a_depth(at_home: Home, worked_site: Path) -> None:
    page = at_home(worked_site, "hatch 2")
    expect(page.get_by_role("heading", name="Which one, or how deep is it?")).to_be_visible()
    expect(page.locator(".hint")).to_contain_text("Or type its depth")
    option(page, "two-high deep").click()
    expect(ticket(page).locator(".for")).to_contain_text("two-high deep")


def test_what_shares_a_word_with_what_was_typed_is_offered_first(at_home: Home, counter_site: Path) -> None:
    page = at_home(counter_site, "hatch 2 slim")
    expect(page.locator(".option").first).to_contain_text("Slim double, seven inch")


def test_it_asks_how_deep_when_only_the_front_was_typed(at_home: Home, worked_site: Path) -> None:
    page = at_home(worked_site, "hatch 2 late 177 x 99")
    page.get_by_label("Depth").fill("110")
    page.get_by_label("Depth").press("Enter")
    expect(verdict(page)).to_contain_text("its plug and bend need no more than 37 mm")
    assert asked(page) == "hatch 2 late 177 x 99 110 deep"


def test_a_thing_whose_name_is_not_quite_what_was_typed_is_offered_beside_the_depth(
    at_home: Home, counter_site: Path
) -> None:
    page = at_home(counter_site, "hatch 2 double, full, disc")
    expect(page.get_by_label("Depth")).to_be_visible()
    expect(page.locator(".option")).to_have_text(["Full double with a disc"])
    expect(page.locator(".left")).to_have_count(0)  # what it shares with that name is no word nobody knows
    option(page, "Full double").click()
    expect(ticket(page).locator(".for")).to_contain_text("Full double with a disc")


def test_it_asks_for_the_one_split_that_matters_and_says_what_each_side_changes(
    at_home: Home, worked_site: Path
) -> None:
    page = at_home(worked_site, "hatch 2 two-high A")
    expect(page.get_by_role("heading", name="Which build?")).to_be_visible()
    expect(option(page, "early")).to_contain_text("a long plug behind the left vent, 2 min · Nobody has tried")
    option(page, "late").click()
    expect(verdict(page)).to_have_text("Goes in.")
    expect(page.locator(".asking")).to_have_count(0)


def test_it_does_not_ask_for_a_split_that_changes_nothing(at_home: Home, worked_site: Path) -> None:
    page = at_home(worked_site, "hatch 2 214 deep")
    expect(verdict(page)).to_be_visible()
    expect(page.locator(".asking h2")).to_have_text(["Which build?"])
    page = at_home(worked_site, "hatch 2 late 214 deep")
    expect(verdict(page)).to_have_text("Does not go in.")
    expect(page.locator(".asking")).to_have_count(0)


def test_it_asks_for_the_mount_where_that_changes_the_answer(at_home: Home, counter_site: Path) -> None:
    page = at_home(counter_site, "hatch 2 late 150 deep")
    expect(page.get_by_role("heading", name="Which mount?")).to_be_visible()
    expect(option(page, "flush kit")).to_contain_text("Too close: offer it up first")
    option(page, "proud kit").click()
    expect(ticket(page).locator(".for")).to_contain_text("with proud kit, nothing cut")
    expect(verdict(page)).to_contain_text("Goes in if")


def test_a_place_that_takes_no_box_says_so(at_home: Home, counter_site: Path) -> None:
    page = at_home(counter_site, "hatch 2 left front door slim one")
    expect(page.locator(".asking h2")).to_have_text("left front door is no opening that takes a box. Which place?")


def test_a_mount_that_nobody_noted_there_is_a_way_on(at_home: Home, counter_site: Path) -> None:
    page = at_home(counter_site, "hatch 2 tab bracket 165")
    expect(page.locator(".asking h2")).to_have_text("Nobody has noted that mount here. Another?")
    expect(page.locator(".hint code")).to_have_text('bezelbook ask "hatch 2 tab bracket 165"')
    option(page, "any mount that is known here").click()
    expect(ticket(page)).to_be_visible()


def test_a_thing_and_a_size_together_are_asked_apart(at_home: Home, worked_site: Path) -> None:
    page = at_home(worked_site, "hatch 2 late two-high A 165 deep")
    expect(page.locator(".asking h2")).to_have_text("That is a thing and a size. Which one do you mean?")
    option(page, "only the size").click()
    expect(verdict(page)).to_have_text("Does not go in.")


# --- numbers ---


def test_a_bare_number_says_how_it_was_read_and_offers_the_other_reading(at_home: Home, worked_site: Path) -> None:
    page = at_home(worked_site, "hatch 2 late 6.5")
    expect(page.locator(".took")).to_contain_text("6.5 read as in.")
    expect(verdict(page)).to_have_text("Does not go in.")
    page.get_by_role("button", name="I meant 6.5 cm").click()
    expect(ticket(page).locator(".for")).to_contain_text("6.5 cm in the centre dash")
    expect(page.locator(".took")).to_have_count(0)


def test_so_many_inches_can_be_meant_even_where_it_is_unlikely(at_home: Home, worked_site: Path) -> None:
    page = at_home(worked_site, "hatch 2 late 165")
    page.get_by_role("button", name="I meant 165 in").click()
    expect(ticket(page).locator(".for")).to_contain_text("165 inches in the centre dash")
    expect(ticket(page).locator(".number")).to_contain_text("it asks 4191 mm (165 in)")


def test_what_was_not_understood_is_told(at_home: Home, worked_site: Path) -> None:
    page = at_home(worked_site, "hatch 2 late blue loom two-high A 1,000 mm")
    expect(page.locator(".left")).to_have_text("Not a name in the book: blue loom")
    expect(page.locator(".took")).to_contain_text("1,000 mm was not read as a size.")


# --- its address ---


def test_the_answer_has_an_address_that_restores_it(at_home: Home, worked_site: Path) -> None:
    page = at_home(worked_site, "")
    words_in(page).fill('hatch 2 late 6 1/2"')
    words_in(page).press("Enter")
    expect(verdict(page)).to_have_text("Does not go in.")
    address = page.url
    page.goto("about:blank")
    page.goto(address)
    expect(words_in(page)).to_have_value('hatch 2 late 6 1/2"')
    expect(verdict(page)).to_have_text("Does not go in.")
    assert "6 1/2" in page.title()


def test_the_way_back_leads_to_what_was_asked_before(at_home: Home, worked_site: Path) -> None:
    page = at_home(worked_site, "hatch 2 two-high A")
    option(page, "late").click()
    expect(verdict(page)).to_have_text("Goes in.")
    page.go_back()
    expect(verdict(page)).to_have_text("Goes in if the build is late.")
    expect(words_in(page)).to_have_value("hatch 2 two-high A")


def test_an_address_follows_what_is_typed_without_filling_the_way_back(at_home: Home, worked_site: Path) -> None:
    page = at_home(worked_site, "")
    words_in(page).press_sequentially("hatch 2 late 120")
    page.wait_for_function("location.hash.includes('120')")
    assert page.evaluate("history.length") <= 2
    words_in(page).fill("")
    page.wait_for_function("!location.hash.includes('ask')")
    expect(page.locator(".examples")).to_be_visible()


@pytest.mark.parametrize("words", ["%", "%E0%A4%A", "%00", "a" * 3000, "%F0%9F%98%80"])
def test_an_address_that_says_nothing_does_no_harm(at_home: Home, worked_site: Path, words: str) -> None:
    page = at_home(worked_site, words)
    expect(words_in(page)).to_be_visible()
    words_in(page).fill("hatch 2 late two-high A")
    expect(verdict(page)).to_have_text("Goes in.")


# --- finding pages, keys and thumbs, faults ---


def test_pages_are_found_by_name_and_by_other_names(at_home: Home, counter_site: Path) -> None:
    page = at_home(counter_site, "slim one")
    page.locator("#found").get_by_role("link", name="Slim double, seven inch").click()
    expect(page).to_have_url(re.compile(r"head-units/slim-double\.html$"))


def test_it_works_with_keys_alone(at_home: Home, worked_site: Path) -> None:
    page = at_home(worked_site, "")
    words_in(page).focus()
    page.keyboard.type("hatch 2 two-high A")
    page.keyboard.press("Enter")
    expect(option(page, "late")).to_be_visible()
    for _ in range(12):
        page.keyboard.press("Tab")
        if page.evaluate("document.activeElement.innerText").startswith("late"):
            break
    page.keyboard.press("Enter")
    expect(verdict(page)).to_have_text("Goes in.")


def test_every_button_is_large_enough_for_a_thumb(at_home: Home, counter_site: Path) -> None:
    page = at_home(counter_site, "hatch 2 150")
    page.set_viewport_size({"width": 390, "height": 844})
    boxes = [button.bounding_box() for button in page.locator("button:visible").all()]
    assert len(boxes) > 3
    assert all(box and box["height"] >= 44 and box["width"] >= 44 for box in boxes)


def test_a_vehicle_whose_script_is_missing_is_said(
    at_home: Home, worked_site: Path, tmp_path: Path, watch: Watch
) -> None:
    copied = tmp_path / "site"
    copied.mkdir()
    for path in worked_site.rglob("*"):
        if path.is_file() and "vehicles" not in path.parts[-2:]:
            target = copied / path.relative_to(worked_site)
            target.parent.mkdir(parents=True, exist_ok=True)
            target.write_bytes(path.read_bytes())
    page = at_home(copied, "hatch 2 late two-high A")
    expect(page.locator(".cannot")).to_have_text(
        "data/vehicles/compact-hatch-2.js is missing from this copy of the site."
    )
    watch.forgive()


def test_examples_are_answers(at_home: Home, demo_site: Path) -> None:
    page = at_home(demo_site, "")
    for words in page.locator(".examples a").all_inner_texts():
        page.get_by_role("link", name=words, exact=True).click()
        expect(ticket(page)).to_be_visible()
        page.go_back()
        expect(page.locator(".examples")).to_be_visible()


# --- speakers ---


def test_a_speaker_is_answered_and_a_typed_depth_too(at_home: Home, doors_site: Path) -> None:
    page = at_home(doors_site, "hatch left door the deep six and a half")
    expect(verdict(page)).to_contain_text("Goes in if")
    page = at_home(doors_site, "hatch left door 50 deep")
    expect(verdict(page)).to_have_text("Goes in.")
    expect(ticket(page).locator(".number")).to_contain_text("8 mm (0.31 in) is left; the house wants 5 mm")


def test_the_side_is_asked_about_with_what_is_known_of_each(at_home: Home, doors_site: Path) -> None:
    page = at_home(doors_site, "hatch driver's door speakers")
    expect(page.locator(".asking h2")).to_contain_text("The driver may sit on either. Which side?")
    expect(page.locator(".known").first).to_contain_text("measured: cut-out 151 ± 0.5 mm by caliper")
    option(page, "left front door").click()
    expect(page.locator(".asking h2")).to_have_text("Which speaker, or how deep is it?")
    expect(option(page, "Deep six and a half")).to_contain_text("Goes in if")


def test_a_size_class_is_told_and_can_be_meant_as_a_depth(at_home: Home, doors_site: Path) -> None:
    page = at_home(doors_site, "hatch left door 165")
    expect(page.locator(".took")).to_contain_text("165 read as the 6 1/2 in size.")
    page.get_by_role("button", name="I meant 165 deep").click()
    expect(verdict(page)).to_have_text("Does not go in.")


def test_several_sizes_are_taken_apart_with_a_way_on(at_home: Home, doors_site: Path) -> None:
    page = at_home(doors_site, "hatch left door 50 deep cut-out 143")
    expect(page.locator(".asking h2")).to_contain_text("one at a time")
    expect(page.locator(".hint code")).to_have_text('bezelbook ask "hatch left door 50 deep cut-out 143"')
    option(page, "mounting depth 50 mm alone").click()
    expect(verdict(page)).to_have_text("Goes in.")

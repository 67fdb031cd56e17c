"""Where a speaker goes in, and the links between its page and the places'."""

from bezelbook.publish.address import Links, part_page
from bezelbook.publish.speakers.place import places_for_speakers
from bezelbook.publish.speakers.speaker_part import goes_where
from tests.publish.pages_of import pages_about
from tests.reasoning.making import record
from tests.reasoning.speakers.doors import book as doors_book
from tests.reasoning.speakers.doors import car, mount, roomy, speaker, tried

RECORDS = (car(), speaker(), mount("ring", thickness="5 mm caliper"), roomy(), tried("right", place="door-right"))


def test_only_places_of_which_something_is_known_are_told() -> None:
    of = doors_book(roomy())
    [one] = goes_where("six", places_for_speakers(of), Links(part_page("speaker", "six"), of))
    assert (one.place, one.words, one.reason) == ("Van, door left", "Goes in", "worked out · one job")


def test_links_go_both_ways() -> None:
    pages = pages_about(*RECORDS)
    vehicle, own = pages["vehicles/van-1.md"], pages["speakers/six.md"]
    assert "../speakers/six.html" in [link.attributes.get("href") for link in vehicle.all("a")]
    assert any("vehicles/van-1.html#" in link.attributes.get("href", "") for link in own.all("a"))
    assert "Which rings would do" in vehicle.text


def test_a_speaker_that_nobody_tried_says_so() -> None:
    pages = pages_about(car(), speaker("lonely"))
    assert "Nobody has tried it anywhere, and no reading settles it." in pages["speakers/lonely.md"].text


def test_hostile_names_and_missing_sizes_make_a_sensible_page() -> None:
    odd = record("speakers", "odd", {"name": "<b>odd</b>", "speaker_kind": "tweeter", "nominal": "25 mm", "shape": "D"})
    words = tried(
        "words", what="a <i>coax</i>", mounts=["ring <from> nowhere"], gasket="chewing gum", place="door-right"
    )
    pages = pages_about(*RECORDS, odd, words, tried("odd-one", what="odd"))
    assert "<b>odd</b>" in pages["vehicles/van-1.md"].text


def test_a_place_that_takes_a_box_tells_of_speakers_where_a_note_does() -> None:
    under_the_seat = tried("seat", place="seat")
    told = pages_about(car(), speaker(), under_the_seat)["vehicles/van-1.md"].text
    assert told.count("Which speakers go in") > pages_about(car(), speaker())["vehicles/van-1.md"].text.count(
        "Which speakers go in"
    )

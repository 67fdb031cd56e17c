from itertools import pairwise

from bezelbook.publish.drawing.stack import CARD, Card, stack
from tests.publish.reading_html import Element, parsed

CARDS = (
    Card("strip", "wood strip", 0, unsure=False),
    Card("lid", "lid", 0, unsure=False),
    Card("bezel", "bezel", 1, unsure=False),
    Card("radio", "radio <tray>", 2, unsure=True),
)
OVER = (("strip", "bezel"), ("lid", "bezel"), ("bezel", "radio"))


def drawn(cards: tuple[Card, ...] = CARDS, over: tuple[tuple[str, str], ...] = OVER) -> Element:
    [svg] = parsed(stack(cards, over, "what lies over what")).all("svg", kind="stack")
    return svg


def cards_of(svg: Element) -> dict[str, tuple[int, int, int]]:
    """Each piece with its top and left, read back from the geometry, and its place in the order, from the top down."""
    found = {}
    for group in svg.all("g", kind="card"):
        [rect] = group.all("rect")
        top, left = int(rect.attributes["y"]), int(rect.attributes["x"].removesuffix("%"))
        found[group.attributes["data-piece"]] = (top, left, int(group.attributes["data-place"]))
    return dict(sorted(found.items(), key=lambda one: one[1]))


def test_the_first_to_come_off_is_at_the_top_and_the_rest_follow_in_order() -> None:
    assert list(cards_of(drawn())) == ["strip", "lid", "bezel", "radio"]
    assert [place for _, _, place in cards_of(drawn()).values()] == [1, 2, 3, 4]


def test_a_card_covers_the_edge_of_the_next_only_where_it_lies_over_it() -> None:
    tops = [top for top, _, _ in cards_of(drawn()).values()]
    covers = [lower - upper < CARD for upper, lower in pairwise(tops)]
    assert covers == [False, True, True]


def test_what_is_covered_is_drawn_underneath() -> None:
    # What comes later in a drawing lies on top.
    assert [group.attributes["data-place"] for group in drawn().all("g", kind="card")] == ["4", "3", "2", "1"]


def test_a_card_stands_the_further_in_the_deeper_it_lies() -> None:
    lefts = {piece: left for piece, (_, left, _) in cards_of(drawn()).items()}
    assert lefts["strip"] == lefts["lid"] < lefts["bezel"] < lefts["radio"]


def test_every_card_ends_at_the_same_edge_inside_the_drawing() -> None:
    deep = tuple(Card(f"p{depth}", "piece", depth, unsure=False) for depth in range(9))
    ends = set()
    for rect in drawn(deep, ()).all("rect"):
        left, width = (int(rect.attributes[name].removesuffix("%")) for name in ("x", "width"))
        assert width > 50
        ends.add(left + width)
    assert len(ends) == 1
    assert ends.pop() < 100


def test_a_line_leads_to_what_lies_further_down() -> None:
    [line] = drawn().all("g", kind="over")
    assert line.attributes["data-over"] == "1 3"
    tops = cards_of(drawn())
    down = line.all("line")[1].attributes
    assert tops["strip"][0] < int(down["y1"]) < tops["strip"][0] + CARD
    assert tops["bezel"][0] < int(down["y2"]) < tops["bezel"][0] + CARD


def test_lines_that_run_side_by_side_have_lanes_of_their_own() -> None:
    over = (("strip", "bezel"), ("lid", "radio"), ("strip", "radio"))
    lanes = [group.all("line")[1].attributes["x1"] for group in drawn(over=over).all("g", kind="over")]
    assert len(set(lanes)) == 3
    apart = (Card("a", "a", 0, unsure=False), *CARDS, Card("z", "z", 3, unsure=False), Card("y", "y", 4, unsure=False))
    one_after_another = drawn(apart, (("a", "lid"), ("bezel", "z")))
    assert len({group.all("line")[1].attributes["x1"] for group in one_after_another.all("g", kind="over")}) == 1


def test_what_is_not_sure_is_marked_and_said() -> None:
    assert [group.attributes["data-piece"] for group in drawn().all("g", kind="unsure")] == ["radio"]
    [title] = drawn().all("title")
    assert title.text == (
        "what lies over what: 1 wood strip, off before 3; 2 lid, off before 3; 3 bezel, off before 4; "
        "4 radio <tray>, not sure"
    )


def test_a_long_name_is_cut_on_its_card() -> None:
    [text] = drawn((Card("x", "y" * 120, 0, unsure=False),), ()).all("text")
    assert text.text.endswith("…")
    assert len(text.text) < 40

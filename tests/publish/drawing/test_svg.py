from fractions import Fraction

from markupsafe import Markup

from bezelbook.publish.drawing.svg import MM, Scale, element, scale_for, span, tick, words_at
from tests.publish.reading_html import parsed


def test_a_place_on_the_scale_is_its_share_of_the_whole() -> None:
    scale = Scale(240 * MM)
    assert scale.at(0) == "0%"
    assert scale.at(60 * MM) == "25%"
    assert scale.at(240 * MM) == "100%"
    assert scale.at(147 * MM) == "61.2500%"
    assert scale.at(MM // 3) == "0.1389%"


def test_a_scale_ends_at_a_whole_centimetre_with_room_to_spare() -> None:
    assert scale_for(200 * MM) == Scale(200 * MM)
    assert scale_for(200 * MM + 1) == Scale(210 * MM)
    assert scale_for(200 * MM, Fraction(11, 10)) == Scale(220 * MM)
    assert list(Scale(30 * MM).steps(10 * MM)) == [0, 10 * MM, 20 * MM, 30 * MM]


def test_words_in_a_drawing_are_text() -> None:
    drawn = element("text", {"title": '"><script>', "left": None}, "<b>", Markup("<i>ours</i>"))
    assert drawn == '<text title="&#34;&gt;&lt;script&gt;">&lt;b&gt;<i>ours</i></text>'


def test_a_shape_keeps_its_lengths_beside_it() -> None:
    scale = Scale(200 * MM)
    assert span(scale, 50 * MM, 150 * MM) == {"x": "25%", "width": "50%", "data-from": 50 * MM, "data-to": 150 * MM}
    [line] = parsed(tick(scale, 50 * MM, 1, 9)).all("line")
    assert line.attributes == {"class": "tick", "x1": "25%", "x2": "25%", "y1": "1", "y2": "9", "data-at": "50000000"}
    [words] = parsed(words_at(scale, 50 * MM, 4, "50", dx=2)).all("text")
    assert (words.text, words.attributes) == ("50", {"x": "25%", "y": "4", "dx": "2"})

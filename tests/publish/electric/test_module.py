from bezelbook.kinds.module.record import Module
from bezelbook.publish.electric.module import output_lines
from tests.publish.pages_of import pages_about
from tests.reasoning import making

OUTPUTS = {"accessory": {"most": "500 mA"}, "amplifier turn-on": {}, "speed": {}, "reverse": {"most": "2 A"}}


def module() -> Module:
    made: Module = making.record("modules", "box", {"name": "Box", "module_kind": "data", "outputs": OUTPUTS})
    return made


def test_an_output_says_its_most_and_a_blank_where_to_look() -> None:
    found = dict(output_lines(module()))
    assert found["accessory"] == "500 mA and no more: what draws more wants a relay"
    assert found["amplifier turn-on"].startswith("the most it gives is not looked: its sheet")
    assert "reverse" in found
    assert "speed" not in found  # a signal carries nothing


def test_its_page_shows_it() -> None:
    page = pages_about(module())["modules/box.md"]
    assert "How much its outputs carry" in page.text
    bare = making.record("modules", "box", {"name": "Box", "module_kind": "data"})
    assert "How much its outputs carry" not in pages_about(bare)["modules/box.md"].text

from bezelbook.publish.sizes import SizeRow, size_rows
from tests.reasoning import making


def test_a_size_is_shown_as_typed_in_both_units_with_how_it_was_come_by() -> None:
    unit = making.unit(
        body_width='7" caliper', body_height="100 ± 1 mm", body_depth="165 mm printed", plug_and_bend=None
    )
    fields = ("body_width", "body_height", "body_depth", "plug_and_bend")
    house = making.length("0.2 mm")
    assert size_rows(unit, fields, house, "mm") == (
        SizeRow("body width", '7" caliper', "177.8 mm (7 in)", "± 0.2 mm, the house's", "caliper"),
        SizeRow("body height", "100 ± 1 mm", "100 mm (3.94 in)", "± 1 mm", "not said"),
        SizeRow("body depth", "165 mm printed", "165 mm (6.50 in)", "not known", "printed"),
        SizeRow("plug and bend", "not looked", "", "", ""),
    )
    assert size_rows(unit, ("body_width",), house, "in")[0].both == "7 in (177.8 mm)"


def test_flush_is_exact() -> None:
    [row] = size_rows(making.mount(), ("proud",), making.length("0.2 mm"), "mm")
    assert (row.typed, row.give) == ("flush", "exact")

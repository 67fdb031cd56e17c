"""Every text of plain data is withheld where it must be; what names a thing is left alone."""

from bezelbook.publish.shown import shown


def test_texts_at_any_depth_and_nothing_else() -> None:
    data = {"key": "AB12 CDE", "says": ["AB12 CDE", ("25 Nm", 3, None)], "ok": True}
    assert shown(data) == {
        "key": "AB12 CDE",
        "says": ["withheld: a plate", ["withheld: a tightening figure", 3, None]],
        "ok": True,
    }

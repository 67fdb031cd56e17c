from bezelbook.reasoning.circuits.wiring import FROM_RADIO, NEVER_MADE_UP, SPEAKERS, Half, Piece


def test_halves_mate_in_shell_and_side() -> None:
    half = Half("square", "vehicle side")
    assert half.mates(Half("square", "unit side"))
    assert not half.mates(Half("square", "vehicle side"))
    assert not half.mates(Half("square-offset", "unit side"))


def test_what_a_piece_was_never_seen_with_is_not_looked() -> None:
    piece = Piece("lead", sees={"a": {"constant": "known"}})
    assert piece.seen("a", "constant") == "known"
    assert piece.seen("a", "ground") == piece.seen("b", "constant") == "not looked"


def test_there_are_four_pairs_and_the_radio_drives_them() -> None:
    assert len(SPEAKERS) == 8
    assert set(SPEAKERS) < FROM_RADIO
    assert {"park brake", "speed", "reverse"} == NEVER_MADE_UP

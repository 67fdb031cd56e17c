"""The one number that decides."""

from tests.reasoning.speakers.doors import ask, book, mount, roomy, shop, speaker, tried

MM = 1_000_000


def test_a_yes_is_decided_by_what_leaves_least_of_what_is_wanted() -> None:
    spot = ask(book(shop(glass="5 mm", grille="3 mm"), roomy(glass="66 ± 1 mm"))).spot
    assert spot is not None
    assert (spot.size, spot.left, spot.house, spot.sure_gap, spot.best_gap) == ("glass", 6 * MM, 5 * MM, 5 * MM, 7 * MM)
    assert spot.words("mm") == (
        "mounting depth: it asks 60 mm (2.36 in) at the glass; there is 66 mm (2.60 in) ± 1 mm, "
        "so 6 mm (0.24 in) is left; the house wants 5 mm (0.20 in)"
    )
    short = ask(book(shop(glass="5 mm", grille="3 mm"), roomy(glass="50 ± 1 mm"))).spot
    assert short is not None
    assert short.words("mm").endswith("there is 50 mm (1.97 in) ± 1 mm, so it is short by about 10 mm (0.39 in)")


def test_a_no_is_decided_by_what_is_furthest_short() -> None:
    spot = ask(book(roomy(glass="50 ± 1 mm"), speaker(front_height="22 mm caliper"))).spot
    assert spot is not None
    assert (spot.size, spot.best_gap) == ("glass", -9 * MM)
    assert spot.words("mm").endswith("there is 50 mm (1.97 in) ± 1 mm")


def test_too_close_is_decided_by_what_is_tight() -> None:
    spot = ask(book(roomy(glass="60 ± 1 mm"))).spot
    assert spot is not None
    assert (spot.size, spot.is_tight) == ("glass", True)


def test_of_many_ways_the_one_that_comes_nearest_decides() -> None:
    rings = [mount("thin", thickness="1 mm caliper"), mount("thick", thickness="4 mm caliper")]
    spot = ask(book(*rings, roomy(glass="58 ± 1 mm")), mounts=None).spot
    assert spot is not None
    assert spot.room.least == 61 * MM


def test_what_only_went_in_is_known_at_one_end() -> None:
    spot = ask(book(tried())).spot
    assert spot is not None
    assert (spot.best_gap, spot.room.least) == (None, 130 * MM)
    assert spot.words("mm").endswith("at least 130 mm (5.12 in) is known to be there")


def test_where_nothing_is_known_no_number_decides() -> None:
    assert ask(book()).spot is None
    assert ask(book(speaker("odd", basket=None, mounting_depth=None, front_height=None)), "odd").spot is None
    assert ask(book(tried(verdict="does not", what="six"))).spot is None

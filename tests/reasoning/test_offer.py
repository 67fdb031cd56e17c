from typing import Any

import pytest

from bezelbook.reasoning.offer import Offer, best_of, may_be_offered
from bezelbook.values.words import AnswerVerdict


def offer(words: str, **more: Any) -> Offer:
    plain: dict[str, Any] = {
        "kind": "another one",
        "thing": words,
        "place": "dash",
        "mounts": (),
        "verdict": "goes in",
        "condition": "",
        "sure": "fitted",
        "witnesses": 1,
        "needs": (),
        "buy": (),
    }
    return Offer(words=words, **(plain | more))


@pytest.mark.parametrize(
    ("verdict", "witnesses", "may"),
    [
        ("goes in", 0, True),
        ("goes in if", 1, True),
        ("goes in if", 0, False),
        ("does not", 2, False),
        ("nobody has tried", 0, False),
    ],
)
def test_a_condition_that_no_job_carries_is_no_offer(verdict: AnswerVerdict, witnesses: int, *, may: bool) -> None:
    assert may_be_offered(verdict, witnesses) == may


def order(*offers: Offer) -> list[str]:
    return [one.words for one in best_of(offers)]


def test_what_goes_in_comes_before_what_goes_in_if_and_the_surer_before_the_less_sure() -> None:
    on_a_condition = offer("if", verdict="goes in if", condition="it is late")
    worked_out, measured = offer("worked out", sure="worked out"), offer("measured", sure="measured")
    assert order(on_a_condition, worked_out, measured) == ["measured", "worked out", "if"]


def test_an_offer_that_no_note_carries_comes_after_those_that_one_does() -> None:
    assert order(offer("a", sure=None, verdict="goes in if"), offer("b", sure="worked out", verdict="goes in if")) == [
        "b",
        "a",
    ]


def test_of_equally_sure_ones_the_least_to_buy_comes_first_then_what_more_jobs_saw() -> None:
    two, one, nothing = offer("two", buy=("a", "b")), offer("one", buy=("a",)), offer("nothing", witnesses=2)
    assert order(two, one, offer("once"), nothing) == ["nothing", "once", "one"]


def test_offers_that_nothing_else_tells_apart_come_in_the_order_of_their_kinds_and_names() -> None:
    elsewhere = offer("elsewhere", kind="another place", thing=None)
    another, kept = offer("kit", kind="another mount", thing="z"), offer("kept", kind="keep the radio", thing="a")
    assert order(kept, elsewhere, another) == ["kit", "elsewhere", "kept"]
    assert order(offer("b"), offer("a"), offer("it", thing=None), offer("10-inch")) == ["it", "10-inch", "a"]


def test_three_of_a_kind_are_enough_and_no_kind_crowds_out_another() -> None:
    place = offer("elsewhere", kind="another place", sure="worked out")
    assert order(*(offer(f"u{number}") for number in range(5)), place) == ["u0", "u1", "u2", "elsewhere"]


def test_an_offer_as_plain_data_says_all_of_it() -> None:
    plain = offer("short one", condition="it is late", needs=("a kit",), buy=("Kit",), mounts=("kit",)).plain()
    assert plain == {
        "kind": "another one",
        "words": "short one",
        "what": "short one",
        "place": "dash",
        "mounts": ["kit"],
        "verdict": "goes in",
        "condition": "it is late",
        "sure": "fitted",
        "witnesses": 1,
        "needs": ["a kit"],
        "to_buy": ["Kit"],
    }

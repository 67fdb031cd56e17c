from bezelbook.reasoning.order.saying import Said, gathered


def test_what_several_say_is_said_once_by_all_of_them() -> None:
    said = [("Two hooks", "a"), ("another", "b"), ("two-hooks", "c"), ("Two hooks", "a")]
    assert gathered(said) == (Said("Two hooks", ("a", "c")), Said("another", ("b",)))


def test_what_is_no_text_is_told_apart_as_it_is() -> None:
    assert gathered([(("up", "left"), "a"), (("up",), "b"), (("up", "left"), "c")]) == (
        Said(("up", "left"), ("a", "c")),
        Said(("up",), ("b",)),
    )

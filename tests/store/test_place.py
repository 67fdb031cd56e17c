"""Places count from 1, as editors do."""

from bezelbook.store.place import Fault, Place


def test_a_place_and_a_fault_are_values() -> None:
    assert Place(1, 2) == Place(1, 2)
    assert Fault(1, 2, "what", "mend") != Fault(1, 3, "what", "mend")

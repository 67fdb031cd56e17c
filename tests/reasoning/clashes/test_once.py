"""What is worked out once a place is worked out again for another book."""

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.clashes.once import once_a_place


def test_it_is_worked_out_once_for_one_book_and_again_for_another() -> None:
    asked: list[tuple[str, str]] = []

    @once_a_place
    def find(book: KnowledgeBase, vehicle: str, place: str) -> int:
        asked.append((vehicle, place))
        return len(book.records)

    book, other = KnowledgeBase(), KnowledgeBase({"note": {}})
    assert [find(book, "a", "b"), find(book, "a", "b"), find(other, "a", "b"), find(book, "a", "c")] == [0, 0, 1, 0]
    assert asked == [("a", "b"), ("a", "b"), ("a", "c")]

from bezelbook.publish.data import data_files
from bezelbook.publish.knowledge import Knowledge
from bezelbook.publish.opening import Opening
from tests.publish.scripts import handed_over


def test_there_is_one_script_for_the_book_and_one_for_each_vehicle(worked: Knowledge, dash: Opening) -> None:
    files = list(data_files(worked, [dash], {}))
    assert [(file.path, file.source) for file in files] == [
        ("data/book.js", None),
        ("data/findings.sarif.json", None),
        ("data/vehicles/compact-hatch-2.js", "vehicles/compact-hatch-2"),
    ]
    assert [handed_over(file.text)[0] for file in files if file.path.endswith(".js")] == ["book", "vehicle"]
    assert handed_over(files[2].text)[1]["id"] == "compact-hatch-2"


def test_a_script_is_plain_ascii(worked: Knowledge, dash: Opening) -> None:
    assert all(file.text.isascii() for file in data_files(worked, [dash], {}))

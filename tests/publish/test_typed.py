from bezelbook.publish.typed import flow, typed_lines
from tests.reasoning import making


def test_a_note_is_shown_as_typed_and_blanks_are_not_there() -> None:
    said = {"mounts": ["kit", "ring"], "cut": None, "splits": {"build": "late"}, "sizes": {"depth": '6 1/2 "'}}
    lines = {
        line.label: line.words for line in typed_lines(making.tried(words="a\nb", **said), leave_out=("id", "form"))
    }
    assert lines == {
        "vehicle": (making.CAR,),
        "place": (making.HOLE,),
        "splits": ("build late",),
        "mounts": ("kit, ring",),
        "plugs": ("on",),
        "loom": ("aside",),
        "words": ("a\nb",),
        "what": ("box",),
        "verdict": ("goes in",),
        "sure": ("fitted",),
        "sizes": ('depth 6 1/2 "',),
    }


def test_things_with_fields_of_their_own_have_a_line_each() -> None:
    note = making.measured("m", making.reading("depth", "150 ± 3 mm", "lower-left"), making.reading("width", "184 mm"))
    [readings] = [line for line in typed_lines(note) if line.label == "readings"]
    assert readings.words == (
        "of depth · reads 150 ± 3 mm · zones lower-left · datum sub-dash face · tool wire",
        "of width · reads 184 mm · tool wire",
    )
    car = making.vehicle(trim={"left-vent": {"side": "left"}})
    [trim] = [line for line in typed_lines(car) if line.label == "trim"]
    assert trim.words == ("left-vent: side left",)


def test_plain_data_stands_in_one_line_as_it_could_in_a_file() -> None:
    data = {"form": "tried", "sizes": {"depth": "6.5 mm"}, "mounts": ["a", "b"], "year": 3}
    assert flow(data) == "form: tried, sizes: {depth: 6.5 mm}, mounts: [a, b], year: 3"

from typing import Any

from bezelbook.reasoning.circuits.speaker_leads import SpeakerLead, speaker_lead
from bezelbook.reasoning.unknowns import Missing
from tests.reasoning.circuits.a_car import DOOR, car, connector, metered, plug_in, seen

ENDS = {"a": {"connector": "square", "side": "unit side"}, "b": {"ends_in": "blades", "polarity_mark": "wide is plus"}}


def lead(name: str = "lead", *circuits: str, **content: Any) -> Any:
    return plug_in(
        name,
        *(circuits or ("left front +", "left front -")),
        **({"adapter_kind": "speaker lead", "ends": ENDS} | content),
    )


def found(*records: Any) -> SpeakerLead:
    return speaker_lead(car(*records, place=DOOR))


def test_a_lead_that_takes_the_plug_and_carries_plus_and_minus_fits() -> None:
    one = found(metered("one", (1, "left front +"), place=DOOR), lead())
    assert ([adapter.id for adapter in one.adapters], one.unknown) == (["lead"], ())
    assert (one.plugs.state, one.plugs.connectors) == ("known", ("square",))


def test_where_the_plug_is_argued_over_a_lead_for_either_is_shown() -> None:
    argued = (connector("round"), seen("one", place=DOOR, job="j"), seen("two", "round", place=DOOR, job="k"))
    assert [adapter.id for adapter in found(*argued, lead()).adapters] == ["lead"]


def test_half_a_pair_another_plug_or_another_sort_does_not() -> None:
    with_ground = lead("with-ground", "left front +", "left front -", "ground")
    assert found(seen("one", place=DOOR), with_ground).adapters == (with_ground,)
    stopped = lead("stopped", "left front +", ways={"left front -": "not there"})
    assert found(seen("one", place=DOOR), stopped).adapters == ()
    half = lead("half", "left front +")
    other = lead("other", ends={"a": {"connector": "round", "side": "unit side"}})
    wrong_half = lead("wrong-half", ends={"a": {"connector": "square", "side": "vehicle side"}})
    assert found(seen("one", place=DOOR), half, other, wrong_half, lead("sort", adapter_kind="T")).adapters == ()


def test_what_is_not_known_of_plug_and_polarity_is_said() -> None:
    assert found().unknown == (Missing("which plug the speaker has", "look with the lining off, 2 min", "the lead"),)
    bare = lead("bare", ends=ENDS | {"b": {"ends_in": "blades"}})
    assert found(seen("one", place=DOOR), bare).unknown == (
        Missing(
            "which cavity is plus",
            "compare with the new speaker by a phase check, 3 min; no battery on a tweeter or behind an amplifier",
            "whether the bass is thin",
        ),
        Missing("which lead of the The bare is plus", "meter on the bench, 1 min", "the polarity"),
    )
    told = found(metered("one", (1, "left front +"), place=DOOR, sure="told"))
    assert "which cavity is plus" in [one.what for one in told.unknown]

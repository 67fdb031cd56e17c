from bezelbook.reasoning.circuits.proven import NEVER, PLAYED, Used, proven
from bezelbook.reasoning.circuits.wiring import SPEAKERS
from tests.reasoning.circuits.a_car import after, car, module, plug_in, tried

KEY = ("adapter", "plug-in")


def used(*records: object) -> Used:
    return proven(car(plug_in(), *records)).get(KEY, NEVER)  # type: ignore[arg-type]


def test_a_piece_that_a_fitted_job_names_is_proven_as_sure_as_that() -> None:
    assert used(tried("one", adapters=["the plug-in"])) == Used("fitted", ("one",), (), (), PLAYED)
    assert used(tried("one", adapters=["plug-in"], sure="dry-fitted")).sure == "dry-fitted"
    assert used(after("one", adapters=["plug-in"])).sure == "fitted"
    assert ("module", "box") in proven(car(module(), after("one", adapters=["box", "no such thing"])))


def test_hearsay_another_build_and_a_comeback_prove_nothing() -> None:
    assert used(tried("one", adapters=["plug-in"], sure="told")) == NEVER
    assert used(tried("one", adapters=["plug-in"], splits={"build": "early"})) == NEVER
    assert used(after("one", adapters=["plug-in"], comeback="No sound.")) == NEVER


def test_a_car_that_may_have_been_another_build_is_named_and_proves_nothing() -> None:
    assert used(tried("one", adapters=["plug-in"], splits={"build": "late"})) == Used(None, (), (), ("one",))
    outside = tried("one", adapters=["plug-in"], splits={"build": "late"}, verdict="does not", reason="depth")
    assert used(outside) == NEVER


def test_a_radio_that_did_not_go_in_proves_no_wiring() -> None:
    assert used(tried("one", adapters=["plug-in"], verdict="does not", reason="depth")) == Used(None, (), (), ())
    assert used(tried("one", adapters=["plug-in"], verdict="not tried", reason="circuit")).sure is None
    failed = tried("one", adapters=["plug-in"], verdict="does not", reason="circuit")
    assert used(failed) == Used(None, (), ("one",), ())


def test_what_a_job_tried_shows_what_the_leads_carry() -> None:
    assert used(after("one", adapters=["plug-in"], kept=["fader", "reverse camera"])).heard == PLAYED | {
        *SPEAKERS,
        "camera",
        "camera supply",
    }
    assert "left rear +" not in used(after("one", adapters=["plug-in"], kept=["chimes"])).heard
    maybe = after("one", adapters=["plug-in"], splits={"build": "late"}, kept=["fader"])
    assert used(maybe).heard == frozenset()

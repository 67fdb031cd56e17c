"""A speaker's lead and an aerial's lead as answers to a question about wiring."""

from bezelbook.kinds.adapter.record import Adapter
from bezelbook.reasoning.circuits.aerial import AerialLead, aerial_leads
from bezelbook.reasoning.circuits.cars import Car
from bezelbook.reasoning.circuits.chain import Verdict
from bezelbook.reasoning.circuits.in_words import VERDICTS
from bezelbook.reasoning.circuits.plugs import Plugs
from bezelbook.reasoning.circuits.speaker_leads import speaker_lead
from bezelbook.reasoning.circuits.suits import adapter_suits
from bezelbook.reasoning.unknowns import Missing
from bezelbook.reasoning.wiring_asked.parts import missing_of, nothing_of, piece_of, plugs_of
from bezelbook.reasoning.wiring_asked.plain import PlainBuild, PlainPiece
from bezelbook.values.listed import listed

NO_AERIAL = Missing(
    "which plug the aerial has", "look behind the radio, 2 min with it out", "which lead, and whether it wants feeding"
)


def speaker_answer(car: Car) -> PlainBuild:
    """The lead for a speaker's place."""
    found = speaker_lead(car)
    verdict = _verdict(found.plugs, found.adapters, found.unknown)
    return nothing_of(car, "speaker lead", verdict, _speaker_words(verdict, found.adapters)) | {
        "plugs": plugs_of(car),
        "pieces": [_piece(car, one) for one in found.adapters],
        "unknown": missing_of(found.unknown),
    }


def _speaker_words(verdict: Verdict, adapters: tuple[Adapter, ...]) -> str:
    if verdict == "plug not looked":
        return VERDICTS[verdict]
    if not adapters:
        return "no speaker lead in the book fits it"
    either = listed([one.name for one in adapters], "or")
    return f"{either}, {'and its plus is known' if verdict == 'complete' else 'once the looks below are made'}"


def aerial_answer(car: Car) -> PlainBuild:
    """The lead for every aerial that somebody saw."""
    leads = aerial_leads(car)
    if not leads:
        empty = nothing_of(car, "aerial", "plug not looked", "nobody has looked which plug the aerial has")
        return empty | {"unknown": missing_of([NO_AERIAL])}
    verdicts = [_aerial_verdict(lead) for lead in leads]
    worst = next(one for one in ("nothing mates", "complete if", "complete") if one in verdicts)
    return nothing_of(car, "aerial", worst, "; ".join(_aerial_words(lead) for lead in leads)) | {
        "pieces": [_piece(car, one) for lead in leads for one in lead.adapters],
        "unknown": missing_of(one for lead in leads for one in lead.unknown),
    }


def _verdict(plugs: Plugs, adapters: tuple[Adapter, ...], unknown: tuple[Missing, ...]) -> Verdict:
    if not plugs.connectors:
        return "plug not looked"
    if not adapters:
        return "nothing mates"
    return "complete if" if unknown else "complete"


def _aerial_verdict(lead: AerialLead) -> Verdict:
    if not lead.adapters and not lead.straight:
        return "nothing mates"
    return "complete if" if lead.unknown else "complete"


def _aerial_words(lead: AerialLead) -> str:
    plug = lead.aerial.words or "an aerial plug that nobody looked at"
    feed = ", with an amplifier that wants feeding" if lead.aerial.amplified == "there" else ""
    names = [one.name for one in lead.adapters]
    without = "it goes into a radio as it is" if lead.straight else "no lead in the book fits it"
    return f"{plug}{feed}: {listed(names) if names else without}"


def _piece(car: Car, adapter: Adapter) -> PlainPiece:
    return piece_of(car.book, adapter, adapter_suits(car, adapter).why)

"""What happens with an event: an open question is asked first, then sets, then intents, then notes."""

from __future__ import annotations

from typing import assert_never

from bot import asking, corrections, documents, edits, planning, recording, talk, taps, welcome
from bot.context import context_of
from bot.intents.registry import act_on
from bot.messages import InboundKind
from bot.turn import Turn
from engine.reading import read
from engine.reading.values import Act, Asked, Correction, Logged, NoSets, Outcome


def respond(turn: Turn) -> None:
    """Nothing; whatever the event asks for is done and answered within the turn."""
    match turn.inbound.kind:
        case InboundKind.MESSAGE:
            message(turn)
        case InboundKind.EDIT:
            edits.edited(turn)
        case InboundKind.TAP:
            taps.tapped(turn)
        case InboundKind.DOCUMENT:
            documents.received(turn)
        case InboundKind.GONE:
            turn.store.people.gone(turn.athlete)
        case InboundKind.BACK:
            turn.store.people.back(turn.athlete)
        case _:
            assert_never(turn.inbound.kind)


def message(turn: Turn) -> None:
    """Nothing; her words are answered."""
    if asking.answered(turn, turn.inbound.text):
        return
    if planning.looks_like_plan(turn.inbound.text):
        planning.receive_plan(turn, turn.inbound.text)
        return
    outcome = read(turn.inbound.text, context_of(turn), turn.catalogue)
    dispatch(turn, outcome)
    welcome.first_contact(turn, outcome)


def dispatch(turn: Turn, outcome: Outcome) -> None:
    """Nothing; the outcome of reading is acted on."""
    match outcome:
        case Logged():
            recording.log(turn, outcome)
        case Asked():
            asking.ask(turn, outcome)
        case NoSets():
            talk.no_sets(turn, outcome)
        case Act():
            act_on(turn, outcome)
        case Correction():
            corrections.correct(turn, outcome)
        case _:
            assert_never(outcome)

"""What happens with an event: an open question is asked first, then sets, then intents, then notes."""

from __future__ import annotations

from typing import assert_never

from bot import answers, asking, documents, edits, mending, planning, taps, welcome
from bot.about_clients import about_client, told_by_name
from bot.dispatch import dispatch
from bot.intents import plan_for
from bot.looking_back import read_said
from bot.messages import InboundKind
from bot.open_question import waiting
from bot.schedule import replan
from bot.turn import Turn


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
            replan(turn)
        case _:
            assert_never(turn.inbound.kind)


def message(turn: Turn) -> None:
    """Nothing; her words are answered."""
    asked_before = waiting(turn)
    if answers.answered(turn, turn.inbound.text):
        return
    if planning.looks_like_plan(turn.inbound.text):
        if not plan_for.told_whole(turn, turn.inbound.text):
            planning.receive_plan(turn, turn.inbound.text)
        welcome.first_contact(turn)
        return
    outcome = told_by_name(turn) or about_client(turn, read_said(turn))
    if outcome is not None and not mending.mended(turn, outcome):
        dispatch(turn, outcome)
        welcome.first_contact(turn, outcome)
        asking.tell_lapsed(turn, asked_before)
        mending.remind(turn)

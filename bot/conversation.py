"""What happens with an event: an open question is asked first, then sets, then intents, then notes."""

from __future__ import annotations

from typing import assert_never

from bot import answers, asking, documents, edits, mending, planning, taps, welcome
from bot.about_clients import about_client, told_by_name
from bot.context import context_of
from bot.dispatch import dispatch
from bot.intents import plan_for
from bot.looking_back import read_said
from bot.messages import InboundKind
from bot.open_question import waiting
from bot.recording import PLAIN_SETS
from bot.schedule import replan
from bot.turn import Turn
from engine.reading.said_apart import said_apart
from engine.reading.values import Outcome


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
        _each(turn, outcome)
        welcome.first_contact(turn, outcome)
        asking.tell_lapsed(turn, asked_before)
        mending.remind(turn)


def _each(turn: Turn, outcome: Outcome) -> None:
    """Nothing; what the message means is done, and where it tells sets and asks for something, one after the other."""
    parts = said_apart(turn.inbound.text, outcome, context_of(turn), turn.catalogue)
    for part in parts:
        dispatch(turn, part)
    if len(parts) > 1:
        turn.kept[PLAIN_SETS] = False

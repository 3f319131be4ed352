"""plan for ann: a coach hands a plan to a client, in the same message or the next."""

from __future__ import annotations

from datetime import timedelta

from bot.coachs_clients import client_named, clients_of
from bot.planning import receive_plan
from bot.replies.coaching import send_plan_for, which_client
from bot.turn import Turn
from engine.reading.values import Act

HEAD = "plan for "
OPEN_FOR = timedelta(hours=2)
PLAN_FOR = "plan for"


def told_whole(turn: Turn, text: str) -> bool:
    """Whether a coach's message was a client's name with her whole plan below it."""
    if not text.casefold().startswith(HEAD) or not clients_of(turn):
        return False
    plan_for(turn, Act("plan_for", text=text[len(HEAD) :]))
    return True


def plan_for(turn: Turn, act: Act) -> None:
    """Nothing; the plan is the client's, or is asked for."""
    head, _, body = act.text.partition("\n")
    client, rest = client_named(turn, head)
    if client is None:
        turn.say(which_client("plan for {}", [one.name for one in clients_of(turn)], head))
        return
    text = "\n".join(part for part in (rest, body) if part.strip())
    if text.strip():
        receive_plan(turn, text, client)
        return
    payload = {"kind": PLAN_FOR, "client": client.id}
    turn.store.questions.ask(turn.athlete, payload, at=turn.at, expires_at=turn.at + OPEN_FOR)
    turn.say(send_plan_for(client.name))

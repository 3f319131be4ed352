"""ann: +2 sets side delts, ann: swap squat for leg press, ann: week: what a coach asks of one client.

A change of the plan is proposed; a question about the log is answered. Sets are only recorded from the one who lifted
them, and words go to a client only where the coach says so: anything else says what a coach can send.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace

from bot.coachs_clients import client_named, clients_of
from bot.context import context_of
from bot.intents import best, history, note_to, volume, week, why
from bot.intents.more import propose_to
from bot.muscle_words import asked
from bot.plans_in_force import PlanInForce, plan_in_force
from bot.proposals import BEGINS_A_CHANGE, propose_change
from bot.replies.coaching import deload_of, no_plan_of, no_request_of, not_yours, which_client
from bot.replies.plans import overview
from bot.replies.reply import Reply
from bot.turn import Turn
from engine.reading import read
from engine.reading.prepare import prepare
from engine.reading.values import Act, Asked, Correction, Logged
from engine.reading.words.kinds import K
from engine.values.plan import Plan
from storage.records import Person

OF_A_CLIENT: Mapping[str, Callable[[Turn, Act], None]] = {
    "week": week.week,
    "volume": volume.volume,
    "history": history.history,
    "best": best.best,
    "why": why.why,
}
"""Questions that a coach may ask of a client."""
MORE = re.compile(r"\b(?:more|extra|bigger|focus|add)\b|\+", re.IGNORECASE)
NOTE = "note:"
OF_A_MUSCLE = frozenset(("more", "adjust"))


def adjust(turn: Turn, act: Act) -> None:
    """Nothing; the change to the client's plan is proposed to the coach, or her question answered."""
    client, words = client_named(turn, act.text)
    if client is None:
        turn.say(which_client("{}: +2 sets side delts", [one.name for one in clients_of(turn)], act.text))
    else:
        ask_of(turn, client, words)


def ask_of(turn: Turn, client: Person, words: str) -> None:
    """Nothing; what the coach's words ask of the client is proposed or answered, or what she can send is said."""
    if words.casefold().startswith(NOTE):
        note_to.note_to(turn, Act("note_to", text=f"{client.name}: {words[len(NOTE) :].strip()}"))
        return
    told = prepare(words, context_of(turn), turn.catalogue).told
    wanted = asked(words)
    counted = wanted.sets is not None or wanted.fewer or MORE.search(words) is not None
    if wanted.muscles and counted and (K.NAME not in told or _is_of_a_muscle(turn, words)):
        propose_to(turn, client, wanted)
        return
    if not propose_change(turn, client, words):
        _answer(turn, client, words)


def _answer(turn: Turn, client: Person, words: str) -> None:
    """Nothing; what the words ask, or that they ask for nothing a coach can have done."""
    meant = read(words, context_of(turn), turn.catalogue)
    match meant:
        case Act(name=name) if name in OF_A_CLIENT:
            OF_A_CLIENT[name](turn, replace(meant, text=f"{meant.text} {client.name}".strip()))
        case Act(name="lighten"):
            _say_of_plan(turn, client, lambda one: deload_of(client.name, _deloads(one.plan)))
        case Act(name="plan", text=""):
            _say_of_plan(turn, client, lambda one: overview(one.plan, one.week(turn.today), client.name))
        case _ if BEGINS_A_CHANGE.match(words):
            turn.say(no_request_of(client.name, words))
        case Logged() | Asked() | Correction():
            turn.say(not_yours(client.name))
        case _:
            turn.say(no_request_of(client.name, words))


def _is_of_a_muscle(turn: Turn, words: str) -> bool:
    """Whether the muscle is no part of a lift's name: "more calves", and not "+2 sets leg press"."""
    meant = read(words, context_of(turn), turn.catalogue)
    return isinstance(meant, Act) and meant.name in OF_A_MUSCLE and asked(words).rest == ""


def _say_of_plan(turn: Turn, client: Person, reply: Callable[[PlanInForce], Reply]) -> None:
    in_force = plan_in_force(turn.store, turn.memory, client.id, turn.today)
    turn.say(reply(in_force) if in_force is not None else no_plan_of(client.name))


def _deloads(plan: Plan) -> Sequence[int]:
    return [week for block in plan.blocks for week in block.deload_weeks]

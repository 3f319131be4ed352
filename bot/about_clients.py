"""A coach's words about a client: a question with her name behind it, and lines that are hers and not his own.

A coach never records sets for a client: what stands in a log was told by the one who lifted it.
"""

from __future__ import annotations

import re
from dataclasses import replace

from bot.coachs_clients import client_named, clients_of
from bot.context import context_of
from bot.replies.coaching import not_yours
from bot.turn import Turn
from engine.reading import read
from engine.reading.values import Act, Asked, Correction, Logged, NoSets, Outcome
from storage.records import Role

HEADS = {"digest ": "digest", "digest for ": "digest", "plan for ": "plan_for", "note to ": "note_to"}
CHANGE = re.compile(r"\s*[+-]\s*\d{1,2}\s*sets?\b", re.IGNORECASE)
QUESTIONS = ("week", "volume", "history", "best", "why")


def told_by_name(turn: Turn) -> Act | None:
    """What a coach asks of a client of hers, whatever else the name means: "digest max", "may: +2 sets side delts"."""
    text = turn.inbound.text.strip().removeprefix("/")
    said = text.casefold()
    for head in (head for head in HEADS if said.startswith(head)):
        if client_named(turn, text[len(head) :])[0] is not None:
            return Act(HEADS[head], text=text[len(head) :])
    who, colon, change = text.partition(":")
    if colon and CHANGE.match(change) and client_named(turn, who)[0] is not None:
        return Act("adjust", text=text)
    return None


def about_client(turn: Turn, outcome: Outcome) -> Outcome | None:
    """The outcome where a coach spoke of a client; None where that was answered already."""
    if Role.COACH not in turn.me.roles:
        return outcome
    text = turn.inbound.text
    people = clients_of(turn)
    client, _ = client_named(turn, text)
    if client is not None and text.split(None, 1)[0].endswith(":") and isinstance(outcome, Logged | Asked | Correction):
        turn.say(not_yours(client.name))
        return None
    head, _, last = text.strip().rpartition(" ")
    if isinstance(outcome, NoSets) and head and last.casefold() in {person.name.casefold() for person in people}:
        asked = read(head, context_of(turn), turn.catalogue)
        if isinstance(asked, Act) and asked.name in QUESTIONS:
            return replace(asked, text=f"{asked.text} {last}".strip())
    return outcome

"""note to ann: words from a coach to a client."""

from __future__ import annotations

import re

from bot import pain
from bot.coachs_clients import client_named, clients_of
from bot.context import context_of
from bot.intents import share
from bot.replies.coaching import no_words, note_from, note_sent, which_client
from bot.sessions import forget_plan
from bot.turn import Turn
from bot.words import behind_name
from engine.reading.pain_told import pain_is_told
from engine.reading.values import Act
from storage.records import ChangeKind

LONGEST = 1_000
TO_COACH = re.compile(r"\s*(?:my )?coach\b\s*:?\s*", re.IGNORECASE)


def to_coach(turn: Turn, words: str) -> None:
    """Nothing; an athlete's note is kept and shared with her coach: this one, and none that she kept to herself."""
    if not words.strip():
        share.share(turn, Act("share"))
        return
    hurts = pain_is_told(words, context_of(turn), turn.catalogue)
    exercise = pain.lift_of(turn) if hurts else None
    change = turn.begin(ChangeKind.NOTE, "the note")
    text, message = words.strip()[:LONGEST], turn.inbound.message
    note = turn.store.notes.add(change, text, on=turn.today, at=turn.at, exercise=exercise, pain=hurts, message=message)
    if hurts:
        forget_plan(turn)
        pain.respond(turn, exercise, shared=bool(coaches_of(turn)))
    share.share_note(turn, note)


def coaches_of(turn: Turn) -> list[str]:
    """The names of her coaches."""
    return [turn.store.people.get(link.coach).name for link in turn.store.coaching.coaches(turn.athlete)]


def _for_her_coach(turn: Turn, text: str) -> str | None:
    """The words to a coach, who is called so or by name; None where they are to nobody of hers."""
    if TO_COACH.match(text):
        return TO_COACH.sub("", text, count=1)
    for name in coaches_of(turn):
        if (words := behind_name(text, name)) is not None:
            return words
    return None


def note_to(turn: Turn, act: Act) -> None:
    """Nothing; the note is on its way."""
    client, words = client_named(turn, act.text)
    if client is None and (told := _for_her_coach(turn, act.text)) is not None:
        to_coach(turn, told)
    elif client is None:
        turn.say(which_client("note to {}: keep the row at 55", [one.name for one in clients_of(turn)], act.text))
    elif not words.strip():
        turn.say(no_words(client.name))
    else:
        turn.tell(client.id, note_from(turn.me.name, words.strip()[:LONGEST]))
        turn.say(note_sent(client.name))

"""note to ann: words from a coach to a client."""

from __future__ import annotations

from bot.coachs_clients import client_named, clients_of
from bot.replies.coaching import no_words, note_from, note_sent, which_client
from bot.turn import Turn
from engine.reading.values import Act

LONGEST = 1_000


def note_to(turn: Turn, act: Act) -> None:
    """Nothing; the note is on its way."""
    client, words = client_named(turn, act.text)
    if client is None:
        turn.say(which_client("note to {}: keep the row at 55", [one.name for one in clients_of(turn)], act.text))
    elif not words.strip():
        turn.say(no_words(client.name))
    else:
        turn.tell(client.id, note_from(turn.me.name, words.strip()[:LONGEST]))
        turn.say(note_sent(client.name))

"""ann: +2 sets side delts, ann: more chest: a coach asks for more, or fewer, weekly sets of a muscle for a client."""

from __future__ import annotations

from bot.coachs_clients import client_named, clients_of
from bot.intents.more import propose_to
from bot.muscle_words import asked
from bot.replies.coaching import which_client
from bot.turn import Turn
from engine.reading.values import Act


def adjust(turn: Turn, act: Act) -> None:
    """Nothing; the change to the client's plan is proposed to the coach."""
    client, words = client_named(turn, act.text)
    if client is None:
        turn.say(which_client("{}: +2 sets side delts", [one.name for one in clients_of(turn)], act.text))
    else:
        propose_to(turn, client, asked(words))

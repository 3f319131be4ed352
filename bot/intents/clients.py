"""clients: everyone a coach looks after."""

from __future__ import annotations

from bot.coachs_clients import clients_of
from bot.replies.coaching import client_list
from bot.turn import Turn
from engine.reading.values import Act


def clients(turn: Turn, act: Act) -> None:
    """Nothing; the clients are listed."""
    people = clients_of(turn)
    turn.beside = [person.id for person in people]
    turn.say(client_list([person.name for person in people]))

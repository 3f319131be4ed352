"""digest: a coach's clients this week, those who need a look first; digest ann: one of them."""

from __future__ import annotations

from bot.coachs_clients import client_named, client_within, clients_of
from bot.replies.coaching import which_client
from bot.replies.digest import client_card, digest_card
from bot.turn import Turn
from bot.weeks import coach_week, week_of_person
from engine.reading.values import Act


def digest(turn: Turn, act: Act) -> None:
    """Nothing; the digest is said."""
    people = clients_of(turn)
    if not act.text.strip():
        turn.beside = [person.id for person in people]
        turn.say(digest_card(coach_week(turn.store, turn.memory, people, turn.today)))
        return
    client = client_named(turn, act.text)[0] or client_within(turn, act.text)[0]  # "digest ann's week"
    if client is None:
        turn.say(which_client("digest {}", [person.name for person in people], act.text))
        return
    turn.say(client_card(client.name, week_of_person(turn.store, turn.memory, client, turn.today)))

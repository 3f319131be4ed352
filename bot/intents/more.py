"""more side delts, less chest, +3 sets side delts: where weekly sets fit best, proposed and taken over when accepted.

A coach says for whom: more chest for ann. Without a number of sets, as many as the target lacks.
"""

from __future__ import annotations

import re

from bot.coachs_clients import client_named, clients_of
from bot.muscle_words import Asked, asked
from bot.proposals import propose
from bot.replies.coaching import which_client
from bot.replies.preview import which_muscle
from bot.replies.trouble import needs
from bot.sessions import session_of
from bot.turn import Turn
from engine.reading.values import Act
from engine.values.muscles import Muscle
from storage.records import Person

FOR = re.compile(r"\b(?:for|to|of)\s+(\S.*)$", re.IGNORECASE)


def more(turn: Turn, act: Act) -> None:
    """Nothing; the change is proposed."""
    # The intent's own word may say which way: "less chest".
    said = asked(act.text)
    if not said.fewer and asked(turn.inbound.text).fewer:
        said = asked(turn.inbound.text)
    person = _client_behind(turn, said.rest)
    if person is None and _is_only_a_coach(turn):
        names = [one.name for one in clients_of(turn)]
        turn.say(which_client(f"{{}}: {act.text or turn.inbound.text.strip()}", names, ""))
        return
    propose_to(turn, person or turn.me, said)


def _is_only_a_coach(turn: Turn) -> bool:
    """Whether she has clients and no plan of her own, so that it must be somebody else's sets."""
    return bool(clients_of(turn)) and session_of(turn).in_force is None


def propose_to(turn: Turn, person: Person, said: Asked) -> None:
    """Nothing; the change is proposed, or what it lacks is asked for."""
    mine = person.id == turn.athlete
    head = "" if mine else f"{person.name}: "
    if not said.muscles:
        turn.say(needs("a muscle", f"{head}more side delts"))
    elif len(said.muscles) > 1:
        turn.say(which_muscle(said.muscles, said.sets, "" if mine else person.name, fewer=said.fewer))
    else:
        propose(turn, person, said.muscles[0], said.change, fewer=said.fewer)


def tapped(turn: Turn, arguments: list[str]) -> None:
    """Nothing; the muscle of a group was chosen by its button: sets, muscle, and for a coach the client's id."""
    sets, name, whose = [*arguments, "", "", ""][:3]
    muscle = next((one for one in Muscle if one.value.replace(" ", "-") == name), None)
    client = next((one for one in clients_of(turn) if str(one.id) == whose), None)
    if muscle is None or (whose and client is None):
        turn.say(needs("a muscle", "more side delts"))
        return
    count = sets.strip("+-")
    said = Asked((muscle,), int(count) if count.isdecimal() else None, sets.startswith("-"))
    propose_to(turn, client or turn.me, said)


def _client_behind(turn: Turn, rest: str) -> Person | None:
    """The client named behind the muscle: "chest for ann"."""
    found = FOR.search(rest)
    return client_named(turn, found[1])[0] if found else None

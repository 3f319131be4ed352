"""ann: +2 sets side delts: a coach asks for more, or fewer, weekly sets of a muscle for a client."""

from __future__ import annotations

import re

from bot.coachs_clients import client_named, clients_of
from bot.intents.volume import muscle_named
from bot.proposals import propose
from bot.replies.coaching import which_client
from bot.replies.trouble import needs
from bot.turn import Turn
from engine.reading.values import Act

COUNT = re.compile(r"([+-]?)\s*(\d{1,2})\s*sets?", re.IGNORECASE)


def adjust(turn: Turn, act: Act) -> None:
    """Nothing; the change to the client's plan is proposed to the coach."""
    client, words = client_named(turn, act.text)
    muscle, found = muscle_named(words), COUNT.search(words)
    if client is None:
        turn.say(which_client("{}: +2 sets side delts", [one.name for one in clients_of(turn)], act.text))
    elif muscle is None or found is None:
        turn.say(needs("a number of sets and a muscle", f"{client.name}: +2 sets side delts"))
    else:
        propose(turn, client, muscle, -int(found[2]) if found[1] == "-" else int(found[2]))

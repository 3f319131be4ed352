"""more side delts: where extra weekly sets for a muscle fit best, proposed and only taken over when accepted."""

from __future__ import annotations

import re

from bot.intents.volume import muscle_named
from bot.proposals import propose
from bot.replies.trouble import needs
from bot.turn import Turn
from engine.reading.values import Act

COUNT = re.compile(r"[+-]?\d{1,2}")
DEFAULT = 2


def more(turn: Turn, act: Act) -> None:
    """Nothing; the change is proposed."""
    muscle = muscle_named(act.text)
    if muscle is None:
        turn.say(needs("a muscle", "more side delts"))
        return
    found = COUNT.search(act.text)
    propose(turn, turn.me, muscle, int(found.group()) if found else DEFAULT)

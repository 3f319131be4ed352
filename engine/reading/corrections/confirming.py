"""Messages that tell no more than what stands already, so that nothing is changed by them and nothing added."""

from __future__ import annotations

from engine.reading.corrections.confirmed import confirms
from engine.reading.corrections.correcting import Told
from engine.reading.corrections.counts import counts_what_stands
from engine.reading.corrections.done_so_often import says_as_many
from engine.reading.corrections.each_hand import tells_what_each_held
from engine.reading.corrections.values import tells_how_some_were

WAYS = (confirms, counts_what_stands, says_as_many, tells_how_some_were, tells_what_each_held)


def tells_what_stands_already(told: Told) -> bool:
    """Whether the message says in one way or another only what is standing."""
    return any(says(told) for says in WAYS)

"""Her words read, and once more with earlier sets in view where they correct a day that lies further back."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

from bot.context import context_of
from bot.turn import Turn
from engine.reading import read
from engine.reading.corrections.nothing_changed import NONE_THAT_DAY
from engine.reading.values import Correction, NoSets, Outcome

FURTHER_BACK = timedelta(days=14)
"""How far back a day named in a correction may lie. Common practice, no source."""


def read_said(turn: Turn) -> Outcome:
    """What her message means now; the sets of two weeks are looked up only where a correction found none."""
    context = context_of(turn)
    outcome = read(turn.inbound.text, context, turn.catalogue)
    if not (isinstance(outcome, NoSets) and outcome.why == NONE_THAT_DAY):
        return outcome
    earlier = turn.store.sets.recent(turn.athlete, turn.today - FURTHER_BACK)
    again = read(turn.inbound.text, replace(context, recent=earlier), turn.catalogue)
    return again if isinstance(again, Correction) else outcome

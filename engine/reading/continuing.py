"""Sets that go on from the ones that stand: "another 5", "+10 for 3", "bench again, 7", "same weight, 10 10".

The grammar of sets reads most of it, since reps alone are done at the latest load of the exercise in hand. What it
needs
from here is the exercise in hand itself: the one of the latest set of the day, where the context names none.
"""

from __future__ import annotations

from dataclasses import replace

from engine.reading.values import Context


def in_hand(context: Context) -> Context:
    """The context with the exercise in hand filled in from today's latest set."""
    if context.doing is not None or not context.recent:
        return context
    last = context.recent[-1]
    if context.now is not None and last.on != context.now.date():
        return context
    return replace(context, doing=last.done.exercise)

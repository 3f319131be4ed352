"""Stall and reset: what running misses do to a load.

Decided: misses count only while they run; a session with all its reps made, or cut short with every set good, ends the
run. After so many in a row the load comes down by a share of the heaviest of them, rounded down to what can be
loaded, and the climb starts again from there. What is missed after a reset counts on, so that misses at the lower load
bring it down again in their turn.

Down 10 % after three running misses, rounded down: common practice, no source.
"""

from __future__ import annotations

from decimal import Decimal

from engine.progression.terms import Terms
from engine.values.load import Load

STALL = 3
"""Sessions in a row without any step after which a rule that never resets says so. Common practice, no source."""


def lowered(load: Load, share: Decimal, terms: Terms) -> Load:
    """A load less a share of it, rounded down to what can be loaded, never under the least that can.

    Help with body weight grows by the share instead: less of the body is lifted.
    """
    return terms.down(terms.load(load.amount - abs(load.amount) * share))


def eased(load: Load, share: Decimal, terms: Terms) -> Load:
    """A load less a share of it, the nearest that can be loaded; help with body weight grows by the share."""
    return terms.nearest(terms.load(load.amount - abs(load.amount) * share))


def after_miss(missed: tuple[Load, ...], load: Load, running: int) -> tuple[Load, ...]:
    """The loads of the running misses with one more, as many as can bring a reset about."""
    return (*missed, load)[-running:]


def reset(load: Load, missed: tuple[Load, ...], running: int, share: Decimal, terms: Terms) -> Load:
    """The load after a miss: lower once so many ran, else as it was."""
    if len(missed) < running:
        return load
    return min(load, lowered(max(missed), share, terms))

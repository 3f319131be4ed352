"""Rounding told where it counts: a number that moved by more than half the smallest step names what it was."""

from __future__ import annotations

from decimal import Decimal

from engine.progression.terms import Terms
from engine.values.load import Load


def rounded(exact: Decimal, load: Load, terms: Terms) -> str:
    """`` (74.25 kg, rounded down)``; empty where rounding moved it by half the smallest step there or less."""
    wanted = terms.load(exact)
    below, above = terms.loadable.at_most(wanted), terms.loadable.at_least(wanted)
    if below is None or above is None or 2 * abs(load.amount - exact) <= above.amount - below.amount:
        return ""
    return f" ({wanted}, rounded {'down' if load < wanted else 'up'})"

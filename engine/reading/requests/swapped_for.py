"""A swap for a name that several lifts go by: "swap ohp for db press".

It is the only one of them that works much the same as the lift to leave, or on today's plan; else all of them are named
in the request, and it is asked which.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from engine.catalogue.catalogue import Catalogue
from engine.reading.entries.names import narrowed
from engine.reading.values import Act, Context
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece


def settled_swap(found: Act, pieces: Sequence[Piece], context: Context, catalogue: Catalogue) -> Act:
    """The swap with the one lift that its open name means; with no `to`, and all of them in `also`, if it is open."""
    if found.name != "swap" or found.to is None or found.exercise is None:
        return found
    named = [narrowed(piece.names, context) for piece in pieces if piece.kind is K.NAME]
    owners = next((names for names in named if len(names) > 1 and names[0] == found.to), ())
    leaving = catalogue.get(found.exercise)
    others = tuple(name for name in owners if name != found.exercise)
    if len(others) < 2 or leaving is None:
        return replace(found, to=others[0]) if len(others) == 1 else found
    alike = [name for name in others if name in leaving.swaps]
    return replace(found, to=alike[0]) if len(alike) == 1 else replace(found, to=None, also=tuple(alike) or others)

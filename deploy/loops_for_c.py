"""Functions of the reader as compiled code wants them; `compile.py` puts them in the place of those of the same name.

In plain Python a call that walks a whole list in C (`map`, `compress`) beats a loop; compiled, the loop is C itself,
and the calls that it spares were a fifth of all time. `tests/deploy/test_loops_for_c.py` holds each to the function
whose place it takes. A field of a piece is asked for by its place, as in all that is compiled.
"""

from __future__ import annotations

from collections.abc import Container, Iterable, Sequence
from typing import TypeVar

from engine.reading.words.cues import CUES_OF, NO_CUES
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece

T = TypeVar("T")


def kinds_of(pieces: Iterable[Piece]) -> set[K]:
    """The kinds that these pieces are of."""
    found: set[K] = set()
    if isinstance(pieces, list):
        listed: list[Piece] = pieces
        for piece in listed:
            found.add(piece[0])
    else:
        for piece in pieces:
            found.add(piece[0])
    return found


def kinds_in_order(pieces: Iterable[Piece]) -> list[K]:
    """The kind of each piece."""
    if isinstance(pieces, list):
        listed: list[Piece] = pieces
        return [piece[0] for piece in listed]
    return [piece[0] for piece in pieces]


def texts_in_order(pieces: Iterable[Piece]) -> list[str]:
    """The text of each piece."""
    if isinstance(pieces, list):
        listed: list[Piece] = pieces
        return [piece[4] for piece in listed]
    return [piece[4] for piece in pieces]


def places_in(wanted: Container[T], told: Sequence[T]) -> list[int]:
    """The places of some kinds, or some roles, among those of a message."""
    found: list[int] = []
    if isinstance(told, list) and isinstance(wanted, frozenset):
        kinds: frozenset[T] = wanted
        for at in range(len(told)):
            if told[at] in kinds:
                found.append(at)
    else:
        for at, one in enumerate(told):
            if one in wanted:
                found.append(at)
    return found


def places_of(one: T, told: Sequence[T]) -> list[int]:
    """The places of one kind, or one text, among those of a message. Kinds are singletons; texts are compared."""
    found: list[int] = []
    if isinstance(told, list) and not isinstance(one, str):
        for at in range(len(told)):
            if told[at] is one:
                found.append(at)
    else:
        for at, other in enumerate(told):
            if other == one:
                found.append(at)
    return found


def cues_told(words: Iterable[str]) -> frozenset[str]:
    """All the cues that one or another of the words is: a rule for a whole message asks first whether its own are."""
    told: set[str] = set()
    for word in set(words):
        if cued := CUES_OF[word]:
            told |= cued
    return frozenset(told) if told else NO_CUES


IN_PLACE_OF = {
    "words/pieces": ("kinds_of", "kinds_in_order", "texts_in_order", "places_in", "places_of"),
    "words/cues": ("cues_told",),
}
"""By the module, as `compile.py` names it."""

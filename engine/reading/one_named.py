"""One set told by the name of its reps and nothing more: "a triple", "triple rpe 8", "then an easy double".

It is a set where the lift in hand was done today, at the load of its latest set. "Triples" may be any
number of them, and "got a triple" may be what the last set came to: those are said to lack their numbers.
"""

from __future__ import annotations

from decimal import Decimal

from engine.reading.prepare import Prepared
from engine.reading.values import Context
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role

BESIDE = frozenset((K.COUNT, K.FILLER, K.THEN, K.AND, K.EFFORT, K.FAILURE, K.NOTE, K.COMMA, K.STOP))
ONE = frozenset(("onecount",))


def with_one_named(prepared: Prepared, context: Context) -> Prepared:
    """The message, with such a set told as "1x3"."""
    if K.COUNT not in prepared.told:
        return prepared
    pieces = prepared.pieces
    named = [at for at, piece in enumerate(pieces) if piece.kind is K.COUNT]
    if len(named) != 1 or any(piece.kind not in BESIDE for piece in pieces) or not _has_its_load(context):
        return prepared
    name = pieces[named[0]]
    if not is_cued(prepared.cleaned[name.start : name.end].split()[-1].casefold(), ONE):
        return prepared
    return prepared._replace(pieces=[*pieces[: named[0]], *_as_pair(name), *pieces[named[0] + 1 :]])


def _has_its_load(context: Context) -> bool:
    """Whether the lift in hand was done today, with a load: a plan's next lift may be told otherwise."""
    today = context.now.date() if context.now is not None else None
    done = [one.done for one in context.recent if one.on == today and one.done.exercise == context.doing]
    return bool(done) and done[-1].load is not None and done[-1].seconds is None and done[-1].metres is None


def _as_pair(name: Piece) -> list[Piece]:
    """ "triple" as 1x3."""
    one = name._replace(kind=K.NUMBER, value=Decimal(1), role=Role.BARE, told=0)
    times = name._replace(kind=K.TIMES, text="x", told=0)
    return [one, times, one._replace(value=Decimal(name.told))]

"""Sets by the plan, some of them told apart: "first two as planned, last one 7", "as planned at 62.5, rpe 8".

told = { place value | PLANNED | ( "at" load | effort ) }      place = "first [two]" | ORDINAL | "set" NUMBER | "last"

A value behind a place is of that set; a load behind "at", or an effort, without one is of all of them.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from decimal import Decimal

from engine.reading.kinds import K
from engine.reading.pieces import MOST_LOADED_REPS, Piece, Role
from engine.values.effort import TOP_OF_SCALE, Effort
from engine.values.load import HEAVIEST
from engine.values.sets import SetDone

BESIDE = frozenset(
    (K.FILLER, K.COMMA, K.STOP, K.AND, K.EXCEPT, K.ONLY, K.GOT, K.REPS, K.NAME, K.AT, K.WITH, K.KG, K.LB, K.DASH,
     K.COLON, K.OPEN, K.CLOSE, K.SETS, K.NOTE)
)  # fmt: skip
MOST_REPS = 100


@dataclass(slots=True)
class _Walk:
    """`places`: of which sets the next value is; none where it is of all. `told`: how many values were."""

    sets: list[SetDone]
    places: Sequence[int] = ()
    told: int = 0
    used: set[int] = field(default_factory=set)


def told_by_places(sets: Sequence[SetDone], pieces: Sequence[Piece]) -> tuple[SetDone, ...] | None:
    """The planned sets with what is told of each; None where anything of it is not clear."""
    walk, pieces = _Walk(list(sets)), [_as_a_place(pieces, at) for at in range(len(pieces))]
    for at, piece in enumerate(pieces):
        if at in walk.used:
            continue
        if not (_points(walk, pieces, at) or _takes(walk, pieces, at) or piece.kind in BESIDE):
            return None
    return tuple(walk.sets) if walk.told else None


def _as_a_place(pieces: Sequence[Piece], at: int) -> Piece:
    """ "second 7": a place, where no number in front makes it one of time."""
    piece = pieces[at]
    counted = at > 0 and pieces[at - 1].kind is K.NUMBER
    second = piece.kind is K.SECONDS and piece.text == "second" and not counted
    return piece._replace(kind=K.ORDINAL, told=2) if second else piece


def _points(walk: _Walk, pieces: Sequence[Piece], at: int) -> bool:
    """Whether the piece says of which sets the next value is."""
    piece, count = pieces[at], len(walk.sets)
    after = pieces[at + 1] if at + 1 < len(pieces) else None
    number = int(after.value) if after is not None and after.kind is K.NUMBER and _is_whole(after) else 0
    if piece.kind is K.PLANNED or (piece.kind is K.REST and after is not None and after.kind is K.PLANNED):
        walk.places = ()
        return True
    if piece.kind in (K.FIRST, K.LAST):
        several = after is not None and (after.spelled or after.role is Role.SETS) and 1 < number <= count
        span = number if several else 1
        walk.used |= {at + 1} if several else set()
        walk.places = range(span) if piece.kind is K.FIRST else range(count - span, count)
        return True
    place = piece.told if piece.kind is K.ORDINAL else number if piece.kind is K.SETS else 0
    if not 1 <= place <= count:
        return False
    walk.used |= {at + 1} if piece.kind is K.SETS else set()
    walk.places = (place - 1,)
    return True


def _takes(walk: _Walk, pieces: Sequence[Piece], at: int) -> bool:
    """Whether the piece is a value, and the sets meant have it now."""
    piece, before = pieces[at], pieces[at - 1].kind if at else None
    if piece.kind is K.RPE:
        effort = pieces[at + 1] if at + 1 < len(pieces) else None
        if effort is None or effort.kind is not K.NUMBER or not 1 <= effort.value <= TOP_OF_SCALE:
            return False
        walk.used.add(at + 1)
        return _put(walk, effort=Effort.from_rpe(effort.value))
    if piece.kind is not K.NUMBER:
        return False
    tied = before in (K.AT, K.WITH)
    if piece.role is Role.LOAD or (piece.role is Role.BARE and (tied or walk.places) and _is_heavy(piece)):
        return (tied or bool(walk.places)) and _put(walk, load=piece)
    reps = piece.role in (Role.BARE, Role.REPS) and _is_whole(piece) and 0 < piece.value <= MOST_REPS
    return reps and not tied and bool(walk.places) and _put(walk, reps=int(piece.value))


def _put(walk: _Walk, *, effort: Effort | None = None, load: Piece | None = None, reps: int = 0) -> bool:
    for place in walk.places or range(len(walk.sets)):
        one = walk.sets[place]
        if load is not None and (one.load is None or not 0 < load.value < HEAVIEST):
            return False
        if load is not None and one.load is not None:
            one = replace(one, load=replace(one.load, amount=load.value, unit=load.unit or one.load.unit))
        walk.sets[place] = replace(one, effort=effort or one.effort, reps=reps or one.reps)
    walk.told += 1
    return True


def _is_whole(number: Piece) -> bool:
    return number.value == int(number.value)


def _is_heavy(number: Piece) -> bool:
    return number.value > MOST_LOADED_REPS or number.value % 1 != Decimal(0)

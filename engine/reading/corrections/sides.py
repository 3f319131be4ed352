"""The reps of each side, told of the set before: "that was 10 left 8 right", "left was 9".

sides = was SIDE NUMBER SIDE NUMBER | was NUMBER SIDE NUMBER SIDE      a set without a side becomes one of each
side  = SIDE was NUMBER | NUMBER "not" NUMBER SIDE                     of a set of that side; without one it is asked
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from engine.reading.corrections.nothing_changed import ONE_SIDE, nothing_changed, unclear
from engine.reading.corrections.said_to_be import in_full, is_be
from engine.reading.latest_sets import latest_of_it
from engine.reading.prepare import Prepared
from engine.reading.values import Context, Correction, NoSets
from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import any_cued
from engine.reading.words.kinds import DENYING, PLACING, K
from engine.reading.words.pieces import Piece, Role, kinds_in_order
from engine.values.sets import SetRecord, Side

SIDES = {K.LEFT: Side.LEFT, K.RIGHT: Side.RIGHT}
LITTLE = frozenset((K.FILLER, K.COMMA, K.AND, K.REPS, K.ONLY, K.STOP, K.GOT, K.SLASH))
LIMBS = frozenset(("limb", "barside"))
OF_ONE_SIDE = tuple([*pair] for side in SIDES for pair in ((K.NUMBER, side), (side, K.NUMBER)))
BOTH = len(SIDES)
MOST_RESERVED = 4
"""So many reps may be left in reserve: "that was 2 left". Common practice, no source."""


def sides_told(prepared: Prepared, context: Context) -> Correction | NoSets | None:
    """What the sides come to now, or that it is not clear; None where no side of the set before is told."""
    if not context.recent or SIDES.keys().isdisjoint(prepared.told) or K.NUMBER not in prepared.told:
        return None
    full = in_full(prepared)
    said = [piece for piece in full if not _is_little(piece)]
    pieces, old = _without_the_old(said)
    kinds = kinds_in_order(pieces)
    if not (old or any(map(is_be, full))) or any(not _is_of_a_side(piece) for piece in pieces):
        return _of_a_placed_side(said, prepared) if any(map(is_be, full)) else None
    if kinds == [K.LEFT, K.NUMBER] or kinds == [K.RIGHT, K.NUMBER]:
        return _of_one_side(pieces, old, prepared, context)
    if kinds == [K.NUMBER, K.RIGHT] or (kinds == [K.NUMBER, K.LEFT] and (old or pieces[0].value > MOST_RESERVED)):
        return _of_one_side(pieces[::-1], old, prepared, context)
    if kinds == [K.NUMBER, K.LEFT]:
        return unclear(prepared)  # "that was 2 left": in reserve, or of that side
    reps = _reps_of_sides(pieces)
    return _of_both(reps, prepared, context) if reps is not None else None


def _without_the_old(pieces: Sequence[Piece]) -> tuple[Sequence[Piece], Piece | None]:
    """The pieces without what it was not, and that number: "9 not 10, right"."""
    at = next((at for at, piece in enumerate(pieces) if piece.kind in DENYING), 0)
    if not at or kind_at(pieces, at + 1) is not K.NUMBER:
        return pieces, None
    return [*pieces[:at], *pieces[at + 2 :]], pieces[at + 1]


def _of_a_placed_side(pieces: Sequence[Piece], prepared: Prepared) -> NoSets | None:
    """ "last was 9 left", "set 2 was 7 left": of one side of that set alone, and of no more of it."""
    kinds = [piece.kind for piece in pieces if piece.kind not in PLACING]
    kinds = kinds[2:] if kinds[:2] == [K.SETS, K.NUMBER] else [kind for kind in kinds if kind is not K.SETS]
    return nothing_changed(prepared, ONE_SIDE) if kinds in OF_ONE_SIDE else None


def _is_little(piece: Piece) -> bool:
    return piece.kind in LITTLE or is_be(piece) or (piece.kind is not K.NUMBER and any_cued(piece.text.split(), LIMBS))


def _is_of_a_side(piece: Piece) -> bool:
    reps = piece.role in (Role.BARE, Role.REPS) and piece.value == int(piece.value) and piece.value >= 1
    return piece.kind in SIDES or (piece.kind is K.NUMBER and reps)


def _reps_of_sides(pieces: Sequence[Piece]) -> dict[Side, int] | None:
    """The number beside each of the two sides."""
    numbers, sides = pieces[::2], pieces[1::2]
    if pieces[0].kind in SIDES:
        numbers, sides = sides, numbers
    ordered = all(one.kind is K.NUMBER for one in numbers) and all(one.kind in SIDES for one in sides)
    if len(pieces) != BOTH + BOTH or not ordered or sides[0].kind is sides[1].kind:
        return None
    return {SIDES[side.kind]: int(number.value) for side, number in zip(sides, numbers, strict=True)}


def _of_one_side(
    pieces: Sequence[Piece], old: Piece | None, prepared: Prepared, context: Context
) -> Correction | NoSets:
    side, number = pieces
    told = [record for record in latest_of_it(context) if record.done.side is SIDES[side.kind]]
    if len(told) != 1 or (old is not None and old.value != told[0].done.reps):
        return nothing_changed(prepared, ONE_SIDE)
    return Correction(changed=((told[0], replace(told[0].done, reps=int(number.value))),))


def _of_both(reps: dict[Side, int], prepared: Prepared, context: Context) -> Correction | NoSets:
    latest = latest_of_it(context)
    by_side: dict[Side | None, SetRecord] = {record.done.side: record for record in latest}
    if len(latest) == 1 and latest[0].done.side is None:
        (first, first_reps), (second, second_reps) = reps.items()
        done = latest[0].done
        changed = ((latest[0], replace(done, side=first, reps=first_reps)),)
        return Correction(changed, added=(replace(done, side=second, reps=second_reps),))
    if len(latest) == BOTH and by_side.keys() == reps.keys():
        return Correction(tuple((by_side[side], replace(by_side[side].done, reps=new)) for side, new in reps.items()))
    return unclear(prepared)

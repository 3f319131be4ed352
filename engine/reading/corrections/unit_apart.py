"""A unit told apart from its number: "last was 95 in pounds", "last was 205, lbs", "7 reps, and in pounds".

A number that can only be a load has that unit. One that may be reps leaves open what the unit is of.
"""

from __future__ import annotations

from engine.catalogue.catalogue import Catalogue
from engine.reading.corrections.said_to_be import is_be
from engine.reading.prepare import Prepared, prepare
from engine.reading.values import Context
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role

UNITS, CUTS, IN = frozenset((K.KG, K.LB)), frozenset((K.COMMA, K.DASH)), frozenset(("inunit",))
APART, COUNTED = CUTS | {K.AND}, frozenset((Role.BARE, Role.REPS))
REPS_AND_A_UNIT = UNITS | APART | {K.NUMBER, K.REPS, K.FILLER, K.STOP}


def unit_is_open(prepared: Prepared) -> bool:
    """ "last was 4, in pounds": four reps or four pounds; "7 reps, in pounds": a set more, or the one that stands."""
    number = _number(prepared)
    return (number is not None and number.value <= MOST_LOADED_REPS) or _is_behind_reps(prepared)


def with_unit_tied(prepared: Prepared, context: Context, catalogue: Catalogue) -> Prepared:
    """The message as "last was 95 pounds" tells it; as it is where it is no such message."""
    number = _number(prepared)
    if number is None or number.value <= MOST_LOADED_REPS:
        return prepared
    unit = prepared.spoken[_last(prepared)]
    return prepare(f"{prepared.cleaned[: number.end]} {prepared.cleaned[unit.start :]}", context, catalogue)


def _number(prepared: Prepared) -> Piece | None:
    """The only number, behind a verb and ahead of a unit at the end that is not its own."""
    if prepared.told.isdisjoint(UNITS) or K.NUMBER not in prepared.told:
        return None
    pieces, at = prepared.spoken, _last(prepared)
    if pieces[at].kind not in UNITS or sum(piece.kind is K.NUMBER for piece in pieces) != 1:
        return None
    at -= 1
    while at > 0 and (pieces[at].kind in CUTS or is_cued(pieces[at].text, IN)):
        at -= 1
    number = pieces[at]
    bare = number.kind is K.NUMBER and number.role is Role.BARE and number.unit is None
    return number if bare and any(map(is_be, pieces[:at])) else None


def _is_behind_reps(prepared: Prepared) -> bool:
    """Whether reps are told and a unit apart from them, ahead or behind, and nothing else: "in lbs, 7 reps"."""
    if prepared.told.isdisjoint(UNITS) or not prepared.told <= REPS_AND_A_UNIT or K.NUMBER not in prepared.told:
        return False
    numbers = [at for at, piece in enumerate(prepared.spoken) if piece.kind is K.NUMBER]
    number = prepared.spoken[numbers[0]]
    if len(numbers) > 1 or number.unit is not None or number.role not in COUNTED or number.value > MOST_LOADED_REPS:
        return False
    unit = next(at for at, piece in enumerate(prepared.spoken) if piece.kind in UNITS)
    between = prepared.spoken[min(unit, numbers[0]) + 1 : max(unit, numbers[0])]
    inside = prepared.spoken[unit - 1 : unit] if unit else []
    return any(piece.kind in APART for piece in between) or any(is_cued(piece.text, IN) for piece in inside)


def _last(prepared: Prepared) -> int:
    """The place of the last piece that is no full stop."""
    places = [at for at, piece in enumerate(prepared.spoken) if piece.kind is not K.STOP]
    return places[-1] if places else 0

"""A unit told apart from its number: "last was 95 in pounds", "last was 205, lbs".

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


def unit_is_open(prepared: Prepared) -> bool:
    """ "last was 4, in pounds": four reps or four pounds."""
    number = _number(prepared)
    return number is not None and number.value <= MOST_LOADED_REPS


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


def _last(prepared: Prepared) -> int:
    """The place of the last piece that is no full stop."""
    places = [at for at, piece in enumerate(prepared.spoken) if piece.kind is not K.STOP]
    return places[-1] if places else 0

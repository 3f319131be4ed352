"""Somebody's sets beside her own, no comma between: "bench 80x5 (tom did 100x5)", "beat tom's 100x5 with bench 105x5".

behind = set [ REMARK ] [ "(" | "+" ] [ AS ] SOMEBODY [ DID ] set                  hers stand in front
ahead  = [ AS ] ( SOMEBODY "'s" | AS SOMEBODY DID ) set [ "with" ] LIFT    at the head of a line; hers stand behind
A comma is put between them, and where the bracket was, so that the rules for a clause about somebody hold
(`talk/whose.py`).
AS: "vs", "after", "beat". SOMEBODY: a word that no list knows, and not the writer's own name.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import CUES_OF, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.people import is_somebody, verb_behind
from engine.reading.words.pieces import Piece, kinds_in_order, places_of

COMPARING = frozenset(("compared", "beats"))
LEADING = frozenset((K.NOT_DATE, K.EARLIER))
SIGNS = frozenset((K.OPEN, K.PLUS))
UNITS = frozenset((K.KG, K.LB))
ENDS_OF_SETS = UNITS | {K.NUMBER}
HER_TURN = frozenset((K.WITH, K.FILLER))
POSSESSIVES = ("'s", "’s")
REACH = 6
"""Pieces of a set and what is told beside it. Common practice, no source."""


def with_somebody_parted(pieces: list[Piece], called: str) -> list[Piece]:
    """The pieces, with a comma between her sets and those of somebody named beside them."""
    kinds = kinds_in_order(pieces)
    own = called.casefold().split()
    commas: dict[int, bool] = {}
    for at in places_of(K.PLAIN, kinds):
        if _is_named(pieces[at], own):
            commas |= _commas(pieces, kinds, at)
    return _parted(pieces, commas) if commas else pieces


def _is_named(word: Piece, own: Sequence[str]) -> bool:
    name = word._replace(text=_name_in(word.text))
    known = CUES_OF[name.text] or name.text in own  # "3x10 oder 4x8"
    return not known and is_somebody(name) and len(name.text) > 1


def _name_in(text: str) -> str:
    """ "tom's": the name without its ending."""
    return next((text.removesuffix(ending) for ending in POSSESSIVES if text.endswith(ending)), text)


def _commas(pieces: Sequence[Piece], kinds: Sequence[K], at: int) -> dict[int, bool]:
    """The places of commas around the set of the one named there; whether each stands instead of the sign there."""
    verb = verb_behind(pieces, at)
    set_at = (verb or at) + 1
    end = _end_of_set(kinds, set_at)
    if end == set_at:
        return {}
    leading = at > 0 and (kinds[at - 1] in LEADING or is_cued(pieces[at - 1].text, COMPARING))
    start = at - leading
    signed = kind_at(pieces, start - 1) in SIGNS
    before = start - 1 - signed
    before -= before > 0 and kinds[before] is K.NOTE  # "80x5 easy (tom did 100x5)"
    if before >= 0 and kinds[before] in ENDS_OF_SETS and K.TIMES in kinds[max(0, before - REACH) : before]:
        closed = _closing(kinds, end) if signed and kinds[start - 1] is K.OPEN else {}
        return {start - 1: True, **closed} if signed else {start: False}
    owned = _name_in(pieces[at].text) != pieces[at].text
    heads = kind_at(pieces, start - 1) in (None, K.LINE)
    hers = end + (kind_at(pieces, end) in HER_TURN)
    told = heads and (owned or (leading and verb))
    named = kind_at(pieces, hers) is K.NAME and kind_at(pieces, hers + 1) is K.NUMBER
    return {end: False} if told and named else {}


def _end_of_set(kinds: Sequence[K], at: int) -> int:
    """The place behind "100x5", "100 kg x 5", "3x5 100" there; the same one where no set stands."""
    told = [kind for kind in kinds[at : at + REACH] if kind not in UNITS]
    if told[:3] != [K.NUMBER, K.TIMES, K.NUMBER]:
        return at
    end = at
    while end < len(kinds) and kinds[end] in WITHIN_A_SET:
        end += 1
    return end


WITHIN_A_SET = ENDS_OF_SETS | {K.TIMES, K.AT}


def _closing(kinds: Sequence[K], at: int) -> dict[int, bool]:
    """The bracket that closes behind the set, or behind a few words more."""
    for place in range(at, min(at + REACH, len(kinds))):
        if kinds[place] in (K.OPEN, K.LINE):
            break
        if kinds[place] is K.CLOSE:
            return {place: True}
    return {}


def _parted(pieces: list[Piece], commas: dict[int, bool]) -> list[Piece]:
    out: list[Piece] = []
    for at, piece in enumerate(pieces):
        if at not in commas:
            out.append(piece)
        elif commas[at]:
            out.append(piece._replace(kind=K.COMMA, text=","))
        else:
            out += [piece._replace(kind=K.COMMA, text=",", end=piece.start, names=()), piece]
    return out

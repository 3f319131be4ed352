"""A name of reps that holds for several loads: "two singles at 140 and one at 145", "60 80 100 120 singles".

carried = NAMED "at" LOAD ( [ "," | "and" | "then" ] NUMBER [ "of" "them" ] "at" LOAD )+     so many more sets of it
shared  = LOAD LOAD+ [ "for" | "all" ] REPS-NAMES                                          one set at each of the loads
A number in figures behind counted sets may be reps, too: "3 triples at 140, 2 at 145" is asked.
"""

from __future__ import annotations

from decimal import Decimal

from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, MOST_SETS, Piece, Role, kinds_in_order, places_of
from engine.values.effort import TOP_OF_SCALE

LINKS = frozenset((K.AT, K.WITH))
BETWEEN = frozenset((K.COMMA, K.AND, K.THEN, K.PLUS))
AHEAD_OF_NAMES = frozenset((K.FOR, K.FILLER))
STARTS = frozenset((None, K.NAME, K.COMMA, K.THEN, K.AND, K.LINE, K.STOP, K.COLON, K.FILLER, K.AT, K.WITH))
ENDS = frozenset((None, K.COMMA, K.THEN, K.AND, K.LINE, K.STOP, K.EFFORT, K.NOTE, K.OPEN))
FEWEST_LOADS = 2


def with_names_carried(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with the name of the reps put to each of the loads that it holds for."""
    return _shared(_carried(pieces))


def _carried(pieces: list[Piece]) -> list[Piece]:
    out: list[Piece] = []
    name: Piece | None = None
    counted = False
    at = 0
    while at < len(pieces):
        piece = pieces[at]
        if piece.kind is K.COUNT:
            name, counted = piece, bool(out) and _is_count(out[-1])
        elif piece.kind in (K.TIMES, K.NAME, K.LINE, K.FOR):
            name = None
        elif name is not None and out[-1].kind in BETWEEN and _is_count(piece):
            behind = _past_them(pieces, at + 1)
            if _is_load(pieces, behind):
                out += _named(piece, name, counted, pointed=behind > at + 1)
                at = behind
                continue
        out.append(piece)
        at += 1
    return out


def _is_count(piece: Piece) -> bool:
    """ "two", "3", and the "one" that is a word."""
    if piece.kind is K.FILLER:
        return "an" in CUES_OF[piece.text]
    return piece.kind is K.NUMBER and piece.role is Role.BARE and 1 <= piece.value <= MOST_SETS


def _past_them(pieces: list[Piece], at: int) -> int:
    pointed = kind_at(pieces, at) is K.OF and at + 1 < len(pieces) and "those" in CUES_OF[pieces[at + 1].text]
    if pointed:
        return at + 2
    return at + 1 if kind_at(pieces, at) is K.ALTERED and "of" in CUES_OF[pieces[at].text] else at


def _is_load(pieces: list[Piece], at: int) -> bool:
    """Whether a load stands there behind a word for it, and nothing that makes it more."""
    linked = kind_at(pieces, at) in LINKS and kind_at(pieces, at + 2) in ENDS
    return linked and kind_at(pieces, at + 1) is K.NUMBER and _is_bare_load(pieces[at + 1])


def _named(count: Piece, name: Piece, counted: bool, *, pointed: bool) -> list[Piece]:
    """The count with the name of the reps behind it, asked about where it may tell reps itself."""
    if count.kind is K.NUMBER and not (count.spelled or pointed):
        if not counted:
            return [count]  # "a triple at 140, 2 at 145"
        doubt = count._replace(kind=K.ALTERED, value=Decimal(0))
        return [doubt, count, name._replace(start=count.start, end=count.end)]
    return [count, name._replace(start=count.start, end=count.end)]


def _shared(pieces: list[Piece]) -> list[Piece]:
    """ "60 80 100 for singles" as "singles 60 80 100"."""
    out = pieces
    for at in reversed(places_of(K.COUNT, kinds_in_order(pieces))):
        end = at
        while end and kind_at(out, end - 1) in AHEAD_OF_NAMES:
            end -= 1
        start = _start_of_loads(out, end)
        loads = kinds_in_order(out[start:end]).count(K.NUMBER)
        several = not {"an", "onecount"} & CUES_OF[out[at].text]
        if loads >= FEWEST_LOADS and several and (kind_at(out, at + 1) in ENDS or _is_rated(out, at)):
            link = out[at]._replace(kind=K.WITH, text="at", told=0)
            out = [*out[:start], out[at], link, *out[start:end], *out[at + 1 :]]
    return out


def _is_rated(pieces: list[Piece], at: int) -> bool:
    """ "60 80 100 triples @8"."""
    rating = pieces[at + 2] if kind_at(pieces, at + 1) is K.AT and at + 2 < len(pieces) else None
    return rating is not None and rating.kind is K.NUMBER and rating.value <= TOP_OF_SCALE


def _start_of_loads(pieces: list[Piece], end: int) -> int:
    """Where the loads begin that stand one behind the other up to there."""
    at = start = end
    while at and (_is_bare_load(pieces[at - 1]) or (pieces[at - 1].kind in (K.COMMA, K.AND) and start < end)):
        at -= 1
        start = at if pieces[at].kind is K.NUMBER else start
    return start if not start or pieces[start - 1].kind in STARTS else end


def _is_bare_load(piece: Piece) -> bool:
    heavy = piece.role is Role.LOAD or (piece.role is Role.BARE and piece.value > MOST_LOADED_REPS)
    return piece.kind is K.NUMBER and heavy

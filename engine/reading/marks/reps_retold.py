"""Reps told again behind their set, and a set that was filmed: neither adds a set nor takes one away in silence.

again  = LOAD "x" REPS [ "," ] [ "i" ] DID [ "all" ] NUMBER [ "reps" ] END    "squat 100x5, i did 5 reps easy"
         the same number says the reps again; another may be what the set came to, or one more: asked
fewer  = LOAD "x" REPS [ "," ] [ BUT ] ONLY NUMBER [ GOT ] END    "80x5 but only 4" is asked, "nur 4 geschafft" a result
filmed = set "," VIDEO ( "at" | "of" ) LOAD "x" REPS                         "squat 120x3, video at 100x1": asked
DID, BUT and VIDEO are the cues "did", "but" and "filmedit". "Then", or a load of its own, makes a set of what was done.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role, kinds_in_order, places_in

DID, VIDEO = frozenset(("did",)), frozenset(("filmedit",))
BUT = frozenset(("but",))
TELLING = frozenset((K.FILLER, K.SAYING, K.ONLY))
SIGNS = frozenset((K.COMMA, K.DASH, K.STOP, K.OPEN))
LINKS = frozenset((K.WITH, K.OF, K.AT, K.FILLER))
ENDS = frozenset((None, K.STOP, K.LINE, K.CLOSE, K.NOTE, K.REPS, K.FILLER))
CLOSING = frozenset((None, K.STOP, K.LINE, K.CLOSE, K.NOTE, K.REPS))
COUNTS = frozenset((Role.BARE, Role.REPS))
PAIR = [K.NUMBER, K.TIMES, K.NUMBER]


def with_reps_retold(pieces: list[Piece], told: set[K]) -> list[Piece]:
    """The pieces, which are of these kinds, with the word ahead of such reps one for a result, or a question."""
    if K.TIMES not in told or told.isdisjoint(TELLING):
        return pieces
    kinds = kinds_in_order(pieces)
    out = list(pieces)
    for at in places_in(TELLING, kinds):
        if at < len(PAIR):
            continue
        if kinds[at] is K.SAYING:
            filmed = is_cued(pieces[at].text, VIDEO) and _is_of_a_set(pieces, kinds, at)
            out[at] = pieces[at]._replace(kind=K.UNCLEAR) if filmed else pieces[at]
        elif kinds[at] is K.ONLY:
            _put_fewer(out, pieces, kinds, at)
        elif is_cued(pieces[at].text, DID) and (again := _told_again(pieces, at)):
            reps = _reps_ahead(pieces, kinds, at)
            if reps is not None:
                out[at] = pieces[at]._replace(kind=K.GOT if reps.value == pieces[again].value else K.UNCLEAR)
    return out


def _put_fewer(out: list[Piece], pieces: Sequence[Piece], kinds: Sequence[K], at: int) -> None:
    """Makes "only" ahead of fewer reps the word for a result, or a question."""
    got = kind_at(pieces, at + 2) is K.GOT and kind_at(pieces, at + 3) in CLOSING
    turned = is_cued(pieces[at - 1].text, BUT)
    alone = kind_at(pieces, at + 1) is K.NUMBER and pieces[at + 1].role in COUNTS
    if not alone or not (got or (turned and kind_at(pieces, at + 2) in CLOSING)):
        return
    reps = _reps_ahead(pieces, kinds, at)
    if reps is None or pieces[at + 1].value > reps.value:
        return
    out[at] = pieces[at]._replace(kind=K.GOT if got else K.UNCLEAR)
    if got:
        out[at + 2] = pieces[at + 2]._replace(kind=K.FILLER)


def _is_of_a_set(pieces: Sequence[Piece], kinds: Sequence[K], at: int) -> bool:
    number = at + 2
    if kind_at(pieces, at + 1) not in LINKS:
        return False  # "squat 100x5 video 105x5"
    return list(kinds[number : number + len(PAIR)]) == PAIR and pieces[number].value > MOST_LOADED_REPS


def _told_again(pieces: Sequence[Piece], at: int) -> int:
    """The place of the number alone behind "did", "did all"; 0 where there is none, or a set is told."""
    number = at + 1 + (kind_at(pieces, at + 1) is K.FILLER)
    alone = kind_at(pieces, number) is K.NUMBER and pieces[number].role in COUNTS
    if not alone or pieces[number].value > MOST_LOADED_REPS:
        return 0
    parted = kind_at(pieces, number + 1) is K.COMMA and kind_at(pieces, number + 2) is not K.NUMBER
    return number if parted or kind_at(pieces, number + 1) in ENDS else 0


def _reps_ahead(pieces: Sequence[Piece], kinds: Sequence[K], at: int) -> Piece | None:
    """The reps of the set with its load that stands right ahead, of which nothing else was told."""
    end = at - 1 - (kinds[at - 1] is K.FILLER)
    end -= kinds[end] in SIGNS
    first = end + 1 - len(PAIR)
    if first < 1 or list(kinds[first : end + 1]) != PAIR or kinds[first - 1] is not K.NAME:
        return None
    return pieces[end] if pieces[first].value > MOST_LOADED_REPS >= pieces[end].value else None

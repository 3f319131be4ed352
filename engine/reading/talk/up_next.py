"""What is announced as coming next, or as still to be done: a plan, where sets without it would be logged.

ahead = [ lift ] sets [ word ] NEXT [ word ] end    bench 3x8 65 next, bankdrücken 3x8 65 ist als nächstes dran
      | "(" NEXT [ ":" ] lift sets                  squat 3x5 100 (next: bench 3x8 65)
      | start NEXT ":" lift sets                    next: bench 3x8 65
      | begin LEFT [ ":" ] lift sets                remaining bench 3x8 65, reste développé couché 3x8 65
asked = lift sets LEFT end                          wyciskanie 3x8 65 zostało
end   = the end of the message, or of a bracket
start = the start of the message; behind sets "next:" leads to what was done next
begin = the start of a clause
LEFT is the cue `leftahead`.
With sets behind it the word may lead to those, so that it is asked: "bench 3x8 65 next, squat 3x5 100". NEXT is the cue
`upnext` of the language files; words around it are those of `aroundupnext`, "is", "the" and their like.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import lru_cache

from engine.reading.talk.clauses_of_talk import BEHIND_ITS_SETS, CLAUSE_ENDS
from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook, spoken
from engine.reading.words.pieces import (
    COUNTED,
    Piece,
    is_one_word,
    kinds_in_order,
    kinds_of,
    places_in,
    texts_in_order,
)

NEXT = frozenset(("upnext",))
AROUND = frozenset(("aroundupnext", "is", "the", "an", "me"))
MAY_SAY_NEXT = frozenset((K.NOT_DATE, K.PLAIN))
BETWEEN = MAY_SAY_NEXT | {K.FILLER, K.NOTE, K.ASKS, K.AND, K.WITH, K.OF, K.FOR}
REACH = 3
"""Words around the one for next. Common practice, no source."""
ENDS_OF_SETS = COUNTED | {K.KG, K.LB, K.REPS, K.NAME}
ENDING = frozenset((K.STOP, K.LINE, K.CLOSE))
LEFT = frozenset(("leftahead",))
LED = frozenset((K.FILLER, K.NOTE, K.DATE, K.TODAY))
"""What may stand between the start of a clause and what is left of it: "heute offen: bankdrücken 3x8 80"."""
PARTING = CLAUSE_ENDS | {K.STOP, K.LINE, K.OPEN, K.CLOSE}


def with_what_is_next(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with the words that say what is next made what was not done, or unclear where more sets follow."""
    if _words_ahead().isdisjoint(map(spoken, texts_in_order(pieces))):
        return pieces
    pieces = _with_what_is_left(pieces)
    kinds = kinds_in_order(pieces)
    places = [at for at in places_in(MAY_SAY_NEXT, kinds) if at and _says_next(pieces[at])]
    for at in reversed(places):
        start, end = _run_around(pieces, at)
        if kinds[at - 1] is K.OPEN and kind_at(pieces, at + 1 + (kind_at(pieces, at + 1) is K.COLON)) is K.NAME:
            pieces = [*pieces[:at], pieces[at]._replace(kind=K.FUTURE, told=0), *pieces[at + 1 :]]
            continue
        followed = not COUNTED.isdisjoint(kinds[end:])
        if not _ends(kinds, end, followed) or not _tells_a_lift(pieces, kinds, start):
            continue
        said = pieces[start]._replace(end=pieces[end - 1].end, told=0 if followed else BEHIND_ITS_SETS)
        pieces = [*pieces[:start], said._replace(kind=K.UNCLEAR if followed else K.NEVER), *pieces[end:]]
    return pieces


@lru_cache(maxsize=1)
def _words_ahead() -> frozenset[str]:
    cues = phrasebook().cues
    return cues["upnext"] | cues["leftahead"]


def _with_what_is_left(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with a word that leads to sets still to be done made one of a wish."""
    out = list(pieces)
    for at, piece in enumerate(pieces):
        if is_cued(piece.text, LEFT | NEXT) and _leads_to_sets(pieces, at, left=is_cued(piece.text, LEFT)):
            counted = kind_at(pieces, at + 1 + (kind_at(pieces, at + 1) is K.COLON)) is K.NUMBER
            open_still = counted and is_cued(piece.text, NEXT)  # "next: 85x6" may tell what was done next
            out[at] = piece._replace(kind=K.UNCLEAR if open_still else K.FUTURE, told=0)
        elif is_cued(piece.text, LEFT) and not is_cued(piece.text, NEXT) and _may_be_left(pieces, at):
            out[at] = piece._replace(kind=K.UNCLEAR, told=0)
    return out


def _leads_to_sets(pieces: Sequence[Piece], at: int, *, left: bool) -> bool:
    start = at
    while start > max(0, at - REACH) and pieces[start - 1].kind in LED:
        start -= 1
    parted = kind_at(pieces, at + 1) is K.COLON
    if start and (not left or pieces[start - 1].kind not in PARTING):
        return False
    lift = at + 1 + parted
    if kind_at(pieces, lift) is K.NAME or (parted and kind_at(pieces, lift) is K.LINE):
        return left or parted
    return (left or parted) and kind_at(pieces, lift) is K.NUMBER and kind_at(pieces, lift + 1) is K.TIMES


def _may_be_left(pieces: Sequence[Piece], at: int) -> bool:
    """ "wyciskanie 3x8 80 zostało": sets with their load; "80x8, 2 zostało" tells reps in reserve."""
    if (pieces[at].kind is K.UNRELATED and pieces[at].told) or not is_one_word(pieces[at]):
        return False  # "bench 3x8 65 remaining", "kvar att göra" say so clearly
    ahead = pieces[at - 1] if at > 1 and kind_at(pieces, at + 1) in {None, *ENDING} else None
    loaded = ahead is not None and (ahead.kind in LOADED or (ahead.kind is K.NUMBER and ahead.value > MOST_IN_RESERVE))
    return loaded and _tells_a_lift(pieces, kinds_in_order(pieces), at)


LOADED = frozenset((K.KG, K.LB, K.NAME))
MOST_IN_RESERVE = 10
"""More reps in reserve nobody tells. Common practice, no source."""


def _says_next(piece: Piece) -> bool:
    """ "next", and not the whole of "next time 102.5", of which a remark shows the first word."""
    return is_cued(piece.text, NEXT) and is_one_word(piece)


def _run_around(pieces: Sequence[Piece], at: int) -> tuple[int, int]:
    """Where the words around the one for next begin and end."""
    start, end = at, at + 1
    while start > max(1, at - REACH) and _goes_with_it(pieces[start - 1]):
        start -= 1
    while end < min(len(pieces), at + 1 + REACH) and _goes_with_it(pieces[end]):
        end += 1
    return start, end


def _goes_with_it(piece: Piece) -> bool:
    return piece.kind in BETWEEN and is_cued(piece.text, AROUND)


def _ends(kinds: Sequence[K], end: int, followed: bool) -> bool:
    """Whether the clause ends there; "squat 100x5 next, felt good" tells of what was done next."""
    return end == len(kinds) or kinds[end] in ENDING or (followed and kinds[end] in CLAUSE_ENDS)


def _tells_a_lift(pieces: Sequence[Piece], kinds: Sequence[K], end: int) -> bool:
    """Whether a lift and its sets, or a pair, stand right in front, in the clause that ends there."""
    if kinds[end - 1] not in ENDS_OF_SETS:
        return False
    start = next((place for place in range(end, 0, -1) if kinds[place - 1] in PARTING), 0)
    clause = kinds_of(pieces[start:end])
    return K.TIMES in clause or (K.NAME in clause and not COUNTED.isdisjoint(clause))

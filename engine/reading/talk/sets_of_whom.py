"""Somebody told as the one whose sets a message holds, by words around them: it is asked whose they are.

told = [ WORD ] [ "for" ] SOMEBODY [ "session" | "today" ] ( ":" | "-" ) LIFT ...     log for tove: squat 3x5 60
     | "coached" SOMEBODY ( "with" | ... ) ... NUMBER                                 helped tove with bench 3x5 60
     | ... sets ( "for" SOMEBODY | SOMEBODY "'s" | "not mine" )                       squat 3x5 60 for tove
SOMEBODY: a word that no list knows, or one of those for people.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import CUES_OF, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.people import is_somebody, possessor
from engine.reading.words.pieces import COUNTED, Piece

PEOPLE = frozenset((K.PLAIN, K.OTHERS))
BEHIND_A_NAME = frozenset((K.FILLER, K.HEADING, K.TODAY, K.SETS))
ENDS_OF_SETS = COUNTED | {K.KG, K.LB, K.REPS}
APART = ENDS_OF_SETS | {K.COMMA, K.DASH, K.OPEN, K.STOP}
LOGGING, HELPING, FOR_WHOM, MINE = (
    frozenset(("logging",)),
    frozenset(("helping",)),
    frozenset(("forwhom",)),
    frozenset(("myturn", "my")),
)
REACH = 4
"""Words in front of a label, or up to the numbers. Common practice, no source."""


def told_as_theirs(pieces: Sequence[Piece]) -> Piece | None:
    """The one whose sets they are told to be, or the words that say "not mine"; None where nobody is told."""
    return _labelled(pieces) or _owned(pieces) or _helped(pieces) or _at_the_end(pieces)


def _is_whom(piece: Piece) -> bool:
    named = piece._replace(text=possessor(piece.text))
    known = bool(CUES_OF[named.text]) and named.text == piece.text  # "mate's" is of somebody, whatever "mate" is
    return piece.kind is K.OTHERS or (is_somebody(named) and not known and len(named.text) > 1)


def _labelled(pieces: Sequence[Piece]) -> Piece | None:
    """ "for tove: squat 3x5 60", "tove - squat 3x5 60", "tove's session: squat 3x5 60"."""
    at = 0
    while at < REACH and kind_at(pieces, at) in (K.FILLER, K.FOR):
        at += 1
    if at and pieces[at - 1].kind is not K.FOR and not is_cued(pieces[at - 1].text, LOGGING):
        return None  # "to failrue: curls 11 9"
    sign = at + 1
    owned = at < len(pieces) and possessor(pieces[at].text) != pieces[at].text
    while sign <= at + 2 and (kind_at(pieces, sign) in BEHIND_A_NAME or (owned and kind_at(pieces, sign) is K.PLAIN)):
        sign += 1
    parted = kind_at(pieces, sign) is K.COLON or (kind_at(pieces, sign) is K.DASH and not pieces[sign].glued)
    headed = parted and kind_at(pieces, sign + 1) is K.NAME and pieces[at].kind in PEOPLE
    return pieces[at] if headed and _is_whom(pieces[at]) else None


def _owned(pieces: Sequence[Piece]) -> Piece | None:
    """ "my daughter's first squat: 20x5"."""
    for at, piece in enumerate(pieces[:REACH]):
        if piece.kind in COUNTED or piece.kind is K.NAME:
            return None
        if piece.kind is K.PLAIN and possessor(piece.text) != piece.text:
            behind = [one.kind for one in pieces[at + 1 : at + 1 + REACH]]
            return piece if K.NAME in behind and K.COMMA not in behind[: behind.index(K.NAME)] else None
    return None


def _helped(pieces: Sequence[Piece]) -> Piece | None:
    """ "helped tove with bench 3x5 60", "100x5 spotted him 140x5"."""
    for at in range(len(pieces) - 2):
        if is_cued(pieces[at].text, HELPING) and pieces[at + 1].kind in PEOPLE and _is_whom(pieces[at + 1]):
            heads = at == 0 or pieces[at - 1].kind in APART or "me" in CUES_OF[pieces[at - 1].text]
            if heads and _counts_near(pieces, at + 2):
                return pieces[at + 1]
    return None


def _counts_near(pieces: Sequence[Piece], at: int) -> bool:
    kinds = [piece.kind for piece in pieces[at : at + REACH]]
    first = next((place for place, kind in enumerate(kinds) if kind in COUNTED), -1)
    return first >= 0 and K.COMMA not in kinds[:first]  # "helped a guy spot, bench 80x8"


def _at_the_end(pieces: Sequence[Piece]) -> Piece | None:
    """ "squat 3x5 60 for tove", "squat 3x5 60, tove's", "squat 3x5 60, not mine"."""
    last, before = pieces[-1], kind_at(pieces, len(pieces) - 2)
    ahead = kind_at(pieces, len(pieces) - 3)
    if before is K.NOT and is_cued(last.text, MINE):
        return last if ahead in APART else None
    if last.kind is not K.PLAIN or not _is_whom(last):
        return None
    article = len(pieces) > REACH and "article" in CUES_OF[pieces[-2].text]  # "my brother's"
    owned = possessor(last.text) != last.text and (ahead if article else before) in APART
    told = before in (K.FOR, K.BY) or is_cued(pieces[len(pieces) - 2].text, FOR_WHOM)
    return last if owned or (told and ahead in ENDS_OF_SETS) else None

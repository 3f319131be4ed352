"""A day and what one does on it, told as of now: "friday i'm benching 100x2", "samstag drücke ich bank 100x2".

on = DAY ... ( "i'm" LIFT-ING | "i" LIFT | DO ) ... sets      on for that day, or done on it: asked
"friday i benched 100x2" and "friday bench 100x2" tell what was done.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.pieces import COUNTED, Piece, is_one_word, kinds_in_order, places_in

DAYS = frozenset((K.TODAY, K.WEEKDAY))
CLAUSE_ENDS = frozenset((K.LINE, K.COMMA, K.STOP, K.THEN))
WORDS = frozenset((K.FILLER, K.PLAIN, K.NAME, K.FUTURE, K.GOT, K.ASKS))
AHEAD_OF_ME = DAYS | {None, K.COLON, K.COMMA, K.LINE}
NOW, DONE = "ing", "ed"
REACH = 3
"""Words from the verb to the numbers. Common practice, no source."""


def may_be_on_for_a_day(pieces: Sequence[Piece]) -> bool:
    """Whether a clause with a day tells what is done on it as of now."""
    kinds = kinds_in_order(pieces)
    if DAYS.isdisjoint(kinds):
        return False
    return any(_is_of_now(pieces, at) and _has_a_day(kinds, at) for at in places_in(WORDS, kinds))


def _is_of_now(pieces: Sequence[Piece], at: int) -> bool:
    """ "i'm benching", "i bench", "drücke ich", ahead of numbers."""
    cues = CUES_OF[pieces[at].text]
    if "idonow" in cues:
        return _counts_near(pieces, at + 1)
    if not {"iam", "me", "we"} & cues or at + 1 == len(pieces):
        return False
    behind = pieces[at + 1]
    if "iam" in cues:
        doing = "atit" in CUES_OF[behind.text] or (behind.kind is K.NAME and behind.text.endswith(NOW))
        return doing and _counts_near(pieces, at + 2)
    lifting = "idonow" in CUES_OF[behind.text] or (behind.kind is K.NAME and not behind.text.endswith(DONE))
    lifting = lifting and is_one_word(pieces[at])
    return lifting and kind_at(pieces, at - 1) in AHEAD_OF_ME and kind_at(pieces, at + 2) in COUNTED


def _counts_near(pieces: Sequence[Piece], at: int) -> bool:
    return any(piece.kind in COUNTED for piece in pieces[at : at + REACH])


def _has_a_day(kinds: Sequence[K], at: int) -> bool:
    start, end = at, at
    while start and kinds[start - 1] not in CLAUSE_ENDS:
        start -= 1
    while end < len(kinds) and kinds[end] not in CLAUSE_ENDS:
        end += 1
    return not DAYS.isdisjoint(kinds[start:end])

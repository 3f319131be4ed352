"""Reps alone behind a set that may tell something else of it: "80x5 had 8", "80x8, count it as 6", "80x8, only 6".

possible = sets ( HAD | SO ) NUMBER      all that was in it, or one more set
counted  = LOAD "x" REPS COUNT-IT NUMBER        what the set comes to
fewer    = LOAD "x" REPS ( "only" NUMBER | NUMBER COUNTED )   what it came to, or one more set
HAD, SO, COUNT-IT and COUNTED are the cues "meantto", "so", "settingto" and "countsas".
What is open is read both ways, and asked.
"""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from itertools import pairwise

from engine.reading.words.ahead import aside, kind_at
from engine.reading.words.cues import CUES_OF, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role, is_one_word, kinds_in_order, kinds_of, places_of
from engine.reading.words.sides_named import tells_a_side

POSSIBLE, COUNT_IT = frozenset(("meantto", "so")), frozenset(("settingto",))
COUNTING, WAS = frozenset(("countsas",)), frozenset(("was", "were", "is", "are"))
WORDS = frozenset((K.FILLER, K.PLAIN, K.NOTE, K.NOT_DATE, K.ASKS, K.RESERVE_LEFT, K.RESERVE, K.SAYING))
BESIDE_REPS = WORDS | {K.ONLY}
SIGNS = frozenset((K.COMMA, K.STOP, K.DASH, K.OPEN))
BEHIND = frozenset((K.FILLER, K.NOTE, K.PLAIN, K.REPS, K.CLOSE))
ENDS = frozenset((None, K.COMMA, K.STOP, K.LINE, K.CLOSE))
COUNTS = frozenset((Role.BARE, Role.REPS))
MOST_WORDS = 5
PAIR = [K.NUMBER, K.TIMES, K.NUMBER]


def with_other_reps(pieces: list[Piece]) -> list[Piece] | None:
    """The pieces, with reps that may be what was possible set aside, and "only 6" as what a set came to; None where
    there are none.
    """
    kinds = kinds_in_order(pieces)
    for at in places_of(K.NUMBER, kinds):
        if BESIDE_REPS.isdisjoint(kinds[max(0, at - 1) : at + 2]):
            continue
        start = _first_word(pieces, at)
        counts = at + 1 < len(pieces) and _says_counted(pieces[at + 1])
        if (start == at and not counts) or not _stands_alone(pieces, at):
            continue
        if kind_at(pieces, _before(pieces, start)) is not K.NUMBER:
            continue
        if start == at and _reps_ahead(pieces, start, at):
            return [*pieces[:at], pieces[at + 1]._replace(kind=K.GOT), pieces[at], *pieces[at + 2 :]]
        if start < at and is_cued(pieces[at - 1].text, POSSIBLE):
            return [*pieces[:start], aside(pieces[at - 1]), aside(pieces[at]), *pieces[at + 1 :]]
        if pieces[at - 1].kind is K.ONLY and _reps_ahead(pieces, start, at):
            return [*pieces[: at - 1], pieces[at - 1]._replace(kind=K.GOT), pieces[at], *pieces[at + 1 + counts :]]
    return None


def with_a_miss_perhaps(pieces: list[Piece]) -> list[Piece] | None:
    """The pieces, with the mark in "120 1 1 1 F" as that of a single that was missed; None where there is none."""
    for at in places_of(K.FAILURE, kinds_in_order(pieces)):
        before = at - 2 - (kind_at(pieces, at - 2) is K.COMMA)
        ones = [kind_at(pieces, place) is K.NUMBER and pieces[place].value == 1 for place in (at - 1, before)]
        if all(ones) and is_one_word(pieces[at]) and is_cued(pieces[at].text, FAILING):
            return [*pieces[:at], pieces[at]._replace(kind=K.MISS), *pieces[at + 1 :]]
    return None


FAILING = frozenset(("failing",))


def with_reps_counted(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with what a set is told to count for as its result, or unclear behind several sets."""
    kinds = kinds_in_order(pieces)
    for at in places_of(K.NUMBER, kinds):
        if kinds[at - 1] not in BESIDE_REPS:
            continue
        start = _first_word(pieces, at)
        counted = any(is_cued(piece.text, COUNT_IT) for piece in pieces[start:at])
        if not counted or not _stands_alone(pieces, at) or kind_at(pieces, _before(pieces, start)) is not K.NUMBER:
            continue
        of_one = _reps_ahead(pieces, start, at)
        told = pieces[start]._replace(kind=K.GOT if of_one else K.UNCLEAR, end=pieces[at - 1].end)
        return [*pieces[: _before(pieces, start) + 1], told, *pieces[at:]]
    return pieces


def with_reps_of_each(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with "7 reps each" behind sets told one by one unclear, or a remark where it says the same."""
    kinds = kinds_in_order(pieces)
    for at in places_of(K.NUMBER, kinds):
        if kinds[at - 1] not in AHEAD_OF_EACH or kind_at(pieces, at + 1) not in BEHIND_EACH:
            continue
        start = at - (kind_at(pieces, at - 1) is K.EACH)  # "je 7"
        of_each = _says_of_each(pieces, at + 1) if start == at else kind_at(pieces, at + 1) in ENDS
        if kind_at(pieces, start - 1) is not K.COMMA or not of_each:
            continue
        told = _told_ahead(pieces, start - 1)
        if len(told) < LEAST_LISTED or all(low < high for low, high in pairwise(told)):
            continue  # "20, 22, 24, 8 reps each"
        same = {reps for reps in told if reps <= MOST_LOADED_REPS} == {pieces[at].value}
        said = aside(pieces[at]) if same else pieces[at]._replace(kind=K.UNCLEAR)
        return [*pieces[:at], said, *pieces[at + 1 :]]
    return pieces


AHEAD_OF_EACH, BEHIND_EACH = frozenset((K.COMMA, K.EACH)), ENDS | {K.EACH, K.FILLER}
LEAST_LISTED = 2
OF_A_LIST = frozenset((K.NUMBER, K.COMMA, K.TIMES, K.KG, K.LB, K.AT))


def _says_of_each(pieces: Sequence[Piece], at: int) -> bool:
    """ "each", "reps each" at the end of a clause, and no side or hand."""
    each = kind_at(pieces, at) is K.EACH and not tells_a_side(pieces[at])
    words = kind_at(pieces, at) is K.FILLER and "repword" in CUES_OF[pieces[at].text] and not is_one_word(pieces[at])
    return (each or words) and kind_at(pieces, at + 1) in ENDS


def _told_ahead(pieces: Sequence[Piece], at: int) -> list[Decimal]:
    """The numbers that stand in the list ahead, but for a load in front of it or at its end."""
    start = at
    while start > 0 and pieces[start - 1].kind in OF_A_LIST:
        start -= 1
    told = [piece.value for piece in pieces[start:at] if piece.kind is K.NUMBER]
    return told if K.TIMES in kinds_of(pieces[start:at]) else [one for one in told if one <= MOST_LOADED_REPS]


def _says_counted(piece: Piece) -> bool:
    """ "counted", and not "was"."""
    return is_cued(piece.text, COUNTING) and not is_cued(piece.text, WAS)


def _first_word(pieces: Sequence[Piece], at: int) -> int:
    """The place of the first of the words right ahead of a number; its own place where there are none."""
    start = at - (kind_at(pieces, at - 1) is K.ONLY)
    while at - start < MOST_WORDS and kind_at(pieces, start - 1) in WORDS:
        start -= 1
    return start


def _before(pieces: Sequence[Piece], start: int) -> int:
    return start - 1 - (kind_at(pieces, start - 1) in SIGNS)


def _stands_alone(pieces: Sequence[Piece], at: int) -> bool:
    """Whether the number may count reps, and only words stand between it and the end of its clause."""
    end = at + 1
    while kind_at(pieces, end) in BEHIND:
        end += 1
    few = pieces[at].role in COUNTS and 0 < pieces[at].value <= MOST_LOADED_REPS
    return few and kind_at(pieces, end) in ENDS and kind_at(pieces, end + 1) is not K.NUMBER


def _reps_ahead(pieces: Sequence[Piece], start: int, at: int) -> bool:
    """Whether one set with its load stands right ahead, and the number may be what it came to."""
    end = _before(pieces, start)
    pair = pieces[max(0, end - 2) : end + 1]
    whole = [piece.kind for piece in pair] == PAIR and pair[0].value > MOST_LOADED_REPS
    first = kind_at(pieces, end - len(PAIR)) in (None, K.NAME, K.LINE, K.COMMA)
    return whole and first and pieces[at].value < pair[2].value

"""Numbers behind sets that may be none of their reps: how long it took, when, how many were there, how hard it was.

took  = ( "in" | "within" ) NUMBER          bench 60x8 done in 5
when  = ( "before" | "after" | HEADING ) NUMBER         bench 60x8 before 7
there = NUMBER ( "in" | "at" ) [ "the" ] VENUE          bench 60x8, 5 in the gym
scale = NUMBER "/10"                    behind a set that told its load and its reps         bench 60x8 6/10
They may be reps all the same, and are asked. Parts in capitals are cues of the language files.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from engine.reading.chunks.chunks import Chunk
from engine.reading.chunks.steps import tells_a_load
from engine.reading.words.ahead import HOLDS_A_NUMBER
from engine.reading.words.cues import CUES_OF, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role
from engine.values.effort import TOP_OF_SCALE

PAIR = 2
AHEAD_OF_AN_HOUR = frozenset((K.NOT_DATE, K.HEADING))
LINKED = frozenset((K.TIMES, K.FOR, K.OF, K.AT, K.WITH, K.BY, K.REPS, K.SETS, K.KG, K.LB))
BEFORE_A_VENUE = frozenset((K.FILLER, K.WITH, K.AT))


def may_be_no_reps(pieces: Sequence[Piece], at: int, found: Sequence[Chunk]) -> bool:
    """Whether the number there, which stands behind the sets found so far, may be none of their reps."""
    number, before, behind = pieces[at], pieces[at - 1], pieces[at + 1 : at + 4]
    if number.role is not Role.BARE or number.value > MOST_LOADED_REPS or number.value % 1:
        return False
    if not (tells_a_load(found) or len(found) > 1) or (behind and behind[0].kind in LINKED):
        return False
    if before.kind in AHEAD_OF_AN_HOUR or (before.kind is K.FILLER and _times_what_follows(before.text)):
        return True
    return found[-1].size == PAIR and _tells_where(behind)


def may_count_things(pieces: Sequence[Piece], at: int, found: Sequence[Chunk]) -> bool:
    """ "80x8, 8, 7, 2 advil", "1 notch tighter", "up 2 reps", "2 fewer than planned": so few beside the reps before it
    that the word there may be what it counts.
    """
    number, behind = pieces[at], pieces[at + 1] if at + 1 < len(pieces) else None
    last = found[-1].factors[-1][-1:] if found[-1].factors else ()
    if number.role not in COUNTING or number.value % 1 or not last or number.value > MOST_THINGS:
        return False
    few = number.value * FEW_BESIDE <= last[0].value and pieces[at - 1].kind not in LINKED
    if number.role is Role.REPS:
        compared = is_cued(pieces[at - 1].text, RISEN) or (behind is not None and is_cued(behind.text, RECORD))
        return compared or (few and behind is not None and _speaks_of_reps(behind, pieces[at + 2 : at + 3]))
    if behind is None or not few:
        return False
    if behind.kind is K.NOTE and at + 2 < len(pieces) and pieces[at + 2].kind is K.REPS:
        return True  # "1 bad rep"
    held = behind.kind is K.NOTE and behind.told == HOLDS_A_NUMBER and not _is_rest_told(pieces, at + 1)
    return held or behind.kind is K.PLAIN or behind.kind is K.OTHERS


def tells_of_the_pair(pieces: Sequence[Piece], at: int, found: Sequence[Chunk]) -> bool:
    """ "80x8 (2 ugly)", "80x8 (8 of 10)", "80x8 (rest 3)": in brackets behind one set, what it was like."""
    number, before = pieces[at], pieces[at - 1].kind
    if number.role is not Role.BARE or number.value > TOP_OF_SCALE or found[-1].size != PAIR or found[-1].at:
        return False
    behind = pieces[at + 1].kind if at + 1 < len(pieces) else None
    opened = before is K.OPEN and behind in SAID_IN_BRACKETS
    if opened or (before in SAID_IN_BRACKETS and at > 1 and pieces[at - PAIR].kind is K.OPEN):
        return True
    ahead = [piece.kind for piece in pieces[max(0, at - LONGEST_SAID) : at]]
    after = [piece.kind for piece in pieces[at + 1 : at + 1 + LONGEST_SAID]]
    return _are_words_up_to(K.OPEN, ahead[::-1], behind is K.CLOSE) or _are_words_up_to(
        K.CLOSE, after, before is K.OPEN
    )


def _are_words_up_to(bracket: K, kinds: Sequence[K], alone: bool) -> bool:
    """ "110x5 (grinder, 9)", "(9, felt hard)": a comma and words between the number and the other bracket."""
    if not alone or kinds[:1] not in ([K.COMMA], [K.DASH]) or bracket not in kinds:
        return False
    words = kinds[1 : kinds.index(bracket)]
    return bool(words) and all(kind in SAID_IN_BRACKETS or kind is K.FILLER for kind in words)


LONGEST_SAID = 8
"""Pieces of a remark in brackets. Common practice, no source."""
SAID_IN_BRACKETS = frozenset((K.NOTE, K.PLAIN, K.OF, K.OUT_OF, K.REST))
COUNTING = frozenset((Role.BARE, Role.REPS))


def _speaks_of_reps(behind: Piece, further: Sequence[Piece]) -> bool:
    """ "1 rep was high", "2 reps slow", "1 rep de moins"; "3 reps of 60" are reps."""
    less = behind.kind is K.OF and bool(further) and further[0].kind is not K.NUMBER
    return less or behind.kind in SAID_OF_REPS


RISEN, RECORD = frozenset(("up", "down")), frozenset(("record", "fewer"))
SAID_OF_REPS = frozenset((K.NOTE, K.PLAIN, K.FILLER, K.ASSISTED))
MOST_THINGS, FEW_BESIDE = 4, 2
"""Reps seldom fall so far from set to set. Common practice, no source."""


def _is_rest_told(pieces: Sequence[Piece], at: int) -> bool:
    """ "5, 2 rest 3 min"; of "2 rest days before" words go on."""
    return at + 1 >= len(pieces) or pieces[at + 1].kind is not K.PLAIN


def _times_what_follows(word: str) -> bool:
    """ "in 5"; and not "all 5", "over 5"."""
    cues = CUES_OF[word]
    return "workout" in cues or ("within" in cues and "spread" in cues)


def _tells_where(behind: Sequence[Piece]) -> bool:
    """ "in the gym", "at my place"."""
    if len(behind) < PAIR or behind[0].kind not in BEFORE_A_VENUE:
        return False
    if any("venue" in CUES_OF[piece.text] for piece in behind[1:]):
        return True
    # What heads a part of the workout, too, stands no longer here: "5 in the".
    return len(behind) == PAIR and "within" in CUES_OF[behind[0].text] and behind[1].kind is K.FILLER


def may_be_a_scale(numbers: Sequence[Piece], joiner: K | None, before: Sequence[Chunk]) -> bool:
    """ "6/10" behind "60x8": so much out of ten, or two more sets."""
    if len(numbers) != PAIR or joiner is not K.SLASH or not before or before[-1].size != PAIR:
        return False
    rated, top = numbers
    return top.value == TOP_OF_SCALE and rated.value < top.value and tells_a_load(before)


def may_rate(numbers: Sequence[Piece], joiner: K | None, before: Sequence[Chunk], behind: Piece | None) -> bool:
    """ "80x8, 8, 7, 2/3 lights", "4/5 stars": so many out of so many of what a word behind them names."""
    if len(numbers) != PAIR or joiner is not K.SLASH or not before or any(one.joiner is K.SLASH for one in before):
        return False
    part, whole = numbers
    worded = behind is not None and (behind.kind is K.PLAIN or (behind.kind is K.NOTE and whole.value <= MOST_RATED))
    return worded and 0 < part.value <= whole.value <= TOP_OF_SCALE


MOST_RATED = 5
"""Common practice, no source."""


LEAST_EFFORT = 5
"""A lower effort is seldom told in numbers. Common practice, no source."""


def may_be_efforts(numbers: Sequence[Piece], found: Sequence[Chunk]) -> bool:
    """ "3x8 60 (7 8 9)": numbers that rise as efforts do, and reps seldom; behind "60x8/8/8" the reps were told."""
    told = [number.value for number in numbers]
    rising = told == sorted(told) and told[0] < told[-1] <= TOP_OF_SCALE and told[0] >= LEAST_EFFORT
    return rising or any(len(factor) > 1 for chunk in found for factor in chunk.factors)


def climbs_behind_a_pair(numbers: Sequence[Piece], joiner: K | None, before: Sequence[Chunk]) -> bool:
    """ "16kg x2 1-2-3": a ladder, done twice or behind a set of two."""
    told = [number.value for number in numbers]
    rises = joiner is K.DASH and len(told) > PAIR and all(low < high for low, high in pairwise(told))
    return rises and bool(before) and before[-1].size == PAIR


def tells_otherwise(pieces: Sequence[Piece], at: int) -> bool:
    """ "60x8, think it was 9", "could be 9": what was told before, and perhaps otherwise."""
    if at < PAIR or "been" not in CUES_OF[pieces[at - 1].text]:
        return False
    return is_cued(pieces[at - 2].text, WHAT_WAS)


WHAT_WAS = frozenset(("that", "would"))

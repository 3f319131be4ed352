"""An empty bar told ahead of its sets, with a comma or words between: "bench with just the empty bar, 8 reps, 3 sets".

bar-ahead = [ LIFT ] WORD* BAR ( "," | ":" | WORD )+ COUNTS      up to the next lift, and nothing there tells a load
warmed    = WARM-UP [ LIFT ] BARBELL COUNTS       "panca riscaldamento bilanciere x10": the bar with nothing on it
Right in front of its sets the bar is their load already, "bar 3x8"; so what stands between is taken out.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.ahead import kind_at
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, MOST_SETS, Piece, Role, kinds_in_order, places_of

WORDS = frozenset((K.FILLER, K.NOTE, K.PLAIN, K.ONLY, K.TODAY, K.DENY, K.EXCEPT, K.WITH, K.COMMA, K.COLON, K.DASH))
BETWEEN = frozenset((K.COMMA, K.COLON, K.DASH, K.FILLER, K.TODAY, K.STOP))
COUNTING = frozenset((Role.BARE, Role.REPS, Role.SETS, Role.TIMES))
ENDS = frozenset((K.NAME, K.LINE))
MOST_WORDS = 8
"""As many pieces may stand before the bar, or between it and its sets. Common practice, no source."""


def with_bar_ahead(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with nothing between an empty bar and the counts that are all that is told of its lift."""
    kinds = kinds_in_order(pieces)
    for at in reversed(places_of(K.BAR, kinds)):
        behind = _counts_from(kinds, at)
        if behind > at + 1 and _heads(kinds, at) and _loads_nothing(pieces, behind):
            pieces = [*pieces[: at + 1], *pieces[behind:]]
            kinds = kinds_in_order(pieces)
    return pieces


def _counts_from(kinds: Sequence[K], at: int) -> int:
    """The place of the first number behind the bar; 0 where something else stands there."""
    behind = at + 1
    while behind < min(len(kinds), at + MOST_WORDS) and kinds[behind] in BETWEEN:
        behind += 1
    return behind if behind < len(kinds) and kinds[behind] is K.NUMBER else 0


def _heads(kinds: Sequence[K], at: int) -> bool:
    """Whether only words stand between the lift, or the head of the message, and the bar."""
    start = at - 1
    while start >= max(0, at - MOST_WORDS) and kinds[start] in WORDS:
        start -= 1
    return start < 0 or kinds[start] in ENDS


def _loads_nothing(pieces: Sequence[Piece], at: int) -> bool:
    """Whether the numbers up to the next lift are all counts of sets and reps."""
    while at < len(pieces) and pieces[at].kind not in ENDS:
        number = pieces[at]
        if number.kind in (K.AT, K.BAR) or (number.kind is K.NUMBER and not _counts(pieces, at)):
            return False
        at += 1
    return True


def _counts(pieces: Sequence[Piece], at: int) -> bool:
    number = pieces[at]
    paired = at + 1 < len(pieces) and pieces[at + 1].kind is K.TIMES
    return number.role in COUNTING and number.value <= (MOST_SETS if paired else MOST_LOADED_REPS)


def with_bar_warmed_up_with(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with a barbell right behind a word for warming up and ahead of reps alone as the empty bar."""
    out = pieces
    for at in places_of(K.BARBELL, kinds_in_order(pieces)):
        if _warmed_up_with(pieces, at) and _reps_alone(pieces, at + 1):
            out = [*out[:at], out[at]._replace(kind=K.BAR), *out[at + 1 :]]
    return out


def _warmed_up_with(pieces: Sequence[Piece], at: int) -> bool:
    """ "panca riscaldamento bilanciere x10", "riscaldamento panca bilanciere x10"."""
    start = at - 1
    while kind_at(pieces, start) in LEADING_TO_THE_BAR:
        start -= 1
    return kind_at(pieces, start) is K.WARMUP


def _reps_alone(pieces: Sequence[Piece], at: int) -> bool:
    """ "x10", "10", "2x10", and no load of theirs."""
    kinds = kinds_in_order(pieces[at : at + 4])
    end = next((place for place, kind in enumerate(kinds) if kind not in (K.NUMBER, K.TIMES, K.REPS)), len(kinds))
    return kinds[:end] in COUNTS_ALONE and _loads_nothing(pieces[: at + end], at)


LEADING_TO_THE_BAR = frozenset((K.WITH, K.FILLER, K.COLON, K.NAME))
COUNTS_ALONE = ([K.TIMES, K.NUMBER], [K.NUMBER], [K.NUMBER, K.REPS], [K.NUMBER, K.TIMES, K.NUMBER])

"""Sets told beside those that were done in their place: "squat 3x5 100 instead of front squat 3x5 80" is squats alone.

done = sets INSTEAD-OF undone [ end ]              squat 3x5 100 rather than front squat 3x5 80
     | INSTEAD-OF undone [ "," ] lift sets         instead of front squat 3x5 80, squat 3x5 100
undone = lift sets
A load alone is the remark of `reasons_behind`; sets of the same lift, and those with more behind, are asked about.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.ahead import aside, kind_at
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, first_place, kinds_in_order, places_of

OF_SETS = frozenset(
    (K.NAME, K.NUMBER, K.TIMES, K.KG, K.LB, K.AT, K.FOR, K.OF, K.WITH, K.FILLER, K.REPS, K.SETS, K.SLASH)
)
ENDS = frozenset((None, K.COMMA, K.STOP, K.LINE, K.CLOSE, K.THEN, K.DASH))
OPENING = frozenset((K.FILLER, K.DATE, K.TODAY))
LIFT, SETS = frozenset((K.NAME,)), frozenset((K.TIMES,))
LONGEST = 24
"""Pieces of what was not done. Common practice, no source."""


def with_done_instead(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with what was not done made a remark."""
    kinds_told = kinds_in_order(pieces)
    opening = next((at for at, kind in enumerate(kinds_told) if kind not in OPENING), len(pieces))
    both = max(first_place(LIFT, kinds_told), first_place(SETS, kinds_told))
    for at in reversed(places_of(K.NOT, kinds_told)):
        end = _end_of_the_undone(pieces, at)
        kinds = kinds_in_order(pieces[at + 1 : end])
        if K.TIMES not in kinds or kinds[0] is not K.NAME:
            continue
        sets_ahead = both < at
        behind = kinds_in_order(pieces[end : end + LONGEST])
        opens = at <= opening and {K.NAME, K.TIMES} <= set(behind)
        told = sets_ahead and kind_at(pieces, end) in ENDS
        if opens or told:
            said = aside(pieces[at])._replace(end=pieces[end - 1].end)
            pieces = [*pieces[:at], said, *pieces[end + opens * (kind_at(pieces, end) is K.COMMA) :]]
        elif sets_ahead:
            pieces = [*pieces[:at], pieces[at]._replace(kind=K.UNCLEAR), *pieces[at + 1 :]]
    return pieces


def _end_of_the_undone(pieces: Sequence[Piece], at: int) -> int:
    """Where the sets behind the word end: at a sign, or at the next lift."""
    end = at + 1
    while end < min(len(pieces), at + 1 + LONGEST) and pieces[end].kind in OF_SETS:
        if pieces[end].kind is K.NAME and end > at + 1:
            break
        end += 1
    return end

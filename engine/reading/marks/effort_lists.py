"""Efforts listed behind the sets and ahead of their scale, one for each: "100x5, 102.5x5, 105x5, 7, 8, 9 rpe".

listed = sets EFFORT ( "," EFFORT )... SCALE      as many as sets stand in front
They rise, or fall where they tell what was left. Two that may as well be the reps of one more set and its effort
("80x8, 80x8, 7, 9 rpe"), and those that do neither, are asked about. Common practice, no source.
"""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from itertools import pairwise
from typing import NamedTuple

from engine.reading.words.ahead import kind_at
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_SETS, Piece, Role
from engine.values.effort import TOP_OF_SCALE

LINKS = frozenset((K.COMMA, K.SLASH, K.AND, K.OPEN, K.STOP, K.DASH))
REACH = 80
"""Pieces of sets that have efforts listed behind them. Common practice, no source."""
FEW = 2


class Listed(NamedTuple):
    """Where the efforts begin among the pieces, and their values; whether they are plainly efforts."""

    start: int
    values: list[Decimal]
    plain: bool


def listed_ahead(pieces: Sequence[Piece], scale: K) -> Listed | None:
    """The efforts that end these pieces, one for each set in front of them; None where no such list stands there."""
    run = _small_numbers(pieces)
    count = _how_many(pieces, run)
    if count < FEW:
        return None
    values = [pieces[at].value for at in run[-count:]]
    reps = [pieces[at].value for at in run[:-count]]
    rising = all(low <= high for low, high in pairwise(values if scale is K.RPE else values[::-1]))
    beyond = all(one < values[0] for one in reps)
    if len(reps) > 1 and not (count > FEW and rising and beyond):
        return None  # "80x8, 8, 7, 9 rpe" lists reps, and the effort of the last
    return Listed(run[-count], values, rising and (count > FEW or beyond))


def _small_numbers(pieces: Sequence[Piece]) -> list[int]:
    """The places of the small numbers that end the pieces, up to the reps of a pair or another number."""
    run: list[int] = []
    at = len(pieces) - 1
    while at >= 0:
        piece = pieces[at]
        small = piece.kind is K.NUMBER and piece.role is Role.BARE and 0 <= piece.value <= TOP_OF_SCALE
        if not small and piece.kind not in LINKS:
            break
        if small:
            run.append(at)
            if kind_at(pieces, at - 1) is K.TIMES:
                break
        at -= 1
    return run[::-1]


def _how_many(pieces: Sequence[Piece], run: Sequence[int]) -> int:
    """How many of those numbers are efforts, where as many sets stand in front of them; 0 where they do not."""
    if len(run) < FEW:
        return 0
    furthest = max(run[0] - REACH, 0)
    start = next((at + 1 for at in range(run[0] - 1, furthest - 1, -1) if pieces[at].kind is K.LINE), furthest)
    crosses = [at for at in range(start, run[0]) if pieces[at].kind is K.TIMES]
    firsts = [pieces[at - 1].value for at in crosses if at and pieces[at - 1].kind is K.NUMBER]
    if len(firsts) < len(crosses) or any(b - a == FEW for a, b in pairwise(crosses)):
        return 0  # "100x5x3"
    if not crosses:
        headed = kind_at(pieces, run[0] - 1) is K.NUMBER
        return len(run) // FEW if headed and len(run) % FEW == 0 and len(run) > FEW else 0
    if kind_at(pieces, run[0] - 1) is not K.TIMES:
        return len(run) if len(crosses) == 1 and firsts[0] == len(run) else 0  # "3x5 100 7, 8, 9 rpe"
    told = len(crosses) - 1 + len(run)
    return told // FEW if told % FEW == 0 and min(firsts) > MOST_SETS and told // FEW < len(run) else 0

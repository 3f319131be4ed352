"""Ladders told by their ends: "push ups 10 to 1", "pull ups 1-5-1", "dips 10, 9, 8 ... 1".

ladder = end TO end [ TO end ] [ "by" step ]        TO: "-" | "->" | "to" | "down to" | ".."
The ends alone may be meant, or the rungs between them, too: both are read, and it is asked.
"""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from itertools import pairwise

from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import cues_told, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role, kinds_in_order, places_of, texts_in_order

SIGNS = ([K.DASH], [K.ARROW], [K.DROP])
TO = frozenset(("upto", "spanlink", "untilday", "through"))
LADDERS = frozenset(("ladder",))
AMID = frozenset((K.FILLER, K.NOTE, K.DROP, K.NOT_DATE, K.PLAIN))
BETWEEN_ENDS = AMID | {K.DASH, K.ARROW, K.STOP}
REACH = 5
"""Pieces between two ends: "10 all the way down to 1". Common practice, no source."""
COUNTS = frozenset((Role.BARE, Role.REPS))
FEWEST_STEPS, STEPS_IN_WORDS = 3, 2
"""So far apart the ends of a ladder are where a sign parts them, or a word. Common practice, no source."""
LOWEST = 2
"""From so many reps down nobody goes in two sets from four times as many. Common practice, no source."""
FALLS_FAR = 4
NO_REPS_BEHIND = frozenset(
    (K.TIMES, K.AT, K.DASH, K.SLASH, K.PLUS, K.RPE, K.RIR, K.REST, K.TEMPO, K.PAUSE, K.SETTING, K.PIN, K.PLATE)
)
"""Kinds behind which a number is no end of a ladder."""
NO_REPS_AHEAD = frozenset((K.DASH, K.SLASH, K.PLUS, K.RPE, K.RIR, K.RESERVE, K.REST, K.PLATE, K.COLON, K.OUT_OF))
"""Kinds ahead of which it is none."""


def with_rungs(pieces: list[Piece]) -> list[Piece] | None:
    """The pieces with all rungs of the ladders whose ends are told; None where there are no such ends."""
    kinds = kinds_in_order(pieces)
    numbers = places_of(K.NUMBER, kinds)
    led = K.TEMPO not in kinds and any(
        [kinds[high - 1] in BETWEEN_ENDS and _leads(pieces, low, high) for low, high in pairwise(numbers)]
    )
    if not led:
        return None
    called = not LADDERS.isdisjoint(cues_told(texts_in_order(pieces)))
    out: list[Piece] = []
    behind = 0
    for place, first in enumerate(numbers):
        ends = _ends(pieces, numbers[place : place + 3], called=called) if first >= behind else []
        rungs = _rungs(pieces, ends) if ends else []
        if rungs:
            out += [*pieces[behind:first], *rungs]
            behind = ends[-1] + 1 + 2 * bool(_step_told(pieces, ends))
    return [*out, *pieces[behind:]] if behind else None


def _ends(pieces: Sequence[Piece], numbers: Sequence[int], *, called: bool) -> list[int]:
    """The places of the ends of a ladder that begins with the first of these numbers, with the place where it turns
    among them; none where it is no ladder.
    """
    if len(numbers) < 2 or kind_at(pieces, numbers[0] - 1) in NO_REPS_BEHIND or not _leads(pieces, *numbers[:2]):
        return []
    turning = numbers[2:] and _leads(pieces, *numbers[1:])
    ends = list(numbers) if turning else list(numbers[:2])
    counted = all(pieces[at].role in COUNTS and pieces[at].value <= MOST_LOADED_REPS for at in ends)
    if not counted or kind_at(pieces, ends[-1] + 1) in NO_REPS_AHEAD:
        return []
    if turning:
        turned = pieces[ends[0]].value == pieces[ends[2]].value
        return ends if turned and _steps(pieces, ends) >= FEWEST_STEPS else []
    return ends if _may_be_ends(pieces, ends, called=called) else []


def _leads(pieces: Sequence[Piece], low: int, high: int) -> bool:
    """Whether a sign, or words that end in one for "to", stand between these two numbers, and nothing else."""
    amid = pieces[low + 1 : high]
    kinds = [piece.kind for piece in amid]
    if kinds in SIGNS or _is_left_out(kinds):
        return True
    return 0 < len(amid) <= REACH and AMID.issuperset(kinds) and is_cued(amid[-1].text, TO)


def _is_left_out(kinds: Sequence[K]) -> bool:
    """ "10 ... 1", "10..1"."""
    stops = [kind for kind in kinds if kind is not K.COMMA]
    return len(stops) > 1 and stops.count(K.STOP) == len(stops)


def _steps(pieces: Sequence[Piece], ends: Sequence[int]) -> int:
    return int(abs(pieces[ends[0]].value - pieces[ends[1]].value))


def _may_be_ends(pieces: Sequence[Piece], ends: Sequence[int], *, called: bool) -> bool:
    """Whether rungs may lie between two ends: "10 to 8", "10-1"; "12-8" lists two sets, "8-10" is a range."""
    first, second = pieces[ends[0]].value, pieces[ends[1]].value
    steps, kinds = _steps(pieces, ends), [piece.kind for piece in pieces[ends[0] + 1 : ends[1]]]
    if _is_left_out(kinds) and not pieces[ends[1]].glued:
        return min(first, second) == 1 or kind_at(pieces, ends[0] - 1) is K.NUMBER
    if called or steps < STEPS_IN_WORDS:
        return steps >= STEPS_IN_WORDS
    if first < second:
        return first == 1 and steps >= FEWEST_STEPS
    far = second <= LOWEST and first >= FALLS_FAR * second and steps >= FEWEST_STEPS
    return far or (kinds not in SIGNS and not _is_left_out(kinds))


def _step_told(pieces: Sequence[Piece], ends: Sequence[int]) -> int:
    """ "20 to 2 by 2s"; 0 where no step is told behind the ends."""
    by = kind_at(pieces, ends[-1] + 1) is K.BY and kind_at(pieces, ends[-1] + 2) is K.NUMBER
    return int(pieces[ends[-1] + 2].value) if by else 0


def _step(pieces: Sequence[Piece], ends: Sequence[int]) -> int:
    """How far apart the rungs are: as far as those told ahead of "...", or by one."""
    told = _step_told(pieces, ends)
    before = ends[0] - 1 - (kind_at(pieces, ends[0] - 1) is K.COMMA)
    listed = kind_at(pieces, before) is K.NUMBER and _is_left_out(
        [piece.kind for piece in pieces[ends[0] + 1 : ends[1]]]
    )
    return told or (int(abs(pieces[before].value - pieces[ends[0]].value)) if listed else 0) or 1


def _rungs(pieces: Sequence[Piece], ends: Sequence[int]) -> list[Piece]:
    """All rungs, joined by dashes; none where so far apart they do not meet the ends."""
    step = _step(pieces, ends)
    out = [pieces[ends[0]]]
    dash = out[0]._replace(kind=K.DASH, text="-", glued=True, role=Role.BARE, start=out[0].end)
    for low, high in pairwise(ends):
        at, end = int(pieces[low].value), int(pieces[high].value)
        if (end - at) % step:
            return []
        told = range(at + step, end + 1, step) if at < end else range(at - step, end - 1, -step)
        out += [
            piece
            for reps in told
            for piece in (dash, pieces[high]._replace(text=str(reps), value=Decimal(reps), glued=True))
        ]
    return out

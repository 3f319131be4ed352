"""A warm-up that is only told of: "warmed up with the bar, squat 3x5 100", "short warm-up, bench 3x8 60".

told   = [ name ] ... WARM-UP ... END    no number in it; "warmed up", or what it was done with or was like beside it
denied = NO WARM-UP                      "bench 3x8 60 no warm-up"
loads  = WARM-UP LOAD+ END LOAD      without reps, and a heavier load behind them: "warmed up to 100, then 110 5 5 5"
beside = sets at a load, BAR ... WARM-UP     no number between them: "bench 3x8 60 bar only for warm-up"
A word alone ("warm-up, squat 60x5") and one with a colon head what stands behind them and are left so. Those that tell
what was done are cues of the language files ("warmed"), and so are the words for how ("warmedhow").
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.ahead import aside, kind_at
from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.pieces import (
    COUNTED,
    MOST_LOADED_REPS,
    Piece,
    Role,
    kinds_in_order,
    kinds_of,
    places_in,
    places_of,
)

ENDS = frozenset((K.COMMA, K.STOP, K.LINE, K.THEN, K.DASH, K.OPEN, K.CLOSE))
MAY_END = ENDS | {K.AND}
USED = frozenset((K.BAR, K.BAND, K.UNRELATED))
DONE_WITH = USED | {K.WITH, K.NOTE}
DENIED = frozenset((K.DENY, K.NEVER, K.NOT))
TO_GET_WARM = 1
"""What a WARMUP piece's `told` says of "to get warm": it speaks of the sets before it, and heads none."""
LEAST_WITH_A_LOAD = 3
"""Sets, reps and a load."""


def tells_what_was_done(piece: Piece) -> bool:
    """Whether the word says that somebody has warmed up, and so heads nothing."""
    return piece.kind is K.WARMUP and (piece.told == TO_GET_WARM or "warmed" in CUES_OF[piece.text])


def without_warm_ups_told(pieces: list[Piece]) -> list[Piece]:
    """The pieces with each warm-up that is only told of made a remark, and the empty bar that it was done with."""
    pieces = _without_talk_of_warming(_with_bars_behind(pieces))
    kinds = kinds_in_order(pieces)
    out: list[Piece] = []
    behind = 0
    for at in places_of(K.WARMUP, kinds):
        if at < behind:
            continue
        start, end = at, at + 1
        while start > behind and not _ends_a_clause(pieces, kinds, start - 1):
            start -= 1
        while end < len(pieces) and not _ends_a_clause(pieces, kinds, end):
            end += 1
        clause = pieces[start:end]
        if _tells_loads_alone(clause, pieces, end):
            told = [aside(piece) if piece.kind in (K.NUMBER, K.WARMUP) else piece for piece in clause]
        else:
            told = _told(clause) if end < len(pieces) else _beside_sets(clause)
        out += [*pieces[behind:start], *told]
        behind = end
    return out + pieces[behind:]


def _tells_loads_alone(clause: Sequence[Piece], pieces: Sequence[Piece], end: int) -> bool:
    """ "warmed up to 100, then 110 5 5 5", "wu: 60 80 100. work: 110 5 5": no reps, and a heavier load behind them."""
    kinds = kinds_of(clause)
    loads = [piece for piece in clause if piece.kind is K.NUMBER]
    if not loads or not REPS_TOLD.isdisjoint(kinds) or not all(map(_is_a_load, loads)):
        return False
    first = next((at for at in range(end, len(pieces)) if pieces[at].kind is K.NUMBER), len(pieces))
    places = range(first, len(pieces))
    work = next((pieces[at] for at in places if pieces[at].kind is K.NUMBER and _is_a_load(pieces[at])), loads[0])
    leads = work in pieces[first : first + 1] or kind_at(pieces, first + 1) is K.TIMES
    return leads and work.value > max(load.value for load in loads)


REPS_TOLD = frozenset((K.TIMES, K.COUNT, K.FOR, K.REPS, K.SLASH, K.AT))


def _is_a_load(number: Piece) -> bool:
    return number.value > MOST_LOADED_REPS and number.role in (Role.BARE, Role.LOAD)


def _ends_a_clause(pieces: Sequence[Piece], kinds: Sequence[K], at: int) -> bool:
    return kinds[at] in MAY_END and (kinds[at] in ENDS or _goes_on_to_work(pieces, at))


def _without_talk_of_warming(pieces: list[Piece]) -> list[Piece]:
    """ "squat 3x5 100 long warm-up": how long the other one was, and no word for these sets."""
    talked = [
        at for at in places_of(K.WARMUP, kinds_in_order(pieces)) if at and "warmedlong" in CUES_OF[pieces[at - 1].text]
    ]
    ending = [at for at in talked if at + 1 == len(pieces) or pieces[at + 1].kind in ENDS]
    told = [at for at in ending if not COUNTED.isdisjoint([piece.kind for piece in pieces[:at]])]
    return [piece._replace(kind=K.NOTE) if at in told else piece for at, piece in enumerate(pieces)] if told else pieces


def _with_bars_behind(pieces: list[Piece]) -> list[Piece]:
    """ "bar warm-up 2x10": the bar is what those sets were done with."""
    for at in places_of(K.BAR, kinds_in_order(pieces)):
        if [piece.kind for piece in pieces[at + 1 : at + 3]] == [K.WARMUP, K.NUMBER]:
            return [*pieces[:at], pieces[at + 1], pieces[at], *pieces[at + 2 :]]
    return pieces


def _goes_on_to_work(pieces: Sequence[Piece], at: int) -> bool:
    """ "warmed up with the bar and did squat 3x5"."""
    behind = [piece for piece in pieces[at + 1 : at + 3] if piece.kind is not K.FILLER]
    return pieces[at].kind is K.AND and bool(behind) and behind[0].kind in (K.NAME, K.GOT)


def _told(clause: list[Piece]) -> list[Piece]:
    kinds = kinds_of(clause)
    if K.WARMUP not in kinds or not COUNTED.isdisjoint(kinds) or clause[-1].kind is K.COLON:
        return _beside_sets(clause)
    if K.COLON in kinds and K.BAR not in kinds:
        return clause  # "warm-up: easy, 60x5"
    described = (
        not DONE_WITH.isdisjoint(kinds)
        or _is_told_about(clause)
        or any("warmedhow" in CUES_OF[piece.text] for piece in clause)
    )
    if not described and not any(map(tells_what_was_done, clause)):
        return _without_denied(clause) if not kinds.isdisjoint(DENIED) else clause
    return [piece._replace(kind=K.NOTE) if piece.kind in (K.WARMUP, K.BAR) else piece for piece in clause]


def _is_told_about(clause: Sequence[Piece]) -> bool:
    """ "warm-up took ages": words that no list knows behind it."""
    at = next(at for at, piece in enumerate(clause) if piece.kind is K.WARMUP)
    return any(piece.kind is K.PLAIN for piece in clause[at + 1 :])


def _beside_sets(clause: list[Piece]) -> list[Piece]:
    """The clause without warm-ups that were not done, or that tell of no set in it."""
    kinds = kinds_of(clause)
    if K.WARMUP not in kinds:
        return clause
    if not kinds.isdisjoint(DENIED):
        clause = _without_denied(clause)
    aside = K.WARMUP in kinds_of(clause) and not kinds.isdisjoint(USED) and not kinds.isdisjoint(COUNTED)
    return _without_those_beside(clause) if aside else clause


def _without_denied(clause: list[Piece]) -> list[Piece]:
    """ "no warm-up", "didn't warm up": it speaks of no set."""
    out: list[Piece] = []
    denied = 0
    for piece in clause:
        if denied and piece.kind is K.WARMUP:
            piece = piece._replace(kind=K.NOTE)
            out[denied - 1] = out[denied - 1]._replace(kind=K.NOTE)
        out.append(piece)
        if piece.kind is not K.FILLER:
            denied = len(out) if piece.kind in DENIED else 0
    return out


def _without_those_beside(clause: list[Piece]) -> list[Piece]:
    """ "3x8 60 bar only for warm-up", "bar for warm-up 3x8 60": the bar was the warm-up, and the sets have their load.

    "2x10 bar warm-up" and "3x8 60, bar 2x10 warm-up" tell warm-ups of their own.
    """
    if not _tells_a_load(clause):
        return clause
    kinds = kinds_in_order(clause)
    at = kinds.index(K.WARMUP)
    counts = places_in(COUNTED, kinds)
    start, end = (
        max((one + 1 for one in counts if one < at), default=0),
        min((one for one in counts if one > at), default=len(kinds)),
    )
    told = kinds[start:end]
    if USED.isdisjoint(told) or K.TIMES in told or (end < len(kinds) and kinds.count(K.TIMES) > 1):
        return clause
    return [
        piece._replace(kind=K.NOTE) if start <= place < end and piece.kind in REMARKED else piece
        for place, piece in enumerate(clause)
    ]


REMARKED = USED | {K.WARMUP}


def _tells_a_load(clause: Sequence[Piece]) -> bool:
    numbers = [piece for piece in clause if piece.kind is K.NUMBER]
    plainly = any(piece.role is Role.LOAD or piece.value > MOST_LOADED_REPS for piece in numbers)
    crossed = any(piece.kind is K.TIMES for piece in clause)
    return crossed and (plainly or len(numbers) >= LEAST_WITH_A_LOAD)

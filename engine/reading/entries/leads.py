"""Numbers in front of the first name of a message: whose they are, or that they are no sets.

lead = "warm up" loads ( "then" | "," ) name      list ( "," | "and" ) NUMBER name      load "and" name reps
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.kinds import K
from engine.reading.words.pieces import COUNTED, MOST_LOADED_REPS, Piece, Role

BEFORE_A_WARM_UP = frozenset((K.FILLER, K.NOTE, K.THEN, K.AND, K.DASH, K.EACH, K.OF, K.OPEN))
NO_REPS = frozenset((Role.SECONDS, Role.METRES, Role.NOT_A_SET))


def warms_up(lead: Sequence[Piece]) -> bool:
    """ "warmed up with the bar for 10 and 50 for 5, then benched 70", "empty bar x12, bench 3x5 60": loads of the lift
    that is named behind them.
    """
    if not lead:
        return False
    kinds = [piece.kind for piece in lead if piece.kind not in BEFORE_A_WARM_UP]
    loaded = K.BAR in kinds or any(_is_heavy(piece) for piece in lead)
    return kinds[:1] in ([K.WARMUP], [K.BAR]) and loaded and K.UNRELATED not in kinds


def leads_to(lead: Sequence[Piece], cut: Piece | None, named: Sequence[Piece], at: int) -> bool:
    """ "8, 8 and 6 on bench with 70": a list whose last number stands in front of the name; "put 100 on the bar and
    squatted it for 5": a load, and then the lift with its reps.

    Shape: `named` is the clause behind the separator `cut`; its name stands at `at`.
    """
    if cut is None or cut.kind not in (K.AND, K.COMMA):
        return False
    behind = [place for place, piece in enumerate(named) if piece.kind in COUNTED]
    if not behind:
        return False
    counted = [piece for piece in lead if piece.kind in COUNTED]
    if any(piece.role in NO_REPS for piece in counted):
        return False
    plain = not any(_is_heavy(piece) or piece.role in (Role.PLURAL, Role.CHANGE) for piece in counted)
    if plain and behind[0] == 0 < at and all(piece.kind is not K.TIMES for piece in lead):
        return True
    loaded = len(counted) == 1 and _is_heavy(counted[0])
    return loaded and behind[0] > at and not any(_is_heavy(named[place]) for place in behind)


def _is_heavy(piece: Piece) -> bool:
    return piece.role is Role.LOAD or piece.value > MOST_LOADED_REPS


def stands_between_sets(clause: Sequence[Piece], at: int) -> bool:
    """ "3x6 85 row 3x10 60", "85x6 row 60x10": whole sets in front of the name, and whole sets behind it.

    Those in front are of the lift before; in "60 row 3x10", "3x10 row 60" each side tells a part.
    """
    ahead, behind = clause[:at], clause[at + 1 :]
    if not ahead or not FIGURES.issuperset([piece.kind for piece in ahead]):
        return False
    return _are_whole(ahead) and _are_whole(behind) and not rises_to_the_lift(clause, at)


def rises_to_the_lift(clause: Sequence[Piece], at: int) -> bool:
    """ "60x5 80x3 squat 100x5": pairs in front of the name whose loads rise to those behind it, as its own do."""
    heads = [
        piece.value
        for place, piece in enumerate(clause)
        if piece.kind is K.NUMBER and [one.kind for one in clause[place + 1 : place + 3]] == [K.TIMES, K.NUMBER]
    ]
    crossed = [piece.kind for piece in clause[:at]].count(K.TIMES)
    loads = 0 < crossed < len(heads) and all(head > MOST_LOADED_REPS for head in heads)
    return loads and heads == sorted(heads) and heads[crossed - 1] < heads[crossed]


def _are_whole(pieces: Sequence[Piece]) -> bool:
    """Whether a pair, or several bare numbers of which the last can be reps, are told, and no implements: "2x24kg"."""
    kinds = [piece.kind for piece in pieces]
    numbers = [piece for piece in pieces if piece.kind is K.NUMBER]
    if len(numbers) < PAIR or numbers[0].role is Role.SETS or any(one.role in NO_REPS for one in numbers):
        return False
    if K.TIMES in kinds:
        at = kinds.index(K.TIMES)
        crossed = kinds[at - 1 : at + 2 : PAIR] == [K.NUMBER, K.NUMBER] if at else False
        return crossed and pieces[at + 1].role not in OF_LOADS
    return numbers[-1].role in (Role.BARE, Role.REPS) and numbers[-1].value <= MOST_LOADED_REPS


PAIR = 2
OF_LOADS = frozenset((Role.LOAD, Role.PLURAL))
FIGURES = frozenset((K.NUMBER, K.TIMES, K.AT, K.KG, K.LB, K.REPS, K.SLASH, K.EFFORT, K.WITH, K.FOR))


def is_aside(lead: Sequence[Piece]) -> bool:
    """Words with a number in them ahead of the first exercise ("lifted with 2 friends"), and no shape of a set."""
    kinds = [piece.kind for piece in lead]
    if {K.NUMBER, K.PARTIAL} <= set(kinds) and kinds.count(K.NUMBER) == 1 and K.TIMES not in kinds:
        return True  # "3s negatives, chins 5 5 4"
    counted = [piece for piece in lead if piece.kind in COUNTED or piece.kind is K.BAR]
    few = len(counted) <= 1 and all(piece.role is Role.BARE for piece in counted)
    return K.PLAIN in kinds and few and not {K.TIMES, K.AT, K.FOR} & set(kinds)

"""Sets told once for several lifts: "curls and pushdowns both 3x15/3x12", "squat and leg press 3x10, 80 and 160".

shares = pair ( "/" | "and" | "," ) pair ...            a pair of sets and reps for each lift, in the order named
       | counts load ( "/" | "and" | "," ) load ...     the same counts for all, and a load for each
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.kinds import K
from engine.reading.pieces import Piece, Role

PARTING = frozenset((K.SLASH, K.AND, K.COMMA, K.PLUS))
LINKS = frozenset((K.AT, K.WITH, K.FILLER, K.COLON, K.BOTH, K.EACH, K.LINE))
MOST_LOADED_REPS = 30
SAID_TOGETHER = frozenset((K.AND, K.SLASH, K.PLUS, K.COMMA))


def shares(pieces: Sequence[Piece], lifts: int) -> list[list[Piece]]:
    """The pieces of each lift, as many as `lifts`; empty where the numbers do not part so."""
    told = [piece for piece in pieces if piece.kind is not K.BOTH]
    while told and (told[0].kind in PARTING or told[0].kind is K.FILLER):
        del told[0]
    return _pairs(told, lifts) or _loads(told, lifts)


def _pairs(told: list[Piece], lifts: int) -> list[list[Piece]]:
    parts: list[list[Piece]] = [[]]
    for piece in told:
        if piece.kind in PARTING:
            parts.append([])
        else:
            parts[-1].append(piece)
    plain = all(_is_pair(part) for part in parts)
    return parts if len(parts) == lifts and plain else []


def _is_pair(part: list[Piece]) -> bool:
    kinds = [piece.kind for piece in part]
    return kinds[:3] == [K.NUMBER, K.TIMES, K.NUMBER] and kinds.count(K.TIMES) == 1


def _loads(told: list[Piece], lifts: int) -> list[list[Piece]]:
    start = len(told)
    loads: list[Piece] = []
    while start and (told[start - 1].kind in PARTING or _is_load(told[start - 1])):
        start -= 1
        if told[start].kind is K.NUMBER:
            loads.insert(0, told[start])
        if len(loads) == lifts:
            break
    head = told[:start]
    while head and (head[-1].kind in PARTING or head[-1].kind in LINKS):
        head.pop()
    counted = any(piece.kind in (K.TIMES, K.COUNT) or piece.role in (Role.SETS, Role.REPS) for piece in head)
    parted = [piece.kind for piece in told[start:]]
    if len(loads) != lifts or not counted or any(_is_load(piece) for piece in head) or len(parted) != 2 * lifts - 1:
        return []
    return [[*head, load] for load in loads]


def _is_load(piece: Piece) -> bool:
    if piece.kind is not K.NUMBER:
        return False
    return piece.role in (Role.LOAD, Role.PLURAL) or (piece.role is Role.BARE and piece.value > MOST_LOADED_REPS)

"""The bench that one lies on, which is no lift: "incline press, bench on hole 3", "bench at 30°", "on bench 4"."""

from __future__ import annotations

from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role

FURNITURE = "bench"
STOOD_AT = frozenset(("stoodat",))


def without_furniture(pieces: list[Piece]) -> list[Piece]:
    """ "incline press, bench on hole 3", "bench at 30°": what one lies on, and how it was set."""
    out: list[Piece] = []
    for at, piece in enumerate(pieces):
        behind = at + 1
        while behind < len(pieces) and pieces[behind].kind in (K.FILLER, K.WITH):
            behind += 1
        is_set = behind < len(pieces) and (pieces[behind].kind is K.SETTING or _is_angle(pieces, behind))
        numbered = _stands_on_a_number(pieces, at) or _is_set_on_a_number(pieces, at, behind)
        furniture = piece.kind is K.NAME and piece.text == FURNITURE and any(p.kind is K.NAME for p in out)
        kind = K.SETTING if numbered else K.NOTE
        out.append(piece._replace(kind=kind, names=()) if furniture and (is_set or numbered) else piece)
    return out


def _is_angle(pieces: list[Piece], at: int) -> bool:
    """ "30°", "30 degrees"."""
    behind = pieces[at + 1].kind if at + 1 < len(pieces) else None
    return pieces[at].kind is K.NUMBER and (pieces[at].text.endswith("°") or behind is K.SETTING)


def _is_set_on_a_number(pieces: list[Piece], at: int, behind: int) -> bool:
    """ "incline press 3x10 30, bench on 3": the hole, and no reps; `behind`: the place behind the words."""
    number = pieces[behind] if behind < len(pieces) and behind > at + 1 else None
    if number is None or number.kind is not K.NUMBER or number.role is not Role.BARE or number.value > MOST_HOLES:
        return False
    after = pieces[behind + 1].kind if behind + 1 < len(pieces) else None
    return after in ENDS and is_cued(pieces[behind - 1].text, STOOD_AT)


ENDS = frozenset((None, K.COMMA, K.STOP, K.LINE, K.CLOSE, K.DASH))
MOST_HOLES = 12
"""More places a bench has not. Common practice, no source."""


def _stands_on_a_number(pieces: list[Piece], at: int) -> bool:
    """ "on bench 4": which of them it was, at the end of a clause."""
    behind = [piece.kind for piece in pieces[at + 1 : at + 3]]
    ends = behind in ([K.NUMBER], [K.NUMBER, K.COMMA], [K.NUMBER, K.STOP], [K.NUMBER, K.LINE], [K.NUMBER, K.CLOSE])
    return at > 0 and ends and is_cued(pieces[at - 1].text, STOOD_AT)

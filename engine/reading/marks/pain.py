"""Pain and warning signs in a message, and whether they are denied.

Joint pain, injury, dizziness, chest and breath signs count. Sore muscles from an earlier day do not; nor does "no
pain".
"""

from __future__ import annotations

from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece

NEAR_DENIAL = 4
NEAR_JOINT = 4
SIGNS = frozenset((K.PAIN, K.SORE))
SENTENCE = frozenset((K.LINE, K.STOP, K.COMMA, K.QUESTION))
EARLIER = frozenset((K.NOT_DATE, K.LAST_TIME, K.SAYING, K.YESTERDAY, K.WEEKDAY))


def tells_pain(pieces: list[Piece]) -> bool:
    """Whether the message tells of pain now."""
    return any(_is_pain(pieces, at) for at, piece in enumerate(pieces) if piece.kind in SIGNS)


def _is_pain(pieces: list[Piece], at: int) -> bool:
    before = _until_cut(pieces[max(0, at - NEAR_DENIAL) : at][::-1])
    after = _until_cut(pieces[at + 1 : at + 1 + NEAR_JOINT])
    if any(piece.kind in (K.DENY, K.NOT, K.OTHERS) for piece in before) or any(
        piece.text in ("free", "gone") for piece in after[:2]
    ):
        return False
    if pieces[at].kind is K.PAIN:
        said_of = next((piece.kind for piece in before if piece.kind is not K.NUMBER), None)
        return said_of is not K.UNRELATED  # "locker 14 jammed"
    near = (*before, *after)
    return any(piece.kind is K.JOINT for piece in near) and not any(piece.kind in EARLIER for piece in near)


def _until_cut(pieces: list[Piece]) -> list[Piece]:
    out: list[Piece] = []
    for piece in pieces:
        if piece.kind in SENTENCE:
            break
        out.append(piece)
    return out

"""A letter behind a number that counts sets where another one counts reps: "4s 12r", "2s/4r".

Elsewhere "12s" is a pair of dumbbells, or seconds.
"""

from __future__ import annotations

from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role


def with_sets_lettered(pieces: list[Piece]) -> list[Piece]:
    """The pieces with "4s" for sets; "2s/4r" tells as much as "2s 4r"."""
    counted = [_as_sets(piece) for piece in pieces]
    if K.SLASH not in [piece.kind for piece in counted]:
        return counted
    roles = [piece.role for piece in counted]
    ends = len(counted) - 1
    return [
        piece
        for at, piece in enumerate(counted)
        if piece.kind is not K.SLASH or not 0 < at < ends or {roles[at - 1], roles[at + 1]} != {Role.SETS, Role.REPS}
    ]


def _as_sets(piece: Piece) -> Piece:
    """Where reps carry their letter ("12r"), a small "4s" counts sets."""
    small = piece.role is Role.PLURAL and piece.value <= 10
    return piece._replace(role=Role.SETS) if small else piece

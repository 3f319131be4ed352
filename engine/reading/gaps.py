"""A number that could not be read, and the answer that tells it: "bench 3x5 1?5" | "105".

The message waits with a gap where the number stood; a number alone fills it, and all of it is read again.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.prepare import Prepared
from engine.reading.words.pieces import Piece, Role

GAP = "\N{HORIZONTAL ELLIPSIS}"


def with_a_gap(pieces: Sequence[Piece], prepared: Prepared) -> str:
    """The message with a gap in place of its only unreadable number; empty where it has none, or several."""
    broken = [piece for piece in pieces if piece.role is Role.UNREADABLE]
    if len(broken) != 1 or GAP in prepared.cleaned:
        return ""
    return (prepared.cleaned[: broken[0].start] + GAP + prepared.cleaned[broken[0].end :]).strip()


def filled(text: str, told: str) -> str:
    """The message with what was told in its gap; empty where it has none."""
    return text.replace(GAP, told) if text.count(GAP) == 1 else ""

"""A mark of a set that is said not to be one, or nearly so: "no misses", "close to failure", "thought I'd fail".

denied = ( "no" | "not" | NEARLY ) between* MARK          MARK: failed, missed, a drop, rest-pause
left   = NUMBER [ "reps" ] NEARLY between* FAILURE        "stopped 2 reps short of failure": two in reserve
What is denied tells what the sets were like, and changes none of them.
"""

from __future__ import annotations

from decimal import Decimal

from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role
from engine.values.effort import Effort

MARKS = frozenset((K.FAILURE, K.MISS, K.DROP, K.REST_PAUSE))
MOST_BETWEEN = 4
MOST_LEFT, MOST_LEFT_BARE = 5, 3
"""Reps that may be left until failure; without a word for reps, more may be those of a set. Common practice, no
source.
"""
DENYING = frozenset((K.DENY, K.NOT))
NEARLY, QUITE, ONE = frozenset(("nearly", "shortof")), frozenset(("quite",)), frozenset(("an",))
SHORT_BY = frozenset(("leftby",))
BETWEEN = frozenset((K.FILLER, K.OF, K.GOT, K.RESERVE_LEFT, K.ONLY, K.COUNT))
PART_OF_A_SET = frozenset((K.NUMBER, K.TIMES, K.AT, K.SLASH, K.DASH, K.PLUS, K.FOR, K.BY, K.NAME, None))


def with_marks_denied(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with marks that were not met made remarks, or the reps that were left until them."""
    out: list[Piece] = []
    for at, piece in enumerate(pieces):
        start = _denied_from(pieces, at) if piece.kind in MARKS else None
        if start is None:
            out.append(piece)
            continue
        left = _reps_left(pieces, start) if piece.kind is K.FAILURE else None
        begin = start if left is None else left[0]
        first = pieces[begin]._replace(kind=K.NOTE, end=piece.end)
        del out[len(out) - (at - begin) :]
        out.append(first if left is None else first._replace(kind=K.EFFORT, efforts=(Effort(left[1]),)))
    return out


def _denied_from(pieces: list[Piece], at: int) -> int | None:
    """Where the words begin that say so of the mark at this place."""
    for place in range(at - 1, max(-1, at - 1 - MOST_BETWEEN), -1):
        before = pieces[place]
        if before.kind in DENYING or _is_near(before):
            return place
        if before.kind not in BETWEEN and not is_cued(before.text, QUITE):
            return None
    return None


def _is_near(piece: Piece) -> bool:
    return piece.kind is K.UNCLEAR or is_cued(piece.text, NEARLY)


def _reps_left(pieces: list[Piece], near: int) -> tuple[int, Decimal] | None:
    """Where the number stands in front of the words, and how many reps it says were left."""
    if pieces[near].kind is not K.UNCLEAR and not is_cued(pieces[near].text, SHORT_BY):
        return None
    at = near - 1
    while at > 0 and (is_cued(pieces[at].text, SHORT_BY | QUITE) or pieces[at].kind is K.REPS):
        at -= 1
    number = pieces[at]
    before = pieces[at - 1].kind if at > 0 else None
    if at < 0 or before in PART_OF_A_SET:
        return None
    if number.kind is K.FILLER and is_cued(number.text, ONE):
        return at, Decimal(1)
    worded = number.role is Role.REPS or any(one.kind in (K.REPS, K.UNCLEAR) for one in pieces[at : near + 1])
    counts = number.kind is K.NUMBER and number.role in (Role.BARE, Role.REPS)
    counts = counts and number.value <= (MOST_LEFT if worded else MOST_LEFT_BARE)
    return (at, number.value) if counts else None

"""The other sets, beside one that is told of: "first set 82.5, the rest 80", "last one rpe 9, the others 8".

remaining = place value ( "," | "and" ) REMAINING [ "was" | "at" ] value

Both values are of one kind: two efforts, two loads, or the reps of both. "Rest 90" alone tells how long somebody
rested; without an article or a verb the number must be what it could be of a set.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from engine.reading.marks.felt import is_effort
from engine.reading.values import Context
from engine.reading.words.kinds import PLACING, K
from engine.reading.words.phrasebook import phrasebook, spoken
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role, last_word
from engine.values.effort import TOP_OF_SCALE, Effort

PLACES = PLACING | {K.SETS}
TO_BE_READ = frozenset((K.RPE, K.RIR, K.RESERVE))
TYING = frozenset((K.AT, K.WITH, K.EFFORT, K.KG, K.LB, K.REPS))
MOST_APART = Decimal("0.3")
"""How far the loads of one lift's sets are apart where "rest 80" may be of sets. Common practice, no source."""


def with_remaining(pieces: list[Piece], context: Context) -> list[Piece]:
    """The pieces with the word for the other sets known as such, and the effort behind it, where a place is told."""
    at = next((at for at, piece in enumerate(pieces) if _names_others(piece)), None)
    if (
        at is None
        or not context.recent
        or any(piece.kind in TO_BE_READ for piece in pieces)
        or not any(piece.kind in PLACES for piece in pieces[:at])
    ):
        return pieces
    value = next(
        (piece for piece in pieces[at + 1 :] if piece.kind in (K.NUMBER, K.EFFORT) and not piece.spelled), None
    )
    before = next((piece for piece in reversed(pieces[:at]) if piece.kind in (K.NUMBER, K.EFFORT)), None)
    if value is None or before is None or not _are_alike(before, value, context, tied=_is_tied(pieces, at)):
        return pieces
    if before.kind is K.EFFORT and value.kind is K.NUMBER:
        given = value._replace(kind=K.EFFORT, efforts=(_as_before(before.efforts[0], value.value),))
        pieces = [given if piece is value else piece for piece in pieces]
    return [*pieces[:at], pieces[at]._replace(kind=K.REMAINING), *pieces[at + 1 :]]


def _names_others(piece: Piece) -> bool:
    words = piece.text.split()
    return piece.kind not in (K.NUMBER, K.NAME) and bool(words) and spoken(words[-1]) in phrasebook().cues["remaining"]


def _is_tied(pieces: Sequence[Piece], at: int) -> bool:
    """Whether an article in front or a verb behind says that sets are meant."""
    behind, book = pieces[at + 1 : at + 3], phrasebook()
    article = at > 0 and pieces[at - 1].kind is K.FILLER and pieces[at - 1].text in ("the", "all the", "all")
    several = len(pieces[at].text.split()) > 1
    return (
        article
        or several
        or any(piece.kind in TYING or spoken(last_word(piece)) in book.copulas for piece in behind if piece.text)
    )


def _are_alike(before: Piece, value: Piece, context: Context, *, tied: bool) -> bool:
    if before.kind is K.EFFORT:
        return value.kind is K.EFFORT or (value.role is Role.BARE and is_effort(value))
    if value.kind is K.EFFORT or value.role in (Role.SECONDS, Role.METRES, Role.SETS):
        return value.kind is K.EFFORT
    done = context.recent[-1].done
    if not tied and done.load is not None and _is_heavy(value) and _is_heavy(before):
        return abs(value.value - done.load.amount) <= done.load.amount * MOST_APART
    return _is_heavy(before) is _is_heavy(value) and (tied or value.value == done.reps)


def _is_heavy(number: Piece) -> bool:
    return number.role is Role.LOAD or number.value > MOST_LOADED_REPS or number.value != int(number.value)


def _as_before(effort: Effort, value: Decimal) -> Effort:
    return replace(effort, rir=TOP_OF_SCALE - value if effort.as_rpe else value)

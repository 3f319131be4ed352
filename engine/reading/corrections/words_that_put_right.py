"""The words of a clause that put something right: "was", "only", "not"; and those that head several clauses."""

from __future__ import annotations

from engine.reading.corrections.said_to_be import in_full, is_be
from engine.reading.prepare import Prepared
from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import DENYING, K

NUMBER_WORDS = frozenset(("loadword", "repword"))
MOVES = frozenset(("moves",))
DENIED = frozenset((K.NUMBER, K.COUNT, K.NAME))


def words_that_say_so(told: Prepared) -> int:
    """How many words put something right: "was", "only", and "not" between what it was and what it was not."""
    pieces = in_full(told)
    return sum(
        piece.kind is K.ONLY or is_be(piece) or (piece.kind in DENYING and at > 0 and kind_at(pieces, at + 1) in DENIED)
        for at, piece in enumerate(pieces)
    )


def head_of(told: Prepared) -> tuple[str, bool]:
    """The words that put right in the first clause, empty for none; and whether each clause names its own lift, as in
    "move the squat to tuesday and the row to friday".
    """
    pieces = in_full(told)
    was = next((at for at in reversed(range(len(pieces))) if is_be(pieces[at])), None)
    if was is not None:
        named = any(piece.kind is K.NAME for piece in told.spoken[:was])
        of_a_number = any(is_cued(piece.text, NUMBER_WORDS) for piece in told.spoken[:was])  # "weight was 82.5, last 7"
        start = told.spoken[was].start if of_a_number else 0
        return "" if named else told.cleaned[start : told.spoken[was].end], False
    first = told.spoken[0]
    return (told.cleaned[: first.end] if is_cued(first.text, MOVES) else ""), True

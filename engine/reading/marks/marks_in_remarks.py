"""Marks inside what was read as a remark: the one that "wasn't to failure" denies, and "the rpe" without its number."""

from __future__ import annotations

from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import DENYING, K
from engine.reading.words.lexicon import lexicon, plain_word
from engine.reading.words.pieces import Piece, Role
from engine.values.effort import TOP_OF_SCALE, Effort

DENIABLE = frozenset((K.FAILURE, K.MISS, K.DROP, K.WARMUP))
RATED = frozenset((K.RPE, K.RIR))
ALL = frozenset(("all", "each", "every"))
MOST_DENYING = 3


def mark_denied(piece: Piece) -> K | None:
    """The mark that ends a remark which begins by denying it; "not all to failure" denies it of nobody knows which."""
    words, phrases = [plain_word(word) for word in piece.text.split()], lexicon().phrases
    if piece.kind is not K.NOTE or len(words) < 2 or any(is_cued(word, ALL) for word in words):
        return None
    heads = (phrases.get(" ".join(words[:end])) for end in range(1, min(MOST_DENYING, len(words)) + 1))
    if not any(head is not None and head.kind in DENYING for head in heads):
        return None
    tails = (phrases.get(" ".join(words[start:])) for start in range(1, len(words)))
    return next((tail.kind for tail in tails if tail is not None and tail.kind in DENIABLE), None)


def is_effort_alone(piece: Piece) -> bool:
    """Whether it is a word for an effort that has no number: "remove the rpe"."""
    meaning = lexicon().phrases.get(plain_word(piece.text)) if piece.kind is K.NOTE else None
    return piece.kind in RATED or (meaning is not None and meaning.kind in RATED)


def with_efforts_told(pieces: list[Piece]) -> list[Piece]:
    """The pieces with the effort told behind its word and a verb: "rpe should be 9"; no reps."""
    at = next((at for at, piece in enumerate(pieces) if is_effort_alone(piece)), None)
    if at is None:
        return pieces
    end = next((end for end in range(at + 1, len(pieces)) if pieces[end].kind not in TIES), len(pieces))
    number = pieces[end] if end < len(pieces) and pieces[end].kind is K.NUMBER else None
    if number is None or number.role is not Role.BARE or number.value > TOP_OF_SCALE:
        return pieces
    meaning = lexicon().phrases.get(plain_word(pieces[at].text))
    as_rpe = meaning is not None and meaning.kind is K.RPE
    effort = Effort.from_rpe(number.value) if as_rpe else Effort(number.value)
    return [*pieces[:at], number._replace(kind=K.EFFORT, efforts=(effort,)), *pieces[end + 1 :]]


TIES = frozenset((K.FILLER, K.FUTURE, K.PLAIN, K.NEVER))

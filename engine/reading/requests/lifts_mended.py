"""A lift of today's plan met with a slip of the thumb, behind a head that is sure: "skip crls".

Alone a short word may be any other word; behind "skip", with a lift of that name on for today, it is that lift, and the
reply says what was read.
"""

from __future__ import annotations

from rapidfuzz.distance import OSA

from engine.reading.requests.said import Said
from engine.reading.values import Act
from engine.reading.words.kinds import K
from engine.values.ids import ExerciseName

SHORTEST = 4
LISTED = frozenset((K.PLAIN, K.FILLER, K.TODAY))


def skipped_as_mended(said: Said) -> Act | None:
    """The request to skip the one lift of the plan that the unknown word may be; None where none or several may be."""
    unknown = [piece for piece in said.pieces if piece.kind is K.PLAIN]
    if len(unknown) != 1 or any(piece.kind not in LISTED for piece in said.pieces):
        return None
    near = _near(unknown[0].text, said)
    lifts = set(near.values())
    if len(lifts) != 1:
        return None
    return Act("skip", exercise=lifts.pop(), text=said.rest, mended=f"skip {min(near)}")


def _near(word: str, said: Said) -> dict[str, ExerciseName]:
    """Names of today's lifts, one slip from the word and alike in the first letter, each with its lift."""
    planned = {slot.exercise for slot in said.context.plan}
    if len(word) < SHORTEST or not word.isalpha():
        return {}
    found: dict[str, ExerciseName] = {}
    for phrase, owners in said.catalogue.phrases.items():
        if phrase[0] != word[0] or " " in phrase or planned.isdisjoint(owners):
            continue
        fits = planned.intersection(owners)
        for known in (phrase, f"{phrase}s"):
            if len(fits) == 1 and OSA.distance(word, known, score_cutoff=1) <= 1:
                found[known] = next(iter(fits))
    return found

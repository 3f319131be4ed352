"""Names by their words alone, in whatever order they are said: "deadlift with the trap bar" is the trap bar deadlift.

Little words ("with the", "on a") say nothing, neither in a name nor in a message.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from engine.values.ids import ExerciseName

Words = tuple[str, ...]

LITTLE = frozenset(
    ("with", "w", "a", "an", "the", "on", "to", "in", "from", "my", "at", "style", "variation", "version",
     "mit", "am", "an", "der", "dem", "auf", "im", "con", "de", "del", "la", "el", "en", "al", "le", "les", "avec",
     "au", "aux", "sur", "com", "na", "no", "da", "do", "em", "ai", "ao", "alla", "sulla", "ze", "met", "op", "aan",
     "med", "pa", "i", "в", "на", "с", "со", "за", "к")
)  # fmt: skip


def telling_words(words: Iterable[str]) -> Words:
    """The sorted words without the little ones."""
    return tuple(sorted([word for word in words if word not in LITTLE]))


def by_words(phrases: Mapping[str, tuple[ExerciseName, ...]]) -> Mapping[Words, tuple[ExerciseName, ...]]:
    """All exercises that the words of a phrase own in any order.

    Shape: phrases of one telling word are left out; where several phrases hold the same words, all their owners stand.
    """
    found: dict[Words, tuple[ExerciseName, ...]] = {}
    for phrase, owners in phrases.items():
        words = telling_words(phrase.split()) if " " in phrase else ()
        if len(words) > 1:
            found[words] = tuple(dict.fromkeys((*found.get(words, ()), *owners)))
    return found

"""Which cues of the language files a word of a message is: `"or" in CUES_OF[piece.text]`.

A rule that goes by a word of a language names the cue and holds no word of its own, so that a language more needs no
code. Words are plain (`phrasebook.spoken`), and what a word is is worked out once.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from functools import lru_cache

from engine.reading.words.kept import Kept
from engine.reading.words.phrasebook import phrasebook, spoken

NO_CUES: frozenset[str] = frozenset()


@lru_cache(maxsize=1)
def _cues_by_phrase() -> Mapping[str, frozenset[str]]:
    found: dict[str, set[str]] = {}
    for name, phrases in phrasebook().cues.items():
        for phrase in phrases:
            found.setdefault(phrase, set()).add(name)
    return {phrase: frozenset(names) for phrase, names in found.items()}


def _cues_of(text: str) -> frozenset[str]:
    return _cues_by_phrase().get(spoken(text), NO_CUES)


CUES_OF = Kept(_cues_of)
"""The names of the cues that hold this word, or this phrase."""


def cues_told(words: Iterable[str]) -> frozenset[str]:
    """All the cues that one or another of the words is: a rule for a whole message asks first whether its own are."""
    return NO_CUES.union(*map(CUES_OF.__getitem__, set(words)))  # a long message has few words, again and again


def any_cued(words: Iterable[str], cues: frozenset[str]) -> bool:
    """Whether one of the words is one of these cues."""
    return not cues.isdisjoint(cues_told(words))


def is_cued(word: str, cues: frozenset[str]) -> bool:
    """Whether the word is one of these cues."""
    return not cues.isdisjoint(CUES_OF[word])

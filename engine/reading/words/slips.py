"""Words met one slip of the thumb away: a letter left out, put in, changed, or two neighbours swapped."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Mapping, Sequence
from dataclasses import dataclass
from itertools import product

from rapidfuzz.distance import OSA

SHORTEST = 4
LONGEST = 16
MOST_WAYS = 32


@dataclass(frozen=True, slots=True)
class Slips:
    """Known words by what is left of them when one letter is taken out."""

    words: frozenset[str]
    remainders: Mapping[str, tuple[str, ...]]

    def near(self, word: str) -> tuple[str, ...]:
        """The known words that this one may stand for; itself where it is known or too short to be mended."""
        if word in self.words or not SHORTEST <= len(word) <= LONGEST or not word.isalpha():
            return (word,)
        near = {known for left in _remainders(word) for known in self.remainders.get(left, ())}
        return tuple(sorted(known for known in near if OSA.distance(word, known, score_cutoff=1) <= 1)) or (word,)

    def mended(self, words: Sequence[str], phrases: Collection[str]) -> tuple[str, ...]:
        """The phrases that these words may be, slips allowed."""
        ways = [self.near(word) for word in words]
        found = []
        for tried, candidate in enumerate(product(*ways)):
            if tried >= MOST_WAYS:
                break
            if " ".join(candidate) in phrases:
                found.append(" ".join(candidate))
        return tuple(found)


def slips_of(phrases: Iterable[str]) -> Slips:
    """The index of all words of these phrases that are long enough to be mended."""
    words = frozenset(word for phrase in phrases for word in phrase.split())
    found: dict[str, list[str]] = {}
    for word in sorted(words):
        if len(word) >= SHORTEST:
            for left in _remainders(word):
                found.setdefault(left, []).append(word)
    return Slips(words, {left: tuple(known) for left, known in found.items()})


def _remainders(word: str) -> Iterable[str]:
    return (word, *(word[:at] + word[at + 1 :] for at in range(len(word))))


def letters_swapped(word: str, known: str) -> bool:
    """ "rpes": the same letters in another order."""
    return sorted(word) == sorted(known)


def letter_came_twice(word: str, known: str) -> bool:
    """ "setts": a letter typed twice in a row."""
    return any(word[:at] + word[at + 1 :] == known and word[at] == word[at - 1] for at in range(1, len(word)))


def letter_came_again(word: str, known: str) -> bool:
    """ "setes": a letter of the word typed once more, anywhere in it."""
    return any(word[:at] + word[at + 1 :] == known and word[at] in known for at in range(len(word)))

"""Names met with a slip of the thumb in them.

Each word that the catalogue does not know is replaced by its known neighbours: one letter left out, put in, changed, or
two neighbours swapped; in words of eight letters or more, two such slips. A word that people use around their sets
("plan" is no "plank"), or that is too short is never replaced, and a known one only where two neighbours swapped make
another known word of it and words stand beside it ("trap bra" is a trap bar). A word of three letters is replaced
beside others, which vouch for it, and alone where two of its letters changed places ("rwo"); another short word that
stands alone is taken for a name only when two letters changed places or one came twice, since too many ordinary words
lie one letter away from it ("tank" is no "bank").
The index holds, for each known word, what is left when a letter (or two) is taken out: two words one slip apart always
meet in such a remainder, so a look-up costs a few dictionary reads instead of a walk over all names.
Lengths and limits are common practice, no source.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from functools import lru_cache
from itertools import groupby, product
from typing import TypeVar

from rapidfuzz.distance import OSA

from engine.catalogue.phrases import SIBILANT_PLURALS, normalise
from engine.catalogue.word_order import LITTLE, Words, telling_words

SHORTEST_ALONE = 4
SHORTEST_MENDED = 3
FREE_SLIP_ALONE_FROM = 5
TWO_SLIPS_FROM = 8
LONGEST_MENDED = 16
MOST_SLIPS = 2
MOST_WORDS = 6
MOST_WAYS = 64
MOST_KEPT = 8_192
LONGEST_KEPT = 40
"""Letters; a longer word comes once, and is worked out anew where it comes again."""

Phrase = TypeVar("Phrase", str, Words)
Way = tuple[int, str]
"""How many slips a word holds, and the known word that it then stands for."""


@dataclass(frozen=True, slots=True)
class TypoIndex:
    """Known words by what is left of them when letters are taken out."""

    words: Mapping[str, str]
    """Each known word as people write it, plurals too, with its normalised form."""
    remainders: Mapping[str, tuple[str, ...]]
    ordinary: Collection[str]
    """Normalised words that are never a slip."""
    kept: dict[tuple[str, bool], tuple[Way, ...]] = field(default_factory=dict, repr=False, compare=False)
    """The ways of words asked for before: each word beside a name is asked for with each of its neighbours."""

    def mended(self, words: tuple[str, ...], phrases: Collection[str]) -> tuple[str, ...]:
        """The known phrases fewest slips away from the words of a phrase; empty where none is near enough.

        Shape: `words` are folded, but their plurals stand ("pres" is a press, not several of a "pre"). All of the
        nearest phrases come back, so that a caller sees when two are equally near.
        """
        if len(words) > MOST_WORDS:
            return ()
        ways = [self._ways(word, alone=len(words) == 1) for word in words]
        return _nearest(ways, phrases, " ".join) if all(ways) else ()

    def mended_in_any_order(self, words: Sequence[str], known: Collection[Words]) -> tuple[Words, ...]:
        """The known words, sorted and without little ones, fewest slips away from these in any order."""
        told = [word for word in words if word not in LITTLE]
        if not 1 < len(told) <= MOST_WORDS:
            return ()
        ways = [tuple(way for way in self._ways(word, alone=False) if way[1] not in LITTLE) for word in told]
        return _nearest(ways, known, telling_words) if all(ways) else ()

    def swapped(self, word: str) -> tuple[str, ...]:
        """The known words, normalised, that two neighbours swapped make of it: "bar" of "bra"."""
        pairs = [at for at in range(len(word) - 1) if word[at] != word[at + 1]]
        made = [f"{word[:at]}{word[at + 1]}{word[at]}{word[at + 2 :]}" for at in pairs]
        return tuple(self.words[one] for one in made if one in self.words)

    def _ways(self, word: str, *, alone: bool) -> tuple[Way, ...]:
        found = self.kept.get((word, alone))
        if found is None:
            found = self._near(word, alone=alone)
            if len(self.kept) >= MOST_KEPT:
                self.kept.clear()
            if len(word) <= LONGEST_KEPT:
                self.kept[word, alone] = found
        return found

    def _near(self, word: str, *, alone: bool) -> tuple[Way, ...]:
        if word in self.words:
            return ((0, self.words[word]), *(() if alone else ((1, known) for known in self.swapped(word))))
        if len(word) < SHORTEST_MENDED or not word.isalpha() or normalise(word) in self.ordinary:
            return ((0, word),)
        if alone and len(word) < SHORTEST_ALONE:
            return tuple((1, known) for known in self.swapped(word) if len(known) == len(word))
        if len(word) > LONGEST_MENDED + MOST_SLIPS:
            return ()  # near no known word, and what is left of it grows with the square of its length
        allowed = MOST_SLIPS if len(word) >= TWO_SLIPS_FROM else 1
        near = {known for left in remainders(word, allowed) for known in self.remainders.get(left, ())}
        ways: dict[str, int] = {}
        for known in near:
            meant = self.words[known]
            if len(known) < SHORTEST_MENDED or (alone and _is_far(word, known, meant)):
                continue
            slips = OSA.distance(word, known, score_cutoff=allowed)
            # People slip inside a long word, seldom on its first letter: "reaction" is no "traction".
            if slips <= (allowed if word[0] == known[0] else 1):
                ways[meant] = min(slips, ways.get(meant, slips))
        return tuple(sorted((slips, known) for known, slips in ways.items()))


def _is_far(word: str, known: str, meant: str) -> bool:
    """Whether a short word differs from a known one by more than a swap or a letter typed twice."""
    if len(meant) >= FREE_SLIP_ALONE_FROM:
        return False
    return sorted(word) != sorted(known) and _undoubled(word) != _undoubled(known)


def _undoubled(word: str) -> str:
    return "".join(letter for letter, _ in groupby(word))


def _nearest(
    ways: list[tuple[Way, ...]], phrases: Collection[Phrase], joined: Callable[[Iterable[str]], Phrase]
) -> tuple[Phrase, ...]:
    fewest = MOST_SLIPS
    found: list[Phrase] = []
    for tried, words in enumerate(product(*ways)):
        if tried >= MOST_WAYS:
            break
        slips = sum(slip for slip, _ in words)
        candidate = joined([word for _, word in words])
        if not 0 < slips <= fewest or candidate not in phrases:
            continue
        if slips < fewest:
            fewest, found = slips, []
        found.append(candidate)
    return tuple(found)


@lru_cache(maxsize=1_024)
def remainders(word: str, letters: int) -> tuple[str, ...]:
    """The word, and what is left of it when up to `letters` letters are taken out."""
    found, level = [word], {word}
    for _ in range(letters):
        level = {left[:at] + left[at + 1 :] for left in level for at in range(len(left))}
        found += level
    return tuple(found)


def index_of(phrases: Iterable[str], ordinary: Collection[str], most_slips: int = MOST_SLIPS) -> TypoIndex:
    """The index of all words that stand in the normalised `phrases`, and of their plurals."""
    words: dict[str, str] = {}
    for word in dict.fromkeys(word for phrase in phrases for word in phrase.split()):
        words[word] = word
        if not word.endswith("s"):  # "presss" is a slip of "press", not several of it
            words.setdefault(f"{word}s", word)
        if f"{word}es".endswith(SIBILANT_PLURALS):
            words.setdefault(f"{word}es", word)
    found: dict[str, tuple[str, ...]] = {}
    for word in filter(lambda word: len(word) <= LONGEST_MENDED, words):
        for left in remainders(word, most_slips if len(word) >= TWO_SLIPS_FROM - 1 else 1):
            found[left] = (*found[left], word) if left in found else (word,)  # nearly all are of one word
    return TypoIndex(words, found, ordinary)

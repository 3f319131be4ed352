"""All exercises, and every way to name one.

The data stand in plain files beside this module: `exercises/` holds a stanza for each exercise, `names/` the shorthands
that several exercises share, the names in other languages, the short ways of writing a word, and the words that are
never a slip for a name.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from functools import lru_cache

from engine.catalogue.files import read_data
from engine.catalogue.phrases import folded_words, normalise
from engine.catalogue.spellings import spellings
from engine.catalogue.typos import TypoIndex, index_of
from engine.catalogue.word_order import Words, by_words, telling_words
from engine.values.exercise import Exercise
from engine.values.ids import ExerciseName

__all__ = ["Catalogue", "catalogue", "normalise"]


@dataclass(frozen=True, slots=True, eq=False)  # one is like no other: comparing thousands of phrases serves nobody
class Catalogue:
    """What can be trained, and by which phrases it is met.

    `phrases` maps a normalised phrase to all exercises that own it; most phrases have one owner.
    `longest_phrase` is the number of words in the longest of them; `longest` that of the longest that begins with a
    word. `by_words` maps the sorted words of a phrase to all exercises that those words own in any order.
    """

    exercises: Mapping[ExerciseName, Exercise]
    phrases: Mapping[str, tuple[ExerciseName, ...]]
    longest_phrase: int
    longest: Mapping[str, int] = field(repr=False)
    typos: TypoIndex = field(repr=False)
    by_words: Mapping[Words, tuple[ExerciseName, ...]] = field(repr=False)
    own_typos: TypoIndex | None = field(default=None, repr=False)

    def get(self, name: ExerciseName) -> Exercise | None:
        """The exercise of exactly this name, or None."""
        return self.exercises.get(name)

    def owners(self, phrase: str) -> tuple[ExerciseName, ...]:
        """All exercises that `phrase` may mean, however it is written; empty where it names none."""
        return self.phrases.get(normalise(phrase), ())

    def of_words(self, words: Iterable[str]) -> tuple[ExerciseName, ...]:
        """All exercises that these normalised words name in any order: "press leg"; empty where they name none."""
        return self.by_words.get(telling_words(words), ())

    def closest_of_words(self, words: Sequence[str]) -> tuple[ExerciseName, ...]:
        """The same, once slips of the thumb are mended: "deadlift trap bra"."""
        mended = self.typos.mended_in_any_order(words, self.by_words)
        return tuple(dict.fromkeys(owner for found in mended for owner in self.by_words[found]))

    def closest(self, phrase: str) -> tuple[ExerciseName, ...]:
        """All exercises that `phrase` may mean once slips of the thumb are mended; empty where none is near enough."""
        known = self.owners(phrase)
        if known:
            return known
        words = folded_words(phrase)
        mended = self.typos.mended(words, self.phrases)
        if self.own_typos is not None:
            mended += self.own_typos.mended(words, self.phrases)
        return tuple(dict.fromkeys(owner for found in mended for owner in self.phrases[found]))

    def with_own(self, exercises: Sequence[Exercise], shorthands: Mapping[str, ExerciseName]) -> Catalogue:
        """This catalogue with an athlete's own exercises and shorthands in it.

        Shape: what she calls an exercise is settled by her: her phrase has the one owner that she gave it.
        A shorthand for an exercise that is not there is left out.
        """
        if not exercises and not shorthands:
            return self
        known = {**self.exercises, **{exercise.name: exercise for exercise in exercises}}
        own = {spelling: (exercise.name,) for exercise in exercises for spelling in spellings(exercise.name, {})}
        for phrase, owner in shorthands.items():
            if owner in known and normalise(phrase):
                own[normalise(phrase)] = (owner,)
        return Catalogue(
            exercises=known,
            phrases={**self.phrases, **own},
            longest_phrase=max(self.longest_phrase, *(len(phrase.split()) for phrase in own), 0),
            longest=_longest(own, self.longest),
            typos=self.typos,
            by_words=self.by_words,
            # One slip: her own names change often, and the index of two costs ten times as much to make.
            own_typos=index_of(own, self.typos.ordinary, most_slips=1),
        )


@lru_cache(maxsize=1)
def catalogue() -> Catalogue:
    """The catalogue that comes with the program, read once.

    Errors: MalformedData, naming file and line, where a data file cannot be used.
    """
    found = read_data()
    longest = _longest(found.phrases, {})
    return Catalogue(
        exercises=found.exercises,
        phrases=found.phrases,
        longest_phrase=max(longest.values(), default=0),
        longest=longest,
        typos=index_of(found.phrases, found.ordinary),
        by_words=by_words(found.phrases),
    )


def _longest(phrases: Iterable[str], known: Mapping[str, int]) -> Mapping[str, int]:
    longest = dict(known)
    for phrase in phrases:
        words = phrase.split()
        if words and longest.get(words[0], 0) < len(words):
            longest[words[0]] = len(words)
    return longest

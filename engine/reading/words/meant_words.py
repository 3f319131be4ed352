"""What a word of certain kinds was meant where it is met with a slip of the thumb: days, units, "sets", "reps"."""

from __future__ import annotations

from collections.abc import Collection

from engine.reading.words.kinds import K
from engine.reading.words.lexicon import Meaning, lexicon
from engine.reading.words.slips import letter_came_again, letters_swapped, slips_of

FREE_SLIP_FROM = 6
"""A shorter word is a slip only where its letters changed places or one came again. Common practice, no source."""


class MeantWords:
    """The single words of these kinds, from this length on."""

    def __init__(self, kinds: Collection[K], shortest: int) -> None:
        self.shortest = shortest
        self.named = {
            phrase: meaning
            for phrase, meaning in lexicon().phrases.items()
            if meaning.kind in kinds and " " not in phrase and len(phrase) >= shortest
        }
        self.slips = slips_of(self.named)

    def meant(self, word: str, *, first_letter_stands: bool = False) -> tuple[Meaning, ...]:
        """What the words that this one is a slip of mean; more than one where they differ."""
        if len(word) < self.shortest:
            return ()
        near = [known for known in self.slips.near(word) if known in self.named and known != word]
        if first_letter_stands:
            near = [known for known in near if known[0] == word[0]]
        return tuple(dict.fromkeys(self.named[known] for known in near if _is_slip(word, known)))


def _is_slip(word: str, known: str) -> bool:
    return len(word) >= FREE_SLIP_FROM or letters_swapped(word, known) or letter_came_again(word, known)

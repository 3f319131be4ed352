"""A request under way: what its head was, and what stands behind it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from engine.catalogue.catalogue import Catalogue
from engine.reading.entries.names import narrowed
from engine.reading.values import Context
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook
from engine.reading.words.pieces import Piece
from engine.values.ids import ExerciseName

LONGEST = 3
"""Words of a phrase that is looked for behind a head."""


@dataclass(frozen=True, slots=True)
class Said:
    """A request under way: the words behind the head, the pieces of the whole message, and the text behind the head."""

    name: str
    rest: str
    rest_words: tuple[str, ...]
    pieces: Sequence[Piece]
    context: Context
    catalogue: Catalogue
    head: tuple[str, ...] = ()
    """The words in front of what stands behind: "pause until"."""

    def exercises(self) -> list[ExerciseName]:
        """The exercises named, each as context settles it."""
        return [narrowed(piece.names, self.context)[0] for piece in self.pieces if piece.kind is K.NAME]

    def without(self, cue: str) -> Said:
        """What stands behind, without the first phrase of the cue: "chest is that this week" of what was done."""
        words, phrases = self.rest.split(), phrasebook().cues[cue]
        for at in range(1, len(words)):
            for end in range(min(len(words), at + LONGEST), at, -1):
                if " ".join(words[at:end]) in phrases:
                    kept = (*words[:at], *words[end:])
                    return replace(self, rest=" ".join(kept), rest_words=kept)
        return self

    def numbers(self) -> list[Piece]:
        return [piece for piece in self.pieces if piece.kind is K.NUMBER]

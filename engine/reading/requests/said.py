"""A request under way: what its head was, and what stands behind it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from engine.catalogue.catalogue import Catalogue
from engine.reading.entries.names import narrowed
from engine.reading.values import Context
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece
from engine.values.ids import ExerciseName


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

    def numbers(self) -> list[Piece]:
        return [piece for piece in self.pieces if piece.kind is K.NUMBER]

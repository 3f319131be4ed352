"""An answer under way, and what settles the question."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from engine.catalogue.catalogue import Catalogue, normalise
from engine.reading.kinds import K
from engine.reading.phrasebook import phrasebook
from engine.reading.pieces import Piece, Role
from engine.reading.prepare import Prepared
from engine.reading.read import question_of
from engine.reading.values import Answer, Asked, Context, Doubt, Logged, Reading, Settled, StillOpen
from engine.reading.wording import label_of
from engine.values.ids import ExerciseName
from engine.values.sets import SetDone


@dataclass(frozen=True, slots=True)
class Answering:
    """An answer under way."""

    text: str
    words: tuple[str, ...]
    prepared: Prepared
    asked: Asked
    context: Context
    catalogue: Catalogue

    def numbers(self) -> list[Piece]:
        """The numbers said; "the cable one" says none, nor does "all three"."""
        pieces = self.prepared.pieces
        return [
            piece
            for at, piece in enumerate(pieces)
            if piece.kind is K.NUMBER and not (piece.spelled and _says_none(piece, pieces[at - 1] if at else None))
        ]

    def tells_sets(self) -> bool:
        """Whether sets are told by their signs: "3x12", "4 sets", "12 at 15"."""
        return any(piece.kind in SET_SIGNS or piece.role is Role.SETS for piece in self.prepared.pieces)

    def names(self) -> set[ExerciseName]:
        """The exercises named; the "oh" in front names none."""
        chatter = phrasebook().cues["polite"] | phrasebook().cues["slip"]
        named = (piece for piece in self.prepared.pieces if piece.kind is K.NAME and piece.text not in chatter)
        return {name for piece in named for name in piece.names}


SET_SIGNS = frozenset((K.TIMES, K.FOR, K.AT, K.SETS, K.COUNT))


def _says_none(number: Piece, before: Piece | None) -> bool:
    if number.role is not Role.BARE:
        return False
    return number.value == 1 or (before is not None and before.text in ("all", "of", "both"))


def settle(told: Answering, readings: Sequence[Reading]) -> Answer | None:
    """One reading left settles the question; fewer than before narrow it."""
    asked = told.asked
    if len(readings) == 1:
        return settled(told, readings[0].sets)
    if 1 < len(readings) < len(asked.readings):
        rivals = [reading.sets for reading in readings]
        left = tuple(replace(reading, label=label_of(reading.sets, rivals)) for reading in readings)
        doubt = Doubt.NUMBERS if len({exercises(reading) for reading in left}) == 1 else Doubt.EXERCISE
        return StillOpen(
            replace(asked, readings=left, doubt=doubt, question=question_of(doubt, asked.typed or asked.term, left))
        )
    return None


def settled(told: Answering, sets: Sequence[SetDone]) -> Settled:
    asked = told.asked
    teaches = {}
    if asked.doubt is Doubt.EXERCISE and asked.term:
        doubtful = {one.exercise for reading in asked.readings for one in reading.sets}
        chosen = [one.exercise for one in sets if one.exercise in doubtful]
        if len(set(chosen)) == 1:
            teaches = {normalise(asked.term): chosen[0]}
    return Settled(Logged(tuple(sets), asked.on, asked.note, asked.pain, why="answered"), teaches)


def exercises_of(sets: Sequence[SetDone]) -> tuple[ExerciseName, ...]:
    return tuple(dict.fromkeys(one.exercise for one in sets))


def exercises(reading: Reading) -> tuple[ExerciseName, ...]:
    return tuple(dict.fromkeys(one.exercise for one in reading.sets))

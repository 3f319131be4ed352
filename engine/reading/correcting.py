"""A correction under way: its words, its pieces, and the sets that it may reach."""

from __future__ import annotations

from dataclasses import dataclass, field, replace

from engine.catalogue.catalogue import Catalogue
from engine.reading.kinds import K
from engine.reading.phrasebook import Phrasebook
from engine.reading.pieces import Piece
from engine.reading.values import Context, Correction
from engine.values.load import Basis, Load, Unit
from engine.values.sets import SetDone, SetRecord

MOST_WORDS = 14
MOST_LOADED_REPS = 30
UNITS = {K.KG: Unit.KG, K.LB: Unit.LB}


@dataclass(slots=True)
class Told:
    """A correction under way: its words, its pieces, the sets it may reach."""

    words: list[str]
    pieces: list[Piece]
    spoken: list[Piece]
    context: Context
    catalogue: Catalogue
    book: Phrasebook
    changes: dict[int, tuple[SetRecord, SetDone]] = field(default_factory=dict)

    def starts(self, cue: str) -> int:
        """How many words of the beginning are this cue; 0 for none."""
        for length in (5, 4, 3, 2, 1):
            if length <= len(self.words) and " ".join(self.words[:length]) in self.book.cues[cue]:
                return length
        return 0

    def has(self, cue: str) -> bool:
        return any(
            " ".join(self.words[at : at + length]) in self.book.cues[cue]
            for at in range(len(self.words))
            for length in (1, 2, 3)
            if at + length <= len(self.words)
        )

    def numbers(self) -> list[Piece]:
        return [piece for piece in self.pieces if piece.kind is K.NUMBER]

    def set_to(self, record: SetRecord, done: SetDone) -> None:
        self.changes[record.id] = (record, done)

    def correction(self) -> Correction | None:
        changed = tuple((record, done) for record, done in self.changes.values() if record.done != done)
        return Correction(changed=changed) if changed else None


def last_message(context: Context) -> list[SetRecord]:
    last = context.recent[-1]
    return [record for record in context.recent if record.message == last.message] if last.message else [last]


def with_load(done: SetDone, new: Piece) -> SetDone:
    old = done.load
    unit = new.unit or (old.unit if old else Unit.KG)
    sign = -1 if old is not None and old.amount < 0 < new.value else 1
    basis = old.basis if old else Basis.TOTAL
    return replace(done, load=Load(sign * new.value, unit, basis))

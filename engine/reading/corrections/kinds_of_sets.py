"""The warm-up, the drop or the back-off told of behind the sets: "warmup was 60x5", "the drop set was 40".

told = [ lift ] KIND [ "set" ] "was" numbers

It speaks of the sets of that kind that stand; sets that stand with just those numbers become of it. Where none stands,
a whole set told so is one more, and no new numbers for the work sets.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from engine.reading.corrections.correcting import Told
from engine.reading.corrections.parts import Part, part_told, sets_of
from engine.reading.corrections.restated import sets_read
from engine.reading.corrections.said_to_be import is_be
from engine.reading.values import Context, Correction
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece
from engine.values.sets import SetDone, SetKind, SetRecord

KINDS = {K.WARMUP: SetKind.WARMUP, K.DROP: SetKind.DROP}
BACKED_OFF = frozenset(("backoff",))
BETWEEN = frozenset((K.SETS, K.FILLER, K.NAME, K.FOR, K.ONLY))


def with_sets_of_its_kind(part: Part, clause: Sequence[Piece], context: Context) -> None:
    """Nothing; the part points at the sets of the kind that stands ahead of "was", and at none where none stands."""
    kind = kind_told(clause)
    if kind is None or part.places:
        return
    part.places = _standing(kind, sets_of(part, context))
    part.missing = not part.places or (len(part.places) > 1 and not _is_plural(kind))


def kind_told(clause: Sequence[Piece]) -> Piece | None:
    """The word for a kind of set of which the clause says what it was."""
    kind: Piece | None = None
    for piece in clause[:-1]:  # "warm up that was" tells of the latest set
        if piece.kind in KINDS or is_cued(piece.text, BACKED_OFF):
            kind = piece
        elif is_be(piece):
            return kind
        elif piece.kind not in BETWEEN:
            return None
    return None


def _standing(kind: Piece, group: Sequence[SetRecord]) -> list[SetRecord]:
    if kind.kind in KINDS:
        return [record for record in group if record.done.kind is KINDS[kind.kind]]
    loads = [record.done.load.kilograms() for record in group if record.done.load is not None]
    heaviest = max(loads, default=None)
    at = next((at for at, load in enumerate(loads) if load == heaviest), 0)
    lighter = [record for record in group[at:] if len(loads) == len(group)]
    return [record for record in lighter if record.done.load and record.done.load.kilograms() != heaviest]


def _is_plural(kind: Piece) -> bool:
    return kind.text.endswith("s") or kind.told == SEVERAL


SEVERAL = 2


def were_of_a_kind(told: Told) -> Correction | None:
    """ "warmup was 60x5" where 60x5 stands among the work sets: that one was it."""
    kind = kind_told(told.pieces)
    if kind is None or kind.kind not in KINDS or told.kinds() & {K.NOT, K.QUESTION, K.FUTURE}:
        return None
    part = part_told([piece for piece in told.pieces if piece.kind is K.NAME], told.context)
    if part.named_unknown or _standing(kind, sets_of(part, told.context)):
        return None
    found = _told_again(told, sets_of(part, told.context))
    for record in found:
        if record is None:
            return None
        told.set_to(record, replace(record.done, kind=KINDS[kind.kind]))
    return told.correction()


def _told_again(told: Told, group: Sequence[SetRecord]) -> list[SetRecord | None]:
    """The set that stands with just those numbers, for each of the sets told behind "was"; None where there is none."""
    at = next(at for at, piece in enumerate(told.pieces) if is_be(piece))
    sets = sets_read(told.pieces[at + 1 :], group[-1].done.exercise, told.context, told.catalogue)
    return [next((record for record in group if _is_the_same(record.done, one)), None) for one in sets]


def _is_the_same(stands: SetDone, told: SetDone) -> bool:
    return stands.load == told.load and stands.reps == told.reps and stands.seconds == told.seconds


def is_of_one_of_its_kind(told: Told) -> bool:
    """ "warmup was 60x5" where several warm-ups stand, or where only some of what is told stand: unclear of which."""
    kind = kind_told(told.pieces)
    if kind is None:
        return False
    part = part_told([piece for piece in told.pieces if piece.kind is K.NAME], told.context)
    group = [] if part.named_unknown else sets_of(part, told.context)
    return bool(group) and (bool(_standing(kind, group)) or any(_told_again(told, group)))

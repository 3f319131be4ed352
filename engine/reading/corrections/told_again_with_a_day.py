"""Sets that stand told once more, with the day they were of: "it was 3x5 100 yesterday", "no, 3x5 100 yesterday".

told = [ pronoun | lift ] "was" whole sets day | whole sets "was" day | slip whole sets day

As many, as heavy and of the same reps as those that stand, they were of that day. Told otherwise of "it", it is open
whether they are to be put right, or what was done that day is told.
"""

from __future__ import annotations

from dataclasses import replace

from engine.catalogue.catalogue import Catalogue
from engine.reading.corrections.correcting import Told, told_of
from engine.reading.corrections.days_named import Named, day_named, without_lead
from engine.reading.corrections.nothing_changed import unclear
from engine.reading.corrections.said_to_be import is_be
from engine.reading.corrections.values import are_applied
from engine.reading.days.day_starts import DATE_KINDS
from engine.reading.prepare import Prepared, prepare
from engine.reading.values import Context, Correction, NoSets
from engine.reading.words.kinds import K
from engine.values.sets import SetRecord

BESIDE_SETS = frozenset(
    (K.NUMBER, K.TIMES, K.KG, K.LB, K.REPS, K.SETS, K.AT, K.WITH, K.FOR, K.FILLER, K.NAME, K.COMMA, K.STOP)
)
PRONOUN_AND_VERB = 2


def told_again_with_a_day(prepared: Prepared, context: Context, catalogue: Catalogue) -> Correction | NoSets | None:
    """Those sets, on the day told; NoSets where it is open what is meant; None where no such thing is told."""
    if K.TIMES not in prepared.told or not context.recent or (DATE_KINDS | {K.DATE}).isdisjoint(prepared.told):
        return None
    day = day_named(prepared, context)
    told = without_day(prepared, day, context, catalogue) if day is not None else None
    if day is None or told is None or not _puts_right(told):
        return None
    moved = [record for record in _sets_told_again(_without_verb(told)) if record.on != day.day]
    verb = next((piece for piece in told.pieces if is_be(piece)), None)
    if moved and verb is not None and day.start < verb.start:
        return unclear(prepared)  # "sunday was 3x5 100" may tell of that day
    if moved:
        return Correction(moved=tuple((record, day.day) for record in moved))
    of_it = K.NAME not in told.kinds() and any(map(is_be, told.pieces[:PRONOUN_AND_VERB]))
    return unclear(prepared) if of_it and any(one.on != day.day for one in context.recent[-1:]) else None


def _puts_right(told: Told) -> bool:
    """Whether whole sets are told of those that stand, and nothing else."""
    verbs = [piece for piece in told.pieces if is_be(piece)]
    return bool(verbs or told.slipped) and all(piece.kind in BESIDE_SETS or piece in verbs for piece in told.pieces)


def _without_verb(told: Told) -> Told:
    """ "3x5 100 was": the sets alone, as a slip tells them."""
    pieces = [piece for piece in told.pieces if not is_be(piece)]
    while pieces and pieces[0].kind is K.COMMA:
        pieces = pieces[1:]
    return replace(told, pieces=pieces, slipped=True, changes={}, removed=[], added=[], pointed=[])


def without_day(prepared: Prepared, day: Named, context: Context, catalogue: Catalogue) -> Told | None:
    """The message as a correction is told, with blanks in place of the day."""
    before = without_lead(prepared.cleaned[: day.start])
    text = before + " " * (day.end - len(before)) + prepared.cleaned[day.end :]
    return told_of(prepare(text, context, catalogue), context, catalogue)


def _sets_told_again(told: Told) -> list[SetRecord]:
    """The sets that these numbers tell just as they stand; none where they tell anything else."""
    try:
        same = are_applied(told) and told.correction() is None
    except ValueError:  # a set that cannot be
        return []
    return [record for record, _ in told.changes.values()] if same else []

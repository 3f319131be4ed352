"""The lift and the numbers put right in one message: "those were dumbbells, 25 not 60", "that was incline. only 2".

message = ( renaming cut correction | correction cut renaming )      each of which would be one alone
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from engine.catalogue.catalogue import Catalogue
from engine.reading.corrections.amid_talk import RENAMING, renames
from engine.reading.prepare import Prepared, prepare
from engine.reading.values import Context, Correction, NoSets
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook, spoken_words
from engine.reading.words.spoken_clauses import clauses_of
from engine.values.ids import SetId
from engine.values.sets import SetDone

Alone = Callable[[Prepared, Context, Catalogue], Correction | NoSets | None]
CUTS = frozenset((K.COMMA, K.STOP, K.DASH, K.OPEN))
TOLD = 2


def lift_and_numbers(prepared: Prepared, context: Context, catalogue: Catalogue, alone: Alone) -> Correction | None:
    """Both changes in one; None where the message does not tell both. `alone` works one of them out."""
    if prepared.told.isdisjoint(RENAMING) or prepared.told.isdisjoint(CUTS) or K.NUMBER not in prepared.told:
        return None
    clauses = clauses_of(prepared.cleaned, spoken_words(prepared.tokens), phrasebook())
    if len(clauses) != TOLD:
        return None
    told = [prepare(prepared.cleaned[start:end].strip(), context, catalogue) for start, end in clauses]
    renaming = [renames(one.spoken) and K.NUMBER not in one.told for one in told]
    if sum(renaming) != 1:
        return None
    lift = alone(told[renaming.index(True)], context, catalogue)
    if not isinstance(lift, Correction) or lift.removed or lift.added or lift.moved:
        return None
    done = {record.id: new for record, new in lift.changed}
    named = tuple(replace(record, done=done.get(record.id, record.done)) for record in context.recent)
    numbers = alone(told[renaming.index(False)], replace(context, recent=named), catalogue)
    return _together(context, done, numbers) if isinstance(numbers, Correction) else None


def _together(context: Context, done: dict[SetId, SetDone], numbers: Correction) -> Correction:
    """The second change with what the first made of the sets that it leaves as they are."""
    before = {record.id: record for record in context.recent}
    done = {**done, **{record.id: new for record, new in numbers.changed}}
    gone = {record.id for record in numbers.removed}
    return replace(
        numbers,
        changed=tuple((before[id_], new) for id_, new in done.items() if id_ not in gone),
        removed=tuple(before[id_] for id_ in gone),
        moved=tuple(before[record.id] for record in numbers.moved),
    )

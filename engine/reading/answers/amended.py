"""Numbers put right while only the exercise is in doubt: the question stays, about the new numbers.

answer = correction of the numbers asked about      row 3x12 55 (which?) | sorry 60kg | row was 60
       | the sets told again, where no lift is on   row 3x12 55 (which?) | 3x10 60
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import UTC, date, datetime

from engine.reading.answers.answering import Answering, exercises
from engine.reading.asking import question_of
from engine.reading.corrections.corrections import correction_of
from engine.reading.read import read_sets
from engine.reading.values import Answer, Context, Correction, Doubt, Logged, Reading, StillOpen
from engine.reading.wording import label_of
from engine.reading.words.kinds import K
from engine.values.ids import SetId
from engine.values.sets import SetDone, SetRecord


def amended(told: Answering) -> Answer | None:
    """The question with the numbers as they were put right; None where the words put none right."""
    if told.asked.doubt is not Doubt.EXERCISE or len(told.asked.readings) < 2 or not told.numbers():
        return None
    named = told.names()
    if named and not is_of_the_open_sets(told):
        return None
    for way in (corrected,) if named else (corrected, _told_again):
        found = [way(told, reading) for reading in told.asked.readings]
        if all(found):
            return _about(told, found)
    return None


def is_of_the_open_sets(told: Answering) -> bool:
    """Whether each reading holds a lift that is named: "squat was only 2 sets" of a workout whose row is in doubt."""
    named = told.names()
    return bool(told.asked.readings) and all(named & {*exercises(reading)} for reading in told.asked.readings)


def _about(told: Answering, found: list[tuple[SetDone, ...]]) -> StillOpen:
    asked = told.asked
    behind = [corrected(told, reading) for reading in asked.behind]
    rivals = tuple(replace(old, sets=sets) for old, sets in zip(asked.behind, behind, strict=True) if sets)
    readings = tuple(
        replace(old, sets=sets, label=label_of(sets, found)) for old, sets in zip(asked.readings, found, strict=True)
    )
    question = question_of(asked.doubt, asked.typed or asked.term, readings)
    return StillOpen(replace(asked, readings=readings, behind=rivals, question=question))


def corrected(told: Answering, reading: Reading) -> tuple[SetDone, ...]:
    """The reading's sets as a correction leaves them; empty where the words correct nothing of them."""
    records = records_of(reading.sets, told.context)
    found = correction_of(told.prepared, replace(told.context, recent=records), told.catalogue)
    if not isinstance(found, Correction) or found.moved:
        return ()
    return as_corrected(records, found)


def as_corrected(records: Sequence[SetRecord], found: Correction) -> tuple[SetDone, ...]:
    """The sets as the correction leaves them, with those that it adds."""
    changed = {record.id: done for record, done in found.changed}
    gone = {record.id for record in found.removed}
    kept = tuple(changed.get(record.id, record.done) for record in records if record.id not in gone)
    return (*kept, *found.added)


def records_of(sets: Sequence[SetDone], context: Context) -> tuple[SetRecord, ...]:
    """The sets as if they stood already, told together."""
    now = context.now
    day, at = (now.date(), now.replace(tzinfo=UTC)) if now is not None else (date.min, datetime.min.replace(tzinfo=UTC))
    return tuple(SetRecord(SetId(place), one, day, at, place, 1) for place, one in enumerate(sets, start=1))


def _told_again(told: Answering, reading: Reading) -> tuple[SetDone, ...]:
    """The numbers as sets of the reading's exercise, at its load where they tell none; a lift in hand owns them."""
    names = exercises(reading)
    whole = any(piece.kind is K.TIMES for piece in told.prepared.pieces)
    if len(names) != 1 or not whole or told.context.doing is not None:
        return ()
    load = reading.sets[0].load
    context = replace(told.context, doing=names[0], plan=(), recent=(), last={names[0]: load} if load else {}, best={})
    outcome = read_sets(told.prepared, context, told.catalogue)
    plain = isinstance(outcome, Logged) and not outcome.unread and outcome.on is None
    return outcome.sets if isinstance(outcome, Logged) and plain else ()

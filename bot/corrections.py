"""A correction in words is applied to the sets it reaches, and said as before and after."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import replace
from typing import TypeVar

from bot import pain
from bot.recording import lifts_in_order
from bot.replies.correction import corrected
from bot.sessions import forget_session, session_of
from bot.turn import Turn
from engine.reading.values import Correction, Unread
from engine.values.ids import ExerciseName, SetId
from engine.values.sets import SetRecord
from storage.records import Change, ChangeKind

T = TypeVar("T")


def correct(turn: Turn, asked: Correction) -> None:
    """Nothing; the sets are as she says now, in one change that undo takes back."""
    if asked.pain:
        pain.take_note(turn)  # ahead of the correction, so that undo takes that back
    before = _reached(asked)
    change = turn.begin(_kind(asked), _label(asked))
    after = apply(turn, change, asked, before)
    forget_session(turn)
    say(turn, before, after)


def say(turn: Turn, before: Sequence[SetRecord], after: Sequence[SetRecord], unread: Sequence[Unread] = ()) -> None:
    """Nothing; before, after and what was not read are said, and lines of lifts on screen brought up to date."""
    following = session_of(turn).next_up()
    turn.say(
        corrected(
            before,
            after,
            following if _touches_today(turn, (*before, *after)) else None,
            turn.today,
            unread,
        )
    )
    refresh_day(turn, (*before, *after))


def in_order(
    standing: Sequence[SetRecord], reached: Collection[SetId], after: Sequence[SetRecord]
) -> tuple[SetRecord, ...]:
    """The sets that were left as they are and those that took the place of the others, in the order of the log."""
    kept = [one for one in standing if one.id not in reached]
    return tuple(sorted((*kept, *after), key=lambda one: (one.place, one.id)))


def refresh_day(turn: Turn, records: Sequence[SetRecord]) -> None:
    """Nothing; lines of lifts that no longer tell the truth are let go, so that the next set gets a new one."""
    for exercise, day in {(record.done.exercise, record.on) for record in records}:
        turn.store.lift_lines.drop(turn.athlete, day, exercise)


def _touches_today(turn: Turn, records: Sequence[SetRecord]) -> bool:
    return any(record.on == turn.today for record in records)


def _reached(asked: Correction) -> tuple[SetRecord, ...]:
    """Every set the correction reaches, as it stood."""
    return tuple(sorted(asked.reached, key=lambda record: record.place))


def apply(turn: Turn, change: Change, asked: Correction, before: Sequence[SetRecord]) -> tuple[SetRecord, ...]:
    """The sets as the correction leaves them, changed, added and moved; deleted ones are gone."""
    after: list[SetRecord] = []
    done, days = _by_set(asked.changed), _by_set(asked.moved)
    staying = [(record, new) for record, new in asked.changed if record.id not in days]
    if staying:
        after += turn.store.sets.replace(change, staying)
    if asked.removed:
        turn.store.sets.remove(change, [record.id for record in asked.removed])
    if asked.added:
        after += _add(turn, change, asked, before)
    for day in sorted(set(days.values())):
        moved = [replace(one, done=done.get(one.id, one.done)) for one, to in asked.moved if to == day]
        after += turn.store.sets.move(change, moved, day)
    return in_order((), (), after)


def _by_set(told: Sequence[tuple[SetRecord, T]]) -> dict[SetId, T]:
    return {record.id: new for record, new in told}


def _add(turn: Turn, change: Change, asked: Correction, before: Sequence[SetRecord]) -> tuple[SetRecord, ...]:
    """Sets that a correction adds belong to the message and day of the ones it speaks of, as it leaves them."""
    model = _model(turn, asked.added[0].exercise, before)
    day, message = (model.on, model.message) if model else (turn.today, turn.inbound.message)
    if model is not None:
        day = _by_set(asked.moved).get(model.id, day)
    return turn.store.sets.add(change, asked.added, on=day, at=turn.at, message=message)


def _model(turn: Turn, exercise: ExerciseName, before: Sequence[SetRecord]) -> SetRecord | None:
    alike = [record for record in before if record.done.exercise == exercise]
    if not alike:
        recent = turn.store.sets.recent(turn.athlete, turn.today)
        alike = [record for record in recent if record.done.exercise == exercise]
    return alike[-1] if alike else None


def _kind(asked: Correction) -> ChangeKind:
    if asked.changed or asked.added:
        return ChangeKind.CORRECTION
    if asked.moved and not asked.removed:
        return ChangeKind.MOVE
    if asked.removed and not asked.moved:
        return ChangeKind.DELETE
    return ChangeKind.CORRECTION


def _label(asked: Correction) -> str:
    names = list(lifts_in_order([record.done for record in _reached(asked)])) or [asked.added[0].exercise]
    what = {ChangeKind.MOVE: "another day for", ChangeKind.DELETE: "deleting sets of"}.get(
        _kind(asked), "the correction of"
    )
    return f"{what} {', '.join(names)}"

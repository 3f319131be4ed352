"""Changes of one message taken together: what the first leaves, and both as one."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import fields, replace

from engine.reading.values import Correction
from engine.values.ids import SetId
from engine.values.sets import SetDone, SetRecord


def as_left(records: Sequence[SetRecord], found: Correction) -> tuple[SetRecord, ...]:
    """The sets as these changes leave them; one more stands behind those of its lift, with a number below zero."""
    done = {record.id: new for record, new in found.changed}
    days = {record.id: day for record, day in found.moved}
    left = set(found.removed)
    standing = [
        replace(record, done=done.get(record.id, record.done), on=days.get(record.id, record.on))
        for record in records
        if record not in left
    ]
    for place, new in enumerate(found.added):
        alike = [at for at, record in enumerate(standing) if record.done.exercise == new.exercise]
        if alike:
            more = replace(standing[alike[-1]], id=SetId(-1 - place), done=new)
            standing.insert(alike[-1] + 1, more)
    return tuple(standing)


def together(records: Sequence[SetRecord], first: Correction, then: Correction) -> Correction | None:
    """Both, named by the sets as they stand; None where they say two things of one and the same."""
    before = {record.id: record for record in records}
    days = {record.id for record, _ in first.moved}
    moved = [(before[record.id], day) for record, day in then.moved if record.id in before]
    if (first.added and then.added) or any(record.id in days for record, _ in moved) or (then.moved and not moved):
        return None
    done = {record.id: new for record, new in first.changed}
    added = dict(enumerate(first.added))
    for record, new in then.changed:
        if record.id not in before:
            added[-1 - record.id] = new
        elif record.id in done and _says_otherwise(before[record.id].done, done[record.id], new):
            return None
        else:
            done[record.id] = new
    gone = {record.id for record in (*first.removed, *then.removed)}
    if first.changed and gone.issuperset(record.id for record, _ in first.changed):
        return None  # "the last was 4 and delete the last"
    return Correction(
        changed=_left_changed(before, done, gone),
        removed=tuple(before[one] for one in gone if one in before),
        added=(*(new for place, new in added.items() if SetId(-1 - place) not in gone), *then.added),
        moved=(*first.moved, *moved),
        pain=first.pain or then.pain,
    )


def _left_changed(
    before: dict[SetId, SetRecord], done: dict[SetId, SetDone], gone: set[SetId]
) -> tuple[tuple[SetRecord, SetDone], ...]:
    return tuple((before[id_], new) for id_, new in done.items() if id_ not in gone)


def _says_otherwise(before: SetDone, first: SetDone, then: SetDone) -> bool:
    """Whether the second change takes back what the first made of the set."""
    changed = {one.name for one in fields(SetDone) if getattr(first, one.name) != getattr(before, one.name)}
    if "exercise" in changed:
        changed -= {"load", "side"}  # as that lift counts them
    return any(getattr(then, name) != getattr(first, name) for name in changed)

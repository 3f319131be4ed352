"""The past of one exercise."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from itertools import groupby

from bot.replies.dates import day
from bot.replies.names import title
from bot.replies.records import strength_text
from bot.replies.reply import Reply
from bot.replies.sets import load_text, sets_text
from engine.strength.current import CurrentStrength
from engine.values.ids import ExerciseName
from engine.values.load import Load
from engine.values.sets import SetRecord


def days(exercise: ExerciseName, sets: Sequence[SetRecord], today: date) -> Reply:
    """One day a line, the latest last."""
    lines = [f"{title(exercise)}, lately:"]
    for on, records in groupby(sets, key=lambda record: record.on):
        lines.append(f"{day(on, today)}: {sets_text([record.done for record in records])}")
    return Reply("\n".join(lines))


def bests(
    exercise: ExerciseName, sets: Sequence[SetRecord], today: date, current: CurrentStrength | None = None
) -> Reply:
    """The heaviest set, the most reps in one set, and what could be lifted once now."""
    work = [record for record in sets if record.done.counts_as_work and record.done.reps > 0]
    if not work:
        return never(exercise)
    lines = [f"{title(exercise)}, best so far:"]
    loaded = [record for record in work if record.done.load is not None and load_text(record.done.load)]
    if loaded:
        heaviest = max(loaded, key=lambda record: (_mass(record.done.load), record.done.reps))
        lines.append(f"Load: {sets_text([heaviest.done])} on {day(heaviest.on, today)}")
    most = max(work, key=lambda record: (record.done.reps, _mass(record.done.load)))
    lines.append(f"Reps: {sets_text([most.done])} on {day(most.on, today)}")
    if current is not None:
        lines.append(strength_text(current))
    return Reply("\n".join(lines))


def _mass(load: Load | None) -> float:
    return float(load.kilograms()) if load is not None else 0.0


def never(exercise: ExerciseName) -> Reply:
    """No set of it stands in the log."""
    return Reply(f"No sets of {exercise} yet.")


def which(verb: str) -> Reply:
    """An exercise has to be named."""
    return Reply(f"Which exercise? Send: {verb} squat")

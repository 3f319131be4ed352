"""The sets that stood last, as "those", "both" and "that" mean them."""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.values import Context
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece
from engine.values.ids import ExerciseName
from engine.values.sets import SetRecord


def last_message(context: Context) -> list[SetRecord]:
    """The sets of the latest message."""
    last = context.recent[-1]
    return [record for record in context.recent if record.message == last.message] if last.message else [last]


def latest_of_it(context: Context) -> list[SetRecord]:
    """The sets of the latest message that are of its last exercise."""
    exercise = context.recent[-1].done.exercise
    return [record for record in last_message(context) if record.done.exercise == exercise]


def run_of_it(context: Context) -> list[SetRecord]:
    """What "those" means: the latest message's sets, or the row of single sets that it ends."""
    latest = latest_of_it(context)
    if len(latest) > 1:
        return latest
    run: list[SetRecord] = []
    for record in reversed(context.recent):
        if record.done.exercise != latest[0].done.exercise or record.on != latest[0].on:
            break
        run.insert(0, record)
    return run


def two_latest(context: Context) -> list[SetRecord]:
    """What "both" means: the two sets of the latest message, or the sets of the latest two messages."""
    latest = last_message(context)
    if len(latest) == 2:
        return latest
    messages = list(dict.fromkeys(record.message for record in context.recent))[-2:]
    return [record for record in context.recent if record.message in messages]


def are_two(context: Context) -> bool:
    """Whether the latest message told two sets of one lift, and nothing else."""
    return len(latest_of_it(context)) == len(last_message(context)) == PAIR


PAIR = 2


def standing(named: Piece, context: Context) -> ExerciseName | None:
    """The lift named, as its latest sets hold it; None for one that does not stand."""
    return next((one.done.exercise for one in reversed(context.recent) if one.done.exercise in named.names), None)


def names_several(pieces: Sequence[Piece], context: Context) -> bool:
    """Whether more than one lift that stands is named: "squat felt heavy, bench was 82.5"."""
    named = [piece for piece in pieces if piece.kind is K.NAME]
    return len(named) > 1 and len({standing(piece, context) for piece in named} - {None}) > 1

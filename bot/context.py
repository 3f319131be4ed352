"""What is known of a person before her words are read."""

from __future__ import annotations

from datetime import timedelta

from bot.sessions import session_of
from bot.turn import Turn
from engine.reading.values import Context, Planned
from engine.values.ids import ExerciseName
from engine.values.prescription import Prescription
from engine.values.sets import SetRecord

IN_HAND_FOR = timedelta(hours=5)
"""After this long without a set nothing is in hand any more: a bare number then needs a name. Common practice."""


def context_of(turn: Turn) -> Context:
    """The context of a message said now."""
    session = session_of(turn)
    recent = turn.store.sets.recent(turn.athlete, turn.today)
    return Context(
        unit=turn.unit,
        now=turn.now,
        doing=in_hand(turn, recent),
        plan=tuple(planned(one) for one in session.prescriptions),
        last=turn.store.sets.last_loads(turn.athlete),
        best=turn.store.sets.best_loads(turn.athlete),
        recent=recent,
        taught=turn.store.taught.shorthands(turn.athlete),
        load_first=turn.preferences.load_first,
    )


def planned(prescription: Prescription) -> Planned:
    """A prescription as far as reading needs it: the first set's target and load stand for all."""
    first = prescription.sets[0]
    return Planned(prescription.exercise, len(prescription.sets), first.target, first.load)


def in_hand(turn: Turn, recent: tuple[SetRecord, ...]) -> ExerciseName | None:
    """The exercise a bare number belongs to.

    It is the one logged last; once the plan's sets of it are done, the one that the receipt named as next. Before the
    first set of a session none is: the plan alone may not decide where a bare number goes.
    """
    session = session_of(turn)
    latest = max(recent, key=lambda record: (record.at, record.place), default=None)
    if latest is None or turn.at - latest.at > IN_HAND_FOR:
        return None
    if session.is_finished(latest.done.exercise):
        following = session.next_up()
        if following is not None:
            return following.prescription.exercise
    return latest.done.exercise

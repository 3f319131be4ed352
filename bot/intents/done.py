"""done: closes the session and sums it up; as planned: the sets that are left, recorded as prescribed."""

from __future__ import annotations

from collections.abc import Sequence

from bot.endings import ending_of
from bot.recording import log
from bot.replies.asplanned import needs_reps, nothing_planned
from bot.replies.session import nothing_done, session_end
from bot.sessions import session_of
from bot.turn import Turn
from engine.reading.values import Act, Logged
from engine.values.ids import ExerciseName
from engine.values.plan import MaxReps, Metres, RepRange, Reps, Seconds
from engine.values.prescription import Prescription, SetTarget
from engine.values.sets import SetDone


def done(turn: Turn, act: Act) -> None:
    """Nothing; the rest is recorded as planned, or the session is summed up."""
    if act.as_planned:
        if act.text != WHOLE or not all_as_planned(turn):
            as_planned(turn, act.exercise)
        return
    ending = ending_of(turn)
    turn.say(session_end(ending, turn.today) if ending.sets else nothing_done())


WHOLE = "all"
"""How the reader says that all of today's lifts were done by the plan."""


def all_as_planned(turn: Turn) -> bool:
    """Whether lifts of today are in the log as prescribed; those whose reps the plan leaves open are named as next."""
    session = session_of(turn)
    sets: list[SetDone] = []
    for prescription in session.prescriptions:
        following = session.following(prescription.exercise)
        if following is None or following.prescription.exercise != prescription.exercise:
            continue
        if not any(isinstance(one.target, RepRange | MaxReps) for one in following.rest):
            sets += performed(prescription, following.rest)
    if sets:
        log(turn, Logged(tuple(sets)))
    return bool(sets)


def as_planned(turn: Turn, exercise: ExerciseName | None) -> None:
    """Nothing; what is left of the lift in hand is in the log as prescribed.

    A range or a maximum is a target and no result: then it asks what was done.
    """
    session = session_of(turn)
    following = session.following(exercise or session.latest_exercise)
    if following is None:
        turn.say(nothing_planned())
        return
    open_ended = [one for one in following.rest if isinstance(one.target, RepRange | MaxReps)]
    if open_ended:
        turn.say(needs_reps(following.prescription))
        return
    log(turn, Logged(performed(following.prescription, following.rest)))


def performed(prescription: Prescription, targets: Sequence[SetTarget]) -> tuple[SetDone, ...]:
    """The sets as if done exactly as prescribed."""
    return tuple(_performed(prescription.exercise, one) for one in targets)


def _performed(exercise: ExerciseName, one: SetTarget) -> SetDone:
    match one.target:
        case Reps(count):
            return SetDone(exercise, count, one.load)
        case Seconds(seconds):
            return SetDone(exercise, 1, one.load, seconds=seconds)
        case Metres(metres):
            return SetDone(exercise, 1, one.load, metres=metres)
        case RepRange(low, _):
            return SetDone(exercise, low, one.load)
        case MaxReps():
            raise ValueError("a maximum is no result")

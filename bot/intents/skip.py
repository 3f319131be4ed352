"""skip: leaves a lift, or the whole session, out of today; the plan stays as it is."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.replies.choices import done_already, nothing_to_skip, skipped, which_lift
from bot.replies.names import listed
from bot.sessions import forget_plan, session_of
from bot.turn import Turn
from engine.reading.values import Act
from engine.values.ids import ExerciseName
from storage.records import ChangeKind, ChoiceKind

LEFT = "left"
"""What the reader calls the lifts of today that are not begun: the session counts as what was done of it."""
WHOLE_DAY = ("today", "day", "session", "all", "everything")


def skip(turn: Turn, act: Act) -> None:
    """Nothing; the lift is out of today's session."""
    session = session_of(turn)
    exercise = act.exercise
    if exercise is None and act.text.strip().casefold() in WHOLE_DAY:
        skip_day(turn)
        return
    planned = [one.exercise for one in session.prescriptions]
    if exercise is None and act.text == LEFT:
        done = {record.done.exercise for record in session.sets_today}
        act = replace(act, also=tuple(one for one in planned if one not in done))
        exercise = act.also[0] if act.also else None
    if exercise is None:
        following = session.following(session.latest_exercise)
        exercise = following.prescription.exercise if following else None
    wanted = [exercise, *act.also] if exercise is not None else []
    left = [one for one in dict.fromkeys(wanted) if one in planned and not session.is_finished(one)]
    if left:
        skip_lifts(turn, left)
    elif exercise is not None and session.is_finished(exercise):
        turn.say(done_already(exercise))
    else:
        turn.say(which_lift("skip", planned) if planned else nothing_to_skip())


def skip_lift(turn: Turn, exercise: ExerciseName) -> None:
    """Nothing; one lift is out of today's session."""
    skip_lifts(turn, [exercise])


def skip_lifts(turn: Turn, exercises: Sequence[ExerciseName]) -> None:
    """Nothing; the lifts are out of today's session, in one step."""
    named = listed(exercises, len(exercises))
    change = turn.begin(ChangeKind.SKIP, f"skipping {named}")
    session = session_of(turn)
    for exercise in exercises:
        slot = session.slot_of(exercise)
        planned_as = slot.exercise if slot is not None else exercise
        turn.store.choices.add(change, ChoiceKind.SKIP, on=turn.today, at=turn.at, exercise=planned_as)
    forget_plan(turn)
    turn.say(skipped(named, session_of(turn).next_up()))


def skip_day(turn: Turn) -> None:
    """Nothing; today's session is left out; what it would have taught the plan, it does not."""
    session = session_of(turn)
    if not session.prescriptions:
        turn.say(nothing_to_skip())
        return
    label = session.planned.day.label if session.planned else "the session"
    change = turn.begin(ChangeKind.SKIP, f"skipping {label}")
    turn.store.choices.add(change, ChoiceKind.SKIP, on=turn.today, at=turn.at)
    forget_plan(turn)
    turn.say(skipped(label, None))

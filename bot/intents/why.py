"""why: the reason of a prescription, the sets it rests on, and what would make the next step."""

from __future__ import annotations

from datetime import timedelta

from bot.coachs_clients import asked_about
from bot.moved_days import days_between
from bot.replies.why import not_for_a_coach, nothing_to_explain, reasons
from bot.sessions import session_of, session_on
from bot.turn import Turn
from engine.progression.explain import why as explain
from engine.reading.values import Act
from engine.values.ids import ExerciseName
from engine.values.prescription import Prescription

LOOK_AHEAD = timedelta(days=14)


def why(turn: Turn, act: Act) -> None:
    """Nothing; the reason is said in at most five lines."""
    person, _ = asked_about(turn, act.text)
    if person.id != turn.athlete:
        # A reason may rest on pain, which is hers alone until she shares it.
        turn.say(not_for_a_coach(person.name, act.exercise))
        return
    prescription = _asked_about(turn, act)
    if prescription is None:
        turn.say(nothing_to_explain())
        return
    evidence = turn.store.sets.get(turn.athlete, prescription.evidence)
    turn.say(reasons(prescription, explain(prescription, evidence)))


def _next_time(turn: Turn, exercise: ExerciseName) -> Prescription | None:
    """What the next session that has the lift asks of it, as the log stands."""
    in_force = session_of(turn).in_force
    if in_force is None:
        return None
    until = turn.today + LOOK_AHEAD
    choices = turn.store.choices.between(turn.athlete, in_force.stored.starts_on, until)
    for day in days_between(in_force, choices, turn.today, until):
        found = session_on(turn, day.on).prescription_of(exercise) if day.on is not None else None
        if found is not None:
            return found
    return None


def _asked_about(turn: Turn, act: Act) -> Prescription | None:
    """The lift named, else the one in hand or just done, else the first of the session."""
    session = session_of(turn)
    if act.exercise is not None:
        return session.prescription_of(act.exercise) or _next_time(turn, act.exercise)
    latest = session.latest_exercise
    if latest is not None and session.prescription_of(latest) is not None:
        return session.prescription_of(latest)
    following = session.next_up()
    if following is not None:
        return following.prescription
    return session.prescriptions[-1] if session.prescriptions else None

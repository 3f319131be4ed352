"""short, lighten, elsewhere, cannot: what can be done about a day or a week that does not fit the plan.

Nothing is changed by such words alone: the reply says what to send. Without a session today they are kept as a note.
"""

from __future__ import annotations

from bot import talk
from bot.replies import bending
from bot.sessions import session_of
from bot.turn import Turn
from engine.reading.values import Act, NoSets
from engine.values.prescription import Prescription


def short(turn: Turn, act: Act) -> None:
    """Nothing; what is left of today, the first things first, and how to leave out the last."""
    left = _left(turn)
    if left:
        turn.say(bending.short([one.exercise for one in left]))
    else:
        talk.no_sets(turn, NoSets())


def lighten(turn: Turn, act: Act) -> None:
    """Nothing; where a lighter week is told."""
    plan = session_of(turn).plan
    if plan is None:
        talk.no_sets(turn, NoSets())
    else:
        turn.say(bending.lighten([week for block in plan.blocks for week in block.deload_weeks]))


def elsewhere(turn: Turn, act: Act) -> None:
    """Nothing; how today's lifts are swapped for what is there."""
    left = _left(turn)
    if left:
        turn.say(bending.elsewhere([one.exercise for one in left]))
    else:
        talk.no_sets(turn, NoSets())


def cannot(turn: Turn, act: Act) -> None:
    """Nothing; how today's session is moved or left out."""
    if _left(turn):
        turn.say(bending.cannot(turn.today))
    else:
        talk.no_sets(turn, NoSets())


def _left(turn: Turn) -> list[Prescription]:
    """Today's lifts that are not finished, in the plan's order."""
    session = session_of(turn)
    return [one for one in session.prescriptions if not session.is_finished(one.exercise)]

"""short, lighten, elsewhere, cannot: what can be done about a day or a week that does not fit the plan.

Nothing is changed by such words alone: the reply says what to send. Without a session today they are kept as a note.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence

from bot import talk
from bot.replies import bending
from bot.replies.reply import Reply
from bot.sessions import session_of
from bot.turn import Turn
from engine.reading.values import Act, NoSets
from engine.values.ids import ExerciseName


def short(turn: Turn, act: Act) -> None:
    """Nothing; what is left of today, the first things first, and how to leave out the last."""
    _say_of_today(turn, bending.short)


def lighten(turn: Turn, act: Act) -> None:
    """Nothing; where a lighter week is told."""
    plan = session_of(turn).plan
    if plan is None:
        talk.no_sets(turn, NoSets())
    else:
        turn.say(bending.lighten([week for block in plan.blocks for week in block.deload_weeks]))


def elsewhere(turn: Turn, act: Act) -> None:
    """Nothing; how today's lifts are swapped for what is there."""
    _say_of_today(turn, bending.elsewhere)


def cannot(turn: Turn, act: Act) -> None:
    """Nothing; how today's session is moved or left out."""
    _say_of_today(turn, lambda left: bending.cannot(turn.today))


def _say_of_today(turn: Turn, reply: Callable[[Sequence[ExerciseName]], Reply]) -> None:
    """Nothing; what there is to say of today's lifts that are not finished, in the plan's order; a note without any."""
    session = session_of(turn)
    left = [one.exercise for one in session.prescriptions if not session.is_finished(one.exercise)]
    if left:
        turn.say(reply(left))
    else:
        talk.no_sets(turn, NoSets())

"""what if I swap A for B, add 2 sets of A, drop A, move tue to wed: before and after; nothing is saved."""

from __future__ import annotations

from bot.plan_changes import EXAMPLE, Asker, changed_by
from bot.replies.plans import how_to
from bot.replies.preview import proposal_problem, what_if_card
from bot.replies.trouble import needs
from bot.sessions import session_of
from bot.turn import Turn
from engine.reading.values import Act
from engine.values.problem import Problem

KINDS = "a swap, sets of a lift, a lift to drop, or a day to move"


def what_if(turn: Turn, act: Act) -> None:
    """Nothing; the difference is said, and the plan stays as it is."""
    in_force = session_of(turn).in_force
    if in_force is None:
        turn.say(how_to())
        return
    text = act.text.strip(" ?.")
    found = changed_by(text, Asker(in_force, turn.catalogue, turn.unit, turn.today))
    if found is None:
        turn.say(needs(KINDS, EXAMPLE))
    elif isinstance(found, Problem):
        turn.say(proposal_problem(found))
    else:
        turn.say(what_if_card(text, found.what_if, found.what_if.off_target(in_force.plan.targets)))

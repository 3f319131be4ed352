"""check: what is worth a look in the plan in force."""

from __future__ import annotations

from bot.replies.plans import findings, how_to
from bot.sessions import session_of
from bot.turn import Turn
from engine.plan.check import check_plan
from engine.plan.text import parse_plan
from engine.reading.values import Act


def check(turn: Turn, act: Act) -> None:
    """Nothing; the findings are said, each with its line and a remedy."""
    in_force = session_of(turn).in_force
    if in_force is None:
        turn.say(how_to())
        return
    parsed = parse_plan(in_force.stored.text, turn.catalogue, turn.unit)
    found = check_plan(in_force.plan, turn.catalogue, lines=dict(parsed.slot_lines))
    turn.say(findings(in_force.plan, found))

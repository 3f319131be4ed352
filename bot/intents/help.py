"""help: ten lines of examples; help plan: how a plan is written."""

from __future__ import annotations

import re

from bot.replies.help import help_text
from bot.replies.plan_guide import plan_guide
from bot.turn import Turn
from engine.reading.values import Act
from storage.records import Role

PLAN = re.compile(r"\b(?:plans?|progress\w*|programmes?|programs?|sheets?|spreadsheets?)\b", re.IGNORECASE)


def help_(turn: Turn, act: Act) -> None:
    """Nothing; the examples for her roles are said, or how a plan is written."""
    if PLAN.search(act.text):
        turn.say(plan_guide())
        return
    turn.say(help_text(coach=Role.COACH in turn.me.roles))

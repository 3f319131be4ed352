"""A projected week, and what a change to the plan would bring."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from decimal import Decimal

from bot.messages import Button
from bot.replies.dates import day
from bot.replies.reply import UNDO, Reply, row
from bot.replies.sets import targets_text
from bot.replies.structured import prescription_json
from engine.plan.projection import ProjectedDay
from engine.plan.what_if import WhatIf
from engine.values.load import plain
from engine.values.muscles import Muscle
from engine.values.plan import Plan
from engine.values.problem import Problem

LINES_SHOWN = 11
MUSCLES_SHOWN = 4
TENTH = Decimal("0.1")


def preview_card(plan: Plan, week: int, first: date, days: Sequence[ProjectedDay], share: Decimal | None) -> Reply:
    """What a week would ask under the assumption named."""
    if not days:
        return Reply(f"Week {week} of {plan.weeks} is done: its sessions are in your log. history shows them.")
    made = (
        "all reps are made" if share is None else f"you make {plain((share * 100).quantize(Decimal(1)))} % of sessions"
    )
    lines = [f"Week {week} of {plan.weeks}, if {made}:"]
    for projected in days:
        deload = ", deload" if projected.planned.deload else ""
        lines.append(f"{day(projected.on)}, {projected.planned.day.label}{deload}")
        lines += [f"{one.exercise} {targets_text(one.sets)}" for one in projected.asked]
    if len(lines) > LINES_SHOWN:
        lines = [*lines[:LINES_SHOWN], f"and {len(lines) - LINES_SHOWN} more lines"]
    prescribes = [prescription_json(one) for projected in days for one in projected.asked]
    return Reply("\n".join(lines), prescribes=prescribes)


def no_such_week(weeks: int) -> Reply:
    """A week that the plan does not have."""
    return Reply(f"Your plan has weeks 1 to {weeks}. Send: preview {weeks}")


def what_if_card(question: str, found: WhatIf, targets: Sequence[Muscle]) -> Reply:
    """Volume, spacing and minutes before and after; nothing is saved."""
    said = question if question.casefold().startswith("i ") else f"I {question}"
    lines = [f"If {said} (nothing is saved):", *_difference(found)]
    off = [muscle.value for muscle in targets]
    if off:
        lines.append(f"Out of its target range then: {', '.join(off)}")
    return Reply("\n".join(lines))


def _difference(found: WhatIf) -> list[str]:
    lines = []
    for muscle, before, after in found.muscles_changed[:MUSCLES_SHOWN]:
        lines.append(f"{muscle.value}: {_count(before)} to {_count(after)} sets a week")
    if len(found.muscles_changed) > MUSCLES_SHOWN:
        lines.append(f"and {len(found.muscles_changed) - MUSCLES_SHOWN} more muscles change")
    minutes = found.minutes_changed
    if minutes:
        _, before_minutes, after_minutes = max(minutes, key=lambda one: abs(one[2] - one[1]))
        lines.append(f"Longest change: a session of {before_minutes} min becomes {after_minutes} min")
    lines += [f"Careful: {one.caution.reason} {one.caution.remedy}" for one in found.cautions_added[:2]]
    if not lines:
        lines.append("Weekly sets, spacing and minutes stay as they are.")
    return lines


def _count(sets: Decimal) -> str:
    return plain(sets.quantize(TENTH))


def proposal_card(description: str, found: WhatIf, whose: str) -> Reply:
    """Where the sets would go, to accept or to leave."""
    lines = [f"For {whose}: {description}", *_difference(found), "Not saved yet."]
    return Reply("\n".join(lines), row(Button("Accept", "v1:proposal:yes"), Button("Leave it", "v1:proposal:no")))


def proposal_problem(problem: Problem) -> Reply:
    """Why there is no such change."""
    return Reply(f"Nothing changed: {problem}")


def proposal_taken(description: str) -> Reply:
    """The plan as changed is in force."""
    return Reply(f"Plan changed: {description}", row(UNDO))


def proposal_left() -> Reply:
    """The plan stays."""
    return Reply("Left as it was. Nothing changed.")


def plan_changed_by(coach: str, description: str) -> Reply:
    """At the client's side."""
    return Reply(f"{coach} changed your plan: {description}. today shows it on your next session.")

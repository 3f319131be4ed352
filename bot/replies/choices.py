"""Skips, swaps and moves in words."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from bot.messages import Button
from bot.replies.dates import day, near
from bot.replies.names import listed, title
from bot.replies.receipt import Following, following_text
from bot.replies.reply import UNDO, Reply, row
from bot.replies.sets import targets_text
from bot.replies.structured import prescription_json
from engine.values.ids import ExerciseName
from engine.values.prescription import Prescription

LABEL = 14


def skipped(what: str, following: Following | None) -> Reply:
    """Skipped for today; what comes next."""
    lines = [f"{title(what)} skipped for today. Your plan stays as it is."]
    if following is None:
        return Reply("\n".join(lines), row(UNDO))
    lines.append(following_text(following))
    return Reply("\n".join(lines), row(UNDO), [prescription_json(following.prescription)])


def nothing_to_skip() -> Reply:
    """There is no session to take a lift out of."""
    return Reply("Nothing changed: no lift of today's plan is left to skip.")


def done_already(exercise: ExerciseName) -> Reply:
    """All sets of the lift are in."""
    return Reply(f"All of today's sets of {exercise} are in: nothing of it is left. Nothing changed.")


def same_lift(exercise: ExerciseName) -> Reply:
    """A lift swapped for itself."""
    return Reply(f"That is the same lift, {exercise}. Nothing changed.")


def which_lift(verb: str, planned: Sequence[ExerciseName]) -> Reply:
    """A lift that is not on today's plan, or none named."""
    return Reply(
        f"Nothing changed: I need a lift of today's plan to {verb}. Today: {listed(planned)}. Send: {verb} {planned[0]}"
    )


def no_plan_to_change(verb: str) -> Reply:
    """Without a plan there is nothing to swap or move."""
    return Reply(f"Nothing changed: there is no session today to {verb}. Log what you do: row 3x12 55")


def swapped(prescription: Prescription, instead_of: ExerciseName, cautions: Sequence[str]) -> Reply:
    """Today's other exercise, with what to lift on it."""
    lines = [f"Today: {prescription.exercise} {targets_text(prescription.sets)} instead of {instead_of}."]
    lines.append(prescription.reason)
    lines += cautions[:2]
    return Reply("\n".join(lines), row(UNDO), [prescription_json(prescription)])


def swap_options(exercise: ExerciseName, options: Sequence[ExerciseName], planned: bool) -> Reply:
    """What may stand in for a lift; the plan's own list first."""
    whose = "Your plan lists" if planned else "Much the same work"
    lines = [f"{title(exercise)} today? {whose}:", listed(options)]
    lines.append(f"Or type: swap {exercise} for ...")
    buttons = tuple(Button(_label(option), f"v1:swap-to:{place}") for place, option in enumerate(options[:3]))
    return Reply("\n".join(lines), (buttons, (Button("Skip it", "v1:swap-skip"),)))


def _label(name: str) -> str:
    return title(name) if len(name) <= LABEL else title(name)[: LABEL - 1] + "…"


def unknown_exercise(text: str) -> Reply:
    """A name that no exercise goes by."""
    return Reply(
        f"Nothing changed: I know no exercise “{text[:40]}”. Check the spelling, or add it: "
        "new exercise: cable hip flexion, like leg extension"
    )


def moved(label: str, to: date, today: date, clash: str = "") -> Reply:
    """A session on another day."""
    lines = (
        [f"{title(label)} moved to {near(to, today)}, {day(to, today)}."]
        if (to - today).days in (0, 1)
        else [f"{title(label)} moved to {day(to, today)}."]
    )
    if clash:
        lines.append(clash)
    return Reply("\n".join(lines), row(UNDO))

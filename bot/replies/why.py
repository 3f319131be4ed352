"""The reason behind a prescription."""

from __future__ import annotations

from collections.abc import Sequence

from bot.replies.reply import Reply
from bot.replies.structured import prescription_json
from engine.values.ids import ExerciseName
from engine.values.prescription import Prescription


def reasons(prescription: Prescription, lines: Sequence[str]) -> Reply:
    """What is asked, then why, on which sets, and what makes the next step."""
    return Reply("\n".join(lines), prescribes=[prescription_json(prescription)])


def nothing_to_explain() -> Reply:
    """There is no prescription to explain."""
    return Reply("No lift of a plan is due, so there is nothing to explain. Name one of your plan: why squat")


def not_for_a_coach(name: str, exercise: ExerciseName | None) -> Reply:
    """Reasons are told to the lifter alone."""
    lift = f" {exercise}" if exercise else ""
    return Reply(
        f"Only {name} is told why, since a reason may rest on private notes: {name} can send why{lift}. "
        f"digest {name} shows the week."
    )

"""When "as planned" cannot be taken at its word."""

from __future__ import annotations

from bot.replies.reply import Reply
from bot.replies.structured import prescription_json
from engine.progression.words import target
from engine.values.plan import RepRange
from engine.values.prescription import Prescription


def needs_reps(prescription: Prescription) -> Reply:
    """A range or a maximum was planned: how many were done has to be told."""
    asked = target(prescription.sets[0].target)
    first = prescription.sets[0].target
    reps = first.high if isinstance(first, RepRange) else 10
    example = " ".join(str(max(1, reps - place)) for place in range(len(prescription.sets)))
    return Reply(
        f"Not saved: the plan for {prescription.exercise} says {asked}, so I need the reps you made. Send: {example}",
        prescribes=[prescription_json(prescription)],
    )


def nothing_planned() -> Reply:
    """Nothing is left that could be recorded as planned."""
    return Reply("Not saved: nothing of a plan is left for today. Send what you did: row 3x12 55")

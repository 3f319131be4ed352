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
from engine.volume.spacing import Caution

LABEL = 14
LISTED_BY_PLAN = "Your plan lists"
ALIKE = "Much the same work"
NAMED = "Which one instead"
TODAY = "today"
"""How the session that a swap is asked for calls itself; others go by their day."""


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


def much_the_same(
    exercise: ExerciseName, others: Sequence[ExerciseName], planned: Sequence[ExerciseName] = ()
) -> Reply:
    """What works much the same as a lift that is not on for today (`planned`), or where no session is."""
    why = f"It is not on for today ({listed(planned)}), so nothing changed" if planned else "No session today to change"
    return Reply(f"Much the same work as {exercise}: {listed(others)}.\n{why}: log what you do.")


def swapped(prescription: Prescription, instead_of: ExerciseName, caution: Caution | None = None) -> Reply:
    """Today's other exercise, with what to lift on it and, where a caution was heard, what to mind."""
    lines = [f"Today: {prescription.exercise} {targets_text(prescription.sets)} instead of {instead_of}."]
    lines.append(prescription.reason)
    if caution is not None:
        lines.append(f"{_spare(caution)}.")
    return Reply("\n".join(lines), row(UNDO), [prescription_json(prescription)])


def swap_offered(exercise: ExerciseName, caution: Caution, instead: Sequence[ExerciseName], number: int) -> Reply:
    """A swap that comes too close to another day, not made yet: why, what to do about it, and the choice."""
    others = f", or take {instead[0]}" if instead else ""
    lines = [f"Not swapped yet. {_why(caution)}", f"{_spare(caution)}{others}."]
    lines.append(f"Until then it stays {exercise}.")
    takes = [Button(_label(name), f"v1:swap-offer:{number}:{place}") for place, name in enumerate(instead)]
    anyway, leave = (
        Button("Swap anyway", f"v1:swap-offer:{number}:yes"),
        Button("Leave it", f"v1:swap-offer:{number}:no"),
    )
    return Reply("\n".join(lines), row(anyway, *takes, leave))


def _why(caution: Caution) -> str:
    """The reason; told from the day it falls on where that is one to come."""
    if caution.later == TODAY:
        return title(caution.reason)
    return f"{caution.later}, {caution.after}: {caution.reason}"


def _spare(caution: Caution) -> str:
    when = "" if caution.later == TODAY else f", {caution.later}"
    return f"Keep {caution.spare} reps in reserve on {caution.after}{when}"


def swap_left(prescription: Prescription | None, exercise: ExerciseName) -> Reply:
    """The swap was let go; what stays."""
    if prescription is None:
        return Reply(f"Not swapped: {exercise} stays.")
    words = f"Not swapped: {exercise} {targets_text(prescription.sets)} stays."
    return Reply(words, (), [prescription_json(prescription)])


def swap_over(exercise: ExerciseName) -> Reply:
    """An answer to an offer that came too late."""
    return Reply(f"Not swapped: sets of {exercise} are in, or it is out of today. Nothing changed.")


def swap_options(exercise: ExerciseName, options: Sequence[ExerciseName], whose: str) -> Reply:
    """What may stand in for a lift, and who says so."""
    lines = [f"{title(exercise)} today? {whose}:", listed(options)]
    lines.append(f"Or type: swap {exercise} for ...")
    buttons = tuple(Button(_label(option), f"v1:swap-to:{place}") for place, option in enumerate(options[:3]))
    return Reply("\n".join(lines), (buttons, (Button("Skip it", "v1:swap-skip"),)))


def nothing_like_it(exercise: ExerciseName) -> Reply:
    """No lift that works the same is known for what there is."""
    return Reply(
        f"Nothing changed: I know no lift much like {exercise} with that. Send: swap {exercise} for ..., or skip it.",
    )


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

"""Today's session, the next set, the end of a session."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from typing import Protocol

from bot.messages import Button
from bot.replies.dates import day, near
from bot.replies.names import listed, title
from bot.replies.receipt import Following
from bot.replies.reply import Reply, row
from bot.replies.screen import fitting
from bot.replies.sets import asked_text, load_text, targets_text
from bot.replies.structured import prescription_json
from engine.progression.sessions import Change, change_since
from engine.progression.words import counted
from engine.values.exercise import Exercise, FailureGuard
from engine.values.ids import ExerciseName
from engine.values.plan import MaxReps, PlannedDay, Slot
from engine.values.prescription import Held, Prescription

LIFTS_SHOWN = 9


class Card(Protocol):
    """What a session card shows."""

    @property
    def planned(self) -> PlannedDay | None: ...
    @property
    def prescriptions(self) -> Sequence[Prescription]: ...
    def slot_of(self, exercise: ExerciseName) -> Slot | None: ...
    def sets_done(self, exercise: ExerciseName) -> int: ...


def session_card(card: Card, on: date, today: date, cautions: Sequence[str] = (), *, every: bool = False) -> Reply:
    """The session of a day, one lift a line, with what changed since last time and what to be careful with.

    `every`: a long session was asked for whole, though it goes past the screen.
    """
    lines = [_heading(card.planned, on, today)]
    shown = len(card.prescriptions) if every else LIFTS_SHOWN
    for place, one in enumerate(card.prescriptions[:shown], start=1):
        name = f"{_group(card, one)}{title(one.exercise)}"
        lines.append(f"{place} {name} {asked_text(one)}{_done(card, one)}")
    if (more := len(card.prescriptions) - shown) > 0:
        lines.append(f"and {counted(more, 'more lift')}: today all")
    lines += _remarks(card)
    lines += [f"Careful: {caution}" for caution in cautions[:1]]
    buttons = row(Button("Why", "v1:why"), Button("Skip today", "v1:skip-day"))
    return Reply("\n".join(lines), buttons, [prescription_json(one) for one in card.prescriptions])


def _heading(planned: PlannedDay | None, on: date, today: date) -> str:
    if planned is None:
        return day(on, today)
    deload = ", deload week" if planned.deload else ""
    return f"{day(on, today)}, {planned.day.label}, week {planned.week} of {planned.block.weeks}{deload}"


def _group(card: Card, one: Prescription) -> str:
    """The superset letter and place of a lift: A1, A2; empty where it stands alone."""
    slot = card.slot_of(one.exercise)
    if slot is None or slot.group is None:
        return ""
    partners = [other.exercise for other in card.prescriptions if _letter(card, other) == slot.group]
    return f"{slot.group}{partners.index(one.exercise) + 1} "


def _letter(card: Card, one: Prescription) -> str | None:
    slot = card.slot_of(one.exercise)
    return slot.group if slot is not None else None


def _done(card: Card, one: Prescription) -> str:
    done = card.sets_done(one.exercise)
    if not done:
        return ""
    return " (done)" if done >= len(one.sets) else f" ({done} of {len(one.sets)} done)"


def _remarks(card: Card) -> list[str]:
    """What moved since last time, and the standard of maximum sets before they are tried."""
    lines = []
    for change in (Change.HEAVIER, Change.LIGHTER):
        moved = list(dict.fromkeys(one.exercise for one in card.prescriptions if _told(one) is change))
        if moved:
            lines.append(f"{change.value.capitalize()} than last time: {', '.join(moved)}")
    more = [f"{one.exercise} at {load_text(one.offer.load)}" for one in card.prescriptions if one.offer is not None]
    if more:
        lines.append(f"To spare lately, so if you like: {listed(more, 2)}")
    if any(Held.PAIN in one.held for one in card.prescriptions):
        held = [one.exercise for one in card.prescriptions if Held.PAIN in one.held]
        lines.append(f"Held after your pain note: {listed(held, 3)}. Say pain gone when it is.")
    for one in card.prescriptions:
        slot = card.slot_of(one.exercise)
        if slot is not None and slot.standard and isinstance(slot.target, MaxReps):
            lines.append(f"{title(one.exercise)}: {slot.standard}")
    return lines


def _told(one: Prescription) -> Change | None:
    """How its load compares with the one last lifted; the heading has told already that a deload is lighter."""
    change = change_since(one)
    return None if change is Change.LIGHTER and Held.DELOAD in one.held else change


def next_set(following: Following, in_hand: ExerciseName | None, slot: Slot | None, exercise: Exercise | None) -> Reply:
    """The next set with its rest and cue; the form standard and the spotter line before a maximum set."""
    one = following.prescription
    rest = following.rest
    if one.exercise == in_hand and following.place:
        first = targets_text(rest[:1]).removeprefix("1×")
        lines = [f"{title(one.exercise)}, set {following.place + 1} of {len(one.sets)}: {first}"]
    else:
        lines = [f"{title(one.exercise)} {targets_text(rest) if following.place else asked_text(one)}"]
    if slot is not None:
        lines += _slot_lines(slot)
    if exercise is not None and slot is not None and wants_guard(slot, exercise):
        lines.append("To failure: only with a spotter or safety pins.")
    if not (slot and slot.cues) and exercise is not None and exercise.cues:
        lines.append(exercise.cues[0])
    return Reply(
        "\n".join(lines), row(Button("Skip", "v1:skip-next"), Button("Why", "v1:why")), [prescription_json(one)]
    )


def _slot_lines(slot: Slot) -> list[str]:
    lines = []
    if slot.standard:
        lines.append(f"Standard: {slot.standard}")
    if slot.rest_seconds:
        lines.append(f"Rest {rest_text(slot.rest_seconds)} between sets")
    if slot.cues:
        lines.append("; ".join(slot.cues))
    return lines


def wants_guard(slot: Slot, exercise: Exercise) -> bool:
    """Whether a set of this slot goes to failure on a lift that then wants a spotter or safeties."""
    to_failure = isinstance(slot.target, MaxReps) or (slot.effort is not None and slot.effort.rir == 0)
    return to_failure and exercise.guard is FailureGuard.SPOTTER_OR_SAFETIES


def rest_text(seconds: int) -> str:
    """2 min, 90 s."""
    return f"{seconds // 60} min" if seconds % 60 == 0 and seconds >= 120 else f"{seconds} s"


def all_done() -> Reply:
    """Every planned set is in the log."""
    return Reply("All of today's sets are in. Type done to close the session.", row(Button("Done", "v1:done")))


def not_worked_out() -> Reply:
    """A fault of ours in what is planned; the log is not touched by it."""
    return Reply("I can't work out this session right now: a fault on my side, sorry. Sets you send are saved.")


def no_session(coming: PlannedDay | None, shown: date, today: date, *, has_plan: bool) -> Reply:
    """A rest day, or no plan yet; `coming` is the first session from the day shown on."""
    if not has_plan:
        return Reply("No plan yet. Send one as text or a file (/plan shows how), or just log: row 3x12 55")
    if coming is None:
        return Reply("Your plan has ended. Send a new one as text or a file: /plan shows how.")
    when = near(coming.on, today) if coming.on else "whenever you come"
    if shown != today:
        return Reply(f"{day(shown, today)} is a rest day. Next: {coming.day.label}, {when}.")
    return Reply(f"Rest day. Next: {coming.day.label}, {when}. Sets you send are logged all the same.")


@dataclass(frozen=True, slots=True)
class Ending:
    """What a session came to. `up` pairs a lift with how its load moved since last time."""

    on: date
    label: str
    lifts: int
    sets: int
    planned_sets: int
    planned_done: int
    minutes: int | None
    up: Sequence[tuple[ExerciseName, str]]
    short: Sequence[str]
    records: Sequence[str]
    unanswered: Sequence[str]
    coming: PlannedDay | None


def nothing_done() -> Reply:
    """There is no session to sum up."""
    return Reply("No sets logged today, so there is nothing to sum up. A set looks like row 3x12 55")


def _sets(ending: Ending) -> str:
    """Planned sets done of those planned, and what came on top."""
    if not ending.planned_sets:
        return counted(ending.sets, "set")
    extra = ending.sets - ending.planned_done
    more = f", and {extra} more" if extra > 0 else ""
    return f"{ending.planned_done} of {ending.planned_sets} planned sets{more}"


def session_end(ending: Ending, today: date) -> Reply:
    """The session as saved, what went up, what fell short, when the next one is."""
    head = f"Session saved, {day(ending.on, today)}" + (f", {ending.label}" if ending.label else "")
    minutes = f", {ending.minutes} min" if ending.minutes else ""
    first = [head, f"{counted(ending.lifts, 'lift')}, {_sets(ending)}{minutes}"]
    return Reply("\n".join(fitting(lambda most: [*first, *_of_session(ending, most), *_behind(ending, today)])))


def _of_session(ending: Ending, most: int) -> list[str]:
    """What went up, fell short and broke records, so many of each."""
    up = [f"{exercise} {load}" for exercise, load in ending.up]
    lines = [f"Up: {listed(up, most)}"] if up else []
    lines += [f"Short: {line}" for line in ending.short[:most]]
    return [*lines, *(f"Record: {line}" for line in ending.records[:most])]


def _behind(ending: Ending, today: date) -> list[str]:
    """What still waits, and when the next session is."""
    lines = [f"Not recorded, never answered: {line}" for line in ending.unanswered[:2]]
    if ending.coming is not None and ending.coming.on is not None:
        lines.append(f"Next: {day(ending.coming.on, today)}, {ending.coming.day.label}")
    return lines


def generic_reminder() -> Reply:
    """A training time without a plan."""
    return Reply("Time to train. Log as you go: row 3x12 55", row(Button("Snooze 1 h", "v1:snooze")))

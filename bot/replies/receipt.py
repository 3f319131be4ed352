"""What was saved, in full: the line of one lift, or a list of all lifts of one message; and what comes next."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import date

from bot.replies.dates import near
from bot.replies.names import title
from bot.replies.reply import UNDO, Reply, row
from bot.replies.sets import asked_text, sets_text, targets_text
from bot.replies.structured import prescription_json
from bot.replies.trouble import unread_lines
from engine.progression.words import counted, target
from engine.reading.values import Unread
from engine.values.ids import ExerciseName
from engine.values.prescription import Prescription, SetTarget
from engine.values.sets import SetDone

LIFTS_SHOWN = 40


@dataclass(frozen=True, slots=True)
class Lift:
    """One lift of a day: all sets of it that stand, and how many the plan asks for (0: it is not planned).

    `on` is told where one message told several days. `new`: the sets just told, where those before them stand in a
    message further up; none where all are to be said.
    """

    exercise: ExerciseName
    sets: Sequence[SetDone]
    planned: int = 0
    on: date | None = None
    new: Sequence[SetDone] = ()


@dataclass(frozen=True, slots=True)
class Following:
    """What to do next: the rest of a prescription from set `place` (counted from 0) on."""

    prescription: Prescription
    place: int

    @property
    def rest(self) -> Sequence[SetTarget]:
        return self.prescription.sets[self.place :]


@dataclass(frozen=True, slots=True)
class Aside:
    """What else a receipt has to say: another day, a note kept, records, pieces not read, the plan all done."""

    on: date | None = None
    noted: bool = False
    lines: Sequence[str] = ()
    unread: Sequence[Unread] = field(default_factory=tuple)
    complete: bool = False


def lift_line(lift: Lift, following: Following | None, aside: Aside, today: date) -> Reply:
    """The line of one lift: what stands of it, and the next set or the next lift."""
    done = len([one for one in lift.sets if one.counts_as_work])
    head = title(lift.exercise)
    if lift.new and not lift.planned:
        on = "today" if aside.on is None or aside.on == today else "that day"
        lines = [f"{head} {_single(lift.new)}. Saved{_when(aside, today)}. {counted(len(lift.sets), 'set')} {on}."]
    elif lift.new:
        lines = [f"{head} {_so_far(done, lift.planned)}", f"{sets_text(lift.new)}. Saved{_when(aside, today)}."]
    elif len(lift.sets) > 1 and done >= lift.planned and lift.planned:
        lines = [f"{head} {sets_text(lift.sets)}. Saved{_when(aside, today)}."]
    elif lift.planned:
        lines = [f"{head} {_so_far(done, lift.planned)}", f"{sets_text(lift.sets)}. Saved{_when(aside, today)}."]
    else:
        lines = [f"{head} {_single(lift.sets)}. Saved{_when(aside, today)}."]
    return _receipt(lines, following, aside, lift.exercise)


def _so_far(done: int, planned: int) -> str:
    """ "2 of 3"; more sets than planned are no part of them: "7 sets, 3 planned"."""
    return f"{done} of {planned}" if done <= planned else f"{counted(done, 'set')}, {planned} planned"


def _single(sets: Sequence[SetDone]) -> str:
    """Three bare numbers would read as a list; one set says that it is one."""
    words = sets_text(sets)
    return f"1 set of {words}" if len(sets) == 1 and words[:1].isdigit() else words


def lift_list(lifts: Sequence[Lift], following: Following | None, aside: Aside, today: date) -> Reply:
    """All lifts of one message, one a line."""
    total = sum(len(lift.sets) for lift in lifts)
    lines = [f"Saved {counted(total, 'set')}{_when(aside, today)}:"]
    lines += [_listed(lift, today) for lift in lifts[:LIFTS_SHOWN]]
    if len(lifts) > LIFTS_SHOWN:
        lines.append(f"and {len(lifts) - LIFTS_SHOWN} more lifts")
    return _receipt(lines, following, aside, None)


def so_far(lifts: Sequence[Lift], ahead: str) -> Reply:
    """What stands of a day that no plan is for, and what the plan says instead."""
    total = sum(len(lift.sets) for lift in lifts)
    listed = [_listed(lift, date.min) for lift in lifts[:LIFTS_SHOWN]]
    return Reply("\n".join([f"So far today, {counted(total, 'set')}:", *listed, ahead]))


def _listed(lift: Lift, today: date) -> str:
    on = "" if lift.on is None else f"{near(lift.on, today)}: "
    return f"{title(on)}{lift.exercise if on else title(lift.exercise)} {sets_text(lift.sets)}"


def _when(aside: Aside, today: date) -> str:
    return "" if aside.on is None or aside.on == today else f" for {near(aside.on, today)}"


def _receipt(lines: list[str], following: Following | None, aside: Aside, in_hand: ExerciseName | None) -> Reply:
    if aside.noted:
        lines.append("Note kept.")
    lines += aside.lines
    lines += unread_lines(aside.unread)
    prescribes = []
    if following is not None:
        lines.append(following_text(following, in_hand))
        prescribes = [prescription_json(following.prescription)]
    elif aside.complete:
        lines.append("All of today's sets are in. Send done for the summary.")
    return Reply("\n".join(lines), row(UNDO), prescribes)


def following_text(following: Following, in_hand: ExerciseName | None = None) -> str:
    """Next: barbell row 3×12 at 55 kg; or, inside a lift, Next set: 12 at 55 kg."""
    rest = following.rest
    if following.prescription.exercise == in_hand:
        first = targets_text(rest[:1]).removeprefix("1×")
        return f"Next set: {first}"
    asked = targets_text(rest) if following.place else asked_text(following.prescription)
    return f"Next: {following.prescription.exercise} {asked}"


def short_target(one: SetTarget) -> str:
    """What one set aims at, without its load."""
    return target(one.target)

"""A week in words: so far, on Sunday, and the sets for each muscle."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from decimal import Decimal
from typing import Any

from bot.messages import Button
from bot.replies.dates import day
from bot.replies.names import listed
from bot.replies.records import trend_text
from bot.replies.reply import Reply, row
from bot.replies.screen import fitting
from bot.replies.sets import asked_text, change_text, count_text, load_text, sets_text
from bot.replies.structured import number
from bot.week_values import Moved, Week
from engine.progression.sessions import Change, change_since
from engine.progression.words import counted
from engine.values.load import plain
from engine.values.muscles import Muscle
from engine.values.prescription import Held, Prescription, Verdict
from engine.volume.muscle_week import MuscleWeek, Standing

ALL_SHOWN = 12
THIS_WEEK = "This week so far"
TENTH = Decimal("0.1")


def week_so_far(week: Week, this: bool = True) -> Reply:
    """This week up to now, or the whole of last week."""
    head = f"{THIS_WEEK if this else 'Last week'}: {sessions_text(week)}"
    return Reply("\n".join(fitting(lambda most: _lines(head, week, most))), volume=volume_json(week.volume))


def summary(week: Week, coming: NextWeek) -> Reply:
    """The Sunday summary: sessions, sets by muscle, what went up, what next week asks."""
    head = f"Week {week.first.isocalendar().week}: {sessions_text(week)}"
    buttons = row(Button("Volume", "v1:volume"), Button("Stop these", "v1:stop-summary"))
    lines = fitting(lambda most: [*_lines(head, week, most), *_next(week, coming, most)], len(buttons))
    return Reply("\n".join(lines), buttons, volume=volume_json(week.volume))


def _next(week: Week, coming: NextWeek, most: int) -> list[str]:
    told = coming.told(most)
    if not told and week.coming is not None and week.coming.on is not None:
        return [f"Next: {day(week.coming.on, week.last)}, {week.coming.day.label}"]
    return told


def sessions_text(week: Week) -> str:
    """The week's sessions against those planned: 2 of 3 sessions, 1 of 1 session."""
    if week.planned:
        return f"{week.sessions} of {counted(week.planned, 'session')}"
    return counted(week.sessions, "session")


def _lines(head: str, week: Week, most: int) -> list[str]:
    asked = f" of {week.asked} planned" if week.asked else ""
    lines = [head, f"Sets: {week.sets}{asked}"]
    if week.volume:
        lines.append(_muscles(week.volume, 2 * most))
    if week.up:
        lines.append("Up: " + listed([_moved(one, up=True) for one in week.up], most))
    if week.same:
        lines.append(f"Same: {listed(week.same, most)}")
    if week.down:
        lines.append("Down: " + listed([_moved(one, up=False) for one in week.down], most))
    stalls = [trend_text(name, trend) for name, trend in week.stalls[: min(most, 2)]]
    lines += [f"Look at: {line}" for line in stalls if line]
    if week.pains:
        lines.append("Pain noted: load held there. See a professional if it stays.")
    return lines


def _moved(one: Moved, *, up: bool) -> str:
    """By load where the load moved that way, both sets where it moved the other way, else by what was counted."""
    now, before = one.now.load, one.before.load
    if now is not None and before is not None and now != before:
        if (before < now) is not up:
            return f"{one.exercise} {sets_text([one.now])} (from {sets_text([one.before])})"
        return f"{one.exercise} {load_text(now)} ({change_text(before, now)})"
    if one.now.seconds is not None or one.now.metres is not None:
        return f"{one.exercise} {count_text(one.now)} (from {count_text(one.before)})"
    return f"{one.exercise} {one.now.reps} reps ({one.now.reps - one.before.reps:+d})"


def _muscles(volume: Mapping[Muscle, MuscleWeek], most: int) -> str:
    """Muscles off their target first, then by sets."""
    order = sorted(volume.items(), key=lambda pair: (pair[1].standing in (None, Standing.WITHIN), -pair[1].fractional))
    shown = [f"{muscle.value} {_count(one)}" for muscle, one in order[:most]]
    more = f", and {len(order) - most} more" if len(order) > most else ""
    return "Hard sets: " + ", ".join(shown) + more


def _count(one: MuscleWeek) -> str:
    count = plain(one.fractional.quantize(TENTH))
    return f"{count} of {plain(one.target.low)}-{plain(one.target.high)}" if one.target else count


def volume_card(week: Week, muscle: Muscle | None, this: bool = True) -> Reply:
    """Hard sets for each muscle, one a line; or all that is known of one. `this`: of this week, else of last week."""
    volume, when = week.volume, "this week" if this else "last week"
    if not volume:
        return Reply(f"No hard sets {when}{' yet' if this else ''}.", volume={})
    if muscle is not None:
        return Reply(_one_muscle(muscle, volume.get(muscle), this), volume=volume_json(volume))
    order = sorted(volume.items(), key=lambda pair: -pair[1].fractional)
    lines = [f"Hard sets {when} (secondary movers count half):"]
    lines += [f"{name.value} {_count(one)}{_standing(one)}" for name, one in order[:ALL_SHOWN]]
    if len(order) > ALL_SHOWN:
        lines.append(f"and {len(order) - ALL_SHOWN} more: volume calves")
    return Reply("\n".join(lines), volume=volume_json(volume))


def _standing(one: MuscleWeek) -> str:
    return (
        {Standing.BELOW: ", below target", Standing.ABOVE: ", above target"}.get(one.standing, "")
        if one.standing
        else ""
    )


def _one_muscle(muscle: Muscle, one: MuscleWeek | None, this: bool) -> str:
    if one is None:
        return f"No hard sets for {muscle.value} {'this week yet' if this else 'last week'}."
    lines = [
        f"{muscle.value}{'' if this else ', last week'}: {_count(one)} hard sets{_standing(one)}",
        f"{plain(one.direct)} direct, on {one.days} days",
    ]
    if one.reps:
        lines.append("Reps: " + ", ".join(f"{band.value}: {plain(count)}" for band, count in one.reps.items()))
    if one.tonnage:
        lines.append(f"Tonnage: {plain(one.tonnage.quantize(Decimal(1)))} kg")
    return "\n".join(lines)


def volume_json(volume: Mapping[Muscle, MuscleWeek]) -> dict[str, Any]:
    """The week's sets in the shape of the replay contract."""
    return {
        muscle.value: {
            "direct": number(one.direct),
            "fractional": number(one.fractional),
            "target": [number(one.target.low), number(one.target.high)] if one.target else None,
        }
        for muscle, one in volume.items()
    }


@dataclass(frozen=True, slots=True)
class NextAsk:
    """What changes in one lift next week."""

    lift: str
    sets: str
    up: bool


@dataclass(frozen=True, slots=True)
class NextWeek:
    """What changes next week: a deload, or lifts heavier than last lifted or with a set more, then lighter ones."""

    asks: Sequence[NextAsk] = ()
    deload: bool = False

    def told(self, most: int) -> list[str]:
        """With what each asks where there are few, else by name."""
        if self.deload:
            return ["Next week: deload, fewer sets and less load"]
        if len(self.asks) <= most:
            whole = [f"{one.lift}{'' if one.up else ' lighter,'} {one.sets}" for one in self.asks]
            return [f"Next week: {'; '.join(whole)}"] if whole else []
        parts = (
            ("up", [one.lift for one in self.asks if one.up]),
            ("lighter", [o.lift for o in self.asks if not o.up]),
        )
        return [
            f"Next week {how}: {listed(lifts, most if len(lifts) > 2 * most else 2 * most)}"
            for how, lifts in parts
            if lifts
        ]


def next_week(prescriptions: Sequence[Prescription]) -> NextWeek:
    """What next week's sessions change."""
    if any(Held.DELOAD in one.held for one in prescriptions):
        return NextWeek(deload=True)
    up = [one for one in prescriptions if _goes_up(one)]
    down = [one for one in prescriptions if change_since(one) is Change.LIGHTER and not _goes_up(one)]
    asks = [NextAsk(one.exercise, asked_text(one), one in up) for one in [*up, *down]]
    return NextWeek(tuple(dict.fromkeys(asks)))


def _goes_up(one: Prescription) -> bool:
    return change_since(one) is Change.HEAVIER or one.verdict is Verdict.ADD_SET

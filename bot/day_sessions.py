"""The session that a plan asks for on a day, and how far it has come.

All of it follows from plan, log and date; what is remembered is keyed by everything it depends on.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date, datetime, timedelta

from bot.memory import Memory
from bot.moved_days import next_day
from bot.plans_in_force import PlanInForce, plan_in_force
from bot.replies.receipt import Following
from bot.session_frames import facts_of, frame_of
from engine.progression.inside import work_sets
from engine.progression.sessions import SlotToday, progress, taken
from engine.values.ids import AthleteId, ExerciseName
from engine.values.plan import Plan, PlannedDay, Slot
from engine.values.prescription import Prescription
from engine.values.sets import SetRecord
from storage.records import Choice
from storage.store import Store


@dataclass(frozen=True, slots=True)
class Session:
    """One day of an athlete: what is planned, what is asked, what is done.

    `prescriptions` leaves skipped lifts out; `latest_exercise` is the lift logged last that day.
    """

    on: date
    in_force: PlanInForce | None
    planned: PlannedDay | None
    slots: Sequence[SlotToday]
    sets_today: Sequence[SetRecord]
    coming: PlannedDay | None
    choices: Sequence[Choice] = ()
    begun: Sequence[tuple[PlannedDay, Sequence[SlotToday]]] = ()
    """Every training day that the day's sets belong to, `planned` among them: two sessions may share a date."""
    broken: bool = False
    """What is planned could not be worked out; sets are logged all the same."""

    @property
    def plan(self) -> Plan | None:
        return self.in_force.plan if self.in_force is not None else None

    @property
    def prescriptions(self) -> Sequence[Prescription]:
        return [one.prescription for one in self.slots if not one.skipped]

    @property
    def latest_exercise(self) -> ExerciseName | None:
        latest = max(self.sets_today, key=lambda record: (record.at, record.place), default=None)
        return latest.done.exercise if latest is not None else None

    def slot_of(self, exercise: ExerciseName) -> Slot | None:
        """The slot that asks for an exercise today, also where the exercise stands in for the slot's own."""
        return next((one.slot for one in self.slots if one.prescription.exercise == exercise), None)

    def prescription_of(self, exercise: ExerciseName) -> Prescription | None:
        """What is asked of an exercise today."""
        return next((one for one in self.prescriptions if one.exercise == exercise), None)

    def sets_done(self, exercise: ExerciseName) -> int:
        """How many work sets of an exercise stand today."""
        return work_sets([one for one in self.sets_today if one.done.exercise == exercise])

    def planned_sets(self, exercise: ExerciseName) -> int:
        """How many sets of an exercise today asks for, 0 where it is not planned."""
        return sum(len(one.sets) for one in self.prescriptions if one.exercise == exercise)

    def is_finished(self, exercise: ExerciseName) -> bool:
        """Whether the exercise is planned today and all its sets are in."""
        asked = self.planned_sets(exercise)
        return 0 < asked <= self.sets_done(exercise)

    def following(self, in_hand: ExerciseName | None) -> Following | None:
        """What comes next where this lift is in hand: the rest of it, its superset's partner, or the next lift."""
        found = progress(self.slots, self.sets_today, in_hand).next
        return None if found is None else Following(found.today.prescription, found.number - 1)

    def swapped_in_since(self, moment: datetime | None) -> ExerciseName | None:
        """The exercise swapped in after an instant (None: at any time of the day), if its sets are still to do."""
        swaps = [one for one in self.choices if one.to is not None and (moment is None or one.at > moment)]
        names = [one.to for one in swaps if one.to is not None and not self.sets_done(one.to)]
        return names[-1] if names else None

    def next_up(self) -> Following | None:
        """What comes next after the lift logged last."""
        return self.following(self.latest_exercise)


def session_at(store: Store, memory: Memory, athlete: AthleteId, on: date) -> Session:
    """What is planned, asked and done on a day."""
    in_force = plan_in_force(store, memory, athlete, on)
    sets_today = store.sets.of_day(athlete, on)
    if in_force is None:
        return Session(on, None, None, (), sets_today, None)
    frame = frame_of(store, memory, athlete, in_force, sets_today, on)
    stored = facts_of(store, athlete, in_force, on).choices
    coming = next_day(in_force, stored, on + timedelta(days=1))
    choices = [one for one in stored if one.on == on]
    slots = [replace(one, prescription=taken(one.prescription, sets_today)) for one in frame.slots]
    return Session(on, in_force, frame.planned, slots, sets_today, coming, choices, frame.begun, frame.broken)

"""A session as spacing sees it: the hard sets of each exercise, to failure or not, at an instant.

Sessions come from a plan, from the log, or from both side by side. Easy work is left out: at 4 or more reps in reserve
(about half the possible repetitions) recovery is a matter of hours.
Source: Morán-Navarro et al. 2017, Eur J Appl Physiol 117:2387; González-Badillo et al. 2016, Int J Sports Med 37:295.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterable, Sequence
from dataclasses import dataclass
from datetime import UTC, date, datetime, time, timedelta, tzinfo
from decimal import Decimal

from engine.values.effort import Effort
from engine.values.ids import ExerciseName
from engine.values.plan import MaxReps, Slot, TrainingDay
from engine.values.sets import SetDone, SetRecord

EASY_RIR = Decimal(4)
NONE = Decimal(0)
SOME_MONDAY = datetime(2001, 1, 1, 18, tzinfo=UTC)
"""Day 0 of a planned week that has no dates: only distances between its days matter."""
TOLD_LATER = time(12)
"""When a session is taken to have ended if its sets were told on another day: the middle of its day."""
FAMILIAR_DAYS = 56
"""A movement done within so many days is familiar: one bout protects against the next for weeks.

The effect is published (Nosaka et al. 2001, Med Sci Sports Exerc 33:1490-1495, up to six months; from memory); eight
weeks is common practice, no source."""


@dataclass(frozen=True, slots=True)
class Work:
    """The hard sets of one exercise in one session; `failure`: at least one of them left nothing in reserve."""

    exercise: ExerciseName
    hard: Decimal
    failure: bool = False
    new: bool = False


@dataclass(frozen=True, slots=True)
class Session:
    """Hard work at one instant.

    Errors: ValueError for a naive `at`; hours between two wall clocks are not hours elapsed.
    """

    label: str
    at: datetime
    work: tuple[Work, ...]

    def __post_init__(self) -> None:
        if self.at.utcoffset() is None:
            raise ValueError(f"no zone on {self.at}: expected an aware instant, e.g. datetime(..., tzinfo=UTC)")


def sessions_planned(
    days: Iterable[tuple[int, TrainingDay]],
    *,
    sets_of: Callable[[Slot], int] = lambda slot: slot.sets,
    known: Collection[ExerciseName] | None = None,
) -> tuple[Session, ...]:
    """The sessions of a plan, oldest first.

    Shape: each day with its distance in days from one Monday, so that several weeks may be laid end to end; days
    are taken to be trained at the same hour. `known` None: every exercise is familiar.
    """
    return tuple(
        Session(day.label, SOME_MONDAY + timedelta(days=after), work_planned(day.slots, sets_of=sets_of, known=known))
        for after, day in sorted(days, key=lambda pair: pair[0])
    )


def work_planned(
    slots: Sequence[Slot],
    *,
    sets_of: Callable[[Slot], int] = lambda slot: slot.sets,
    known: Collection[ExerciseName] | None = None,
) -> tuple[Work, ...]:
    """The hard work of a planned day; as many reps as possible is to failure, unless the slot keeps some in reserve."""
    return tuple(
        Work(
            exercise=slot.exercise,
            hard=Decimal(sets_of(slot)),
            failure=slot.effort.rir <= 0 if slot.effort is not None else isinstance(slot.target, MaxReps),
            new=known is not None and slot.exercise not in known,
        )
        for slot in slots
        if not _is_easy(slot.effort) and sets_of(slot) > 0
    )


def sessions_done(
    records: Iterable[SetRecord], zone: tzinfo, *, known: Collection[ExerciseName] | None = None
) -> tuple[Session, ...]:
    """The sessions of a log, oldest first: one for each local day, at the instant of its last set.

    Shape: `zone` is the athlete's; a day told on another day is taken to have ended at noon.
    """
    by_day: dict[date, list[SetRecord]] = {}
    for record in records:
        by_day.setdefault(record.on, []).append(record)
    return tuple(
        Session(day.isoformat(), _ended(day, by_day[day], zone), _work_done(by_day[day], known))
        for day in sorted(by_day)
    )


def familiar(records: Iterable[SetRecord], before: date) -> frozenset[ExerciseName]:
    """The exercises done in the eight weeks before a day."""
    since = before - timedelta(days=FAMILIAR_DAYS)
    return frozenset(record.done.exercise for record in records if since <= record.on < before)


def to_failure(done: SetDone) -> bool:
    """Whether a performed set left nothing in reserve: told so, at zero reps in reserve, or missed."""
    return done.failure or done.missed or (done.effort is not None and done.effort.rir <= 0)


def _work_done(records: Sequence[SetRecord], known: Collection[ExerciseName] | None) -> tuple[Work, ...]:
    by_exercise: dict[ExerciseName, list[SetDone]] = {}
    for record in records:
        done = record.done
        if done.is_hard and (to_failure(done) or not _is_easy(done.effort)):
            by_exercise.setdefault(done.exercise, []).append(done)
    return tuple(
        Work(
            exercise=name,
            hard=sum((Decimal(1) if done.side is None else Decimal("0.5") for done in sets), NONE),
            failure=any(to_failure(done) for done in sets),
            new=known is not None and name not in known,
        )
        for name, sets in by_exercise.items()
    )


def _ended(day: date, records: Sequence[SetRecord], zone: tzinfo) -> datetime:
    live = [record.at for record in records if record.at.astimezone(zone).date() == day]
    return max(live) if live else datetime.combine(day, TOLD_LATER, zone)


def _is_easy(effort: Effort | None) -> bool:
    return effort is not None and effort.rir >= EASY_RIR

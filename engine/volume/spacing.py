"""Whether two sessions come too close for a muscle: a caution with its reason, never a ban.

Looked at for each pair of sessions and each prime mover of both: hours elapsed, hard sets, to failure or not, muscle
length under load, new exercise or familiar.

Sources. Damage is worse after work at long muscle length, over days: Nosaka & Sakamoto 2001, Med Sci Sports Exerc
33(1):22-29; Fochi et al. 2016, Biol Sport 33:285; soreness at 72 h: Baroni et al. 2017, J Strength Cond Res 31(8):2223.
Failure delays recovery by 24 to 48 h: Morán-Navarro et al. 2017, Eur J Appl Physiol 117:2387; Pareja-Blanco et al.
2020, J Strength Cond Res 34:2867. At least 48 h for the same muscle: ACSM advice. Protection after training is alike
for both lengths, so new exercises weigh more: Maeo et al. 2021, Med Sci Sports Exerc 53:825. Trained lifters who stop
short of failure may train a muscle four days running without loss (House et al.), hence advice only.
How these are joined into rules, and "two reps in reserve", is common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import UTC, datetime
from decimal import Decimal
from enum import Enum
from typing import assert_never

from engine.values.exercise import Exercise, Length
from engine.values.ids import ExerciseName
from engine.values.muscles import Muscle
from engine.volume.session_work import Session, Work

RECOVERY_HOURS = 48.0
NEW_RECOVERY_HOURS = 72.0
NEXT_DAY_HOURS = 36.0
"""Up to here a session counts as the day after: an evening, then the morning after next, no longer does."""
MANY_SETS = Decimal(3)
SPARE = 2
"""Reps in reserve that a caution asks for."""


class Ground(Enum):
    """What a caution rests on, the weightiest first."""

    LONG_FAILURE = "to failure at long muscle length"
    NEW_AT_LENGTH = "new work at long muscle length"
    FAILURE = "to failure"
    HARD_BEFORE_LONG = "hard work before long-length work"


@dataclass(frozen=True, slots=True)
class Caution:
    """Two sessions too close for some muscles.

    Shape: `before` and `after` are the exercises that clash, `earlier` and `later` their sessions; `spare` is the
    reps in reserve to keep in the later one; `long`: the later one works them at long muscle length.
    Units: `hours` elapsed between the two, `enough` of which there would be no caution.
    """

    ground: Ground
    muscles: tuple[Muscle, ...]
    earlier: str
    later: str
    before: ExerciseName
    after: ExerciseName
    hours: float
    enough: float
    hard: Decimal
    spare: int = SPARE
    long: bool = False

    @property
    def reason(self) -> str:
        """Why, in one sentence."""
        muscles, apart = _listed([muscle.value for muscle in self.muscles]), _apart(self.hours)
        match self.ground:
            case Ground.LONG_FAILURE:
                return f"{self.before} took {muscles} to failure at long muscle length {apart} before."
            case Ground.NEW_AT_LENGTH:
                return f"{self.before}, a new exercise, worked {muscles} at long muscle length {apart} before."
            case Ground.FAILURE:
                length = f", and {self.after} works at long muscle length" if self.long else ""
                return f"{self.before} took {muscles} to failure {apart} before{length}."
            case Ground.HARD_BEFORE_LONG:
                return f"{self.after} puts long-length work on {muscles} {apart} after {self.before}."
            case _:
                assert_never(self.ground)

    @property
    def remedy(self) -> str:
        """What to do about it."""
        return f"Keep {self.spare} reps in reserve on {self.after}, or leave {self.enough:.0f} hours between."


def cautions(sessions: Sequence[Session], exercises: Mapping[ExerciseName, Exercise]) -> tuple[Caution, ...]:
    """Every pair of sessions that comes too close, by later session, the weightiest ground first.

    Shape: `sessions` oldest first, planned, done or both. Exercises that `exercises` does not know are passed over.
    """
    return tuple(
        caution
        for number, session in enumerate(sessions)
        for caution in cautions_for(session, sessions[:number], exercises)
    )


def cautions_for(
    session: Session, before: Sequence[Session], exercises: Mapping[ExerciseName, Exercise]
) -> tuple[Caution, ...]:
    """The cautions that fall on one session, given those before it: today's session when the log says otherwise."""
    found = [
        caution
        for earlier in before
        if 0 <= hours_between(earlier.at, session.at) < NEW_RECOVERY_HOURS
        for caution in _between(earlier, session, exercises)
    ]
    order = list(Ground)
    return tuple(sorted(found, key=lambda one: (order.index(one.ground), one.hours)))


def rest_follows(
    sessions: Sequence[Session], at: int, muscles: Sequence[Muscle], exercises: Mapping[ExerciseName, Exercise]
) -> bool:
    """Whether failure work for these muscles fits in session number `at`: none of them works hard in the next 48 h."""
    near = [one for one in sessions[at + 1 :] if hours_between(sessions[at].at, one.at) < RECOVERY_HOURS]
    return not any(muscle in _bouts(later, exercises) for later in near for muscle in muscles)


def hours_between(earlier: datetime, later: datetime) -> float:
    """Hours elapsed, also across a change of clocks: two local times of one zone subtract as wall clocks do."""
    return (later.astimezone(UTC) - earlier.astimezone(UTC)).total_seconds() / 3600


@dataclass(frozen=True, slots=True)
class _Bout:
    """One muscle's hard work in one session: the exercise behind each fact, or None."""

    hard: Decimal
    leading: ExerciseName
    failure: ExerciseName | None = None
    long: ExerciseName | None = None
    long_failure: ExerciseName | None = None
    new_long: ExerciseName | None = None
    new_long_failure: ExerciseName | None = None


def _bouts(session: Session, exercises: Mapping[ExerciseName, Exercise]) -> dict[Muscle, _Bout]:
    bouts: dict[Muscle, _Bout] = {}
    for work in session.work:
        exercise = exercises.get(work.exercise)
        if exercise is None or work.hard <= 0:
            continue
        for muscle in exercise.prime:
            bouts[muscle] = _with(bouts.get(muscle), work, exercise.length is Length.LENGTHENED)
    return bouts


def _with(bout: _Bout | None, work: Work, long: bool) -> _Bout:
    if bout is None:
        bout = _Bout(Decimal(0), work.exercise)
    name = work.exercise
    return replace(
        bout,
        hard=bout.hard + work.hard,
        failure=bout.failure or (name if work.failure else None),
        long=bout.long or (name if long else None),
        long_failure=bout.long_failure or (name if long and work.failure else None),
        new_long=bout.new_long or (name if long and work.new else None),
        new_long_failure=bout.new_long_failure or (name if long and work.new and work.failure else None),
    )


def _between(earlier: Session, later: Session, exercises: Mapping[ExerciseName, Exercise]) -> Iterator[Caution]:
    """The cautions of one pair of sessions, muscles that share ground and exercises told together."""
    hours = hours_between(earlier.at, later.at)
    before, after = _bouts(earlier, exercises), _bouts(later, exercises)
    told: dict[tuple[Ground, ExerciseName, ExerciseName, bool], list[Muscle]] = {}
    for muscle in Muscle:
        if muscle in before and muscle in after:
            clash = _clash(before[muscle], after[muscle], hours)
            if clash is not None:
                told.setdefault((*clash, after[muscle].long is not None), []).append(muscle)
    for (ground, first, second, long), muscles in told.items():
        enough = max(_fresh_after(ground, before[muscle]) for muscle in muscles)
        hard = max(before[muscle].hard for muscle in muscles)
        yield Caution(ground, tuple(muscles), earlier.label, later.label, first, second, hours, enough, hard, long=long)


def _clash(before: _Bout, after: _Bout, hours: float) -> tuple[Ground, ExerciseName, ExerciseName] | None:
    """The weightiest ground for caution between two bouts of one muscle, with the exercises that clash."""
    target = after.long or after.leading
    many = before.leading if after.long is not None and before.hard >= MANY_SETS else None
    grounds = (
        (Ground.LONG_FAILURE, before.new_long_failure or before.long_failure),
        (Ground.NEW_AT_LENGTH, before.new_long),
        (Ground.FAILURE, before.failure),
        (Ground.HARD_BEFORE_LONG, many),
    )
    for ground, cause in grounds:
        if cause is not None and hours < _fresh_after(ground, before):
            return ground, cause, target
    return None


def _fresh_after(ground: Ground, before: _Bout) -> float:
    """The hours after which a ground no longer holds."""
    match ground:
        case Ground.LONG_FAILURE:
            return RECOVERY_HOURS if before.new_long_failure is None else NEW_RECOVERY_HOURS
        case Ground.NEW_AT_LENGTH:
            return RECOVERY_HOURS
        case Ground.FAILURE | Ground.HARD_BEFORE_LONG:
            return NEXT_DAY_HOURS
        case _:
            assert_never(ground)


def _apart(hours: float) -> str:
    # Two sessions seldom begin on the minute: an hour or two either way is still the day before.
    return "the day" if 22 <= hours <= 26 else f"{hours:.0f} hours"


def _listed(words: Sequence[str]) -> str:
    return words[0] if len(words) == 1 else ", ".join(words[:-1]) + " and " + words[-1]

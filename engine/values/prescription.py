"""What a slot asks for in one session, with the reason and the sets it rests on."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from enum import Enum

from engine.values.effort import Effort
from engine.values.ids import ExerciseName, SetId
from engine.values.load import Load
from engine.values.plan import Target
from engine.values.sets import SetRecord


class Verdict(Enum):
    """What became of the slot since last time."""

    START = "start"  # no session yet
    FIND_LOAD = "find load"
    ADD_LOAD = "add load"
    ADD_SET = "add set"
    ADD_REPS = "add reps"
    REPEAT = "repeat"
    RESET = "reset"
    FOLLOW = "follow"  # follows an estimate or a percentage
    HOLD = "hold"


class Held(Enum):
    """What lies over a rule and changed or held back what it asked for."""

    DELOAD = "deload"
    LAYOFF = "lay-off"
    CEILING = "ceiling"
    ROUNDING = "rounding"
    EMPTY_BAR = "empty bar"
    PAIN = "pain"
    AFTER_PAIN = "after pain"


@dataclass(frozen=True, slots=True)
class SetTarget:
    """One set to do. `load` None: body weight alone, or to be found."""

    target: Target
    load: Load | None
    effort: Effort | None = None


@dataclass(frozen=True, slots=True)
class Offer:
    """A heavier load that may be taken instead, and why; nothing is asked of anyone who does not."""

    load: Load
    reason: str


@dataclass(frozen=True, slots=True)
class Prescription:
    """`total`: the repetitions that all sets together are to reach; None where each set counts for itself.

    Shape: `sets` in the order to be done; `evidence` the ids of the sets it rests on, oldest first.

    `reason` says why in one sentence; `next_step` what would have to happen for the next step. `lifted` is the load of
    as many sets when the slot was last trained, deload weeks too; None: it never was, or no load is asked.
    """

    exercise: ExerciseName
    sets: tuple[SetTarget, ...]
    verdict: Verdict
    reason: str
    next_step: str
    evidence: tuple[SetId, ...] = ()
    held: tuple[Held, ...] = ()
    lifted: Load | None = None
    offer: Offer | None = None
    total: int | None = None


@dataclass(frozen=True, slots=True)
class Exposure:
    """One session's work sets of one slot's exercise, oldest first; what progression rules fold over.

    `deload`: the session fell in a deload week, so it proves nothing about the next step. `hurt`: pain had been told of
    and was not over; `held`: it was told before that day, so the session asked nothing more than the one before.
    `away` counts the days since the exercise was last trained anywhere; None: since the exposure before.
    `asked` is the load the session asked, where something over the rule made that less than the rule's own.
    """

    on: date
    sets: tuple[SetRecord, ...]
    deload: bool = False
    hurt: bool = False
    held: bool = False
    away: int | None = None
    asked: Load | None = None

    @property
    def evidence(self) -> tuple[SetId, ...]:
        return tuple([record.id for record in self.sets])

"""The values that storage hands out beside the engine's own: people, changes, notes, plans, choices, and their like.

Instants are aware, in UTC. Days are the athlete's local days. Ids count within one athlete unless they say otherwise.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date, datetime
from enum import Enum
from typing import Any, NewType

from engine.values.ids import AthleteId, ExerciseName
from engine.values.load import Load
from engine.values.sets import SetRecord
from storage.envelopes import OutboxId

ChangeId = NewType("ChangeId", int)
NoteId = NewType("NoteId", int)
PlanId = NewType("PlanId", int)
ChoiceId = NewType("ChoiceId", int)
QuestionId = NewType("QuestionId", int)
BroadcastId = NewType("BroadcastId", int)


class Role(Enum):
    ATHLETE = "athlete"
    COACH = "coach"


@dataclass(frozen=True, slots=True)
class Person:
    """Anyone the bot talks to. `reachable` is False while the person has blocked the bot."""

    id: AthleteId
    source: str
    chat: int
    name: str
    roles: frozenset[Role]
    since: datetime
    reachable: bool = True


class ChangeKind(Enum):
    """What a person did that can be undone."""

    SETS = "sets"
    ANSWER = "answer"
    CORRECTION = "correction"
    EDIT = "edit"
    DELETE = "delete"
    MOVE = "move"
    IMPORT = "import"
    PLAN = "plan"
    SKIP = "skip"
    SWAP = "swap"
    RESCHEDULE = "reschedule"
    NOTE = "note"
    BODY_WEIGHT = "body weight"
    SETTING = "setting"
    TEACH = "teach"
    EXERCISE = "exercise"
    ASIDE = "aside"  # chat kept as a note and the like: no step of hers, so undo and redo pass over it


@dataclass(frozen=True, slots=True)
class Change:
    """One undoable step in an athlete's records, made `by` the athlete or by her coach.

    `label` is what undo will say, for instance ``3 sets of bench press``.
    """

    id: ChangeId
    athlete: AthleteId
    by: AthleteId
    kind: ChangeKind
    label: str
    at: datetime
    inbound: int | None = None
    undone_at: datetime | None = None


@dataclass(frozen=True, slots=True)
class Touched:
    """The sets that a change brought in and took out, whichever of them stand now."""

    added: tuple[SetRecord, ...]
    removed: tuple[SetRecord, ...]


@dataclass(frozen=True, slots=True)
class Note:
    """Words beside the log. Shown to a coach only when `shared`."""

    id: NoteId
    text: str
    on: date
    at: datetime
    exercise: ExerciseName | None = None
    pain: bool = False
    shared: bool = False
    message: int = 0


@dataclass(frozen=True, slots=True)
class BodyWeight:
    load: Load
    on: date
    at: datetime


@dataclass(frozen=True, slots=True)
class StoredPlan:
    """A plan in force from `starts_on` until a later one takes over; `text` is its printed form."""

    id: PlanId
    name: str
    text: str
    starts_on: date
    at: datetime
    coach: AthleteId | None = None


class ChoiceKind(Enum):
    SKIP = "skip"
    SWAP = "swap"
    MOVE = "move"


@dataclass(frozen=True, slots=True)
class Choice:
    """A decision for one planned day: a slot (or the whole day, `exercise` None) skipped, swapped or moved."""

    id: ChoiceId
    on: date
    kind: ChoiceKind
    at: datetime
    exercise: ExerciseName | None = None
    to: ExerciseName | None = None
    to_day: date | None = None


@dataclass(frozen=True, slots=True)
class Settled:
    """An ambiguity that an answer settled: the word or shape in doubt, and what was chosen."""

    doubt: str
    term: str
    answer: str


class QuestionState(Enum):
    OPEN = "open"
    WAITING = "waiting"  # beside the open question: others may be asked meanwhile
    ANSWERED = "answered"
    DROPPED = "dropped"


@dataclass(frozen=True, slots=True)
class Question:
    """The one question open with a person. `payload` is JSON-able; `message` the person's message it is about."""

    id: QuestionId
    athlete: AthleteId
    payload: Mapping[str, Any]
    asked_at: datetime
    expires_at: datetime
    message: int = 0
    state: QuestionState = QuestionState.OPEN


@dataclass(frozen=True, slots=True)
class LiftLine:
    """The bot's message that is the line of one lift on one day. `buried` counts its messages sent since."""

    on: date
    exercise: ExerciseName
    outbox: OutboxId
    buried: int


class Permission(Enum):
    """What an athlete lets a coach do."""

    SEE_LOG = "see log"
    SEE_NOTES = "see notes"  # shared notes alone
    CHANGE_PLAN = "change plan"


@dataclass(frozen=True, slots=True)
class CoachLink:
    coach: AthleteId
    athlete: AthleteId
    consented_at: datetime
    permissions: frozenset[Permission]


@dataclass(frozen=True, slots=True)
class Invitation:
    code: str
    coach: AthleteId
    expires_at: datetime


class InvitationTrouble(Enum):
    """Why a code did not link anyone."""

    UNKNOWN = "unknown"
    USED = "used"
    EXPIRED = "expired"
    OWN = "own"  # nobody coaches herself through an invitation


@dataclass(frozen=True, slots=True)
class Due:
    """Something to do for an athlete, once for each kind and local day."""

    athlete: AthleteId
    kind: str
    local_date: date
    due_at: datetime
    payload: Mapping[str, Any]
    attempts: int = 0


@dataclass(frozen=True, slots=True)
class BroadcastProgress:
    waiting: int
    sent: int
    failed: int

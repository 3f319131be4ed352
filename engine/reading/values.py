"""What goes into reading a message, and what comes out.

An outcome is one of four: Logged, Asked, NoSets, Act. In a running conversation it may also be a Correction.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date, datetime
from decimal import Decimal
from enum import Enum

from engine.values.effort import Effort
from engine.values.ids import ExerciseName
from engine.values.load import Load, Unit
from engine.values.plan import Target
from engine.values.sets import SetDone, SetKind, SetRecord


@dataclass(frozen=True, slots=True)
class Planned:
    """A slot of today's plan as far as reading needs it."""

    exercise: ExerciseName
    sets: int
    target: Target
    load: Load | None


@dataclass(frozen=True, slots=True)
class Context:
    """What is known before a word is read.

    `now` is the athlete's local date and time, naive. `doing` is the exercise in hand.
    `last` holds the last load of an exercise; `recent` the standing sets of the latest messages (at least today's),
    in the order logged, so that corrections and "same" have something to point at; `best` the heaviest load ever,
    for plausibility.
    `taught` maps a shorthand to the exercise that this athlete settled it to.
    """

    unit: Unit = Unit.KG
    now: datetime | None = None
    doing: ExerciseName | None = None
    plan: tuple[Planned, ...] = ()
    last: Mapping[ExerciseName, Load] = field(default_factory=dict)
    best: Mapping[ExerciseName, Load] = field(default_factory=dict)
    recent: tuple[SetRecord, ...] = ()
    taught: Mapping[str, ExerciseName] = field(default_factory=dict)
    load_first: bool | None = None
    """The writer's settled habit for light pairs such as 12x10; None: not known."""
    amended: bool = False
    """Whether the latest set of `recent` was changed since it was told."""
    undone: bool = False
    """Whether her latest step was an undo, so that "that one too" is one more."""
    chosen: bool = False
    """Whether the latest sets were chosen in answer to a question, so that "no, 2" may be the second choice."""
    named: bool = False
    """Whether she named the exercise in hand herself since the latest set, so that it is not just the plan's next."""
    announced: tuple[ExerciseName, ...] = ()
    """The exercises that a name may mean which was told since the latest set, with no sets of it, where it is open."""
    told: Mapping[ExerciseName, Load] = field(default_factory=dict)
    """A load told alone since the latest set, "bench 60" or "105": what the reps behind it are done at."""
    to_come: int = 0
    """How many sets were announced with the lift since the latest set, "bench 80kg, 3 sets"; 0 where that was not."""
    moved: bool = False
    """Whether the load was moved since the latest set, and it was not told to what: "heavier now"."""
    called: str = ""
    """The writer's name: sets behind another one are asked about."""


@dataclass(frozen=True, slots=True)
class Reading:
    """One way to read a message: its sets, and how well they fit what is known (0 to 1)."""

    sets: tuple[SetDone, ...]
    plausibility: float
    label: str = ""
    """A few words that set this reading apart from its rivals, fit for a button."""


@dataclass(frozen=True, slots=True)
class Unread:
    """A piece of the message that was not read, with the reason."""

    text: str
    why: str
    of_a_request: bool = False
    """No sets were meant: something was asked for that cannot be done so."""


class Doubt(Enum):
    """What a question is about."""

    __hash__ = object.__hash__

    EXERCISE = "which exercise"
    NUMBERS = "which number is which"
    EFFORT_OR_LOAD = "effort or load"
    RANGE = "how many of the range"
    UNLIKELY_LOAD = "far from what you lift"
    UNUSUAL_LOAD = "an unusual load"
    UNKNOWN_NAME = "unknown name"
    NO_REPS = "no reps"
    WHOSE = "whose sets"
    WHETHER = "whether it was done"
    DAY = "the day"
    WORDS = "words that may change the sets"
    MORE = "whether they are more sets"
    HOW_MANY = "how many sets"
    WHICH_LOAD = "at which load"


LOADS_IN_DOUBT = frozenset((Doubt.UNLIKELY_LOAD, Doubt.UNUSUAL_LOAD, Doubt.WHICH_LOAD))
"""Whether the load is right is asked: beside what the lifter lifts or, where that is not known, beside anyone."""


@dataclass(frozen=True, slots=True)
class Logged:
    sets: tuple[SetDone, ...]
    on: date | None = None
    note: str | None = None
    pain: bool = False
    unread: tuple[Unread, ...] = ()
    rejected: tuple[Reading, ...] = ()
    why: str = ""
    days: tuple[date | None, ...] = ()
    """Where one message tells several days: the day of each set, in the order of `sets` (None: the message's own
    day).
    """


@dataclass(frozen=True, slots=True)
class Asked:
    """Nothing is recorded until one of the readings is chosen. `term` is the word or shape in doubt."""

    question: str
    readings: tuple[Reading, ...]
    doubt: Doubt
    term: str = ""
    on: date | None = None
    note: str | None = None
    pain: bool = False
    text: str = ""
    """The message's numbers as typed, where only its exercise is missing: an answer that names it completes them.
    Or the message with a gap, where one number could not be read.
    """
    typed: str = ""
    """`term` as she typed it: "shrugs" where the term is known by its stem."""
    behind: tuple[Reading, ...] = ()
    """Where the exercise is in doubt and its numbers are, too: their other readings, asked about once it is settled."""
    unclear: str = ""
    """Words that may change the sets, as typed, where the exercise is in doubt, too: asked about once it is settled."""
    learnt: tuple[tuple[str, ExerciseName], ...] = ()
    """The words that answers have settled so far, each with its exercise: taught once nothing is open any more."""


@dataclass(frozen=True, slots=True)
class NoSets:
    pain: bool = False
    unread: tuple[Unread, ...] = ()
    """Pieces that look like sets and could not be read; empty where the message is plain talk."""
    why: str = ""


@dataclass(frozen=True, slots=True)
class Act:
    """An intent. `name` is the intent's name: today, next, done, repeat, undo, redo, skip, swap, why, week, ..."""

    name: str
    exercise: ExerciseName | None = None
    to: ExerciseName | None = None
    when: date | datetime | None = None
    start: date | None = None
    """The day from which it holds: "pause from monday"; None for now."""
    count: int | None = None
    as_planned: bool = False
    text: str = ""
    """Whatever else was said behind the intent's word, as typed."""
    also: tuple[ExerciseName, ...] = ()
    """Further lifts that the same request names: "skip curls and face pulls"."""
    mended: str = ""
    """The request as it was read, where a word of it was mistyped; empty where nothing was mended."""
    pain: bool = False
    """Pain was told as the reason: "skip curls, elbow hurts"."""


@dataclass(frozen=True, slots=True)
class Change:
    """New values for the sets that a correction reaches; None leaves a field as it is."""

    exercise: ExerciseName | None = None
    reps: int | None = None
    load: Load | None = None
    unit: Unit | None = None
    effort: Effort | None = None
    failure: bool | None = None
    kind: SetKind | None = None
    seconds: Decimal | None = None
    missed: bool | None = None


@dataclass(frozen=True, slots=True)
class Correction:
    """What a correction in words asks for, worked out on the sets of `Context.recent`.

    `changed` pairs a standing set with what it should be; `removed` and `added` are sets to take away and to add;
    `moved` pairs a standing set with its new day. `pain`: the message tells of pain, too.
    """

    changed: tuple[tuple[SetRecord, SetDone], ...] = ()
    removed: tuple[SetRecord, ...] = ()
    added: tuple[SetDone, ...] = ()
    moved: tuple[tuple[SetRecord, date], ...] = ()
    pain: bool = False

    @property
    def reached(self) -> tuple[SetRecord, ...]:
        """Every standing set that is changed, taken away or moved, each once."""
        records = (*(one for one, _ in self.changed), *self.removed, *(one for one, _ in self.moved))
        return tuple({one.id: one for one in records}.values())


Outcome = Logged | Asked | NoSets | Act | Correction


@dataclass(frozen=True, slots=True)
class Settled:
    """The answer chose a reading, or completed it: this is now to be logged for the original message.

    `teaches` maps the phrase in doubt to the exercise it was settled to; empty where nothing is to be learned.
    """

    logged: Logged
    teaches: Mapping[str, ExerciseName] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class StillOpen:
    """The question stands: nothing in the message answered it, or it settled a part and `asked` is what is left."""

    asked: Asked
    again: bool = False
    """The words may speak of what is asked about, and are no message of their own: the same is asked again."""


@dataclass(frozen=True, slots=True)
class Dropped:
    """The athlete lets it go: nothing is recorded."""


@dataclass(frozen=True, slots=True)
class NotAnAnswer:
    """A clear other set, request or correction: read it as a new message; the question lapses."""


Answer = Settled | StillOpen | Dropped | NotAnAnswer

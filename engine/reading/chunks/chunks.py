"""The numbers of one exercise, gathered into chunks: what stands around one "x", with the marks that belong to it.

chunk  = factor ( "x" factor )* [ "+" NUMBER ]* mark*         80x5   3x12   60x8x3   70x9/9/6   60x8+3+2
factor = NUMBER ( ( "/" | "-" | "," ) NUMBER )* | "bar" | "bw"     glued; or in brackets: (70,75,80)x6
mark   = "@" NUMBER | "with" NUMBER | effort | failure | miss | "drop" | side | warm-up | "x2" | "three times"
"""

from __future__ import annotations

from collections.abc import Collection, Set
from decimal import Decimal

from engine.reading.words.kinds import K
from engine.reading.words.pieces import NOTHING, Piece, Role
from engine.values.effort import Effort
from engine.values.load import Unit
from engine.values.sets import SetKind, Side

JOINERS = frozenset((K.SLASH, K.DASH, K.COMMA))
MOST_REPEATS = 20
MOST_SETS_BY_REPEAT = 5
LAST_SET = 0
"""Stands for the last set among the places of a group, which count from 1."""
LAST_REP = -1
"""Stands for "the last rep" of a miss that names no number."""

GAPS = frozenset((K.FILLER, K.EACH, K.OF, K.CLOSE))


class Chunk:
    """One chunk being built; most marks stay as they stand here, so only what is told is set on an instance.

    Shape: `factors` in the order written, each one or several numbers; an empty one is a load carried on ("x8").
    """

    factors: list[tuple[Piece, ...]]
    joiner: K | None = None
    plus: tuple[Piece, ...] = ()
    at: tuple[Piece, ...] = ()
    at_sign: bool = False
    at_own: bool = False
    """The load in brackets behind one set is that one's: "10, 8 (+5kg)"."""
    at_of_run: bool = False
    """The load behind it is that of several reps before it, whatever load those in front of them had."""
    efforts: tuple[Effort, ...] = ()
    effort_apart: bool = False
    effort_spans: bool = False
    """The effort lies between two that were told: "rpe 8-9"."""
    failure: bool = False
    missed: bool = False
    missed_rep: int | None = None
    then_missed: bool = False
    """ "110x1+miss": the rep told was made, and the next one missed."""
    times: int | None = None
    side: Side | None = None
    kind: SetKind | None = None
    spoken_for: bool = False
    """The pair was linked by "for": load first, then reps."""
    before: K | None = None
    """The separator that stood before it."""
    x_apart: bool = False
    """The x was written to the reps and apart from what stands before it: "80 x5"."""
    counted: bool = False
    """The reps were written as a word that names them: a triple, fives."""
    in_brackets: bool = False
    alone_in_brackets: bool = False
    in_passing: bool = False
    """A time behind "in": "3x5 80 in 12 minutes"."""
    counts_behind: bool = False
    """Sets and reps stood behind "for": "150 for 2x5"."""
    restates: bool = False
    """A word said that it tells the sets before it once more: "5 5 5 at 80, so 3x5"."""
    at_same: bool = False
    """Told at the load of the sets before it, in words: "same weight 3x15"."""
    of_sides: bool = False
    """A side stood between its two numbers: "10 each side x2"."""
    of_each: bool = False
    """ "Each" stood between its two numbers, and no side: "8 each x3"."""
    placed: tuple[tuple[int, Piece], ...] = ()
    """Marks of some of its sets, each with the place of its set, from 1: "3x8 60, set 3 rpe 9"."""
    again: int = 0
    """How many more sets like the one before it: "another two sets like that"."""
    whole_again: bool = False
    """All that was told was done again, and not its last set alone."""

    def __init__(self, factors: list[tuple[Piece, ...]], before: K | None = None, counted: bool = False) -> None:
        self.factors = factors
        self.before = before
        self.counted = counted

    @property
    def size(self) -> int:
        return len(self.factors)

    @property
    def tells_reps(self) -> bool:
        """Whether its reps stand beside their load or their count, or were written as their name."""
        return self.counted or len(self.factors) > 1

    def marks(self) -> Set[str]:
        """The names of the fields that were told of it, those that every chunk has perhaps among them."""
        return self.__dict__.keys()

    def copy(self) -> Chunk:
        """The same chunk, to be marked otherwise."""
        other = Chunk(self.factors)
        other.__dict__.update(self.__dict__)
        return other

    def as_warm_up(self) -> Chunk:
        """The same chunk, told as a warm-up."""
        other = self.copy()
        other.kind = SetKind.WARMUP
        return other

    def as_often(self, times: int) -> Chunk:
        """The same chunk, so many times."""
        other = self.copy()
        other.times = times
        return other


CARRIED: tuple[Piece, ...] = ()


class Chunks:
    """What one exercise's pieces come to. `loose`: numbers that found no place."""

    found: list[Chunk]
    roles: Collection[Role] = ()
    """The roles of all pieces of the exercise."""
    kinds: Collection[K | None] = ()
    """The kinds of all its pieces."""
    notes: list[Piece]
    loose: list[Piece]
    failure_ahead: bool = False
    last_to_failure: bool = False
    rest_pause: bool = False
    drops_ahead: bool = False
    lowered: bool = False
    """A drop was told as a lower load, "dropped to 110", and not as a drop set."""
    each: bool = False
    dumbbells: bool = False
    assisted: bool = False
    added: bool = False
    body: bool = False
    barred: bool = False
    same_load: bool = False
    maximum: bool = False
    spread: bool = False
    """A count of sets stood behind "in" or "over": "24 reps in 3 sets"."""
    result_from: int | None = None
    work_from: int | None = None
    total: bool = False
    equipment: K | None = None
    equipment_open: bool = False
    """Only a remark speaks of the equipment, so the lift may have been done with it or not."""
    plates: bool = False
    sled_is_nothing: bool | None = None
    """Whether only the plates count, on what is no plain bar, or the load is not known; None: not asked yet."""
    pins: bool = False
    band: bool = False
    unaided: int = 0
    """So many chunks stand in front of those that were done with help or a band: "dips 3x8, band 3x5"."""
    placed_reps: tuple[tuple[int, int], ...] = ()
    """(place, reps) of sets of a group that differ: "3x8 70, last set 6"."""
    last_effort: Effort | None = None
    """The effort of the last set alone: "3x6 77.5, last set @9"."""
    last_ends_at: int = 0
    """How many chunks end with the set that was told as the last one, where more of them follow."""
    effort_of_all: Effort | None = None
    """The effort of every set told: "8 7 6, all @9"."""
    last_told: int = 0
    """The place among the chunks of reps behind "last", where it may be the set before them or one more; 0 for none."""
    maybe_times: tuple[int, int] | None = None
    """The place of a chunk "x3" at the end that may count sets of the one before it, and how many: "80x5, x3"."""
    how_many: int | None = None
    """The place of a chunk that names sets and tells no count of them: "triples at 120"."""
    warm_either: tuple[frozenset[int], ...] = ()
    """The places of the chunks that are warm-ups, in each way that a word for them may be meant; empty where it is
    settled.
    """
    at_pairs: tuple[int, ...] = ()
    """The places of chunks with "@" and a pair behind them, whose number may be an effort, or the x a count of sets:
    "80@8x5", "5@70x3".
    """
    miss_ahead: int | None = None
    """A missed rep told in front of its set: "missed the last rep of squat 80x5"."""
    of_all: bool = False
    """A word says that something was told of all of them: "all", "both"."""
    unit: Unit | None = None
    """The only unit that was told: it holds for the numbers without one."""
    mixed_units: bool = False
    """Another load stands beside the one that told its unit: it may have another."""
    per_side: bool = False
    """The load was told for each side of the bar."""
    of_a_bar: bool = False
    """A side was told that a bar has, too: "35 a side"."""
    sides: bool = False
    """A side, a leg or an arm was told: "5 each leg"."""
    passed: tuple[Piece, ...] = ()
    """Words that may change the sets, and that were read as nothing: each reaches to the end of its clause."""
    dangling: bool = False
    """A sign of a set line stood there with no number to it: "3x", "80 @"."""
    results: tuple[Piece, ...] = ()
    """What became of a group of sets, in brackets behind it: "3x8 70 (8,8,6)"."""
    stated: tuple[int, int] | None = None
    """Sets and reps told again in words: "60x3x5 plan says 5 triples"."""

    def __init__(self) -> None:
        self.found = []
        self.notes = []
        self.loose = []

    def marks(self) -> Set[str]:
        """The names of the fields that were told, those that are always there perhaps among them."""
        return self.__dict__.keys()

    def with_found(self, found: list[Chunk]) -> Chunks:
        """The same marks around other chunks."""
        other = Chunks()
        other.__dict__.update(self.__dict__)
        other.found = found
        return other


def numbers_in(chunks: Chunks) -> list[Piece]:
    """All numbers of the chunks, in order."""
    return [number for chunk in chunks.found for factor in chunk.factors for number in factor]


def load_of_one_set(chunk: Chunk) -> Decimal:
    """The load of one set told with it, "80x5", "80/5", "5@80"; 0 where it is no such set."""
    if chunk.size == 2 and chunk.factors[0]:
        return chunk.factors[0][0].value
    numbers = chunk.factors[0] if chunk.size == 1 else ()
    if len(numbers) == 1 and len(chunk.at) == 1:
        return chunk.at[0].value
    return numbers[0].value if len(numbers) == 2 and chunk.joiner is K.SLASH else NOTHING

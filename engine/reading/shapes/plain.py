"""The short road from chunks to sets: plain loads and counts, as most sets are told, in one walk.

plain  = ( group | pair | list )*          with an effort, "to failure" or "warm-up" behind one of them
group  = SETS "x" REPS and LOAD            3x8 60     60 3x8     3x8 @ 60     3x8x60
pair   = LOAD "x" REPS                     80x5
list   = [ LOAD ] REPS REPS ...            60 8 8 7     60x8,8,7     9 8 7

It takes only what comes to the same sets by the whole grammar in `shapes`, and holds a group of equal sets as one. All
else is left to that grammar: a number with a role of its own, lists of loads, sets counted twice, any other mark.
"""

from __future__ import annotations

from dataclasses import dataclass

from engine.reading.chunks.choices import (
    HELD_AT_ONCE,
    LOADED_COUNTS,
    LOADS,
    MOST_OUT,
    PLACES_OF_THREE,
    Choice,
    FirstAs,
    PairAs,
    Traits,
    TripleAs,
    may_be_reps,
    whole,
)
from engine.reading.chunks.chunks import LAST_SET, Chunk, Chunks, numbers_in
from engine.reading.shapes.adding import full_reps
from engine.reading.shapes.listed_numbers import is_load
from engine.reading.shapes.three_factors import settled_three
from engine.reading.shapes.two_factors import counts_by_itself, settled_pair
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_SETS, Piece, Role
from engine.values.effort import Effort
from engine.values.sets import SetKind

PLAIN_FLAGS = frozenset(
    ("found", "roles", "kinds", "notes", "loose", "unit", "mixed_units", "last_to_failure", "last_effort",
     "placed_reps", "body", "same_load", "each", "sides", "of_a_bar", "per_side", "assisted", "added", "band", "plates",
     "dumbbells", "equipment", "maximum", "dangling", "pins")
)  # fmt: skip
"""What may be told beside the chunks: no more of it has a part in the shape of the sets than is asked for here."""
PLAIN_MARKS = frozenset(
    ("factors", "before", "counted", "joiner", "at", "at_sign", "efforts", "effort_apart", "failure", "kind",
     "spoken_for", "x_apart")
)  # fmt: skip
SILENT_MARKS = frozenset(("factors", "before", "counted", "joiner", "spoken_for", "x_apart"))
UNMARKED = frozenset(("factors", "before", "counted"))
"""The fields that every chunk has, marked or not."""
HIGHEST_EFFORT = 10
BARE_OR_LOAD = frozenset((Role.BARE, Role.LOAD))
HEADS = LOADS - {Role.BAR} | {Role.BARE, Role.SETS}
REPS = frozenset((Role.BARE, Role.REPS))
TAILS = HEADS | REPS


class NotPlain(Exception):
    """These chunks need the whole grammar."""


@dataclass(slots=True)
class Group:
    """So many equal sets, told with one another or alone. `carried`: the load may be that of the set before."""

    count: int
    reps: int
    load: Piece | None
    effort: Effort | None = None
    kind: SetKind = SetKind.WORK
    failure: bool = False
    carried: bool = False

    def is_like(self, other: Group) -> bool:
        """Whether each set of this group is one of the other, too."""
        return (
            self.reps == other.reps
            and self.load is other.load
            and self.effort == other.effort
            and self.kind is other.kind
            and self.failure is other.failure
        )


def plain_groups(chunks: Chunks, choice: Choice, traits: Traits) -> list[Group] | None:
    """The sets in groups, as told; None where these chunks need the whole grammar."""
    if traits.timed or traits.carried or traits.explosive or not chunks.marks() <= PLAIN_FLAGS:
        return None
    if choice.first is FirstAs.SHARED:
        return None
    try:
        return PlainShaper(chunks, choice, traits).run()
    except NotPlain:
        return None


class PlainShaper:
    """One walk over plain chunks under one choice."""

    load: Piece | None = None
    pending: bool = False
    """The load has no reps yet."""
    listed: bool = False
    """The latest sets were told one by one."""
    has_group: bool = False
    has_single: bool = False

    def __init__(self, chunks: Chunks, choice: Choice, traits: Traits) -> None:
        self.chunks = chunks
        self.choice = choice
        self.traits = traits
        self.groups: list[Group] = []
        self.touched: list[Group] = []

    def run(self) -> list[Group]:
        """The sets in groups, as told.

        Errors: NotPlain.
        """
        for chunk in self.chunks.found:
            self.touched = []
            marks = chunk.marks()
            added = self.traits.body and chunk.before is not None and bool(self.groups)
            if chunk.counted or not marks <= PLAIN_MARKS or (added and self._may_close(chunk)):
                raise NotPlain
            self._read(chunk, chunk.factors)
            if not marks <= UNMARKED:
                self._mark(chunk)
        self._finish()
        if not LAST_SETS.isdisjoint(self.chunks.marks()):
            self._last_set(self.chunks)
        return self.groups

    def _may_close(self, chunk: Chunk) -> bool:
        """ "dips 3x10, then 2x6 with +10", "3x12, +10 2x8": added to the sets behind it alone."""
        return chunk.before is K.THEN or (len(chunk.factors) == 1 and chunk.factors[0][0].role is Role.CHANGE)

    def _read(self, chunk: Chunk, factors: list[tuple[Piece, ...]]) -> None:
        size = len(factors)
        if size == 1:
            numbers = factors[0]
            if len(numbers) == 1:
                self._one(numbers[0], chunk)
            else:
                self._list(numbers, chunk)
        elif size == 2:
            self._pair(factors[0], factors[1], chunk)
        elif size == 3:
            self._triple(*factors)
        else:
            raise NotPlain

    def _one(self, number: Piece, chunk: Chunk) -> None:
        role = number.role
        if role is Role.REPS or (role is Role.BARE and self._is_reps(number, chunk)):
            self.listed = self.has_single = True
            self._add(number, 1)
        elif self._is_plain_load(number):
            self._set_load(number)
        else:
            raise NotPlain

    def _is_plain_load(self, number: Piece) -> bool:
        role = number.role
        if role is Role.BARE:
            return not self.traits.body and bool(number.value) and number.text[-1] != "½"  # "12, 12, 7½": reps
        if role is Role.PLURAL:
            return self._may_be_reps_alone(number)
        if role is Role.LOAD:
            return not (self.traits.body and self.groups)  # "10 8, with 10 kg 6 5"
        return role is Role.BODY or (role is Role.CHANGE and not self.listed)

    def _may_be_reps_alone(self, load: Piece) -> bool:
        """Whether all other numbers may be reps, so that "6s" in front of them is no count of reps: "6s: 60 70"."""
        others = [number for number in numbers_in(self.chunks) if number is not load]
        return all([number.role is Role.BARE and number.value in LOADED_COUNTS for number in others])

    def _is_reps(self, number: Piece, chunk: Chunk) -> bool:
        if not may_be_reps(number, self.traits):
            return False
        waits = self._open_group()  # "3x12 8": the load of the group
        if self.traits.body or waits:
            return not waits or (not self.traits.body and bool(chunk.at or self.load))
        return bool(chunk.at or self.load or self.groups) or self.choice.first is FirstAs.REPS

    def _open_group(self) -> bool:
        """Whether a group told by counts still waits for its load."""
        return bool(self.groups) and self.groups[-1].load is None and not self.listed

    def _add(self, number: Piece, count: int, load: Piece | None = None) -> None:
        reps = full_reps(number.value)
        if not reps or number.role not in REPS:
            raise NotPlain
        load = load or self.load
        self.pending = self.pending and load is None
        group = Group(count, reps, load)
        self.groups.append(group)
        self.touched.append(group)

    def _set_load(self, load: Piece) -> None:
        waiting = [group for group in self.groups if group.load is None or group.carried]
        if (len(waiting) > 1 and self.traits.body) or (self.pending and not waiting):
            raise NotPlain  # "3x8, 2x5 +10"
        if waiting:
            for group in waiting:
                group.load, group.carried = load, False
            self.touched, self.load = waiting, None
        else:
            self.load, self.pending = load, True

    def _list(self, numbers: tuple[Piece, ...], chunk: Chunk) -> None:
        """ "60/8/8/7", or reps of the load in front: "60 8/8/7"."""
        if self._is_paired(numbers, chunk) or self._open_group():
            raise NotPlain
        head = numbers[0]
        if is_load(head, self.traits):
            self.load = head
            self._reps_list(numbers[1:])
        elif self.load is None and self.choice.first is FirstAs.LOAD and not self.traits.body:
            raise NotPlain
        else:
            self.has_single = True
            self._reps_list(numbers)

    def _is_paired(self, numbers: tuple[Piece, ...], chunk: Chunk) -> bool:
        """ "8-10" may be a range, "10/10" of a one-sided lift each side once."""
        return len(numbers) == 2 and (chunk.joiner is K.DASH or self.traits.one_sided)

    def _reps_list(self, numbers: tuple[Piece, ...]) -> None:
        self.listed = True
        for number in numbers:
            if not may_be_reps(number, self.traits):
                raise NotPlain
            self._add(number, 1)

    def _pair(self, first: tuple[Piece, ...], second: tuple[Piece, ...], chunk: Chunk) -> None:
        if len(first) != 1:
            raise NotPlain
        head, tail = first[0], second[0]
        if len(second) > 1:
            if self._is_paired(second, chunk) or not is_load(head, self.traits):
                raise NotPlain
            self.load = head
            self._reps_list(second)
            return
        self._check_two(head, tail, chunk)
        if head.role is Role.SETS or (tail.role is Role.REPS and head.role is Role.BARE):
            self._said_counts(head, tail)
            return
        match settled_pair(head, tail, self.traits, chunk.spoken_for) or self.choice.pair:
            case PairAs.COUNTS:
                self._counts(head, tail)
            case PairAs.LOAD_REPS:
                self._load_reps(head, tail)
            case PairAs.REPS_LOAD:
                self._load_reps(tail, head)

    def _check_two(self, head: Piece, tail: Piece, chunk: Chunk) -> None:
        if self.choice.pair is not PairAs.COUNTS and counts_by_itself(self.chunks.found, chunk):
            raise NotPlain
        plain = head.role in HEADS and tail.role in TAILS
        if not plain or (self.traits.two_implements and head.value in HELD_AT_ONCE):
            raise NotPlain
        if self.groups and (head.spelled or head.role is Role.SETS):
            raise NotPlain  # perhaps the sets told before, counted in words

    def _said_counts(self, sets: Piece, reps: Piece) -> None:
        if reps.failure or not 1 <= sets.value <= MOST_SETS:
            raise NotPlain
        self._repeat(reps, int(sets.value))

    def _counts(self, sets: Piece, reps: Piece) -> None:
        if not 1 <= sets.value <= MOST_SETS or not whole(sets):
            raise NotPlain
        carried = self.load is not None and not self.pending
        self._repeat(reps, int(sets.value))
        self.groups[-1].carried = carried

    def _repeat(self, reps: Piece, count: int, load: Piece | None = None) -> None:
        self.listed = False
        self.has_group = self.has_group or count > 1
        self._add(reps, count, load)

    def _load_reps(self, load: Piece, reps: Piece) -> None:
        if self.pending or not may_be_reps(reps, self.traits):
            raise NotPlain
        self.load = load
        self.listed = True
        self._add(reps, 1)

    def _triple(self, *factors: tuple[Piece, ...]) -> None:
        if [len(factor) for factor in factors] != [1, 1, 1]:
            raise NotPlain
        first, second, third = factors[0][0], factors[1][0], factors[2][0]
        if first.role not in BARE_OR_LOAD or second.role is not Role.BARE or third.role not in BARE_OR_LOAD:
            raise NotPlain
        way = settled_three(first, second, third, self.traits) or self.choice.triple
        if way not in PLACES_OF_THREE or way is TripleAs.REPS_SETS_LOAD:
            raise NotPlain
        load, reps, sets = [(first, second, third)[at] for at in PLACES_OF_THREE[way]]
        self._repeat_at(load, reps, sets)

    def _repeat_at(self, load: Piece, reps: Piece, sets: Piece) -> None:
        counts = sets.role is Role.BARE and 1 <= sets.value <= 2 * MOST_SETS and whole(sets)
        if not counts or not may_be_reps(reps, self.traits) or load.value <= 0:
            raise NotPlain
        self._repeat(reps, int(sets.value), load)
        self.load, self.pending = load, False

    def _mark(self, chunk: Chunk) -> None:
        if not self.touched and not chunk.marks() <= SILENT_MARKS:
            raise NotPlain
        if chunk.at:
            self._mark_at(chunk, chunk.at[0])
        if chunk.efforts:
            self._rate(chunk.efforts)
        if chunk.kind is not None:
            self._mark_kind(chunk.kind)
        if chunk.failure:
            self._fail()

    def _mark_at(self, chunk: Chunk, at: Piece) -> None:
        if len(chunk.at) > 1 or at.role not in BARE_OR_LOAD:
            raise NotPlain
        if chunk.at_sign and self.choice.at_is_effort and at.role is Role.BARE:
            if not 1 <= at.value <= HIGHEST_EFFORT:
                raise NotPlain
            self._rate((Effort.from_rpe(at.value),))
            return
        if self.traits.body and ((self.listed and not chunk.at_sign) or len(self.groups) > 1):
            raise NotPlain  # "10 10 with 20kg 6 6", "3x8, 2x5 with 10kg"
        if self.pending or not all([group.load is None or group.carried for group in self.touched]):
            raise NotPlain
        for group in self.groups:
            if group.load is None or group.carried:
                group.load, group.carried = at, False

    def _rate(self, efforts: tuple[Effort, ...]) -> None:
        if len(efforts) > 1 or (self.listed and self._is_one_of_several()):
            raise NotPlain
        for group in self.touched:
            group.effort = efforts[0]

    def _is_one_of_several(self) -> bool:
        """Whether the latest set is one of a list at its load: an effort behind it may be that of all of them."""
        load = self.touched[-1].load
        return sum([group.count for group in self.groups if group.load is load]) > 1

    def _mark_kind(self, kind: SetKind) -> None:
        if kind is not SetKind.WARMUP:
            raise NotPlain
        for group in self.touched:
            group.kind = kind

    def _fail(self) -> None:
        if self.listed and self.touched[-1].count > 1:
            raise NotPlain
        for group in self.touched[-1:] if self.listed else self.touched:
            group.failure = True

    def _finish(self) -> None:
        groups = self.groups
        if not groups or self.pending or (self.has_group and (self.has_single or groups[-1].kind is SetKind.WARMUP)):
            raise NotPlain
        untold = 0
        sets = 0
        for group in groups:
            sets += group.count
            untold += group.load is None
            if group.carried:
                raise NotPlain
        if sets > MOST_OUT or (0 < untold < len(groups) and not self.traits.body):
            raise NotPlain

    def _last_set(self, chunks: Chunks) -> None:
        """What was told of the last set alone: its reps, its effort, that it went to failure."""
        last = self.groups[-1]
        if last.kind is SetKind.WARMUP:
            raise NotPlain
        if last.count > 1:
            last.count -= 1
            last = Group(1, last.reps, last.load, last.effort, last.kind, last.failure)
            self.groups.append(last)
        for place, reps in chunks.placed_reps:
            if place != LAST_SET or len(self.groups) < 2 or not 0 < reps <= last.reps:
                raise NotPlain
            last.reps = reps
        last.effort = chunks.last_effort or last.effort
        last.failure = last.failure or chunks.last_to_failure


LAST_SETS = frozenset(("last_to_failure", "last_effort", "placed_reps"))

"""Chunks to sets, once it is decided which number is which.

What the numbers themselves settle is settled here (a unit, a half, a number that can be no count of reps). What they leave
open is a `Choice`, tried each way by the caller: the sets of each way are one candidate reading.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field
from decimal import Decimal
from enum import Enum

from engine.reading.chunks import Chunk, Chunks
from engine.reading.kinds import K
from engine.reading.pieces import Piece, Role
from engine.values.effort import Effort
from engine.values.exercise import Equipment, Exercise, Loading, Measure, Pattern
from engine.values.sets import MOST_REPS, SetKind, Side

MOST_SETS = 10
"""A first number up to this may count sets. Common practice, no source."""

MOST_LOADED_REPS = 30
"""A number above this is a load on a loaded lift, not reps. Common practice, no source."""

MOST_OUT = 200
LOADS = frozenset((Role.LOAD, Role.PLURAL, Role.CHANGE, Role.BAR, Role.BODY))


class PairAs(Enum):
    COUNTS = "sets x reps"
    LOAD_REPS = "load x reps"
    REPS_LOAD = "reps x load"


class TripleAs(Enum):
    __hash__ = object.__hash__

    SETS_REPS_LOAD = "sets x reps x load"
    LOAD_REPS_SETS = "load x reps x sets"
    LOAD_SETS_REPS = "load x sets x reps"
    REPS_SETS_LOAD = "reps x sets x load"
    REPS_LIST = "reps of each set"


class FirstAs(Enum):
    LOAD = "the first number is the load"
    REPS = "all numbers are reps"


@dataclass(frozen=True, slots=True)
class Choice:
    """Which number is which, where the numbers leave it open."""

    pair: PairAs = PairAs.COUNTS
    triple: TripleAs = TripleAs.SETS_REPS_LOAD
    first: FirstAs = FirstAs.REPS
    at_is_effort: bool = False
    effort_for_all: bool = True
    high_of_range: bool = False
    sides_in_one: bool = False


@dataclass(slots=True)
class Draft:
    """One set before its load is resolved. `load` None: not told here."""

    reps: int
    load: Piece | None = None
    seconds: Decimal | None = None
    metres: Decimal | None = None
    effort: Effort | None = None
    kind: SetKind = SetKind.WORK
    failure: bool = False
    missed: bool = False
    side: Side | None = None
    carried: bool = False
    """The load was carried on from an earlier group of the same exercise: likely, not certain."""


class DoesNotFit(Exception):
    """These numbers are no sets in this way of reading; the text says why."""


@dataclass(frozen=True, slots=True)
class Traits:
    """What an exercise settles about the numbers told of it."""

    body: bool
    timed: bool
    carried: bool
    two_implements: bool
    light: bool
    barbell: bool
    explosive: bool
    one_sided: bool

    @classmethod
    def of(cls, exercise: Exercise) -> Traits:
        return cls(
            body=exercise.loading in (Loading.BODY, Loading.BAND),
            timed=exercise.measure is Measure.TIME,
            carried=exercise.measure is Measure.DISTANCE,
            two_implements=exercise.loading in (Loading.PER_HAND, Loading.IMPLEMENT),
            light=exercise.is_isolation,
            barbell=exercise.equipment is Equipment.BARBELL,
            explosive=exercise.pattern is Pattern.EXPLOSIVE,
            one_sided=exercise.one_sided,
        )


def whole(piece: Piece) -> bool:
    return piece.value == int(piece.value)


def may_be_reps(piece: Piece, traits: Traits) -> bool:
    """Whether a bare number may count reps of one set."""
    if not whole(piece) or piece.value < 0:
        return False
    return piece.value <= (MOST_REPS if traits.body else MOST_LOADED_REPS)


@dataclass(slots=True)
class Shaper:
    """One walk over the chunks of one exercise under one choice."""

    chunks: Chunks
    choice: Choice
    traits: Traits
    drafts: list[Draft] = field(default_factory=list)
    load: Piece | None = None
    last_load: Piece | None = None
    pending: bool = False
    announced: int | None = None
    shared: int | None = None
    touched: list[Draft] = field(default_factory=list)
    waiting: tuple[Effort, ...] = ()
    saw_range: bool = False
    saw_list_effort: bool = False
    saw_sides: bool = False
    listed: bool = False
    weak: bool = False

    def run(self) -> list[Draft]:
        """The drafts.

        Errors: DoesNotFit.
        """
        if self.traits.explosive and self._only_loads():
            self.shared = 1  # weightlifters write singles bare: 60, 65, 70
        for place, chunk in enumerate(self.chunks.found):
            self._turn(place)
            self.touched = []
            self._read(chunk, place)
            self._mark(chunk)
            if len(self.drafts) > MOST_OUT:
                raise DoesNotFit("more sets than anyone does")
        self._finish()
        return self.drafts

    def _only_loads(self) -> bool:
        numbers = [number for chunk in self.chunks.found for factor in chunk.factors for number in factor]
        bare = all(chunk.size == 1 and not chunk.at and not chunk.counted for chunk in self.chunks.found)
        return bare and len(numbers) > 1 and all(self._is_load(number) for number in numbers)

    def _turn(self, place: int) -> None:
        """What was said before the results ("got"), or before the work sets, changes its part here."""
        if place == self.chunks.result_from:
            self.load = self.drafts[-1].load if self.drafts else self.load
            self.drafts = []
        if place == self.chunks.work_from:
            for draft in self.drafts:
                draft.kind = SetKind.WARMUP

    def _read(self, chunk: Chunk, place: int) -> None:
        if chunk.size == 0:
            self.waiting += chunk.efforts
        elif chunk.size == 1:
            self._one(chunk, place)
        elif chunk.size == 2:
            self._pair(chunk)
        elif chunk.size == 3:
            self._triple(chunk)
        else:
            self._many(chunk)

    # ---- adding sets and loads

    def _add(self, reps: Piece, load: Piece | None = None) -> None:
        reps_done, partial = divmod(reps.value, 1)
        if reps.role is Role.LOAD or not 0 <= reps_done <= MOST_REPS or (partial and partial != Decimal("0.5")):
            raise DoesNotFit(f"{reps.text} cannot be reps")
        if self.traits.timed and reps.role in (Role.BARE, Role.SECONDS, Role.PLURAL):
            self._add_timed(reps.value, load)
            return
        self._append(Draft(int(reps_done), load, missed=reps_done == 0))

    def _add_timed(self, seconds: Decimal, load: Piece | None) -> None:
        if seconds <= 0:
            raise DoesNotFit("no time")
        self._append(Draft(1, load, seconds=seconds))

    def _add_typed(self, amount: Piece, load: Piece | None) -> None:
        """A set of seconds or metres; both may tell of one set: 25m in 18s."""
        if amount.value <= 0:
            raise DoesNotFit(f"{amount.text} of nothing")
        last = self.drafts[-1] if self.drafts else None
        if amount.role is not Role.METRES and not (self.traits.timed or self.traits.carried or self.traits.body):
            raise DoesNotFit("a time for a lift that is counted in reps")
        if amount.role is Role.METRES:
            self._append(Draft(1, load, metres=amount.value))
        elif last is not None and last.metres is not None and last.seconds is None and self.traits.carried:
            last.seconds = amount.value
            self.touched = [last]
        else:
            self._append(Draft(1, load, seconds=amount.value))

    def _append(self, draft: Draft) -> None:
        if draft.load is None:
            draft.load = self.load
        self.pending = self.pending and draft.load is None
        self.drafts.append(draft)
        self.touched.append(draft)

    def _set_load(self, load: Piece, forward: bool = False) -> None:
        self.last_load = load
        if self.shared is not None:
            self._append(Draft(self.shared, load))
            return
        still_open = [draft for draft in self.drafts if draft.load is None or draft.carried]
        if still_open and not forward:
            for draft in still_open:
                draft.load, draft.carried = load, False
            self.touched = still_open
            self.load = None
        elif self.pending:
            raise DoesNotFit("two loads and no reps")
        else:
            self.load, self.pending = load, True

    # ---- one factor

    def _one(self, chunk: Chunk, place: int) -> None:
        numbers = chunk.factors[0]
        if chunk.counted:
            self._counted(numbers[0], chunk)
        elif len(numbers) == 1:
            self._single(numbers[0], chunk, place)
        else:
            self._list(chunk, numbers)

    def _counted(self, reps: Piece, chunk: Chunk) -> None:
        """ "a triple": reps of the load before; ahead of loads ("doubles at 110, 115") reps of each of them."""
        if self.load is not None:
            self._append(Draft(int(reps.value)))
            return
        self.shared = int(reps.value)
        for load in chunk.at:
            self._append(Draft(self.shared, load))
        chunk.at = ()

    def _single(self, number: Piece, chunk: Chunk, place: int) -> None:
        handler = SINGLES.get(number.role)
        if self.shared is not None and chunk.missed and self._is_load(number):
            self._append(Draft(0, number, missed=True))
        elif chunk.missed and number.role in (Role.BARE, Role.LOAD) and not self._is_reps(number, chunk, place):
            self._append(Draft(0, number, missed=True))
        elif handler is not None:
            handler(self, number)
        elif number.role is Role.PLURAL:
            self._plural(number)
        elif self._is_reps(number, chunk, place):
            self._reps(number)
        else:
            self._set_load(number)

    def _plural(self, number: Piece) -> None:
        following = self.chunks.found
        if len(following) > 1 and number is following[0].factors[0][0] and self._is_shared_head(number):
            self.shared = int(number.value)
        elif self.traits.timed or (self.traits.carried and (self.last_load is not None or not self._distance_told())):
            self._add_typed(number._replace(role=Role.SECONDS), None)
        else:
            self._set_load(number)

    def _is_shared_head(self, number: Piece) -> bool:
        """ "6s: 60 70 80": reps of each load, since all that follows can only be loads."""
        rest = [n for chunk in self.chunks.found[1:] for factor in chunk.factors for n in factor]
        return not self.traits.body and all(n.role is Role.BARE and n.value > MOST_LOADED_REPS for n in rest)

    def _distance_told(self) -> bool:
        return any(n.role is Role.METRES for c in self.chunks.found for factor in c.factors for n in factor)

    def _is_reps(self, number: Piece, chunk: Chunk, place: int) -> bool:
        """Whether a bare number on its own is reps here and not a load."""
        if number.role is not Role.BARE or number.value < 0:
            return False
        if self.traits.timed:
            return True
        if not may_be_reps(number, self.traits) or self.shared is not None:
            return False
        if chunk.at or self.load is not None or self.traits.body:
            return not (self.traits.body and self._open_group())
        if self._open_group():
            return False
        return place > 0 or self.choice.first is FirstAs.REPS

    def _open_group(self) -> bool:
        """Whether a group told by counts (3x12) still waits for its load."""
        return bool(self.drafts) and self.drafts[-1].load is None and not self.listed and self.announced is None

    def _reps(self, number: Piece) -> None:
        if self.announced is not None and not self.drafts:
            self._repeat(number, self.announced)
            self.announced = None
            return
        self.listed = True
        self._add(number)

    def _repeat(self, reps: Piece, count: int, load: Piece | None = None) -> None:
        if not 1 <= count <= MOST_OUT:
            raise DoesNotFit(f"{count} sets")
        self.listed = False
        self.touched = []
        for _ in range(count):
            self._add(reps, load)

    def _typed_reps(self, number: Piece) -> None:
        self._reps(number._replace(role=Role.REPS))

    def _sets_said(self, number: Piece) -> None:
        """ "3 sets": before the reps it announces them; behind one set it repeats it."""
        count = int(number.value)
        if not whole(number) or count < 1:
            raise DoesNotFit(f"{number.text} sets")
        if not self.drafts:
            self.announced = count
        elif len(self.drafts) == 1 or self._last_alone():
            draft = self.drafts[-1]
            self.touched = [draft, *(_copy(draft) for _ in range(count - 1))]
            self.drafts += self.touched[1:]
            self.listed = False
        elif len(self.drafts) != count:
            raise DoesNotFit(f"{count} sets, but {len(self.drafts)} told")

    def _last_alone(self) -> bool:
        return self.drafts[-1].load is not None and self.drafts[-2].load is not self.drafts[-1].load

    def _change(self, number: Piece) -> None:
        forward = self.traits.body and self.listed
        self._set_load(number, forward)

    def _timed_single(self, number: Piece) -> None:
        if self.announced is not None and not self.drafts:
            for _ in range(self.announced):
                self._append(Draft(1, None, seconds=number.value))
            self.announced = None
            return
        self._add_typed(number, None)

    def _list(self, chunk: Chunk, numbers: tuple[Piece, ...]) -> None:
        head, tail = numbers[0], numbers[1:]
        rest_are_reps = all(may_be_reps(n, self.traits) and n.role in (Role.BARE, Role.REPS) for n in tail)
        if self._is_range(chunk.joiner or K.SLASH, numbers):
            self._add(self._of_range(numbers))
        elif self._may_be_sides(numbers) and self.choice.sides_in_one:
            self._add(head)
        elif rest_are_reps and self._is_load(head):
            self.load = self.last_load = head
            self._reps_list(tail)
        elif self._is_load(tail[-1]) and may_be_reps(head, self.traits) and len(numbers) == 2:
            self._append(Draft(int(head.value), tail[-1]))
            self.last_load = tail[-1]
        elif self._open_group() and len(self.drafts) == len(numbers) and not self.traits.body:
            for draft, load in zip(self.drafts, numbers, strict=True):
                draft.load = load
        elif self.shared is not None and not self.traits.body:
            for load in numbers:
                self._append(Draft(self.shared, load))
        elif self.choice.first is FirstAs.LOAD and self.load is None and not self.traits.body and not chunk.at:
            self.load = self.last_load = head
            self._reps_list(tail)
        else:
            self._reps_list(numbers)

    def _is_load(self, number: Piece) -> bool:
        if number.role in LOADS:
            return not (self.traits.timed and number.role is Role.PLURAL)
        return number.role is Role.BARE and not self.traits.body and not may_be_reps(number, self.traits)

    def _reps_list(self, numbers: tuple[Piece, ...], load: Piece | None = None) -> None:
        if self.announced is not None and self.announced == len(numbers):
            self.announced = None
        self.listed = True
        for number in numbers:
            if not (may_be_reps(number, self.traits) or self.traits.timed):
                raise DoesNotFit(f"{number.text} cannot be reps")
            self._add(number, load)

    def _may_be_sides(self, numbers: tuple[Piece, ...]) -> bool:
        """ "10/10" of a one-sided lift: each side once, or two sets."""
        equal = len(numbers) == 2 and numbers[0].value == numbers[1].value
        self.saw_sides = self.saw_sides or (equal and self.traits.one_sided and not self.chunks.each)
        return equal and self.traits.one_sided

    def _is_range(self, joiner: K, numbers: tuple[Piece, ...]) -> bool:
        """ "8-10": two numbers, rising. A falling pair is a list."""
        rising = len(numbers) == 2 and numbers[0].value < numbers[1].value
        if joiner is not K.DASH or not rising or not may_be_reps(numbers[1], self.traits):
            return False
        self.saw_range = True
        return True

    def _of_range(self, numbers: tuple[Piece, ...]) -> Piece:
        return numbers[1] if self.choice.high_of_range else numbers[0]

    # ---- two factors

    def _pair(self, chunk: Chunk) -> None:
        first, second = chunk.factors
        if not first:
            self._carry(second)
        elif len(first) > 1:
            self._listed_first(first, second, chunk)
        elif len(second) > 1:
            self._listed_second(first[0], second, chunk)
        else:
            self._two(first[0], second[0], chunk)

    def _carry(self, reps: tuple[Piece, ...]) -> None:
        """ "x8": the load of the set before."""
        if self.load is None and self.drafts:
            self.load = self.drafts[-1].load
        if reps[0].role in LOADS:
            self._set_load(reps[0])
            return
        self._reps_list(reps)

    def _listed_first(self, first: tuple[Piece, ...], second: tuple[Piece, ...], chunk: Chunk) -> None:
        if len(second) != 1:
            raise DoesNotFit("two lists")
        shared = second[0]
        if all(may_be_reps(n, self.traits) for n in first) and self._is_load(shared):
            self._reps_list(first, shared)
            self.load = self.last_load = shared
        elif self.traits.body or (self.load is not None and shared.value <= MOST_SETS):
            self._ladder(first, int(shared.value))
        else:
            self.listed = False
            for load in first:
                self._add(shared, load)
            self.load = self.last_load = first[-1]

    def _ladder(self, rungs: tuple[Piece, ...], rounds: int) -> None:
        if not 1 <= rounds <= MOST_SETS:
            raise DoesNotFit(f"{rounds} rounds of a ladder")
        for _ in range(rounds):
            self._reps_list(rungs)

    def _listed_second(self, head: Piece, listed: tuple[Piece, ...], chunk: Chunk) -> None:
        if self._is_range(chunk.joiner or K.SLASH, listed):
            self._two(head, self._of_range(listed), chunk)
        elif head.role in LOADS or self._is_load(head):
            self.load = self.last_load = head
            self._reps_list(listed)
        elif all(self._is_load(n) or n.value > head.value * 2 for n in listed) and not self.traits.body:
            self.listed = False
            for load in listed:
                self._add(head, load)
        elif head.value == len(listed):
            self._reps_list(listed)
        elif self.traits.body:
            raise DoesNotFit("a count and a list that do not match")
        else:
            self.load = self.last_load = head
            self.weak = True
            self._reps_list(listed)

    def _two(self, first: Piece, second: Piece, chunk: Chunk) -> None:
        if self._typed_two(first, second):
            return
        settled = self._settled(first, second, chunk)
        match settled or self.choice.pair:
            case PairAs.LOAD_REPS:
                self._load_reps(first, second)
            case PairAs.REPS_LOAD:
                self._load_reps(second, first)
            case PairAs.COUNTS:
                self._counts(first, second)

    def _typed_two(self, first: Piece, second: Piece) -> bool:
        """Two factors of which a unit or a word says what they are."""
        timed = second.role in (Role.SECONDS, Role.METRES) or (second.role is Role.PLURAL and self.traits.timed)
        if timed:
            self._typed_amount(first, second)
        elif first.role in (Role.SECONDS, Role.METRES) or (first.role is Role.PLURAL and self.traits.timed):
            self._typed_amount(second, first)
        elif first.role is Role.SETS or (second.role is Role.REPS and first.role is Role.BARE and not second.failure):
            self._said_counts(first, second)
        elif second.role is Role.SETS:
            self._said_counts(second, first)
        elif second.role in LOADS and first.value == 2 and self._is_pair_of_implements():
            self._set_load(second)
        elif first.value == 2 and second.role is Role.BARE and not self.drafts and self._implements_ahead_of_list():
            self._set_load(second)
        else:
            return False
        return True

    def _said_counts(self, sets: Piece, reps: Piece) -> None:
        if sets.role is Role.BARE and (self._is_load(sets) or sets.value > MOST_SETS):
            self._load_reps(sets, reps)
            return
        if sets.role is Role.PLURAL or sets.role is Role.LOAD:
            raise DoesNotFit("a load where sets were counted")
        self._repeat(reps._replace(role=Role.REPS), int(sets.value))

    def _is_pair_of_implements(self) -> bool:
        """ "2x24k" with reps told elsewhere: two implements."""
        others = any(len(chunk.factors) > 0 for chunk in self.chunks.found[1:]) or bool(self.drafts)
        return (self.traits.two_implements or self.traits.carried) and others

    def _implements_ahead_of_list(self) -> bool:
        """ "2x28 9/8/7": two implements, then the reps of each set."""
        rest = self.chunks.found[1:]
        numbers = [number for chunk in rest for factor in chunk.factors for number in factor]
        listed = len(numbers) > 1 and all(chunk.size == 1 and not chunk.at for chunk in rest)
        return self.traits.two_implements and listed and all(may_be_reps(number, self.traits) for number in numbers)

    def _typed_amount(self, other: Piece, amount: Piece) -> None:
        amount = amount._replace(role=Role.SECONDS) if amount.role is Role.PLURAL else amount
        if other.role in LOADS or self._is_load(other):
            self.load = self.last_load = other
            self._add_typed(amount, other)
            return
        if not whole(other) or not 1 <= other.value <= MOST_SETS * 2:
            raise DoesNotFit(f"{other.text} sets of {amount.text}")
        for _ in range(int(other.value)):
            self._add_typed(amount, None)

    def _settled(self, first: Piece, second: Piece, chunk: Chunk) -> PairAs | None:
        """What the two numbers settle by themselves; None where they leave it open."""
        if first.role in LOADS:
            return PairAs.LOAD_REPS
        if second.role in LOADS:
            return PairAs.REPS_LOAD
        if self.traits.body or self.traits.timed:
            return PairAs.COUNTS
        if first.role is Role.REPS:
            return PairAs.REPS_LOAD if second.value > MOST_SETS else PairAs.COUNTS
        if not may_be_reps(first, self.traits):
            return PairAs.LOAD_REPS
        if not may_be_reps(second, self.traits):
            return PairAs.REPS_LOAD
        if chunk.spoken_for and first.value > MOST_SETS:
            return PairAs.LOAD_REPS
        return None

    def _load_reps(self, load: Piece, reps: Piece) -> None:
        if reps.role in LOADS or not may_be_reps(reps._replace(role=Role.BARE), self.traits):
            raise DoesNotFit(f"{reps.text} cannot be reps")
        self.load = self.last_load = load
        self.listed = True
        self._add(reps._replace(role=Role.REPS), load)
        self.pending = False

    def _counts(self, first: Piece, second: Piece) -> None:
        """Sets x reps, or reps x sets where the first is no count of sets."""
        sets, reps = (first, second) if first.value <= MOST_SETS else (second, first)
        if not (whole(sets) and 1 <= sets.value <= MOST_SETS):
            raise DoesNotFit(f"neither {first.text} nor {second.text} counts sets")
        carried = self.load is not None and not self.pending and not self.traits.body
        self._repeat(reps, int(sets.value))
        for draft in self.touched:
            draft.carried = carried

    # ---- three factors and more

    def _triple(self, chunk: Chunk) -> None:
        first, second, third = chunk.factors
        if not first:
            self._carry((*second, *third))
            return
        if len(first) > 1 or len(second) > 1 or len(third) > 1:
            self._triple_with_list(first, second, third)
            return
        self._three(first[0], second[0], third[0])

    def _triple_with_list(self, first: tuple[Piece, ...], second: tuple[Piece, ...], third: tuple[Piece, ...]) -> None:
        """ "3x10x40/45/50": a load for each set."""
        if len(first) > 1 or len(second) > 1 or first[0].value != len(third):
            raise DoesNotFit("a list among three factors")
        for load in third:
            self._add(second[0], load)

    def _three(self, first: Piece, second: Piece, third: Piece) -> None:
        typed = [n for n in (first, second, third) if n.role in (Role.SECONDS, Role.METRES)]
        if typed or self.traits.timed:
            self._three_typed(first, second, third)
            return
        if self._three_with_implements(first, second, third):
            return
        way = self._settled_three(first, second, third) or self.choice.triple
        match way:
            case TripleAs.SETS_REPS_LOAD:
                self._repeat_at(third, second, first)
            case TripleAs.LOAD_REPS_SETS:
                self._repeat_at(first, second, third)
            case TripleAs.LOAD_SETS_REPS:
                self._repeat_at(first, third, second)
            case TripleAs.REPS_SETS_LOAD:
                self._repeat_at(third, first, second)
            case TripleAs.REPS_LIST:
                self._reps_list((first, second, third))

    def _three_typed(self, first: Piece, second: Piece, third: Piece) -> None:
        """28kg x 40m x 3, 3 x 40m x 28kg, 2 x 28kg x 40m, 2 x 10kg x 45s."""
        amount = next((n for n in (second, first, third) if n.role in (Role.SECONDS, Role.METRES)), second)
        others = [n for n in (first, second, third) if n is not amount]
        load = next((n for n in others if n.role in LOADS or n.value > MOST_SETS or not whole(n)), None)
        if load is None:
            raise DoesNotFit("a load among the three")
        count = others[0] if others[1] is load else others[1]
        self.load = self.last_load = load
        pair = count is first and count.value == 2 and load is second
        for _ in range(1 if pair else int(count.value)):
            self._add_typed(amount if amount.role is not Role.BARE else amount._replace(role=Role.SECONDS), load)

    def _three_with_implements(self, first: Piece, second: Piece, third: Piece) -> bool:
        """2 x 24k x 10: two implements, then reps. A load in the middle is open otherwise."""
        if second.role not in LOADS:
            return False
        if first.value != 2 or not (self.traits.two_implements or self.traits.carried):
            raise DoesNotFit("a load between two counts")
        self._load_reps(second, third)
        return True

    def _settled_three(self, first: Piece, second: Piece, third: Piece) -> TripleAs | None:
        if first.role is Role.SETS or (second.role is Role.REPS and third.role is not Role.SETS and whole(first)):
            return TripleAs.SETS_REPS_LOAD if self._is_load(third) or third.role in LOADS else None
        if third.role in LOADS or (self._is_load(third) and not self._is_load(first) and first.role not in LOADS):
            return TripleAs.SETS_REPS_LOAD if first.value <= MOST_SETS else TripleAs.REPS_SETS_LOAD
        if second.role is Role.SETS:
            return TripleAs.LOAD_SETS_REPS
        if third.role is Role.SETS or (first.role in LOADS and second.role is Role.REPS):
            return TripleAs.LOAD_REPS_SETS
        big_first = first.role in LOADS or self._is_load(first)
        if big_first and second.value >= third.value:
            return TripleAs.LOAD_REPS_SETS
        return None

    def _repeat_at(self, load: Piece, reps: Piece, sets: Piece) -> None:
        if not whole(sets) or not 1 <= sets.value <= 2 * MOST_SETS or sets.role in LOADS:
            raise DoesNotFit(f"{sets.text} sets")
        if not may_be_reps(reps._replace(role=Role.BARE), self.traits) or load.value <= 0:
            raise DoesNotFit(f"{reps.text} cannot be reps")
        self.last_load = load
        self._repeat(reps._replace(role=Role.REPS), int(sets.value), load)
        self.load, self.pending = load, False

    def _many(self, chunk: Chunk) -> None:
        """65x9x8x8: a load, then the reps of each set."""
        flat = [number for factor in chunk.factors for number in factor]
        if not chunk.factors[0]:
            self._carry(tuple(flat))
        elif self._is_load(flat[0]) or flat[0].role in LOADS:
            self.load = self.last_load = flat[0]
            self._reps_list(tuple(flat[1:]))
        elif self.traits.body:
            self._reps_list(tuple(flat))
        else:
            raise DoesNotFit("many factors without a load")

    # ---- marks

    def _mark(self, chunk: Chunk) -> None:
        self._mark_load(chunk)
        self._mark_effort(chunk)
        if chunk.times is not None:
            self._mark_times(chunk.times)
        if chunk.kind is not None:
            for draft in self.touched:
                draft.kind = chunk.kind
        for draft in self.touched:
            draft.side = chunk.side or draft.side
        if chunk.failure and self.touched:
            for draft in self.touched if not self.listed else self.touched[-1:]:
                draft.failure = True
        if chunk.missed and self.touched:
            self._mark_miss(chunk)
        self._mark_plus(chunk)

    def _mark_load(self, chunk: Chunk) -> None:
        if not chunk.at:
            return
        if chunk.at_sign and self.choice.at_is_effort and len(chunk.at) == 1 and chunk.at[0].role is Role.BARE:
            if not 1 <= chunk.at[0].value <= 10:
                raise DoesNotFit("no effort")
            self._give_effort((Effort.from_rpe(chunk.at[0].value),))
            return
        if not self.touched and not self.drafts:
            raise DoesNotFit("a load and no reps")
        if len(chunk.at) > 1:
            self._loads_each(chunk.at)
            return
        still_open = [draft for draft in self.drafts if draft.load is None or draft.carried]
        for draft in (*still_open, *self.touched):
            draft.load, draft.carried = chunk.at[0], False
        self.last_load = chunk.at[0]
        self.pending = False

    def _loads_each(self, loads: tuple[Piece, ...]) -> None:
        if len(loads) != len(self.touched):
            raise DoesNotFit("as many loads as sets")
        for draft, load in zip(self.touched, loads, strict=True):
            draft.load = load

    def _mark_effort(self, chunk: Chunk) -> None:
        if not self.touched:
            self.waiting += chunk.efforts if chunk.size else ()
            return
        efforts, self.waiting = self.waiting + (chunk.efforts if chunk.size else ()), ()
        if efforts:
            self._give_effort(efforts, chunk.effort_apart)

    def _give_effort(self, efforts: tuple[Effort, ...], apart: bool = False) -> None:
        if len(efforts) > 1:
            if len(efforts) > len(self.drafts):
                raise DoesNotFit("more efforts than sets")
            several = self.touched if len(self.touched) == len(efforts) else self.drafts
            if len(several) != len(efforts):
                raise DoesNotFit("as many efforts as sets")
            for draft, effort in zip(several, efforts, strict=True):
                draft.effort = effort
            return
        group = self.touched
        same = [draft for draft in self.drafts if draft.load is self.touched[-1].load]
        if self.listed and len(same) > 1 and len(self.touched) <= len(same) and not self._one_pair_each():
            self.saw_list_effort = True
            group = same if self.choice.effort_for_all else self.touched[-1:]
        for draft in group:
            draft.effort = efforts[0]

    def _one_pair_each(self) -> bool:
        """Each set was told with its own load: an effort behind one is that one's."""
        return all(chunk.size == 2 or chunk.at for chunk in self.chunks.found if chunk.size)

    def _mark_times(self, times: int) -> None:
        if not 1 <= times <= 2 * MOST_SETS:
            raise DoesNotFit(f"{times} times")
        if not self.touched:
            raise DoesNotFit("nothing to repeat")
        group = list(self.touched)
        for _ in range(times - 1):
            self.touched += [_copy(draft) for draft in group]
        self.drafts += self.touched[len(group) :]

    def _mark_miss(self, chunk: Chunk) -> None:
        last = self.touched[-1]
        last.missed = True
        if chunk.missed_rep is not None:
            last.reps = max(0, chunk.missed_rep - 1)

    def _mark_plus(self, chunk: Chunk) -> None:
        if not chunk.plus or not self.touched:
            return
        head = self.touched[-1]
        for more in chunk.plus:
            if not whole(more) or not 1 <= more.value <= MOST_LOADED_REPS:
                raise DoesNotFit(f"+{more.text}")
            extra = _copy(head)
            extra.reps, extra.kind, extra.effort, extra.failure = int(more.value), SetKind.REST_PAUSE, None, False
            self.drafts.append(extra)

    # ---- the end

    def _finish(self) -> None:
        out = self.chunks
        if self.announced is not None and self.drafts and len(self.drafts) != self.announced:
            raise DoesNotFit(f"{self.announced} sets announced, {len(self.drafts)} told")
        if not self.drafts:
            raise DoesNotFit("no reps")
        if self.pending or self.waiting:
            raise DoesNotFit("a number too many")
        if any(draft.carried for draft in self.drafts):
            self.weak = True
        if out.failure_ahead:
            for draft in self.drafts:
                draft.failure = True
        if out.last_to_failure:
            self.drafts[-1].failure = True
        self._kinds_ahead()

    def _kinds_ahead(self) -> None:
        out = self.chunks
        if out.rest_pause and self.listed and not any(chunk.plus for chunk in out.found):
            for draft in self.drafts[1:]:
                draft.kind = SetKind.REST_PAUSE
        if out.drops_ahead:
            for draft in self.drafts[1:]:
                draft.kind = SetKind.DROP


def _copy(draft: Draft) -> Draft:
    return Draft(
        draft.reps, draft.load, draft.seconds, draft.metres, draft.effort, draft.kind, draft.failure, draft.missed, draft.side
    )


SINGLES: dict[Role, Callable[[Shaper, Piece], None]] = {
    Role.LOAD: Shaper._set_load,
    Role.CHANGE: Shaper._change,
    Role.BAR: Shaper._set_load,
    Role.BODY: Shaper._set_load,
    Role.SECONDS: Shaper._timed_single,
    Role.METRES: Shaper._timed_single,
    Role.REPS: Shaper._typed_reps,
    Role.TIMES: Shaper._typed_reps,
    Role.SETS: Shaper._sets_said,
}

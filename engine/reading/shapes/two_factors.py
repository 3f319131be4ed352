"""Chunks of two factors: sets x reps, load x reps, reps x load, and lists on either side."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from itertools import pairwise

from engine.reading.chunks.choices import LOADS, DoesNotFit, PairAs, Traits, may_be_reps, whole
from engine.reading.chunks.chunks import Chunk
from engine.reading.shapes.one_factor import OneFactor
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, MOST_SETS, Piece, Role
from engine.values.sets import SetKind

LOAD_ROLES = frozenset((Role.BARE, Role.LOAD, Role.PLURAL))
COUNTS = frozenset((Role.BARE, Role.REPS, Role.SETS))
LIGHTEST_BAR, FEW_SETS = 15, 5
LEAST_PLAIN_LOAD = 20
"""On a barbell 30x8 is a load and its reps, not reps and sets. Common practice, no source."""
LEAST_HELD = 16
"""A pair of implements this heavy counts no reps in front of sets and reps. Common practice, no source."""
FEWEST_RUNGS = 3
"""Two numbers at a slash may be a scale or two sides: "140 4/10 x 5". Common practice, no source."""


LEAST_LEFT = Decimal("0.3")
"""A drop leaves at least so much of the load. Common practice, no source."""


class TwoFactors(OneFactor):
    """Chunks of two factors."""

    def _pair(self, chunk: Chunk) -> None:
        first, second = self._with_the_unit_ahead(chunk.factors)
        sides_of_nothing = chunk.of_sides and not first  # "80x5, x3 per side x3": of which load, nobody says
        self.unplaced = self.unplaced or sides_of_nothing or (chunk.alone_in_brackets and bool(self.groups))
        if self.traits.one_sided:
            if self._rounds_of_sides(first, second):
                return
            if chunk.joiner is K.SLASH and len(first) == 1 and self._both_sides(second):
                second = second[:1]  # "3 x 15/15": each side once a set
        if not first:
            self._carry(second)
        elif self._tells_reps_of_sides(chunk):
            self._repeat(first[-1], int(second[0].value))  # "10 each side x2"
        elif len(first) > 1:
            self._listed_first(first, second, chunk)
        elif len(second) > 1:
            self._listed_second(first[0], second, chunk)
        else:
            self._two(first[0], second[0], chunk)

    def _with_the_unit_ahead(self, factors: list[tuple[Piece, ...]]) -> list[tuple[Piece, ...]]:
        """ "225x5 lb", "225x5x3 lb": the unit at the end is that of the load in front, which nobody does for reps."""
        head, tail = factors[0], factors[-1]
        if self.traits.body or len(head) != 1 or len(tail) != 1 or tail[0].role is not Role.LOAD:
            return factors
        load, last = head[0], tail[0]
        if load.role is not Role.BARE or load.value <= MOST_LOADED_REPS or last.value > MOST_LOADED_REPS:
            return factors
        bare = last._replace(role=Role.BARE, unit=None)
        return [(load._replace(role=Role.LOAD, unit=last.unit),), *factors[1:-1], (bare,)]

    def _tells_reps_of_sides(self, chunk: Chunk) -> bool:
        """Whether the reps of each side stand in front of the count of sets, with a word for it between them."""
        if chunk.of_sides:
            return not self._is_of_a_bar(*chunk.factors)
        return chunk.of_each and self._is_of_each(chunk)

    def _is_of_each(self, chunk: Chunk) -> bool:
        """Whether "8 each x3" is three sets of eight a side, where a load stands elsewhere or there is none; a load in
        each hand and its reps otherwise.
        """
        reps, sets = chunk.factors[0][-1], chunk.factors[1][0]
        counts = sets.role is Role.BARE and whole(sets) and 1 <= sets.value <= MOST_SETS
        if not counts or reps.role is not Role.BARE or not may_be_reps(reps, self.traits):
            return False
        if self.traits.body or (self.traits.one_sided and 1 < sets.value <= FEW_SETS < reps.value):
            return True
        if self.traits.two_implements and not self._load_told():
            counts = self.choice.pair is PairAs.COUNTS
            many = sets.value > FEW_SETS  # "10 each x 8": reps of each side, or the load in each hand
            self.unplaced = self.unplaced or (counts and many)
            return counts
        return self._load_stands_apart() and sets.value <= FEW_SETS

    def _load_stands_apart(self) -> bool:
        """Whether a load was told on its own: "16s 8 each", "8 each x3 with 16s", and not "24 each x 8"."""
        alone = [chunk.factors[0][0] for chunk in self.chunks.found if chunk.size == 1]
        return any(map(self._is_load, alone)) or any(chunk.at for chunk in self.chunks.found)

    def _is_of_a_bar(self, first: tuple[Piece, ...], second: tuple[Piece, ...]) -> bool:
        """ "35 a side x 8" of a bar; of the body, or of what the hands hold, ten on each side are reps."""
        counts = second[0].role is Role.BARE and second[0].value <= MOST_SETS and whole(second[0])
        held = self.traits.body or self.traits.two_implements or self.traits.one_sided
        return not (held and counts and second[0].value < first[-1].value and may_be_reps(first[-1], self.traits))

    def _both_sides(self, numbers: tuple[Piece, ...]) -> bool:
        equal = len(numbers) == 2 and numbers[0].value == numbers[1].value
        return equal and self.traits.one_sided and may_be_reps(numbers[0], self.traits)

    def _rounds_of_sides(self, first: tuple[Piece, ...], second: tuple[Piece, ...]) -> bool:
        """ "20kg 10/10 x3" of a one-sided lift: three sets, each side once a set."""
        if len(second) != 1 or not self._both_sides(first):
            return False
        rounds = second[0]
        known = self.load is not None or self.traits.body
        if not known or rounds.role not in (Role.BARE, Role.SETS) or not 1 <= rounds.value <= MOST_SETS:
            return False
        for _ in range(int(rounds.value)):
            self._reps_list(first[:1])
        return True

    def _carry(self, reps: tuple[Piece, ...]) -> None:
        """ "x8": the load of the set before."""
        self._note_single(closed=False)
        if self.load is None and self.drafts:
            self.load = self.drafts[-1].load
        if reps[0].role in LOADS:
            self._set_load(reps[0])
            return
        self._reps_list(reps)

    def _listed_first(self, first: tuple[Piece, ...], second: tuple[Piece, ...], chunk: Chunk) -> None:
        if len(second) == len(first) and all(may_be_reps(reps, self.traits) for reps in second):
            for load, reps in zip(first, second, strict=True):
                self._load_reps(load, reps)
            return
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
        rising = all(low.value < high.value for low, high in pairwise(rungs))
        climbs = rising and len(rungs) >= FEWEST_RUNGS
        self.unplaced = self.unplaced or not (climbs or self.traits.body)
        for _ in range(rounds):
            self._reps_list(rungs)

    def _listed_second(self, head: Piece, listed: tuple[Piece, ...], chunk: Chunk) -> None:
        if self._is_range(chunk.joiner or K.SLASH, listed):
            self._two(head, self._of_range(listed), chunk)
        elif head.role in LOADS or self._is_load(head):
            self.load = self.last_load = head
            self._reps_list(listed)
        elif self._counts_list(head, listed):
            self._reps_list(listed)
        elif all(self._is_load(n) or n.value > head.value * 2 for n in listed) and not self.traits.body:
            self._reps_at_each(head, listed)
        elif self.traits.body:
            raise DoesNotFit("a count and a list that do not match")
        else:
            self.load = self.last_load = head
            self.weak = not (head.value >= LEAST_PLAIN_LOAD and head.value > max(reps.value for reps in listed))
            self._reps_list(listed)

    def _counts_list(self, sets: Piece, listed: tuple[Piece, ...]) -> bool:
        """ "3x13/12/11": as many reps as sets; where they rise and no load is told they may be loads: asked."""
        if sets.value != len(listed) or not all(may_be_reps(n, self.traits) for n in listed):
            return False
        rising = not self.traits.body and any(low.value < high.value for low, high in pairwise(listed))
        self.unplaced = self.unplaced or (rising and not self._load_told())
        return True

    def _reps_at_each(self, reps: Piece, loads: tuple[Piece, ...]) -> None:
        """ "8x30/50": so many reps at each of the loads."""
        if self.pending:
            raise DoesNotFit("two loads for one set")
        self.listed = False
        for load in loads:
            self._add(reps, load)

    def _load_told(self) -> bool:
        """Whether any number of the exercise can only be a load."""
        told = [n for chunk in self.chunks.found for factor in (*chunk.factors, chunk.at) for n in factor]
        return self.load is not None or any(self._is_load(number) for number in told)

    def _two(self, first: Piece, second: Piece, chunk: Chunk) -> None:
        if self._typed_two(first, second):
            return
        if chunk.at_same:
            self._counts(first, second, sure=True)
            return
        if self._is_dropped_to(first, chunk):
            self._load_reps(first, second)
            return
        match settled_pair(first, second, self.traits, chunk.spoken_for) or self._pair_as(chunk):
            case PairAs.COUNTS:
                self._counts(first, second)
            case PairAs.LOAD_REPS:
                self._load_reps(first, second)
            case PairAs.REPS_LOAD:
                self._load_reps(second, first)

    def _is_dropped_to(self, first: Piece, chunk: Chunk) -> bool:
        """ "50 3x12, drop 30x15": lighter than the load before it, and of the same size."""
        drops = SetKind.DROP in (chunk.kind, self.kind_ahead) or self.dropping
        before = self.last_load or self.load
        if not drops or before is None or not self.drafts or first.role is not Role.BARE or self.traits.body:
            return False
        near = before.value * LEAST_LEFT <= first.value < before.value
        return near and not self.traits.timed and not counts_by_itself(self.chunks.found, chunk)

    def _pair_as(self, chunk: Chunk) -> PairAs:
        counts = self.choice.pair is not PairAs.COUNTS and counts_by_itself(self.chunks.found, chunk)
        return PairAs.COUNTS if counts else self.choice.pair

    def _typed_two(self, first: Piece, second: Piece) -> bool:
        """Two factors of which a unit or a word says what they are."""
        timed = second.role in (Role.SECONDS, Role.METRES) or (
            second.role is Role.PLURAL and (self.traits.timed or (self.traits.carried and self._is_weight_told()))
        )
        if timed:
            self._typed_amount(first, second)
        elif first.role in (Role.SECONDS, Role.METRES) or (first.role is Role.PLURAL and self._holds_times()):
            self._typed_amount(second, first)
        elif first.role is Role.SETS or (second.role is Role.REPS and first.role is Role.BARE and not second.failure):
            self._said_counts(first, second)
        elif second.role is Role.SETS or self._is_reps_by_sets(first, second):
            self._said_counts(second._replace(role=Role.SETS), first)
        elif self.traits.carried and self._distance_told():
            self._load_of_a_carry(first, second)
        elif (first.value == 2 and self._is_pair_of_implements(second)) or self._is_one_implement(first, second):
            self._set_load(second)
        else:
            return False
        return True

    def _is_weight_told(self) -> bool:
        """ "farmers 36kg 4x30s": what is carried was told with its unit, and no way."""
        told = [n for chunk in self.chunks.found for factor in (*chunk.factors, chunk.at) for n in factor]
        return any(number.role is Role.LOAD for number in told) and not self._distance_told()

    def _holds_times(self) -> bool:
        """Whether "14s" can only be seconds: of a hold, or of a way told right before it."""
        return self.traits.timed or (self.traits.carried and bool(self.drafts) and self.drafts[-1].metres is not None)

    def _is_reps_by_sets(self, first: Piece, second: Piece) -> bool:
        """ "5 reps x 3": three sets."""
        return first.role is Role.REPS and second.role is Role.BARE and second.value <= MOST_SETS and whole(second)

    def _load_of_a_carry(self, first: Piece, second: Piece) -> None:
        """ "2x28 30m": two implements, where the way is told elsewhere."""
        if first.value != 2 or second.role not in (Role.BARE, Role.LOAD, Role.PLURAL):
            raise DoesNotFit("reps beside a distance")
        self._set_load(second)

    def _said_counts(self, sets: Piece, reps: Piece) -> None:
        if sets.role is Role.BARE and (self._is_load(sets) or sets.value > MOST_SETS):
            self._load_reps(sets, reps)
            return
        if sets.role is Role.PLURAL or sets.role is Role.LOAD:
            raise DoesNotFit("a load where sets were counted")
        held = self.traits.timed and reps.role is Role.BARE  # "plank 3 sets of 45", "3 times 45"
        self._repeat(reps if held else self._as_reps(reps), int(sets.value))

    def _is_pair_of_implements(self, second: Piece) -> bool:
        """ "2x24k" with reps told elsewhere: two implements."""
        if second.role not in LOADS:
            bare = second.role is Role.BARE and not self.drafts
            return bare and (self._implements_ahead_of_list() or self._implements_ahead_of_counts(second))
        others = any(len(chunk.factors) > 0 for chunk in self.chunks.found[1:]) or bool(self.drafts)
        return (self.traits.two_implements or self.traits.carried) and others

    def _is_one_implement(self, first: Piece, second: Piece) -> bool:
        """ "1x24kg 3x12": what was held, where all other numbers count sets and reps."""
        if first.value != 1 or second.role is not Role.LOAD or not self.traits.two_implements:
            return False
        rest = [n for chunk in self.chunks.found for factor in (*chunk.factors, chunk.at) for n in factor]
        counts = [n for n in rest if n is not first and n is not second]
        few = all(n.role in COUNTS and may_be_reps(n, self.traits) and n.value < second.value for n in counts)
        return few and len(counts) > 1

    def _implements_ahead_of_list(self) -> bool:
        """ "2x28 9/8/7": two implements, then the reps of each set."""
        rest = self.chunks.found[1:]
        numbers = [number for chunk in rest for factor in chunk.factors for number in factor]
        listed = len(numbers) > 1 and all(chunk.size == 1 and not chunk.at for chunk in rest)
        return self.traits.two_implements and listed and all(may_be_reps(number, self.traits) for number in numbers)

    def _implements_ahead_of_counts(self, second: Piece) -> bool:
        """ "2x20 3x10": two implements, then their sets and reps; "2x12 3x10" may be sets of twelve: asked."""
        rest = self.chunks.found[1:]
        pair = rest[0] if len(rest) == 1 and rest[0].size == 2 and not rest[0].at else None
        if pair is None or not self.traits.two_implements or any(len(factor) != 1 for factor in pair.factors):
            return False
        sets, reps = pair.factors[0][0], pair.factors[1][0]
        counts = sets.role in COUNTS and reps.role in COUNTS and 1 < sets.value <= MOST_SETS
        held = counts and may_be_reps(reps, self.traits) and second.value > reps.value
        near = second.value < LEAST_HELD or second.value * 2 < reps.value * 3
        self.unplaced = self.unplaced or (held and near)
        return held

    def _typed_amount(self, other: Piece, amount: Piece) -> None:
        amount = amount._replace(role=Role.SECONDS) if amount.role is Role.PLURAL else amount
        if other.role in LOADS or self._is_load(other):
            self.load = self.last_load = other
            self._add_typed(amount, other)
            return
        if not whole(other) or not 1 <= other.value <= MOST_SETS * 2:
            raise DoesNotFit(f"{other.text} sets of {amount.text}")
        if amount.role is Role.METRES:
            self.way = []
        for _ in range(int(other.value)):
            self._add_typed(amount, None)
        if other.value > 1:
            self._note_group()

    def _load_reps(self, load: Piece, reps: Piece) -> None:
        if reps.role in LOADS or not may_be_reps(reps, self.traits):
            raise DoesNotFit(f"{reps.text} cannot be reps")
        if self.pending and (self.load is None or self.load.value != load.value or self.traits.explosive):
            raise DoesNotFit("a load without reps")
        self.load = self.last_load = load
        self.listed = True
        self._add(self._as_reps(reps), load)
        self.pending = False

    def _counts(self, first: Piece, second: Piece, sure: bool = False) -> None:
        """Sets x reps, or reps x sets where the first is no count of sets; `sure`: at the load of those before."""
        sets, reps = (first, second) if first.value <= MOST_SETS else (second, first)
        if not (whole(sets) and 1 <= sets.value <= MOST_SETS):
            raise DoesNotFit(f"neither {first.text} nor {second.text} counts sets")
        if sets.value > 1 and not reps.value:
            raise DoesNotFit(f"{sets.text} sets of 0 reps")
        carried = self.load is not None and not self.pending
        if sets.value == 1 and self.traits.two_implements and len(self.chunks.found) > 1 and not self._load_told():
            self.unplaced = True  # "1x24 3x12": a set of its own, or what was held
        self._repeat(reps, int(sets.value))
        for draft in self.touched:
            draft.carried = carried and not sure


def counts_by_itself(found: Sequence[Chunk], chunk: Chunk) -> bool:
    """ "3x12 25, drop 15x10": sets and reps whose own load stands right behind, beside pairs of load and reps."""
    place = next(place for place, one in enumerate(found) if one is chunk)
    if place + 2 >= len(found) or chunk.factors[0][0].value > FEW_SETS or chunk.at:
        return False
    load, beside = found[place + 1], found[place + 2]
    alone = load.size == 1 and len(load.factors[0]) == 1 and not load.counted and load.before is None
    return alone and load.factors[0][0].role in LOAD_ROLES and beside.size > 1 and bool(beside.factors[0])


def settled_pair(first: Piece, second: Piece, traits: Traits, spoken_for: bool) -> PairAs | None:
    """What the two numbers settle by themselves; None where they leave it open."""
    if first.role in LOADS:
        return PairAs.LOAD_REPS
    if second.role in LOADS:
        return PairAs.REPS_LOAD
    if traits.body or traits.timed:
        return PairAs.COUNTS
    if first.role is Role.REPS and second.value > MOST_SETS:
        return PairAs.REPS_LOAD
    if not may_be_reps(first, traits):
        return PairAs.LOAD_REPS
    if not may_be_reps(second, traits):
        return PairAs.REPS_LOAD
    heavy = traits.barbell and not traits.light and first.value >= LIGHTEST_BAR
    if first.value > MOST_SETS and (spoken_for or (heavy and second.value > FEW_SETS)):
        return PairAs.LOAD_REPS
    return None

"""Chunks of one factor: a load, reps, a time, a distance, or a list of them."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from itertools import pairwise

from engine.reading.chunks.choices import (
    MOST_OUT,
    DoesNotFit,
    Draft,
    FirstAs,
    copy_of,
    may_be_reps,
    whole,
)
from engine.reading.chunks.chunks import Chunk
from engine.reading.shapes.listed_numbers import ListedNumbers
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, NOTHING, Piece, Role
from engine.values.effort import TOP_OF_SCALE

LEAST_SPREAD = 4
"""Reps a set, from which "20 reps in 5 sets" may tell all of them. Common practice, no source."""
MOST_PLURAL_REPS = 20
"""More in "all 20s" is rather a pair of dumbbells. Common practice, no source."""


def rises_behind_a_plural(found: Sequence[Chunk], head: Piece) -> bool:
    """Whether bare numbers behind "8s" rise: loads do, and reps seldom."""
    flat = [number for chunk in found for factor in chunk.factors for number in factor]
    heads = head.role is Role.PLURAL and flat[0] is head and head.value <= MOST_PLURAL_REPS
    if not heads or len(flat) < FEWEST_RISING:
        return False
    plain = all(chunk.size == 1 and not chunk.at and not chunk.counted for chunk in found)
    rising = all(low.value < high.value for low, high in pairwise(flat[1:]))
    return plain and rising and all(number.role is Role.BARE for number in flat[1:])


FEWEST_RISING = 4


class OneFactor(ListedNumbers):
    """Chunks of one factor."""

    def _one(self, chunk: Chunk, place: int) -> None:
        numbers = chunk.factors[0]
        self.in_passing, self.chunk_at = chunk.in_passing, bool(chunk.at)
        self.bracketed = chunk.alone_in_brackets and bool(self.drafts) and not self.pending
        if any(number.value == 0 and number.role is Role.BARE for number in numbers) and not chunk.missed:
            raise DoesNotFit("0 reps and no miss told")
        if self.shared is not None and place and (self._counts_stand_behind(place) or self._tells_its_reps(chunk)):
            self.shared = None  # "singles 115 120 125, then 95 3x6"
        if chunk.counted or self._heads_loads(chunk, place):
            self._counted(numbers[0], chunk, place)
        elif len(numbers) == 1:
            self._single(numbers[0], chunk, place)
        else:
            self._list(chunk, numbers)

    def _heads_loads(self, chunk: Chunk, place: int) -> bool:
        """ "5 reps at 60, 80, 100": reps of each of the loads."""
        rest = self.chunks.found[1:]
        if place or not rest or not chunk.at or chunk.at_sign or chunk.factors[0][0].role is not Role.REPS:
            return False
        loads = [one.factors[0][0] for one in rest if one.size == 1 and len(one.factors[0]) == 1 and not one.at]
        return len(loads) == len(rest) and all(self._is_load(one) for one in (*chunk.at, *loads))

    def _counts_stand_behind(self, place: int) -> bool:
        """Whether sets and reps of its own stand behind this load."""
        behind = self.chunks.found[place + 1 : place + 2]
        if not behind or behind[0].size != 2 or not all(behind[0].factors) or behind[0].before is not None:
            return False
        return all(len(factor) == 1 and may_be_reps(factor[0], self.traits) for factor in behind[0].factors)

    def _tells_its_reps(self, chunk: Chunk) -> bool:
        """ "triple at 130, then 5 5 at 110": reps with a load behind them, and no load of three."""
        numbers = chunk.factors[0]
        rated = chunk.at_sign and chunk.at[0].role is Role.BARE and chunk.at[0].value <= TOP_OF_SCALE
        return bool(chunk.at) and not rated and not chunk.counted and all(may_be_reps(n, self.traits) for n in numbers)

    def _counted(self, reps: Piece, chunk: Chunk, place: int) -> None:
        """ "a triple": reps of the load before, also in "a triple at 125, then a double"; ahead of loads ("doubles at
        110, 115") reps of each of them.
        """
        behind = self.chunks.found[place + 1 :]
        if self.load is None and not chunk.at and (behind[0].counted if behind else bool(self.drafts)):
            # Names of reps one behind the other head no loads; with one further on, nobody can say whose it is.
            self.unplaced = self.unplaced or not self.drafts or any(one.at for one in behind)
            self._append(Draft(int(reps.value), self.drafts[-1].load if self.drafts else None))
            return
        rated = chunk.at_sign and self.choice.at_is_effort and not behind and not self.drafts  # "triple @8"
        if rated or (self.load is not None and not (chunk.at and self._loads_follow(place))):
            self._append(Draft(int(reps.value)))
            return
        self.shared = int(reps.value)
        for load in chunk.at:
            self._append(Draft(self.shared, load))
        self.heads = chunk if chunk.at else self.heads

    def _loads_follow(self, place: int) -> bool:
        """ "80x3, singles at 100, 120": whether one more load stands behind, with no reps of its own."""
        found = self.chunks.found[place + 1 : place + 3]
        alone = bool(found) and found[0].size == 1 and not found[0].at and len(found[0].factors[0]) == 1
        listed = len(found) > 1 and found[1].size == 1 and may_be_reps(found[1].factors[0][0], self.traits)
        if not alone or (listed and found[1].before is None):
            return False  # "single at 100, 90 5 5 5"
        return self._is_load(found[0].factors[0][0]) and not self._counts_stand_behind(place + 1)

    def _single(self, number: Piece, chunk: Chunk, place: int) -> None:
        number = self._full_ones(number)
        handler = SINGLES.get(number.role)
        if chunk.missed and self._open_group() and self._is_load(number):
            self._set_load(number)
            return
        load_alone = self._is_load(number) if self.shared is not None else not self._is_reps(number, chunk, place)
        if self._loads_ahead(number, chunk, place):
            return
        if chunk.missed and number.role in (Role.BARE, Role.LOAD) and load_alone:
            # "fives: 60 70 80 (f)": of how many reps? "pull ups 35 good, 32 miss": of reps, or a load?
            bare_body = self.traits.body and number.role is Role.BARE
            self.unplaced = self.unplaced or (self.shared or 1) > 1 or bare_body
            self._append(Draft(0, number, missed=True))
        elif handler is not None:
            handler(self, number)
        elif number.role is Role.PLURAL:
            self._plural(number)
        elif self._is_reps(number, chunk, place):
            self._reps(number)
        elif self.traits.body and number.role is Role.BARE:
            raise DoesNotFit(f"{number.text} may be added weight or reps: write +{number.text} for weight")
        else:
            self._set_load(number)

    def _full_ones(self, number: Piece) -> Piece:
        """ "72.5 8 8 6 and a half": half a rep does not count, where a load and other reps stand before it."""
        if number.text[-1] != "½" or number.role is not Role.BARE:
            return number
        reps = self.traits.body or (self.listed and self.load is not None and number.value <= MOST_LOADED_REPS)
        return number._replace(value=number.value // 1 or number.value) if reps else number

    def _loads_ahead(self, number: Piece, chunk: Chunk, place: int) -> bool:
        """ "10 8, with 10 kg 6 5": the load of the reps that it heads, and not of those before it."""
        if not (self.traits.body and number.role is Role.LOAD and self.listed and self._heads_reps(place, chunk)):
            return False
        self.unplaced = self.unplaced or chunk.before is None  # "10 8 10kg 6 5": of which of them
        self._set_load(number, forward=True)
        return True

    def _heads_reps(self, place: int, chunk: Chunk) -> bool:
        """Whether bare reps stand right behind the load there, or behind its comma: "then with 10 kg, 6 and 5"."""
        behind = self.chunks.found[place + 1] if place + 1 < len(self.chunks.found) else None
        if behind is None or behind.size != 1 or behind.factors[0][0].unit is not None:
            return False
        return behind.before is None or (behind.before is K.COMMA and chunk.before is K.THEN)

    def _plural(self, number: Piece) -> None:
        found = self.chunks.found
        headed = len(found) > 1 and any(number in factor for factor in found[0].factors[:1])
        if self.announced is not None and not self.drafts and self._loads_told_beside(number):
            self._typed_reps(number)  # "5 sets, all 5s, all at 102.5"
        elif headed and (self._is_shared_head(number) or self._shares_rising(number)):
            self.shared = int(number.value)
        elif self.traits.timed and self.announced is not None and not self.drafts:
            self._timed_single(number._replace(role=Role.SECONDS))  # "3 sets plank 60s"
        elif self.traits.carried and self._heads_a_way(number):
            self._set_load(number)
        elif self.traits.timed or (self.traits.carried and self._times_a_way()):
            self._add_typed(number._replace(role=Role.SECONDS), None)
        else:
            self._set_load(number)

    def _loads_told_beside(self, number: Piece) -> bool:
        """Whether another number can only be the load, and this one reps."""
        if number.value > MOST_PLURAL_REPS:
            return False
        others = [n for chunk in self.chunks.found for f in (*chunk.factors, chunk.at) for n in f if n is not number]
        return any(self._is_load(n) and n.role is not Role.SETS for n in others)

    def _shares_rising(self, number: Piece) -> bool:
        """ "8s: 12 14 16" where the choice says that they are eights at rising loads, and no dumbbells of eight."""
        return self.choice.first is FirstAs.SHARED and rises_behind_a_plural(self.chunks.found, number)

    def _is_shared_head(self, number: Piece) -> bool:
        """ "6s: 60 70 80": reps of each load, since all that follows can only be loads."""
        rest = [n for chunk in self.chunks.found[1:] for factor in chunk.factors for n in factor]
        bare = not self.traits.body and all(n.role is Role.BARE for n in rest)
        halves = any(n.value % 1 for n in rest)  # "10s: 20 22.5 25"
        return bare and (halves or all(n.value > MOST_LOADED_REPS for n in rest))

    def _is_reps(self, number: Piece, chunk: Chunk, place: int) -> bool:
        """Whether a bare number on its own is reps here and not a load."""
        if number.role is not Role.BARE or number.value < 0:
            return False
        if self.traits.timed:
            return True
        if self.traits.carried and self._distance_told():
            return False
        if not may_be_reps(number, self.traits) or self.shared is not None:
            return False
        if chunk.at or self.load is not None or self.traits.body:
            return not (self.traits.body and self._open_group()) or chunk.at_own
        if self._open_group():
            return False
        return place > 0 or self.choice.first is FirstAs.REPS

    def _reps(self, number: Piece) -> None:
        if self.announced is not None and not self.drafts and self._announced_alone(number):
            self._repeat(number, self.announced)
            self.announced = None
            return
        self._note_single(self.chunk_at and not self._open_group())
        self.unplaced = self.unplaced or self.bracketed
        self.listed = True
        self._add(number)

    def _announced_alone(self, number: Piece) -> bool:
        """Whether "5 sets" stands before one count of reps, not before the reps of each set: "5 sets: 8,7,6,6,5"."""
        alone = [chunk.factors[0][0] for chunk in self.chunks.found if chunk.size == 1 and len(chunk.factors[0]) == 1]
        counts = [one for one in alone if one.role in (Role.BARE, Role.REPS) and may_be_reps(one, self.traits)]
        if len(counts) < 2 or number.role is Role.REPS:
            return True
        if len(counts) != self.announced:
            raise DoesNotFit(f"{self.announced} sets announced, {len(counts)} told")
        return False

    def _repeat(self, reps: Piece, count: int, load: Piece | None = None) -> None:
        if not 1 <= count <= MOST_OUT:
            raise DoesNotFit(f"{count} sets")
        self.listed = False
        self.touched = []
        self._add(reps, load)
        if count > 1 and self.announced is None:
            self._note_group()
        if count > 1:
            self._append_alike(count - 1)

    def _typed_reps(self, number: Piece) -> None:
        self._reps(number._replace(role=Role.REPS))

    def _times_of_it(self, number: Piece) -> None:
        """ "60 8 times": reps; behind reps ("20 8 times") they may be sets of them."""
        self.unplaced = self.unplaced or (self.listed and not self.pending and not self.traits.body)
        self._typed_reps(number)

    def _sets_said(self, number: Piece) -> None:
        """ "3 sets": before the reps it announces them; behind one set it repeats it."""
        count = int(number.value)
        if not whole(number) or not 1 <= count <= MOST_OUT:
            raise DoesNotFit(f"{number.text} sets")
        if not self.drafts:
            self.announced = count
        elif len(self.drafts) == 1 or self._last_alone():
            draft = self.drafts[-1]
            self.unplaced = self.unplaced or (self.chunks.spread and len(self.drafts) > 1)  # "60x5 to 100x5 in 5 sets"
            if self.chunks.spread:
                self._spread(draft, count)
            self.touched = [draft, *(copy_of(draft) for _ in range(count - 1))]
            self.drafts += self.touched[1:]
            self.listed = False
        elif len(self.drafts) != count:
            raise DoesNotFit(f"{count} sets, but {len(self.drafts)} told")

    def _spread(self, draft: Draft, count: int) -> None:
        """ "24 reps in 3 sets": all of them, or of each; asked from so many on."""
        if count > 1 and draft.reps >= count * LEAST_SPREAD:
            self.unplaced = True
            draft.reps = draft.reps // count if draft.reps % count == 0 else draft.reps

    def _last_alone(self) -> bool:
        return self.drafts[-1].load is not None and self.drafts[-2].load is not self.drafts[-1].load

    def _change(self, number: Piece) -> None:
        if self.traits.body and self.listed and self._stands_behind(number):
            self._load_those_before(number)
            return
        forward = self.listed and (self.traits.body or self._changes_behind(number))
        if forward and not self.traits.body:
            before = number._replace(value=NOTHING)
            for draft in self.drafts:
                draft.load = before if draft.load is None else draft.load
        self._set_load(number, forward)

    def _changes_behind(self, number: Piece) -> bool:
        """ "5 5 5 then +10kg 3 3": the sets before were done at what is known, and those behind at more."""
        found, place = self.chunks.found, self._place_of(number)
        heads = self._heads_reps(place, found[place]) or self._counts_stand_behind(place)
        return heads and self.load is None and found[place].before is not None

    def _timed_single(self, number: Piece) -> None:
        if self.announced is not None and not self.drafts and not self._told_each(number):
            self.way = []
            for _ in range(self.announced):
                self._add_typed(number, None)
            self.announced = None
            return
        holds = self.traits.timed or self.traits.body
        if self.drafts and not self.traits.carried and (self.in_passing or not holds):
            self.unplaced = self.unplaced or not self.in_passing
            return  # "3x5 80 in 12 minutes"; without a word to it a time is asked about
        if number.role is Role.METRES:
            self.way = []
        self._add_typed(number, None)


SINGLES: dict[Role, Callable[[OneFactor, Piece], None]] = {
    Role.LOAD: OneFactor._set_load,
    Role.CHANGE: OneFactor._change,
    Role.BAR: OneFactor._set_load,
    Role.BODY: OneFactor._set_load,
    Role.SECONDS: OneFactor._timed_single,
    Role.METRES: OneFactor._timed_single,
    Role.REPS: OneFactor._typed_reps,
    Role.TIMES: OneFactor._times_of_it,
    Role.SETS: OneFactor._sets_said,
}

"""Chunks of three factors and more."""

from __future__ import annotations

from engine.reading.chunks.choices import LOADS, PLACES_OF_THREE, DoesNotFit, Traits, TripleAs, may_be_reps, whole
from engine.reading.chunks.chunks import Chunk
from engine.reading.shapes.listed_numbers import is_load
from engine.reading.shapes.two_factors import TwoFactors
from engine.reading.words.pieces import MOST_SETS, Piece, Role


class ThreeFactors(TwoFactors):
    """Chunks of three factors and more."""

    reps_first: bool = False
    many_sets: bool = False

    def _triple(self, chunk: Chunk) -> None:
        first, second, third = self._with_the_unit_ahead(chunk.factors)
        if not first:
            self._carry((*second, *third))
            return
        if len(first) > 1 or len(second) > 1 or len(third) > 1:
            self._triple_with_list(first, second, third)
            return
        if chunk.counts_behind and first[0].role in (Role.BARE, Role.LOAD) and not self.traits.body:
            self._repeat_at(first[0], third[0], second[0])
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
        way = settled_three(first, second, third, self.traits) or self.choice.triple
        self._note_order(way, first, second)
        if way is TripleAs.REPS_LIST:
            many = first.value > MOST_SETS  # "30x30x30": sets of thirty, or at thirty
            self.unplaced = self.unplaced or (many and not self.traits.body)
            self._reps_list((first, second, third))
            return
        load, reps, sets = [(first, second, third)[at] for at in PLACES_OF_THREE[way]]
        self._repeat_at(load, reps, sets)

    def _note_order(self, way: TripleAs, first: Piece, second: Piece) -> None:
        """ "12x3x60, 8x2x70": where some tell reps first, more sets than reps are asked about."""
        self.reps_first = self.reps_first or way is TripleAs.REPS_SETS_LOAD
        self.many_sets = self.many_sets or (way is TripleAs.SETS_REPS_LOAD and first.value > second.value)
        self.unplaced = self.unplaced or (self.reps_first and self.many_sets)

    def _three_typed(self, first: Piece, second: Piece, third: Piece) -> None:
        """28kg x 40m x 3, 3 x 40m x 28kg, 2 x 28kg x 40m, 2 x 10kg x 45s."""
        spelled = (Role.SECONDS, Role.METRES, Role.PLURAL) if self.traits.timed else (Role.SECONDS, Role.METRES)
        amount = next((n for n in (second, first, third) if n.role in spelled), second)
        others = [n for n in (first, second, third) if n is not amount]
        load = next((n for n in others if n.role in LOADS or n.value > MOST_SETS or not whole(n)), None)
        if load is None:
            raise DoesNotFit("a load among the three")
        count = others[0] if others[1] is load else others[1]
        if not 1 <= count.value <= 2 * MOST_SETS:
            raise DoesNotFit(f"{count.text} sets")
        self.load = self.last_load = load
        pair = count is first and count.value == 2 and load is second
        for _ in range(1 if pair else int(count.value)):
            self._add_typed(amount if amount.role is not Role.BARE else amount._replace(role=Role.SECONDS), load)

    def _three_with_implements(self, first: Piece, second: Piece, third: Piece) -> bool:
        """2 x 24k x 10: two implements, then reps. A load in the middle is open otherwise."""
        counted = first.role is Role.SETS and third.role in (Role.REPS, Role.BARE)
        if counted and self._is_load(second) and not self._is_load(third):
            self._repeat_at(second, third, first)  # "3 sets of 105 x 5"
            return True
        if second.role not in LOADS:
            return False
        if first.role is Role.REPS and third.role in (Role.SETS, Role.BARE):
            self._repeat_at(second, first, third)  # "5 reps x 105kg x 3 sets"
            return True
        if first.value != 2 or not (self.traits.two_implements or self.traits.carried):
            raise DoesNotFit("a load between two counts")
        self._load_reps(second, third)
        return True

    def _repeat_at(self, load: Piece, reps: Piece, sets: Piece) -> None:
        if not whole(sets) or not 1 <= sets.value <= 2 * MOST_SETS or sets.role in LOADS:
            raise DoesNotFit(f"{sets.text} sets")
        if not may_be_reps(reps, self.traits) or load.value <= 0:
            raise DoesNotFit(f"{reps.text} cannot be reps")
        self.last_load = load
        self._repeat(self._as_reps(reps), int(sets.value), load)
        self.load, self.pending = load, False

    def _many(self, chunk: Chunk) -> None:
        """65x9x8x8: a load, then the reps of each set."""
        flat = [number for factor in chunk.factors for number in factor]
        if not chunk.factors[0]:
            self._carry(tuple(flat))
        elif self._is_load(flat[0]) or flat[0].role in LOADS:
            self.load = self.last_load = flat[0]
            self.unplaced = self.unplaced or flat[1].value > 2 * flat[-1].value  # "80x8x3x2": what is each of them
            self._reps_list(tuple(flat[1:]))
        elif self.traits.body:
            self._reps_list(tuple(flat))
        else:
            raise DoesNotFit("many factors without a load")


def settled_three(first: Piece, second: Piece, third: Piece, traits: Traits) -> TripleAs | None:
    """What the three numbers settle by themselves; None where they leave it open."""
    if first.role is Role.SETS or (second.role is Role.REPS and third.role is not Role.SETS and whole(first)):
        return TripleAs.SETS_REPS_LOAD if is_load(third, traits) or third.role in LOADS else None
    if third.role in LOADS or (is_load(third, traits) and not is_load(first, traits) and first.role not in LOADS):
        if first.role is Role.REPS or second.role is Role.SETS:
            return TripleAs.REPS_SETS_LOAD  # "10 reps x 3 sets x 60"
        return TripleAs.SETS_REPS_LOAD if first.value <= MOST_SETS else TripleAs.REPS_SETS_LOAD
    if second.role is Role.SETS:
        return TripleAs.LOAD_SETS_REPS
    if third.role is Role.SETS or (first.role in LOADS and second.role is Role.REPS):
        return TripleAs.LOAD_REPS_SETS
    big_first = first.role in LOADS or is_load(first, traits)
    if big_first and second.value >= third.value:
        return TripleAs.LOAD_REPS_SETS
    return None

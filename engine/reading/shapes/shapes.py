"""Chunks to sets, once it is decided which number is which.

What the numbers themselves settle is settled here (a unit, a half, a number that can be no count of reps). What
they leave
open is a `Choice`, tried each way by the caller: the sets of each way are one candidate reading.

"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import chain, groupby

from engine.reading.chunks.choices import MOST_OUT, DoesNotFit, Draft, copy_of, may_be_reps
from engine.reading.chunks.chunks import LAST_SET, Chunk, numbers_in
from engine.reading.shapes.marks import Marked
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, MOST_SETS, Piece, Role
from engine.values.sets import SetKind

SETS_OF_ITS_OWN = frozenset((K.THEN, K.AND, K.PLUS, K.LINE))
"""Behind these a count of sets tells new ones."""


PARTS_ADDED = frozenset((K.THEN, K.COMMA, K.AND, K.LINE, K.STOP))
ADDED = frozenset((Role.CHANGE, Role.LOAD))
ADDED_IN_WORDS = frozenset((K.ADDED, K.EXTRA))
FAR_MORE = 2
"""How many times the reps of its group the last set of it may have. Common practice, no source."""


class Shaper(Marked):
    """One walk over the chunks of one exercise under one choice."""

    told_before: Sequence[Draft] = ()
    """The sets that results ("got 8") took the place of."""
    singles_before: frozenset[int] = frozenset()
    """`singles_at`, as it stood before the results."""
    unaided: int = 0
    """So many sets were done before those with help or a band."""
    meant_last: Draft | None = None
    """The set that was told as the last one, where lighter or other ones follow: "3x8 70 last set @9, then 50x12"."""

    def run(self) -> list[Draft]:
        """The drafts.

        Errors: DoesNotFit.
        """
        if self.traits.explosive and self._only_loads():
            self.shared = 1  # weightlifters write singles bare: 60, 65, 70
        for place, chunk in enumerate(self.chunks.found):
            if place == self.chunks.result_from or place == self.chunks.work_from:
                self._turn(place)
            self.touched, self.filled = [], False
            if place == self.chunks.unaided:
                self.unaided = len(self.drafts)
            if chunk.before is not None:
                self.run_from = len(self.drafts)
            self._read(chunk, place)
            self._mark(chunk)
            if place + 1 == self.chunks.last_ends_at and self.drafts:
                self.meant_last = self.drafts[-1]
            if len(self.drafts) > MOST_OUT:
                raise DoesNotFit("more sets than anyone does")
        self._doubt_fewer_results()
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
            if self._is_open_set_of_a_list():
                self.drafts = self.drafts[:-1]
            else:
                self.told_before, self.drafts = self.drafts, []
                self.singles_before = self.singles_at
        if place == self.chunks.work_from:
            for draft in self.drafts:
                draft.kind = SetKind.WARMUP

    def _doubt_fewer_results(self) -> None:
        """ "3x8 80, got 8" says that all were made; "got 6" is of the last, or of each: no set is lost for it."""
        if len(self.drafts) >= len(self.told_before) or not self.drafts:
            return
        if len(self.drafts) == 1 and {draft.reps for draft in self.told_before} == {self.drafts[0].reps}:
            self.drafts = list(self.told_before)
            self.singles_at = self.singles_before
        else:
            self.unplaced = True

    def _is_open_set_of_a_list(self) -> bool:
        """ "80 5 5 5+ got 9": the result is the open set's, and the sets before it stand."""
        return self.listed and len(self.drafts) > 1 and self.chunks.maximum

    def _read(self, chunk: Chunk, place: int) -> None:
        size = len(chunk.factors)
        if self.traits.body and self.drafts and (size > 1 or chunk.before in PARTS_ADDED):
            self._close(chunk, place)
        if size == 2 and self._is_restated(chunk, place):
            self._append_alike(int(chunk.factors[0][0].value) - len(self.drafts))
            return
        if size == 1:
            self._one(chunk, place)
        elif size == 2:
            self._end_shared_reps(chunk)
            self._pair(chunk)
        elif size == 3:
            self._triple(chunk)
        elif size == 0:
            self.waiting += chunk.efforts
            if chunk.again:
                self._again(chunk)
        else:
            self._many(chunk)

    def _close(self, chunk: Chunk, place: int) -> None:
        """ "dips 3x10, then 2x6 with +10", "3x12, +10 2x8", "3x8, 2x5 +10": nothing was added to the first three."""
        behind = self.chunks.found[place + 1] if place + 1 < len(self.chunks.found) else None
        heads = chunk.size == 1 and len(chunk.factors[0]) == 1 and chunk.factors[0][0].role is Role.CHANGE
        heads = heads and behind is not None and behind.before is None and behind.size > 0
        if not heads and self._is_loaded_by_itself(chunk, place):
            self.saw_load_behind = chunk.before is None or self._says_weighted()
            if self.saw_load_behind and self.choice.load_for_all:
                return
            self._leave_to_the_body(chunk)
            heads = True
        if heads or chunk.before is K.THEN:
            self.closed, self.closed_list = len(self.drafts), self.listed and not heads and not self.traits.body

    def _is_loaded_by_itself(self, chunk: Chunk, place: int) -> bool:
        """ "3x8, 2x5 +10", "3x8, 2x5 with 10 kg": a group that was counted has its own load behind it."""
        if chunk.size != 2 or self.chunks.of_all or not all(len(factor) == 1 for factor in chunk.factors):
            return False
        if any(self._is_load(factor[0]) for factor in chunk.factors):
            return False
        if chunk.at:
            return len(chunk.at) == 1 and (chunk.at[0].role in ADDED or not chunk.at_sign)
        behind = self.chunks.found[place + 1 : place + 3]
        loads = bool(behind) and behind[0].size == 1 and behind[0].before is None and not behind[0].at
        if not loads or len(behind[0].factors[0]) != 1 or behind[0].factors[0][0].role not in ADDED:
            return False
        self.unplaced = self.unplaced or (len(behind) > 1 and behind[1].before is None)  # "3x8, 2x5 +10 3x3"
        return True

    def _says_weighted(self) -> bool:
        """Whether the name itself says that something was added: "weighted pull ups 3x8, 2x5 +10"."""
        return self.chunks.added and ADDED_IN_WORDS.isdisjoint(self.chunks.kinds)

    def _leave_to_the_body(self, chunk: Chunk) -> None:
        """Nothing was added to the sets so far, unless a word says that something was."""
        if self.chunks.added or self.chunks.assisted:
            return
        for draft in self.drafts:
            draft.load = draft.load or chunk.factors[0][0]._replace(role=Role.BODY)

    def _end_shared_reps(self, chunk: Chunk) -> None:
        """ "a single at 140, then 3x3 120": sets and reps of its own, and no load among them."""
        if self.shared is not None and chunk.factors[0] and not any(map(self._is_load, chain(*chunk.factors))):
            self.shared = None

    def _again(self, chunk: Chunk) -> None:
        """ "another two sets like that": the last set; "same again": all that was told, where that is one set."""
        if not self.drafts or self.pending:
            raise DoesNotFit("nothing to repeat")
        before = self.drafts[-1]
        alike = all(one.reps == before.reps for one in self.drafts if one.load is before.load)
        single = len(self.drafts) == 1 or self._last_alone()
        self.unplaced = self.unplaced or not (single or (alike and not chunk.whole_again))
        self.touched = [copy_of(before) for _ in range(chunk.again)]
        self.drafts += self.touched

    def _is_restated(self, chunk: Chunk, place: int) -> bool:
        """ "5 5 5 at 80, so three fives": the sets told, counted once more in words; "130x5 (2 sets of 5)": the one set
        told, counted for the first time.
        """
        if chunk.size != 2 or chunk.at or not self.drafts or self.pending or chunk.before in SETS_OF_ITS_OWN:
            return False
        if len(chunk.factors[0]) != 1 or len(chunk.factors[1]) != 1 or self.traits.timed:
            return False
        sets, reps = chunk.factors[0][0], chunk.factors[1][0]
        worded = chunk.counted or sets.role is Role.SETS or sets.spelled or chunk.restates
        behind = self.chunks.found[place + 1] if place + 1 < len(self.chunks.found) else None
        if not (worded or chunk.alone_in_brackets) or (behind is not None and behind.size == 1):
            return False
        alike = all(one.reps == reps.value and one.load is self.drafts[0].load for one in self.drafts)
        counted = chunk.alone_in_brackets and len(self.drafts) == 1 and 1 < sets.value <= MOST_SETS
        return alike and ((len(self.drafts) > 1 and len(self.drafts) == sets.value) or (worded and counted))

    def _without_aid(self) -> None:
        """ "dips 3x8, band 3x5": the sets ahead of those with a band were done with the body alone."""
        for draft in self.drafts[: self.unaided] if self.traits.body else ():
            draft.load = draft.load or numbers_in(self.chunks)[0]._replace(role=Role.BODY)

    def _finish(self) -> None:
        out = self.chunks
        self._check_complete()
        self._without_aid()
        self._carry_on()
        self.weak = self.weak or True in [draft.carried for draft in self.drafts]
        self.unplaced = self.unplaced or self._has_stray()
        self._results()
        if len(self.drafts) > 1:
            self._check_alike()
            added = self.traits.body and (out.added or self.loaded_behind)
            self.unplaced = self.unplaced or (added and self._ends_without_load())
        if out.failure_ahead or self.failing is not None:
            for draft in self.drafts:
                draft.failure = draft.failure or out.failure_ahead or draft.load is self.failing
        if out.last_to_failure:
            self._last_worked().failure = True
        self._kinds_ahead()

    def _last_worked(self) -> Draft:
        """The last set that is no warm-up: "3x5 80 (warm-up 60x5), last set rpe 9"."""
        if self.meant_last is not None:
            return self.meant_last
        work = [draft for draft in self.drafts if draft.kind is not SetKind.WARMUP]
        return (work or self.drafts)[-1]

    def _carry_on(self) -> None:
        """ "5 at 80, then 4 and 3": reps behind a set that told its load are at that load."""
        if self.traits.body or not self.listed or self.groups or self.drafts[0].load is None:
            return
        loads = [draft.load for draft in self.drafts]
        first = next((place for place, load in enumerate(loads) if load is None), len(loads))
        if any(load is not None for load in loads[first:]):
            return
        for draft in self.drafts[first:]:
            draft.load = loads[first - 1]

    def _ends_without_load(self) -> bool:
        """ "12 10 with 10 kg on the belt, 8 6": of those before it, or of those behind it?"""
        return self.drafts[0].load is not None and self.drafts[-1].load is None

    def _check_alike(self) -> None:
        if not self.traits.body and len({draft.load is None for draft in self.drafts}) > 1:
            raise DoesNotFit("a set without a load beside sets with one")
        if len({(draft.seconds or draft.metres) is None for draft in self.drafts}) > 1:
            raise DoesNotFit("sets counted in reps beside sets that are not")

    def _check_complete(self) -> None:
        if (
            self.announced is not None
            and len(self.drafts) == 1
            and self.drafts[0].load is not None
            and not self.pending
        ):
            self.drafts += [copy_of(self.drafts[0]) for _ in range(self.announced - 1)]  # "3 sets of squats, 100x5"
        if self.announced is not None and self.drafts and len(self.drafts) != self.announced:
            raise DoesNotFit(f"{self.announced} sets announced, {len(self.drafts)} told")
        if not self.drafts:
            raise DoesNotFit("no reps")
        if self.pending and self.traits.body and self.load is not None and self.load.role is Role.CHANGE:
            self._add_behind(self.load)
        if self.pending or self.waiting:
            raise DoesNotFit("a number too many")
        if self.times_told > 1 and self.times_told != len(self.way):
            raise DoesNotFit(f"{self.times_told} times of {len(self.way)} ways")

    def _add_behind(self, added: Piece) -> None:
        """ "pull ups 10 +10kg": weight added behind the reps; whether behind several it is of all of them is asked."""
        if any(draft.load is not None for draft in self.drafts):
            return
        for draft in self.drafts:
            draft.load = added
        self.pending = False
        self.unplaced = self.unplaced or len(self.drafts) > 1

    def _results(self) -> None:
        """What became of a group: in brackets behind it, or of its last set."""
        results = self.chunks.results
        if results and len(results) != len(self.drafts):
            raise DoesNotFit(f"{len(results)} results of {len(self.drafts)} sets")
        for draft, reps in zip(self.drafts, results, strict=False):
            if not may_be_reps(reps, self.traits) or reps.value < 1:
                raise DoesNotFit(f"{reps.text} cannot be reps")
            draft.reps = int(reps.value)
        self._single_sets()

    def _single_sets(self) -> None:
        """What was told of one set of a group: its reps, its effort, a miss."""
        for place, count in self.chunks.placed_reps:
            if place > len(self.drafts) or len(self.drafts) < 2:
                raise DoesNotFit(f"no set {place}")
            meant = self.meant_last if place == LAST_SET else None
            draft = meant or self.drafts[place - 1]
            if not 0 < count <= MOST_LOADED_REPS or count > draft.reps * FAR_MORE or self.traits.timed:
                raise DoesNotFit(f"{count} reps of one set")
            draft.reps = count
        if self.chunks.effort_of_all is not None:
            for draft in self.drafts:
                draft.effort = draft.effort if draft.kind is SetKind.WARMUP else self.chunks.effort_of_all
        if self.chunks.last_effort is not None:
            self._last_worked().effort = self.chunks.last_effort
        if self.chunks.miss_ahead is not None:
            self._miss(self.drafts[-1], self.chunks.miss_ahead)

    def _warms_up_to_work(self) -> bool:
        """ "w/u 40x8, 60x5, 80 3x5": a group behind single warm-ups may be the work."""
        if not self.groups or self.drafts[-1].kind is not SetKind.WARMUP:
            return False
        told = [chunk for chunk in self.chunks.found if chunk.size]
        pairs = any(chunk.size == 2 and chunk.factors[0] and self._is_load(chunk.factors[0][0]) for chunk in told)
        return pairs and all(draft.kind is SetKind.WARMUP for draft in self.drafts)

    def _settle_drops_at_one_load(self) -> None:
        """ "50: 5 5, dropped to 45: 5 5" tells back-off sets, and "drop 45: 5 5" drops; never one of each."""
        for _, group in groupby(self.drafts, key=lambda one: id(one.load)):
            told = list(group)
            if len(told) > 1 and told[0].kind is SetKind.DROP and told[-1].kind is SetKind.WORK:
                for draft in told:
                    draft.kind = SetKind.WORK if self.chunks.lowered else SetKind.DROP

    def _kinds_ahead(self) -> None:
        out = self.chunks
        if out.rest_pause and self.listed and not any(chunk.plus for chunk in out.found):
            for draft in self.drafts[1:]:
                draft.kind = SetKind.REST_PAUSE
        self.unplaced = self.unplaced or self._warms_up_to_work()
        self._settle_drops_at_one_load()
        if out.drops_ahead:
            self.unplaced = self.unplaced or len({id(draft.load) for draft in self.drafts}) < 2
            for draft in self.drafts[1:]:
                draft.kind = SetKind.DROP

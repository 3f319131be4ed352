"""The marks of a chunk, put on the sets that it told: loads behind "@", efforts, misses, repeats, rest-pause."""

from __future__ import annotations

from engine.reading.chunks.choices import DoesNotFit, Draft, copy_of, whole
from engine.reading.chunks.chunks import LAST_REP, Chunk
from engine.reading.shapes.three_factors import ThreeFactors
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, MOST_SETS, Piece, Role
from engine.values.effort import TOP_OF_SCALE, Effort
from engine.values.sets import SetKind, Side

TWO_SETS = 2
IN_ONE_BREATH = frozenset((None, K.COMMA, K.SLASH, K.THEN, K.AND))


class Marked(ThreeFactors):
    """What stands behind a chunk."""

    def _mark(self, chunk: Chunk) -> None:
        if chunk.at and chunk is not self.heads:
            self._mark_load(chunk)
        if chunk.efforts or self.waiting:
            self._mark_effort(chunk)
        if chunk.times is not None and not chunk.plus:
            self._mark_times(chunk.times)
        if chunk.kind is not None or self.kind_ahead is not None or self.dropping:
            self._mark_kind(chunk)
        if chunk.side is not None:
            self._mark_side(chunk.side, chunk.times or 1)
        if chunk.failure or chunk.missed or chunk.placed:
            self._mark_end(chunk)
        if chunk.plus:
            self._mark_plus(chunk)
            self._mark_cluster_again(chunk)

    def _mark_some(self, chunk: Chunk) -> None:
        """ "3x8 60, set 3 rpe 9": a mark of one of the sets told."""
        for place, mark in chunk.placed:
            if not 1 <= place <= len(self.touched):
                raise DoesNotFit(f"no set {place}")
            draft = self.touched[place - 1]
            draft.effort = mark.efforts[0] if mark.efforts else draft.effort
            draft.failure = draft.failure or mark.kind is K.FAILURE
            draft.missed = draft.missed or mark.kind is K.MISS

    def _mark_side(self, side: Side, times: int) -> None:
        before = self.drafts[: len(self.drafts) - len(self.touched)]
        if times > 1 and any(one.side is not None for one in before):
            self.unplaced = True  # "45s left 40s right x2": both of them, or the last
        for draft in self.touched:
            draft.side = side

    def _mark_end(self, chunk: Chunk) -> None:
        """How the sets, or some of them, ended: at failure, or with a rep missed."""
        if chunk.placed:
            self._mark_some(chunk)
        if not self.touched:
            if chunk.failure and self.pending:
                self.failing = self.load  # "14s to failure 12 9 7": all of the reps that follow
            return
        if chunk.failure:
            for draft in self.touched if not self.listed or chunk.times is not None else self.touched[-1:]:
                draft.failure = True
        if chunk.missed:
            self._mark_miss(chunk)

    def _mark_kind(self, chunk: Chunk) -> None:
        if chunk.kind is SetKind.DROP and (len(self.touched) == len(self.drafts) or self.filled):
            raise DoesNotFit("a drop with no set before it")
        told = chunk.kind or self.kind_ahead or self._drops_on(chunk)
        kind, self.kind_ahead = told, None if self.touched else chunk.kind
        if kind is SetKind.DROP and self.chunks.lowered and len(self.touched) > 1 and not self.listed:
            kind = None  # "140x3, dropped to 110 for 3x8"
        if kind is SetKind.DROP and self._rises():
            self.unplaced = self.unplaced or K.DROP in self.chunks.kinds
            kind = None  # "105x5 -> 110x5": steps up
        for draft in self.touched if kind is not None else ():
            draft.kind = kind or draft.kind
        self.dropping = kind is SetKind.DROP
        self.unplaced = self.unplaced or (kind is SetKind.DROP and self._drops_nothing())

    def _mark_load(self, chunk: Chunk) -> None:
        if chunk.at_sign and self.choice.at_is_effort and len(chunk.at) == 1 and chunk.at[0].role is Role.BARE:
            if not 1 <= chunk.at[0].value <= 10:
                raise DoesNotFit("no effort")
            self._give_effort((Effort.from_rpe(chunk.at[0].value),))
            return
        if not self.touched and not self.drafts and self.announced is not None and len(chunk.at) == 1:
            self._set_load(chunk.at[0])  # "three sets of pulldowns at 45, twelve reps each"
            return
        if not self.touched and not self.drafts:
            raise DoesNotFit("a load and no reps")
        if len(chunk.at) > 1:
            self._each_of_the_sets(chunk)
            return
        self._check_loads(chunk)
        if self.traits.body and not chunk.at_sign and self.listed and self._listed_on(chunk):
            self.unplaced = True  # "10 10 with 20kg 6 6": of those before it, or behind it
        self.unplaced = self.unplaced or (self.closed_list and self._may_be_of_the_closed())
        waiting = [draft for draft in self.drafts[self.closed :] if draft.load is None or draft.carried]
        still_open = [] if chunk.at_own and self.traits.body else self._of_the_run(waiting, chunk)
        self.unplaced = self.unplaced or (chunk.at_own and len(still_open) > len(self.touched))  # "4x8, last set 70kg"
        for draft in (*still_open, *self.touched):
            draft.load, draft.carried = chunk.at[0], False
        self.last_load = chunk.at[0]
        self.pending = False

    def _of_the_run(self, waiting: list[Draft], chunk: Chunk) -> list[Draft]:
        """Those of the body's sets without a load that one behind reps is told of: "8 8 8, 5 5 with 10 kg" may tell it
        of the fives alone, and "10, 8 with 10 kg, 6 with 20 kg" of the eight.
        """
        run = self.drafts[self.run_from :]
        if not (self.traits.body and self.listed and len(waiting) > len(run)) or self.chunks.of_all:
            return waiting
        others = any(one.at for one in self.chunks.found if one is not chunk)
        if len(run) == 1 and not others:
            return waiting
        self.saw_load_behind = True
        return waiting if self.choice.load_for_all else run

    def _listed_on(self, chunk: Chunk) -> bool:
        """Whether bare reps go on right behind the load of this chunk."""
        found = self.chunks.found
        place = next(place for place, one in enumerate(found) if one is chunk)
        behind = found[place + 1] if place + 1 < len(found) else None
        return behind is not None and behind.size == 1 and behind.before is None and not behind.at

    def _drops_on(self, chunk: Chunk) -> SetKind | None:
        """ "20x12, dropset 15x10, 10x9": lighter still in the same breath, so one more drop."""
        before = len(self.drafts) - len(self.touched) - 1
        if chunk.size != 2 or chunk.before not in IN_ONE_BREATH or len(self.touched) != 1 or before < 1:
            return None
        last, now = self.drafts[before].load, self.touched[0].load
        lighter = last is not None and now is not None and last.role is now.role and 0 < now.value < last.value
        return SetKind.DROP if lighter and self.drafts[before].kind is SetKind.DROP else None

    def _rises(self) -> bool:
        """Whether the set is heavier than the one before it."""
        before = self.drafts[-len(self.touched) - 1].load if 0 < len(self.touched) < len(self.drafts) else None
        now = self.touched[0].load if self.touched else None
        return before is not None and now is not None and before.role is now.role and now.value > before.value > 0

    def _drops_nothing(self) -> bool:
        """A drop at the load of the set before it."""
        before = self.drafts[-len(self.touched) - 1] if 0 < len(self.touched) < len(self.drafts) else None
        now = self.touched[0].load if self.touched else None
        if before is None or before.load is None or now is None:
            return False
        return before.load is now or (before.load.value == now.value and before.load.role is now.role)

    def _check_loads(self, chunk: Chunk) -> None:
        """Two loads for one set: neither may be dropped."""
        if chunk.at_of_run:
            return
        load = chunk.at[0]
        behind = len(self.drafts) - len(self.touched)
        before = self.drafts[behind - 1].load if behind > 0 else None  # "130 for 2, then 3 sets of 4 at 115"
        told = [one.load for one in self.touched if one.load not in (None, before) and not one.carried]
        told += [self.load] if self.pending and self.load is not None else []
        if any(other.value != load.value or other.role is Role.CHANGE for other in told):
            raise DoesNotFit("two loads for one set")

    def _each_of_the_sets(self, chunk: Chunk) -> None:
        """ "3x5 @ 70, 75, 80": a load for each set; "120 3x5 @7,7.5,8": an effort for each."""
        rated = all(one.role is Role.BARE and 1 <= one.value <= TOP_OF_SCALE for one in chunk.at)
        loaded = all(draft.load is not None for draft in self.touched) or self.pending or self.load is not None
        if chunk.at_sign and rated and (loaded or self.traits.body):
            self._give_effort(tuple(Effort.from_rpe(one.value) for one in chunk.at))
        else:
            self._loads_each(chunk.at)

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
        if chunk.effort_spans and TWO_SETS in (len(self.touched), len(self.drafts)):
            self.unplaced = True  # "2x5 100 rpe 8-9": one for each, or between them

    def _give_effort(self, efforts: tuple[Effort, ...], apart: bool = False) -> None:
        if not self.touched:
            raise DoesNotFit("an effort and no set")
        if len(efforts) > 1:
            self._give_one_each(efforts)
            return
        group = self.touched
        same = [draft for draft in self.drafts if draft.load is self.touched[-1].load]
        if self.listed and len(same) > 1 and len(self.touched) <= len(same) and not self._one_pair_each():
            alike = len({draft.reps for draft in same}) == 1  # "65 5 5 5 @8" is told of the group, as "65 3x5 @8"
            self.saw_list_effort = self.saw_list_effort or not (alike or apart)
            group = same if alike or apart or self.choice.effort_for_all else self.touched[-1:]
        for draft in group:
            draft.effort = efforts[0]

    def _give_one_each(self, efforts: tuple[Effort, ...]) -> None:
        if len(efforts) > len(self.drafts):
            raise DoesNotFit("more efforts than sets")
        several = self.touched if len(self.touched) == len(efforts) else self.drafts
        if len(several) != len(efforts):
            raise DoesNotFit("as many efforts as sets")
        for draft, effort in zip(several, efforts, strict=True):
            draft.effort = effort

    def _one_pair_each(self) -> bool:
        """Each set was told with its own load, or with its own effort: an effort behind one is that one's."""
        told = [chunk for chunk in self.chunks.found if chunk.size]
        sets = [one for one in told if one.size > 1 or one.at or not self._is_load(one.factors[0][0])]
        return all(chunk.size == 2 or chunk.at for chunk in sets) or all(chunk.efforts for chunk in sets)

    def _mark_times(self, times: int) -> None:
        if not 1 <= times <= 2 * MOST_SETS:
            raise DoesNotFit(f"{times} times")
        if not self.touched:
            raise DoesNotFit("nothing to repeat")
        group = list(self.touched)
        self.unplaced = self.unplaced or (len(group) > 1 and not self.listed)
        for _ in range(times - 1):
            self.touched += [copy_of(draft) for draft in group]
        self.drafts += self.touched[len(group) :]

    def _mark_miss(self, chunk: Chunk) -> None:
        self.unplaced = self.unplaced or bool(chunk.plus)  # "2+1 (failed third)": of which of them
        if chunk.missed_rep is not None:
            self._miss(self.touched[-1], chunk.missed_rep)
        elif len(self.touched) > 1:
            raise DoesNotFit("a miss that may be any of several sets")
        else:
            self.touched[-1].missed = True
            if self.touched[-1].reps == 1 and not chunk.then_missed:
                self.touched[-1].reps = 0  # of a single nothing was made

    def _miss(self, draft: Draft, rep: int) -> None:
        """The rep of this number was missed, and those before it were made."""
        draft.missed = True
        draft.reps = max(0, (draft.reps if rep == LAST_REP else rep) - 1)

    def _mark_plus(self, chunk: Chunk) -> None:
        if not self.touched:
            raise DoesNotFit("a sum of loads")
        head = self.touched[-1]
        self.unplaced = self.unplaced or (len(self.touched) > 1 and not self.listed)
        if self.traits.one_sided and len(chunk.plus) == 1 and chunk.plus[0].value == head.reps:
            raise DoesNotFit("each side once, or a set and some more")
        for more in chunk.plus:
            if not whole(more) or not 1 <= more.value <= MOST_LOADED_REPS:
                raise DoesNotFit(f"+{more.text}")
            extra = copy_of(head)
            extra.reps, extra.kind, extra.effort, extra.failure = int(more.value), SetKind.REST_PAUSE, None, False
            self.drafts.append(extra)

    def _mark_cluster_again(self, chunk: Chunk) -> None:
        """ "100x8+3+2 x2": all of it so often, and not its last few reps alone."""
        if chunk.times is None or chunk.times == 1:
            return
        head, extras = self.touched[-1:], self.drafts[len(self.drafts) - len(chunk.plus) :]
        self.unplaced = self.unplaced or len(self.touched) > 1
        if not 1 <= chunk.times <= 2 * MOST_SETS:
            raise DoesNotFit(f"{chunk.times} times")
        for _ in range(chunk.times - 1):
            self.drafts += [copy_of(draft) for draft in (*head, *extras)]

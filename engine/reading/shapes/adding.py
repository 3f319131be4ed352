"""Adding sets and loads, one at a time: the state of one walk over the chunks of an exercise."""

from __future__ import annotations

from decimal import Decimal
from functools import lru_cache

from engine.reading.chunks.choices import (
    MOST_OUT,
    Choice,
    DoesNotFit,
    Draft,
    Traits,
    copy_of,
)
from engine.reading.chunks.chunks import Chunk, Chunks
from engine.reading.words.pieces import Piece, Role
from engine.reading.words.tokens import HALF
from engine.values.effort import Effort
from engine.values.sets import MOST_REPS, SetKind

TYPED = frozenset((Role.SECONDS, Role.METRES))
"""Amounts that tell their unit and are no reps."""


@lru_cache(maxsize=4_096)
def full_reps(count: Decimal) -> int | None:
    """The whole reps that a number counts: 7 of "7.5". None where it can count none."""
    done, partial = divmod(count, 1)
    if (partial and not done) or not 0 <= done <= MOST_REPS or partial not in (0, HALF):
        return None
    return int(done)


class Adding:
    """One walk over the chunks of one exercise under one choice."""

    drafts: list[Draft]
    load: Piece | None = None
    last_load: Piece | None = None
    pending: bool = False
    closed: int = 0
    """So many sets stand in front of those that a load may still be told of."""
    closed_list: bool = False
    """They were told one by one, so that the load may be of them as well: "10, 8, then 6 with 10 kg"."""
    announced: int | None = None
    shared: int | None = None
    heads: Chunk | None = None
    """The name of reps whose load was taken as that of its first set: "doubles at 110, 115"."""
    touched: list[Draft]
    way: list[Draft]
    """The distances of the group told last, which a time behind them is of."""
    times_told: int = 0
    """How many times were told of them."""
    waiting: tuple[Effort, ...] = ()
    saw_range: bool = False
    saw_list_effort: bool = False
    saw_sides: bool = False
    saw_load_behind: bool = False
    """A load behind sets of the body may be that of all of them, or of those it stands behind: "8, 8, 5 +10"."""
    loaded_behind: bool = False
    """A load stood behind the reps of one set of the body: "8 +10, 6 +15"."""
    run_from: int = 0
    """How many sets stood in front of the latest sign that parts sets."""
    listed: bool = False
    kind_ahead: SetKind | None = None
    """The kind told with a load whose reps follow: "drop 12kg 8"."""
    dropping: bool = False
    """The sets before were drops; a lighter one in the same breath is one more."""
    weak: bool = False
    """Likely, but not certain: the plan or the load of last time may settle it."""
    unplaced: bool = False
    """A number or a mark has no plain place: asked, whatever else fits."""
    groups: tuple[Draft, ...] = ()
    """A set of each group told by counts, 3x8."""
    singles_at: frozenset[int] = frozenset()
    """The loads (by identity; 0 for none told yet) of reps that stood alone."""
    in_passing: bool = False
    chunk_at: bool = False
    bracketed: bool = False
    failing: Piece | None = None
    """The load told with "to failure" ahead of its reps."""
    filled: bool = False
    """The chunk was the load of sets told before it."""

    def __init__(self, chunks: Chunks, choice: Choice, traits: Traits) -> None:
        self.chunks = chunks
        self.choice = choice
        self.traits = traits
        self.drafts = []
        self.touched = []
        self.way = []

    def _add(self, reps: Piece, load: Piece | None = None) -> None:
        done = full_reps(reps.value)
        if done is None or reps.role is Role.LOAD:
            raise DoesNotFit("half a rep" if 0 < abs(reps.value) < 1 else f"{reps.text} cannot be reps")
        if self.traits.timed and reps.role in (Role.BARE, Role.SECONDS, Role.PLURAL):
            self._add_timed(reps.value, load)
            return
        if reps.role in TYPED:
            self._add_typed(reps, load)  # "farmers 40 20m/20m"
            return
        self._append(Draft(done, load, missed=done == 0))

    def _as_reps(self, number: Piece) -> Piece:
        """The number as one that counts reps; a bare one does, but for a lift that is held for a time."""
        bare = number.role is Role.BARE and not self.traits.timed
        return number if bare else number._replace(role=Role.REPS)

    def _told_each(self, amount: Piece) -> bool:
        """ "3 sets plank 60s 60s 45s": whether the time or the way of each set is told, and not one for all of them."""
        ways = amount.role is Role.METRES
        heads = [chunk.factors[0][0].role for chunk in self.chunks.found if chunk.size == 1]
        return sum(role in ((Role.METRES,) if ways else (Role.SECONDS, Role.PLURAL)) for role in heads) > 1

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
        if amount.role is Role.METRES and not self.traits.travels:
            raise DoesNotFit("a distance for a lift that is counted in reps")
        if amount.role is Role.METRES:
            self._append(Draft(1, load, metres=amount.value))
            self.way.append(self.drafts[-1])
            self.times_told = 0
        elif last is not None and last.metres is not None and self.traits.carried:
            self._time_the_way(last, amount)
        else:
            self._append(Draft(1, load, seconds=amount.value))

    def _time_the_way(self, last: Draft, time: Piece) -> None:
        """How long the ways of the group just told took: one time for all of them, or one each. Behind a single way one
        time more is of the same way once more: "20 m in 14 s, 15 s".
        """
        self.way = self.way if last in self.way else [last]
        if self.times_told and len(self.way) > 1:
            timed = self.way[self.times_told : self.times_told + 1]
        elif last.seconds is not None:
            self._append_alike(1)
            timed = self.way = self.drafts[-1:]
            self.times_told = 0
        else:
            timed = self.way
        if not timed:
            raise DoesNotFit("more times than ways")
        for draft in timed:
            draft.seconds = time.value
        self.touched = list(timed)
        self.times_told += 1

    def _note_group(self) -> None:
        """The set told last is of a group."""
        self.groups = (*self.groups, self.drafts[-1])

    def _note_single(self, closed: bool) -> None:
        """`closed`: the reps have a load behind them that no group waits for."""
        self.singles_at |= {id(self.load) if self.load is not None else -1 if closed else 0}

    def _has_stray(self) -> bool:
        """Whether reps stood alone beside a group, with no load of their own: "3x8 60 7"."""
        if not self.groups or not self.singles_at:
            return False
        standing = {id(draft) for draft in self.drafts}  # a group's results may have taken its place
        loads = {id(one.load) for one in self.groups if id(one) in standing}
        return 0 in self.singles_at or not self.singles_at.isdisjoint(loads)

    def _append(self, draft: Draft) -> None:
        if len(self.drafts) >= MOST_OUT:
            raise DoesNotFit("more sets than anyone does")
        if draft.load is None:
            draft.load = self.load
        self.pending = self.pending and draft.load is None
        self.drafts.append(draft)
        self.touched.append(draft)

    def _append_alike(self, count: int) -> None:
        """The set just told, so many times more."""
        if len(self.drafts) + count > MOST_OUT:
            raise DoesNotFit("more sets than anyone does")
        alike = [copy_of(self.drafts[-1]) for _ in range(count)]
        self.drafts += alike
        self.touched += alike

    def _set_load(self, load: Piece, forward: bool = False) -> None:
        self.last_load = load
        self.unplaced = self.unplaced or (self.traits.body and bool(self.chunks.placed_reps))  # "3x10, last set 6 +10"
        if self.shared is not None:
            self._append(Draft(self.shared, load))
            return
        self.unplaced = self.unplaced or (self.closed_list and self._may_be_of_the_closed())
        still_open = [draft for draft in self.drafts[self.closed :] if draft.load is None or draft.carried]
        run = self.drafts[self.run_from :]
        if self.traits.body and self.listed and 1 < len(run) < len(still_open) and not forward:
            self.saw_load_behind = True  # "8 8 8, 5 5 10kg"
            still_open = still_open if self.choice.load_for_all else run
        if still_open and not forward:
            for draft in still_open:
                draft.load, draft.carried = load, False
            self.touched = still_open
            self.filled = True
            self.load = None
        elif self.pending:
            raise DoesNotFit("two loads and no reps")
        else:
            self.load, self.pending = load, True

    def _may_be_of_the_closed(self) -> bool:
        """Whether reps stand between the closed list, of which no load is told, and the load."""
        return len(self.drafts) > self.closed and any(draft.load is None for draft in self.drafts[: self.closed])

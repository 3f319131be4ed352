"""Numbers with slashes or dashes between them: reps of single sets, loads of them, a range, two sides, times, ways."""

from __future__ import annotations

from engine.reading.chunks.choices import LOADS, DoesNotFit, Draft, FirstAs, Traits, may_be_reps
from engine.reading.chunks.chunks import Chunk
from engine.reading.shapes.adding import TYPED
from engine.reading.shapes.loads_behind import LoadedBehind
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role


class ListedNumbers(LoadedBehind):
    """The part of the walk that reads one list."""

    def _list(self, chunk: Chunk, numbers: tuple[Piece, ...]) -> None:
        numbers = self._as_times(numbers)
        if numbers[-1].role in TYPED and all(one.role is Role.BARE for one in numbers[:-1]):
            numbers = tuple(one._replace(role=numbers[-1].role) for one in numbers)  # "20/20/15m"
        if not self._list_with_load(chunk, numbers) and not self._list_of_loads(numbers):
            head = numbers[0]
            leads = self.choice.first is FirstAs.LOAD and self.load is None and not self.traits.body and not chunk.at
            if leads:
                self.load = self.last_load = head
            self._note_single(self.chunk_at and not self._open_group())
            self._reps_list(numbers[1:] if leads else numbers)

    def _as_times(self, numbers: tuple[Piece, ...]) -> tuple[Piece, ...]:
        """ "farmers 40 30s/25s": behind a load, times; elsewhere "24s" are dumbbells."""
        held = self.traits.carried and self.last_load is not None
        if not held or any(one.role is not Role.PLURAL for one in numbers):
            return numbers
        return tuple(one._replace(role=Role.SECONDS) for one in numbers)

    def _list_with_load(self, chunk: Chunk, numbers: tuple[Piece, ...]) -> bool:
        """A range, two sides, 85-6-6-6, 9/60: what the numbers of the list settle among themselves."""
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
        else:
            return False
        return True

    def _list_of_loads(self, numbers: tuple[Piece, ...]) -> bool:
        """3x10 40/45/50, singles 45/50/55."""
        if self.traits.body:
            return False
        if self._open_group() and len(self.drafts) == len(numbers):
            for draft, load in zip(self.drafts, numbers, strict=True):
                draft.load = load
            return True
        if self.shared is None:
            return False
        for load in numbers:
            self._append(Draft(self.shared, load))
        return True

    def _is_load(self, number: Piece) -> bool:
        return is_load(number, self.traits)

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

    def _open_group(self) -> bool:
        """Whether a group told by counts (3x12) still waits for its load."""
        return bool(self.drafts) and self.drafts[-1].load is None and not self.listed and self.announced is None


def is_load(number: Piece, traits: Traits) -> bool:
    """Whether the number can only be a load."""
    if number.role in LOADS:
        return not (traits.timed and number.role is Role.PLURAL)
    return number.role is Role.BARE and not traits.body and not may_be_reps(number, traits)

"""How often a set was done, where a number says so: "three times", "3x" behind it, "times three".

often = NUMBER "times" SET | SET NUMBER "times" | SET "times" NUMBER | SET "," NUMBER "x"
"""

from __future__ import annotations

from engine.reading.chunks.chunks import CARRIED, MOST_SETS_BY_REPEAT, Chunk
from engine.reading.chunks.passed_over import PassedWords
from engine.reading.chunks.steps import loads_told, tells_a_load
from engine.reading.chunks.sums import AMOUNTS, BOTH_SETS
from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, MOST_SETS, Piece, Role

PLAIN_ENDS = frozenset((None, K.NUMBER, K.COMMA, K.LINE, K.AT, K.WITH, K.EFFORT, K.THEN, K.STOP, K.NOTE, K.FAILURE))

TIMED_OR_HEAVY = AMOUNTS | {Role.PLURAL}
COUNTABLE = TIMED_OR_HEAVY | {Role.BARE, Role.REPS}


COUNTING_ON = frozenset((K.OF, K.NUMBER, K.TIMES, K.AT, K.WITH, K.COLON, K.FOR, K.COUNT))
"""Behind a count of sets these tell sets of its own."""
PAIR = 2
SAID_OF_THEM = frozenset((K.NOTE, K.PLAIN, K.FILLER, K.SAME))
REMARKING = frozenset((K.PLAIN, K.NOTE, K.PARTIAL))
ENDS_OF_IT = frozenset((None, K.COMMA, K.STOP, K.LINE, K.CLOSE))


class TimesChunks(PassedWords):
    """The part of the walk that reads how often a set was done."""

    def factor(self, chunk: Chunk | None) -> tuple[Piece, ...]:
        raise NotImplementedError

    def _rest_of_chunk(self, chunk: Chunk) -> None:
        raise NotImplementedError

    def _only_counts(self, number: Piece) -> bool:
        """Passes a number that counts sets told before or behind it, and tells none itself."""
        counts = self._counts_an_open_set(0) or (number.role is Role.SETS and self._totals_sets(number))
        self.at += bool(self.out.found) and counts
        return bool(self.out.found) and counts

    def _counts_all_told(self, count: Piece) -> bool:
        """ "5 5 5 at 80, all three paused": a remark on the sets told, where there are as many; else it is asked."""
        told = bool(self.out.found) and self._kind(-2) not in (K.FILLER, K.FOR) and self._kind() is not K.OF
        self.out.dangling = self.out.dangling or (told and self._sets_told() != count.value)
        return told

    def _speaks_of_all(self, number: Piece) -> bool:
        """Whether a number behind "all" or "both" tells of the sets before it: how many they are, or their reps."""
        if number.role is Role.SETS and self.pieces[self.at - 1].kind is not K.BOTH:
            return self._counts_all_told(number)
        if number.role is Role.SETS:
            self.out.dangling = self.out.dangling or len(self.out.found) > 1  # "80x8, 75x8, both 3 sets"
            return False
        if number.role is not Role.BARE or self._kind() not in ENDS_OF_IT | SAID_OF_THEM or not self._list_told(number):
            return False
        loads = set(loads_told(self.out.found))
        reps = {one.value for chunk in self.out.found if chunk.factors for one in chunk.factors[-1]} - loads
        # "80 8 7 6, all 8", "80x8, 8, both 4": what was told before is not so
        true = reps == {number.value} or number.value == self._sets_told() or loads == {number.value}
        self.out.dangling = self.out.dangling or not true
        if K.SAME in (self._kind(), self._kind(2)):
            self.at += 1 + (self._kind() is not K.SAME)  # "all 3 the same" repeats none of them
        return True

    def _is_how_many(self, number: Piece, before: Piece) -> bool:
        """ "8 8 7, las 3 limpias": as many as there are, behind a "the", and what they were like."""
        said = self._kind() in SAID_OF_THEM and before.kind is K.FILLER and number.role is Role.BARE
        return said and "the" in CUES_OF[before.text] and 1 < number.value == self._sets_told()

    def _list_told(self, number: Piece) -> bool:
        """Whether several sets stand before it, with their reps, or just as many bare ones as it says."""
        last = self._last()
        if last is None or self._sets_told() < BOTH_SETS or not last.factors or not last.factors[-1]:
            return False
        if number.value == self._sets_told():
            return True
        return last.tells_reps or (tells_a_load(self.out.found) and last.factors[-1][-1].value <= MOST_LOADED_REPS)

    def _totals_sets(self, count: Piece) -> bool:
        """ "80x8, 80x8, 2 sets": what the sets told one by one come to; of "80x8, 75x8, 2 sets" it may be so many of
        the last, and of "80x8, 75x8, 2 sets each" of both: asked.
        """
        found = self.out.found
        if len(found) < BOTH_SETS or self._kind() in COUNTING_ON or not all(map(_is_one_pair, found)):
            return False
        apart = self.separator is not None or self.depth > 0
        alike = {(chunk.factors[0][0].value, chunk.factors[1][0].value) for chunk in found}
        total = count.value == len(found)
        if len(alike) > 1:
            self.out.dangling = self.out.dangling or (total and apart) or self._kind() is K.EACH
            return False
        self.out.dangling = self.out.dangling or not (total and apart)
        return total and apart

    def _times_what(self, piece: Piece) -> bool:
        """ "3 times 30 seconds", "3 times 8 with 50": so many sets of it."""
        ahead = self.pieces[self.at + 1] if self.at + 1 < len(self.pieces) else None
        if piece.role is not Role.TIMES or ahead is None or ahead.kind is not K.NUMBER or ahead.role not in COUNTABLE:
            return False
        if self._kind(2) is K.TIMES:
            return False
        self.at += 1
        sets = piece._replace(role=Role.BARE if ahead.role in TIMED_OR_HEAVY else Role.SETS)
        self._rest_of_chunk(Chunk([(sets,), self.factor(None)], before=self.separator))
        return True

    def _repeats_last(self) -> bool:
        """ "(75 x7) 3x", "three times": a multiplier of the chunk before."""
        piece, last = self.pieces[self.at], self._last()
        if last is None or piece.value != int(piece.value):
            return False
        opens = self._kind(2) is K.OPEN and self._kind(3) in (K.NUMBER, K.BAR, K.BODY)
        behind = self._kind() is K.TIMES and not (opens or self._kind(2) in (K.NUMBER, K.MAX))
        behind = behind and (last.in_brackets or self._ends_with_times(last))
        if piece.role is Role.TIMES and self._loads_reps(last):
            self.out.found[-2].times = int(piece.value)
            self.at += 1
            return True
        amount = bool(last.factors) and bool(last.factors[-1]) and last.factors[-1][-1].role in TIMED_OR_HEAVY
        if behind or (piece.role is Role.TIMES and (last.tells_reps or amount or self._tells_reps(last))):
            # "80 8 8 7, cheated 2 times": what was done so often may be something else
            said = self._kind() is K.PLAIN or self.pieces[self.at - 1].kind in REMARKING
            self.out.dangling = self.out.dangling or (said and piece.role is Role.TIMES)
            last.times = int(piece.value)
            self.at += 2 if behind else 1
            return True
        return False

    def _ends_with_times(self, last: Chunk) -> bool:
        """ "80x5, 3x" and nothing behind it."""
        count, sign = self.pieces[self.at : self.at + 2]
        if not last.tells_reps or last.times is not None or not sign.glued or self._kind(2) not in PLAIN_ENDS:
            return False
        head = last.factors[0][-1:]
        loaded = last.counted or not head or head[0].role is Role.LOAD or head[0].value > MOST_SETS
        return loaded and count.role is Role.BARE and 1 < count.value <= MOST_SETS

    def _loads_reps(self, last: Chunk) -> bool:
        """ "10 reps 35kg, 3 times": the load of the reps in front of it."""
        if len(self.out.found) < 2 or last.size != 1 or self.out.found[-2].size != 1:
            return False
        load, reps = last.factors[0], self.out.found[-2].factors[0]
        alone = len(load) == len(reps) == 1 and not last.at and not self.out.found[-2].at
        loaded = alone and (load[0].role is Role.LOAD or load[0].value > MOST_LOADED_REPS)
        return loaded and reps[0].role is Role.REPS

    def _tells_reps(self, last: Chunk) -> bool:
        """ "40, 8 reps, 3 times", "8 at 60, 3 times": the reps of one set; "40, 8 times" counts reps itself."""
        numbers = last.factors[0] if last.size == 1 else CARRIED
        if len(numbers) != 1 or numbers[0].value > MOST_LOADED_REPS:
            return False
        loaded = len(self.out.found) > 1 or (bool(last.at) and last.at[-1].value > numbers[0].value)
        return numbers[0].role is Role.REPS or (numbers[0].role is Role.BARE and loaded)

    def _times_behind(self, chunk: Chunk) -> None:
        """ "87.5 x 8 times three": so many sets of eight."""
        count = self.pieces[self.at]
        if count.role is Role.BARE and count.value <= MOST_SETS_BY_REPEAT and self._kind() is not K.TIMES:
            chunk.factors[-1] = (*chunk.factors[-1][:-1], chunk.factors[-1][-1]._replace(role=Role.REPS))
            chunk.times = int(count.value)
            self.at += 1


def _is_one_pair(chunk: Chunk) -> bool:
    """ "80x8", done once."""
    if chunk.size != PAIR or chunk.times is not None or not (len(chunk.factors[0]) == len(chunk.factors[1]) == 1):
        return False
    head = chunk.factors[0][0]
    return head.role is Role.LOAD or (head.role is Role.BARE and head.value > MOST_LOADED_REPS)

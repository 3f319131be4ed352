"""What a sign or a word for a load puts behind a set: its load, or for the sign perhaps its effort.

behind = ( "@" | "with" ) ( LOAD | EFFORT | BODY )     8 @ 55; 8 with 55; 5 @8; 3x5 80 @7, 8, 9 (one for each set)
Where the chunk before has its load already, or the reps stand behind ("10 8, with 10 kg 6 5"), the load opens the next.
Behind several bare reps a load is that of all since the comma: "100x3, 5 5 5 with 80".
"""

from __future__ import annotations

from engine.reading.chunks.chunks import CARRIED, MOST_REPEATS, Chunk
from engine.reading.chunks.misses import MissedChunks
from engine.reading.chunks.steps import tells_a_load
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, MOST_SETS, Piece, Role
from engine.values.effort import TOP_OF_SCALE, Effort

PARTS_RUNS = frozenset((K.COMMA, K.STOP, K.THEN, K.LINE, K.AND))
LEAST_OF_SEVERAL = 6
"""Efforts told one after another lie this high. Common practice, no source."""
MOST_REPS_OF_A_COUNT = 20
"""Behind "three sets with": more than this is rather a load. Common practice, no source."""
BEHIND_A_LOAD_AHEAD = frozenset((K.ADDED, K.FILLER, K.NOTE, K.PLATE, K.COMMA, K.COLON))
BEHIND_AN_AT = frozenset((K.UNRELATED, K.BAR, K.BODY, K.SAME, K.OPEN, K.NOTE, K.FAILURE, K.EFFORT, K.MAX, K.COUNT))


class LoadedChunks(MissedChunks):
    """The part of the walk that puts loads behind the chunks told so far."""

    def _warms_up(self, piece: Piece) -> bool:
        raise NotImplementedError

    def at_load(self, piece: Piece) -> None:
        """ "@ 55", "with 55": a load, or for the sign perhaps an effort, told of the chunk before."""
        if piece.text == "w" and self._warms_up(piece):
            return
        self.at += 1
        self._skip(frozenset((K.FILLER, K.COLON, K.OPEN, K.EACH)))
        sign = piece.kind is K.AT
        last = self._last()
        if self._kind(0) is K.BODY and last is not None and not last.at:
            self.out.body = True
            last.at = (self.pieces[self.at]._replace(kind=K.NUMBER, role=Role.BODY),)
            self.at += 1
            return
        worded = not sign and self.kinds[self.at - 1] is K.COLON and self.kinds[self.at - 2] is K.FILLER
        if self._kind(0) is not K.NUMBER or worded:  # "happy with that: 10 8 7"
            self.out.dangling = self.out.dangling or (sign and self._kind(0) not in BEHIND_AN_AT)
            return
        role = self.pieces[self.at].role
        paired = self._kind() is K.TIMES and not self._rates_ahead_of_reps(sign)
        self._note_pair(last if paired and sign else None)
        if role in (Role.REPS, Role.SETS, Role.TIMES, Role.SECONDS, Role.METRES) or paired:
            return
        if role is Role.LOAD and self._kind() is K.BAR and tells_a_load(self.out.found):
            self.at += 2  # "80x8, 8, 7 with the 20kg bar"
            return
        if self.separator is not None and self._kind() is K.FOR and self._kind(2) is K.NUMBER:
            return  # "8 8 8, 52.5, then one at 40 for 20"
        if not sign and last is not None and self._counts_reps(last):
            self._rest_of_sets(last)
        else:
            self._put_behind(last, sign)

    def _rates_ahead_of_reps(self, sign: bool) -> bool:
        """ "160x12 @7 x12 @8": an effort, and then reps at the load of before."""
        times, reps = self.pieces[self.at + 1 : self.at + 3] if self._kind(2) is K.NUMBER else (None, None)
        apart = times is not None and reps is not None and not times.glued and reps.glued
        rated = sign and apart and _is_effort((self.pieces[self.at],)) and tells_a_load(self.out.found)
        last = self._last()
        head = last.factors[0] if last is not None and last.size == 1 and not last.at else ()
        return rated and last is not None and not (bool(head) and _is_heavy(head[0]))

    def _note_pair(self, last: Chunk | None) -> None:
        if last is not None and self._may_be_rated_or_repeated(last):
            self.out.at_pairs = (*self.out.at_pairs, len(self.out.found) - 1)

    def _may_be_rated_or_repeated(self, last: Chunk) -> bool:
        """ "80@8x5": sets, or an effort and reps; "5@70x3": sets of three, or a set of five three times."""
        number, reps = self.pieces[self.at], self.pieces[self.at + 2] if self._kind(2) is K.NUMBER else None
        alone = last.size == 1 and len(last.factors[0]) == 1 and not last.at and self.separator is None
        if reps is None or not alone or self._kind(3) is K.TIMES or reps.value > MOST_LOADED_REPS:
            return False
        if _is_heavy(last.factors[0][0]):
            return _is_effort((number,)) and number.value >= LEAST_OF_SEVERAL
        counts = last.factors[0][0].role is Role.BARE and reps.value <= MOST_SETS
        return counts and _is_heavy(number) and reps.role is Role.BARE

    def _put_behind(self, last: Chunk | None, sign: bool) -> None:
        """The load or the effort that stands here is the last chunk's, or else opens one."""
        of_all = sign and self._told_of_all(behind=1)  # the sign itself
        numbers = self.factor(Chunk([CARRIED]))
        if of_all and _is_effort(numbers) and tells_a_load(self.out.found):
            self.out.effort_of_all = Effort.from_rpe(numbers[0].value)
            return
        if sign and last is not None and _is_effort(numbers):
            numbers = self._one_each(numbers)
        ahead = self._heads_a_list(self.at) or (
            not sign and self.separator is K.THEN and self._heads_a_list(self._past())
        )
        if not sign and self.separator is not None and ahead and last is not None and len(last.factors) == 1:
            self._place(Chunk([(numbers[0]._replace(role=Role.LOAD), *numbers[1:])], before=self.separator))
            return  # "10 8, with 10 kg 6 5"
        if sign and last is not None and last.at and _is_effort(numbers):
            rated = last.at_sign and _is_effort(last.at) and tells_a_load(self.out.found)
            self.out.dangling = self.out.dangling or rated  # "3x5 110 @8, @9": of which sets?
            last.efforts += (Effort.from_rpe(numbers[0].value),)
            return
        if last is None or last.at:
            self.out.dangling = self.out.dangling or (sign and _is_effort(numbers))
            head = numbers[0]._replace(role=Role.LOAD) if numbers[0].role is Role.BARE else numbers[0]
            self._place(Chunk([(head, *numbers[1:])], before=self.separator))
            return
        last.at, last.at_sign = numbers, sign
        if numbers[-1].failure:
            last.failure = True
        if not sign and len(numbers) == 1:
            self._load_of_the_run(last)

    def _heads_a_list(self, at: int) -> bool:
        """Whether bare reps stand there: "10 8, with 10 kg 6 5"."""
        return self.kinds[at] is K.NUMBER and self.pieces[at].role is Role.BARE and self.kinds[at + 1] is not K.TIMES

    def _past(self) -> int:
        """The place behind the words that say how a load was put on: "then with 5 kg on the belt, 7 and 5"."""
        at = self.at
        while self.kinds[at] in BEHIND_A_LOAD_AHEAD:
            at += 1
        return at

    def _load_of_the_run(self, last: Chunk) -> None:
        """ "100x3, 5 5 5 with 80": the load of all the reps since the comma, where those before had another."""
        if last.before is K.THEN and last.at[0].role is Role.CHANGE:
            last.at_own = True  # "2x10, then 10 with +10 kg"
        run: list[Chunk] = []
        for chunk in reversed(self.out.found):
            bare = chunk.size == 1 and len(chunk.factors[0]) == 1 and chunk.factors[0][0].role in (Role.BARE, Role.REPS)
            if not bare or (chunk.at and chunk is not last) or chunk.factors[0][0].value > MOST_LOADED_REPS:
                break
            run.append(chunk)
            if chunk.before in PARTS_RUNS:
                break
        before = self.out.found[: len(self.out.found) - len(run)]
        if not tells_a_load(before) or not run:
            return
        if len(run) < 2:
            ahead = before[-1]
            listed = ahead.size == 1 and bool(ahead.factors[0]) and not ahead.at and last.before is K.COMMA
            same = listed and ahead.factors[0][0].value == last.factors[0][0].value
            self.out.dangling = self.out.dangling or same  # "100x3, 5, 5, 5 with 80": one of them, or all three
            return
        self.out.dangling = self.out.dangling or run[-1].before not in PARTS_RUNS
        for chunk in run:
            chunk.at, chunk.at_of_run = last.at, True

    def _one_each(self, numbers: tuple[Piece, ...]) -> tuple[Piece, ...]:
        """ "82.5 5 5 5 @ 7 8 9", "3x5 80 @7, 8, 9": an effort for each set, where there are as many."""
        at, told = self.at, list(numbers)
        while self.kinds[at] in (K.NUMBER, K.COMMA, K.AT) and len(told) < MOST_REPEATS:
            if self.kinds[at] is K.NUMBER:
                told.append(self.pieces[at])
            at += 1
        alone = self.kinds[at] not in (K.TIMES, K.AT, K.REPS, K.KG, K.LB, K.SETS)
        if len(told) < 2 or not alone or not all(_is_effort((one,)) for one in told):
            return numbers
        sets = self._sets_told()
        if not self._rise_as_efforts(told, at):
            return numbers
        if len(told) != sets:
            self.out.dangling = self.out.dangling or (sets > 1 and abs(len(told) - sets) == 1)
            return numbers
        self.at = at
        return tuple(told)

    def _rise_as_efforts(self, told: list[Piece], end: int) -> bool:
        """Whether the numbers are high and do not fall; "@8, 5" and "@8, 8" may well go on with reps."""
        efforts = [one.value for one in told]
        listed = K.COMMA in self.kinds[self.at : end]
        high = min(efforts) >= LEAST_OF_SEVERAL and efforts == sorted(efforts)
        return high and efforts[0] < efforts[-1] and (len(told) > 2 or not listed)

    def _counts_reps(self, last: Chunk) -> bool:
        """ "drei Sätze mit acht, 80 Kilo": reps behind a count of sets, where a load is told besides."""
        number = self.pieces[self.at]
        sets = last.size == 1 and len(last.factors[0]) == 1 and last.factors[0][0].role is Role.SETS
        few = number.role is Role.BARE and number.value <= MOST_REPS_OF_A_COUNT and not last.at
        told = [one for one in self.pieces if one.kind is K.NUMBER and one is not number]
        loaded = any(one.role is Role.LOAD or one.value > MOST_LOADED_REPS for one in told)
        return sets and few and (number.spelled or loaded) and not any(one.role is Role.REPS for one in told)

    def _rest_of_sets(self, sets: Chunk) -> None:
        self.out.found.pop()
        sets.factors.append(self.factor(None))
        self._rest_of_chunk(sets)


def _is_heavy(number: Piece) -> bool:
    return number.role is Role.LOAD or (number.role is Role.BARE and number.value > MOST_LOADED_REPS)


def _is_effort(numbers: tuple[Piece, ...]) -> bool:
    return len(numbers) == 1 and numbers[0].role is Role.BARE and 1 <= numbers[0].value <= TOP_OF_SCALE

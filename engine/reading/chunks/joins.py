"""What joins one factor to the next: an x, "of", "for", "each x".

join = [ "each" ] ( "x" | "by" ) NUMBER | "of" NUMBER | "for" NUMBER     80x5; 3 sets of 8; 100 for 5; 8 each leg x 4
A third number behind an x that stands apart says how often: 80x5 x3. In a row of such x the load is carried on.
"""

from __future__ import annotations

from engine.reading.chunks.chunks import GAPS, MOST_SETS_BY_REPEAT, Chunk
from engine.reading.chunks.factors import FactorChunks
from engine.reading.chunks.list_heads import is_ladder
from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, MOST_SETS, Piece, Role
from engine.reading.words.sides_named import SIDE_OF_A_BAR, tells_a_side

JOINING = frozenset((K.TIMES, K.BY, K.OF, K.FOR, K.EACH))
COUNTED_BY_OF = (Role.BARE, Role.REPS, Role.SECONDS, Role.METRES)
BEHIND_A_SIGN = frozenset((K.NUMBER, K.BAR, K.BODY, K.MAX, K.FAILURE))


class JoinedChunks(FactorChunks):
    """The part of the walk that says whether another factor belongs to the chunk."""

    def _counts_reps_behind(self, chunk: Chunk) -> bool:
        """ "3 sets 8 reps", as "3 sets of 8 reps"; in "8 reps 3 sets 10 reps" the count is of those before it."""
        sets = chunk.factors[0] if chunk.size == 1 else ()
        if len(sets) != 1 or sets[0].role is not Role.SETS or self.kinds[self.at] is not K.NUMBER:
            return False
        last = self._last()
        counted = last is not None and last.size == 1 and chunk.before is None and last.factors[0][0].role is Role.REPS
        return self.pieces[self.at].role is Role.REPS and not counted

    def _joins_next(self, chunk: Chunk) -> bool:
        kind = self.kinds[self.at]
        if kind not in JOINING:
            return False
        if kind is K.TIMES or kind is K.BY:
            return not self._climbed_so_often(chunk) and self._times_joins(chunk)
        if kind is K.OF and chunk.size == 1 and self._number_behind(1):
            return self._counts_of(chunk)
        if kind is K.FOR and chunk.size == 1 and self._number_behind(1):
            return self._spoken_for(chunk)
        if kind is not K.EACH or self._kind(1) is not K.TIMES:
            return False
        self._tell_each(self.pieces[self.at])
        return not self._sides_repeated(chunk) and self._times_joins(chunk, 1)

    def _spoken_for(self, chunk: Chunk) -> bool:
        """ "100 for 5", "30 s for 3 sets": whether what stands behind "for" belongs to this chunk."""
        ahead = self.pieces[self.at + 1 + (self._kind(1) is K.FILLER)]
        if "onto" in CUES_OF[self.pieces[self.at].text] and ahead.value > chunk.factors[0][-1].value:
            return False  # "8 7 6 na 85"
        if self._kind(2) is K.TIMES and self.pieces[self.at + 2].glued:
            chunk.counts_behind = True
            if chunk.factors[0][0].role is Role.CHANGE:
                self.at += 1  # "+5 for 3x5": the sets stand behind
                return False
        chunk.spoken_for = ahead.role not in (Role.SECONDS, Role.SETS) or chunk.factors[0][0].role is Role.LOAD
        return chunk.spoken_for and ahead.role is not Role.SETS

    def _sides_repeated(self, chunk: Chunk) -> bool:
        """ "16k 8 each side x 4", "8 each leg x 4 at 16": so many reps a side, and so many sets."""
        sides = chunk.factors[-1]
        if len(sides) == 2 and sides[0].value == sides[1].value:
            sides = sides[:1]  # "10/10 per arm"
        reps, count = sides[-1:], self.pieces[self.at + 2] if self._kind(2) is K.NUMBER else None
        bare = bool(reps) and reps[0].role in (Role.BARE, Role.REPS) and count is not None and count.role is Role.BARE
        if not bare or count is None:
            return False
        if not tells_a_side(self.pieces[self.at]):
            chunk.of_each = chunk.size == 1
            if not self._load_heads(chunk, count):
                return False
        of_a_bar = tells_a_side(self.pieces[self.at], SIDE_OF_A_BAR)  # "35 a side x 8" may be plates
        if not self.out.found and (of_a_bar or reps[0].value <= count.value):
            chunk.of_sides = True
            return False
        chunk.factors[-1] = sides
        chunk.times = int(count.value)
        self.out.each = self.out.sides = True
        self.at += 3
        return True

    def _load_heads(self, chunk: Chunk, count: Piece) -> bool:
        """ "30s 10 each x3": reps behind the load that was told, done so often; "10 each x 8" tells a load itself."""
        last = self._last()
        head = last.factors[0][0] if last is not None and last.size == 1 and len(last.factors[0]) == 1 else None
        loaded = head is not None and (head.role in (Role.LOAD, Role.PLURAL) or head.value > MOST_LOADED_REPS)
        alone = chunk.size == 1 and last is not None and not last.at and chunk.factors[0][-1].value <= MOST_LOADED_REPS
        return loaded and alone and count.value <= MOST_SETS

    def _counts_of(self, chunk: Chunk) -> bool:
        """ "3 sets of 8", "3 po 8": what stands before "of" counts sets."""
        head, counted = chunk.factors[0][-1], self.pieces[self.at + 1]
        if counted.kind is K.NUMBER and counted.role is Role.SETS:
            self.out.dangling = True  # "2 of 3 sets": so many sets, and no reps
            return False
        if head.role is Role.SETS:
            return True
        if (
            head.role is not Role.BARE
            or head.value > 10
            or counted.kind is not K.NUMBER
            or not (counted.role in COUNTED_BY_OF or _is_spaced_time(counted))
        ):
            return False
        if counted.role is Role.PLURAL:
            timed = counted._replace(role=Role.SECONDS)
            self.pieces = [*self.pieces[: self.at + 1], timed, *self.pieces[self.at + 2 :]]
        chunk.factors[0] = (head._replace(role=Role.SETS),)
        return True

    def _times_joins(self, chunk: Chunk, ahead: int = 0) -> bool:
        if not self._number_behind(ahead + 1):
            return False
        sign, number = self.pieces[self.at + ahead], self.pieces[self.at + ahead + 1]
        self.at += ahead
        if chunk.size == 1 and not sign.glued and number.glued:
            chunk.x_apart = True
        if number.role is Role.SETS and chunk.size == 2 and self._kind(2) is K.OF and self._kind(3) is K.NUMBER:
            return self._told_once_more(chunk, number)
        carried = chunk.size > 1 and not chunk.factors[0]
        if chunk.size < 2 or (sign.glued and not carried) or not number.glued or number.role is not Role.BARE:
            return True
        if number.value > MOST_SETS_BY_REPEAT or not number.value or (carried and not self._counts_carried(chunk)):
            return False  # "60x8 x8 x7": the load is carried on
        if self._kind(2) is K.TIMES and not self.pieces[self.at + 2].glued and self._kind(3) is K.NUMBER:
            return False  # "80x5 x5 x4": so it is here
        chunk.times = int(number.value)
        if number.value == chunk.factors[-1][-1].value:
            self.out.loose.append(number)  # "60x5 x5": twice, or five times
        self.at += 2
        return False

    def _counts_carried(self, chunk: Chunk) -> bool:
        """ "80x8 x2, x6 x1": behind sets that were counted so; in "60x8, x6 x2" it may be of one more set: asked."""
        if chunk.before is None and not self.pieces[self.at].glued:
            return False
        counted = any(one.times is not None for one in self.out.found)
        self.out.dangling = self.out.dangling or not (counted or self.pieces[self.at].glued)
        return True

    def _climbed_so_often(self, chunk: Chunk) -> bool:
        """ "1-2-3-4 x2": the rungs twice, and no loads for two."""
        ladder = chunk.joiner is K.DASH and chunk.size == 1 and is_ladder([rung.value for rung in chunk.factors[0]])
        if not ladder or self._kind() is not K.NUMBER:
            return False
        chunk.times = int(self.pieces[self.at + 1].value)
        self.at += 2
        return True

    def _told_once_more(self, chunk: Chunk, sets: Piece) -> bool:
        """ "80x5 x3 sets of 5": the reps once more."""
        chunk.times = int(sets.value)
        if self.pieces[self.at + 3].value != chunk.factors[-1][-1].value:
            self.out.loose.append(self.pieces[self.at + 3])
        self.at += 4
        return False

    def _number_behind(self, ahead: int) -> bool:
        while self._kind(ahead) in GAPS:
            ahead += 1
        kind = self._kind(ahead)
        return kind in BEHIND_A_SIGN or (kind is K.OPEN and self._kind(ahead + 1) is K.NUMBER)

    def _tell_each(self, piece: Piece) -> None:
        self.out.each = True
        self.out.sides = self.out.sides or tells_a_side(piece)
        self.out.of_a_bar = self.out.of_a_bar or tells_a_side(piece, SIDE_OF_A_BAR)


def _is_spaced_time(number: Piece) -> bool:
    """ "4 po 40 s": with a space before its letter it is a time, and no "40s"."""
    return number.role is Role.PLURAL and number.end - number.start > len(number.text) + 1

"""Sides told of a set, "10 left, 9 right", and those that a remark speaks of: "left leg a bit weaker".

side   = NUMBER [ "on" "the" ] "left" | "left" NUMBER | "left" [ "only" ]
remark = "left leg" WORD+          where the other side has no reps of its own
"""

from __future__ import annotations

from engine.reading.chunks.announced_sets import AnnouncedChunks
from engine.reading.chunks.chunks import Chunk
from engine.reading.words.cues import CUES_OF, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role, last_word
from engine.values.sets import Side

BODY_PARTS = frozenset((K.JOINT, K.MUSCLE, K.PAIN, K.SORE))
SIDES = frozenset((K.LEFT, K.RIGHT))
ONE_LEG = frozenset(("leg",))
ENDS = frozenset((None, K.COMMA, K.STOP, K.LINE, K.CLOSE, K.OPEN, K.THEN, K.DASH, K.LEFT, K.RIGHT))
TOLD_OF_A_SIDE = frozenset(
    (K.NUMBER, K.TIMES, K.COUNT, K.AT, K.WITH, K.FOR, K.EACH, K.BOTH, K.ONLY, K.FIRST, K.LAST, K.REPS, K.SETS, K.SLASH,
     K.COLON, K.PLUS, K.AND, K.MISS, K.FAILURE, K.EFFORT, K.DROP, K.WARMUP, K.SAME)
)  # fmt: skip
LINKS, MOST_LINKS = frozenset((K.FILLER, K.WITH, K.FOR, K.AT)), 3
"""What ties a number to its side: "9 on the left", "9 mit links", "9 na lewą"."""
BESIDE_A_COUNT = frozenset((K.NUMBER, K.TIMES, K.COLON, K.REPS))


class SidedChunks(AnnouncedChunks):
    """The part of the walk that says which side a set was of."""

    def sided(self, piece: Piece) -> None:
        if len(piece.text) > 1 and self._of_the_body():
            self.at += 1
            return
        if self._tells_both():
            self.out.each = self.out.sides = True
            self.at += 3
            return
        if self._kind() is K.SLASH and self._kind(2) in SIDES:
            self.out.dangling = True  # "L/R 10/9"
        if self.out.placed_reps:
            self.out.dangling = True  # "3x8, last set 6 left": of that side alone, or so many more
        if self._repeats_both(piece):
            self.out.dangling = True  # "30 kg 10L 10R x3": three of both, or a set of three
        self.side = Side.LEFT if piece.kind is K.LEFT else Side.RIGHT
        last = self._last()
        if not self.side_before and last is not None and self._stands_behind_a_number():
            self._put_on_the_run(last)
        self.at += 1

    def _repeats_both(self, piece: Piece) -> bool:
        """Whether the second of two sides, each behind its reps, has "x3" behind it."""
        other = K.RIGHT if piece.kind is K.LEFT else K.LEFT
        comma = self._kind() is K.COMMA
        often = self._kind(1 + comma) is K.TIMES and self._kind(2 + comma) is K.NUMBER
        if not often or other not in self.kinds[: self.at] or self.kinds[self.at - 1] not in (K.NUMBER, K.REPS):
            return False
        first = self.kinds.index(other)
        counted = self.pieces[self.at - 1].role in (Role.BARE, Role.REPS)
        behind = first > 0 and self.kinds[first - 1] in (K.NUMBER, K.REPS)
        return counted and behind and self.kinds[first + 1] is not K.TIMES

    def _stands_behind_a_number(self) -> bool:
        """ "30 left", "9 on the left", and "30 kg each hand left", where the hand is only what holds the load."""
        before = self.at - 1
        if self.kinds[before] is K.EACH and "handword" in CUES_OF[self.pieces[before].text.split()[-1]]:
            return self.pieces[before - 1].role is Role.LOAD
        least = before - MOST_LINKS
        while before > least and self.kinds[before] in LINKS:
            before -= 1
        return before >= 0 and self.kinds[before] in (K.NUMBER, K.REPS)

    def _put_on_the_run(self, last: Chunk) -> None:
        """ "24x10 10 8 left, 10 9 right": behind reps that nothing parts, of all of them; "30s 30s left" is asked."""
        last.side = self.side
        other = K.RIGHT if self.side is Side.LEFT else K.LEFT
        loaded = last.size == 1 and bool(last.factors[0]) and last.factors[0][-1].role is Role.LOAD
        if last.at and last.size == 1:
            self._put_on_those_at_its_load(last)
            return
        for chunk in reversed(self.out.found[:-1] if not loaded else ()):
            alone = [len(factor) for factor in chunk.factors[:1]] == [1]  # a set missed may have no number at all
            if last.size != 1 or last.before is not None or chunk.side is not None or not alone:
                break
            last = chunk
            if chunk.size == 1 and chunk.factors[0][0].role is Role.LOAD:
                break
            chunk.side = self.side
            self.out.dangling = self.out.dangling or other not in self.kinds

    def _put_on_those_at_its_load(self, last: Chunk) -> None:
        """ "9, 8, 7 at 20 kg left"."""
        for chunk in reversed(self.out.found[:-1]):
            listed = chunk.size == 1 and len(chunk.factors[0]) == 1 and not chunk.at and chunk.side is None
            if not listed or last.before is not K.COMMA or chunk.factors[0][0].role is not Role.BARE:
                return
            chunk.side, last = self.side, chunk

    def _tells_both(self) -> bool:
        """ "3x30s L/R": each side."""
        other = K.RIGHT if self.pieces[self.at].kind is K.LEFT else K.LEFT
        ends = self._kind(3) not in (K.NUMBER, K.TIMES, K.COLON, K.SLASH)
        return (
            self._kind() in (K.SLASH, K.AND, K.PLUS) and self._kind(2) is other and self._kind(-1) is K.NUMBER and ends
        )

    def _counts_a_leg(self, piece: Piece) -> bool:
        """ "2x12 10 each leg": reps of a leg, behind two of twelve kilos, or the load of sets and reps."""
        found = self.out.found
        alone = len(found) == 2 and found[0].size == 2 and found[1].size == 1 and not found[1].at
        number = found[1].factors[0][-1] if alone else None
        bare = number is not None and number is self.pieces[self.at - 1] and number.role is Role.BARE
        small = bare and number is not None and number.value <= MOST_LOADED_REPS
        return small and is_cued(last_word(piece), ONE_LEG)

    def _of_the_body(self) -> bool:
        """ "right hip pinching": a side of the body that is no side of a set."""
        if self._kind() in (K.PAIN, K.SORE) and self._other_side_counts():
            return False  # "8 left tight, 8 right fine"
        if self._kind() in BODY_PARTS or (self._kind() is K.PLAIN and self._kind(2) is not K.NUMBER):
            return True
        return self._words_behind() and not self._other_side_counts()

    def _words_behind(self) -> bool:
        """ "3x12 45 left leg a bit weaker": words and nothing of a set, up to the end of the clause."""
        behind = self.at + 1
        while self.kinds[behind] not in ENDS:
            if self.kinds[behind] in TOLD_OF_A_SIDE:
                return False
            behind += 1
        return behind > self.at + 1

    def _other_side_counts(self) -> bool:
        """ "10 left arm easy, 9 right arm hard": the other side has reps of its own."""
        other = K.RIGHT if self.pieces[self.at].kind is K.LEFT else K.LEFT
        places = [at for at, kind in enumerate(self.kinds) if kind is other]
        return any(not BESIDE_A_COUNT.isdisjoint((self.kinds[at - 1], self.kinds[at + 1])) for at in places)

    def _sides_stand_before(self) -> bool:
        """ "L 10 R 9" against "10 L 9 R": by what stands behind the last side."""
        sides = [at for at, kind in enumerate(self.kinds) if kind is K.LEFT or kind is K.RIGHT]
        last = max([at for at in sides if self.kinds[at + 1] not in BODY_PARTS] or sides)
        behind = self.kinds[last + 1 : last + 4]
        repeated = behind[:1] == [K.TIMES] or behind[:2] == [K.COMMA, K.TIMES]
        if repeated and self.kinds[sides[0] + 1] is not K.TIMES:
            return False  # "30m L, 30m R, x2"
        if behind == [K.COMMA, K.SETS, K.NUMBER] and self.kinds[last - 1] in (K.NUMBER, K.REPS):
            return False  # "2x8 30 left, set 1 rir 2"
        return K.NUMBER in behind

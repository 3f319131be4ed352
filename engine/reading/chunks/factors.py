"""One factor: a number, or several that stand for one, as a list, a range or the contents of brackets.

factor  = NUMBER ( JOINER NUMBER )* | NUMBER "to" NUMBER | bracket | BAR | BODY     60x8,8,7; 3x6-8; "6 to 8"
bracket = "(" NUMBER ( [ "," | "/" | "-" ] NUMBER )* [ "@" NUMBER | "x" NUMBER ] ")"     4 x (6 @ 70); 3 x (50x9)
A joiner touches the numbers on both its sides.
"""

from __future__ import annotations

from engine.reading.chunks.chunks import JOINERS, Chunk
from engine.reading.chunks.times import TimesChunks
from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role

SPANS = (Role.BARE, Role.REPS, Role.SECONDS, Role.PLURAL)


class FactorChunks(TimesChunks):
    """The part of the walk that gathers the numbers of one factor."""

    def factor(self, chunk: Chunk | None) -> tuple[Piece, ...]:
        if self.kinds[self.at] is K.OPEN:
            return self._bracketed(chunk)
        first = self.pieces[self.at]
        self.at += 1
        if first.kind is K.BAR:
            return (first._replace(kind=K.NUMBER, role=Role.BAR),)
        if first.kind is K.BODY:
            return (first._replace(kind=K.NUMBER, role=Role.BODY),)
        numbers = [first]
        self.joiner = None
        while self._joined_number(numbers, chunk):
            numbers.append(self.pieces[self.at + 1])
            sign = self.pieces[self.at].kind
            self.joiner = sign if sign in JOINERS else K.DASH
            if chunk is not None:
                chunk.joiner = self.joiner
            self.at += 2
        return tuple(numbers)

    def _joined_number(self, numbers: list[Piece], chunk: Chunk | None) -> bool:
        sign = self.kinds[self.at]
        if sign is K.FILLER or sign is K.NOT_DATE:
            return len(numbers) == 1 and self._spans_to(numbers[0])
        if sign not in JOINERS or self._kind(1) is not K.NUMBER:
            return False
        if not self.pieces[self.at].glued or not self.pieces[self.at + 1].glued:
            return False
        if sign is K.COMMA:
            heavier = self.pieces[self.at + 1].value > MOST_LOADED_REPS >= numbers[-1].value  # "3x5,100"
            return chunk is not None and self._kind(2) is not K.TIMES and not heavier
        if sign is K.SLASH and chunk is not None and len(numbers) == 1 and self._kind(2) is K.TIMES:
            return not self.pieces[self.at + 2].glued  # "40x15/30x10": the next set
        return self.pieces[self.at + 1].role is not Role.CHANGE

    def _spans_to(self, first: Piece) -> bool:
        """ "6 to 8": a range in words."""
        last = self.pieces[self.at + 1] if self._kind(1) is K.NUMBER else None
        if last is None or "upto" not in CUES_OF[self.pieces[self.at].text] or first.role is not Role.BARE:
            return False
        few = last.value <= MOST_LOADED_REPS or last.role in (Role.SECONDS, Role.PLURAL)  # "60 to 80 x5" are two loads
        return last.role in SPANS and first.value < last.value and few

    def _bracketed(self, chunk: Chunk | None) -> tuple[Piece, ...]:
        """ "(70,75,80)" as one factor."""
        numbers: list[Piece] = []
        self.at += 1
        while self._kind(0) in (K.NUMBER, K.COMMA, K.SLASH, K.DASH):
            if self._kind(0) is K.NUMBER:
                numbers.append(self.pieces[self.at])
            self.at += 1
        if self._kind(0) is K.AT and numbers and chunk is not None and self._kind(1) is K.NUMBER:
            # "4 x (6 @ 70)": sets in front of a whole set
            chunk.at, chunk.at_sign = (self.pieces[self.at + 1],), True
            self.at += 2
        if self._kind(0) is K.TIMES and chunk is not None and self._kind(1) is K.NUMBER:
            if chunk.factors[0]:
                return self._bracketed_pair(chunk, numbers)
            self.out.dangling = True  # "x (2x5)": how often, and at what load?
        if self._kind(0) is K.CLOSE:
            self.at += 1
        return tuple(numbers)

    def _bracketed_pair(self, chunk: Chunk, numbers: list[Piece]) -> tuple[Piece, ...]:
        """ "3 x (50x9)": the number in front multiplies."""
        chunk.times = int(chunk.factors[0][0].value)
        chunk.factors[0] = tuple(numbers)
        second = self.pieces[self.at + 1]
        self.out.dangling = self.out.dangling or self._kind(2) is not K.CLOSE  # "3 x (200x10, 150x8)"
        self.at += 2 + (self._kind(2) is K.CLOSE)
        return (second,)

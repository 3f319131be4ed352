"""Several of the sets pointed at by how many they are: "first two sets 80x6, last two 75x8", "first two easy".

several = ( "first" | "last" ) NUMBER [ "sets" ] ( pair | feel )      a pair is done so often; a feel is a remark
        | "first" NUMBER [ "sets" ] "warm-ups"                        marks as many sets, each told on its own
"""

from __future__ import annotations

from engine.reading.chunks.choices import MOST_SETS
from engine.reading.chunks.chunks import Chunk, load_of_one_set
from engine.reading.chunks.numbers import SAID_OF_A_SET, NumberChunks
from engine.reading.chunks.passed_over import COMPARED
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Role
from engine.values.sets import SetKind

BEHIND_A_PLACE = frozenset((K.SETS, K.COLON, K.FILLER, K.WITH, K.AT))
REMARK_ENDS = frozenset((None, K.COMMA, K.STOP, K.CLOSE, K.LINE))
FELT_OF_SEVERAL = frozenset((K.NOTE, K.PLAIN))
ENDS_OF_A_FEEL = REMARK_ENDS | {K.LAST, K.THEN, K.DASH}


class SeveralChunks(NumberChunks):
    """The part of the walk that reads what is told of several of the sets."""

    def _several_ahead(self) -> bool:
        """ "first two sets 80x6, last two 75x8": so many sets of the pair that stands behind."""
        count, at = self.pieces[self.at + 1] if self._kind() is K.NUMBER else None, self.at + 2
        while self.kinds[at] in BEHIND_A_PLACE:
            at += 1
        if count is None or count.role not in (Role.BARE, Role.SETS) or not 1 < count.value <= MOST_SETS:
            return False
        paired = self.kinds[at] is K.NUMBER and self.kinds[at + 1] is K.TIMES and self.kinds[at + 2] is K.NUMBER
        if not paired or self.pieces[at].value <= MOST_SETS or self.kinds[at + 3] is K.TIMES:
            return False
        self.at = at
        chunk = Chunk([(self.pieces[at],), (self.pieces[at + 2],)], before=self.separator)
        chunk.times = int(count.value)
        self._place(chunk)
        self.at += 3
        return True

    def _warmed_up_with_several(self) -> bool:
        """ "60x5, 80x3, 100x3, the first two were warm-ups", "60x5, 100x3, first one was a warm-up"."""
        counted = self._kind() is K.NUMBER and self.pieces[self.at + 1].role in (Role.BARE, Role.SETS)
        count, at = int(self.pieces[self.at + 1].value) if counted else 1, self.at + 1 + counted
        while self.kinds[at] in BEHIND_A_PLACE:
            at += 1
        if self.kinds[at] is not K.WARMUP or self.kinds[at + 1] not in ENDS_OF_A_FEEL or not self.out.found:
            return False
        first = self.out.found[:count]
        alone = [load_of_one_set(chunk) > MOST_SETS and chunk.times is None for chunk in first]
        self.at = at + 1
        if len(alone) != count or not all(alone):
            self.out.dangling = True  # "5x5 100, first one warm up"
            return True
        for chunk in first:
            chunk.kind = SetKind.WARMUP
        return True

    def _remarks_on_several(self) -> bool:
        """ "3x6 80, first two easy": so many of the sets told, and words of how they felt."""
        count = self.pieces[self.at + 1] if self._kind() is K.NUMBER else None
        if count is None or count.role not in (Role.BARE, Role.SETS) or not 1 < count.value <= self._sets_told():
            return False
        at = self.at + 2
        while self.kinds[at] in BEHIND_A_PLACE or self.kinds[at] in FELT_OF_SEVERAL:
            at += 1
        words = self.pieces[self.at + 2 : at]
        felt = any(piece.kind is K.NOTE or is_cued(piece.text, SAID_OF_A_SET) for piece in words)
        other_loads = any(is_cued(piece.text, COMPARED) for piece in words)  # "the last two a bit lighter"
        return felt and not other_loads and self.kinds[at] in ENDS_OF_A_FEEL

"""Reps that were not done in full or alone, told beside a set: "12 + 4 partials", "70x8 + 2 assisted".

partly = NUMBER PARTIAL | PARTIAL NUMBER      a note to the set in front; of which number must be clear
"""

from __future__ import annotations

from engine.reading.chunks.chunks import Chunk
from engine.reading.chunks.joins import JoinedChunks
from engine.reading.chunks.steps import tells_a_load
from engine.reading.chunks.sums import PARTLY
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role
from engine.reading.words.token_walk import KNOWN

PLAIN_ROLES = frozenset((Role.BARE, Role.LOAD))
SPOTTED = 1
"""What a PARTIAL piece's `told` says of somebody who stood by: the reps may well have been done alone."""


class PartialChunks(JoinedChunks):
    """The part of the walk that reads such reps."""

    def _partials(self, number: Piece) -> bool:
        """ "12 + 4 partials": a note. "3x5 75 with a spotter", "8 8 6 with a spotter": a load, and a set."""
        last = self._last()
        if number.role is Role.LOAD or number.value > MOST_LOADED_REPS:
            return False
        if self._counted_behind(number):
            return True
        alone = self.separator is None and last is not None and last.size > 1 and not last.at
        waiting = alone and not tells_a_load(self.out.found)
        reps = last.factors[-1][-1].value if last is not None and last.factors[-1:] and last.factors[-1] else 0
        few = self.kinds[self.at - 1] is K.PLUS or 2 * number.value < reps  # "70x8 + 2 with a spotter"
        if self.pieces[self.at + 1].told == SPOTTED and not few:
            listed = last is None or last.size == 1 or waiting
            self.out.dangling = self.out.dangling or not listed  # "70x8, 6 with a spotter": some more, or a set
            return False
        meant = KNOWN[self.pieces[self.at + 1].text].meaning
        helped = self.separator is K.COMMA and not few and meant is not None and meant.kind is K.WITH
        # "3x12 8 partials": of eight kilos, or eight of them; "8 8 6, 5 with help": a set, or reps of the last.
        self.out.dangling = self.out.dangling or waiting or helped
        self.out.notes.append(number)
        self.at += 2
        return True

    def _counted_behind(self, number: Piece) -> bool:
        """ "10 10 10 partials 5": the word may go with the number behind it, so no set is lost for it: asked."""
        at = self.at + 2 + (self._kind() is K.FILLER)
        while self.kinds[at] in (K.COLON, K.TIMES, K.REPS):
            at += 1
        listed = self.separator is None and self.kinds[self.at - 1] is K.NUMBER and self.kinds[at] is K.NUMBER
        if not listed or self.kinds[at + 1] is K.TIMES or self.pieces[at].role not in PLAIN_ROLES:
            return False
        self._place(Chunk([(number,)], before=self.separator))
        self.out.notes.append(self.pieces[at])
        self.out.dangling = True
        self.at = at + 1
        return True

    def _helped(self) -> None:
        """ "60x12 + 3 assisted": reps that were not done alone are a note to the set."""
        self.out.notes.append(self.pieces[self.at])
        while self._kind(0) not in PARTLY:
            self.at += 1
        self.at += 1

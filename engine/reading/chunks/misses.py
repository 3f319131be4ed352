"""A miss told of the sets so far: a rep that was not made, a load missed at once, a set that another number points at.

miss = "missed" ( [ "last" | ORDINAL | NUMBER ] [ "rep" ] [ "on" SET ] | LOAD )     "75x2 missed the second"
Told of no rep it is the last set's; a load behind the word is a set of its own: "95x1 then failed 97.5".
Which of several sets fell short must be clear, or it is asked.
"""

from __future__ import annotations

from decimal import Decimal

from engine.reading.chunks.chunks import LAST_REP, Chunk
from engine.reading.chunks.results import PAIRED, ResultChunks
from engine.reading.words.kinds import K
from engine.reading.words.pieces import LAST_OF_THE_REPS, LAST_OF_THE_SETS, MOST_LOADED_REPS, Piece, Role

SECOND = "second"
AHEAD_OF_ITS_SET = frozenset((K.OF, K.WITH, K.AT))


class MissedChunks(ResultChunks):
    """The part of the walk that reads what was missed."""

    def miss(self, piece: Piece) -> None:
        behind_a_plus = self.kinds[self.at - 1] is K.PLUS and self.at > 0
        self.at += 1
        self._skip(frozenset((K.FILLER,)))
        rep = None
        of_a_rep = True
        if self._kind(0) is K.LAST:
            rep, of_a_rep = LAST_REP, self.pieces[self.at].told == LAST_OF_THE_REPS or self._kind(1) is K.REPS
            self._skip(frozenset((K.LAST, K.REPS, K.FILLER)))
            self._missed_set(of_a_rep)
        elif self._kind(0) is K.ORDINAL or (self._kind(0) is K.NUMBER and self._kind(1) is K.REPS):
            ordinal = self.pieces[self.at]
            rep = ordinal.told or int(ordinal.value)
            self.at += 1
            self._skip(frozenset((K.REPS, K.FILLER, K.COUNT)))
            self._of_the_last_set_told()
        elif self._kind(0) is K.SECONDS and self.pieces[self.at].text == SECOND:
            rep = 2  # "75x2 missed the second": the rep, no time
            self.at += 1
            self._skip(frozenset((K.REPS, K.FILLER)))
        if rep is not None:
            self._missed_elsewhere(rep)
        last = self._last()
        apart = last is not None and (last.size > 1 or self.separator is not None)
        if rep is None and apart and self._missed_load():
            return
        if last is not None:
            last.missed, last.missed_rep = True, rep
            last.then_missed = last.then_missed or behind_a_plus
        elif rep is not None:
            self.out.miss_ahead = rep
            self.out.pins = self.out.pins or not of_a_rep  # "missed the last one": of what, and how many were made?
        else:
            self.out.pins = self.out.pins or self._kind(0) is K.NUMBER  # "miss 3x8": of which set?
            self.out.notes.append(piece)

    def _missed_elsewhere(self, rep: int) -> None:
        """A miss told of a set by its number, or of one that stands behind: "missed the 3rd of 5x155"."""
        behind = 1 + (self._kind(1) is K.FILLER)
        if self.out.found and self._kind(0) in AHEAD_OF_ITS_SET and self._kind(behind) is K.NUMBER:
            self.out.dangling = True
        elif self._kind(0) in (K.SETS, K.ORDINAL):
            self._missed_in_the_next(rep)

    def _missed_in_the_next(self, rep: int) -> None:
        """ "95: 3, 3, missed the third on set three": the set behind those told; of any other set it is asked."""
        placed = self.pieces[self.at]
        number = self.pieces[self.at + 1] if placed.kind is K.SETS and self._kind() is K.NUMBER else None
        set_told = placed.told if placed.kind is K.ORDINAL else int(number.value) if number is not None else 0
        reps = [chunk for chunk in self.out.found if chunk.size == 1 and not chunk.at and not chunk.missed]
        bare = [chunk.factors[0][0] for chunk in reps if len(chunk.factors[0]) == 1]
        told = [one for one in bare if one.role in (Role.BARE, Role.REPS) and one.value <= MOST_LOADED_REPS]
        alone = len(bare) == len(self.out.found) and len(bare) - len(told) <= 1
        if not alone or set_told != len(told) + 1 or not told or rep < 1:
            self.out.dangling = True
            return
        self.at += 1 + (number is not None)
        reps_meant = told[-1]._replace(value=Decimal(rep), text=str(rep), role=Role.REPS)
        self._place(Chunk([(reps_meant,)], before=self.separator))

    def _of_the_last_set_told(self) -> None:
        """ "failed the fourth rep on the last set": a miss speaks of the last of the sets before it anyhow."""
        if self._kind(0) is K.SECONDS and self.pieces[self.at].text == SECOND:
            self.out.dangling = True  # "failed the fourth rep on the second set": of that one alone
        if self._kind(0) is not K.LAST or not self.out.found or self.pieces[self.at].told == LAST_OF_THE_REPS:
            return
        self._skip(frozenset((K.LAST, K.SETS, K.FILLER)))
        self.out.dangling = self.out.dangling or self._kind(0) in (K.NUMBER, K.ORDINAL)

    def _missed_set(self, of_a_rep: bool) -> None:
        """ "missed the last set" of several, "missed the last rep on the third set": which reps were made?"""
        of_several = (self._group_told() or len(self.out.found) > 2) and not of_a_rep
        named = self._kind(-1) is K.SETS or _names_a_set(self.pieces[self.at - 1])
        placed = self._kind(0) is K.ORDINAL or self._kind(0) is K.NUMBER
        self.out.dangling = self.out.dangling or (of_several and named) or placed

    def _missed_load(self) -> bool:
        """ "95x1 then failed 97.5": a load behind the word, missed at once."""
        number = self.pieces[self.at] if self.at < len(self.pieces) else None
        if number is None or number.kind is not K.NUMBER or self._kind(1) in PAIRED:
            return False
        if number.role is not Role.LOAD and not (number.role is Role.BARE and number.value > MOST_LOADED_REPS):
            return False
        self.at += 1
        chunk = Chunk([(number,)], before=self.separator)
        self._place(chunk)
        chunk.missed = True
        return True


def _names_a_set(piece: Piece) -> bool:
    """ "the last set", which is one piece."""
    return piece.kind is K.LAST and piece.told == LAST_OF_THE_SETS

"""Shares of a load or of a maximum: "-20% 3x5" and "90% x3" behind a set, "bench 3x5 80%".

share = NUMBER "%" | ( "+" | "-" ) NUMBER "%"      a per cent is no kilogram
Of sets behind it that have no load of their own it tells the load, worked out of the one told last, and that is asked:
it may be of the maximum as well. Of a maximum that is not known nothing can be worked out.
"""

from __future__ import annotations

from decimal import Decimal

from engine.reading.chunks.sides import SidedChunks
from engine.reading.chunks.steps import loads_told, tells_a_load
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, NOTHING, Piece, Role

PERCENT = "%"
LEAST_SHARE = 40
"""Per cent; less than this is no share of a maximum that anyone trains at. Common practice, no source."""
HUNDRED = Decimal(100)
CLAUSE_ENDS = frozenset((K.COMMA, K.STOP, K.LINE, K.NUMBER, K.OPEN, K.DASH, K.THEN))
LEADING_ON = frozenset((K.FOR, K.TIMES, K.OF, K.FILLER, K.WITH, K.AT, K.COLON))
LINKING = frozenset((K.FOR, K.TIMES))


class ShareChunks(SidedChunks):
    """The part of the walk that reads shares."""

    shared: bool = False
    whole: Decimal = NOTHING
    """The load that was told last in figures, of which the shares are."""
    part: Decimal = NOTHING

    def takes_share(self, piece: Piece) -> bool:
        """Notes what a share leaves open; whether it was put in as the load of the sets behind it."""
        if self._of_something_else():
            return False
        self.shared = True
        if not self._sets_behind() or not tells_a_load(self.out.found):
            unknown = piece.value < LEAST_SHARE or self._of_a_maximum_told() or self._kind() in LINKING
            self.out.pins = self.out.pins or unknown
            return False
        self.out.dangling = True
        last = loads_told(self.out.found)[-1]
        self.whole = last if last != self.part else self.whole
        of_it = HUNDRED + piece.value if piece.value < LEAST_SHARE else piece.value
        self.part = self.whole * of_it / HUNDRED
        load = piece._replace(kind=K.NUMBER, value=self.part, role=Role.LOAD, text=PERCENT)
        self.pieces = [*self.pieces[: self.at], load, *self.pieces[self.at + 1 :]]
        self.kinds[self.at] = K.NUMBER
        return True

    def _of_a_maximum_told(self) -> bool:
        """ "bench 80% 3x5 (100 max)": the load is not the one that was told."""
        pairs = zip(self.kinds, self.kinds[1:], strict=False)
        return K.MAX in self.kinds and (K.NUMBER, K.MAX) in list(pairs)

    def _sets_behind(self) -> bool:
        """Whether sets with no load of their own stand behind it, and nothing ties it to those ahead."""
        if not self.out.found or self._kind(-1) is K.NUMBER:
            return False
        at = self.at + 1
        while self.kinds[at] in LEADING_ON:
            at += 1
        number = self.pieces[at] if self.kinds[at] is K.NUMBER else None
        if number is None or number.role not in (Role.BARE, Role.SETS, Role.REPS):
            return False
        return number.value <= MOST_LOADED_REPS

    def _of_something_else(self) -> bool:
        """ "phone at 4%": whose share it is stands before it, in the same clause."""
        at = self.at - 1
        while at >= 0 and self.pieces[at].kind not in CLAUSE_ENDS:
            if self.pieces[at].kind in (K.PLAIN, K.UNRELATED):
                return True
            at -= 1
        return False

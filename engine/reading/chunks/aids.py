"""What a set was done with: plates told by their number, help that takes weight off, a band."""

from __future__ import annotations

from decimal import Decimal

from engine.reading.chunks.brackets import BracketedChunks
from engine.reading.chunks.chunks import Chunk
from engine.reading.chunks.sums import PLATES
from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role
from engine.reading.words.token_walk import KNOWN

PARTS_OF_A_LIST = frozenset((K.COMMA, K.LINE, K.STOP))
REACH_OF_PLATES = 5


BETWEEN = frozenset((K.FILLER, K.PLAIN, K.NOTE, K.COMMA, K.LINE, K.THEN, K.STOP))
MOST_PLATES = 12
MOST_IN_ALL = 40
"""More plates than this are on no machine. Common practice, no source."""
BEHIND_PLATES = frozenset((None, K.TIMES, K.FOR, K.COMMA, K.LINE, K.STOP, K.CLOSE, K.NUMBER))
COUNTS_REPS = frozenset((Role.BARE, Role.REPS, Role.SETS))
HEADING_SETS = frozenset((K.COLON, K.FILLER, K.FOR))
PAIR = 2
"""On one side of a bar. Common practice, no source."""


class AidedChunks(BracketedChunks):
    """The part of the walk that reads plates, help and bands."""

    def help_told(self, piece: Piece) -> None:
        """ "15kg off", "with 10 assist"; and not "finished off with dips"."""
        off = piece.text == "off" and self._kind(-1) is K.NUMBER
        if off and self.pieces[self.at - 1].role in (Role.SECONDS, Role.PLURAL):
            self.out.dangling = True  # "60s on 30s off"
        helps = piece.text != "off" or off  # and not "form was off"
        self.out.assisted = self.out.assisted or helps
        self.out.dangling = self.out.dangling or (helps and self._adds_a_load())
        last = self._last()
        if last is not None and self._is_help_ahead_of_reps(last):
            last.factors[0] = (last.factors[0][0]._replace(role=Role.CHANGE),)
        elif helps:
            self._aid()
        self.at += 1

    def _adds_a_load(self) -> bool:
        """ "+20 5x5 help from my brother": weight was added, and none can have been taken off."""
        return any(number.text.startswith("+") for chunk in self.out.found for part in chunk.factors for number in part)

    def band_told(self, piece: Piece) -> None:
        """ "with the red band"."""
        self.out.band = True
        self._aid()
        self.at += 1

    def _aid(self) -> None:
        """Which sets the help or the band is of: those that the word heads, or the group that it is behind."""
        last, ahead = self._last(), 1 + (self._kind() in HEADING_SETS)
        if last is None or self.out.unaided or self._heads_with_a_load(last):
            return
        if self._kind(ahead) is K.NUMBER and self.pieces[self.at + ahead].role in COUNTS_REPS:
            self.out.unaided = len(self.out.found)
            self.out.dangling = self.out.dangling or self.separator is None  # "8 7 6 band 5"
        elif self._helps_the_last() or self._is_of_the_last_group(last):
            self.out.unaided = len(self.out.found) - 1
            self.out.dangling = self.out.dangling or self._helps_the_last()

    def _heads_with_a_load(self, last: Chunk) -> bool:
        """ "20kg assist 10, 9": what stands ahead is how much help it was, and no set."""
        number = last.factors[0][0] if last.size == 1 and last.factors[0] else None
        alone = number is not None and number.start == self.pieces[self.at - 1].start and not last.at
        return alone and number is not None and (number.role is not Role.BARE or len(self.out.found) == 1)

    def _is_of_the_last_group(self, last: Chunk) -> bool:
        """ "3x8, 3x5 with a band": behind sets that were counted together and parted from those before them."""
        counted = last.size == PAIR and all(len(factor) == 1 for factor in last.factors)
        return counted and len(self.out.found) > 1 and last.before is not None

    def _helps_the_last(self) -> bool:
        """ "8 and 7, then 4 with the band", "8, 3 assisted": help that only the last set may have had."""
        before, last = self.out.found[:-1], self._last()
        told = [number for chunk in self.out.found for factor in chunk.factors for number in factor]
        bare = all(number.role is Role.BARE for number in told) and not any(chunk.at for chunk in self.out.found)
        if last is None or not before or not bare or self.kinds[self.at - 1] in PARTS_OF_A_LIST:
            return False
        if self.depth and 0 < self.opened < len(self.out.found):
            return True  # "8 8 (8 assisted)": one more set, or what some of those before it were
        listed = last.before is K.COMMA and last.size > 0 and before[-1].size > 0  # "60, another with the band"
        few = listed and last.factors[-1][-1].value * 2 <= before[-1].factors[-1][-1].value
        return last.before in (K.THEN, K.AND) or few

    def _is_help_ahead_of_reps(self, last: Chunk) -> bool:
        """ "25 assist 10, 9": the number before the word is the help, those behind it are reps."""
        alone = last.size == 1 and len(last.factors[0]) == 1 and not last.at
        if not alone or last.factors[0][0] is not self.pieces[self.at - 1] or self._kind() is None:
            return False
        at = self.at + 1 + (self._kind() in (K.TIMES, K.FOR, K.COLON))
        following = self.pieces[at] if at < len(self.pieces) else None
        bare = following is not None and following.kind is K.NUMBER and following.role is Role.BARE
        return following is not None and bare and following.value <= last.factors[0][0].value

    pins_told: int = 0

    def pin(self, piece: Piece) -> None:
        """ "pin 5": a place in the stack; beside a load that was told, a setting like any other."""
        self.pins_told += 1
        self.at += 1

    def _adds_to_plates(self) -> bool:
        """ "2 plates + 10 x3", "a plate and a 5": on each side, or in all?"""
        ahead = 2 + (self._kind(2) is K.FILLER)
        return self._kind() in (K.PLUS, K.AND) and self._kind(ahead) is K.NUMBER and self._kind(ahead + 1) not in PLATES

    def plate(self, piece: Piece) -> None:
        """ "2 plates": the number before, or one, in plates a side."""
        last = self._last()
        if self._hangs_on_the_set_before(piece, last):
            return
        if self._is_no_load(piece, last):
            self.out.notes.append(piece)
            self.at += 1
            return
        self.out.plates = True
        self.out.dangling = self.out.dangling or self._adds_to_plates()
        if last is None and self._kind() in (K.FOR, K.TIMES, K.NUMBER):
            one = piece._replace(
                kind=K.NUMBER, value=Decimal(1), role=Role.LOAD, text="plates"
            )  # "a plate a side for 10"
            self._place(Chunk([(one,)], before=self.separator))
            last = self._last()
        pair = last is not None and last.size > 1 and last.factors[-1][-1:] == (self.pieces[self.at - 1],)
        self.out.dangling = self.out.dangling or last is None or pair  # "a plate and a half", "2x20kg plates x 5"
        if last is not None and last.size == 1 and len(last.factors[0]) == 1:
            number = last.factors[0][0]
            if number.unit is not None:  # "with a 10kg plate"
                self.out.plates = False
                self.at += 1
                return
            last.factors[0] = (number._replace(role=Role.LOAD, text="plates", unit=None),)
            while self._kind() is K.FILLER and K.FOR in self.kinds[self.at : self.at + REACH_OF_PLATES]:
                self.at += 1
            if self._kind() is K.TIMES or self._kind() is K.FOR:
                self.at += 1
                self.out.found.pop()
                self._rest_of_plates(last)
                return
        self.at += 1

    def _is_no_load(self, piece: Piece, last: Chunk | None) -> bool:
        """ "4x5 85, misread the plates", "85 plates were cold"; "dips 3x8 with a plate" may tell one, and is asked."""
        number = self.pieces[self.at - 1] if self.at else None
        apart = piece.kind is K.PLATE and last is not None and (number is None or number.kind in BETWEEN)
        meant = KNOWN[number.text].meaning if apart and number is not None else None
        self.out.dangling = self.out.dangling or (meant is not None and meant.kind is K.WITH)
        return apart or (number is not None and self._are_spoken_of(piece, number))

    def _are_spoken_of(self, piece: Piece, number: Piece) -> bool:
        """ "85 plates were cold": too many, and words behind them; "20 plates a side" tells what was lifted."""
        many = number.role is Role.BARE and number.value > MOST_PLATES
        told = piece.kind is K.SIDE_PLATES or (number.value <= MOST_IN_ALL and self._kind() in BEHIND_PLATES)
        return many and not told

    def _hangs_on_the_set_before(self, piece: Piece, last: Chunk | None) -> bool:
        """ "3x5 with two plates", "3x5 a plate a side": what the sets in front were done with."""
        if last is None or not self.at:
            return False
        if last.at and last.at[-1] is self.pieces[self.at - 1] and last.at[-1].unit is not None:
            self.at += 1  # "60 s with a 20kg plate"
            return True
        if last.size < PAIR:
            return False
        before, load = self.pieces[self.at - 1], piece._replace(kind=K.NUMBER, role=Role.LOAD, text="plates", unit=None)
        if last.at and last.at[-1] is before and before.role is Role.BARE and before.value <= MOST_PLATES:
            last.at = (*last.at[:-1], load._replace(value=before.value))
        elif piece.kind is K.SIDE_PLATES and not last.at and "an" in CUES_OF[before.text]:
            last.at = (load._replace(value=Decimal(1)),)
        else:
            return False
        self.out.plates = True
        self.out.dangling = self.out.dangling or self._adds_to_plates()
        self.at += 1
        return True

    def _rest_of_plates(self, chunk: Chunk) -> None:
        chunk.spoken_for = True
        self._rest_of_chunk(chunk)

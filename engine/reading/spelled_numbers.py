"""Numbers spelled in several words: "one hundred five", "ochenta y cinco", "one forty".

number = HUNDREDS [ "and" ] BELOW_A_HUNDRED | TENS [ "and" ] ONES     where no other number follows: "sixty eight eight"
       | ( "one" | "two" ) TENS        a hundred or two and the tens, where "for", a unit or an x follows
Where "one forty" is followed by none of these, nobody can say what it counts.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from typing import NamedTuple

from engine.reading.kinds import K
from engine.reading.pieces import Piece
from engine.reading.token_walk import TokenWalk
from engine.reading.tokens import Token

HUNDRED, TEN = 100, 10
JOINED_BY = frozenset(("and", "und", "y", "e", "et", "en", "och"))
BEHIND_A_LOAD = frozenset((K.FOR, K.KG, K.LB))
FEW_HUNDREDS = (1, 2)


class Spelled(NamedTuple):
    """The number, the place behind it, and whether it can be told at all."""

    value: int
    end: int
    is_clear: bool = True


@dataclass(slots=True)
class SpelledNumbers(TokenWalk):
    """The part of the walk that puts number words together."""

    def _spelled_out(self, value: int, end: int) -> Spelled:
        """The whole number that a number word begins; `end` is the place behind that word."""
        second = self._number_word(end)
        if second is None:
            return Spelled(value, end)
        more, behind = second
        if value in FEW_HUNDREDS and TEN <= more < HUNDRED:
            return self._short_hundreds(value, end)
        hundreds = value >= HUNDRED and value % HUNDRED == 0 and 0 < more < HUNDRED
        tens = TEN < value < HUNDRED and value % TEN == 0 and 0 < more < TEN
        if hundreds:
            more, behind = self._with_ones(more, behind)
        if not (hundreds or tens) or self._number_follows(behind):
            return Spelled(value, end)
        return Spelled(value + more, behind)

    def _short_hundreds(self, value: int, end: int) -> Spelled:
        """ "one forty for three", "two twenty five x 3"; "two and forty" is nothing."""
        tens, behind = self._with_ones(*(self._number_word(end) or (0, end)))
        found = self._longest_phrase(behind) if behind < len(self.tokens) else None
        linked = self._times_at(behind) or (found is not None and found[0].kind in BEHIND_A_LOAD)
        joined = self.tokens[end].text in JOINED_BY
        return Spelled(value * HUNDRED + tens, behind, linked and not joined)

    def _with_ones(self, tens: int, behind: int) -> tuple[int, int]:
        ones = self._number_word(behind) if tens >= 2 * TEN and tens % TEN == 0 else None
        if ones is None or not 0 < ones[0] < TEN or self._number_follows(ones[1]):
            return tens, behind
        return tens + ones[0], ones[1]

    def _number_word(self, at: int) -> tuple[int, int] | None:
        """The number word there, past an "and", and the place behind it."""
        at += at < len(self.tokens) and self.tokens[at].text in JOINED_BY
        found = self._longest_phrase(at) if at < len(self.tokens) else None
        if found is None or found[0].kind is not K.NUMBER_WORD:
            return None
        return found[0].value or 0, found[1]

    def _number_follows(self, at: int) -> bool:
        if at >= len(self.tokens) or self.tokens[at].text in JOINED_BY:
            return False
        return self._is_number(at) or self._number_word(at) is not None

    def _spelled(self, value: int, token: Token, end: int) -> Piece:
        return Piece(K.NUMBER, token.start, end, token.glued, token.text, Decimal(value), spelled=True)

"""Numbers spelled in several words: "one hundred five", "ochenta y cinco", "one forty".

number = HUNDREDS [ "and" ] BELOW_A_HUNDRED | TENS [ "and" ] ONES     where no other number follows: "sixty eight eight"
       | ONES "oh" ONES               "one oh five"
       | ( "one" | "two" ) TENS        a hundred or two and the tens, where "for", a unit, an x or reps follow
decimals = "point" DIGIT | "point" ( "two" | "seven" ) "five"     behind the whole number: "forty two point five"
Where "one forty" is followed by none of these, nobody can say what it counts.
"""

from __future__ import annotations

from decimal import Decimal
from typing import NamedTuple

from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece
from engine.reading.words.token_walk import TokenWalk
from engine.reading.words.tokens import Token

HUNDRED, TEN = 100, 10
JOINED_BY = frozenset(("and", "und", "y", "e", "et", "en", "och"))
BEHIND_A_LOAD = frozenset((K.FOR, K.KG, K.LB))
FEW_HUNDREDS = (1, 2)
NO_TENS = frozenset(("notens",))
POINT = frozenset(("decimalpoint",))
QUARTERED, HALF_OF_TEN = (2, 7), 5
"""A quarter and three quarters are the decimals of two digits that plates come to. Common practice, no source."""


class Spelled(NamedTuple):
    """The number, the place behind it, and whether it can be told at all."""

    value: Decimal
    end: int
    is_clear: bool = True


class SpelledNumbers(TokenWalk):
    """The part of the walk that puts number words together."""

    def _spelled_out(self, value: int, end: int) -> Spelled:
        """The number that a number word begins, with its decimals; `end` is the place behind that word."""
        whole = self._whole_number(value, end)
        decimals, behind = self._decimals(whole.end)
        return Spelled(whole.value + decimals, behind, whole.is_clear)

    def _decimals(self, at: int) -> tuple[Decimal, int]:
        """ "point five", "komma fünf", "point two five": what stands behind a whole number, and where it ends."""
        first = self._digit_said(at + 1) if at < len(self.tokens) and is_cued(self.tokens[at].text, POINT) else None
        if first is None:
            return Decimal(0), at
        digit, behind = first
        second = self._digit_said(behind) if digit in QUARTERED else None
        if second is not None and second[0] == HALF_OF_TEN:
            return Decimal(10 * digit + HALF_OF_TEN) / HUNDRED, second[1]
        return Decimal(digit) / TEN, behind

    def _digit_said(self, at: int) -> tuple[int, int] | None:
        found = self._number_word(at)
        return found if found is not None and 0 < found[0] < TEN else None

    def _whole_number(self, value: int, end: int) -> Spelled:
        second = self._number_word(end)
        if second is None:
            ones = self._digit_said(end + 1) if value < TEN and self._says_none(end) else None
            return (
                Spelled(Decimal(value * HUNDRED + ones[0]), ones[1])
                if ones is not None
                else Spelled(Decimal(value), end)
            )
        more, behind = second
        if value in FEW_HUNDREDS and TEN <= more < HUNDRED:
            return self._short_hundreds(value, end)
        hundreds = value >= HUNDRED and value % HUNDRED == 0 and 0 < more < HUNDRED
        tens = value % HUNDRED > TEN and value % TEN == 0 and 0 < more < TEN
        if hundreds:
            more, behind = self._with_ones(more, behind)
        if not (hundreds or tens) or self._number_follows(behind):
            return Spelled(Decimal(value), end)
        return Spelled(Decimal(value + more), behind)

    def _says_none(self, at: int) -> bool:
        """ "one oh five": no tens between the hundreds and the ones."""
        return at < len(self.tokens) and is_cued(self.tokens[at].text, NO_TENS)

    def _short_hundreds(self, value: int, end: int) -> Spelled:
        """ "one forty for three", "two twenty five x 3"; "two and forty" is nothing."""
        tens, behind = self._with_ones(*(self._number_word(end) or (0, end)))
        linking = self._decimals(behind)[1]
        found = self._longest_phrase(linking) if linking < len(self.tokens) else None
        linked = self._times_at(linking) or (found is not None and found[0].kind in BEHIND_A_LOAD)
        linked = linked or self._reps_follow(linking)
        joined = self.tokens[end].text in JOINED_BY
        return Spelled(Decimal(value * HUNDRED + tens), behind, linked and not joined)

    def _reps_follow(self, at: int) -> bool:
        """ "one eighty, twelve reps", "one eighty 12 reps": a number that is told to be of reps."""
        at += at < len(self.tokens) and self.tokens[at].text == ","
        if at >= len(self.tokens):
            return False
        said = self._number_word(at)
        behind = said[1] if said is not None else at + 1 if self._is_number(at) else len(self.tokens)
        found = self._longest_phrase(behind) if behind < len(self.tokens) else None
        return found is not None and found[0].kind is K.REPS

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

    def _spelled(self, value: int | Decimal, token: Token, end: int) -> Piece:
        return Piece(K.NUMBER, token.start, end, token.glued, token.text, Decimal(value), spelled=True)

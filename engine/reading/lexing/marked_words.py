"""Words that hold a number, or stand glued to one: sides and their reps, plates, and marks that nobody can read.

side   = ( "L" | "R" ) digits       where both sides are told so         L10 R9
plates = NUMBER "pps"                                                    leg press 4pps x10
marked = letter digits              in a list of numbers: unreadable     100 5 5 f4
"""

from __future__ import annotations

from collections import Counter
from decimal import Decimal
from itertools import islice

from engine.reading.lexing.suffixes import NumberSuffixes
from engine.reading.words.kinds import K
from engine.reading.words.lexicon import Meaning
from engine.reading.words.pieces import NOTHING, Piece, Role, word_piece
from engine.reading.words.token_shapes import Shape
from engine.reading.words.tokens import Token

SIDES = {"l": K.LEFT, "r": K.RIGHT}
SIDES_TOLD = frozenset((K.LEFT, K.RIGHT))
LAST_DAY = 31
BEHIND_A_LABEL = frozenset((".", ")", ":", "-"))
LONGEST_LINE = 60
"""Pieces; as far ahead of a number its lift is looked for."""
BESIDE_A_MARK = frozenset((K.COMMA, K.OPEN, K.SLASH, K.DASH))


class MarkedWords(NumberSuffixes):
    """The part of the walk over tokens that reads words with a number in them."""

    tells_both_sides: bool | None = None
    """Whether letters for both sides stand anywhere; None: not looked for yet."""
    numbering: Counter[str] | None = None
    """How many numbers each letter is told with, as "s1" and "s2"; None: not counted yet."""

    def _counts_plates(self, meaning: Meaning | None, word: Token) -> bool:
        """ "leg press 4pps": plates behind their number, and no lift in the plural."""
        plates = meaning is not None and meaning.kind is K.SIDE_PLATES
        return plates and bool(self.out) and self.out[-1].kind is K.NUMBER

    def _points_twice(self, at: int, token: Token) -> int:
        """The place behind "85.5.5" where it is no day; 0 where it may be one."""
        if "." not in token.text or not self._sign_at(at, "."):
            return 0
        digits, behind = self._token(at + 1), self._token(at + 2)
        if digits is None or digits.shape is not Shape.NUMBER or not (digits.glued and self.tokens[at].glued):
            return 0
        crossed = behind is not None and behind.text == "x" and behind.glued
        if not crossed and (token.value or NOTHING) <= LAST_DAY:
            return 0
        text = f"{token.text}.{digits.text}"
        self.out.append(Piece(K.NUMBER, token.start, digits.end, token.glued, text, NOTHING, Role.UNREADABLE))
        return at + 2

    def _names_another_lift(self) -> bool:
        """Whether the line has named its lift: letters glued to a number behind it ("leg press 4bp 3x10") are rather a
        slip, or something that the number counts, than the shorthand of another.
        """
        for piece in islice(reversed(self.out), LONGEST_LINE):
            if piece.kind is K.LINE:
                return False
            if piece.kind is K.NAME:
                return True
        return False

    def _unknown_word(self, at: int, token: Token) -> Piece:
        """A word that no list knows; "f4" and "d35x10" in a list of numbers have a mark that cannot be read."""
        word, after = token.text, self.ahead[at + 1]
        if len(word) == 1 and after is not None and after.shape is Shape.NUMBER and after.glued:
            marked = f"{word}{after.text}"
        else:
            if after is not None and after.text in BEHIND_A_LABEL:
                after = self.ahead[at + 2]
            named = after is not None and after.shape is Shape.WORD  # "a2 row 50x10", "a2) row 50x10"
            marked = word if word[1:].isdecimal() and not (named or self._numbers_sets(word)) else ""
        if not marked or not self._stands_in_a_list():
            return word_piece(K.PLAIN if at != self.remark_at else self.remark_as, token, token.end, 0)
        return Piece(K.NUMBER, token.start, token.end, token.glued, marked, NOTHING, Role.UNREADABLE)

    def _stands_in_a_list(self) -> bool:
        """Whether a number stands ahead, and none that a heading counts: "week 3 d1"."""
        ahead = islice((one.kind for one in reversed(self.out) if one.kind not in BESIDE_A_MARK), 2)
        return next(ahead, None) is K.NUMBER and next(ahead, None) is not K.HEADING

    def _numbers_sets(self, word: str) -> bool:
        """ "s1 135x6 s2 145x4": a letter with the numbers of sets, one after the other."""
        if self.numbering is None:
            numbered = {one.text for one in self.tokens if one.text[1:].isdecimal()}
            self.numbering = Counter([text[0] for text in numbered])
        return self.numbering[word[0]] > 1

    def _is_side_with_reps(self, token: Token) -> bool:
        """ "L10 R9": a side and its reps in one word, where both sides are told so."""
        side, reps = SIDES.get(token.text[0]), token.text[1:]
        if side is None or not (reps.isascii() and reps.isdigit()):
            return False
        if self.tells_both_sides is None:
            sides = {SIDES.get(one.text[0]) for one in self.tokens if len(one.text) == 1 or one.text[1:].isdigit()}
            self.tells_both_sides = sides >= SIDES_TOLD
        if not self.tells_both_sides:
            return False
        self.out.append(Piece(side, token.start, token.start + 1, token.glued, token.text[0]))
        self.out.append(Piece(K.NUMBER, token.start + 1, token.end, True, reps, Decimal(reps)))
        return True

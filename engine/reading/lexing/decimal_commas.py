"""Decimal commas: whether "52,5" is one number or two, by what stands around it.

A unit, a link, a sign of weight added, or a size that only a load has says so; in doubt the message is read both ways.
"""

from __future__ import annotations

from collections.abc import Mapping
from decimal import Decimal
from operator import or_

from engine.catalogue.catalogue import Catalogue
from engine.reading.lexing.spelled_times import SpelledTimes
from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.pieces import DECIMAL_ENDINGS, MOST_LOADED_REPS, NOTHING, Piece, kinds_of
from engine.reading.words.token_shapes import Shape
from engine.reading.words.tokens import MONEY, Token
from engine.values.exercise import Loading
from engine.values.ids import ExerciseName

STEP = Decimal("1.25")
"""The smallest step of the usual plates. Common practice, no source."""
SMALL_PLATES = frozenset((("1", "25"), ("2", "5")))
"""What is put on a bar and is told with a comma; nobody does "noch 2,5" as sets of two and five."""
MORE_OF_IT = frozenset((K.ANOTHER, K.AND, K.PLUS, K.EXTRA, K.MORE))
HEAVIER = frozenset(("heavier", "lighter", "heavyword", "lightword"))
GOES_ON = frozenset((",", "/", "x", "-", "+"))
"""Signs behind a number that make it one of a list, or of a set."""
PARTING = frozenset((K.COMMA, K.STOP, K.OPEN, K.DASH, K.LINE))
BEHIND_A_WEIGHT = frozenset((K.FILLER, K.AT, K.WITH, K.TODAY))
AHEAD_OF_A_WEIGHT = (BEHIND_A_WEIGHT - {K.WITH}) | {K.COLON}
ENDS_OF_A_CLAUSE = frozenset((",", ".", ";", "-", "!"))
OF_SETS = frozenset((K.NUMBER, K.NAME, K.TIMES))
MOST_AHEAD = 4
"""Words around the one for the weight. Common practice, no source."""
UNLOADED = frozenset((Loading.BODY, Loading.BAND))


class DecimalCommas(SpelledTimes):
    """The part of the walk over tokens that joins the digits of one number."""

    in_doubt: bool = False
    """The message may be read another way, too: by a comma, or by a number that may count things."""
    comma_in_doubt: bool = False
    remark_at: int = -1
    """The word that begins a remark right behind a number that it would say the unit of."""
    remark_as: K = K.PLAIN

    def __init__(
        self,
        tokens: list[Token],
        catalogue: Catalogue,
        taught: Mapping[str, ExerciseName],
        comma_is_decimal: bool = False,
        words_are_remarks: bool = False,
    ) -> None:
        super().__init__(tokens)
        self.catalogue = catalogue
        self.taught = taught
        self.comma_is_decimal = comma_is_decimal
        self.words_are_remarks = words_are_remarks
        self.out: list[Piece] = []

    def _signs_a_change(self, at: int, token: Token) -> bool:
        """Whether the sign belongs to the number behind it: "+20", "BW+10", "-20 x 8", and not "8+3" or "8 - 10"."""
        after = self._token(at + 1)
        if after is None or after.shape is not Shape.NUMBER:
            return False
        if not after.glued:
            return token.text == "+" and bool(self.out) and (self.out[-1].kind is K.BODY or self._adds_a_load(at))
        if not token.glued or not self.out or (token.text == "+" and self.out[-1].kind is K.LINE):
            return True
        return self.out[-1].kind in (K.BODY, K.AT) or (self.out[-1].kind is K.OPEN and token.text == "+")

    def _adds_a_load(self, at: int) -> bool:
        """ "dips 8 8 7 + 10kg": a load by its unit, which ends what is told; "bw + 15" needs none."""
        unit, behind = self._token(at + 2), self._token(at + 3)
        before = self.out[-1]
        if unit is None or before.kind is not K.NUMBER or before.unit is not None:
            return False
        if behind is not None and behind.text == ",":
            behind = self._token(at + 4)  # "dips 3x8 + 10kg, squat 3x5 100"
        ends = behind is None or (behind.shape is not Shape.NUMBER and behind.text not in GOES_ON)
        return ends and self._unit_of(unit) in (K.KG, K.LB)

    def _with_decimals(self, at: int, token: Token) -> tuple[Decimal, int]:
        value = token.value or NOTHING
        digits = self._token(at + 2)
        if digits is None or not digits.glued or value != int(value):
            return value, at + 1
        if self._is_weighed(at, value):
            return value + Decimal(f"0.{digits.text}"), at + 3
        if digits.text not in DECIMAL_ENDINGS:
            return value, at + 1
        whole = value + Decimal(f"0.{digits.text}")
        if self._comma_joins(at, value, whole):
            return whole, at + 3
        return value, at + 1

    def _is_weighed(self, at: int, value: Decimal) -> bool:
        """ "78,4 kg", "weighed 78,4": tenths of a load or of what she weighs, by the unit right behind them or the word
        in front, whose number is of no set; a list goes on.
        """
        digits, unit = self._token(at + 2), self._token(at + 3)
        if digits is None or not digits.glued or not digits.text.isdecimal():
            return False
        if self._sign_at(at + 3, MONEY) and not self._is_number(at + 4):
            return True  # "12,50€"
        if len(digits.text) > 1:
            return False
        listed = unit is not None and unit.glued and unit.text in GOES_ON
        if self._speaks_of_no_set(value) and not (listed and self._is_number(at + 4)):
            return True
        if self._heads_with_her_weight(value) and self._ends_a_clause(at + 3):
            return True
        if unit is None:
            return False
        listed = bool(self.out) and self.out[-1].kind is K.COMMA and self.out[-1].glued
        return value > MOST_LOADED_REPS and not listed and self._unit_of(unit) in (K.KG, K.LB)

    def _speaks_of_no_set(self, value: Decimal) -> bool:
        """ "slept 7,5", "weighed in at 81,4": the word in front takes a number; what she weighs is above any reps."""
        at = len(self.out) - 1
        while at > 0 and self.out[at].kind in BEHIND_A_WEIGHT:
            at -= 1
        kinds = [piece.kind for piece in self.out[max(0, at - 2) : at + 1]]
        behind_sets = len(kinds) == 3 and kinds[0] is K.NUMBER and kinds[1] in PARTING
        return kinds[-1:] == [K.UNRELATED] or (kinds[-1:] == [K.BODY] and behind_sets and value > MOST_LOADED_REPS)

    def _heads_with_her_weight(self, value: Decimal) -> bool:
        """ "peso 77,2, ...", "my weight today: 77,2": what heads the clause speaks of a weight above any reps."""
        ahead = self.out[-MOST_AHEAD:]
        parted = next((at for at in range(len(ahead) - 1, -1, -1) if ahead[at].kind in PARTING), -1)
        if value <= MOST_LOADED_REPS or (parted < 0 and len(self.out) > MOST_AHEAD):
            return False
        clause = ahead[parted + 1 :]
        if any("scales" in CUES_OF[piece.text] for piece in clause):
            return all(piece.kind not in OF_SETS for piece in clause)
        weighing = [piece.kind is K.BODY or "loadword" in CUES_OF[piece.text] for piece in clause]
        beside = [piece.kind in AHEAD_OF_A_WEIGHT for piece in clause]
        return any(weighing) and all(map(or_, weighing, beside))

    def _ends_a_clause(self, at: int) -> bool:
        """Whether the message, a separator with words behind it, or a day stands there; a list goes on with numbers."""
        token = self._token(at)
        if token is None:
            return bool({K.COMMA, K.STOP, K.LINE} & kinds_of(self.out))  # alone it is told as a request is
        if token.shape is Shape.WORD:
            found = self._longest_phrase(at)
            return found is not None and found[0].kind in BEHIND_A_WEIGHT
        return (token.shape is Shape.LINE or token.text in ENDS_OF_A_CLAUSE) and not self._is_number(at + 1)

    def _comma_joins(self, at: int, value: Decimal, whole: Decimal) -> bool:
        """Whether "52,5" is one number: a unit, a link or a size that only a load has says so; else it is in doubt."""
        after, before = self._token(at + 3), self.out[-1] if self.out else None
        listed = after is not None and after.glued and after.text == "," and self._is_number(at + 4)
        if listed and self.tokens[at + 4].glued:
            return False
        if before is not None and before.kind in (K.AT, K.WITH, K.RPE, K.RIR):
            return True
        if after is not None and (self._is_compared(at + 3) or self._tells_a_step(at, after, whole)):
            return True
        if self._is_added(at, before) and whole % STEP == 0:
            return True
        if after is not None and self._weighs(after, before, whole):
            return True
        if before is not None and before.kind is K.TIMES and value <= MOST_LOADED_REPS:
            return self._doubtful() if self._small_factor() else False
        if before is not None and before.kind is K.COMMA and before.glued and self.tokens[at].glued:
            return False  # "(65,70,75)x2"
        return self._by_size(at, value, whole)

    def _is_compared(self, at: int) -> bool:
        """ "2,5 more than last time": a step of weight; more reps or sets are whole ones."""
        token = self._token(at)
        found = self._longest_phrase(at) if token is not None and token.shape is Shape.WORD else None
        if found is None or found[0].kind not in (K.MORE, K.LAST_TIME):
            return False
        behind = self._token(found[1])
        return behind is None or self._unit_of(behind) not in (K.REPS, K.SETS)

    def _tells_a_step(self, at: int, after: Token, whole: Decimal) -> bool:
        """ "2,5 schwerer", "2,5 lighter", "2,5 plus lourdes"."""
        behind = self._token(at + 4)
        words = (after.text, behind.text if behind is not None else "")
        return whole % STEP == 0 and any(not CUES_OF[word].isdisjoint(HEAVIER) for word in words)

    def _weighs(self, after: Token, before: Piece | None, whole: Decimal) -> bool:
        """ "2,5 kg"; "2,5 more than last time" at the head or behind the name."""
        unit = self._unit_of(after)
        headed = before is None or before.kind is K.NAME
        return unit in (K.KG, K.LB) or (unit is K.MORE and headed and whole % STEP == 0)

    def _by_size(self, at: int, value: Decimal, whole: Decimal) -> bool:
        """By the sizes that loads and reps have."""
        usual = whole % Decimal("2.5") == 0 and value % Decimal("2.5") != 0
        if usual and (value > MOST_LOADED_REPS or self._behind_a_pair() or self._times_at(at + 3)):
            return True
        if whole % STEP == 0 and value % STEP != 0 and self._loads_what_follows(at + 3):
            return True
        if value <= MOST_LOADED_REPS and not usual and not self._times_at(at + 3):
            return False
        return self._doubtful()

    def _is_added(self, at: int, before: Piece | None) -> bool:
        """ "+12,5 5/5/4", "weighted 12,5 3x8": a sign or a word makes the number here a weight added or taken off."""
        if before is not None and before.kind is K.ADDED:
            return True
        if before is not None and before.kind in MORE_OF_IT and self._token(at + 3) is None:
            return self._with_small_plates(at)
        sign = self.tokens[at - 1] if at else None
        return sign is not None and sign.text in "+-" and self._signs_a_change(at - 1, sign)

    def _with_small_plates(self, at: int) -> bool:
        """ "noch 2,5" at the end: what small plates add."""
        digits = self._token(at + 2)
        return digits is not None and (self.tokens[at].text, digits.text) in SMALL_PLATES

    def _loads_what_follows(self, at: int) -> bool:
        """Right behind a loaded lift, "27,5 3x10", "27,5: 10 9 8" and "27,5 10 9 8": reps told with a comma between two
        of them would not go on in another way.
        """
        told = self.out[:-1] if self.out and self.out[-1].kind is K.COLON else self.out
        if not told or told[-1].kind is not K.NAME or self._is_of_the_body(told[-1]):
            return False
        if self._sign_at(at, ":") and self._is_number(at + 1):
            return True
        first, second = self._token(at), self._token(at + 1)
        if first is None or first.glued or first.shape is not Shape.NUMBER or second is None:
            return False
        return second.text in ("x", "/") or (second.shape is Shape.NUMBER and not second.glued)

    def _is_of_the_body(self, name: Piece) -> bool:
        known = [self.catalogue.exercises.get(one) for one in name.names]
        return any(one is None or one.loading in UNLOADED for one in known)

    def _doubtful(self) -> bool:
        self.in_doubt = self.comma_in_doubt = True
        return self.comma_is_decimal

    def _small_factor(self) -> bool:
        return (
            len(self.out) >= 2 and self.out[-2].kind is K.NUMBER and self.out[-2].value <= 10 and not self.out[-2].unit
        )

    def _behind_a_pair(self) -> bool:
        return len(self.out) >= 2 and self.out[-1].kind is K.NUMBER and self.out[-2].kind is K.TIMES

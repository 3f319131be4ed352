"""What stands right behind a number and says what it counts: units, letters, signs, the same load in another unit."""

from __future__ import annotations

from functools import lru_cache

from engine.reading.lexing.decimal_commas import DecimalCommas
from engine.reading.lexing.things_counted import COUNTING_SETS, MAY_COUNT, PEOPLE, SPAN_OF_TIME, Counted, counted_by
from engine.reading.words.cues import CUES_OF, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.lexicon import Meaning
from engine.reading.words.phrasebook import phrasebook, spoken
from engine.reading.words.pieces import (
    LETTERS,
    MOST_LOADED_REPS,
    NOTHING,
    SIXTY,
    SPACED_LETTERS,
    UNIT_ROLES,
    Piece,
    Role,
    number_piece,
)
from engine.reading.words.token_shapes import Shape
from engine.reading.words.token_walk import KNOWN
from engine.reading.words.tokens import MONEY, Token
from engine.values.load import Unit

CROSSWISE = frozenset(("by", "por", "par", "per", "sur"))
"""Signs in words that never say "so many times" at the end."""
MOST_GOES = 20
CELSIUS, HOTTEST = "c", 45
"""How warm a room may be. Common practice, no source."""
WEIGHTS = frozenset((K.KG, K.LB))
COUNTED_WORDS = frozenset((K.NUMBER_WORD, K.COUNT, K.BAR, K.BODY))


class NumberSuffixes(DecimalCommas):
    """The part of the walk over tokens that reads what a number counts."""

    tells_left: bool | None = None
    """Whether a left side is told anywhere; None: not looked for yet."""

    def _with_suffix(self, piece: Piece, at: int, after: Token) -> tuple[Piece, int]:
        if after.shape is Shape.SIGN:
            return self._with_sign_suffix(piece, at, after)
        if after.shape is not Shape.WORD:
            return piece, at
        if (share := self._behind_per_cent(at, after)) > at:
            return piece._replace(role=Role.NOT_A_SET, end=self.tokens[share - 1].end, text="%"), share
        if (after.glued or after.text in SPACED_LETTERS) and after.text in LETTERS and not self._is_right(after):
            return self._with_letter(piece, at, after)
        return self._with_unit_behind(piece, at, after)

    def _with_unit_behind(self, piece: Piece, at: int, after: Token) -> tuple[Piece, int]:
        if after.text == CELSIUS and self._is_heat(piece, at, after):
            return piece._replace(role=Role.NOT_A_SET, end=after.end), at + 1
        kind = self._unit_behind(piece, at, after)
        if kind is None:
            if SPAN in CUES_OF[after.text] and not self._is_told_since(at + 1):
                self._counts_things(piece, at, SPAN_OF_TIME)
            return piece, at
        if kind in MAY_COUNT and not self._counts_things(piece, at, kind):
            return piece, at
        counted = _with_unit(piece, kind, after)
        if kind is K.MINUTES:
            return self._with_seconds(counted, at + 1)
        if kind is K.FAR and is_cued(after.text, HOURS):
            minutes = self._ends_with_minutes(at + 1)
            return counted._replace(end=self.tokens[at + minutes].end), at + 1 + minutes
        return counted, self._behind_second_unit(at + 1)

    def _counts_things(self, piece: Piece, at: int, kind: K) -> bool:
        """Whether the number is taken to count what the word behind it names."""
        if not self.out or self.out[-1].kind not in BEHIND_NUMBERS:
            return True
        if kind in COUNTING_SETS and not self._begins_a_remark(at + 1):
            return True
        counted = counted_by(piece, self.tokens[at].text, kind, self.out, self.catalogue)
        if counted is Counted.EITHER:
            self.in_doubt = True
        if counted is Counted.THINGS or (counted is Counted.EITHER and not self.words_are_remarks):
            return True
        if kind in MAY_COUNT or counted is Counted.EITHER:
            self.remark_at = at
            self.remark_as = K.NOTE if SPAN in CUES_OF[self.tokens[at].text] else K.PLAIN
        return False

    def _is_told_since(self, at: int) -> bool:
        """ "8 8 7 days ago", "8 8 7 week 3": a day or a week, and none that was lived through."""
        behind = self._token(at)
        if behind is None or behind.shape is not Shape.WORD:
            return behind is not None and behind.shape is Shape.NUMBER
        return self._unit_of(behind) in (K.AGO, K.WEEKS_AGO)

    def _begins_a_remark(self, at: int) -> bool:
        """Whether words stand here to the end of the clause, and no number: "felt long", and not "at 60"."""
        after = self._token(at)
        leading = LEADING_ON
        if after is not None and after.shape is Shape.WORD and self._unit_of(after) is K.OF:
            at, after, leading = at + 1, self._token(at + 1), LEADING_ON - {K.REST}  # "lots of breaks"
        if after is None or after.shape is not Shape.WORD or self._unit_of(after) in leading:
            return False
        if KNOWN[after.text].first in self.catalogue.longest:
            return False  # "3 sets squat"
        for token in self.tokens[at : at + LONGEST_REMARK]:
            if token.shape is Shape.LINE or token.text in ENDS_OF_A_TIME:
                return True
            if token.shape is Shape.NUMBER:
                return False
        return True

    def _is_heat(self, piece: Piece, at: int, after: Token) -> bool:
        """ "35c in here" is how warm it is; "40c8", "40c 8" is a slip of the x."""
        return after.glued and piece.value <= HOTTEST and not self._is_number(at + 1)

    def _behind_per_cent(self, at: int, after: Token) -> int:
        """The place behind "percent", "per cent"; `at` where neither stands there."""
        if after.text not in _begins_per_cent():
            return at
        told = phrasebook().cues["percent"]
        if after.text in told:
            return at + 1
        behind = self._token(at + 1)
        return at + 2 if behind is not None and f"{after.text} {behind.text}" in told else at

    def _unit_behind(self, piece: Piece, at: int, after: Token) -> K | None:
        """What the word behind a number says that it counts; None where it says nothing, or belongs to what follows."""
        plain, meaning, begins, _, _ = KNOWN[after.text]
        kind = meaning.kind if meaning is not None else _goes(piece, plain)
        if kind in WEIGHTS:
            longer = self._longer_phrase(plain, at + 1) if begins else None
            return None if longer is not None or self._equals_a_number(at) else kind
        if self._is_of_no_set(piece, kind, at) or (kind is K.OTHERS and is_cued(after.text, PEOPLE)):
            return K.FAR
        if kind is K.BY and after.text not in CROSSWISE and not self._counts_behind(at + 1):
            kind = K.TIMES_WORD  # "80x8 3 mal"
        if kind is None or kind not in UNIT_ROLES or self._is_label(kind) or self._is_label_behind_a_set(kind, at):
            return None
        if begins and (longer := self._longer_phrase(plain, at + 1)) is not None and not _is_set_of(kind, longer[0]):
            return None  # "3 reps in reserve", "5 reps left"
        if self._equals_a_number(at) or self._numbers_a_set(piece, at, after) or self._is_the_second(at, after):
            return None
        if kind is K.TIMES_WORD and self._is_load_times(piece, at):
            return None
        return None if after.text == "с" and (self._counts_behind(at + 1) or self._leads_on(at, after)) else kind

    def _leads_on(self, at: int, after: Token) -> bool:
        """ "60 с паузой": "with", ahead of a word in the case that it wants, and no seconds."""
        behind = self._token(at + 1)
        if behind is not None and behind.text == "+" and not after.glued:
            return self._is_number(at + 2)  # "2х6 с +10"
        if behind is None or behind.shape is not Shape.WORD or after.glued:
            return False
        return spoken(behind.text).endswith(tuple(phrasebook().cues["withends"]))

    def _with_letter(self, piece: Piece, at: int, after: Token) -> tuple[Piece, int]:
        role, unit = LETTERS[after.text]
        if after.text == "k" and at + 1 < len(self.tokens) and self._unit_of(self.tokens[at + 1]) in THOUSANDS:
            return piece._replace(role=Role.NOT_A_SET, end=after.end), at + 1  # "a 5k run", "10k steps"
        clock = self._token(at + 2)
        if after.text == "k" and clock is not None and clock.shape is Shape.CLOCK and self.tokens[at + 1].text == "in":
            return piece._replace(role=Role.NOT_A_SET, end=clock.end), at + 3  # "10k in 58:12"
        if after.text in ("e", "ea") and self._times_at(at + 1):
            role = Role.LOAD
        if after.text == "min":
            return self._with_seconds(piece._replace(value=piece.value * SIXTY, role=role, end=after.end), at + 1)
        return piece._replace(role=role, unit=unit, failure=after.text == "f", end=after.end), at + 1

    def _is_weighed_out(self, at: int) -> bool:
        """ "5 g creatine", "30g of whey"; "10 g, 9 d" are of the left."""
        token = self._token(at)
        if token is None or token.shape is not Shape.WORD or len(token.text) == 1:
            return False
        meaning = KNOWN[token.text].meaning
        return meaning is None or meaning.kind is K.OF or meaning.kind is K.UNRELATED

    def _is_of_no_set(self, piece: Piece, kind: K | None, at: int) -> bool:
        """ "took 1 hr", "5 g creatine": units that are another word elsewhere."""
        text = self.tokens[at].text
        hour = kind is K.UNRELATED and is_cued(text, HOURS) and self._is_an_hour(piece, at + 1)
        return hour or (text == GRAMS and self._is_weighed_out(at + 1))

    def _is_label_behind_a_set(self, kind: K, at: int) -> bool:
        """ "80x8 kcal 2300": the word is of the number behind it."""
        if kind is not K.FAR:
            return False
        of_a_set = bool(self.out) and self.out[-1].kind in (K.TIMES, K.NUMBER)
        return of_a_set and self._is_number(at + 1) and not is_cued(self.tokens[at].text, HOURS)

    def _is_an_hour(self, piece: Piece, at: int) -> bool:
        """ "took 1 hr", "1 hr 20", and not "100x3 hr 150": the heart's rate."""
        number = self._token(at)
        rate = number is not None and number.shape is Shape.NUMBER and (number.value or NOTHING) >= SIXTY
        crossed = bool(self.out) and self.out[-1].kind is K.TIMES
        return piece.value <= MOST_HOURS and not rate and not crossed

    def _ends_with_minutes(self, at: int) -> bool:
        """ "took 1 h 10": minutes, and nothing behind them."""
        number, after = self._token(at), self._token(at + 1)
        minutes = number is not None and number.shape is Shape.NUMBER and (number.value or NOTHING) < SIXTY
        return minutes and (after is None or after.shape is Shape.LINE or after.text in ENDS_OF_A_TIME)

    def _halves(self, at: int, behind: int) -> bool:
        """ "squat 3x5 100 half asleep": the half is of what stands behind it, and not of the number; and "last 2 half"
        tells how some of the reps were.
        """
        after = self._token(behind)
        if behind == at + 1 and len(self.out) > 1 and self.out[-2].kind is K.LAST:
            return True
        if behind > at + 1 or after is None or after.shape is not Shape.WORD:
            return False
        phrase = self._longest_phrase(behind)
        return phrase is None or phrase[0].kind in HALVED

    def _is_the_second(self, at: int, after: Token) -> bool:
        """ "squat 3x5 100 second session today": the word counts a time, and is no unit of the number."""
        behind = self._token(at + 1)
        if behind is None or behind.shape is not Shape.WORD or not is_cued(after.text, SECOND):
            return False
        found = self._longest_phrase(at + 1)
        return (found is not None and found[0].kind in (K.HEADING, K.HALF)) or is_cued(behind.text, TIMES_COUNTED)

    def _numbers_a_set(self, piece: Piece, at: int, after: Token) -> bool:
        """ "3x5 set 2": the word counts nothing, it is numbered."""
        if after.text != "set":
            return False
        numbered = piece.value > 1 and self._is_number(at + 1)
        behind = self._token(at + 2)
        return numbered and (behind is None or self._unit_of(behind) is not K.REPS)  # "2 set 7 reps" counts

    def _is_load_times(self, piece: Piece, at: int) -> bool:
        """ "92.5 times 7": a load and its reps, where "3 times 7" counts sets."""
        return (piece.value > MOST_LOADED_REPS or piece.value % 1 != 0) and self._is_number(at + 1)

    def _counts_behind(self, at: int) -> bool:
        """Whether a number stands there, in figures or in words."""
        token = self._token(at)
        if token is None or token.shape is Shape.NUMBER:
            return token is not None
        found = self._longest_phrase(at) if token.shape is Shape.WORD else None
        return found is not None and found[0].kind in COUNTED_WORDS

    def _equals_a_number(self, at: int) -> bool:
        """ "reps=7 kg=77.5": the unit is the label of the number behind it; "140 kg = 308 lb" tells a load in both."""
        if not self._sign_at(at + 1, "=") or not self._is_number(at + 2):
            return False
        behind = self._token(at + 3)
        twice = behind is not None and {self._unit_of(self.tokens[at]), self._unit_of(behind)} == {K.KG, K.LB}
        return not twice

    def _is_label(self, kind: K | None) -> bool:
        """ "reps 10 sets 3 weight 60": where labels stand in front, the word behind a number is the next label."""
        if kind not in (K.SETS, K.REPS) or not self.out:
            return False
        before = self.out[-2] if self.out[-1].kind in (K.COLON, K.EQUALS) and len(self.out) > 1 else self.out[-1]
        if before.kind is K.SETS and len(self.out) > 1 and self.out[-2].kind is K.ORDINAL:
            return False  # "2nd set 9 reps"
        return before.kind in (K.SETS, K.REPS) or "loadword" in CUES_OF[before.text]

    def _is_right(self, after: Token) -> bool:
        """ "6L 6R": beside an L, the R is a side and not reps."""
        if after.text != "r":
            return False
        if self.tells_left is None:
            words = {token.text for token in self.tokens}
            self.tells_left = "l" in words or ("left" in words and "s" not in words)  # "2s 5r 60, had 4 left"
        return self.tells_left

    def _behind_second_unit(self, at: int) -> int:
        """Passes over the same load in the other unit: 70kg/154lb, 70 kg (154 lb)."""
        sign = self.ahead[at]
        if sign is None or sign.text not in "/(=":
            return at
        number, unit = self._token(at + 1), self._token(at + 2)
        if number is None or number.shape is not Shape.NUMBER or unit is None:
            return at
        if self.out and self._unit_of(self.tokens[at - 1]) not in (K.KG, K.LB):
            return at
        kinds = {self._unit_of(unit), self._unit_of(self.tokens[at - 1])}
        if kinds != {K.KG, K.LB}:
            return at
        return at + 3 + self._sign_at(at + 3, ")")

    def _with_sign_suffix(self, piece: Piece, at: int, after: Token) -> tuple[Piece, int]:
        if after.text == "#" and after.glued:
            return piece._replace(role=Role.LOAD, unit=Unit.LB, end=after.end), at + 1
        if after.text == "%" or (after.text == "°" and after.glued):
            text = after.text if after.text == "%" else f"{piece.text}{after.text}"
            return piece._replace(role=Role.NOT_A_SET, end=after.end, text=text), at + 1
        letter = self._token(at + 1)
        if after.text == MONEY and (letter is None or not letter.glued or letter.text in ENDS_OF_A_TIME):
            return piece._replace(role=Role.NOT_A_SET, end=after.end), at + 1  # "12€ entry"
        if after.text == "'" and after.glued and self._ends_minutes(piece, letter):
            return piece._replace(role=Role.SECONDS, value=piece.value * SIXTY, end=after.end), at + 1
        if after.text == "'" and letter is not None and letter.text == "s" and letter.glued:
            return piece._replace(role=Role.PLURAL, end=letter.end), at + 2
        return piece, at

    def _past_a_price(self, at: int, sign: Token) -> int:
        """ "$15", "€ 12": what something cost; the sign alone says nothing."""
        number = self._token(at + 1)
        if number is None or number.shape is not Shape.NUMBER:
            return at + 1
        price = number_piece(number, number.value or NOTHING)
        self.out.append(price._replace(role=Role.NOT_A_SET, start=sign.start, glued=sign.glued))
        return at + 2

    def _ends_minutes(self, piece: Piece, behind: Token | None) -> bool:
        """ "2' rest", "plank 2'": minutes, and no height."""
        return piece.value <= MOST_MINUTES and (behind is None or not behind.glued or behind.text in ENDS_OF_A_TIME)


SPAN = "span"
BEHIND_NUMBERS = frozenset((K.NUMBER, K.TIMES, K.COMMA, K.SLASH, K.FOR))
LEADING_ON = frozenset((K.OF, K.AT, K.WITH, K.FOR, K.EACH, K.REST, K.NAME, K.BODY, K.REPS, K.SETS, K.FAILURE, K.BAR))
"""What goes on with the sets that a word counts."""
LONGEST_REMARK = 8
HALVED = frozenset((K.FAR, K.FILLER, K.NOTE, K.OF, K.UNRELATED, K.HEADING, K.PAIN, K.SORE, K.JOINT, K.MUSCLE))
"""What a lone half in front of it is a part of."""
SECOND, TIMES_COUNTED = frozenset(("second",)), frozenset(("workout", "day", "week", "span", "notaset"))
GRAMS = "g"
THOUSANDS, HOURS = frozenset((K.UNRELATED, K.FAR)), frozenset(("hours",))
MOST_MINUTES, MOST_HOURS = 60, 3
ENDS_OF_A_TIME = frozenset((",", ";", ")", "/", "+", "\n"))


def _with_unit(piece: Piece, kind: K, after: Token) -> Piece:
    role, unit = UNIT_ROLES[kind]
    value = piece.value * SIXTY if kind is K.MINUTES else piece.value
    return Piece(
        K.NUMBER, piece.start, after.end, piece.glued, piece.text, value, role, unit, (), 0, False, piece.spelled
    )


@lru_cache(maxsize=1)
def _begins_per_cent() -> frozenset[str]:
    """The words that phrases for per cent begin with."""
    return frozenset([phrase.split()[0] for phrase in phrasebook().cues["percent"]])


def _goes(piece: Piece, word: str) -> K | None:
    """ "3 trips", "4 lengths": so many sets; the words alone mean nothing in a set."""
    few = piece.role is Role.BARE and piece.value <= MOST_GOES and piece.value % 1 == 0
    return K.SETS if few and word in phrasebook().cues["goes"] else None


def _is_set_of(kind: K, longer: Meaning) -> bool:
    """ "1 set of 4": a count, where "a set of 4" counts none."""
    return kind is K.SETS and longer.kind is K.FILLER

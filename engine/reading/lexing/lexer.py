"""One walk over the tokens of a message: each becomes a piece, with its unit, its meaning or the exercises it names.

name   = the longest run of words that the catalogue (or this athlete) knows
word   = the longest phrase of the lexicon; anything else is PLAIN
comma  = part of a number where a unit, a link or the size says so ("92,5 kg"); in doubt it is read both ways
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from decimal import Decimal

from engine.reading.lexing.marked_words import MarkedWords
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.lexicon import Meaning, plain_word
from engine.reading.words.pieces import (
    DECIMAL_ENDINGS,
    LAST_ALONE,
    LAST_OF_THE_REPS,
    LAST_OF_THE_SETS,
    LETTERS,
    NO_SUFFIX,
    NOTHING,
    SIGN_KINDS,
    SIXTY,
    UNTOLD,
    Piece,
    Role,
    name_piece,
    number_piece,
    sign_piece,
    word_piece,
)
from engine.reading.words.token_shapes import Shape
from engine.reading.words.token_walk import KNOWN
from engine.reading.words.tokens import HALF, MONEY, Token
from engine.values.ids import ExerciseName


class Lexer(MarkedWords):
    """One walk over the tokens of one message."""

    def run(self) -> list[Piece]:
        """The pieces of the message. What no neighbour changes is made here; all else by the reader of its shape."""
        tokens, out, made = self.tokens, self.out, tuple.__new__
        at, behind = 0, len(tokens)
        while at < behind:
            token = tokens[at]
            shape, text, start, end, glued, value = token
            if shape is Shape.NUMBER and self._stands_alone(at):
                # A tuple joined takes a third less time than one unpacked.
                fields = (K.NUMBER, start, end, glued, text, value or NOTHING) + UNTOLD  # noqa: RUF005
            elif text in SURE_SIGNS and shape is not Shape.WORD and not (glued and self._is_typed_twice(text)):
                fields = (SURE_SIGNS[text], start, end, glued, text, NOTHING) + UNTOLD  # noqa: RUF005
            else:
                at = READERS[shape](self, at, token)
                continue
            out.append(made(Piece, fields))
            at += 1
        return out

    def _is_typed_twice(self, text: str) -> bool:
        """ "3x6@@80"."""
        return text in TYPED_TWICE and bool(self.out) and self.out[-1].text == text

    def clock(self, at: int, token: Token) -> int:
        after = self._token(at + 1)
        if after is not None and is_cued(after.text, HOUR_WORDS) and ":" in token.text:
            value = Decimal(token.text.replace(":", "."))
            self.out.append(Piece(K.NUMBER, token.start, after.end, token.glued, token.text, value, Role.NOT_A_SET))
            return at + 2
        self.out.append(
            Piece(K.NUMBER, token.start, token.end, token.glued, token.text, token.value or Decimal(0), Role.SECONDS)
        )
        return at + 1

    def hours(self, at: int, token: Token) -> int:
        """ "trained 1h10", "18h30": hours hold no set."""
        value = token.value or Decimal(0)
        self.out.append(Piece(K.NUMBER, token.start, token.end, token.glued, token.text, value, Role.NOT_A_SET))
        return at + 1

    def ordinal(self, at: int, token: Token) -> int:
        count = int(token.value or 0)
        self.out.append(Piece(K.ORDINAL, token.start, token.end, token.glued, token.text, told=count))
        return at + 1

    # ---- signs

    def sign(self, at: int, token: Token) -> int:
        text = token.text
        if text in "+-" and self._signs_a_change(at, token):
            return self._change(at, token)
        if token.glued and self._is_typed_twice(text):
            return at + 1
        if text == "?" and (behind := self._for_a_number(at, token)):
            return behind
        if text == MONEY:
            return self._past_a_price(at, token)
        self.out.append(sign_piece(SIGN_KINDS.get(text, K.OTHER_SIGN), token))
        return at + 1

    def _for_a_number(self, at: int, token: Token) -> int:
        """The place behind "?5", or the mark of "3x?" and "?x5": a number that she did not know; 0 for others."""
        before, after = (self.out[-1] if self.out else None), self._token(at + 1)
        digits = after is not None and after.shape is Shape.NUMBER and after.glued
        crossed = after is not None and after.text in CROSSES and after.glued
        times = before is not None and before.kind is K.TIMES and token.glued
        begins = before is not None and before.kind in (K.NAME, K.NUMBER, K.TIMES, K.WITH, K.AT)
        if not (times or (begins and (crossed or (digits and (times or not token.glued))))):
            return 0
        end = at + 1 + digits
        text = "".join([one.text for one in self.tokens[at:end]])
        last = self.tokens[end - 1].end
        self.out.append(Piece(K.NUMBER, token.start, last, token.glued, text, NOTHING, Role.UNREADABLE))
        return end

    def _change(self, at: int, token: Token) -> int:
        end = self.number(at + 1, self.tokens[at + 1])
        read = self.out.pop()
        value = -read.value if token.text == "-" else read.value
        role = read.role if read.text == "%" else Role.CHANGE  # "-20%": no kilograms
        self.out.append(read._replace(role=role, value=value, start=token.start, glued=token.glued))
        return end

    # ---- numbers

    def number(self, at: int, token: Token) -> int:
        after = self.ahead[at + 1]
        if after is None or self._stands_alone(at):
            self.out.append(number_piece(token, token.value or NOTHING))
            return at + 1
        if after.text in BEHIND_A_SPELLED_ONE and token.value == 1 and self._one_as_word(at):
            return self.word(at, token)
        value, at = token.value or NOTHING, at + 1
        if after.glued:
            if after.shape is Shape.WORD and (broken := self._broken(at - 1, after)):
                return broken
            if after.text == ",":
                value, at = self._with_decimals(at - 1, token)
            if behind_it := self._points_twice(at, token) or self._questions_a_digit(at, token, value):
                return behind_it
        piece, behind = number_piece(token, value), self.ahead[at]
        if behind is not None:
            piece, at = self._with_suffix(piece, at, behind)
        self.out.append(piece)
        return at

    def _stands_alone(self, at: int) -> bool:
        """Whether nothing behind the number here is part of it, or says what it counts."""
        after = self.ahead[at + 1]
        if after is None or after.text in NO_SUFFIX:
            return True
        if after.text == ",":
            digits = self.ahead[at + 2]
            return digits is None or (
                digits.text not in DECIMAL_ENDINGS and not self._is_weighed(at, self.tokens[at].value or NOTHING)
            )
        return after.shape is Shape.NUMBER and not after.glued

    def _questions_a_digit(self, at: int, token: Token, value: Decimal) -> int:
        """The place behind "1?5" or "9?.5": a digit that the writer could not read; 0 where none is told."""
        if not self._sign_at(at, "?"):
            return 0
        place = at + 1
        digit = self._token(place)
        if digit is not None and digit.text == "x" and digit.glued and self.tokens[at].glued:  # "8?x5"
            self.out.append(
                Piece(K.NUMBER, token.start, digit.start, token.glued, f"{token.text}?", value, Role.UNREADABLE)
            )
            return place
        if digit is not None and digit.text in DECIMAL_SIGNS and digit.glued:
            place += 1
            digit = self._token(place)
        if digit is None or digit.shape is not Shape.NUMBER or not (digit.glued and self.tokens[at].glued):
            return 0
        text = "".join([token.text, *[one.text for one in self.tokens[at : place + 1]]])
        self.out.append(Piece(K.NUMBER, token.start, digit.end, token.glued, text, value, Role.UNREADABLE))
        return place + 1

    def _broken(self, at: int, letters: Token) -> int:
        """The place behind a number that letters run into ("1e309", "80qq"): whatever it was meant to be, it is no
        number that can be read. 0 where it is whole.
        """
        if letters.text != "e" and KNOWN[letters.text].meaning is not None:
            return 0
        digits = self._token(at + 2)
        runs_on = digits is not None and digits.shape is Shape.NUMBER and digits.glued
        if not (runs_on and letters.text == "e"):
            if len(letters.text) > LONGEST_RUN_ON or letters.text in LETTERS or letters.text in KNOWN_LETTERS:
                return 0
            if KNOWN[letters.text].named in self.catalogue.phrases and not self._names_another_lift():
                return 0
        token, last = self.tokens[at], self.tokens[at + 1 + bool(runs_on)]
        text = f"{token.text}{letters.text}{digits.text if runs_on and digits is not None else ''}"
        self.out.append(
            Piece(K.NUMBER, token.start, last.end, token.glued, text, token.value or Decimal(0), Role.UNREADABLE)
        )
        return at + 2 + bool(runs_on)

    def _one_as_word(self, at: int) -> bool:
        """ "1 arm row" is a name; in "60x9+4+1 leg press", "80 for 1 leg press" the one is a rep."""
        before = self.out[-1] if self.out else None
        listed = before is not None and before.kind is K.COMMA and (self.tokens[at].glued or self._ends_a_list_at(at))
        if before is not None and (listed or before.kind in BEHIND_WHICH_ONE_COUNTS or self._ends_a_list(before)):
            return False
        after = self._token(at + 1 + (self._sign_at(at + 1, "-")))
        return after is not None and after.text in LIMBS

    def _ends_a_list_at(self, at: int) -> bool:
        """ "4, 2, 1, 1 leg press": the one stands behind others parted by commas, and no lift with numbers of its own
        begins with it.
        """
        kinds = [piece.kind for piece in self.out[-4:]]
        listed = len(kinds) > 1 and kinds in (LISTED[-len(kinds) :], LISTED_BEHIND_A_COLON)
        few = listed and self.out[-2].role is Role.BARE and self.out[-2].value <= FEW_REPS
        name = self._longest_name(at, self.tokens[at]) if few else None
        behind = self.ahead[name[1]] if name is not None else None
        return few and (behind is None or (behind.shape is not Shape.NUMBER and behind.text not in ":-"))

    def _ends_a_list(self, before: Piece) -> bool:
        """ "100: 4 3 2 1 leg press": the one is the last of reps that fall."""
        few = before.kind is K.NUMBER and before.role is Role.BARE and before.value <= FEW_REPS
        return few and len(self.out) > 1 and self.out[-2].kind in (K.NUMBER, K.COLON)

    # ---- words

    def word(self, at: int, token: Token) -> int:
        plain, meaning, begins, _, first = KNOWN[token.text]
        named = self.taught or first in self.catalogue.longest
        name = self._longest_name(at, token) if named else None
        longer = self._longer_phrase(plain, at + 1) if begins else None
        meaning, end = longer if longer is not None else (meaning, at + 1)
        if name is not None and (meaning is None or name[1] >= end) and not self._counts_plates(meaning, token):
            owners, end, text = name
            self.out.append(name_piece(token, self.tokens[end - 1].end, text, owners))
            return end
        if meaning is None or at == self.remark_at:
            if not self._is_side_with_reps(token):
                self.out.append(self._unknown_word(at, token))
            return end
        if meaning.kind not in TOLD_BY_NEIGHBOURS:
            self.out.append(word_piece(meaning.kind, token, self.tokens[end - 1].end, meaning.value or 0))
            return end
        piece = self._meant(meaning, at, end)
        if meaning.kind is K.NUMBER_WORD and (whole := self._spelled_out(meaning.value or 0, end)).end > end:
            role = Role.BARE if whole.is_clear else Role.UNREADABLE
            end = whole.end
            piece = self._spelled(whole.value, token, self.tokens[end - 1].end)._replace(role=role)
        if meaning.kind is K.MINUTES and piece.kind is K.NUMBER and not meaning.value:
            piece, end = self._with_seconds(piece, end)  # "a minute ten"
        elif (
            piece.kind is K.NUMBER
            and (piece.spelled or meaning.kind is K.HALF)
            and (after := self._token(end)) is not None
            and not after.glued
        ):
            piece, end = self._with_suffix(piece, end, after)
        self.out.append(piece)
        return end

    def _meant(self, meaning: Meaning, at: int, behind: int) -> Piece:
        value, token, end = meaning.value or 0, self.tokens[at], self.tokens[behind - 1].end
        if meaning.kind is K.NUMBER_WORD:
            if value == 1 and not self._counts_one(behind):
                return Piece(K.FILLER, token.start, end, token.glued, token.text)
            return self._spelled(value, token, end)
        if meaning.kind is K.HALF and self.out and self.out[-1].kind is K.NUMBER and not self._halves(at, behind):
            before = self.out.pop()
            if before.role is Role.SECONDS:  # "a minute and a half", "90.5 s"
                half = SIXTY / 2 if before.value % SIXTY == 0 else HALF
                return before._replace(value=before.value + half, end=end)
            return before._replace(value=before.value + HALF, end=end, text=f"{before.text}½")
        text = token.text
        if meaning.kind is K.MINUTES and (value or self._counts_one_time(text)):
            time = Decimal(value) if value else SIXTY
            return Piece(K.NUMBER, token.start, end, token.glued, text, time, Role.SECONDS, spelled=True)
        if meaning.kind is K.LAST:
            value = self._last_of_what(at, behind)
        kind = meaning.kind
        if kind in WHOLE_PHRASES:
            text = " ".join(plain_word(one.text) for one in self.tokens[at:behind])
            kind = K.PLAIN if kind is K.OTHER_LIFT else kind
        return Piece(kind, token.start, end, token.glued, text, told=value)

    def _last_of_what(self, at: int, behind: int) -> int:
        if any(one.text in ("rep", "reps") for one in self.tokens[at:behind]):
            return LAST_OF_THE_REPS
        if any(self._unit_of(one) is K.SETS for one in self.tokens[at:behind]):
            return LAST_OF_THE_SETS
        return LAST_ALONE if self._unit_of(self.tokens[behind - 1]) is K.LAST else 0

    def _counts_one(self, at: int) -> bool:
        """Whether "one" counts: "one rep", "100 for one", "left one in"; and not "the last one", "that one"."""
        before = self.out[-1].kind if self.out else None
        if before in ONE_BEHIND:
            return True
        after = self._token(at)
        if before is K.ANOTHER and after is not None and after.text in ("for", "at", "with", "of"):
            return False  # "another one for a minute"
        phrase = self._longest_phrase(at) if after is not None and after.shape is Shape.WORD else None
        return after is not None and (after.text in "x@" or (phrase is not None and phrase[0].kind in ONE_AHEAD))

    def _word_run(self, at: int, longest: int) -> list[tuple[str, int]]:
        """The folded words from here on, each with the place behind it; a glued hyphen or an "&" does not end them."""
        run: list[tuple[str, int]] = []
        while at < len(self.tokens) and len(run) < longest:
            token = self.tokens[at]
            if token.shape is Shape.WORD or (not run and token.shape is Shape.NUMBER):
                run.append((KNOWN[token.text].named, at + 1))
            elif token.text == "&" or (token.text == "+" and (token.glued or self._parts_words(at, run))):
                run.append(("and", at + 1))
            elif not (token.text in "-." and token.glued and run and self._glued_word(at + 1)):
                break
            at += 1
        return run

    def _parts_words(self, at: int, ahead: list[tuple[str, int]]) -> bool:
        """ "clean + jerk"; and neither "+ 5 kg" nor a sign that begins a line."""
        behind = self.ahead[at + 1]
        return bool(ahead) and behind is not None and behind.shape is Shape.WORD

    def _longest_name(self, at: int, token: Token) -> tuple[tuple[ExerciseName, ...], int, str] | None:
        phrases, taught = self.catalogue.phrases, self.taught
        _, _, _, word, first = KNOWN[token.text]
        longest = self.catalogue.longest_phrase if taught else self.catalogue.longest[first]
        after = self.ahead[at + 1]
        if not taught and (longest == 1 or after is None or after.shape in ENDS_A_NAME or after.text in "@,:("):
            return (phrases[word], at + 1, word) if word in phrases else None
        found: tuple[tuple[ExerciseName, ...], int, str] | None = None
        phrase = ""
        for word, end in self._word_run(at, longest):
            phrase = f"{phrase} {word}" if phrase else word
            if taught and phrase in taught:
                found = (taught[phrase],), end, phrase
            elif phrase in phrases:
                found = phrases[phrase], end, phrase
        return found if found is None or found[1] == at + 1 else self._without_empty_bar(at, found)

    def _without_empty_bar(
        self, at: int, name: tuple[tuple[ExerciseName, ...], int, str]
    ) -> tuple[tuple[ExerciseName, ...], int, str]:
        """ "supino barra vazia x10": the last word of the name belongs to the empty bar behind it."""
        _, end, phrase = name
        bar = self._longest_phrase(end - 1) if self.tokens[end - 1].shape is Shape.WORD else None
        shorter = phrase.rpartition(" ")[0]
        if bar is None or bar[0].kind is not K.BAR or bar[1] <= end or shorter not in self.catalogue.phrases:
            return name
        return self.catalogue.phrases[shorter], end - 1, shorter


DECIMAL_SIGNS = frozenset(".,")
WHOLE_PHRASES = frozenset((K.EACH, K.VARIANT, K.OTHER_LIFT))
"""Which of them it is matters: "each leg" is not "each hand". A lift that the catalogue does not hold is unknown words.
"""
LISTED = [K.NUMBER, K.COMMA, K.NUMBER, K.COMMA]
LISTED_BEHIND_A_COLON = [K.COLON, K.NUMBER, K.COMMA]
TOLD_BY_NEIGHBOURS = WHOLE_PHRASES | {K.NUMBER_WORD, K.HALF, K.MINUTES, K.LAST}
"""Meanings of a word that the words around it have a say in."""
LIMBS = frozenset(("arm", "leg", "hand"))
BEHIND_A_SPELLED_ONE = LIMBS | {"-"}
TYPED_TWICE = frozenset("@,=/")
SURE_SIGNS = {"\n": K.LINE, **{text: kind for text, kind in SIGN_KINDS.items() if text not in "+-?"}}
"""Signs, and the end of a line, that are the same wherever they stand."""
CROSSES = frozenset(("x", "*"))
ENDS_A_NAME = frozenset((Shape.NUMBER, Shape.LINE))
BEHIND_WHICH_ONE_COUNTS = frozenset((K.TIMES, K.PLUS, K.SLASH, K.DASH, K.FOR, K.AT, K.BY, K.RIR, K.RPE))
FEW_REPS = 5
HOUR_WORDS = frozenset(("hours", "oclock"))
LONGEST_RUN_ON = 3
"""Letters glued to a number that may be a slip of the thumb; a longer word is a word without its space."""
KNOWN_LETTERS = frozenset(("x", "c", "z", "st", "nd", "rd", "th", "l", "a", "b", "d", "p", "h", "w", "pl", "pls"))
ONE_BEHIND = frozenset((K.TIMES, K.PLUS, K.FOR, K.BY, K.LEFT, K.RESERVE_LEFT, K.RIR, K.RPE, K.AT, K.MORE))
ONE_AHEAD = frozenset(
    (
        K.KG,
        K.LB,
        K.SETS,
        K.REPS,
        K.TIMES_WORD,
        K.MINUTES,
        K.SECONDS,
        K.METRES,
        K.RESERVE,
        K.RIR,
        K.RPE,
        K.PLATE,
        K.SIDE_PLATES,
    )
) | {K.MORE, K.PARTIAL, K.ROUNDS, K.FOR, K.AGO, K.WEEKS_AGO, K.EACH}
READERS: Mapping[Shape, Callable[[Lexer, int, Token], int]] = {
    Shape.NUMBER: Lexer.number,
    Shape.WORD: Lexer.word,
    Shape.SIGN: Lexer.sign,
    Shape.CLOCK: Lexer.clock,
    Shape.HOURS: Lexer.hours,
    Shape.ORDINAL: Lexer.ordinal,
}

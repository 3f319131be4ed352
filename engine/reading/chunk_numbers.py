"""Numbers gathered around one "x": factors, lists, brackets, and what joins them."""

from __future__ import annotations

from decimal import Decimal

from engine.reading.chunk_steps import loads_told, tells_a_step
from engine.reading.chunk_sums import AMOUNTS, PARTLY
from engine.reading.chunk_times import PLAIN_ENDS, TimesChunks
from engine.reading.chunks import (
    CARRIED,
    GAPS,
    JOINERS,
    MOST_SETS_BY_REPEAT,
    SIDES_OF_A_BAR,
    Chunk,
    tells_a_side,
)
from engine.reading.earlier_sets import WAS
from engine.reading.kinds import K
from engine.reading.pieces import MOST_LOADED_REPS, Piece, Role

ASKING_FOR_MORE = frozenset((K.MORE, K.SAME))
JOINING = frozenset((K.TIMES, K.BY, K.OF, K.FOR, K.EACH))
COUNTED_BY_OF = (Role.BARE, Role.REPS, Role.SECONDS, Role.METRES)
PLAIN_ROLES = frozenset((Role.BARE, Role.LOAD))
SAYING = frozenset((K.FILLER, K.NOTE))
SAID_OF_A_SET = WAS | frozenset(("were", "felt", "feels", "moved", "went"))
REMARKED = frozenset((K.FILLER, K.NOTE, K.PLAIN, K.DENY))
REMARK_ENDS = frozenset((None, K.LINE, K.STOP, K.COMMA, K.CLOSE))
BEHIND_A_SIGN = frozenset((K.NUMBER, K.BAR, K.BODY, K.MAX, K.FAILURE))
OPEN_ENDED = frozenset((K.MAX, K.FAILURE))
"""Words for a set without a count of its reps."""
TWO_MEANINGS = frozenset(("once",))
"""Eleven in Spanish, one time in English: behind a number nobody can say which."""
LIKE = frozenset(("like", "wie", "como", "comme", "come", "als", "jak", "как", "som"))
OR = frozenset(("or", "oder", "o", "ou", "lub", "albo", "или", "eller", "od"))
SPANNED = frozenset(("to", "bis", "tot", "до"))
SPANS = (Role.BARE, Role.REPS, Role.SECONDS, Role.PLURAL)
ON = frozenset(("na", "на"))
"""In Polish and Russian what stands behind it is the load, or what comes of it."""
PERHAPS = frozenset(
    ("maybe", "perhaps", "possibly", "vielleicht", "quizás", "quizá", "peut-être", "forse", "misschien", "może",
     "talvez", "может", "kanske")
)  # fmt: skip
BEHIND_OR = frozenset((K.FILLER, K.ASKS, K.NOTE, K.PLAIN, K.ONLY, K.RESERVE_LEFT))
REACH_OF_OR = 4
SPREAD = frozenset(("in", "over", "across", "en", "em", "w", "за", "на", "på", "sur", "auf", "su", "por", "within"))
PASSING_WORDS = frozenset(("in", "took", "within", "all", "total", "em", "en", "dans", "за", "w", "på"))


class NumberChunks(TimesChunks):
    """The part of the walk that gathers numbers around one "x"."""

    def number(self, piece: Piece) -> None:
        before = self.pieces[self.at - 1] if self.at else piece
        if self._is_left_open(before, piece):
            self.out.dangling = True
        if piece.role is Role.SETS and before.text in SPREAD and self.out.found:
            self.out.spread = True
        if piece.role is Role.LOAD and self.out.found and tells_a_step(self.pieces, self.at):
            piece = self._stepped(piece)
        if self.separator is not None and self.kinds[self.at + 1] in SAYING and self._speaks_of(piece):
            self.out.notes.append(piece)
            self.at += 1
        elif not self._plain(piece):
            self._told_otherwise(piece)

    def _is_left_open(self, before: Piece, piece: Piece) -> bool:
        """Whether the word in front says that it may be another number: "5 or 6", "80x8 (maybe 9)", "135 plus 20"."""
        if self.at > 1 and self.kinds[self.at - 2] is K.NUMBER:
            adds_up = before.text == "plus" and self._adds_up(piece)  # "135 plus 20 x 5"
            if adds_up or before.text in OR:  # "100 for 5 or 6"
                return True
        if self.out.found and (before.text in PERHAPS or self._follows_or()):
            return True
        return piece.spelled and piece.text in TWO_MEANINGS and before.kind is K.NUMBER

    def _follows_or(self) -> bool:
        """ "5 or was it 6", "80x8 or maybe only 7"."""
        at = self.at - 1
        while at > max(0, self.at - 1 - REACH_OF_OR) and self.kinds[at] in BEHIND_OR:
            if self.pieces[at].text in OR:
                return True
            at -= 1
        return at >= 0 and self.pieces[at].text in OR and self.at - at > 1

    def _adds_up(self, piece: Piece) -> bool:
        """Whether a number behind "plus" may be a load put on the one before it."""
        return piece.role in PLAIN_ROLES and self.pieces[self.at - 2].value > MOST_LOADED_REPS

    def _speaks_of(self, number: Piece) -> bool:
        """ "85 90 95, 90 was ugly", "80x5 85x5, the 85 felt heavy": a set told before, and what it was like."""
        said = self.pieces[self.at + 1].text
        end = self.at + 1
        while self.kinds[end] in REMARKED:
            end += 1
        known = any(number.value == one.value for chunk in self.out.found for factor in chunk.factors for one in factor)
        return said in SAID_OF_A_SET and known and number.role in PLAIN_ROLES and self.kinds[end] in REMARK_ENDS

    def _stepped(self, step: Piece) -> Piece:
        """ "100 for 6, then added 5 kg": the load that it comes to."""
        loads = loads_told(self.out.found)
        if loads and step.value * 2 <= loads[-1]:
            step = step._replace(value=loads[-1] + step.value)
            self.pieces = [*self.pieces[: self.at], step, *self.pieces[self.at + 1 :]]
        elif loads:
            self.out.dangling = True
        return step

    def _plain(self, first: Piece) -> bool:
        """ "60", "3x8", "82.5kg x 5", where nothing beside them may change what they are: most numbers stand so."""
        kinds, at = self.kinds, self.at
        if first.role not in PLAIN_ROLES or self.depth or self.in_note or first.text[-1] == "½":
            return False
        factors: list[tuple[Piece, ...]] = [(first,)]
        end = at + 1
        if kinds[end] is K.TIMES and kinds[end + 1] is K.NUMBER:
            second = self.pieces[end + 1]
            factors.append((second,))
            end += 2
            if second.text[-1] == "½" or second.role is Role.TIMES or self._joins_a_list(end):
                return False
        if kinds[end] not in PLAIN_ENDS:
            return False  # "3x6 to 8" among them
        chunk = Chunk(factors, before=self.separator)
        if len(factors) == 2 and not self.pieces[at + 1].glued and factors[1][0].glued:
            chunk.x_apart = True
        self.at = end
        self._place(chunk)
        return True

    def _joins_a_list(self, at: int) -> bool:
        """ "60x8,8,7": whether the comma there touches a number on both sides."""
        behind = self.pieces[at + 1] if self.kinds[at] is K.COMMA and self.kinds[at + 1] is K.NUMBER else None
        return behind is not None and behind.glued and self.pieces[at].glued

    def _told_otherwise(self, piece: Piece) -> None:
        if piece.role is Role.UNREADABLE or self._is_remarked(piece):
            (self.out.loose if piece.role is Role.UNREADABLE else self.out.notes).append(piece)
            self.at += 1
            return
        if self._times_what(piece) or self._repeats_last() or self._is_of_the_last():
            return
        if self._goes_to_rest_pause(piece):
            return
        following = self._kind()
        if following in ASKING_FOR_MORE and self._takes_repeat():
            return
        if following is K.PARTIAL or (following is K.FILLER and self._kind(2) is K.PARTIAL):
            self._partials()
            return
        if self.separator is None and self.kinds[self.at - 1] is K.PLUS and self.out.found and self._partly(1):
            self._helped()
            return
        if self.in_note and following is not K.TIMES and piece.role is Role.BARE:
            self.out.loose.append(piece)
            self.at += 1
            return
        self.chunk()

    def _is_remarked(self, piece: Piece) -> bool:
        """ "felt like 500", or "0 reps" behind a miss, which says so already."""
        compared = self.in_note and self.pieces[self.at - 1].text in LIKE and self._kind() is not K.TIMES
        last = self._last()
        none_made = piece.role is Role.REPS and not piece.value and last is not None and last.missed
        return compared or none_made

    def _takes_repeat(self) -> bool:
        raise NotImplementedError

    def _is_of_the_last(self) -> bool:
        raise NotImplementedError

    def _partials(self) -> None:
        """ "12 + 4 partials": the four are a note."""
        self.out.notes.append(self.pieces[self.at])
        self.at += 2

    def _helped(self) -> None:
        """ "60x12 + 3 assisted": reps that were not done alone are a note to the set."""
        self.out.notes.append(self.pieces[self.at])
        while self._kind(0) not in PARTLY:
            self.at += 1
        self.at += 1

    def chunk(self) -> None:
        opened = self._kind(-1) is K.OPEN
        chunk = Chunk([self.factor(None)], before=self.separator)
        if self.joiner is not None:
            chunk.joiner = self.joiner
        if self.depth:
            chunk.in_brackets = True
            chunk.alone_in_brackets = self._stands_alone(opened)
        if chunk.factors[0][0].role in AMOUNTS:
            chunk.in_passing = self.at > 1 and self.pieces[self.at - 2].text in PASSING_WORDS
        self._rest_of_chunk(chunk)

    def _stands_alone(self, opened: bool) -> bool:
        """Whether the brackets hold this number or pair and nothing else: "(6)", "(60x5)"."""
        if opened and self._kind(0) is K.TIMES and self._kind(2) is K.CLOSE:
            return self._kind(3) is not K.TIMES
        return opened and self._kind(0) is K.CLOSE

    def _rest_of_chunk(self, chunk: Chunk) -> None:
        while self._joins_next(chunk):
            self.at += 1
            self._skip(GAPS)
            if self._kind(0) in OPEN_ENDED:
                self._open_sets(chunk)
                break
            chunk.factors.append(self._full_reps(chunk, self.factor(chunk)))
        following = self.kinds[self.at]
        if following is K.COUNT and chunk.size == 1 and self._kind(-1) is K.NUMBER:
            chunk.factors.append((self._counted_piece(),))
            chunk.counted = True
            following = self.kinds[self.at]
        elif following is K.COUNT and self._counts_named_sets(chunk):
            sets = chunk.factors.pop()[0]
            chunk.factors += [(self._counted_piece(),), (sets._replace(role=Role.SETS),)]
            following = self.kinds[self.at]
        if following is K.PLUS:
            self._plus(chunk)
        if following is K.NUMBER and chunk.size > 1 and chunk.factors[-1][-1].role is Role.TIMES:
            self._times_behind(chunk)
        if not self._restates(chunk):
            self._place(chunk)

    def _counts_named_sets(self, chunk: Chunk) -> bool:
        """ "85 for two triples": so many sets, whose name tells their reps."""
        sets = chunk.factors[-1] if chunk.size == 2 and self._kind(-1) is K.NUMBER else CARRIED
        return len(sets) == 1 and sets[0].role is Role.BARE and sets[0].value <= MOST_SETS_BY_REPEAT * 2

    def _open_sets(self, chunk: Chunk) -> None:
        """ "3xAMRAP 25 20 17", "3x failure: 12 10 8": so many sets, their reps behind."""
        self.out.maximum = True
        self.out.failure_ahead = self.out.failure_ahead or self._kind(0) is K.FAILURE
        self.at += 1
        head = chunk.factors[0][0] if chunk.size == 1 and chunk.factors[0] else None
        if head is not None and head.role is Role.BARE and head.value <= MOST_SETS_BY_REPEAT:
            chunk.factors[0] = (head._replace(role=Role.SETS),)

    def _full_reps(self, chunk: Chunk, numbers: tuple[Piece, ...]) -> tuple[Piece, ...]:
        """ "60x7½": of reps only the full ones count. "5x82½" holds a load."""
        if not any(number.text.endswith("½") and number.role is Role.BARE for number in numbers):
            return numbers
        head = chunk.factors[0][-1] if chunk.factors[0] else None
        if head is not None and head.role is Role.BARE and max(number.value for number in numbers) > head.value:
            return numbers
        self.out.notes.append(numbers[-1])
        return tuple(number._replace(value=number.value // 1 or number.value) for number in numbers)

    def _restates(self, chunk: Chunk) -> bool:
        """ "100x3x5, five triples": sets and reps in words behind three factors settle which is which."""
        last = self._last()
        if last is None or last.size != 3 or chunk.size != 2 or self.separator is K.LINE or not chunk.factors[0]:
            return False
        sets, reps = chunk.factors[0][0], chunk.factors[1][0]
        if not chunk.counted and sets.role is not Role.SETS:
            return False
        self.out.stated = int(sets.value), int(reps.value)
        return True

    def _joins_next(self, chunk: Chunk) -> bool:
        kind = self.kinds[self.at]
        if kind not in JOINING:
            return False
        if kind is K.TIMES or kind is K.BY:
            return self._times_joins(chunk)
        if kind is K.OF and chunk.size == 1 and self._number_behind(1):
            return self._counts_of(chunk)
        if kind is K.FOR and chunk.size == 1 and self._number_behind(1):
            return self._spoken_for(chunk)
        if kind is not K.EACH or self._kind(1) is not K.TIMES:
            return False
        self._tell_each(self.pieces[self.at])
        return not self._sides_repeated(chunk) and self._times_joins(chunk, 1)

    def _spoken_for(self, chunk: Chunk) -> bool:
        """ "100 for 5", "30 s for 3 sets": whether what stands behind "for" belongs to this chunk."""
        ahead = self.pieces[self.at + 1 + (self._kind(1) is K.FILLER)]
        if self.pieces[self.at].text in ON and ahead.value > chunk.factors[0][-1].value:
            return False  # "8 7 6 na 85"
        if self._kind(2) is K.TIMES and self.pieces[self.at + 2].glued:
            chunk.counts_behind = True
            if chunk.factors[0][0].role is Role.CHANGE:
                self.at += 1  # "+5 for 3x5": the sets stand behind
                return False
        chunk.spoken_for = ahead.role not in (Role.SECONDS, Role.SETS) or chunk.factors[0][0].role is Role.LOAD
        return chunk.spoken_for and ahead.role is not Role.SETS

    def _sides_repeated(self, chunk: Chunk) -> bool:
        """ "16k 8 each side x 4", "8 each leg x 4 at 16": so many reps a side, and so many sets."""
        sides = chunk.factors[-1]
        if len(sides) == 2 and sides[0].value == sides[1].value:
            sides = sides[:1]  # "10/10 per arm"
        reps, count = sides[-1:], self.pieces[self.at + 2] if self._kind(2) is K.NUMBER else None
        bare = bool(reps) and reps[0].role in (Role.BARE, Role.REPS) and count is not None and count.role is Role.BARE
        if not bare or count is None or not tells_a_side(self.pieces[self.at]):
            return False
        of_a_bar = tells_a_side(self.pieces[self.at], SIDES_OF_A_BAR)  # "35 a side x 8" may be plates
        if not self.out.found and (of_a_bar or reps[0].value <= count.value):
            chunk.of_sides = True
            return False
        chunk.factors[-1] = sides
        chunk.times = int(count.value)
        self.out.each = self.out.sides = True
        self.at += 3
        return True

    def _counts_of(self, chunk: Chunk) -> bool:
        """ "3 sets of 8", "3 po 8": what stands before "of" counts sets."""
        head, counted = chunk.factors[0][-1], self.pieces[self.at + 1]
        if counted.kind is K.NUMBER and counted.role is Role.SETS:
            self.out.dangling = True  # "2 of 3 sets": so many sets, and no reps
            return False
        if head.role is Role.SETS:
            return True
        if (
            head.role is not Role.BARE
            or head.value > 10
            or counted.kind is not K.NUMBER
            or not (counted.role in COUNTED_BY_OF or _is_spaced_time(counted))
        ):
            return False
        if counted.role is Role.PLURAL:
            timed = counted._replace(role=Role.SECONDS)
            self.pieces = [*self.pieces[: self.at + 1], timed, *self.pieces[self.at + 2 :]]
        chunk.factors[0] = (head._replace(role=Role.SETS),)
        return True

    def _times_joins(self, chunk: Chunk, ahead: int = 0) -> bool:
        if not self._number_behind(ahead + 1):
            return False
        sign, number = self.pieces[self.at + ahead], self.pieces[self.at + ahead + 1]
        self.at += ahead
        if chunk.size == 1 and not sign.glued and number.glued:
            chunk.x_apart = True
        if number.role is Role.SETS and chunk.size == 2 and self._kind(2) is K.OF and self._kind(3) is K.NUMBER:
            return self._told_once_more(chunk, number)
        if chunk.size < 2 or sign.glued or not number.glued or number.role is not Role.BARE:
            return True
        if number.value > MOST_SETS_BY_REPEAT or not number.value or not chunk.factors[0]:
            return False  # "60x8 x8 x7": the load is carried on
        if self._kind(2) is K.TIMES and not self.pieces[self.at + 2].glued and self._kind(3) is K.NUMBER:
            return False  # "80x5 x5 x4": so it is here
        chunk.times = int(number.value)
        if number.value == chunk.factors[-1][-1].value:
            self.out.loose.append(number)  # "60x5 x5": twice, or five times
        self.at += 2
        return False

    def _told_once_more(self, chunk: Chunk, sets: Piece) -> bool:
        """ "80x5 x3 sets of 5": the reps once more."""
        chunk.times = int(sets.value)
        if self.pieces[self.at + 3].value != chunk.factors[-1][-1].value:
            self.out.loose.append(self.pieces[self.at + 3])
        self.at += 4
        return False

    def _number_behind(self, ahead: int) -> bool:
        while self._kind(ahead) in GAPS:
            ahead += 1
        kind = self._kind(ahead)
        return kind in BEHIND_A_SIGN or (kind is K.OPEN and self._kind(ahead + 1) is K.NUMBER)

    def _counted_piece(self) -> Piece:
        piece = self.pieces[self.at]
        self.at += 1
        return piece._replace(kind=K.NUMBER, value=Decimal(piece.told), role=Role.REPS)

    def factor(self, chunk: Chunk | None) -> tuple[Piece, ...]:
        if self.kinds[self.at] is K.OPEN:
            return self._bracketed(chunk)
        first = self.pieces[self.at]
        self.at += 1
        if first.kind is K.BAR:
            return (first._replace(kind=K.NUMBER, role=Role.BAR),)
        if first.kind is K.BODY:
            return (first._replace(kind=K.NUMBER, role=Role.BODY),)
        numbers = [first]
        self.joiner = None
        while self._joined_number(numbers, chunk):
            numbers.append(self.pieces[self.at + 1])
            sign = self.pieces[self.at].kind
            self.joiner = sign if sign in JOINERS else K.DASH
            if chunk is not None:
                chunk.joiner = self.joiner
            self.at += 2
        return tuple(numbers)

    def _joined_number(self, numbers: list[Piece], chunk: Chunk | None) -> bool:
        sign = self.kinds[self.at]
        if sign is K.FILLER or sign is K.NOT_DATE:
            return len(numbers) == 1 and self._spans_to(numbers[0])
        if sign not in JOINERS or self._kind(1) is not K.NUMBER:
            return False
        if not self.pieces[self.at].glued or not self.pieces[self.at + 1].glued:
            return False
        if sign is K.COMMA:
            heavier = self.pieces[self.at + 1].value > MOST_LOADED_REPS >= numbers[-1].value  # "3x5,100"
            return chunk is not None and self._kind(2) is not K.TIMES and not heavier
        if sign is K.SLASH and chunk is not None and len(numbers) == 1 and self._kind(2) is K.TIMES:
            return not self.pieces[self.at + 2].glued  # "40x15/30x10": the next set
        return self.pieces[self.at + 1].role is not Role.CHANGE

    def _spans_to(self, first: Piece) -> bool:
        """ "6 to 8": a range in words."""
        last = self.pieces[self.at + 1] if self._kind(1) is K.NUMBER else None
        if last is None or self.pieces[self.at].text not in SPANNED or first.role is not Role.BARE:
            return False
        few = last.value <= MOST_LOADED_REPS or last.role in (Role.SECONDS, Role.PLURAL)  # "60 to 80 x5" are two loads
        return last.role in SPANS and first.value < last.value and few

    def _bracketed(self, chunk: Chunk | None) -> tuple[Piece, ...]:
        """ "(70,75,80)" as one factor."""
        numbers: list[Piece] = []
        self.at += 1
        while self._kind(0) in (K.NUMBER, K.COMMA, K.SLASH, K.DASH):
            if self._kind(0) is K.NUMBER:
                numbers.append(self.pieces[self.at])
            self.at += 1
        if self._kind(0) is K.AT and numbers and chunk is not None and self._kind(1) is K.NUMBER:
            # "4 x (6 @ 70)": sets in front of a whole set
            chunk.at, chunk.at_sign = (self.pieces[self.at + 1],), True
            self.at += 2
        if self._kind(0) is K.TIMES and chunk is not None and self._kind(1) is K.NUMBER:
            if chunk.factors[0]:
                return self._bracketed_pair(chunk, numbers)
            self.out.dangling = True  # "x (2x5)": how often, and at what load?
        if self._kind(0) is K.CLOSE:
            self.at += 1
        return tuple(numbers)

    def _bracketed_pair(self, chunk: Chunk, numbers: list[Piece]) -> tuple[Piece, ...]:
        """ "3 x (50x9)": the number in front multiplies."""
        chunk.times = int(chunk.factors[0][0].value)
        chunk.factors[0] = tuple(numbers)
        second = self.pieces[self.at + 1]
        self.out.dangling = self.out.dangling or self._kind(2) is not K.CLOSE  # "3 x (200x10, 150x8)"
        self.at += 2 + (self._kind(2) is K.CLOSE)
        return (second,)

    def carried(self, piece: Piece) -> None:
        """ "x8": the load is carried on; "(x3)": a multiplier."""
        if self._kind() not in (K.NUMBER, K.MAX):
            self.out.dangling = True
            self.at += 1
            return
        last = self._last()
        if self._kind(2) is K.MORE and self._takes_repeat():
            return
        if self.depth and last is not None and self._is_multiplied(last) and self._kind(2) is K.CLOSE:
            last.times = int(self.pieces[self.at + 1].value)
            self.at += 2
            return
        if last is not None and self._repeats_typed(last):
            return
        if self._kind() is K.MAX:
            self.out.maximum = True
            self.at += 2
            return
        self.at += 1
        joined = self._kind() is K.TIMES and self.pieces[self.at + 1].glued
        self.out.dangling = self.out.dangling or (last is None and joined)
        chunk = Chunk([CARRIED], before=self.separator)
        chunk.factors.append(self.factor(chunk))
        self._rest_of_chunk(chunk)

    def _is_multiplied(self, last: Chunk) -> bool:
        """ "60x8 (x2)", and "60: 8 (x2) 7"."""
        reps = last.factors[0][-1:] if last.size == 1 else ()
        return last.size >= 2 or (len(reps) == 1 and reps[0].role is Role.BARE and reps[0].value <= MOST_LOADED_REPS)

    def _repeats_typed(self, last: Chunk) -> bool:
        """ "40m x3", "30s each side x2": seconds and metres are repeated, never carried as a load."""
        number = self.pieces[self.at + 1]
        if len(self.out.found) > 1 and last.size == 1 and last.factors[0][0].role is Role.LOAD:
            last = self.out.found[-2]  # "60s with 20kg x2"
        told = last.factors[-1] if last.factors else CARRIED
        timed = told and told[-1].role in (Role.SECONDS, Role.METRES, Role.PLURAL)
        if not timed or self.separator is K.LINE or last.times is not None or number.role is not Role.BARE:
            return False
        last.times = int(number.value)
        self.at += 2
        return True

    def _tell_each(self, piece: Piece) -> None:
        self.out.each = True
        self.out.sides = self.out.sides or tells_a_side(piece)
        self.out.of_a_bar = self.out.of_a_bar or tells_a_side(piece, SIDES_OF_A_BAR)

    def _skip(self, kinds: frozenset[K]) -> None:
        while self.at < len(self.pieces) and self.pieces[self.at].kind in kinds:
            if self.pieces[self.at].kind is K.EACH:
                self._tell_each(self.pieces[self.at])
            self.at += 1


def _is_spaced_time(number: Piece) -> bool:
    """ "4 po 40 s": with a space before its letter it is a time, and no "40s"."""
    return number.role is Role.PLURAL and number.end - number.start > len(number.text) + 1

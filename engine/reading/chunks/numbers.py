"""What a number opens: a chunk gathered around one "x", unless words beside it say that it is no new set.

number = chunk | REMARK | HOW-OFTEN | STEP        "85x5, the 85 felt heavy" tells of a set told before
chunk  = [ "x" ] factor ( join factor )* [ COUNT ] [ "+" NUMBER ]        60; 3x8; x8; "85 for two triples"
Factors are those of `chunk_factors`, what joins them of `chunk_joins`. "5 or 6", "80x8 (maybe 9)" is left open: asked.
"""

from __future__ import annotations

from decimal import Decimal

from engine.reading.chunks.beside_sets import (
    climbs_behind_a_pair,
    may_be_a_scale,
    may_be_no_reps,
    may_count_things,
    may_rate,
    tells_of_the_pair,
    tells_otherwise,
)
from engine.reading.chunks.chunks import CARRIED, GAPS, MOST_SETS_BY_REPEAT, Chunk
from engine.reading.chunks.partials import PLAIN_ROLES, PartialChunks
from engine.reading.chunks.steps import loads_told, tells_a_step
from engine.reading.chunks.sums import MAY_BE_AMOUNTS
from engine.reading.chunks.times import PLAIN_ENDS
from engine.reading.words.cues import CUES_OF, any_cued, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role, is_one_word

ASKING_FOR_MORE = frozenset((K.MORE, K.SAME))
SAYING = frozenset((K.FILLER, K.NOTE))
ON = frozenset(("onday",))
NEARLY = frozenset(("nearly", "shortof"))
SAID_OF_A_SET = frozenset(("was", "were", "felt", "moved"))
REMARKED = frozenset((K.FILLER, K.NOTE, K.PLAIN, K.DENY))
REMARK_ENDS = frozenset((None, K.LINE, K.STOP, K.COMMA, K.CLOSE))
OPEN_ENDED = frozenset((K.MAX, K.FAILURE))
"""Words for a set without a count of its reps."""
TWO_MEANINGS = frozenset(("once",))
"""Eleven in Spanish, one time in English: behind a number nobody can say which."""
BEHIND_OR = frozenset((K.FILLER, K.ASKS, K.NOTE, K.PLAIN, K.ONLY, K.RESERVE_LEFT))
REACH_OF_OR = 4

FIGURES = frozenset((None, K.NUMBER, K.TIMES, K.COMMA, K.LINE))
REPS_END = frozenset((None, K.COMMA, K.STOP, K.LINE, K.THEN, K.AND, K.CLOSE))


class NumberChunks(PartialChunks):
    """The part of the walk that gathers numbers around one "x"."""

    def number(self, piece: Piece) -> None:
        if not self._stands_among_figures(piece):
            self._number_beside_words(piece)
        elif not self._plain(piece):
            self._told_otherwise(piece)

    def _number_beside_words(self, piece: Piece) -> None:
        before = self.pieces[self.at - 1] if self.at else piece
        if self._is_left_open(before, piece):
            self.out.dangling = True
        if (before.kind is K.BOTH or "all" in CUES_OF[before.text] or self._is_how_many(piece, before)) and (
            self._speaks_of_all(piece)
        ):
            self.at += 1
            return
        if piece.role is Role.SETS and "spread" in CUES_OF[before.text] and self.out.found:
            self.out.spread = True
        if piece.role is Role.LOAD and self.out.found and tells_a_step(self.pieces, self.at):
            piece = self._stepped(piece)
        apart = self.separator is not None or self.depth > 0
        if (apart and self.kinds[self.at + 1] in SAYING and self._speaks_of(piece)) or self._speaks_of_the_last(piece):
            self.out.notes.append(piece)
            self.at += 1
        elif not self._plain(piece) and not self._names_a_rep(piece):
            self._told_otherwise(piece)

    def _stands_among_figures(self, piece: Piece) -> bool:
        """Whether no word stands beside a plain number that could say that it is no new one; beside most none does."""
        told = piece.role is Role.BARE and not piece.spelled
        return told and self.kinds[self.at - 1] in FIGURES and self.kinds[self.at + 1] in FIGURES

    def _is_left_open(self, before: Piece, piece: Piece) -> bool:
        """Whether the word in front says that it may be another number: "5 or 6", "80x8 (maybe 9)", "135 plus 20"."""
        if self.at > 1 and self.kinds[self.at - 2] is K.NUMBER:
            adds_up = before.text == "plus" and self._adds_up(piece)  # "135 plus 20 x 5"
            if adds_up or _is_or(before):  # "100 for 5 or 6"
                return True
        if self.out.found and ("perhaps" in CUES_OF[before.text] or self._follows_or()):
            return True
        if self.out.found and self._is_odd_behind_sets():
            return True
        return piece.spelled and piece.text in TWO_MEANINGS and before.kind is K.NUMBER

    def _is_odd_behind_sets(self) -> bool:
        told = self.pieces, self.at, self.out.found
        if self.depth and tells_of_the_pair(*told):
            return True
        return may_be_no_reps(*told) or tells_otherwise(*told[:2]) or may_count_things(*told)

    def _follows_or(self) -> bool:
        """ "5 or was it 6", "80x8 or maybe only 7"."""
        at = self.at - 1
        if self.kinds[at] not in BEHIND_OR:
            return False
        while at > max(0, self.at - 1 - REACH_OF_OR) and self.kinds[at] in BEHIND_OR:
            if _is_or(self.pieces[at]):
                return True
            at -= 1
        return at >= 0 and _is_or(self.pieces[at]) and self.at - at > 1

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
        return is_cued(said, SAID_OF_A_SET) and known and number.role in PLAIN_ROLES and self.kinds[end] in REMARK_ENDS

    def _speaks_of_the_last(self, number: Piece) -> bool:
        """ "5, 5, 4 (5 on the last was close)": what the last set told came to, or nearly came to, and no set more; how
        else it may be meant is asked.
        """
        at, last = self.at + 1, self._last()
        while self.kinds[at] is K.FILLER:
            at += 1
        told = last.factors[-1] if last is not None and last.factors else ()
        if self.kinds[at] is not K.LAST or not told or number.role not in PLAIN_ROLES:
            return False
        linked = at > self.at + 1 or is_cued(self.pieces[at].text, ON)
        listed = last is not None and last.size == 1
        said = at + 1 < len(self.pieces) and is_cued(self.pieces[at + 1].text, SAID_OF_A_SET)
        if not linked or not (said or (self.depth > 0 and self.kinds[at + 1] is K.CLOSE and listed)):
            return False
        near = any_cued([piece.text for piece in self.pieces[at + 2 : at + 2 + REACH_OF_OR]], NEARLY)
        self.out.dangling = self.out.dangling or not (near or number.value == told[-1].value)
        return True

    def _names_a_rep(self, number: Piece) -> bool:
        """ "80x8, rep 7 was a grinder": which of the reps told it was, and what it was like."""
        named = number.role is Role.REPS and is_one_word(number) and bool(self.out.found)
        if not named or self._kind() not in SAYING or self._speaks_of_several_reps():
            return False
        reps = [one.value for chunk in self.out.found for one in chunk.factors[-1][-1:] if chunk.factors]
        self.out.dangling = self.out.dangling or number.value > max(reps, default=number.value)
        self.out.notes.append(number)
        self.at += 1
        return True

    def _speaks_of_several_reps(self) -> bool:
        """ "reps 6 to 8 slow"."""
        return self._kind(2) is K.NUMBER

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
        if self._only_counts(piece) or self._times_what(piece) or self._repeats_last() or self._is_of_the_last():
            return
        if self._goes_to_rest_pause(piece):
            return
        following = self._kind()
        if following in ASKING_FOR_MORE and self._takes_repeat():
            return
        of_the_last = self.kinds[self.at - 1] is K.LAST  # "last 2 half"; "5 half squat 60 5" begins another lift
        said_of = 1 + (following is K.FILLER or (following is K.ONLY and of_the_last))
        of_parts = self._kind(said_of) is K.PARTIAL or (of_the_last and self._kind(said_of) is K.HALF)
        if of_parts and self._partials(piece):
            return
        if self.separator is None and self.kinds[self.at - 1] is K.PLUS and self.out.found and self._partly(1):
            self._helped()
            return
        if self.in_note and following is not K.TIMES and piece.role is Role.BARE:
            self.out.loose.append(piece)
            self.at += 1
            return
        self.chunk()

    def _rates_what_follows(self) -> bool:
        """ "100 for 6, then a shaky 4": what the reps behind it were like, where a word says that they came next."""
        back = self.at - 1
        while back > 0 and self.kinds[back] in (K.FILLER, K.NOTE):
            back -= 1
        number = self.pieces[self.at + 1] if self._kind() is K.NUMBER else None
        reps = number is not None and number.role in (Role.BARE, Role.REPS) and number.value <= MOST_LOADED_REPS
        return reps and back > 0 and self.kinds[back] in (K.THEN, K.AND) and self._kind(2) in REPS_END

    def _is_remarked(self, piece: Piece) -> bool:
        """ "felt like 500", or "0 reps" behind a miss, which says so already."""
        compared = self.in_note and "like" in CUES_OF[self.pieces[self.at - 1].text] and self._kind() is not K.TIMES
        last = self._last()
        none_made = piece.role is Role.REPS and not piece.value and last is not None and last.missed
        return compared or none_made

    def _takes_repeat(self) -> bool:
        raise NotImplementedError

    def _is_of_the_last(self) -> bool:
        raise NotImplementedError

    def chunk(self) -> None:
        opened = self._kind(-1) is K.OPEN or (self._kind(-1) is K.FILLER and self._kind(-2) is K.OPEN)
        chunk = Chunk([self.factor(None)], before=self.separator)
        if self.joiner is not None:
            chunk.joiner = self.joiner
            told = chunk.factors[0], self.joiner, self.out.found
            behind = self.pieces[self.at] if self.at < len(self.pieces) else None
            climbs = self.separator is None and climbs_behind_a_pair(*told)
            self.out.dangling = self.out.dangling or climbs or may_be_a_scale(*told) or may_rate(*told, behind)
        if self.depth:
            chunk.in_brackets = True
            chunk.alone_in_brackets = self._stands_alone(opened)
        if chunk.factors[0][0].role in MAY_BE_AMOUNTS:
            chunk.in_passing = self.at > 1 and "within" in CUES_OF[self.pieces[self.at - 2].text]
        if self._counts_reps_behind(chunk):
            chunk.factors.append(self.factor(chunk))
        self._rest_of_chunk(chunk)

    def _stands_alone(self, opened: bool) -> bool:
        """Whether the brackets hold this number or pair and nothing else: "(6)", "(60x5)", "(2 sets of 5)"."""
        if opened and self._kind(0) in (K.TIMES, K.OF) and self._kind(2) is K.CLOSE:
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
        if chunk.size == 1 and self._names_reps(following):
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

    def _names_reps(self, following: K | None) -> bool:
        """ "5 triples", and "triples x 5", which is put as "5 of triples"."""
        if self._kind(-1) is not K.NUMBER:
            return False
        linked = following is K.OF and self._kind() is K.COUNT
        self.at += linked
        return linked or following is K.COUNT

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

    def _counted_piece(self) -> Piece:
        piece = self.pieces[self.at]
        self.at += 1
        return piece._replace(kind=K.NUMBER, value=Decimal(piece.told), role=Role.REPS)

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
        counted = self.pieces[self.at - 2] if self.at > 1 else piece
        if last is None and counted.kind is K.NOTE and counted.text.isdecimal():
            self.out.dangling = True  # "20 steps x 3"
        joined = self._kind() is K.TIMES and self.pieces[self.at + 1].glued
        self.out.dangling = self.out.dangling or (last is None and joined)
        chunk = Chunk([CARRIED], before=self.separator)
        chunk.factors.append(self.factor(chunk))
        self._rest_of_chunk(chunk)

    def _is_multiplied(self, last: Chunk) -> bool:
        """ "60x8 (x2)", and "60: 8 (x2) 7"."""
        reps = last.factors[0][-1:] if last.size == 1 else ()
        alone = len(reps) == 1 and reps[0].role is Role.BARE and reps[0].value <= MOST_LOADED_REPS
        return last.tells_reps or alone

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

    def _skip(self, kinds: frozenset[K]) -> None:
        while self.at < len(self.pieces) and self.pieces[self.at].kind in kinds:
            if self.pieces[self.at].kind is K.EACH:
                self._tell_each(self.pieces[self.at])
            self.at += 1


def _is_or(piece: Piece) -> bool:
    """ "or", and not the Dutch "of", which is English too."""
    return "or" in CUES_OF[piece.text] and piece.text != "of"

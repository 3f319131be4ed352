"""What became of a group of sets: a last set that differs, results behind an arrow or in brackets.

result = ( "last set" | ORDINAL "set" ) [ "only" ] NUMBER | "got" NUMBER "on the last" | "got" NUMBER+
       | ( ">" | ":" | "(" ) NUMBER+          as many numbers as the group has sets
"""

from __future__ import annotations

from decimal import Decimal

from engine.reading.chunks.beside_sets import may_be_efforts
from engine.reading.chunks.chunks import LAST_SET, numbers_in
from engine.reading.chunks.passed_over import CLAUSE_ENDS
from engine.reading.chunks.several import REMARK_ENDS, SeveralChunks
from engine.reading.chunks.steps import tells_a_load
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import LAST_ALONE, MOST_LOADED_REPS, MOST_SETS, Piece, Role
from engine.values.effort import TOP_OF_SCALE, Effort

MOST_LISTED = 20
BESIDE_A_RESULT = frozenset((K.FILLER, K.ONLY, K.SETS, K.GOT, K.COLON, K.WITH, K.FOR))
BEHIND_AN_ORDINAL = frozenset((K.SETS, K.COLON, K.FILLER))
BEHIND_A_RESULT = frozenset((K.FILLER, K.REPS, K.FOR, K.WITH))
MARKING = frozenset((K.EFFORT, K.FAILURE, K.MISS, K.DROP, K.WARMUP))
RATING = MARKING | {K.AT}
WORDS_AHEAD = frozenset((K.NOTE, K.PLAIN, K.VARIANT, K.WITH, K.BAND, K.ASSISTED)) | MARKING
SPANNING = frozenset((K.DASH, K.AND, K.PLUS, K.FILLER))
BEHIND_A_COUNT = frozenset((None, K.COMMA, K.LINE, K.STOP, K.CLOSE, K.REPS))
LISTED = frozenset((K.NUMBER, K.COMMA, K.SLASH, K.DASH))
ENDS_OF_A_COUNT = frozenset((None, K.COMMA, K.LINE, K.STOP, K.CLOSE, K.NOTE, K.FILLER))
LEAST_AHEAD = 2
"""How far ahead of "only" the count stands where a verb is between them."""
THREE = 3
"""Factors: load, reps and sets."""
REMARKED = frozenset((K.NOTE, K.PLAIN, K.PARTIAL, K.SETTING))
GOING_ON = frozenset((K.THEN, K.AND))
PAIRED = frozenset((K.TIMES, K.AT, K.OF, K.BY, K.SETS))

STOPPED, REACH_OF_A_STOP = frozenset(("stopped",)), 5
AHEAD_OF_A_STOP = frozenset((K.NOT_DATE, K.AT, K.WITH))
SAID_AHEAD_OF_THE_LAST = frozenset((K.NOTE, K.FILLER, K.FOR, K.ONLY, K.PLAIN))
REMARK_STARTS = frozenset((K.COMMA, K.STOP, K.OPEN, K.LINE, K.DASH))


class ResultChunks(SeveralChunks):
    """The part of the walk that sets right what a group told."""

    def last_set(self, piece: Piece) -> None:
        """ "3x8 70, last set only 6", "last set @9": the reps or the effort of the group's last set."""
        if self._several_ahead() or self._last_by_place() or self._loaded_by_place():
            return
        if self._remarks_on_several():
            self.at += 2
            return
        if self._ends_its_remark():
            self.at += 1
            return
        self.at += 1
        if self._kind(0) is K.EACH or (self._kind(0) in (K.OF, K.FILLER) and self._kind() is K.EACH):
            self.out.dangling = True  # "last set of each to failure"
        self._one_of_the_sets(LAST_SET)

    def _ends_its_remark(self) -> bool:
        """ "belt on for the last one": a remark of its own, which ends there and tells of no number."""
        if self._kind() not in REMARK_ENDS or not self.out.found:
            return False
        at = self.at - 1
        while at >= 0 and self.kinds[at] in SAID_AHEAD_OF_THE_LAST:
            at -= 1
        return at >= 0 and self.kinds[at] in REMARK_STARTS and K.NOTE in self.kinds[at : self.at]

    def ordinal_set(self, piece: Piece) -> None:
        """ "3x10 80, third set only 8"."""
        if self._stopped_at(piece):
            self.out.passed += (self.pieces[self.at - 1]._replace(end=piece.end),)
        self.at += 1
        if self._kind(0) in SPANNING and self._kind() is K.ORDINAL:
            self.out.dangling = True  # "1st-3rd set 80x8", "2nd and 3rd 7"
        marked = self._kind(0) in RATING or (self._kind(0) is K.SETS and self._kind() in RATING)
        if marked and self._group_told():
            self.out.dangling = True  # "4th set rpe 9": of that one alone
        if piece.told > 1:
            self._doubt_a_place()
        if self._kind(0) in (K.SETS, K.ONLY, K.COLON):
            told = len(self.out.found)  # the load in front may be one of them
            self._one_of_the_sets(piece.told)
            if not told or (piece.told in (told, told + 1) and not self._group_told()):
                self._skip(BEHIND_AN_ORDINAL)  # "1st set 8, 2nd set 7": labels

    def _stopped_at(self, place: Piece) -> bool:
        """ "3x8 100 stopped after the second set": fewer sets than were told, or than were planned."""
        before = self.at - 1
        while before > max(0, self.at - REACH_OF_A_STOP) and self.kinds[before] in AHEAD_OF_A_STOP:
            before -= 1
        stopped = before >= 0 and before < self.at - 1 and is_cued(self.pieces[before].text, STOPPED)
        return stopped and bool(self.out.found) and place.told < self._sets_told()

    def _one_of_the_sets(self, place: int) -> None:
        at = self.at
        self._skip(BESIDE_A_RESULT)
        number = self.pieces[self.at] if self.at < len(self.pieces) else None
        if place == LAST_SET and number is not None and self.out.found and self._rates_the_last(number):
            return
        if place == LAST_SET and self._ends_the_list(at - 1):
            self.at = at
            return
        if place == LAST_SET and number is not None and self._speaks_of_several(at - 1, number):
            self._pass(self.at)
            self.at += 1
            return
        if number is None or not self._group_told():
            self._doubt_a_place()
            self.at = at
            self._doubt_last(place, number)
            self._pass(at - 1)
        elif number.kind is K.NUMBER and number.role in (Role.BARE, Role.REPS) and self._kind() not in PAIRED:
            if place == LAST_SET and self._counts_sets(at - 1, number):
                if not self._ends_a_remark(at - 1):
                    self._pass(self.at)
                self.at += 1
                return
            rated = self.kinds[self.at - 1] is K.WITH and number.role is Role.BARE and number.value <= TOP_OF_SCALE
            self.out.dangling = self.out.dangling or rated  # "3x5 100, last one at 9": reps, or an effort
            self.out.placed_reps += ((place, int(number.value)),)
            self.last_at = len(self.out.found) if place == LAST_SET else self.last_at
            self.out.dangling = self.out.dangling or self._listed_behind()
            self.at += 1
        else:
            self.at = at
            self._pass(at - 1)

    def _ends_the_list(self, at: int) -> bool:
        """ "11, 10, and 9 on the last", "80x8, 80x8, 80x6 on the last": the last of the sets told, and no set more."""
        last, number = self._last(), self.pieces[at - 1]
        headed = self._group_told()  # "80x8, 8, 7 on the last": the first with its load
        if last is None or not at or self._kind(0) not in CLAUSE_ENDS or (headed and not self._listed_behind()):
            return False
        if not last.size:
            return False  # "another, last set": told without a number
        if number is not last.factors[-1][-1] or len(last.factors[-1]) > 1:
            return False
        listed = [chunk for chunk in self.out.found if chunk.size == last.size and not chunk.at]
        alike = {chunk.before for chunk in listed[1:]}
        enough = len(listed) + headed > 1 + (last.size == 1)
        return enough and (last.before is K.AND or alike == {last.before})

    def _counts_sets(self, at: int, number: Piece) -> bool:
        """ "3x8, last 2 with a band", "feet up last 2", "last 3 reps slow": so many of the sets, or of the reps."""
        if self.pieces[at].told != LAST_ALONE:
            return False
        if number.role is Role.REPS:
            return True
        ahead = at - 1
        while ahead and self.kinds[ahead] in (K.FILLER, K.FOR):
            ahead -= 1
        counted = number.spelled or self.kinds[ahead] in WORDS_AHEAD
        if counted and 1 < number.value <= self._sets_of_group():
            return True
        return 1 < number.value <= self._sets_of_group() and self._kind() not in BEHIND_A_COUNT

    def _note_last(self, behind: int) -> None:
        """ "3x8 70 last set @9, then 50x12": the last of the sets told so far, unless the set itself stands behind."""
        if self.kinds[behind] is not K.NUMBER or self.kinds[behind + 1] not in PAIRED:
            self.last_at = len(self.out.found)
        elif self._group_told():
            self.out.dangling = True  # "3x8 70, last set to failure 60x12": of which of them?

    def _speaks_of_several(self, at: int, number: Piece) -> bool:
        """ "80x8, 90x8 last 2 reps slow", "last 2 sets paused": what some of those told before were like."""
        told = number.kind is K.NUMBER and number.role in (Role.REPS, Role.SETS) and bool(self.out.found)
        if not told or self.pieces[at].told != LAST_ALONE or (number.role is Role.REPS and self._group_told()):
            return False
        remarked = self._kind() in REMARKED
        self.out.dangling = self.out.dangling or (number.role is Role.SETS and not remarked)
        return remarked or number.role is Role.SETS

    def _rates_the_last(self, told: Piece) -> bool:
        """ "last set rpe 9", "last @9": reads the effort of the last set alone."""
        if told.kind is K.EFFORT and len(told.efforts) == 1:
            self.out.last_effort = told.efforts[0]
            self.at += 1
            self._note_last(self.at)
            return True
        if told.kind is K.AT and self._rated_behind_sign() and (self._group_told() or self._load_told()):
            self.out.last_effort = Effort.from_rpe(self.pieces[self.at + 1].value)
            self.at += 2
            self._note_last(self.at)
            return True
        return False

    def _load_told(self) -> bool:
        """Whether the number behind "@" can only be an effort, as a load was told before it."""
        for chunk in self.out.found:
            numbers = [number for factor in chunk.factors for number in factor]
            if chunk.at or any(one.role is Role.LOAD or one.value > MOST_LOADED_REPS for one in numbers):
                return True
        return False

    def _listed_behind(self) -> bool:
        """ "100 for 5, then 4, last set only 3": of which sets, nobody can say."""
        alone = [chunk.factors[0][-1] for chunk in self.out.found if chunk.size == 1 and not chunk.at]
        return any(one.role in (Role.BARE, Role.REPS) and one.value <= MOST_LOADED_REPS for one in alone)

    def _doubt_last(self, place: int, number: Piece | None) -> None:
        """ "8 8 8, last 4": a fourth set, or what the third came to."""
        counts = number is not None and number.kind is K.NUMBER and number.role in (Role.BARE, Role.REPS)
        listed = [chunk for chunk in self.out.found if chunk.size == 1 and not chunk.at][-2:]
        if place == LAST_SET and counts and len(listed) > 1 and self._kind() not in PAIRED:
            self.out.last_told = len(self.out.found)

    def _rated_behind_sign(self) -> bool:
        rating = self.pieces[self.at + 1] if self.at + 1 < len(self.pieces) else None
        return rating is not None and rating.role is Role.BARE and 1 <= rating.value <= TOP_OF_SCALE

    def _group_told(self) -> bool:
        """Whether the sets so far were told as a group: 3x8, and perhaps its load."""
        groups = [chunk for chunk in self.out.found if chunk.size > 1]
        return len(groups) == 1 and all(chunk.size == 1 for chunk in self.out.found if chunk is not groups[0])

    def got(self, piece: Piece) -> None:
        """ "90x3+ got 6": the result counts; "5x5 but got 4 on the last": so does that one set's."""
        if self._got_on_the_last() or self._got_on_a_set():
            return
        told = self._number_behind(1 + (self._kind() is K.ONLY))  # "80x8, got only 4"
        if self.out.found and told and not self._got_another():
            self.out.result_from = len(self.out.found)
        self.out.dangling = self.out.dangling or self._got_some_of_the_tries()
        self.at += 1

    def _got_some_of_the_tries(self) -> bool:
        """ "3 goes at 140, got 1": one of the three was made, or one rep in each."""
        number = self.pieces[self.at + 1] if self._kind() is K.NUMBER else None
        counts = [one for one in numbers_in(self.out) if one.role is not Role.LOAD and one.value <= MOST_LOADED_REPS]
        alone = len(counts) == 1 and counts[0].role is Role.SETS
        return number is not None and number.role is Role.BARE and alone and number.value <= counts[0].value

    def _got_on_a_set(self) -> bool:
        """ "4x8 60, got 7 on set 3", "got 7 on the third set": what became of one set of the group."""
        reps = self.pieces[self.at + 1] if self._kind() is K.NUMBER else None
        at = self.at + 2
        while at < len(self.pieces) and self.kinds[at] in BEHIND_A_RESULT:
            at += 1
        if reps is None or reps.role not in (Role.BARE, Role.REPS) or not self._group_told():
            return False
        place, behind = self._place_told(at)
        if not place:
            return False
        self.out.placed_reps += ((place, int(reps.value)),)
        self.at = behind
        return True

    def _place_told(self, at: int) -> tuple[int, int]:
        """Which set "set 3" or "the third set" is, and the place behind; 0 where no set is pointed at."""
        told = self.pieces[at : at + 2]
        kinds = [piece.kind for piece in told]
        if kinds[:1] == [K.ORDINAL]:
            return told[0].told, at + 1 + (kinds[1:] == [K.SETS])
        numbered = kinds == [K.SETS, K.NUMBER] and not told[0].text.endswith("s") and told[1].role is Role.BARE
        return (int(told[1].value), at + 2) if numbered else (0, at)

    def _got_another(self) -> bool:
        """ "100 for 5, then hit 105 for 3", "got 6 at 100, added 5 kg and got 4": one more set, and no result."""
        if self.out.maximum:
            return False
        told_before = any(piece.kind is K.GOT for piece in self.pieces[: self.at])
        return told_before or self.separator in GOING_ON or self._loaded_behind() or self._last_has_no_reps()

    def _loaded_behind(self) -> bool:
        """Whether the sets behind have a load of their own."""
        ahead = 1
        while self._kind(ahead) is K.FILLER:
            ahead += 1
        number = self.pieces[self.at + ahead] if self._kind(ahead) is K.NUMBER else None
        if number is None:
            return False
        linked = self._kind(ahead + 1) is K.FOR
        linked = linked or (self._kind(ahead + 1) is K.WITH and self._kind(ahead + 2) is K.NUMBER)
        return linked or number.role is Role.LOAD or number.value > MOST_LOADED_REPS

    def _last_has_no_reps(self) -> bool:
        """ "100 for 5, went up to 105 and got 3": the load of the next set."""
        last = self._last()
        numbers = last.factors[0] if last is not None and last.size == 1 else ()
        loaded = len(numbers) == 1 and (numbers[0].role is Role.LOAD or numbers[0].value > MOST_LOADED_REPS)
        return loaded and tells_a_load(self.out.found[:-1])

    def _is_of_the_last(self) -> bool:
        """ "3x8 60, 5 on the last": what the last set of a group came to, where its load was told; of reps that stand
        one by one ("60x8, 8, 7 last one was hard") it is one more.
        """
        if not self._load_told() or self._listed_behind() or self._kind() not in (K.LAST, K.REPS, K.FOR, K.FILLER):
            return False
        self.at -= 1
        found = self._got_on_the_last()
        self.at += not found
        return found

    def only(self, piece: Piece) -> None:
        """ "5x5 100 but only 4 on the last", "4x8 60, only did 3"."""
        if not (self._got_on_the_last() or self._got_on_a_set() or self._did_fewer()):
            self.at += 1

    def _did_fewer(self) -> bool:
        """ "4 sets of 8 at 60, only did 3": so many of the sets; more than were told may be anything."""
        ahead = 1
        while self._kind(ahead) is K.FILLER:
            ahead += 1
        number = self.pieces[self.at + ahead] if self._kind(ahead) is K.NUMBER else None
        if number is None or number.role not in (Role.BARE, Role.SETS) or self._kind(ahead + 1) not in ENDS_OF_A_COUNT:
            return False
        if not self._group_told() or (ahead < LEAST_AHEAD and number.role is Role.BARE):
            return False
        group = next(chunk for chunk in self.out.found if chunk.size > 1)
        sets = group.factors[0][-1:]
        if not sets or not 1 <= number.value < sets[0].value or sets[0].value > MOST_SETS:
            return False
        group.factors[0] = (sets[0]._replace(value=number.value),)
        self.at += ahead + 1
        return True

    def _got_on_the_last(self) -> bool:
        ahead = 1
        while self._kind(ahead) in (K.FILLER, K.ONLY):
            ahead += 1
        if self._kind(ahead) is not K.NUMBER or not self._group_told():
            return False
        number = self.pieces[self.at + ahead]
        ahead += 1
        while self._kind(ahead) in BEHIND_A_RESULT:
            ahead += 1
        if self._kind(ahead) is not K.LAST or number.role not in (Role.BARE, Role.REPS):
            return False
        self.out.dangling = self.out.dangling or self._listed_behind()
        self.out.placed_reps += ((LAST_SET, int(number.value)),)
        self.last_at = len(self.out.found)
        self.at += ahead + 1
        return True

    def arrow(self, piece: Piece) -> None:
        """ "3x12 @ 50 > 12, 11, 9" tells results, "85x5+ > 8" too; "45x12 > 35x9" is a drop."""
        if not self._takes_results(close=None) and not self._takes_open_result():
            self.drop(piece)

    def colon(self, piece: Piece) -> None:
        """ "3x8 @ 70: 8/8/6"."""
        if not self._takes_results(close=None):
            self.at += 1

    def drop(self, piece: Piece) -> None:
        raise NotImplementedError

    def _takes_open_result(self) -> bool:
        """ "5+ > 8 reps": an open set, and what came of it."""
        if not self.out.maximum or self._kind() is not K.NUMBER or self._kind(2) in PAIRED:
            return False
        self.out.result_from = len(self.out.found)
        self.at += 1
        return True

    def _takes_results(self, close: K | None = K.CLOSE) -> bool:
        """A list behind a group: "3x8 70 (8,8,6)"."""
        end = self.at + 1
        while end < len(self.pieces) and self.pieces[end].kind in LISTED and end <= self.at + 2 * MOST_LISTED:
            end += 1
        behind = self.pieces[end].kind if end < len(self.pieces) else None
        numbers = tuple(piece for piece in self.pieces[self.at + 1 : end] if piece.kind is K.NUMBER)
        closes = behind is close if close else behind not in PAIRED
        if not closes or len(numbers) < 2 or not self._group_told():
            return False
        loads = self._are_loads(numbers)
        if (loads or close is None) and len(numbers) not in self._counts_of_group():
            return False
        if loads:
            self.out.found[0].at = numbers
        else:
            self.out.results = numbers
            self.out.dangling = self.out.dangling or may_be_efforts(numbers, self.out.found)
        self.at = end + (close is not None)
        return True

    def _are_loads(self, numbers: tuple[Piece, ...]) -> bool:
        """ "3 x 5 (80, 82.5, 85)": loads, one for each set, where no load was told."""
        alone = len(self.out.found) == 1 and not self.out.found[0].at and self.out.found[0].size == 2
        reps = self.out.found[0].factors[-1][-1:] if alone else ()
        return bool(reps) and min(number.value for number in numbers) > max(Decimal(10), reps[0].value * 2)

    def _sets_of_group(self) -> int:
        group = next(chunk for chunk in self.out.found if chunk.size > 1)
        return int(group.factors[0][0].value) if group.factors[0] else 0

    def _counts_of_group(self) -> list[int]:
        """The numbers of its group that may count its sets: of "60x8 x3" the last, of "100x3x5" the last two."""
        group = next(chunk for chunk in self.out.found if chunk.size > 1)
        if group.times is not None:
            return [group.times]
        heads = [factor[0] for factor in group.factors if factor]
        if group.size != THREE or not heads or (heads[0].role is Role.BARE and heads[0].value <= MOST_SETS):
            return [self._sets_of_group()]
        return [int(head.value) for head in heads[1:] if head.role in (Role.BARE, Role.SETS)]

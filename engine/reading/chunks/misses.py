"""A miss told of the sets so far: a rep that was not made, a load missed at once, a set that another number points at.

miss = "missed" ( [ "last" | ORDINAL | NUMBER ] [ "rep" ] [ "on" SET ] | LOAD )     "75x2 missed the second"
Told of no rep it is the last set's; a load behind the word is a set of its own: "95x1 then failed 97.5".
Which of several sets fell short must be clear, or it is asked.
"""

from __future__ import annotations

from decimal import Decimal

from engine.reading.chunks.chunks import LAST_REP, Chunk
from engine.reading.chunks.results import PAIRED, ResultChunks
from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.pieces import (
    LAST_OF_THE_REPS,
    LAST_OF_THE_SETS,
    MOST_LOADED_REPS,
    MOST_SETS,
    Piece,
    Role,
    is_one_word,
)
from engine.reading.words.tokens import CROSS

SECOND = "second"
PAIR = 2
ENDS_OF_A_REP = frozenset((None, K.COMMA, K.STOP, K.LINE, K.CLOSE, K.OPEN, K.THEN, K.AND, K.NOTE, K.EFFORT, K.DASH))
COUNTS = frozenset((Role.BARE, Role.REPS, Role.SETS))
PARTING_TRIES = frozenset((K.COMMA, K.STOP, K.THEN, K.AND, K.LINE))
BEHIND_A_TRY = PARTING_TRIES | {K.FILLER, K.NOTE}
REACH_OF_A_TRY = 8
"""Pieces between a try and the set behind it. Common practice, no source."""
ENDS_OF_A_CROSSED_SET = frozenset(
    (K.NUMBER, K.KG, K.LB, K.REPS, K.EFFORT, K.NOTE, K.MISS, K.FAILURE, K.CLOSE, K.OPEN, K.COUNT)
)
AHEAD_OF_ITS_SET = frozenset((K.OF, K.WITH, K.AT))


class MissedChunks(ResultChunks):
    """The part of the walk that reads what was missed."""

    def miss(self, piece: Piece) -> None:
        if piece.text == CROSS:
            self._crossed()
            return
        behind_a_plus = self.kinds[self.at - 1] is K.PLUS and self.at > 0
        self.at += 1
        self._skip(frozenset((K.FILLER,)))
        if self._singles_missed() or self._missed_try():
            return
        rep = None
        of_a_rep = True
        if self._kind(0) is K.LAST:
            rep, of_a_rep = LAST_REP, self.pieces[self.at].told == LAST_OF_THE_REPS or self._kind(1) is K.REPS
            rep = rep if of_a_rep else self._rep_of_the_last_one()
            self._skip(frozenset((K.LAST, K.REPS, K.FILLER)))
            self._missed_set(of_a_rep)
        else:
            rep = self._rep_named()
        if rep is not None:
            self._missed_elsewhere(rep)
        elif self._number_of_it_ahead() or self._missed_load():
            return
        last = self._last()
        if last is not None:
            last.missed, last.missed_rep = True, rep or None
            last.then_missed = last.then_missed or behind_a_plus
            self._tried_so_often(last)
        elif rep is not None:
            self.out.miss_ahead = rep
            self.out.pins = self.out.pins or not of_a_rep  # "missed the last one": of what, and how many were made?
        else:
            self.out.pins = self.out.pins or self._kind(0) is K.NUMBER  # "miss 3x8": of which set?
            self.out.notes.append(piece)

    def _rep_of_the_last_one(self) -> int:
        """The rep that "5 5 4, missed the last one" tells of: 0 for the one behind those told, where the last set fell
        short; of "140x5 missed the last one" it may be the fifth or a sixth, and is asked.
        """
        reps = self._reps_told_last()
        listed = [chunk.factors[-1][-1].value for chunk in self.out.found[-2:] if chunk.factors and chunk.factors[-1]]
        if reps > 1 and len(listed) > 1 and reps < listed[0] <= MOST_LOADED_REPS:
            return 0
        if reps > 1 and not self._tells_a_count_of_sets():
            self.out.dangling = True
            return 0
        return LAST_REP

    def _tells_a_count_of_sets(self) -> bool:
        """ "3x5 140": "the last one" of its fives fell short by one."""
        last = self._last()
        if last is None or last.size < PAIR or not last.factors[0]:
            return False  # "x8"
        return last.factors[0][0].value <= MOST_LOADED_REPS

    def _crossed(self) -> None:
        """ "100x5 ✅ 110x5 ❌": the set right before it; anywhere else nobody can say what was missed."""
        last = self._last()
        if last is None or self._kind(-1) not in ENDS_OF_A_CROSSED_SET:
            self.out.dangling = True
        else:
            last.missed = True
        self.at += 1

    def _tried_so_often(self, last: Chunk) -> None:
        """ "200 no lift x2", "110x1 missed x3": tries, of which none was made; of several reps it may be a next set."""
        count = self.pieces[self.at + 1] if self._kind(0) is K.TIMES and self._kind(1) is K.NUMBER else None
        numbers = last.factors[-1] if last.factors else ()
        if not numbers or count is None or self._kind(2) not in ENDS_OF_A_REP or not 1 < count.value <= MOST_SETS:
            return
        single = last.size == 1 or numbers[-1].value == 1
        self.out.dangling = self.out.dangling or not single
        self.out.found += [last.copy() for _ in range(int(count.value) - 1)]
        self.at += 2

    def _missed_try(self) -> bool:
        """ "80x5 twice, missed the third set": how many were made of it, if it was begun at all, nobody can say."""
        if self._kind(0) is not K.ORDINAL or not _names_a_try(self.pieces[self.at]):
            return False
        self.out.dangling = True
        self.at += 1
        return True

    def _singles_missed(self) -> bool:
        """ "5 singles at 150, missed two": so many of them, or as many more: asked."""
        number, last = self.pieces[self.at] if self._kind(0) is K.NUMBER else None, self._last()
        told = last is not None and last.size == PAIR and len(last.factors[0]) == 1 and len(last.factors[1]) == 1
        if number is None or last is None or not told or self._kind(1) not in ENDS_OF_A_REP | {K.ALTERED}:
            return False
        sets, reps = last.factors[0][0], last.factors[1][0]
        if reps.value != 1 or number.role is not Role.BARE or not number.value < sets.value <= MOST_SETS:
            return False
        last.factors[0] = (sets._replace(value=sets.value - number.value),)
        for _ in range(int(number.value)):
            missed = last.copy()
            missed.factors = [(sets._replace(value=Decimal(1)),), (reps,)]
            missed.missed, missed.missed_rep = True, 1
            self.out.found.append(missed)
        self.out.dangling = True
        self.at += 1 + (self._kind(1) is K.ALTERED)
        return True

    def _rep_named(self) -> int | None:
        """The rep that was missed, where it is told: "missed the second", "failed the 4th rep", "failed 6"."""
        if self._kind(0) is K.ORDINAL or (self._kind(0) is K.NUMBER and self._kind(1) is K.REPS):
            ordinal = self.pieces[self.at]
            self.at += 1
            alone = self._kind(0) in ENDS_OF_A_REP and self.kinds[self.at - 1] is K.ORDINAL
            self.out.dangling = self.out.dangling or (alone and 1 < self._sets_told() == ordinal.told - 1)
            self._skip(frozenset((K.REPS, K.FILLER, K.COUNT)))
            self._of_the_last_set_told()
            return ordinal.told or int(ordinal.value)
        if self._kind(0) is K.SECONDS and self.pieces[self.at].text == SECOND:
            self.at += 1
            self._skip(frozenset((K.REPS, K.FILLER)))
            return 2  # "75x2 missed the second": the rep, no time
        return self._rep_in_figures()

    def _rep_in_figures(self) -> int | None:
        """ "100x5, failed 6", "missed rep 5", "failed on 5": the rep that a number names, which is the last of the set
        before it or the next one. Any other number is asked about, and so is the last rep with no word for it.
        """
        named = self._kind(0) is K.REPS or self._kind(0) in (K.AT, K.WITH) or self._kind(-1) is K.FILLER
        ahead = int(self._kind(0) in (K.REPS, K.AT, K.WITH))
        number = self.pieces[self.at + ahead] if self._kind(ahead) is K.NUMBER else None
        made = self._reps_told_last()
        if number is None or not made or number.role not in COUNTS or number.value > MOST_LOADED_REPS:
            return None
        if self._kind(ahead + 1) not in ENDS_OF_A_REP:
            return None
        named = named or _is_a_place(number)
        counts = number.role is not Role.BARE and not _is_a_place(number)  # "missed 2 reps", "failed 2 sets"
        several = self._kind(ahead + 1) is K.AND and self._kind(ahead + 2) is K.NUMBER  # "missed 9 and 10"
        sure = not (counts or several) and (number.value == made + 1 or (number.value == made and named))
        self.out.dangling = self.out.dangling or not sure
        self.at += ahead + 1
        return made + 1 if counts else int(number.value)

    def _reps_told_last(self) -> int:
        """The reps of the set told last; 0 where there is none, or a load that waits for them."""
        last = self._last()
        numbers = last.factors[-1] if last is not None and last.factors else ()
        waiting = last is not None and last.size == 1 and not self._tells_reps_alone(last)
        return 0 if not numbers or waiting or numbers[-1].value > MOST_LOADED_REPS else int(numbers[-1].value)

    def _tells_reps_alone(self, last: Chunk) -> bool:
        return last.factors[0][-1].role in (Role.BARE, Role.REPS) and last.factors[0][-1].value <= MOST_LOADED_REPS

    def _fails_at_a_rep(self) -> bool:
        """ "100x5, rep 6 fail"; "100x5, 6 fail" is a set more."""
        number = self.pieces[self.at - 1]
        named = _is_a_place(number) or (self.kinds[self.at - 2] is K.REPS and number.kind is K.NUMBER)
        return self.at > 1 and named and self._number_of_it_ahead()

    def _number_of_it_ahead(self) -> bool:
        """ "100x5, 6 failed", "100x5, went for 6 and failed": the next rep, or a set of so many that ended so: asked.
        "100x5, rep 6 failed" names the rep, "100x6, rep 6 failed" the last of those told; of any other it is asked.
        """
        last = self._last()
        before = self.out.found[-2] if len(self.out.found) > 1 else None
        alone = last is not None and last.size == 1 and not last.at and before is not None and before.size > 0
        alone = alone and before is not None and (before.tells_reps or self.depth > 0)
        numbers = last.factors[0] if last is not None and alone else ()
        made = before.factors[-1][-1].value if before is not None and before.factors and before.factors[-1] else 0
        if before is None or len(numbers) != 1:
            return False
        start = numbers[0].start  # plates and shares were worked out since it stood among the pieces
        place = next((at for at, piece in enumerate(self.pieces) if piece.start == start), 0)
        named = place > 0 and (_is_a_place(numbers[0]) or self.kinds[place - 1] is K.REPS)
        next_one = numbers[0].value == made + 1
        if not named or not (next_one or numbers[0].value == made):
            self.out.dangling = self.out.dangling or named or (next_one and numbers[0].role is Role.BARE)
            return False
        self.out.found.pop()
        before.missed, before.missed_rep = True, int(numbers[0].value)
        return True

    def _missed_elsewhere(self, rep: int) -> None:
        """A miss told of a set by its number, or of one that stands behind: "missed the 3rd of 5x155"."""
        behind = 1 + (self._kind(1) is K.FILLER)
        if self.out.found and self._kind(0) in AHEAD_OF_ITS_SET and self._kind(behind) is K.NUMBER:
            self.out.dangling = True
        elif self._kind(0) in (K.SETS, K.ORDINAL) or self._kind(behind) is K.ORDINAL:
            self.at += behind if self._kind(0) in AHEAD_OF_ITS_SET else 0
            self._missed_in_the_next(rep)

    def _missed_in_the_next(self, rep: int) -> None:
        """ "95: 3, 3, missed the third on set three": the set behind those told; of any other set it is asked."""
        placed = self.pieces[self.at]
        number = self.pieces[self.at + 1] if placed.kind is K.SETS and self._kind() is K.NUMBER else None
        set_told = placed.told if placed.kind is K.ORDINAL else int(number.value) if number is not None else 0
        reps = [chunk for chunk in self.out.found if chunk.size == 1 and not chunk.at and not chunk.missed]
        bare = [chunk.factors[0][0] for chunk in reps if len(chunk.factors[0]) == 1]
        told = [one for one in bare if one.role in (Role.BARE, Role.REPS) and one.value <= MOST_LOADED_REPS]
        alone = len(bare) == len(self.out.found) and len(bare) - len(told) <= 1
        if not alone or set_told != len(told) + 1 or not told or rep < 1:
            self.out.dangling = True
            return
        self.at += 1 + (number is not None)
        reps_meant = told[-1]._replace(value=Decimal(rep), text=str(rep), role=Role.REPS)
        self._place(Chunk([(reps_meant,)], before=self.separator))

    def _of_the_last_set_told(self) -> None:
        """ "failed the fourth rep on the last set": a miss speaks of the last of the sets before it anyhow."""
        if self._kind(0) is K.SECONDS and self.pieces[self.at].text == SECOND:
            self.out.dangling = True  # "failed the fourth rep on the second set": of that one alone
        if self._kind(0) is not K.LAST or not self.out.found or self.pieces[self.at].told == LAST_OF_THE_REPS:
            return
        self._skip(frozenset((K.LAST, K.SETS, K.FILLER)))
        self.out.dangling = self.out.dangling or self._kind(0) in (K.NUMBER, K.ORDINAL)

    def _missed_set(self, of_a_rep: bool) -> None:
        """ "missed the last set" of several, "missed the last rep on the third set": which reps were made?"""
        of_several = (self._group_told() or len(self.out.found) > 2) and not of_a_rep
        named = self._kind(-1) is K.SETS or _names_a_set(self.pieces[self.at - 1])
        placed = self._kind(0) is K.ORDINAL or self._kind(0) is K.NUMBER
        self.out.dangling = self.out.dangling or (of_several and named) or placed

    def _missed_load(self) -> bool:
        """ "95x1 then failed 97.5": a load behind the word, missed at once."""
        number, last = self.pieces[self.at] if self.at < len(self.pieces) else None, self._last()
        if number is None or number.kind is not K.NUMBER:
            return False
        if not self._misses_first() if last is None else last.size < 2 and self.separator is None:
            return False
        heavy = number.role is Role.LOAD or number.value > MOST_LOADED_REPS
        if self._kind(1) in PAIRED or (self._kind(1) is K.FOR and self._kind(2) is K.NUMBER):
            self.out.dangling = self.out.dangling or heavy  # "100x5, failed 110x3": how many were made?
            return False
        if number.role is not Role.LOAD and not (number.role is Role.BARE and number.value > MOST_LOADED_REPS):
            return False
        self.at += 1
        chunk = Chunk([(number,)], before=self.separator)
        self._place(chunk)
        chunk.missed = True
        return True

    def _misses_first(self) -> bool:
        """ "missed 132.5 on bench, then 125x1": a try in front of all sets, and a set with its own load behind it."""
        at = self.at + 1
        while at < self.at + REACH_OF_A_TRY and self.kinds[at] in BEHIND_A_TRY:
            at += 1
        parted = not PARTING_TRIES.isdisjoint(self.kinds[self.at + 1 : at])
        paired = self.kinds[at] is K.NUMBER and self.kinds[at + 1] in (K.TIMES, K.FOR)
        return parted and paired and self.pieces[at].value > MOST_LOADED_REPS


def _names_a_try(ordinal: Piece) -> bool:
    """ "third set", "third try", and no "third" or "the third", which may be a rep."""
    alone = is_one_word(ordinal) or CUES_OF[ordinal.text].intersection(("the", "me"))
    return ordinal.kind is K.ORDINAL and not ordinal.text[:1].isdigit() and not alone


def _is_a_place(number: Piece) -> bool:
    """ "rep 6", and no "6 reps", whose word is part of the number."""
    return number.role is Role.REPS and is_one_word(number)


def _names_a_set(piece: Piece) -> bool:
    """ "the last set", which is one piece."""
    return piece.kind is K.LAST and piece.told == LAST_OF_THE_SETS

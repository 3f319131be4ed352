"""Sets told by pointing at the one before: "same again twice", "another two sets like that", "2 more sets", "x2 more".

again = ( "same" | "another" | NUMBER "more" | "x" NUMBER "more" ) [ NUMBER ] [ "sets" ] [ "twice" ] up to a separator
What stands with new reps or a load of its own ("another 5 at 60") is no repeat. "3 more" alone may be of reps or sets.
"""

from __future__ import annotations

from itertools import pairwise

from engine.reading.chunks.chunks import MOST_REPEATS, MOST_SETS_BY_REPEAT, Chunk
from engine.reading.chunks.warmups import WarmUpChunks
from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role

LAST_OF_ALL = frozenset((None, K.LINE, K.STOP, K.NOTE, K.CLOSE))
REPEATED = frozenset((Role.REPS, Role.SECONDS, Role.METRES))
ENDS = frozenset((K.COMMA, K.LINE, K.STOP, K.NOTE, K.EFFORT, K.CLOSE, K.OPEN, K.FAILURE, K.DASH, K.THEN))
POINTS_BACK = frozenset((K.SAME, K.ANOTHER, K.MORE, K.EXTRA))
PASSED_OVER = POINTS_BACK | frozenset((K.FILLER, K.SETS, K.AND, K.OF, K.TIMES, K.TIMES_WORD, K.BOTH))
LONGEST_REPEAT = 8
REACH_OF_A_SPAN = 6
MOST_SETS_MORE = 3
"""How many sets "three more at 60" may be. Common practice, no source."""
REMARKS = frozenset((K.CLOSE, K.EFFORT, K.NOTE, K.PAUSE, K.EACH))
LINKED = frozenset((K.TIMES, K.SETS, K.REPS, K.FOR))
ENDS_OF_A_CLAUSE = frozenset((None, K.COMMA, K.LINE, K.STOP, K.AT, K.WITH))
FEWEST_RUNGS = 3
SAYS_WEIGHT, SAYS_EARLIER = 1, 2
"""What a SAME piece's `told` says of "same weight" and of "same as last time"; of "same weight as last time" both."""


class RepeatedChunks(WarmUpChunks):
    """The part of the walk that reads sets told as the one before once more."""

    def times_word(self, piece: Piece) -> None:
        """ "87.5 x 8 - times three", "80x5 times 4": so many sets of what stands before it; "80 times 5" is 80x5."""
        self.at += 1
        last, count = self._last(), self.pieces[self.at] if self._kind(0) is K.NUMBER else None
        if last is None or count is None:
            return
        if self._counts_sets_of(last, count):
            last.times = int(count.value)
            self.at += 1
        elif last.size == 1 and self.separator is None and not last.at:
            self.out.found.pop()
            last.factors.append(self.factor(None))
            self._rest_of_chunk(last)

    def _counts_sets_of(self, last: Chunk, count: Piece) -> bool:
        """Whether a number behind "times" or "x" can only say how often the set before it was done."""
        whole = count.value == int(count.value) and 1 <= count.value <= MOST_REPEATS
        if last.times is not None or not whole or count.role not in (Role.BARE, Role.SETS, Role.TIMES):
            return False
        numbers = last.factors[-1] if last.factors else ()
        told = last.size > 1 or bool(last.at) or (bool(numbers) and numbers[-1].role in REPEATED)
        alone = self.separator is not None and len(numbers) == 1 and not numbers[0].unit
        return told or (alone and (numbers[0].role is Role.PLURAL or numbers[0].value <= MOST_LOADED_REPS))

    def carried(self, piece: Piece) -> None:
        """ "80x5, x3 sets": the pair before it, so many times; else as a load carried on."""
        last, count = self._last(), self.pieces[self.at + 1] if self._kind() is K.NUMBER else None
        if last is not None and last.plus and count is not None and self._is_of_a_cluster(last, count):
            return
        if last is not None and count is not None and self._climbs(last, count):
            last.times = int(count.value)  # "2-3-5 ladder x3"
            self.at += 2
            return
        self.out.dangling = self.out.dangling or (last is None and self._heads_what_follows())
        if last is not None and count is not None and self._counts_past_a_remark(last, count):
            return
        if last is None or count is None or not last.tells_reps or not self._counts_sets_of(last, count):
            super().carried(piece)
            return
        alone = count.role is Role.BARE and self._kind(2) in LAST_OF_ALL and 1 < count.value <= MOST_SETS_BY_REPEAT
        if (count.role is Role.SETS and self._kind(2) is not K.OF) or (
            alone and (last.counted or self.separator is K.DASH)
        ):
            last.times = int(count.value)
            self.at += 2
            return
        gap = last.factors[-1][-1].value - count.value if last.factors[-1] else 1
        if alone and self.separator is K.COMMA and gap != 1 and self.carried_before is not last:
            self.out.maybe_times = len(self.out.found), int(count.value)
        super().carried(piece)
        self.carried_before = self._last()

    def _counts_past_a_remark(self, last: Chunk, count: Piece) -> bool:
        """ "100x12 (each leg) x3", "80x5 @8 x3": so many sets of what was remarked on; it is asked where it may be the
        next set of a list: "pull ups 8 (strict) x3", "80x5 (easy) x4".
        """
        ends = self._kind(2) in LAST_OF_ALL or (self._kind(2) in (K.COMMA, K.THEN) and self._kind(3) is K.NUMBER)
        if self.separator not in (None, K.SLASH) or count.role is not Role.BARE or not ends:
            return False
        rated = self.kinds[self.at - 1] is K.NUMBER and self.kinds[self.at - 2] is K.AT
        remarked = rated or self.kinds[self.at - 1] in REMARKS
        if not remarked or not 1 < count.value <= MOST_SETS_BY_REPEAT:
            return False
        if not self._counts_sets_of(last, count):
            self.out.dangling = self.out.dangling or (last.times is None and self._is_multiplied(last))
            return False
        reps = last.factors[-1][-1:] if last.factors else ()
        if not reps or not self._is_loaded_pair(last) or reps[0].value - count.value == 1:
            self.out.dangling = True
        last.times = int(count.value)
        self.at += 2
        return True

    def _is_loaded_pair(self, last: Chunk) -> bool:
        head = last.factors[0][-1:] if last.size > 1 else ()
        return last.counted or (bool(head) and (head[0].role is Role.LOAD or head[0].value > MOST_LOADED_REPS))

    def _is_of_a_cluster(self, last: Chunk, count: Piece) -> bool:
        """ "60x8 (+3+2) x2"; behind a comma it may be a set of its own."""
        listed, at = self.separator is K.COMMA and count.value <= MOST_SETS_BY_REPEAT, self.at
        if self.separator is None or listed:
            self._cluster_again(last)
            self.out.dangling = self.out.dangling or listed
        return self.at > at

    def _heads_what_follows(self) -> bool:
        """ "ladder x2 1-2-3", "x3 60 8 8 8": how often all that follows was done, or the reps of a set of its own."""
        behind = self.kinds[self.at + 2 : self.at + 4]
        return behind[:1] == [K.NUMBER] and behind[1] in (K.NUMBER, K.DASH, K.SLASH)

    def _climbs(self, last: Chunk, count: Piece) -> bool:
        """Whether the set before the "x" is a ladder, with a word for it between them."""
        rungs = [one.value for one in last.factors[0]] if last.size == 1 else []
        rising = len(rungs) > FEWEST_RUNGS - 1 and all(low < high for low, high in pairwise(rungs))
        return rising and self.separator is None and not last.at and count.role is Role.BARE

    carried_before: Chunk | None = None
    """The set told last with its load carried on: "60x8, x7, x5" is a list."""

    def _takes_repeat(self) -> bool:
        """Reads a repeat that starts here, and says whether one did."""
        last = self._last()
        if last is None or last.size == 0:
            return False
        end = self.at
        while end < len(self.pieces) and self.pieces[end].kind not in ENDS and end - self.at <= LONGEST_REPEAT:
            end += 1
        told = self.pieces[self.at : end]
        count = _count_of(told)
        if count is None:
            return False
        again = Chunk([], before=self.separator)
        again.again, again.whole_again = count, _says_whole(told)
        self.out.found.append(again)
        self.separator = None
        self.at = end
        return True

    def again(self, piece: Piece) -> None:
        """ "another one", "same again twice": the set before once more."""
        if self._heads_a_set_of_its_own():
            self.at += 1
            return
        if piece.kind is K.SAME and self._compares(piece):
            self.out.notes.append(piece)
            self.at += 1
            return
        if self._is_denied():
            self.at += 1
            return
        remark = self._may_be_a_remark(piece) or "perhaps" in CUES_OF[self.pieces[self.at - 1].text if self.at else ""]
        if self._takes_repeat():
            self.out.dangling = self.out.dangling or remark
            return
        if piece.kind is K.ANOTHER and self._counts_more_sets():
            self.out.dangling = True
        if piece.kind is K.SAME:
            self.same(piece)
        else:
            self.at += 1

    def _is_denied(self) -> bool:
        """ "5x8 40, never again": what will not be done again repeats no set."""
        at = self.at - 1
        while at > 0 and self.kinds[at] is K.FILLER and "notagain" not in CUES_OF[self.pieces[at].text]:
            at -= 1
        return at >= 0 and "notagain" in CUES_OF[self.pieces[at].text]

    def _may_be_a_remark(self, piece: Piece) -> bool:
        """ "3x5 100, once again" tells of one set more, or of days before; "encore fatigué" of being still tired."""
        described = self._kind() in (K.NOTE, K.UNRELATED) and "still" in CUES_OF[piece.text]
        return described or (piece.kind is K.ANOTHER and bool(piece.told))

    def _compares(self, same: Piece) -> bool:
        """ "60x8, same as last time": behind sets it says what they are like, and tells of none."""
        return bool(same.told & SAYS_EARLIER) and bool(self.out.found) and K.NUMBER not in (self._kind(), self._kind(2))

    def _heads_a_set_of_its_own(self) -> bool:
        """ "90 for 4 and again 90 for 4": a load with its reps behind the word, which then repeats nothing."""
        number = self.pieces[self.at + 1] if self._kind() is K.NUMBER else None
        loaded = number is not None and (
            number.role is Role.LOAD or (number.role is Role.BARE and number.value > MOST_LOADED_REPS)
        )
        return loaded and self._kind(2) in (K.FOR, K.TIMES) and self._kind(3) is K.NUMBER

    def _counts_more_sets(self) -> bool:
        """ "80x8, otras dos": far fewer than the reps before it, so rather sets."""
        number, last = self.pieces[self.at + 1] if self._kind() is K.NUMBER else None, self._last()
        reps = last.factors[-1][-1:] if last is not None and last.factors else ()
        if number is None or not reps or number.role is not Role.BARE or self._kind(2) in LINKED:
            return False
        return number.value <= MOST_SETS_MORE and number.value + 1 < reps[0].value

    def till(self, piece: Piece) -> None:
        """ "80x8 två till": two more; of sets, or of reps?"""
        if piece.text == "from" and self._kind() is K.NUMBER and self._goes_up_to():
            self.out.dangling = True  # "went from 100x5 to 102.5x5": two sets, or what it was and what it is
        more = piece.text == "till" and self._kind(-1) is K.NUMBER and self._kind() in ENDS_OF_A_CLAUSE
        self.out.dangling = self.out.dangling or (more and bool(self.out.found))
        self.at += 1

    def _goes_up_to(self) -> bool:
        behind = self.pieces[self.at + 1 : self.at + 1 + REACH_OF_A_SPAN]
        return any(one.text == "to" and after.kind is K.NUMBER for one, after in pairwise(behind))

    def behind_number(self, piece: Piece) -> None:
        """ "3 more": of reps, or of sets. "mais duas séries" tells sets."""
        if self._takes_repeat():
            return
        if not self._says_reps_at_a_load() and not self._says_reps_again():
            self.out.dangling = self.out.dangling or (self._kind(-1) is K.NUMBER and bool(self.out.found))
        self.at += 1

    def _says_reps_again(self) -> bool:
        """ "5 reps at 85, rest 3 min, 5 more": a set of five, as nobody does so many more sets of that."""
        told = self.out.found
        alone = len(told) > 1 and told[-1].size == 1 and told[-1].factors[0][-1] is self.pieces[self.at - 1]
        reps = told[-1].factors[0][-1].value if alone else 0
        return alone and told[-1].before is not None and MOST_SETS_MORE < reps <= MOST_LOADED_REPS

    def _says_reps_at_a_load(self) -> bool:
        """ "8 more at 40": of reps, as nobody does so many more sets."""
        told = self.out.found
        alone = len(told) == 1 and told[0].size == 1 and self._kind() in (K.AT, K.WITH) and self._kind(2) is K.NUMBER
        return alone and told[0].factors[0][0].value > MOST_SETS_MORE


def _count_of(told: list[Piece]) -> int | None:
    """How many sets more these pieces ask for; None where they are no repeat."""
    counts = [piece for piece in told if piece.kind in (K.NUMBER, K.ONCE)]
    others = [piece for piece in told if piece.kind not in (K.NUMBER, K.ONCE)]
    if len(counts) > 1 or not all(piece.kind in PASSED_OVER for piece in others):
        return None
    if not any(piece.kind in POINTS_BACK for piece in others) or any(_says_weight(piece) for piece in others):
        return None
    if not counts:
        plain = all(piece.kind is not K.ANOTHER for piece in others)
        return None if plain else 1
    count = counts[0]
    if count.kind is K.ONCE:
        return count.told
    whole = count.value == int(count.value) and 1 <= count.value <= MOST_REPEATS
    typed = count.role in (Role.SETS, Role.TIMES) or any(piece.kind in (K.SETS, K.TIMES) for piece in others)
    return int(count.value) if whole and (typed or _says_more_of_it(others, count)) else None


def _says_more_of_it(others: list[Piece], count: Piece) -> bool:
    """ "2 more like that", "the same 2 more": of sets; "3 more" alone tells of sets or of reps."""
    if count.role is not Role.BARE:
        return False
    more = [piece for piece in others if piece.kind is K.MORE]
    return any(len(piece.text) < piece.end - piece.start for piece in more) or (
        bool(more) and any(piece.kind is K.SAME for piece in others)
    )


def _says_weight(piece: Piece) -> bool:
    """ "same weight 5": at the same load, and no repeat."""
    return piece.kind is K.SAME and bool(piece.told & SAYS_WEIGHT)


def _says_whole(told: list[Piece]) -> bool:
    """ "same again" speaks of all that was told, "another set" of one set."""
    return all(piece.kind not in (K.ANOTHER, K.MORE, K.SETS, K.EXTRA) and piece.role is not Role.SETS for piece in told)

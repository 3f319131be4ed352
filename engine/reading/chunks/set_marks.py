"""Marks told of one set or group: effort, failure, the bar, a repeat, a drop, and where the work begins."""

from __future__ import annotations

from decimal import Decimal

from engine.reading.chunks.chunks import MOST_REPEATS, Chunk, numbers_in
from engine.reading.chunks.loads import LoadedChunks
from engine.reading.chunks.singles_missed import is_a_single, may_be_a_single
from engine.reading.chunks.steps import is_a_load_and_its_reps, tells_a_load
from engine.reading.chunks.sums import AMOUNTS
from engine.reading.chunks.times import COUNTABLE, TIMED_OR_HEAVY
from engine.reading.marks.effort_spans import BETWEEN_TWO
from engine.reading.marks.reps_perhaps import FAILING
from engine.reading.words.cues import CUES_OF, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import LAST_OF_THE_REPS, MOST_LOADED_REPS, Piece, Role, is_one_word
from engine.reading.words.sides_named import tells_a_side
from engine.values.sets import SetKind

MOST_SETS_TOLD = 10
"""More than this in front of "heavy sets" counts no sets. Common practice, no source."""
WORDS_OF_A_SET = frozenset((K.NOTE, K.FILLER, K.PLAIN, K.WORKING))
EVERY = frozenset(("each", "every", "per"))
BESIDE_THE_LAST = frozenset((K.FILLER, K.SETS, K.COLON, K.WITH, K.ONLY, K.GOT, K.NOTE))
MARKS_OF_ONE = frozenset((K.EFFORT, K.FAILURE, K.AT, K.NUMBER, K.MISS, K.DROP))
SAID_OF_SOMETHING = frozenset((K.PLAIN, K.UNRELATED, K.PAUSE))
HAPPENED = frozenset((K.PLAIN, K.NOTE, K.MUSCLE, K.JOINT, K.UNRELATED))
ENDS_OF_A_SET = frozenset((None, K.COMMA, K.LINE, K.STOP, K.SLASH, K.CLOSE))
BARS = frozenset((7, 10, 15, 20, 25, 35, 45))
"""What bars weigh, in either unit. Common practice, no source."""
PAIR = 2
LOADED, TOLD_OF_REPS = frozenset((Role.CHANGE, Role.LOAD, Role.PLURAL)), frozenset((K.REPS, K.NOTE, K.FILLER))
BEHIND_THE_BODY = frozenset((None, K.COMMA, K.LINE, K.STOP, K.CLOSE, K.THEN))


class MarkedChunks(LoadedChunks):
    """The part of the walk that puts marks on the chunks told so far."""

    def effort(self, piece: Piece) -> None:
        last = self._last()
        if self._of_the_last_set(piece):
            return
        if len(piece.efforts) == 1 and self._told_of_all():
            self.out.effort_of_all = piece.efforts[0]
            self.at += 1
            return
        if last is None:
            alone = Chunk([])
            alone.efforts = piece.efforts
            self.out.found.append(alone)
        else:
            last.efforts += piece.efforts
            last.effort_apart = self.separator is not None
            if piece.told == BETWEEN_TWO:
                last.effort_spans = True
        self.at += 1
        behind = self.at + (self._kind(0) is K.NOTE and self._kind(1) is K.ALTERED)  # "2 left in me every time"
        if last is not None and self.kinds[behind] is K.ALTERED and "eachtime" in CUES_OF[self.pieces[behind].text]:
            self.out.effort_of_all = piece.efforts[0] if len(piece.efforts) == 1 else None
            self.at = behind + 1  # "3x8 65, could have done 2 more each time"

    def _of_the_last_set(self, piece: Piece) -> bool:
        """ "1 rir on the last set"."""
        behind = self._behind_the_last()
        if not behind or len(piece.efforts) != 1:
            return False
        self.out.last_effort = piece.efforts[0]
        self.at = behind
        self._note_last(self.at)
        return True

    def _behind_the_last(self) -> int:
        """The place behind "on the last set", where that stands right behind a mark of sets told; else 0."""
        ahead = 1
        while self._kind(ahead) in (K.FILLER, K.FOR):
            ahead += 1
        self.out.dangling = self.out.dangling or self._kind(ahead) is K.ORDINAL  # "rpe 9 on the 3rd": of that set alone
        if self._kind(ahead) is not K.LAST or not self.out.found or self._marks_the_last(ahead + 1):
            return 0
        return self.at + ahead + 1

    def _marks_the_last(self, ahead: int) -> bool:
        """Whether "last set" has a mark of its own behind it: "rpe 8, last set rpe 9", "2 rir last set to failure"."""
        while self._kind(ahead) in BESIDE_THE_LAST:
            ahead += 1
        return self._kind(ahead) in MARKS_OF_ONE

    def failure(self, piece: Piece) -> None:
        last = self._last()
        failing = is_one_word(piece) and is_cued(piece.text, FAILING)
        bracketed = self.depth > 0 and failing
        if self._of_announced() or (failing and self._fails_at_a_rep()):
            self.at += 1
            return
        if not bracketed and (behind := self._failed_on_the_last()):
            self.out.last_to_failure = True
            self._note_last(behind)
            self.at = behind
            return
        if last is None or self._told_of_all() or self._each_of_a_list():
            self.out.failure_ahead = True
        elif bracketed and last.size and last.factors[-1][-1].value == 1:
            last.missed, last.missed_rep = True, 1
        elif failing and is_a_single(self.out.found, bracketed):
            last.missed = True
        elif self.pieces[self.at - 1].kind is K.LAST or self._last_said():
            self.out.last_to_failure = True
            self._note_last(self.at + 1)
        elif self.separator is not None and self._kind() in (K.COLON, K.NUMBER):
            self.out.notes.append(piece)
        else:
            last.failure = True
            self.out.dangling = self.out.dangling or (failing and may_be_a_single(self.out.found))
        self.at += 1

    def _each_of_a_list(self) -> bool:
        """ "14, 12, 11 each to failure", "all taken to failure": every set of a list; of one set "each" is a hand."""
        at = self.at - 1 - (self.at > 1 and self.kinds[self.at - 1] in WORDS_OF_A_SET)
        if "all" in CUES_OF[self.pieces[at].text]:
            return True
        if self.kinds[at] is not K.EACH or tells_a_side(self.pieces[at]):
            return False
        listed = [
            number for chunk in self.out.found[-2:] if chunk.size == 1 and not chunk.at for number in chunk.factors[0]
        ]
        return len(listed) > 1 and all(one.role is Role.BARE and one.value <= MOST_LOADED_REPS for one in listed)

    def _failed_on_the_last(self) -> int:
        """The place behind "to failure on the last set"; 0 where it names a rep, or a number stands behind it."""
        behind = self._behind_the_last()
        named = behind and self.pieces[behind - 1].told != LAST_OF_THE_REPS and self.kinds[behind] is not K.NUMBER
        return behind if named else 0

    def _of_announced(self) -> bool:
        """ "60kg 3 sets to failure: 14 11 9": of all the sets that were counted ahead, or of those at the load told."""
        found = self.out.found
        if not found or found[-1].size != 1 or found[-1].factors[0][-1].role is not Role.SETS or found[-1].at:
            return False
        if len(found) == 1:
            self.out.failure_ahead = True
        elif found[-2].size == 1 and found[-2].factors[0][-1].role is Role.LOAD:
            found[-2].failure = True
        else:
            return False
        return True

    def _last_said(self) -> bool:
        return any(p.kind is K.LAST for p in self.pieces[max(0, self.at - 4) : self.at])

    def same(self, piece: Piece) -> None:
        """ "same" on its own behind a set repeats it; "same weight 8 8" carries the load on."""
        last = self._last()
        alone = self._kind() in (None, K.LINE, K.COMMA, K.STOP, K.THEN) or self._kind() is K.TIMES
        told = last is not None and (last.size > 1 or bool(last.at))
        if last is None or not told or (self.separator is None and self._kind() is not K.TIMES) or not alone:
            self.at_same = last is not None and self._kind() is K.NUMBER
            self.out.same_load = self.out.same_load or not self.at_same
            self.at += 1
            return
        if piece.told:
            self.out.dangling = True  # "60x8, same weight": of how many reps, or a remark
            self.at += 1
            return
        count = 1
        if self._kind() is K.TIMES and self._kind(2) is K.NUMBER:
            count = min(int(self.pieces[self.at + 2].value), MOST_REPEATS)
            self.at += 2
        self.out.found += [last] * count
        self.at += 1

    def plus(self, piece: Piece) -> None:
        self.at += 1

    def bar(self, piece: Piece) -> None:
        if tells_a_load(self.out.found) and self._speaks_of_the_bar():
            self.out.dangling = True
            self.at += 1 + (self._kind() is K.NUMBER)
            return
        self.out.barred = True
        if (self._kind(-1) is K.PLUS and self.out.found) or (self._kind() is K.PLUS and self._kind(2) is K.NUMBER):
            self.out.dangling = True  # "3x8 60 + bar", "bar + 60": with it, or of it
        if self._kind() is K.TIMES or self._kind() is K.NUMBER or (self._kind() is K.FOR and self._number_behind(2)):
            self.chunk()
        else:
            self.at += 1
            last = self._last()
            if last is not None and not last.at and not self._is_on_the_bar(last):
                parted = self.separator is not None and tells_a_load(self.out.found)
                self.out.dangling = self.out.dangling or parted  # "60 8 8 7, bar"
                last.at = (piece._replace(kind=K.NUMBER, role=Role.BAR),)

    def _speaks_of_the_bar(self) -> bool:
        """ "80 8 8 7 without the bar", "80x8, 8, 7, bar 20": of the load told, and no set with the bar alone."""
        weighed = self.pieces[self.at + 1] if self._kind() is K.NUMBER else None
        alone = self._kind(2) in ENDS_OF_A_SET and self.separator is not K.THEN and self.separator is not K.LINE
        return self._kind(-1) is K.DENY or (alone and weighed is not None and weighed.value in BARS)

    def _is_on_the_bar(self, last: Chunk) -> bool:
        """ "100 on the bar": the load itself, and no bar beside it."""
        head = last.factors[0] if last.size == 1 else ()
        return len(head) == 1 and (head[0].role is Role.LOAD or head[0].value > MOST_LOADED_REPS)

    def body(self, piece: Piece) -> None:
        self.out.body = True
        if self._kind() is K.TIMES and self._number_behind(2):
            self.chunk()
        elif self._is_of_the_last_alone():
            self._put_on_the_body()
        elif self._is_of_the_group_before():
            self.out.found[-1].at = (piece._replace(kind=K.NUMBER, role=Role.BODY),)
            self.at += 1
        elif self._kind() is K.NUMBER and self._has_other_loads():
            self.at += 1
            self._place(Chunk([(piece._replace(kind=K.NUMBER, role=Role.BODY),)], before=self.separator))
        else:
            last = self._last()
            self.out.dangling = self.out.dangling or (last is not None and last.again > 0)  # "+10 5 5, another, bw"
            self.at += 1

    def _is_of_the_group_before(self) -> bool:
        """ "3x8 bodyweight, 2x5 +10": behind sets that were counted together, where others were loaded."""
        last = self._last()
        alone = len(self.out.found) == 1 and self._kind(-1) is K.NUMBER and self._kind() is not None  # "10 bw, 8 +10"
        if last is None or (last.size < PAIR and not alone) or last.at or self._kind() not in BEHIND_THE_BODY:
            return False
        return any(piece.role in LOADED for piece in self.pieces[self.at :])

    def denied(self, piece: Piece) -> None:
        """ "mit 10 kg hilfe 9 8, dann 3 ohne": help that the last set did without; any other no is a note."""
        hung = self.out.added or any(number.role is Role.CHANGE for number in numbers_in(self.out))
        if (self.out.assisted or hung) and self._is_of_the_last_alone():
            self._put_on_the_body()
        else:
            loaded = self._kind() is K.NUMBER and any(number.role in LOADED for number in numbers_in(self.out))
            self.out.dangling = self.out.dangling or loaded  # "with 10 kg 15, without 25"
            self.out.notes.append(piece)
            self.at += 1

    def _is_of_the_last_alone(self) -> bool:
        """ "15 kg help 9 8, then 3 unassisted", "+10: 5 5, then 8 bw": behind the reps of one set, among sets that
        were loaded, or helped by a load.
        """
        last = self._last()
        if last is None or last.size != 1 or last.at or self._kind() not in BEHIND_THE_BODY:
            return False  # "another" of the set before it has no numbers of its own
        at = self.at - 1
        while at > 0 and self.kinds[at] in TOLD_OF_REPS:
            at -= 1
        beside = len(self.out.found) > 1 and self.pieces[at] in last.factors[-1]
        return beside and any(number.role in LOADED for number in numbers_in(self.out))

    def _put_on_the_body(self) -> None:
        """Only what stands behind "then" or on a line of its own is surely one set; behind a comma it is asked."""
        last = self.out.found[-1]
        if last.before in (K.THEN, K.AND, K.LINE, K.STOP):
            last.at = (self.pieces[self.at]._replace(kind=K.NUMBER, role=Role.BODY),)
        else:
            self.out.dangling = True
        self.at += 1

    def _has_other_loads(self) -> bool:
        """ "bw 8 8, +10 5 5": nothing added to some sets, and something to others."""
        if self.pieces[self.at + 1].role in LOADED:
            return False
        if (self.out.found and self.separator is not None) or K.ADDED in self.kinds:
            return True
        numbers = [one for one in self.pieces if one.kind is K.NUMBER]
        return any(one.role in LOADED or one.value > MOST_LOADED_REPS for one in numbers)

    def count_word(self, piece: Piece) -> None:
        apart = self.separator is not None and bool(self.out.found)
        self.out.dangling = self.out.dangling or (apart and self._kind() in SAID_OF_SOMETHING)  # "double espresso"
        chunk = Chunk([(self._counted_piece(),)], before=self.separator, counted=True)
        self._place(chunk)

    def once(self, piece: Piece) -> None:
        last = self._last()
        if self._tells_how_often(last):
            self.at += 1
            return
        if (last is None or last.size < 2) and self._once_what(piece):
            return
        if self.at and self.kinds[self.at - 1] is K.CLOSE and len(self.out.found) - self.opened > 1:
            self.out.found += self.out.found[self.opened :] * (piece.told - 1)  # "(80x5, 75x5) twice"
            self.at += 1
            return
        if last is not None and self._of_a_chain():
            chain = self.out.found[self._start_of_chain() :]
            self.out.found += chain * (piece.told - 1)  # "12x10 drop 8x8, did that twice"
            self.at += 1
            return
        told = [one for one in self.out.found if one.size > 1 or (last is not None and last.size == 1 and not last.at)]
        work = [one for one in told if one.kind is not SetKind.WARMUP]  # "60x8 warm-up, then 85x6, twice"
        work = work[1:] if is_a_load_and_its_reps(work) else work
        several = self.separator is not None and len(work) > 1
        self.out.dangling = self.out.dangling or several  # "80x5, 85x5, twice": both of them, or the last
        if last is not None:
            last.times = piece.told
        self.out.dangling = self.out.dangling or (last is None and self._kind() is K.NUMBER)  # "twice 80x5"
        self.at += 1

    def _tells_how_often(self, last: Chunk | None) -> bool:
        """ "80x5, bar bounced twice": what happened so often stands before it, in a clause of its own."""
        happened = self.at > 0 and self.kinds[self.at - 1] in HAPPENED
        ends = self._kind() in ENDS_OF_A_SET
        told = last is not None and self.separator is not None and happened and ends
        alone = told and last is not None and last.size < 2
        self.out.dangling = self.out.dangling or alone  # "5 5 5 at 100, bar slid twice"
        return told

    def _of_a_chain(self) -> bool:
        """Whether a set and its drops were told, and "that twice" speaks of all of them."""
        that = self.separator is not None and self.pieces[self.at - 1].kind is K.FILLER
        return that and len(self.out.found) > 1 and self.out.found[-1].kind is SetKind.DROP

    def _start_of_chain(self) -> int:
        start = len(self.out.found) - 1
        while start and self.out.found[start].kind is SetKind.DROP:
            start -= 1
        return start

    def _once_what(self, piece: Piece) -> bool:
        """ "dreimal acht", "drei mal 45 Sekunden": so many sets of what stands behind."""
        step = 1
        while (
            self._kind(step) in (K.FILLER, K.OF)
            and self._kind(step + 1) is K.NUMBER
            and self.pieces[self.at + step + 1].spelled
        ):
            step += 1  # "zweimal eine Minute"
        ahead = self.pieces[self.at + step] if self.at + step < len(self.pieces) else None
        if (
            ahead is None
            or ahead.kind is not K.NUMBER
            or ahead.role not in COUNTABLE
            or self._kind(step + 1) is K.TIMES
        ):
            return False
        self.at += step
        role = Role.BARE if ahead.role in TIMED_OR_HEAVY else Role.SETS
        sets = piece._replace(kind=K.NUMBER, value=Decimal(piece.told), role=role)
        self._rest_of_chunk(Chunk([(sets,), self.factor(None)], before=self.separator))
        return True

    def drop(self, piece: Piece) -> None:
        before = self.pieces[self.at - 1] if self.at else piece
        if before.kind is K.EACH or (before.kind is K.FILLER and is_cued(before.text, EVERY)):
            self._pass(self.at - 1)  # "each set dropped to 150 for 8"
        if self._was_let_fall():
            self.out.notes.append(piece)
        elif self.out.found and self._stands_behind_each_drop():
            self.out.found[-1].kind = SetKind.DROP
        elif self.out.found:
            self.next_kind = SetKind.DROP
            self.out.lowered = self.out.lowered or "lowered" in CUES_OF[piece.text]
        elif "lowered" not in CUES_OF[piece.text]:
            self.out.drops_ahead = True  # "dropped to 57.5, 3x9" only says that the load went down
        self.at += 1

    def _stands_behind_each_drop(self) -> bool:
        """ "80x9, 70x8 drop, 60x8 drop": the last one ends the line, so the word stands behind its set each time."""
        drops = [at for at, kind in enumerate(self.kinds[: len(self.pieces)]) if kind is K.DROP]
        behind = [self.kinds[at + 1] for at in drops]
        return len(drops) > 1 and ENDS_OF_A_SET.issuperset(behind) and drops[-1] >= len(self.pieces) - 2  # perhaps ")"

    def _was_let_fall(self) -> bool:
        """ "40m, 25m dropped the left one": what was carried fell, and no lighter set stands behind it."""
        last = self._last()
        carried = last is not None and any(number.role in AMOUNTS for factor in last.factors for number in factor)
        return carried and K.NUMBER not in self.kinds[self.at :]

    def _counts_them(self) -> bool:
        """ "3 heavy sets of 5": a word stood between the count and what it counts."""
        last, back = self._last(), self.at - 1
        while back > 0 and self.kinds[back] in WORDS_OF_A_SET:
            back -= 1
        direct = back == self.at - 1 and self.kinds[self.at] is K.SETS
        numbered = self._kind() is K.NUMBER and not self.pieces[self.at].text.endswith("s")  # "7 on set 3"
        if direct or numbered or last is None or last.size != 1 or self.kinds[back] is not K.NUMBER:
            return False
        count = self.pieces[back]
        if last.factors[0] != (count,) or count.role is not Role.BARE or count.value > MOST_SETS_TOLD or last.at:
            return False
        last.factors[0] = (count._replace(role=Role.SETS),)
        self.at += 1
        if self._kind(0) is K.OF and self._kind() is K.NUMBER:
            self.at += 1
            self.out.found.pop()
            last.factors.append(self.factor(None))
            self._rest_of_chunk(last)
        return True

    def working(self, piece: Piece) -> None:
        if self._kind(-1) is K.NUMBER and self.at and self._counts_them():
            return  # "3 working sets of 5"
        self.kind = None
        if self.out.found and self.out.work_from is None:
            self.out.work_from = len(self.out.found)
        self.at += 1

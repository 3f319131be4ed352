"""Which sets a word for warming up speaks of: the one before it, all before it, or what comes.

warm-up = SETS-OF-IT "warm-up"       behind one set it marks that one: "60x5 (warm-up), 80x5"
        | SETS-OF-IT "warm-ups"      several, "both" or "all" mark the run since the last full stop, line end or "then"
        | SET "w"                    the letter marks one set, too: "60x5 (w)"; "W:" heads a line as the word does
        | SETS-OF-IT "," POINTING "warm-up"     "all of that warm up", "those were warm-ups": the run, too
        | "warm-up" SETS-OF-IT       in front it marks what follows, up to "then", "work" or the end of the line
Between two sets with nothing to part them it may be either's: asked. So are the sets behind a name that comes between.
"""

from __future__ import annotations

from engine.reading.chunks.chunks import Chunk, load_of_one_set
from engine.reading.chunks.warm_up_letters import SEVERAL, LetteredChunks
from engine.reading.chunks.warm_up_runs import (
    ends_with_a_load,
    fewest,
    heaviest,
    keeps_its_reps,
    loads_told,
    mark_warm,
    rising_to_the_last,
    runs_on,
    values,
)
from engine.reading.marks.warmed_up import TO_GET_WARM, tells_what_was_done
from engine.reading.words.cues import CUES_OF, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook
from engine.reading.words.pieces import COUNTED, Piece, Role
from engine.values.sets import SetKind

BEHIND = frozenset((K.CLOSE, K.COMMA, K.LINE, K.STOP, None, K.SLASH, K.THEN))
LINKED = frozenset((K.OF, K.WITH))
BESIDE_THE_SETS = frozenset((K.WITH, K.PLUS, K.AND, K.ALTERED))
ENDS_OF_A_WARM_UP = frozenset((None, K.COMMA, K.LINE, K.STOP))
ENDS_OF_SETS = frozenset(
    (K.NUMBER, K.KG, K.LB, K.REPS, K.EFFORT, K.FAILURE, K.MISS, K.EACH, K.ASSISTED, K.LEFT, K.RIGHT, K.CLOSE, K.COUNT)
)
ENDS_OF_A_LINE = frozenset((None, K.STOP, K.LINE, K.THEN))
BEHIND_THE_WORD = frozenset((K.WITH, K.FILLER))
A_LOAD = frozenset((K.NUMBER, K.BAR))
FEW_REPS = 3
"""What a set to get warm may come down to, right before the work. Common practice, no source."""
PARTS_RUNS = frozenset((K.STOP, K.THEN, K.LINE))
MOST_WARM_UPS = 6
"""Common practice, no source."""
BESIDE_A_POINTER = frozenset((K.FILLER, K.OF, K.BOTH, K.ONLY, K.PLAIN))
POINTING_BACK = frozenset(("all", "those", "that"))
SAYING_WHAT_FOR = frozenset((K.ONLY, K.FILLER, K.FOR, K.COMMA))
REACH = 3
"""How many pieces before the word may hold "both" or "all"."""


class WarmUpChunks(LetteredChunks):
    """The part of the walk that says what a word for warming up is about."""

    warm_in_brackets: bool = False
    """The word stood at the head of brackets: it speaks of what they hold."""
    warm_lead: int = 0
    """How many sets were warm-ups where a comma and the name of their lift came; 0 where none did."""
    warm_headed: int | None = None
    """Behind how many sets the last word stood that headed one: "wu 60x5, 100x5"; None where none did, or work came."""
    warm_named: int = 0
    """How many sets stood in front of the name that the word speaks of: "warmed up with 60x8 on bench, 85x6"."""
    warm_led: bool = False
    """The name stood behind the sets of its clause: "60x8, 70x5 on bench"."""

    def warm_up(self, piece: Piece) -> None:
        ahead = self.pieces[max(0, self.at - 2) : self.at]
        if (
            not self._heads_with_after()
            and not self._points_ahead_of_them(ahead)
            and any((one.kind is K.NOT_DATE and one.text != "from") or "after" in CUES_OF[one.text] for one in ahead)
        ):
            self.at += 1  # "after warming up i benched 80 3x5"
            return
        if self._counts_warm_ups(piece) or (piece.told == TO_GET_WARM and not self._says_what_for()):
            self.at += 1
            return
        if self._last() is not None and self._kind() in BEHIND and self._kind(-1) in BESIDE_THE_SETS:
            self.out.dangling = True  # "3x5 100 with warm up": some of them, or besides
        if self._last() is None or self._heads_brackets() or self._heads_with_after():
            self.kind = SetKind.WARMUP
            alone = piece.told != SEVERAL and self._heads_a_set(piece) and not self.depth
            self.warm_headed = 0 if alone else None
            self.warm_in_brackets = self.depth > 0 and self._kind() is not K.CLOSE  # "3x5 80 (warm-up 60x5)"
        elif self.separator is None and (self._kind() in BEHIND or self._is_glued(piece) or self._stands_behind_each()):
            self._mark_run(piece)
        elif self._told_behind_a_comma(piece):
            pass
        elif self._stands_between() and self.kind is not SetKind.WARMUP:
            self._mark_either_way(piece)
        else:
            self.kind = SetKind.WARMUP
            self.warm_headed = len(self.out.found) if self.warm_headed is not None else None
        self.at += 1

    def _points_ahead_of_them(self, ahead: list[Piece]) -> bool:
        """ "before that warmup 40x10 60x5": sets told late, ahead of those that stand."""
        if len(ahead) < 2 or ahead[0].kind is not K.NOT_DATE or "after" in CUES_OF[ahead[0].text]:
            return False
        return "that" in CUES_OF[ahead[1].text]

    def _told_behind_a_comma(self, piece: Piece) -> bool:
        """Whether the word speaks of the sets in front of a comma, and so heads none; they are marked."""
        if self._points_back():
            self._mark_all_of_it()
        elif self._ends_behind_a_comma() and self.kind is not SetKind.WARMUP:
            self._mark_behind_a_comma(piece)
        else:
            return False
        return True

    def _ends_behind_a_comma(self) -> bool:
        """ "60x8, warm-up", "8, 7 at 60 kg, rpe 7, warm-up, then 85x6": right behind sets, and it heads none."""
        beside = self.kinds[self.at - 1] is K.COMMA and self.kinds[self.at - 2] in ENDS_OF_SETS
        return beside and (self._kind() in ENDS_OF_A_LINE or self._work_follows())

    def _mark_behind_a_comma(self, piece: Piece) -> None:
        """Marks the sets at one load; where several were told it may be the last of them, or all."""
        run = self.out.found[self._start_of_run(PARTS_RUNS) :]
        if piece.told == SEVERAL or loads_told(run) < SEVERAL:
            mark_warm(run)
        else:
            self.out.warm_either = frozenset(self._places(run[-1:])), frozenset(self._places(run))

    def arrow(self, piece: Piece) -> None:
        """ "wu 40x10 60x5 -> 80x8 85x6": the work stands behind the arrow; of several, nobody can say."""
        if self.kind is not SetKind.WARMUP or not self.out.found:
            super().arrow(piece)
            return
        several = self.kinds.count(K.ARROW) > 1
        self.out.dangling = self.out.dangling or several
        self.kind = self.kind if several else None
        self.separator = K.THEN
        self.at += 1

    def rest_pause(self, piece: Piece) -> None:
        """ "2×4 at 62.5 kg, then 9 at 42.5 kg, rest-pause": of the sets behind "then" alone, where they have a load."""
        start = self._start_of_run(PARTS_RUNS) if self.kinds[self.at - 1] is K.COMMA and self.out.found else 0
        run = self.out.found[start:]
        if start and loads_told(run):
            for chunk in run:
                chunk.kind = SetKind.REST_PAUSE
        else:
            self.out.rest_pause = True
        self.at += 1

    def _heads_a_set(self, piece: Piece) -> bool:
        """ "wu 60x5", "wu bar x10", "warmed up with 60x8"."""
        ahead = 1
        while self._kind(ahead) in BEHIND_THE_WORD:
            ahead += 1
        return self._kind(ahead) in A_LOAD and (ahead == 1 or self._kind() is K.WITH or tells_what_was_done(piece))

    def _says_what_for(self) -> bool:
        """ "50x5, 80x3 just to get warm", right behind the sets; "3x5 100 took ages to get warm" is a remark."""
        before = self.at - 1
        while before and self.kinds[before] in SAYING_WHAT_FOR and self.at - before < REACH:
            before -= 1
        return self._last() is not None and self.kinds[before] in COUNTED

    def _warms_up(self, piece: Piece) -> bool:
        """Reads a "w" that says warm-up: "40x10 (w)", "100x5 w, 120x3", "W: 60x5"."""
        spaced = self._kind(-1) is K.NUMBER and self._kind() in ENDS_OF_A_WARM_UP and bool(self.out.found)
        if spaced or self._is_warm_letter(piece):
            self.out.dangling = self.out.dangling or (spaced and not piece.glued and self._kind(2) is not K.NUMBER)
            self._bracketed_warm_up()
            return True
        if self._kind() is K.COLON and self.separator in (None, K.LINE):
            self.kind = SetKind.WARMUP  # "W: 60x5, 80x3"
            self.at += 2
            return True
        return self._letter_ahead()

    def _is_warm_letter(self, piece: Piece) -> bool:
        """ "40x10 (w)", "40x10w, 60x5w 80x5": in brackets, or glued behind the set with no load behind the letter."""
        if self.depth and self._kind() is K.CLOSE:
            return True
        glued = piece.glued and self._kind(-1) is K.NUMBER
        return glued and (self._kind() in (None, K.COMMA, K.LINE, K.STOP) or self._kind(2) is K.TIMES)

    def _bracketed_warm_up(self) -> None:
        """ "60x5 (w)", or "(w) 60x5" ahead of the first."""
        last = self._last()
        if last is not None and self.depth and self._runs_up_to(last):  # "60x5 80x3 (w), 100x5"
            self.out.warm_either = frozenset(self._places([last])), frozenset(self._places(self._run(several=False)))
        elif last is not None:
            last.kind = SetKind.WARMUP
        else:
            self.next_kind = SetKind.WARMUP
        self.at += 1

    def _runs_up_to(self, last: Chunk) -> bool:
        """Whether nothing parts the set from one before it, which is no warm-up yet."""
        before = self.out.found[-2] if len(self.out.found) > 1 else None
        paired = before is not None and before.size > 1 and last.size > 1
        return before is not None and paired and last.before is None and before.kind is None

    def filler(self, piece: Piece) -> None:
        """ "wu 60x5, top set 110x3, back-offs 90x6": a word for work that tells nothing of the sets before it."""
        if piece.told and self.kind is SetKind.WARMUP and self.out.found:
            self.kind = None
            self.out.dangling, self.warm_left = self.out.dangling or self.warm_left > 0, 0
        self.at += 1

    def _heads_brackets(self) -> bool:
        return self.depth > 0 and self.kinds[self.at - 1] is K.OPEN and self._kind() is not K.CLOSE

    def _heads_with_after(self) -> bool:
        """ "80x5 (after warm up 60x5)", "after a warm-up of 40x10, 3x8 80"."""
        if self._kind() in LINKED and self._kind(2) is K.NUMBER:
            return any("after" in CUES_OF[one.text] for one in self.pieces[max(0, self.at - 2) : self.at])
        before = self.kinds[max(0, self.at - REACH) : self.at]
        heads = K.OPEN in before and K.NUMBER not in before[before.index(K.OPEN) :]
        return self.depth > 0 and heads and self._kind() is K.NUMBER

    def _counts_warm_ups(self, piece: Piece) -> bool:
        """ "2 warm-ups: 60x5 80x5, then 100x5": how many of the sets behind it are; the number is no set itself."""
        last, count = self._last(), self.pieces[self.at - 1]
        if last is None or piece.told != SEVERAL or last.size != 1 or last.at or count.kind is not K.NUMBER:
            return False
        if last.factors[0] != (count,) or count.role is not Role.BARE or count.value > MOST_WARM_UPS or self.warm_left:
            return False
        self.out.found.pop()
        self.warm_left = int(count.value)
        return True

    def _is_glued(self, piece: Piece) -> bool:
        """ "60x5wu"."""
        return piece.glued and self.kinds[self.at - 1] is K.NUMBER

    def _stands_behind_each(self) -> bool:
        """ "60x5 wu 80x3 wu 100x5": the first stands behind a set, and so do the others."""
        return self.kinds.count(K.WARMUP) > 1 and K.NUMBER in self.kinds[: self.kinds.index(K.WARMUP)]

    def _stands_between(self) -> bool:
        """ "60x5 wu 80x5", "60x5, warm-ups, 80x5": nothing says whether it speaks of what is before it or behind it."""
        following = self._kind()
        spaced = self.separator is None and following is K.NUMBER
        parted = self.separator in (K.COMMA, K.LINE) and following is self.separator
        return spaced or (parted and self._kind(2) is K.NUMBER)

    def _mark_run(self, piece: Piece) -> None:
        if self.depth and self.opened < len(self.out.found) and self._kind() is K.CLOSE:
            mark_warm(self.out.found[self.opened :])  # "140x5x3 (plus 60x10 100x5 warming up)"
            return
        run = self._run(piece.told == SEVERAL)
        run = self._risen_to(run) if self._work_follows() else run
        said = self.pieces[max(0, self.at - REACH) : self.at]
        if any(one.kind is K.BOTH for one in said):
            mark_warm(run[-SEVERAL:])
        elif run[-1].before is K.AND:
            mark_warm(rising_to_the_last(run))
        elif piece.told == SEVERAL or any(one.text in phrasebook().cues["all"] for one in said):
            mark_warm(run)
        elif runs_on(run) and not self._work_follows():
            self.out.warm_either = frozenset(self._places(run[-1:])), frozenset(self._places(run))
        else:
            mark_warm(run if runs_on(run) else run[-1:])

    def _risen_to(self, run: list[Chunk]) -> list[Chunk]:
        """ "40x8 then 60x8 to warm up, then 90x8": the lighter ones that "then" parts from it, too."""
        found = self.out.found
        start = len(found) - len(run)
        loads = list(map(load_of_one_set, found))
        while start and found[start].before is K.THEN and found[start - 1].kind is None:
            if not 0 < loads[start - 1] < loads[start]:
                break
            start -= 1
        return found[start:]

    def _points_back(self) -> bool:
        """ "60x5, 80x3, all of that warm up. then 100x5", "those were warm-ups": it heads nothing that follows."""
        at = self.at - 1
        while self.kinds[at] in BESIDE_A_POINTER and self.pieces[at].kind is not K.NUMBER:
            at -= 1
        said = self.pieces[at + 1 : self.at]
        points = any(is_cued(one.text, POINTING_BACK) or one.kind is K.BOTH for one in said)
        return points and self.separator is not None and self._kind() in BEHIND

    def _mark_all_of_it(self) -> None:
        """Marks the run; where only two of several are pointed at, which they are is asked."""
        run = self._run(several=True)
        both = any(one.kind is K.BOTH for one in self.pieces[max(0, self.at - REACH) : self.at])
        self.out.dangling = self.out.dangling or (both and len(run) != SEVERAL)
        mark_warm(run)

    def _work_follows(self) -> bool:
        """ "60x5, 80x3 to warm up, then 100x5": what "then" parts from the work is the warm-up."""
        return self._kind() is K.THEN or (self._kind() is K.COMMA and self._kind(2) is K.THEN)

    def _mark_either_way(self, piece: Piece) -> None:
        """The sets before the word, or those behind it up to the end."""
        before = frozenset(self._places(self._run(piece.told == SEVERAL)))
        behind = frozenset(range(len(self.out.found), len(self.out.found) + len(self.pieces)))
        self.out.warm_either = before, behind

    def _work_follows_the_bar(self, separator: Piece) -> bool:
        """ "warm up bar 2x10, 3x5 100": sets at a load behind those with the empty bar may be the work."""
        ahead = [piece.kind for piece in self.pieces[self.at + 1 : self.at + 5]]
        group = ahead[:3] == [K.NUMBER, K.TIMES, K.NUMBER] and ahead[3:] in ([K.NUMBER], [K.AT], [K.WITH])
        return separator.kind is K.COMMA and self.out.barred and bool(self.out.found) and not self.warm_lead and group

    def _doubt_warm_ups_behind_the_name(self) -> None:
        """ "warm-up 60x5, squat 100x5": the sets behind the name may be the work."""
        found = self.out.found
        warm = frozenset(at for at, chunk in enumerate(found) if chunk.kind is SetKind.WARMUP)
        if not warm or max(warm) < self.warm_lead:
            return
        parted = self.warm_named or any(chunk.before is K.THEN for chunk in found[self.warm_lead :])
        led = self.warm_led and bool(parted)
        if led and found[self.warm_lead].before is K.AND:
            return  # "warmed up with 60x8 and 70x5 on bench then 85x6"
        for chunk in found[self.warm_lead :]:
            chunk.kind = None if chunk.kind is SetKind.WARMUP else chunk.kind
        if not led and any(map(tells_what_was_done, self.pieces)):
            return  # "warmed up with 60x5, squat 3x5 100"
        up_to_the_name = [frozenset(range(self.warm_named))] if 0 < self.warm_named < len(found) else []
        lead = frozenset(at for at in warm if at < self.warm_lead)
        self.out.warm_either = tuple(dict.fromkeys((lead, *up_to_the_name, warm)))

    def _warm_up_named(self) -> None:
        """ "warmed up with 60x8 on bench, 85x6": what was done to get warm ends with the name."""
        warmed = any(map(tells_what_was_done, self.pieces))
        loaded = any(values(chunk)[1:] for chunk in self.out.found)  # "wu bar x10 bench, 50x6" goes on
        if self.kind is SetKind.WARMUP and (warmed or loaded):
            self.warm_named = len(self.out.found)
            self.kind = None if warmed else self.kind

    def _doubt_sets_behind_the_named(self) -> None:
        """ "warm up 60x8 on bench, 85x6", "warmed up with 60x8 on bench, 70x5, 85x6": those between may be either."""
        found = self.out.found
        behind = found[self.warm_named :]
        if self.out.warm_either or not behind or any(chunk.kind not in (None, SetKind.WARMUP) for chunk in behind):
            return
        work, ends = self._start_of_the_work(self.warm_named), {self.warm_named}
        if behind[-1].kind is SetKind.WARMUP:
            ends |= {work, len(found)}
        elif heaviest(found[self.warm_named - 1]) < heaviest(behind[0]) < heaviest(behind[-1]):
            ends.add(work)
        if len(ends) > 1:
            self._doubt_where_it_ends(ends)

    def _doubt_sets_behind_the_first(self, headed: int) -> None:
        """ "wu 60x5, 100x5, 110x5": where the reps do not fall as they do in warming up, the others may be the work."""
        found = self.out.found
        last = found[-2:]
        if headed >= len(found) - 1 or any(chunk.kind is not SetKind.WARMUP for chunk in found) or self.out.warm_either:
            return
        if self.warm_lead or any(chunk.size != len(last) or chunk.at for chunk in last):
            return
        warmed = any(map(tells_what_was_done, self.pieces))
        falls = len(found) - headed > SEVERAL and fewest(found[-1]) <= FEW_REPS
        if not keeps_its_reps(*last) and (falls or not warmed):
            return
        work = self._start_of_the_work(headed + 1)
        joined = next((at for at in range(headed + 1, work) if found[at].before is not K.AND), work)
        ends = {work, len(found), *([joined] if warmed else []), *([len(found) - 1] if self.out.barred else [])}
        self._doubt_where_it_ends(ends)

    def _start_of_the_work(self, first: int) -> int:
        """The place of the last set, or of the first of those of as many reps that end the sets, from `first` on."""
        found = self.out.found
        work = len(found) - 1
        while work > first and fewest(found[work - 1]) == fewest(found[work]):
            work -= 1
        return work

    def _doubt_where_it_ends(self, ends: set[int]) -> None:
        """All sets up to one of these places are warm-ups."""
        for chunk in self.out.found[min(ends) :]:
            chunk.kind = None
        self.out.warm_either = tuple(frozenset(range(end)) for end in sorted(ends))

    def _places(self, run: list[Chunk]) -> range:
        return range(len(self.out.found) - len(run), len(self.out.found))

    def _run(self, several: bool) -> list[Chunk]:
        """The sets that stand together before the word, up to one that has its mark already; where "warm-ups" finds
        one alone on its line, those of the lines above, too; so where the word ends all behind the heaviest of them.
        """
        found = self.out.found
        start = self._start_of_run(PARTS_RUNS)
        heavier = start and self._kind() is None and heaviest(found[-1]) > max(map(heaviest, found[:start]))
        apart = start == len(found) - 1 or (ends_with_a_load(found) and start == len(found) - 2)
        if apart and (several or heavier):
            start = self._start_of_run(frozenset())
        return found[start:]

    def _start_of_run(self, parting: frozenset[K]) -> int:
        found = self.out.found
        start = len(found) - 1
        while start and found[start].before not in parting and found[start - 1].kind is None:
            start -= 1
        return start

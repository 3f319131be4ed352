"""The walk over the pieces of one exercise: where it stands, and what is added behind a chunk.

sum = chunk ( "+" NUMBER )*     60x8+3+2 and 60x8 (+3+2) are rest-pause; 20 + 18 + 15 are sets; 75 s + 60 s are holds
"""

from __future__ import annotations

from engine.reading.chunks.chunks import Chunk, Chunks
from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, MOST_SETS, Piece, Role
from engine.values.sets import SetKind, Side

BEHIND_AN_OPEN_SET = frozenset((K.GOT, None, K.COMMA, K.LINE, K.FILLER, K.ARROW, K.COLON, K.OPEN, K.STOP, K.NOTE))
BESIDE_AN_OPEN_SET = frozenset((K.OF, K.FILLER, K.SETS))
PARTLY = frozenset((K.PARTIAL, K.ASSISTED))
FAILED = "fail"
BESIDE_ALL = frozenset((K.FILLER, K.SETS, K.COLON, K.OF, K.WITH))
BOTH_SETS = 2
AMOUNTS = frozenset((Role.SECONDS, Role.METRES))
MAY_BE_AMOUNTS = AMOUNTS | {Role.PLURAL}
BEHIND_THE_END = (None,) * 8
PLATES = frozenset((K.PLATE, K.SIDE_PLATES))
MOST_REPS_GAINED = 2
"""So few reps alone in brackets, "80x6 (+1)", may be those gained since last time. Common practice, no source."""
LEAST_OF_A_SUM = 10
"""From so many reps on, nearly as many more a moment later are a set of their own. Common practice, no source."""


SAYS_ALL = frozenset(("all", "every"))


def _says_all(piece: Piece) -> bool:
    """ "all to failure", "every set to failure", "each one to failure"; "each" alone may be each side."""
    cues = CUES_OF[piece.text]
    return not SAYS_ALL.isdisjoint(cues) or (piece.kind is K.FILLER and "each" in cues)


class SummedChunks:
    """One walk over the pieces of one exercise."""

    pieces: list[Piece]
    out: Chunks
    at: int = 0
    separator: K | None = None
    kind: SetKind | None = None
    next_kind: SetKind | None = None
    side: Side | None = None
    side_before: bool = False
    in_note: bool = False
    joiner: K | None = None
    depth: int = 0
    opened: int = 0
    """How many chunks stood before the bracket that was opened last."""
    last_at: int = 0
    """How many chunks stood before what was told of the last set."""
    warm_left: int = 0
    """How many of the next sets are warm-ups, as a count of them said."""
    at_same: bool = False
    """The next sets are told at the load of those before them: "same weight 3x15"."""
    sets_added: bool = False
    """Sets were told with a "+" between them: "20 + 18 + 15"."""

    kinds: list[K | None]
    """The kinds of the pieces, and None behind them, as far as anything looks ahead; the last stands in front, too."""

    def __init__(self, pieces: list[Piece]) -> None:
        self.pieces = pieces
        self.out = Chunks()

    def _kind(self, ahead: int = 1) -> K | None:
        return self.kinds[self.at + ahead]

    def _last(self) -> Chunk | None:
        return self.out.found[-1] if self.out.found else None

    def _plus(self, chunk: Chunk) -> None:
        while self._kind(0) is K.PLUS and self._kind(1) is K.NUMBER and not self._partly(2):
            if self.pieces[self.at].glued and not self.pieces[self.at + 1].glued:
                self.out.dangling = True  # "100 5+ 8": an open set, and perhaps what came of it
                return
            if self.pieces[self.at + 1].role in MAY_BE_AMOUNTS or self._is_next_set(chunk):
                return  # "75 s + 60 s": two holds; "20 + 18 + 15": three sets
            if self._missed_next(chunk) or self._kind(2) in PLATES or self._counts_an_open_set(1):
                return  # "2 plates x5 + 1 plate x8"
            self.out.dangling = self.out.dangling or self._kind(2) is K.PLAIN  # "6 + 3 kipping": of what?
            # "8+1 with a spotter, 7+1": helped as well, or after a breath?
            self.out.dangling = self.out.dangling or K.PARTIAL in self.out.kinds
            chunk.plus += (self.pieces[self.at + 1],)
            self.at += 2
        if chunk.plus and self._kind(0) is K.TIMES and self._kind(1) is K.NUMBER:
            self._cluster_again(chunk)
        if self._kind(0) is K.PLUS and self._kind(1) in BEHIND_AN_OPEN_SET:
            self.out.maximum = True

    def _counts_an_open_set(self, ahead: int) -> bool:
        """ "100x5 x3 + 1 amrap 12": the one counts the set that follows, and is no rep."""
        one = self.pieces[self.at + ahead]
        behind = ahead + 1
        while self._kind(behind) in BESIDE_AN_OPEN_SET:
            behind += 1
        return one.value == 1 and one.role in (Role.BARE, Role.SETS) and self._kind(behind) is K.MAX

    def _cluster_again(self, chunk: Chunk) -> None:
        """ "8+3+2 x2": the whole of it twice; of "15+5x4" it may be five reps four times: asked."""
        sign, count = self.pieces[self.at : self.at + 2]
        if (
            count.role is not Role.BARE
            or not 1 < count.value <= MOST_SETS
            or count.value % 1
            or chunk.times is not None
        ):
            return
        chunk.times = int(count.value)
        apart = (not sign.glued or self.depth > 0) and count.glued
        self.out.dangling = self.out.dangling or not apart or len(chunk.plus) == 1
        self.at += 2

    def _missed_next(self, chunk: Chunk) -> bool:
        """ "100x4+1 miss": four made, and the next one missed."""
        if self._kind(2) is K.FAILURE and self.pieces[self.at + 2].text == FAILED:
            chunk.missed = chunk.then_missed = True  # "100x4+1 fail"
            self.at += 3
            return True
        self.at += 2 * (self._kind(2) is K.MISS)
        chunk.then_missed = self._kind(0) is K.MISS
        return chunk.then_missed

    def _told_of_all(self, behind: int = 0) -> bool:
        """Whether the mark that stands here is told of every set so far: "all to failure", "both @9", "each rpe 8"."""
        at = self.at - 1 - behind
        while at > 0 and self.kinds[at] in BESIDE_ALL and not _says_all(self.pieces[at]):
            at -= 1
        word = self.pieces[at] if at >= 0 else None
        if word is None or not self.out.found:
            return False
        if word.kind is K.BOTH and word.text != "all":
            several = self._sets_told() == BOTH_SETS
            self.out.dangling = self.out.dangling or not several
            return several
        parted = word.kind is K.EACH and at > 0 and self.kinds[at - 1] is not K.NUMBER
        return parted or _says_all(word)

    def _sets_told(self) -> int:
        """How many sets the chunks so far tell, as far as their form shows it."""
        count = 0
        for chunk in self.out.found:
            counts = [number for number in (chunk.factors[-1] if chunk.factors else ()) if self._may_count(number)]
            heads = chunk.factors[0] if chunk.size == 2 else ()
            if len(heads) == 1 and counts and self._may_count_sets(heads[0]):
                count += int(heads[0].value)
            else:  # "(110,120,130)x3", "5x100": a set for each load
                count += max(len(counts), len(heads)) * (chunk.times or 1)
        return count

    def _may_count(self, number: Piece) -> bool:
        return number.role is not Role.LOAD and number.value <= MOST_LOADED_REPS

    def _may_count_sets(self, number: Piece) -> bool:
        return number.role is Role.SETS or (number.role is Role.BARE and number.value <= MOST_SETS)

    def _partly(self, ahead: int) -> bool:
        """Whether "partials", "forced", "assisted", "with the band" stands there: reps that were not done in full."""
        while self._kind(ahead) in (K.FILLER, K.BAND, K.REPS, K.WITH):
            ahead += 1
        return self._kind(ahead) in PARTLY

    def _is_next_set(self, chunk: Chunk) -> bool:
        """Whether a number behind a "+" with spaces is a set of its own: more than half of the one before it."""
        head = chunk.factors[-1][-1] if chunk.factors and chunk.factors[-1] else None
        sign, number = self.pieces[self.at], self.pieces[self.at + 1]
        spaced = not sign.glued and not number.glued and not chunk.plus and not self.out.rest_pause
        if spaced and self._kind(2) in (K.TIMES, K.NUMBER) and (chunk.size > 1 or self._loads_a_group(chunk)):
            loaded = number.role is Role.LOAD or number.value > MOST_LOADED_REPS
            if loaded or self._kind(2) is K.TIMES:
                return True  # "3x10x100 + 1x20x60", "100 4x8 + 80 1x12": sets of their own
        if head is None or not spaced or chunk.size != 1 or number.value * 2 <= head.value:
            return False
        self.sets_added = self.sets_added or head.value >= LEAST_OF_A_SUM
        return self.sets_added

    def _loads_a_group(self, chunk: Chunk) -> bool:
        """Whether it is the load behind sets and reps: "4x8 67.5"."""
        load = chunk.factors[0][-1:] if chunk.size == 1 else ()
        heavy = bool(load) and (load[0].role is Role.LOAD or load[0].value > MOST_LOADED_REPS)
        return heavy and bool(self.out.found) and self.out.found[-1].size > 1

    def _goes_to_rest_pause(self, piece: Piece) -> bool:
        """ "(+4+2)" behind a chunk."""
        last = self._last()
        counted = last is not None and (last.size > 1 or bool(last.plus)) and piece.value <= MOST_LOADED_REPS
        paused = self.out.rest_pause and counted and self._kind() is not K.TIMES  # "myo 120x15 +5 +4"
        if last is None or piece.role is not Role.CHANGE or not (self.depth or paused) or piece.value <= 0:
            return False
        if self._partly(1):
            self.out.notes.append(piece)  # "80x6 (+2 with help)"
            self.at += 2
            return True
        if piece.unit is not None:  # "8 (+5kg)": a load
            last.at, last.at_own = (*last.at, piece), True
            self.at += 1
            return True
        last.plus += (piece,)
        alone = self.kinds[self.at - 1] is K.OPEN and self._kind() in (K.CLOSE, K.REPS)
        self.out.dangling = self.out.dangling or (alone and piece.value <= MOST_REPS_GAINED)  # more than last time?
        self.at += 1
        while self._kind(0) is K.PLUS and self._kind() is K.NUMBER:
            last.plus += (self.pieces[self.at + 1],)
            self.at += 2
        return True

    def _place(self, chunk: Chunk) -> None:
        kind = self.next_kind or self.kind
        self.next_kind = None
        if self.warm_left:
            kind, self.warm_left = SetKind.WARMUP, self.warm_left - 1
            self.out.dangling = self.out.dangling or chunk.size < 2  # "2 warm-ups at 60": of how many reps?
        if self.at_same:
            chunk.at_same, self.at_same = True, False
        if kind is not chunk.kind:
            chunk.kind = kind
        if self.side is not None and self.side_before and chunk.factors and chunk.factors[-1][-1:] != ():
            chunk.side = self.side if chunk.size > 1 or chunk.factors[-1][-1].role is not Role.LOAD else None
        self.separator = None
        self.in_note = False
        for factor in chunk.factors:
            for number in factor:
                if number.failure:
                    chunk.failure = True
                    single = chunk.size == 1 and number.value > MOST_LOADED_REPS
                    self.out.dangling = self.out.dangling or single  # "70f": a single made, or missed
        self.out.found.append(chunk)

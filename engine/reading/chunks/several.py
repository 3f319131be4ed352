"""Several of the sets pointed at by how many they are: "first two sets 80x6, last two 75x8", "first two easy".

several = ( "first" | "last" ) NUMBER [ "sets" ] ( pair | feel )      a pair is done so often; a feel is a remark
        | "first" NUMBER [ "sets" ] "warm-ups"                        marks as many sets, each told on its own
        | "first" [ NUMBER ] ["set"] REPS ... "last" [ NUMBER ] REPS            "first two sets 6, last one 5": three
"""

from __future__ import annotations

from engine.reading.chunks.chunks import Chunk, load_of_one_set, numbers_in
from engine.reading.chunks.numbers import SAID_OF_A_SET, NumberChunks
from engine.reading.chunks.passed_over import COMPARED
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, MOST_SETS, Piece, Role
from engine.values.sets import SetKind

BEHIND_A_PLACE = frozenset((K.SETS, K.COLON, K.FILLER, K.WITH, K.AT))
REMARK_ENDS = frozenset((None, K.COMMA, K.STOP, K.CLOSE, K.LINE))
ADDED = frozenset((Role.CHANGE, Role.LOAD))
FELT_OF_SEVERAL = frozenset((K.NOTE, K.PLAIN))
ENDS_OF_REPS = REMARK_ENDS | {K.REPS, K.THEN, K.AND, K.LAST}
ENDS_OF_A_FEEL = REMARK_ENDS | {K.LAST, K.THEN, K.DASH}


class SeveralChunks(NumberChunks):
    """The part of the walk that reads what is told of several of the sets."""

    by_place: bool = False
    """The reps of the first sets were told by their place: those of the others follow."""

    def _several_ahead(self) -> bool:
        """ "first two sets 80x6, last two 75x8": so many sets of the pair that stands behind."""
        count, at = self.pieces[self.at + 1] if self._kind() is K.NUMBER else None, self._behind_a_place(self.at + 2)
        if count is None:
            return self.kinds[self.at] is K.FIRST and self._reps_of_several(1, self._behind_a_place(self.at + 1))
        if count.role not in (Role.BARE, Role.SETS) or not 1 < count.value <= MOST_SETS:
            return False
        paired = self.kinds[at] is K.NUMBER and self.kinds[at + 1] is K.TIMES and self.kinds[at + 2] is K.NUMBER
        if not paired or self.pieces[at].value <= MOST_SETS or self.kinds[at + 3] is K.TIMES:
            return self._reps_of_several(int(count.value), at)
        self.at = at
        chunk = Chunk([(self.pieces[at],), (self.pieces[at + 2],)], before=self.separator)
        chunk.times = int(count.value)
        self._place(chunk)
        self.at += 3
        return True

    def _loaded_by_place(self) -> bool:
        """ "dips 3x10, last set +10", "4x6, first two with 5kg": a load of some of the sets counted together."""
        told = self._kind() is K.NUMBER and self.pieces[self.at + 1].role in (Role.BARE, Role.SETS)
        ahead = 1 + told
        while self._kind(ahead) in BEHIND_A_PLACE:
            ahead += 1
        number = self.pieces[self.at + ahead] if self._kind(ahead) is K.NUMBER else None
        if number is None or number.role not in ADDED or self._kind(ahead + 1) not in REMARK_ENDS:
            return False
        some = int(self.pieces[self.at + 1].value) if told else 1
        if not self._part_the_last(some, number, first=self.kinds[self.at] is K.FIRST):
            return False
        self.at += ahead + 1
        return True

    def _part_the_last(self, some: int, load: Piece, *, first: bool) -> bool:
        """Parts the group told last into so many sets at that load, and the others."""
        last = self._last()
        if last is None or last.size != 2 or last.at or any(len(factor) != 1 for factor in last.factors):
            return False
        count = last.factors[0][0]
        if count.role not in (Role.BARE, Role.SETS) or not 1 <= some < count.value <= MOST_SETS:
            return False
        others = count._replace(value=count.value - some)
        loaded = Chunk([(count._replace(value=count.value - others.value),), last.factors[1]], before=K.COMMA)
        loaded.at, loaded.at_own = (load,), True
        last.factors[0] = (others,)
        if first:
            loaded.before, last.before = last.before, K.COMMA
        self.out.found.insert(len(self.out.found) - first, loaded)
        return True

    def _behind_a_place(self, at: int) -> int:
        while self.kinds[at] in BEHIND_A_PLACE:
            at += 1
        return at

    def _reps_of_several(self, count: int, at: int) -> bool:
        """ "first two sets 6, last one 5": the reps of so many sets, where those of the others stand beside them."""
        if not self._ends_with_reps(at) or self.kinds[at] is not K.NUMBER:
            return False
        first = self.kinds[self.at] is K.FIRST
        told = self.by_place if not first else K.LAST in self.kinds[at:] and not self._tells_reps_so_far()
        if not told:
            self.out.dangling = self.out.dangling or (not first and count > 1)  # "first set 6, last two 5"
            return False
        chunk = Chunk([(self.pieces[at],)], before=self.separator)
        chunk.times = count if count > 1 else None
        self._place(chunk)
        self.at, self.by_place = at + 1, True
        return True

    def _ends_with_reps(self, at: int) -> bool:
        """Whether a number that may be the reps of sets stands there, and nothing behind it that makes more of it."""
        number = self.pieces[at] if self.kinds[at] is K.NUMBER else None
        bare = number is not None and number.role in (Role.BARE, Role.REPS) and number.value <= MOST_LOADED_REPS
        return bare and self.kinds[at + 1] in ENDS_OF_REPS

    def _tells_reps_so_far(self) -> bool:
        """Whether anything but a load was told so far."""
        heads = [chunk.factors[0] if chunk.size == 1 else () for chunk in self.out.found]
        return len(heads) > 1 or any(len(head) != 1 or head[0].value <= MOST_LOADED_REPS for head in heads)

    def _last_by_place(self) -> bool:
        """ "... last one 5": a set of its own, where those before it were told by their places."""
        at = self._behind_a_place(self.at + 1)
        if not self.by_place or not self._ends_with_reps(at):
            return False
        self.at = at
        return True

    def _warmed_up_with_several(self) -> bool:
        """ "60x5, 80x3, 100x3, the first two were warm-ups", "60x5, 100x3, first one was a warm-up"."""
        counted = self._kind() is K.NUMBER and self.pieces[self.at + 1].role in (Role.BARE, Role.SETS)
        count, at = int(self.pieces[self.at + 1].value) if counted else 1, self.at + 1 + counted
        at = self._behind_a_place(at)
        if self.kinds[at] is not K.WARMUP or self.kinds[at + 1] not in ENDS_OF_A_FEEL or not self.out.found:
            return False
        first = self.out.found[:count]
        alone = [load_of_one_set(chunk) > MOST_SETS and chunk.times is None for chunk in first]
        self.at = at + 1
        if len(alone) != count or not all(alone):
            self.out.dangling = True  # "5x5 100, first one warm up"
            return True
        for chunk in first:
            chunk.kind = SetKind.WARMUP
        return True

    def _remarks_on_several(self) -> bool:
        """ "3x6 80, first two easy": so many of the sets told, and words of how they felt."""
        count = self.pieces[self.at + 1] if self._kind() is K.NUMBER else None
        if count is None or count.role not in (Role.BARE, Role.SETS) or not 1 < count.value <= self._sets_told():
            return False
        at = self.at + 2
        while self.kinds[at] in BEHIND_A_PLACE or self.kinds[at] in FELT_OF_SEVERAL:
            at += 1
        words = self.pieces[self.at + 2 : at]
        felt = any(piece.kind is K.NOTE or is_cued(piece.text, SAID_OF_A_SET) for piece in words)
        other_loads = any(is_cued(piece.text, COMPARED) for piece in words)  # "the last two a bit lighter"
        return felt and not other_loads and self.kinds[at] in ENDS_OF_A_FEEL

    def _doubt_a_place(self) -> None:
        """ "2 sets at 55, last one 6", "3 sets, second 60x6": what the other sets came to is not told."""
        counted = any(one.role is Role.SETS for one in numbers_in(self.out))
        if counted and self._kind(0) is K.NUMBER and not any(map(_tells_reps, self.out.found)):
            self.out.dangling = True


def _tells_reps(chunk: Chunk) -> bool:
    if chunk.at or not chunk.size:
        return False
    last = chunk.factors[-1][-1] if chunk.factors[-1] else None
    bare = last is not None and last.role is Role.BARE and last.value <= MOST_LOADED_REPS
    return chunk.size > 1 or bare or (last is not None and last.role is Role.REPS)

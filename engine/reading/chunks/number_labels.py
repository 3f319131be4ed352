"""Words and signs in front of a number that tell which it is, or what it comes to: "set 2", "#4", "= 24"."""

from __future__ import annotations

from engine.reading.chunks.lists import LOADED, sums_up
from engine.reading.chunks.repeats import RepeatedChunks
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_SETS, Piece, Role

MARKS_OF_A_SET = frozenset((K.EFFORT, K.FAILURE, K.MISS))
ENDS_OF_A_MARK = frozenset((None, K.COMMA, K.STOP, K.LINE, K.THEN, K.CLOSE))


class LabelledChunks(RepeatedChunks):
    """The part of the walk that reads labels of numbers inside a line."""

    def sets_word(self, piece: Piece) -> None:
        """ "set 2", "in sets of 20", "3 heavy sets of 5"."""
        if self._counts_them():
            return
        if self._kind() is K.OF:
            self._sets_of(piece)
        if self._kind() is K.NUMBER and not piece.text.endswith("s"):
            if self._marks_some_of_a_group():
                return
            self.out.dangling = True
        self.at += 1

    def _marks_some_of_a_group(self) -> bool:
        """ "3x8 at 60, set 3 rpe 9", "3x8 60, set 1 and 2 missed": which sets of the group before it a mark is of."""
        group = next((chunk for chunk in reversed(self.out.found[-2:]) if chunk.size > 1), None)
        at, places = self.at + 1, [self.pieces[self.at + 1]]
        while self.kinds[at + 1] is K.AND and self.kinds[at + 2] is K.NUMBER:
            at += 2
            places.append(self.pieces[at])
        plain = all(place.role is Role.BARE and place.value % 1 == 0 for place in places)
        mark = self.pieces[at + 1] if self.kinds[at + 1] in MARKS_OF_A_SET else None
        if group is None or mark is None or not plain or self.kinds[at + 2] not in ENDS_OF_A_MARK:
            return False
        if len(mark.efforts) > 1 or self.separator not in (None, K.COMMA):
            return False
        group.placed = (*group.placed, *[(int(place.value), mark) for place in places])
        self.at = at + 2
        return True

    def _told_whole(self) -> bool:
        """Whether one number stands before it, or a load and one number: "24kg, 100 in sets of 20"."""
        told = self.out.found
        if len(told) == 2 and told[0].size == 1 and not told[0].at and told[0].factors[0][0].role in LOADED:
            told = told[1:]
        return len(told) == 1 and told[0].size == 1

    def _sets_of(self, piece: Piece) -> None:
        found = self.out.found
        if self.kinds[self.at - 1] is K.FOR:
            self.out.dangling = True  # "80 for sets of 5": how many?
        elif self._told_whole():
            self.out.total = True  # "100 push ups in sets of 20"
        elif found and found[-1].size == 1 and found[-1].factors[0][-1].role is Role.REPS:
            self.out.dangling = True  # "100: 30 reps in sets of 5"
        elif not found and piece.text.endswith("s") and self._kind(2) is K.NUMBER:
            self.out.dangling = True  # "a couple of sets of 10"

    def equals(self, piece: Piece) -> None:
        """ "8 8 8 = 24", "85x3x5 = 5 triples", "4x6 = 37.5"."""
        number = self.pieces[self.at + 1] if self._kind() is K.NUMBER else None
        if number is not None and sums_up(self.out, number):
            self.at += 2
        elif number is None or not self.out.found or self._kind(2) in (K.COUNT, K.OF):
            self.at += 1  # "85x3x5 = 5 triples": the same once more
        elif self._equals_a_load(number):
            self.at_load(piece)
        else:
            self.out.dangling = True
            self.at += 1

    def numbered(self, piece: Piece) -> None:
        """ "#4" inside a line: a number that tells which, and not how many."""
        if self._kind() is K.NUMBER and piece.text == "#" and self.pieces[self.at + 1].glued:
            self.out.dangling = True
        self.at += 1

    def _equals_a_load(self, number: Piece) -> bool:
        """ "4x6 = 37.5": a load behind sets and reps without one, where it is no count of their reps."""
        last = self.out.found[-1]
        if len(self.out.found) > 1 or last.size != 2 or last.at or not all(last.factors):
            return False
        sets, reps = last.factors[0][0], last.factors[1][0]
        if sets.role is not Role.BARE or number.role not in (Role.BARE, Role.LOAD) or sets.value > MOST_SETS:
            return False
        return number.unit is not None or number.value % 1 != 0 or number.value > sets.value * reps.value * 2

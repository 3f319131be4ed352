"""What brackets hold: a list that is one factor, results, a time for each distance, sets done so many times."""

from __future__ import annotations

from engine.reading.chunks.chunks import Chunk
from engine.reading.chunks.number_labels import LabelledChunks
from engine.reading.chunks.results import LISTED
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, MOST_SETS, Piece, Role


class BracketedChunks(LabelledChunks):
    """The part of the walk that reads brackets."""

    def bracket(self, piece: Piece) -> None:
        if piece.kind is K.OPEN:
            self.depth += 1
            self.opened = len(self.out.found)
            if self._is_list_factor():
                self.chunk()
                self.depth -= 1
                return
            if self._takes_results() or self._takes_times():
                self.depth -= 1
                return
            self._doubt_results_of_a_list()
        else:
            self.in_note = False
            self.depth = max(0, self.depth - 1)
            if self.warm_in_brackets:
                self.kind, self.warm_in_brackets = None, False
            last = self._last()
            if last is not None and self._kind() is K.TIMES and self._kind(2) is K.NUMBER and last.in_brackets:
                self.out.dangling = self.out.dangling or bool(last.plus and self.opened)  # "60x8 (3+2) x2"
                self._multiply(int(self.pieces[self.at + 2].value))
                self.at += 3
                return
        self.at += 1

    def _doubt_results_of_a_list(self) -> None:
        """ "60 8 8 8 (7 8 9)": as many numbers as sets told one by one: efforts, results, or more sets."""
        end = self.at + 1
        while self.kinds[end] in LISTED:
            end += 1
        told = [piece for piece in self.pieces[self.at + 1 : end] if piece.kind is K.NUMBER]
        bare = len(told) > 1 and all(piece.role is Role.BARE and piece.value <= MOST_LOADED_REPS for piece in told)
        headed = bool(self.out.found) and self.out.found[0].size == 1  # "20 8 8 8": a load in front of the reps
        if bare and self.kinds[end] is K.CLOSE and len(told) in (self._sets_told(), self._sets_told() - headed):
            self.out.dangling = True

    def _takes_times(self) -> bool:
        """ "40m, 40m (45s, 48s)": the time of each distance in front; of fewer or more nobody can say."""
        end = self.at + 1
        while self.kinds[end] in (K.NUMBER, K.COMMA, K.SLASH):
            end += 1
        times = [piece for piece in self.pieces[self.at + 1 : end] if piece.kind is K.NUMBER]
        timed = len(times) > 1 and all(piece.role in (Role.SECONDS, Role.PLURAL) for piece in times)
        ways = [chunk for chunk in self.out.found if chunk.factors and chunk.factors[-1][-1:] and _is_far(chunk)]
        if not timed or not ways or self.kinds[end] is not K.CLOSE:
            return False
        if len(ways) == len(times) and all(chunk.size == 1 and len(chunk.factors[0]) == 1 for chunk in ways):
            for chunk, time in zip(ways, times, strict=True):
                self.out.found.insert(self.out.found.index(chunk) + 1, Chunk([(time._replace(role=Role.SECONDS),)]))
        else:
            self.out.dangling = True
        self.at = end + 1
        return True

    def _multiply(self, times: int) -> None:
        """ "(75 x7) x3"; of "(200x10, 150x8) x3" both are done in turn."""
        inside = self.out.found[self.opened :]
        if len(inside) == 1 or not 1 <= times <= MOST_SETS:
            self.out.found[-1].times = times
        else:
            self.out.found += inside * (times - 1)

    def _is_list_factor(self) -> bool:
        """ "(70,75,80)x6": only numbers and commas up to the bracket, and an x behind it."""
        at = self.at + 1
        while at < len(self.pieces) and self.pieces[at].kind in (K.NUMBER, K.COMMA, K.SLASH):
            at += 1
        closes = at + 1 < len(self.pieces) and self.pieces[at].kind is K.CLOSE
        several = at - self.at > 2
        return closes and several and self.pieces[at + 1].kind is K.TIMES


def _is_far(chunk: Chunk) -> bool:
    return chunk.factors[-1][-1].role is Role.METRES

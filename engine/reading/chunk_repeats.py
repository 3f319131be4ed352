"""Sets told by pointing at the one before: "same again twice", "another two sets like that", "2 more sets", "x2 more".

again = ( "same" | "another" | NUMBER "more" | "x" NUMBER "more" ) [ NUMBER ] [ "sets" ] [ "twice" ] up to a separator
What stands with new reps or a load of its own ("another 5 at 60") is no repeat. "3 more" alone may be of reps or sets.
"""

from __future__ import annotations

from engine.reading.chunk_marks import MOST_REPEATS
from engine.reading.chunk_warmups import WarmUpChunks
from engine.reading.chunks import Chunk
from engine.reading.kinds import K
from engine.reading.pieces import Piece, Role

ENDS = frozenset((K.COMMA, K.LINE, K.STOP, K.NOTE, K.EFFORT, K.CLOSE, K.OPEN, K.FAILURE, K.DASH, K.THEN))
POINTS_BACK = frozenset((K.SAME, K.ANOTHER, K.MORE, K.EXTRA))
PASSED_OVER = POINTS_BACK | frozenset((K.FILLER, K.SETS, K.AND, K.OF, K.TIMES, K.TIMES_WORD, K.BOTH))
LONGEST_REPEAT = 8
SAYS_WEIGHT = 1
"""What a SAME piece's `told` says of "same weight"."""


class RepeatedChunks(WarmUpChunks):
    """The part of the walk that reads sets told as the one before once more."""

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
    return piece.kind is K.SAME and piece.told == SAYS_WEIGHT


def _says_whole(told: list[Piece]) -> bool:
    """ "same again" speaks of all that was told, "another set" of one set."""
    return all(piece.kind not in (K.ANOTHER, K.MORE, K.SETS, K.EXTRA) and piece.role is not Role.SETS for piece in told)

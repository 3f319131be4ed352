"""So many sets told ahead of the reps of each: "AMRAP x3: 28/24/19", "x3 to failure: 12 10 8", "60 x3: 9 8 8".

announced = [ OPEN-ENDED ] "x" NUMBER [ OPEN-ENDED ] [ ":" ] REPS+      as many reps as sets; else it is asked
          | NUMBER "sets" "at" LOAD ":" REPS+      behind others: "80 8 8, then 2 sets at 70: 10, 9" tells their load
An x with a number is a set of so many reps everywhere else; a word for an open end, or a colon, says that it counts.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.chunks.aids import AidedChunks
from engine.reading.chunks.chunks import Chunk, Chunks
from engine.reading.chunks.lists import MARKED, TOTALS
from engine.reading.chunks.numbers import OPEN_ENDED
from engine.reading.chunks.sums import BOTH_SETS
from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, MOST_SETS, Piece, Role

MOST_SETS_TO_FAILURE = 5
"""Common practice, no source."""
BESIDE_A_COUNT = OPEN_ENDED | {K.FILLER, K.EACH, K.CLOSE, K.SETS}
AHEAD_OF_A_COUNT = frozenset((K.FILLER, K.OPEN, K.COMMA))
OF_A_PAIR = frozenset(("factors", "before", "counted", "joiner", "x_apart", "failure"))
LISTED = frozenset((K.NUMBER, K.COMMA, K.SLASH, K.DASH, K.AND))


class AnnouncedChunks(AidedChunks):
    """The part of the walk that reads a count of sets with an x in front of it."""

    def carried(self, piece: Piece) -> None:
        if not self._every_hour() and not self._announces():
            super().carried(piece)

    def _every_hour(self) -> bool:
        """ "20 push ups every hour x5": so many times, or a set of five: asked."""
        every = self.at > 1 and self.kinds[self.at - 1] is K.FAR and "every" in CUES_OF[self.pieces[self.at - 2].text]
        last, number = self._last(), self.pieces[self.at + 1] if self._kind() is K.NUMBER else None
        if not every or last is None or number is None or last.times is not None or number.role is not Role.BARE:
            return False
        last.times = int(number.value)
        self.out.dangling = True
        self.at += 2
        return True

    def colon(self, piece: Piece) -> None:
        """ "60 x3: 9 8 8": what looked like the reps of one set counts those that follow."""
        last = self._last()
        pair = last is not None and last.size == 2 and len(self.out.found) == 1 and last.marks() <= OF_A_PAIR
        if last is not None and pair and _is_load(last.factors[0]) and len(last.factors[1]) == 1:
            listed, count = self._listed(self.at + 1), last.factors[1][0]
            if listed == count.value and listed > 1 and count.role is Role.BARE:
                last.factors.pop()
                self._announce(count, [])
                self.at += 1
                return
            self.out.dangling = self.out.dangling or listed > 1
        super().colon(piece)

    def _announces(self) -> bool:
        count = self.pieces[self.at + 1] if self._kind() is K.NUMBER else None
        if count is None or count.role is not Role.BARE or not 1 < count.value <= MOST_SETS or self._sets_told_before():
            return False
        end = self.at + 2
        while self.kinds[end] in BESIDE_A_COUNT:
            end += 1
        said = [self._word_ahead(), *self.kinds[self.at + 2 : end]]
        headed = self.kinds[end] is K.COLON
        if self._kind(2) is K.MAX and self.kinds[end] is None:
            self.out.dangling = True  # "x3 max": of how many reps?
        if not headed and OPEN_ENDED.isdisjoint(said):
            return False
        listed = self._listed(end + headed)
        if not listed and said[0] is K.FAILURE and count.value <= MOST_SETS_TO_FAILURE:
            self.out.dangling = True  # "10 kg to failure x3": so many reps, or sets of how many?
        if listed != count.value:
            self.out.dangling = self.out.dangling or listed > 1
            return False
        self._announce(count, said)
        self.at = end + headed
        return True

    def _announce(self, count: Piece, said: list[K | None]) -> None:
        self.out.maximum = self.out.maximum or K.MAX in said
        self.out.failure_ahead = self.out.failure_ahead or K.FAILURE in said
        self.depth -= min(self.depth, said.count(K.CLOSE))
        self._place(Chunk([(count._replace(role=Role.SETS),)], before=self.separator))

    def _joins_counted_load(self) -> bool:
        """ "2 sets at 110 for 5": so many sets of what they are for."""
        last, number = self._last(), self.pieces[self.at + 1] if self._kind() is K.NUMBER else None
        if last is None or number is None or last.size != 1 or len(last.at) != 1:
            return False
        sets, loaded = last.factors[0][0], last.at[0].role is Role.LOAD or last.at[0].value > MOST_LOADED_REPS
        counts = number.role in (Role.BARE, Role.REPS) and number.value <= MOST_LOADED_REPS
        if sets.role is not Role.SETS or not (loaded and counts) or not self._goes_on():
            return False
        self.at += 1
        listed = self._listed(self.at)
        if listed > 1:
            self.out.dangling = self.out.dangling or listed != sets.value
            return True  # "3 sets at 80 for 8, 8, 7"
        last.factors.append(self.factor(None))
        return True

    def _goes_on(self) -> bool:
        """Whether nothing parts the number here from the sets it is of, or "all" or "each" says that it is of them."""
        return self.separator is None or self._kind(-1) is K.EACH or "all" in CUES_OF[self.pieces[self.at - 1].text]

    def _tells_reps_of_all(self, both: Piece) -> bool:
        """ "3 sets at 80, 8 on all of them", "2 sets at 80, 8 on both": so many reps of each set that was counted."""
        linked = self._kind(-1) is K.FILLER and self._kind(-2) in (K.NUMBER, K.REPS)
        counts = [chunk.factors[0][0] for chunk in self.out.found if chunk.factors and chunk.factors[0]]
        sets = next((int(one.value) for one in counts if one.role is Role.SETS), 0)
        return linked and (sets == BOTH_SETS if both.text == "both" else sets > 0)

    def _sets_told_before(self) -> bool:
        """Whether anything but loads was told."""
        return any(chunk.size != 1 or chunk.at or not _is_load(chunk.factors[0]) for chunk in self.out.found)

    def _word_ahead(self) -> K | None:
        at = self.at - 1
        while at >= 0 and self.kinds[at] in AHEAD_OF_A_COUNT:
            at -= 1
        return self.kinds[at] if at >= 0 else None

    def _listed(self, at: int) -> int:
        """How many bare numbers are listed from there on; 0 where one of them is no count of reps by itself."""
        end = at
        while self.kinds[end] in LISTED:
            end += 1
        numbers = [piece for piece in self.pieces[at:end] if piece.kind is K.NUMBER]
        plain = all(piece.role in (Role.BARE, Role.REPS) for piece in numbers) and self.kinds[end] is not K.TIMES
        return len(numbers) if plain else 0


def _is_load(numbers: tuple[Piece, ...]) -> bool:
    return len(numbers) == 1 and (numbers[0].role is Role.LOAD or numbers[0].value > MOST_LOADED_REPS)


def load_announced(chunks: Chunks) -> None:
    """Makes a load of what announces sets behind others with it: "80 8 8, then 2 sets at 70: 10, 9"."""
    found = chunks.found
    heads = [at for at in range(len(found)) if _announces_with_load(found, at)]
    for at in heads if heads[-1:] > [0] else ():
        found[at] = Chunk([(found[at].at[0]._replace(role=Role.LOAD),)], before=found[at].before)


def _announces_with_load(found: Sequence[Chunk], at: int) -> bool:
    head = found[at]
    if head.size != 1 or len(head.at) != 1 or [one.role for one in head.factors[0]] != [Role.SETS]:
        return False
    return _reps_told(found[at + 1 :]) == head.factors[0][0].value and MARKED.isdisjoint(head.marks())


def _reps_told(chunks: Sequence[Chunk]) -> int:
    """How many bare reps the chunks tell, up to one that tells more; one that stands apart by "then" is no part."""
    told = 0
    for chunk in chunks:
        if chunk.size != 1 or chunk.at or (told and chunk.before is K.THEN):
            break
        if not all(one.role in TOTALS and one.value <= MOST_LOADED_REPS for one in chunk.factors[0]):
            break
        told += len(chunk.factors[0])
    return told

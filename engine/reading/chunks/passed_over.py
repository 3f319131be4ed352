"""Words that may change the sets and that no rule of the walk took up: the message is asked about, and quotes them.

A word passes unasked where its clause is a remark (words of feel, technique or equipment, and no number), and a word
that points at one of the sets where another rule reads what is told of that set: a number, an effort, a miss.
"""

from __future__ import annotations

from engine.reading.chunks.sums import SummedChunks
from engine.reading.words.cues import any_cued, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import LAST_OF_THE_SETS, MOST_SETS, Piece

CLAUSE_ENDS = frozenset((None, K.COMMA, K.LINE, K.STOP, K.THEN, K.OPEN, K.CLOSE, K.DASH, K.QUESTION))
REMARKING = frozenset((K.NOTE, K.PAIN, K.SORE, K.JOINT, K.MUSCLE, K.DENIED, K.SETTING, K.BAND, K.PARTIAL, K.UNRELATED))
BESIDE_A_REMARK = REMARKING | {K.FILLER, K.PLAIN, K.DENY, K.AND, K.WITH, K.OF, K.EACH, K.VARIANT, K.REPS, K.SETS}
AHEAD_OF_A_PLACE = BESIDE_A_REMARK | {K.FOR}
POINTING = frozenset((K.LAST, K.FIRST, K.MIDDLE, K.FROM_LAST, K.EXTREME, K.ORDINAL))
COMPARED = frozenset(("lighter", "heavier"))
"""Of one of the sets these tell another load, which is not known, unless it only felt so."""
FELT = frozenset(("felt",))
NAMING_A_SET = frozenset((K.SETS, K.REPS, K.FILLER))
HEADING_SETS = NAMING_A_SET | {K.OF}
MARKING = frozenset((K.EFFORT, K.FAILURE, K.MISS, K.DROP, K.WARMUP, K.REST_PAUSE, K.BODY))
TELLING = MARKING | {K.NUMBER, K.COUNT}
"""What is told of a set that a word points at: other rules read it."""
CHANGING_LOADS = 1
"""What an ALTERED piece's `told` says of words for loads that rise or fall from set to set."""
LONGEST_REMARK = 60
"""Pieces; where a clause is longer, each word passed over is kept with so many behind it."""
OF_THOSE = frozenset(("of",))
OPEN_WITHOUT_A_NUMBER = frozenset((K.NOT,))


class PassedWords(SummedChunks):
    """The part of the walk that keeps what it did not understand."""

    def passed_word(self, piece: Piece) -> None:
        """A word that no rule reads where it stands."""
        self._pass(self.at)
        self.at += 1

    def _pass(self, at: int) -> None:
        """Keeps the word there with the rest of its clause, unless what stands behind it explains it."""
        end = self._clause_end(at)
        behind = self.kinds[at + 1 : end]
        ends = NAMING_A_SET.issuperset(behind)
        explained = self._is_explained(self.pieces[at], behind) or self._names_a_feel(at, behind)
        if not (explained or (ends and self._ends_a_remark(at)) or self._heads_the_sets(at, end)):
            self.out.passed += (self.pieces[at]._replace(end=self.pieces[end - 1].end),)

    def _clause_end(self, at: int) -> int:
        """Where the clause ends in which that word stands, or what is kept of it."""
        end, furthest = at + 1, at + LONGEST_REMARK
        while end < furthest and self.kinds[end] not in CLAUSE_ENDS:
            end += 1
        return end

    def _names_a_feel(self, at: int, behind: list[K | None]) -> bool:
        """ "last one a fight", "the last was the best": what one of them was, in a word that counts nothing."""
        if self.pieces[at].kind not in POINTING or behind[-1:] != [K.PLAIN]:
            return False
        words = self.pieces[at + 1 : at + 1 + len(behind)]
        if _says_what_it_was_like(words):
            return True
        return all(one.kind is K.FILLER for one in words[:-1]) and len(words) > 1 and is_cued(words[-2].text, ARTICLES)

    def _ends_a_remark(self, at: int) -> bool:
        """ "knee pain on the last set"."""
        if self.pieces[at].kind not in POINTING:
            return False
        start = at
        while start and self.kinds[start - 1] in AHEAD_OF_A_PLACE:
            start -= 1
        return not REMARKING.isdisjoint(self.kinds[start:at])

    def _heads_the_sets(self, at: int, end: int) -> bool:
        """ "squats first, 100x5", "last squat set, 115 for 4": nothing is told ahead of it, and sets behind."""
        parted = self.kinds[end] in (K.COMMA, K.STOP) and self.kinds[end + 1] is K.NUMBER
        if self.out.found or not parted or self.pieces[at].kind not in POINTING:
            return False
        one = self.pieces[at].told == LAST_OF_THE_SETS or K.SETS in self.kinds[at:end]
        several = one and self.pieces[end + 1].value <= MOST_SETS and self.kinds[end + 2] is K.TIMES
        return HEADING_SETS.issuperset(self.kinds[at + 1 : end]) and not several

    def _is_explained(self, piece: Piece, behind: list[K | None]) -> bool:
        if piece.kind in POINTING and not TELLING.isdisjoint(behind):
            return True
        if piece.kind is K.BOTH and not MARKING.isdisjoint(behind):
            return True
        if piece.kind is K.ALTERED and piece.told == CHANGING_LOADS and len(self.out.found) > 1:
            return True  # "80x5 90x5 100x5 going up": each set told its own
        if piece.kind in OPEN_WITHOUT_A_NUMBER and K.NUMBER not in behind:
            return True
        if piece.kind is K.ALTERED and self.kinds[self.at - 1] is K.NUMBER and is_cued(piece.text, OF_THOSE):
            return False  # "2 of these were ugly": a number of sets that stand, and no reps
        if REMARKING.isdisjoint(behind) or not BESIDE_A_REMARK.issuperset(behind):
            return False
        texts = [one.text for one in self.pieces[self.at : self.at + len(behind) + 1]]
        return not any_cued(texts, COMPARED) or any_cued(texts, FELT)


def _says_what_it_was_like(words: list[Piece]) -> bool:
    """ "last set was really nasty": an unknown word behind the verb, and none that compares."""
    told = [one for one in words if one.kind not in (K.SETS, K.REPS)]
    if len(told) < LEAST_OF_A_FEEL or not is_cued(told[0].text, WAS):
        return False
    return all(one.kind in FEELING and not is_cued(one.text, OTHERWISE) for one in told[1:])


FEELING = frozenset((K.FILLER, K.NOTE, K.PLAIN))
OTHERWISE = COMPARED | {"cutshort"}
LEAST_OF_A_FEEL = 2
WAS = frozenset(("was", "were", "felt"))
ARTICLES = frozenset(("an", "the"))

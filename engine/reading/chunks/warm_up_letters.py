"""A "w" in front of some sets, and not of the others: "w 60x5, w 80x3, 100x5".

lettered = ( "w" SET "," )+ SET+      two letters and more mark warm-ups; one, or one ahead of each set, may say "with"
"""

from __future__ import annotations

from engine.reading.chunks.set_marks import MarkedChunks
from engine.reading.words.kinds import K
from engine.reading.words.pieces import places_of, texts_in_order
from engine.values.sets import SetKind

SEVERAL = 2
"""What a WARMUP piece's `told` says of "warm-ups"."""
AHEAD_OF_A_LETTER = frozenset((K.COMMA, K.STOP, K.LINE, K.THEN, K.AND, K.COLON))


class LetteredChunks(MarkedChunks):
    """The part of the walk that reads a letter ahead of a set."""

    lettered: frozenset[int] | None = None
    """The places of the letters that head a set; None: not looked for yet."""
    warm_letters: tuple[int, ...] = ()
    """The places of sets with a "w" in front of them that may say "with", too."""

    def _letter_ahead(self) -> bool:
        """ "w 60x5, w 80x3, 100x5": a letter in front of some sets and not of the others; it may say "with", too."""
        self.lettered = self._pairs_behind_a_letter() if self.lettered is None else self.lettered
        pairs = self.kinds.count(K.TIMES)
        if self.at not in self.lettered or pairs < SEVERAL:
            return False
        if len(self.lettered) < SEVERAL or len(self.lettered) == pairs:
            self.warm_letters = (*self.warm_letters, len(self.out.found))
        else:
            self.next_kind = SetKind.WARMUP
        self.at += 1
        return True

    def _pairs_behind_a_letter(self) -> frozenset[int]:
        """The places of the letters that stand right ahead of a set, and behind no other without a sign between."""
        return frozenset(
            at
            for at in places_of("w", texts_in_order(self.pieces))
            if self.kinds[at + 1 : at + 4] == [K.NUMBER, K.TIMES, K.NUMBER]
            and (self.kinds[at - 1] in AHEAD_OF_A_LETTER or not at or self.pieces[at + 1].glued)
        )

    def _doubt_letters(self) -> None:
        """ "w 60x5, 80x3": with 60, or to warm up."""
        if not self.out.warm_either:
            self.out.warm_either = frozenset(), frozenset(self.warm_letters)

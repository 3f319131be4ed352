"""Times told in minutes and seconds, in words or figures: "one minute ten", "1 min 20 s", "полторы минуты".

time = minutes [ "and" ] SECONDS-NUMBER [ seconds | END ]      END: a sign, a "then", a side or a rest; no other word
     | [ "a" ] minute                                          one, where no number stands before it
"""

from __future__ import annotations

from engine.reading.lexing.spelled_numbers import JOINED_BY, SpelledNumbers
from engine.reading.words.cues import CUES_OF, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import SIXTY, Piece
from engine.reading.words.token_shapes import Shape

ENDING_SIGNS = frozenset((",", ";", "(", ")", "/", "+", ".", "!", ">", "|"))
ENDING_A_TIME = frozenset((K.THEN, K.EACH, K.REST, K.PAUSE, K.NOTE, K.LEFT, K.RIGHT, K.SAME))
ONE_TIME = frozenset(("oneminute",))
AHEAD_OF_ONE_TIME = frozenset(
    (K.NAME, K.COMMA, K.THEN, K.COLON, K.AND, K.SLASH, K.PLUS, K.REST, K.PAUSE, K.LINE, K.TIMES, K.FOR, K.STOP)
)


class SpelledTimes(SpelledNumbers):
    """The part of the walk that puts minutes and seconds together."""

    out: list[Piece]

    def _with_seconds(self, minutes: Piece, at: int) -> tuple[Piece, int]:
        """ "1 min 20 s", "1min 30", "one minute ten": one time in two units."""
        joined = at < len(self.tokens) and self.tokens[at].text in JOINED_BY
        found = self._seconds_at(at + joined)
        if found is None:
            return minutes, at
        seconds, behind = found
        after = self._token(behind)
        whole = minutes._replace(value=minutes.value + seconds, end=self.tokens[behind - 1].end)
        if after is not None and (after.text in ("s", '"') or self._unit_of(after) is K.SECONDS):
            return whole._replace(end=after.end), behind + 1
        return (whole, behind) if self._ends_a_time(behind) else (minutes, at)

    def _seconds_at(self, at: int) -> tuple[int, int] | None:
        """A number below sixty, in figures or words, and the place behind it."""
        token = self._token(at)
        if token is None or token.glued or token.shape not in (Shape.NUMBER, Shape.WORD):
            return None
        if token.shape is Shape.NUMBER:
            value, behind = token.value, at + 1
        else:
            said = self._number_word(at)
            if said is None:
                return None
            whole = self._spelled_out(said[0], said[1])
            value, behind = whole.value, whole.end
        if value is None or not 0 < value < SIXTY or value % 1:
            return None
        return int(value), behind

    def _ends_a_time(self, at: int) -> bool:
        after = self._token(at)
        if after is None or after.shape is Shape.LINE or after.text in ENDING_SIGNS:
            return True
        if after.text == "x" and not after.glued and self._is_number(at + 1):
            return not self._counts_seconds(at + 2)  # "1 min 20 x 3"
        said = self._number_word(at) if after.shape is Shape.WORD else None
        if after.shape is Shape.NUMBER or said is not None:
            unit = self._token(said[1] if said is not None else at + 1)
            return unit is not None and self._unit_of(unit) is K.MINUTES  # "1 min 10 1 min 5"
        found = self._longest_phrase(at) if after.shape is Shape.WORD else None
        return found is not None and found[0].kind in ENDING_A_TIME

    def _counts_seconds(self, at: int) -> bool:
        token = self._token(at)
        return token is not None and (token.text == "s" or self._unit_of(token) is K.SECONDS)

    def _counts_one_time(self, text: str) -> bool:
        """ "a minute", "plank for a minute", "планка минуту": one, where no number stands before it."""
        if not self.out:
            return False
        before = self.out[-1]
        of_each = before.kind is K.OF and len(self.out) > 1 and self.out[-2].kind is K.ONCE  # "два раза по минуте"
        alone = is_cued(text, ONE_TIME) and before.kind in AHEAD_OF_ONE_TIME
        return "an" in CUES_OF[before.text] or of_each or alone

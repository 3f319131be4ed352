"""A rest asked for in any order of words: "start a 2 min timer", "90 sec rest please", "2 min on the clock".

rest = TIME and a clock (TIMING)                        "2 min timer", "count down from 90 seconds"
     | TIME and a word for rest and what ASKS for it    "give me 2 min rest"; "90 sec rest" alone tells of one

Only words AROUND them may stand beside them. Each part in capitals is a cue of the language files.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.requests.part_read import TAKES, UNCLEAR
from engine.reading.values import Act
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import Phrasebook
from engine.reading.words.pieces import Piece, Role
from engine.reading.words.tokens import Token

LONGEST = 12
MOST_NUMBERS = 2
MINUTE_S, LONGEST_REST_S = 60, 900
"""Nobody rests longer between two sets. Common practice, no source."""
NO_REST = frozenset((K.NAME, K.TIMES, K.COUNT, K.AT, K.PAIN, K.SAYING))


def rest_asked(words: Sequence[tuple[str, Token]], pieces: Sequence[Piece], book: Phrasebook) -> Act | None:
    """The rest that is asked for; None where none is, or where one is only told of."""
    if not 2 <= len(words) <= LONGEST or not NO_REST.isdisjoint([piece.kind for piece in pieces]):
        return None
    numbers = [piece for piece in pieces if piece.kind is K.NUMBER]
    said = [word for word, token in words if not any(one.start <= token.start < one.end for one in numbers)]
    timing, resting, asking = (book.cues[cue] for cue in ("timing", "resting", "asksrest"))
    timed = not timing.isdisjoint(said)
    if not timed and (resting.isdisjoint(said) or asking.isdisjoint(said)):
        return None
    if K.THEN in [piece.kind for piece in pieces] and timed and numbers:
        return Act(UNCLEAR, text=TAKES["rest"])
    known = timing | resting | asking | book.cues["aroundrest"]
    seconds = _seconds(numbers, said, book)
    return Act("rest", count=seconds, text=f"{seconds}s") if seconds and known.issuperset(said) else None


def _seconds(numbers: Sequence[Piece], said: Sequence[str], book: Phrasebook) -> int:
    """How long: "90s", "2 min 30", "a minute"; 0 where that is not told."""
    if not numbers:
        return 0 if book.cues["aminute"].isdisjoint(said) else MINUTE_S
    first, *others = numbers
    if len(numbers) > MOST_NUMBERS or first.role not in (Role.SECONDS, Role.PLURAL):
        return 0
    more = sum(int(one.value) for one in others if one.role in (Role.SECONDS, Role.PLURAL, Role.BARE))
    if others and (more >= MINUTE_S or int(first.value) % MINUTE_S):
        return 0
    seconds = int(first.value) + more
    return seconds if seconds <= LONGEST_REST_S else 0

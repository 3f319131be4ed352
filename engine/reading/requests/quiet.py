"""Hours without messages, asked for in any order of words: "no messages after 9pm", "don't text me before 8".

quiet = NO (hushes) and a word for what is sent (messaging), and AFTER an hour | BEFORE an hour | two hours
      | ONLY and such a word, and the hours that are not quiet      "only message me between 8 and 20"

Only words AROUND them may stand beside them. Each part in capitals is a cue of the language files. Nobody goes to
bed in the morning: an hour of the first twelve that begins the quiet is one of the evening, unless it says otherwise.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import time

from engine.reading.days.hours_ahead import clock_of
from engine.reading.requests.part_read import TAKES, UNCLEAR
from engine.reading.requests.said import Said
from engine.reading.values import Act
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import Phrasebook, phrasebook
from engine.reading.words.pieces import Piece
from engine.reading.words.tokens import Token

LONGEST = 16
HALF_DAY = 12
WAKING = 4
"""From this hour on a bare hour that begins the quiet is one of the evening. Common practice, no source."""
NO_HOURS = frozenset((K.NAME, K.TIMES, K.COUNT))
NOT_EVERY_DAY = frozenset((K.WEEKDAY, K.TOMORROW, K.EXCEPT, K.FUTURE))
HOURS_OR_DAYS = NOT_EVERY_DAY | {K.NUMBER}
LONGEST_UNCLEAR, REACH = 9, 3
BETWEEN = 2


def quiet_asked(words: Sequence[tuple[str, Token]], pieces: Sequence[Piece], book: Phrasebook) -> Act | None:
    """The quiet hours that are asked for, from and to: "21:00 07:00", "after 21:00", "before 08:00"; else None."""
    kinds = frozenset(piece.kind for piece in pieces)
    said = [word for word, token in words if not _is_in_a_number(token, pieces)]
    hushes, messaging = book.cues["hushes"], book.cues["messaging"]
    only = K.ONLY in kinds and hushes.isdisjoint(said)
    if len(words) > LONGEST or messaging.isdisjoint(said) or not (only or not hushes.isdisjoint(said)):
        return None
    if not NO_HOURS.isdisjoint(kinds) or kinds.isdisjoint(HOURS_OR_DAYS):
        return None
    before, after = book.cues["hushbefore"], book.cues["hushafter"]
    known = hushes | messaging | before | after | book.cues["aroundquiet"] | book.cues["only"]
    if kinds.isdisjoint(NOT_EVERY_DAY) and known.issuperset(said):
        return quiet_told(pieces, said, book, only=only)
    begins = hushes | book.cues["only"] | messaging
    asked = not messaging.isdisjoint(said[:REACH]) and not begins.isdisjoint(said[:1]) and K.COMMA not in kinds
    return Act(UNCLEAR, text=TAKES["quiet"]) if asked and len(words) <= LONGEST_UNCLEAR else None


def _is_in_a_number(token: Token, pieces: Sequence[Piece]) -> bool:
    return any(one.kind is K.NUMBER and one.start <= token.start < one.end for one in pieces)


def quiet_behind(said: Said) -> Act | None:
    """The hours, or until when, behind a word that asks for quiet; "quiet in here today" asks for nothing."""
    timed = any(letter.isdigit() for letter in said.rest) or not QUIET_UNTIL.isdisjoint(said.rest_words)
    if not timed:
        return None
    few = len(said.rest_words) <= FEW and not any(piece.kind is K.TIMES for piece in said.pieces)
    return quiet_told(said.pieces, said.rest_words, phrasebook()) or (Act(said.name, text=said.rest) if few else None)


FEW = 5
QUIET_UNTIL = frozenset(("until", "till", "tomorrow", "off", "hours", "hour", "night", "tonight"))


def quiet_told(pieces: Sequence[Piece], said: Sequence[str], book: Phrasebook, *, only: bool = False) -> Act | None:
    """The quiet hours of the words behind what asks for them; `only`: the hours told are those that are not quiet."""
    hours = [_hour(pieces, at) for at, piece in enumerate(pieces) if piece.kind is K.NUMBER]
    if None in hours or len(hours) not in (1, BETWEEN):
        return None
    first, *others = [one for one in hours if one is not None]
    if others and _begins_behind(said, book):
        first, others = others[0], [first]  # "before 7 or after 21"
    if only:
        return _but_for(first, others, said, book)
    start, end = _evening(*first), (others or [first])[-1][0]
    if others:
        by_day = first[0] < end and not others[0][1]
        return Act("quiet", text=f"{_clock(first[0] if by_day else start)} {_clock(end)}")
    if not book.cues["hushafter"].isdisjoint(said):
        return Act("quiet", text=f"after {_clock(start)}")
    return Act("quiet", text=f"before {_clock(end)}") if not book.cues["hushbefore"].isdisjoint(said) else None


def _but_for(
    first: tuple[time, bool], others: Sequence[tuple[time, bool]], said: Sequence[str], book: Phrasebook
) -> Act | None:
    """ "only between 8 and 20", "only after 8": an hour that ends them is one of the evening where it may be either."""
    if others:
        return Act("quiet", text=f"{_clock(_evening(*others[-1]))} {_clock(first[0])}")
    if not book.cues["hushafter"].isdisjoint(said):
        return Act("quiet", text=f"before {_clock(first[0])}")
    late = _evening(*first)
    return Act("quiet", text=f"after {_clock(late)}") if not book.cues["hushbefore"].isdisjoint(said) else None


def _begins_behind(said: Sequence[str], book: Phrasebook) -> bool:
    """Whether the end of the quiet is told ahead of its beginning."""
    before = next((at for at, word in enumerate(said) if word in book.cues["hushbefore"]), None)
    after = next((at for at, word in enumerate(said) if word in book.cues["hushafter"]), None)
    return before is not None and after is not None and before < after


def _hour(pieces: Sequence[Piece], at: int) -> tuple[time, bool] | None:
    """The hour of a number, and whether it may be in either half of the day."""
    hour, minute, exact = clock_of(pieces[at])
    half = pieces[at + 1].text if at + 1 < len(pieces) else ""
    told = half in ("am", "pm")
    if told and not 1 <= hour <= HALF_DAY:
        return None
    if told:
        hour = hour % HALF_DAY + (HALF_DAY if half == "pm" else 0)
    if hour == 2 * HALF_DAY:
        hour = 0
    if not 0 <= hour < 2 * HALF_DAY:
        return None
    return time(hour, minute), not told and not exact and hour <= HALF_DAY


def _evening(told: time, is_open: bool) -> time:
    late = is_open and WAKING <= told.hour <= HALF_DAY
    return told.replace(hour=(told.hour + HALF_DAY) % (2 * HALF_DAY)) if late else told


def _clock(at: time) -> str:
    return at.strftime("%H:%M")

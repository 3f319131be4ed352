"""Requests that a day or an hour makes, in any order of words: "until monday pause please", "tomorrow 7am remind me".

pause  = PAUSING word and UNTIL a day, and only words AROUND them
       | PAUSING word and how many days or weeks, and only words AROUND them     "taking two weeks off"
         (how long: see pausing.py)
remind = an hour and REMIND at the end
Each part in capitals is a cue of the language files.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.days.hours_ahead import moment_told
from engine.reading.requests.pausing import SPANS, pause_told, rest_of_the_week
from engine.reading.values import Act, Context
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import Phrasebook
from engine.reading.words.pieces import Piece
from engine.reading.words.tokens import Token

Words = Sequence[tuple[str, Token]]
LONGEST = 14
TELLING_A_DAY = frozenset(
    (K.WEEKDAY, K.TOMORROW, K.TODAY, K.MONTH, K.ORDINAL, K.NUMBER, K.DATE, K.FUTURE, K.SLASH, K.DASH, K.STOP, K.AGO)
)
SETS_TOLD = frozenset((K.TIMES, K.COUNT, K.NAME, K.AT))


def told_by_the_day(words: Words, pieces: Sequence[Piece], context: Context, book: Phrasebook) -> Act | None:
    """A pause or a reminder whose day or hour stands anywhere in a short sentence; None for anything else."""
    if not 2 <= len(words) <= LONGEST or not SETS_TOLD.isdisjoint([piece.kind for piece in pieces]):
        return None
    said = [word for word, _ in words]
    if not book.cues["pausing"].isdisjoint(said):
        paused = _pause(words, pieces, context, book)
        if paused is not None:
            return paused
    when = moment_told(pieces, context, said) if _asks_to_remind(words, pieces, book) else None
    return Act("remind", when=when) if when is not None else None


def _asks_to_remind(words: Words, pieces: Sequence[Piece], book: Phrasebook) -> bool:
    """Whether the words ask for a reminder at their end, or behind nothing but a day and an hour."""
    said = [word for word, _ in words]
    if any(" ".join(said[-length:]) in book.cues["remindend"] for length in (1, 2, 3)):
        return True
    at = next((at for at in range(1, len(said)) if " ".join(said[at : at + 2]) in book.cues["remindend"]), None)
    front = [piece for piece in pieces if at is not None and piece.start < words[at][1].start]
    return bool(front) and all(piece.kind in AROUND_AN_HOUR for piece in front)


AROUND_AN_HOUR = TELLING_A_DAY | {K.FILLER, K.WITH, K.COMMA, K.HALF, K.FOR, K.AND}


def _pause(words: Words, pieces: Sequence[Piece], context: Context, book: Phrasebook) -> Act | None:
    days = [piece for piece in pieces if piece.kind in TELLING_A_DAY]
    said = [word for word, token in words if not any(one.start <= token.start < one.end for one in days)]
    known = book.cues["pausing"] | book.cues["untilday"] | book.cues["aroundpause"] | book.cues["please"]
    timed = not book.cues["untilday"].isdisjoint(said)
    if not timed and not _is_off([word for word, _ in words], book):
        return None  # "training for two weeks now"
    if not _is_off([word for word, _ in words], book) and any(not book.cues[cue].isdisjoint(said) for cue, _ in SPANS):
        return None
    if not (known | book.cues["spanof"] | book.cues["fromday"]).issuperset(said):
        return None
    words_of_it = [word for word, _ in words][-LAST_OF_IT:]
    told = rest_of_the_week(words_of_it, context, book) or pause_told(pieces, context, book)
    return Act("pause", when=told.until, start=told.start) if told is not None else None


LAST_OF_IT = 2


def _is_off(said: Sequence[str], book: Phrasebook) -> bool:
    """Whether the words tell of time off by themselves, or deny the training: "back two weeks now" does neither."""
    words = set(said)
    apart = words & book.cues["pausing"] - book.cues["notoff"]
    return bool(apart) or not (words.isdisjoint(book.cues["trains"]) or words.isdisjoint(book.cues["denies"]))

"""Numbers behind a slip that are hours of the day: "no coffee after 3", "sorry late, gym at 9" correct no set.

hour = HOURLY number | ( unrelated | heading ) [ "at" ] number        HOURLY: after, before, until, since (a cue)
"""

from __future__ import annotations

from engine.reading.corrections.correcting import Told
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import spoken
from engine.reading.words.pieces import Piece, Role

LAST_HOUR = 24
ELSEWHERE = frozenset((K.UNRELATED, K.HEADING))
TIED = frozenset((K.AT, K.WITH))


def speaks_of_an_hour(told: Told) -> bool:
    """Whether the only number of the message is an hour, or all are hours without messages, so that it tells nothing of
    a set.
    """
    numbers = told.numbers()
    said = frozenset(told.words)
    hushed = bool(said & told.book.cues["messaging"]) and bool(said & told.book.cues["between"])
    if hushed and numbers and all(map(_may_be_an_hour, numbers)):
        return True
    if len(numbers) != 1 or not _may_be_an_hour(numbers[0]) or told.has("only"):
        return False  # "stopped after 3" tells how many sets there were
    at = told.pieces.index(numbers[0])
    ahead = [piece for piece in told.pieces[:at] if piece.kind not in TIED]
    tied = len(ahead) < at
    if not ahead:
        return False
    hourly = spoken(ahead[-1].text.rpartition(" ")[2]) in told.book.cues["hourly"] and not tied
    return hourly or (ahead[-1].kind in ELSEWHERE and (tied or ahead[-1].text.split()[-1] == "at"))


def _may_be_an_hour(number: Piece) -> bool:
    clock = number.role in (Role.NOT_A_SET, Role.SECONDS) and ":" in number.text
    return clock or (number.role is Role.BARE and number.value <= LAST_HOUR and not number.spelled)

"""Sets told with an hour of today that may not have come yet: a plan, and no sets; where that is open, a question.

hour    = ( workout | heading ) AT CLOCK | EVENING CLOCK      gym at 18:00, 3x5 deadlift; tonight 18:30 bench 3x5
        | CLOCK ahead of the lift                             19:30 bench 3x5
evening = EVENING, said by day                                tonight squat 3x5 100, at ten in the morning

A plan rarely tells its loads, and what was done mostly does. So an hour to come with no load is a plan; with one it is
asked, and so is an hour that is over, or may be, with no load. Words that tell what was done settle it: "trained at
17:00, bench 3x5". Common practice, no source.
"""

from __future__ import annotations

from datetime import datetime, timedelta
from typing import NamedTuple

from engine.reading.days.hours_ahead import hours_told
from engine.reading.marks.clocks import HALVES_OF_THE_DAY
from engine.reading.naming import PLAINLY_SETS
from engine.reading.prepare import Prepared
from engine.reading.talk.whose import asked_if_done
from engine.reading.values import Asked, Context, Logged, NoSets
from engine.reading.words.ahead import HOLDS_A_NUMBER
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook, spoken
from engine.reading.words.pieces import Piece

ABOUT = timedelta(minutes=30)
"""Whoever trains has begun by then, or looks at another clock. Common practice, no source."""
BEFORE_EVENING = range(5, 15)
"""Hours at which nobody has trained this evening. Common practice, no source."""
AT, OF_TRAINING = frozenset(("athour",)), frozenset(("workout",))
DONE = frozenset(("did", "didso", "lasted", "finished"))
LEADING = AT | OF_TRAINING | {"bound"}
"""Of the little words in front of an hour those that count: "gym session started at"."""
BEHIND_AN_HOUR = 3
"""How many pieces tell an hour: the number, and which half of the day it is of."""


class _Hour(NamedTuple):
    """`announced`: behind a word for the workout or the evening; `ahead`: it has not come yet."""

    announced: bool
    ahead: bool


def asked_if_later(logged: Logged, prepared: Prepared, context: Context) -> Logged | Asked | NoSets:
    """The sets, the question whether they are done, or none where they are on for later today."""
    if logged.on is not None or logged.days or not _may_tell_an_hour(prepared) or _says_done(prepared):
        return logged
    hour = _hour(prepared, context.now) or _evening(prepared, context.now)
    if hour is None:
        return logged
    loaded = _tells_a_load(logged, prepared)
    if loaded and not (hour.ahead and hour.announced):
        return logged
    if not loaded and hour.ahead and hour.announced:
        return NoSets(logged.pain, why="talk: a plan for later today")
    return asked_if_done(logged, prepared) if hour.ahead or hour.announced else logged


def _may_tell_an_hour(prepared: Prepared) -> bool:
    """Whether a remark holds a number, which may be an hour, or today is spoken of; most sets come without either."""
    if prepared.told <= PLAINLY_SETS and ":" not in prepared.cleaned:
        return False
    return K.TODAY in prepared.told or any([piece.told == HOLDS_A_NUMBER for piece in prepared.pieces])


def _says_done(prepared: Prepared) -> bool:
    return any(piece.kind is K.GOT or is_cued(piece.text, DONE) for piece in prepared.spoken)


def _tells_a_load(logged: Logged, prepared: Prepared) -> bool:
    numbers = {piece.value for piece in prepared.spoken if piece.kind is K.NUMBER}
    return any(one.load is not None and (one.load.amount in numbers or not one.load.amount) for one in logged.sets)


def _hour(prepared: Prepared, now: datetime | None) -> _Hour | None:
    """The hour that the message tells of itself; None where it tells none."""
    noted = {piece.start for piece in prepared.pieces if piece.kind is K.NOTE and piece.told == HOLDS_A_NUMBER}
    for at, piece in enumerate(prepared.spoken):
        if piece.kind is K.NUMBER and piece.start in noted:
            told = next(hours_told(prepared.spoken[at : at + BEHIND_AN_HOUR], ()), None)
            announced = _announces(prepared.spoken[:at], prepared.cleaned)
            halved = any(one.text in HALVES_OF_THE_DAY for one in prepared.spoken[at + 1 : at + 2])
            if told is None or not (announced or halved or ":" in piece.text):
                return None
            return _Hour(announced, now is not None and not told.open and datetime.combine(now, told.at) > now + ABOUT)
    return None


def _announces(ahead: list[Piece], cleaned: str) -> bool:
    """Whether words for the workout or the evening stand in front of an hour: "gym at", "tonight at"."""
    led = [piece for piece in ahead if piece.kind is not K.FILLER or is_cued(piece.text, LEADING)]
    if led and _is_evening(led[-1], cleaned):
        return True
    if len(led) < 2 or not is_cued(led[-1].text, AT):
        return False
    return led[-2].kind is K.HEADING or led[-2].kind is K.TODAY or is_cued(led[-2].text, OF_TRAINING)


def _is_evening(piece: Piece, cleaned: str) -> bool:
    """ "tonight", "this evening"; a piece shows the first word of its phrase."""
    words = spoken(cleaned[piece.start : piece.end]).split() if piece.kind is K.TODAY else []
    return not phrasebook().cues["evening"].isdisjoint(words)


def _evening(prepared: Prepared, now: datetime | None) -> _Hour | None:
    """ "tonight squat 3x5": no hour, and it is day yet."""
    early = now is not None and now.hour in BEFORE_EVENING
    told = early and any(_is_evening(piece, prepared.cleaned) for piece in prepared.spoken)
    return _Hour(True, True) if told else None

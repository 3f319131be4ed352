"""What sounds like a correction and is none: a set that was left out, and words that come days after the sets.

addition = slip { slip } ADDS ... whole set        "oh and a back off set 70x8", "wait, also 70x8", "oops forgot 70x8"
"""

from __future__ import annotations

from datetime import datetime, timedelta

from engine.reading.days.day_starts import DATE_KINDS
from engine.reading.prepare import Prepared
from engine.reading.values import Context, Correction
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook, spoken_words
from engine.values.ids import ExerciseName
from engine.values.sets import SetRecord

MOST_SLIPS = 3
JUST_DONE = timedelta(days=1)
"""A bare "at 60" days later speaks of no set: lifts and days that are named do. Common practice, no source."""
NAMING_A_DAY = (DATE_KINDS | {K.HEADING}) - {K.TODAY, K.TOMORROW}


def adds_a_set(prepared: Prepared) -> bool:
    """Whether a whole set is told behind a slip and a word that adds it."""
    if K.TIMES not in prepared.told or K.NOT in prepared.told:
        return False
    cues = phrasebook().cues
    words = [word for word, _ in spoken_words(prepared.tokens[: MOST_SLIPS * 2 + 1])]
    for at, word in enumerate(words[: MOST_SLIPS + 1]):
        if word in cues["addsmore"]:
            return at > 0 or word in cues["leftbehind"]
        if word not in cues["slip"]:
            return False
    return False


def is_long_ago(prepared: Prepared, context: Context) -> bool:
    """Whether the latest sets are of days ago and not just told, and neither a day that is past is named nor a lift
    among the sets: "no squats today", "leg press instead" are no word on Tuesday's pushdowns.
    """
    if not context.recent or context.now is None or _is_fresh(context.recent[-1], context.now):
        return False
    lifts = [one.done.exercise for one in context.recent]
    return prepared.told.isdisjoint(NAMING_A_DAY) and _named(prepared).isdisjoint(lifts)


def _is_fresh(record: SetRecord, now: datetime) -> bool:
    """Whether the set was done a day ago at most, or told then: "monday bench 3x5 80", then "last one was 4"."""
    told = record.at.date() if record.message else record.on  # an old log read in is no message
    return now.date() - max(record.on, told) <= JUST_DONE


def reaches_back(meant: Correction, prepared: Prepared, context: Context) -> bool:
    """Whether it changes sets of days ago of which neither the lift nor the day is named, or moves a lift denied to
    today: "no bench today".
    """
    reached = meant.reached
    if context.now is None or all(_is_fresh(record, context.now) for record in reached):
        return False
    if not prepared.told.isdisjoint(NAMING_A_DAY):
        return False
    denied = meant.moved and prepared.spoken[0].kind is K.DENY and phrasebook().cues["be"].isdisjoint(_words(prepared))
    return denied or not {record.done.exercise for record in reached} <= _named(prepared)


def _words(prepared: Prepared) -> list[str]:
    return [word for word, _ in spoken_words(prepared.tokens)]


def _named(prepared: Prepared) -> set[ExerciseName]:
    return {name for piece in prepared.spoken if piece.kind is K.NAME for name in piece.names}


def takes_from_long_ago(meant: Correction, prepared: Prepared, context: Context) -> bool:
    """Whether it takes sets of days ago away, and the day is not named: "leg press was only 2 sets"."""
    if context.now is None or not prepared.told.isdisjoint(NAMING_A_DAY):
        return False
    return any(not _is_fresh(record, context.now) for record in meant.removed)

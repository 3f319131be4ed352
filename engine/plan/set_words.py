"""How a line says sets, target, effort and rest.

3x12-15   4 x max   3 sets of 8   3x45 s   4x20 m   3x5x100 kg   80 kg x 5 x 3      sets, target (and load)
rpe 8   @8 rpe   2 in reserve   rir 2   to failure
rest 3 min   90 s rest   rest 2:30

Each reader looks at one place of the line and answers with its parts, or with none. A line comes here with single
spaces.
"""

from __future__ import annotations

import re
from decimal import Decimal

from engine.plan.amounts import (
    DASH,
    KILOMETRES,
    METRES,
    METRES_A_YARD,
    MINUTES,
    NUMBER,
    SECONDS,
    SECONDS_A_MINUTE,
    TIMES,
    UNIT,
    YARDS,
    number,
    span,
)
from engine.plan.cursor import Cursor
from engine.plan.load_words import read_third_factor
from engine.plan.parts import (
    Aim,
    Exertion,
    Part,
    Rest,
    Sets,
    Slip,
    Taken,
)
from engine.values.effort import TOP_OF_SCALE, Effort
from engine.values.load import plain
from engine.values.plan import MaxReps, Metres, RepRange, Reps, Seconds

Parts = tuple[Part, ...]
NOTHING: Parts = ()


def _token(pattern: str) -> re.Pattern[str]:
    return re.compile(pattern, re.IGNORECASE)


SETS_OF_RANGE = _token(rf"\d{{1,2}}{DASH}\d{{1,2}} ?(?:{TIMES} ?\d{{1,3}}(?:{DASH}\d{{1,3}})?|sets?(?!\w))(?!\w)")
SETS_BY = _token(rf"(\d{{1,3}}) ?(?:sets?(?: ?(?:of|{TIMES}))?(?!\w)|{TIMES}(?=[ \dma]|to )) ?")
MAXIMUM = _token(
    r"(?:max(?:imum)?(?: reps?)?|amrap|as many(?: reps?)? as (?:possible|form allows)|(?:to )?failure)(?!\w)"
)
CLOCK = _token(r"(\d{1,3}):([0-5]\d)(?!\d)(?: ?(?:min(?:utes?)?|s)(?!\w))?")
TIME_RANGE = _token(rf"({NUMBER}){DASH}({NUMBER}) ?(?:{SECONDS}|{METRES}|(?:minutes?|mins?)(?!\w))")
SECONDS_AIM = _token(rf"({NUMBER}) ?{SECONDS}")
MINUTES_AIM = _token(rf"({NUMBER}) ?(?:minutes?|mins?|')(?!\w)")
METRES_AIM = _token(rf"({NUMBER}) ?{METRES}")
YARDS_AIM = _token(rf"({NUMBER}) ?{YARDS}")
KILOMETRES_AIM = _token(rf"({NUMBER}) ?{KILOMETRES}")
NO_MASS = rf"(?! ?{UNIT}|[.,:/]?\d| ?%)"
REP_RANGE = _token(rf"(\d{{1,4}}){DASH}(\d{{1,4}})( ?reps?)?(?=\W|{TIMES} ?\d|$){NO_MASS}")
REPS = _token(rf"(\d{{1,4}})( ?(?:reps?|r))?(?=\W|{TIMES} ?\d|$){NO_MASS}")
REPS_IN_WORDS = _token(r"(\d{1,4}) ?reps?(?!\w)")
RANGE_IN_WORDS = _token(rf"(\d{{1,4}}){DASH}(\d{{1,4}})( ?reps?)(?!\w)")
EACH_SIDE = _token(r" ?(?:(?:each|per|a|every) ?(?:side|leg|arm|way)|e/?s|/ ?(?:side|leg|arm))(?!\w)")

AT = r"(?:@|at|to)? ?"
RPE = _token(
    rf"{AT}(?:an? )?(?:rpe ?:? ?@? ?({NUMBER})(?:{DASH}({NUMBER}))?|({NUMBER})(?:{DASH}({NUMBER}))? ?rpe)(?!\w)"
)
RIR = _token(
    rf"{AT}(?:rir ?:? ?({NUMBER})(?:{DASH}({NUMBER}))?(?!\w)"
    rf"|(?:leav(?:e|ing) |keep(?:ing)? )?({NUMBER})(?:{DASH}({NUMBER}))? ?"
    rf"(?:rir|(?:reps? )?(?:left )?in (?:reserve|the tank)|reps? left)(?!\w)|(?:leave|keep) (\d)(?: reps?)?(?!\w))"
)
FAILURE = _token(r"(?:to|until|till) failure(?!\w)")

REST_LEAD = _token(r"rest(?:s|ing)?(?: (?:of|for|about))? ?:? ?")
REST_TIME = _token(rf"({NUMBER})(?:{DASH}({NUMBER}))? ?({SECONDS}|{MINUTES})?(?: ?(?:and )?(\d{{1,2}}) ?{SECONDS})?")
TIME_WITH_UNIT = _token(rf"\d{{1,3}}:[0-5]\d|{NUMBER}(?:{DASH}{NUMBER})? ?(?:{SECONDS}|{MINUTES})")
REST_AFTER = _token(r" ?(?:of )?(?:rest|between(?: sets)?)(?!\w)")
FEWEST_BARE_SECONDS = 10


def read_effort(cursor: Cursor) -> Parts:
    """An effort at the cursor."""
    if match := cursor.take(FAILURE):
        return (Exertion(Effort(Decimal(0))),)
    match = cursor.take(RPE)
    if match:
        low, high, as_rpe = match[1] or match[3], match[2] or match[4], True
    elif match := cursor.take(RIR):
        low, high, as_rpe = match[1] or match[3] or match[5], match[2] or match[4], False
    else:
        return NOTHING
    told, between = span(low, high)
    if told > TOP_OF_SCALE:
        return (Slip(match[0].strip(), "an effort from 0 to 10", "rpe 8"),)
    effort = Effort.from_rpe(told) if as_rpe else Effort(told)
    taken = f"rpe {plain(told)}" if as_rpe else f"{plain(told)} in reserve"
    return (Exertion(effort), Taken(match[0].strip(), taken)) if between else (Exertion(effort),)


def read_rest(cursor: Cursor) -> Parts:
    """A rest at the cursor: behind the word rest, or a time with the word behind it."""
    start = cursor.at
    if cursor.take(REST_LEAD):
        parts = _time(cursor, start)
        return parts or (Slip(cursor.text[start : cursor.at].strip(), "how long to rest", "rest 90 s"),)
    parts = _time(cursor, start) if cursor.sees(TIME_WITH_UNIT) else NOTHING
    if parts and cursor.take(REST_AFTER):
        return parts
    cursor.at = start
    return NOTHING


def _time(cursor: Cursor, start: int) -> Parts:
    if clock := cursor.take(CLOCK):
        return (Rest(int(clock[1]) * SECONDS_A_MINUTE + int(clock[2])),)
    match = cursor.take(REST_TIME)
    if match is None:
        return NOTHING
    told, between = span(match[1], match[2])
    unit = (match[3] or "").lower()
    in_minutes = unit[:1] in ("m", "'", "′") or (not unit and told < FEWEST_BARE_SECONDS)
    seconds = told * SECONDS_A_MINUTE + int(match[4] or 0) if in_minutes else told
    whole = int(seconds.to_integral_value())
    read = cursor.text[start : cursor.at].strip()
    return (Rest(whole), Taken(read, f"rest {whole} s")) if between or whole != seconds else (Rest(whole),)


def read_sets(cursor: Cursor) -> Parts:
    """Sets, their target and a load written as a third factor; or sets or target alone."""
    if match := cursor.take(SETS_OF_RANGE):
        return (Slip(match[0].strip(), "one number of sets", "3x8-12"),)
    match = cursor.take(SETS_BY)
    if match is None:
        aim = _target_in_words(cursor)
        if aim:
            cursor.take(EACH_SIDE)
        return (aim,) if aim else NOTHING
    sets = Sets(int(match[1]))
    target = _target(cursor)
    if target is None:
        return (sets,)
    if isinstance(target, Slip):
        return (sets, target)
    cursor.take(EACH_SIDE)
    return (sets, target, *read_third_factor(cursor))


def _target(cursor: Cursor) -> Aim | Slip | None:
    """A target behind the number of sets, where a bare number is reps."""
    if cursor.take(MAXIMUM):
        return Aim(MaxReps())
    measured = _measured(cursor)
    if measured is not None:
        return measured
    if match := cursor.take(REP_RANGE):
        return _range(match)
    match = cursor.take(REPS)
    return Aim(Reps(int(match[1])), counted=match[2] is not None) if match else None


def _target_in_words(cursor: Cursor) -> Aim | Slip | None:
    """A target that stands alone and so must say what it counts."""
    if cursor.take(MAXIMUM):
        return Aim(MaxReps())
    if match := cursor.take(RANGE_IN_WORDS):
        return _range(match)
    if match := cursor.take(REPS_IN_WORDS):
        return Aim(Reps(int(match[1])), counted=True)
    return _measured(cursor)


def _range(match: re.Match[str]) -> Aim | Slip:
    low, high = int(match[1]), int(match[2])
    if not 1 <= low < high:
        return Slip(match[0].strip(), "a lower and a higher number of reps", "3x8-12")
    return Aim(RepRange(low, high), counted=match[3] is not None)


def _measured(cursor: Cursor) -> Aim | Slip | None:
    if match := cursor.take(TIME_RANGE):
        return Slip(match[0].strip(), "one time or distance", "3x30 s, +5 s up to 45 s")
    if match := cursor.take(CLOCK):
        return Aim(Seconds(Decimal(int(match[1]) * SECONDS_A_MINUTE + int(match[2]))))
    for token, target, factor in MEASURES:
        if match := cursor.take(token):
            return Aim(target(number(match[1]) * factor))
    return None


MEASURES: tuple[tuple[re.Pattern[str], type[Seconds] | type[Metres], Decimal], ...] = (
    (SECONDS_AIM, Seconds, Decimal(1)),
    (MINUTES_AIM, Seconds, Decimal(SECONDS_A_MINUTE)),
    (METRES_AIM, Metres, Decimal(1)),
    (YARDS_AIM, Metres, METRES_A_YARD),
    (KILOMETRES_AIM, Metres, Decimal(1000)),
)

"""How a line says what changes from session to session.

add a set each week up to 5, then +2.5 kg            sets grow, then the load
then +1 kg                                           behind a rep range: once every set is at its top
+2.5 kg when all reps are made, after 3 misses down 10 %
+1 rep each set                                      on every set one rep over last time
30 reps in all, then +5 kg                           the sum over the sets; without a load: then +1 rep in all
70/80/90 % of 140 kg, then +2.5 kg                   weekly shares of a training maximum
load for rpe 8                                       or: load for 2 in reserve
top set then 3 back-offs of 8 at 90 %, then +2.5 kg   or: back-off 3x8 at 90 %
+5 s up to 60 s, then +2.5 kg                        or metres: +5 m up to 40 m
no progression

Each reader looks at one place of the line and answers with its part or with None. A line comes here with single spaces.
"""

from __future__ import annotations

import re
from decimal import Decimal

from engine.plan.amounts import METRES, NUMBER, SECONDS, UNIT, number, share, unit_of
from engine.plan.cursor import Cursor
from engine.plan.parts import (
    AtTop,
    BackOffs,
    ByEffort,
    Longer,
    Mass,
    Misses,
    Part,
    RepGain,
    SetsUpTo,
    Slip,
    Step,
    Still,
    TopSet,
    TotalGain,
    TotalReps,
    Wave,
    WhenMade,
)
from engine.values.effort import TOP_OF_SCALE, Effort
from engine.values.load import Basis

EACH = r"(?: ?(?:each|every|per|a) (?:week|time|session|workout|exposure)(?:ly)?)?"
UP_TO = r" ?,? ?(?:up to|until|till|to|max) ?"
PLUS = r"(?:and )?(?:(?:then ?)?(?:add|plus|\+|up(?: by)?|increase(?: by)?|go up(?: by)?) ?\+? ?)"
ONE_OR = r"(\d{1,3}|an?|one)"
ALL_SETS = r"(?: ?(?:sets?|reps?|prescribed|the|of|are|is|were|have|been|on|in|a))*"


def _token(pattern: str) -> re.Pattern[str]:
    return re.compile(pattern, re.IGNORECASE)


SET_WAVE = _token(
    rf"(?:{PLUS}{ONE_OR} ?(?:more )?sets?|one more set|a set more){EACH}(?:{UP_TO}(\d{{1,2}})(?: ?sets)?)?(?!\w)"
)
SETS_GROW = _token(r"sets (?:go |grow )?(?:from )?(\d{1,2}) ?(?:-|–|to|up to) ?(\d{1,2})(?!\w)")
TOTAL_GAIN = _token(rf"{PLUS}{ONE_OR} ?(?:more )?reps? ?(?:in all|in total|overall|total)(?!\w)")
REP_TOTAL = _token(r"(\d{1,4}) (?:total reps?|reps? (?:in all|in total|total|altogether|over all sets))(?!\w)")
TOTAL_OF = _token(r"(?:a )?total (?:of )?(\d{1,4})(?: ?reps?)?(?![\w%])")
REP_GAIN = _token(
    rf"(?:{PLUS}{ONE_OR} ?(?:more )?reps?|one more rep)"
    rf"(?: (?:on|to|in|over|per|each|every|a|the|last|same|sets?|time|session|week|workout))*(?!\w)"
    rf"(?:{UP_TO}(\d{{1,3}})(?: ?reps?)?(?!\w))?"
)
PERCENT = r"\d{1,3}(?:\.\d{1,2})?"
WAVE = _token(
    rf"(?:(?:at|@) ?)?({PERCENT} ?%?(?: ?(?:/|,|-|–|\band\b|\bthen\b) ?{PERCENT} ?%?){{0,11}}) ?of (?:a |the )?"
    rf"(?:training max(?:imum)? ?(?:of |: ?)?)?({NUMBER}) ?({UNIT})?(?: ?(?:as )?training max(?:imum)?)?"
)
BY_EFFORT = _token(
    rf"(?:pick |choose |set )?(?:the )?load (?:for|by|from|to|follows) "
    rf"(?:(?:an? )?rpe ?({NUMBER})|({NUMBER}) ?(?:(?:reps? )?in reserve|rir|reps left)|rir ?({NUMBER})|({NUMBER}) ?rpe)"
)
TOP_SET = _token(r"(?:an? |one |1 )?top set(?: of (\d{1,3})(?: ?reps?)?)?(?!\w)")
BACK_OFFS = _token(
    rf"(?:(?:a |one )?top set ?(?:,|\+|and)? ?)?(?:(?:then|and) )?"
    rf"(\d{{1,2}}) ?(?:[x×] ?(\d{{1,3}}) ?)?back-? ?offs?(?: sets?)?"
    rf"(?: ?of ?(\d{{1,3}})(?: ?reps?)?)?(?: ?(?:at|@|with)? ?({NUMBER}) ?%)?"
)
BACK_OFFS_BEHIND = _token(
    rf"(?:(?:then|and|plus) )?back-? ?offs?(?: sets?)? ?:? ?(\d{{1,2}}) ?[x×] ?(\d{{1,3}})(?: ?reps?)?"
    rf"(?: ?(?:at|@|with)? ?({NUMBER}) ?%)?"
)
LONGER_TIME = _token(rf"{PLUS}({NUMBER}) ?{SECONDS}{EACH}(?:{UP_TO}({NUMBER}) ?{SECONDS})?")
LONGER_WAY = _token(rf"{PLUS}({NUMBER}) ?{METRES}{EACH}(?:{UP_TO}({NUMBER}) ?{METRES})?")
STILL = _token(
    r"(?:no progress(?:ion)?|no increases?|hold (?:the )?(?:load|weight)"
    r"|keep (?:the )?(?:same )?(?:load|weight)(?: the same)?"
    r"|(?:load )?stays? the same|same (?:load |weight )?(?:every|each) (?:week|time|session))(?!\w)"
)
MISSED = r"(?:missed sessions|misse[sd]|miss|fails?|failures)(?: in a row)?"
DOWN_WORDS = r"(?:(?:go|drop|take|back|down|off|reset|less|lower|by|to|the|load|it|-|−|–) ?)*"
MISSES = _token(rf"after (\d{{1,2}}) ?(?:running |straight )?{MISSED}(?: ?[,:]? ?{DOWN_WORDS}({NUMBER}) ?%(?: ?off)?)?")
DOWN_AFTER = _token(
    rf"(?:(?:down|drop|reset|minus|-|−) ?(?:by ?)?)?({NUMBER}) ?% ?(?:off |down |less )?after (\d{{1,2}}) ?{MISSED}"
)
WHEN_MADE = _token(
    r"(?:when|if|once|after) (?:you )?(?:"
    r"(?:all|every)(?: (?:the|prescribed|sets?|reps?|of|them))*(?: (?:is|are|were))?"
    r" (?:made|done|hit|completed|finished|reached)"
    rf"|(?:make|hit|complete|finish) (?:all|every){ALL_SETS})(?!\w)|linear progression(?!\w)"
)
AT_TOP = _token(
    r"(?:(?:when|if|once|after|at) )?(?:(?:all|every) sets? (?:is |are )?(?:at|reach(?:es)?|hits?) )?"
    r"the top(?: of the (?:rep )?range)?(?!\w)"
    r"|(?:(?:go|load) up )?(?:when|if|once) (?:all|every) sets? (?:reach(?:es)?|hits?|is at|are at|gets? to|makes?)"
    r" (\d{1,3})(?: reps?)?(?!\w)"
    r"|double progression(?!\w)"
)
STEP = _token(
    rf"(?P<lead>{PLUS})(?P<amount>{NUMBER}) ?(?P<unit>{UNIT})?(?! ?(?:%|\d|reps?\b|sets?\b))"
    rf"(?: ?(?:per|each|a|in) (?P<basis>hand|all)| ?(?P<body>added))?(?P<each>{EACH})"
)
PERCENT_STEP = _token(rf"{PLUS}({NUMBER}) ?%")
NUMBERS = _token(PERCENT)


def read_progression(cursor: Cursor) -> Part | None:
    """The progression part at the cursor, or None."""
    for reader in READERS:
        start = cursor.at
        part = reader(cursor)
        if part is not None:
            return part
        cursor.at = start
    return None


def _count(typed: str | None) -> int:
    return int(typed) if typed and typed.isdecimal() else 1


def _set_wave(cursor: Cursor) -> Part | None:
    if match := cursor.take(SETS_GROW):
        return SetsUpTo(int(match[2]), first=int(match[1]))
    match = cursor.take(SET_WAVE)
    if match is None:
        return None
    if match[2] is None or _count(match[1]) != 1:
        return Slip(
            match[0].strip(), "one set more each time, and up to how many", "add a set each week up to 5, then +2.5 kg"
        )
    return SetsUpTo(int(match[2]))


def _rep_total(cursor: Cursor) -> Part | None:
    if match := cursor.take(TOTAL_GAIN):
        return TotalGain(_count(match[1]))
    match = cursor.take(REP_TOTAL) or cursor.take(TOTAL_OF)
    return TotalReps(int(match[1])) if match else None


def _rep_gain(cursor: Cursor) -> Part | None:
    match = cursor.take(REP_GAIN)
    return RepGain(_count(match[1]), int(match[2]) if match[2] else None) if match else None


def _wave(cursor: Cursor) -> Part | None:
    match = cursor.take(WAVE)
    if match is None:
        return None
    shares = tuple(share(percent) for percent in NUMBERS.findall(match[1]))
    if "%" not in match[1]:
        return Slip(match[0].strip(), "shares with a % sign", "70/80/90 % of 140 kg, then +2.5 kg")
    if not all(0 < one <= Decimal("1.5") for one in shares):
        return Slip(match[0].strip(), "shares from 1 to 150 %", "70/80/90 % of 140 kg, then +2.5 kg")
    return Wave(shares, Mass(number(match[2]), unit_of(match[3])))


def _by_effort(cursor: Cursor) -> Part | None:
    match = cursor.take(BY_EFFORT)
    if match is None:
        return None
    as_rpe, in_reserve = match[1] or match[4], match[2] or match[3]
    told = number(as_rpe or in_reserve)
    if told > TOP_OF_SCALE:
        return Slip(match[0].strip(), "an effort from 0 to 10", "load for rpe 8")
    return ByEffort(Effort.from_rpe(told) if as_rpe else Effort(told))


def _back_offs(cursor: Cursor) -> Part | None:
    match = cursor.take(BACK_OFFS_BEHIND)
    if match is not None:
        reps, percent = match[2], match[3]
    elif match := cursor.take(BACK_OFFS):
        reps, percent = match[2] or match[3], match[4]
    else:
        return None
    kept = share(percent) if percent else None
    if kept is not None and not 0 < kept <= 1:
        return Slip(match[0].strip(), "back-offs at 1 to 100 %", "top set then 3 back-offs at 90 %")
    return BackOffs(int(match[1]), int(reps) if reps else None, kept)


def _longer(cursor: Cursor) -> Part | None:
    timed = cursor.take(LONGER_TIME)
    match = timed or cursor.take(LONGER_WAY)
    if match is None:
        return None
    return Longer(number(match[1]), timed is not None, number(match[2]) if match[2] else None)


def _still(cursor: Cursor) -> Part | None:
    return Still() if cursor.take(STILL) else None


def _misses(cursor: Cursor) -> Part | None:
    if match := cursor.take(DOWN_AFTER):
        count, percent = match[2], match[1]
    elif match := cursor.take(MISSES):
        count, percent = match[1], match[2]
    else:
        return None
    kept = share(percent) if percent else None
    if int(count) < 1 or (kept is not None and not 0 <= kept < 1):
        return Slip(match[0].strip(), "at least one miss and less than 100 %", "after 3 misses down 10 %")
    return Misses(int(count), kept)


def _condition(cursor: Cursor) -> Part | None:
    if match := cursor.take(AT_TOP):
        return AtTop(int(match[1]) if match[1] else None)
    if match := cursor.take(TOP_SET):
        return TopSet(int(match[1]) if match[1] else None)
    return WhenMade() if cursor.take(WHEN_MADE) else None


def _step(cursor: Cursor) -> Part | None:
    if match := cursor.take(PERCENT_STEP):
        return Slip(match[0].strip(), "a step in kg or lb", "then +2.5 kg")
    match = cursor.take(STEP)
    if match is None:
        return None
    mass = Mass(number(match["amount"]), unit_of(match["unit"]), _basis_of(match))
    return Step(mass, bare=match["lead"].strip() == "+" and not match["each"])


def _basis_of(match: re.Match[str]) -> Basis | None:
    if match["body"]:
        return Basis.BODY
    if match["basis"]:
        return Basis.PER_HAND if match["basis"].lower() == "hand" else Basis.TOTAL
    return None


READERS = (
    _wave,
    _by_effort,
    _back_offs,
    _set_wave,
    _rep_total,
    _rep_gain,
    _longer,
    _still,
    _misses,
    _condition,
    _step,
)

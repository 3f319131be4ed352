"""The lines of a plan that are no exercise: plan, block, week, day, deload, targets.

plan: upper emphasis, 8 weeks, deload week 8, target side delts 12-18
deload weeks 4 and 8      deload every 4 weeks
block: build, 5 weeks, deload week 5, deload at 50 % of sets and 90 % of load
week A: full body            week 1: volume       weeks 1-3: volume       odd weeks: full body
day mon: press and pull      mon: press           day 1: lower            day mon and thu: full body
target side delts 12-18      targets: lats 10-16, chest 10-14 sets
deload week 4                week 4: deload            6 weeks, deload week 6

A name that holds a comma, or that would read as something else, stands in double quotes.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, replace
from decimal import Decimal

from engine.plan.amounts import DASH, NUMBER, number, share
from engine.plan.cursor import Cursor
from engine.values.plan import Weekday


def _token(pattern: str) -> re.Pattern[str]:
    return re.compile(pattern, re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class Opening:
    """What a plan or block line says. None or empty: not told.

    Shape: `targets` as typed, a muscle and its sets each; `trouble`: a clause that cannot be used; `unread`: what
    stands behind the name and is no clause.
    """

    name: str
    weeks: int | None = None
    deload_weeks: tuple[int, ...] = ()
    deload_every: int | None = None
    sets_share: Decimal | None = None
    load_share: Decimal | None = None
    trouble: str = ""
    targets: tuple[str, ...] = ()
    unread: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class WeekHeading:
    """`tags` are places in the turn of week kinds, from 0. `behind` is what follows: a label or a day."""

    tags: tuple[int, ...]
    typed: str
    behind: str


@dataclass(frozen=True, slots=True)
class DayHeading:
    """`weekdays` empty: a day done in order. `label` empty: not told; `quoted`: it stood in quotes."""

    weekdays: tuple[Weekday, ...]
    label: str
    place: str = ""
    quoted: bool = False


@dataclass(frozen=True, slots=True)
class TargetClause:
    """One muscle and its weekly sets as typed. `low` None: not readable."""

    words: str
    low: Decimal | None
    high: Decimal | None


PLAN = _token(r"(?:training )?(?:plan|program(?:me)?)(?: name)?(?: ?[:–—-] ?|$)")
BLOCK = _token(r"(?:block|phase|cycle)(?: ?(\d{1,2})(?!\w) ?[:–—-]? ?| ?[:–—] ?|$)")
CLAUSE_LINE = _token(r"(?=(?:a )?deload(?!\w)|(?:length|duration) ?:? ?\d|\d{1,3} ?-? ?weeks?(?: long)? ?(?:[,;]|$))")
TARGETS = _token(r"(?:weekly )?(?:volume )?targets?(?!\w)(?: sets)? ?:? ?")
WEEK = _token(
    r"(?:(odd|even) weeks?|(?:weeks?|wks?|w(?=\d)) ?"
    r"(\d{1,2}(?: ?(?:-|–|—|,|and|&|to) ?(?:weeks? ?)?\d{1,2}){0,60}|[a-z])(?:(?!\w)|(?=d\d)))"
    r" ?[:.)–—-]? ?"
)
DAY = _token(
    r"(?:(?:(?:training )?day|session|workout)(?!\w)|d(?=\d))(?: ?(?:no\.? ?)?(\d{1,2}|[a-z])(?!\w))?[ :().–—-]*"
)
WEEKDAYS = {
    "mon": Weekday.MON,
    "tue": Weekday.TUE,
    "wed": Weekday.WED,
    "thu": Weekday.THU,
    "fri": Weekday.FRI,
    "sat": Weekday.SAT,
    "sun": Weekday.SUN,
}
WEEKDAY = _token(r"(mon|tue|wed|thu|fri|sat|sun)(?:days?|s|sdays?|nesdays?|r|rs|rsdays?|urdays?)?(?!\w)\.?")
WEEKDAY_LIST = _token(r" ?(?:,|/|\+|&|and) ?(?=(?:mon|tue|wed|thu|fri|sat|sun))")
BEHIND_DAY = _token(r"[ :().–—-]+")
REST_DAY = _token(r"(?:rest(?: day)?|off|day off|nothing)\.?$")

WEEKS = _token(r"(?:for |length ?:? ?|duration ?:? ?)?(\d{1,3}) ?-? ?weeks?(?: long)?$")
DELOAD_WEEKS = _token(
    r"(?:with )?(?:a )?deloads?(?: (?:in|on))? ?:? ?weeks? ?:? ?(\d{1,3}(?: ?(?:,|and|&|/)? ?\d{1,3}){0,60})$"
)
WEEK_DELOAD = _token(r"weeks? (\d{1,3}(?: ?(?:and|&|/) ?\d{1,3}){0,60}) ?(?::|is|are|-)? ?(?:a )?deloads?(?: weeks?)?$")
DELOAD_EVERY = _token(r"(?:a )?deload every (\d{1,2})(?:st|nd|rd|th)? ?weeks?$")
DELOAD_SHARES = _token(
    rf"(?:deloads? ?(?:(?:at|with|to|of) |: ?)?)?(?:(half)|({NUMBER}) ?%)(?: of)?(?: the| all)? ?(sets|load|weight)"
    rf"(?: ?(?:and|at|with|,) ?(?:(half)|({NUMBER}) ?%)(?: of)?(?: the| all)? ?(sets|load|weight))?$"
)
CLAUSE = re.compile(r' ?(?:"((?:[^"]|"")*)"|([^,;"]+))(?:[,;]|$) ?')
MORE_WEEKS = re.compile(r", ?(?=\d{1,3} ?(?:,|;|$|and|&))")
DIGITS = re.compile(r"\d+")
HALF = Decimal("0.5")
BETWEEN_TARGETS = _token(r"[ ,;:.]+")
RANGE_OF_SETS = _token(rf"({NUMBER})(?:{DASH}({NUMBER}))?(?: ?(?:hard )?sets?)?(?: (?:a|per|each) week)?")
ONE_MORE_TARGET = _token(rf"([^\W\d][^\d,;:]* ?:? ?{RANGE_OF_SETS.pattern})$")
TARGET = _token(rf"{TARGETS.pattern}{ONE_MORE_TARGET.pattern}")
NAME_AND_WEEKS = _token(r"([^\W\d](?:[^\d]*[^\s\d–—-])?)(?<! for) ?[–—-]? (?:for )?(\d{1,3} ?-? ?weeks?(?: long)?)$")
"""A title with its length behind it: "winter block 6 weeks"."""
TELLS_MORE = _token(
    r"\d.*(?<!\w)(?:weeks?|wks?|days?|sessions?|times?|sets?|reps?|min(?:ute)?s?|h(?:our)?s?|kg|lbs?)(?!\w)"
)
"""What no name is like: "3 days a week"."""
MUSCLE_WORDS = _token(r"[^\d,;:]+")


def read_opening(text: str) -> Opening:
    """What stands behind "plan:" or "block:"."""
    names: list[str] = []
    found = Opening("")
    for quoted, clause in _clauses(text):
        read = None if quoted else _clause(found, clause) or _titled(found, clause, names)
        if read is not None:
            found = read
        elif not quoted and names and (target := TARGETS.match(clause)):
            found = replace(found, targets=(*found.targets, clause[target.end() :]))
        elif quoted or not names or (found == Opening("") and not TELLS_MORE.search(clause)):
            names.append(clause)
        else:
            found = replace(found, unread=(*found.unread, clause))
    return replace(found, name=", ".join(names))


def _titled(so_far: Opening, clause: str, names: list[str]) -> Opening | None:
    """The opening with the length behind a title, "winter block 6 weeks"; the title is added to the names."""
    titled = NAME_AND_WEEKS.match(clause) if so_far.weeks is None and not names else None
    if titled is None:
        return None
    names.append(titled[1])
    return _clause(so_far, titled[2])


def reads_as_clause(text: str) -> bool:
    """Whether a name would be read as something else if it stood in a plan or block line without quotes."""
    return _clause(Opening(""), text) is not None or NAME_AND_WEEKS.match(text) is not None


def _clauses(text: str) -> Iterator[tuple[bool, str]]:
    # "deload weeks 4, 8": the comma between week numbers parts no clauses.
    joined = re.sub(r"(?i)(deloads?(?: in| on)? weeks? ?[\d and&/]*\d) ?, ?(?=\d)", r"\1 and ", text)
    cursor = Cursor(joined)
    while not cursor.done:
        match = cursor.take(CLAUSE)
        if match is None:
            cursor.at += 1
        elif match[1] is not None:
            yield True, match[1].replace('""', '"')
        elif match[2].strip(" ."):
            yield False, match[2].strip(" .")


def _clause(so_far: Opening, clause: str) -> Opening | None:
    """The opening with a clause added; None where the clause is a name."""
    if match := WEEKS.match(clause):
        doubled = so_far.weeks not in (None, int(match[1]))
        return replace(so_far, weeks=int(match[1]), trouble=clause if doubled else so_far.trouble)
    if match := DELOAD_WEEKS.match(clause) or WEEK_DELOAD.match(clause):
        weeks = tuple(int(week) for week in DIGITS.findall(match[1]))
        return replace(so_far, deload_weeks=(*so_far.deload_weeks, *weeks))
    if match := DELOAD_EVERY.match(clause):
        return replace(so_far, deload_every=int(match[1]))
    if match := DELOAD_SHARES.match(clause):
        return _with_share(_with_share(so_far, match[1], match[2], match[3]), match[4], match[5], match[6])
    if match := _target(so_far, clause):
        return replace(so_far, targets=(*so_far.targets, match[1]))
    return replace(so_far, trouble=clause) if clause.lower().startswith("deload") else None


def _target(so_far: Opening, clause: str) -> re.Match[str] | None:
    """ "target side delts 6-10"; behind such a clause the next muscle needs no word in front."""
    return TARGET.match(clause) or (ONE_MORE_TARGET.match(clause) if so_far.targets else None)


def _with_share(so_far: Opening, half: str | None, percent: str | None, of: str | None) -> Opening:
    if not of:
        return so_far
    kept = share(percent) if percent else HALF
    return replace(so_far, sets_share=kept) if of.lower() == "sets" else replace(so_far, load_share=kept)


def read_week(cursor: Cursor) -> WeekHeading | None:
    """A week heading at the cursor, or None."""
    match = cursor.take(WEEK)
    if match is None:
        return None
    if match[1]:
        tags: tuple[int, ...] = (0,) if match[1].lower() == "odd" else (1,)
    elif match[2].isalpha():
        tags = (ord(match[2].lower()) - ord("a"),)
    else:
        tags = tuple(sorted(set(_weeks_listed(match[2]))))
    typed = match[2] or match[1]
    return WeekHeading(tags, typed.upper() if len(typed) == 1 else typed, cursor.rest)


def _weeks_listed(typed: str) -> Iterator[int]:
    for piece in re.split(r" ?(?:,|and|&) ?(?:weeks? ?)?", typed, flags=re.IGNORECASE):
        ends = [int(week) for week in DIGITS.findall(piece)]
        yield from range(ends[0] - 1, ends[-1])


def read_day(text: str) -> DayHeading | None:
    """A day heading, or None where the line is none."""
    cursor = Cursor(text)
    led = cursor.take(DAY)
    weekdays: list[Weekday] = []
    while match := cursor.take(WEEKDAY):
        weekdays.append(WEEKDAYS[match[1].lower()[:3]])
        if not cursor.take(WEEKDAY_LIST):
            break
    if not led and not weekdays:
        return None
    cursor.take(BEHIND_DAY)
    label = cursor.rest.strip()
    quoted = len(label) > 1 and label[0] == label[-1] == '"'
    if quoted:
        label = label[1:-1].replace('""', '"')
    place = led[1] if led and led[1] else ""
    return DayHeading(tuple(weekdays), label, place.upper(), quoted)


def is_rest(label: str) -> bool:
    """Whether a day's label says that it is no training day."""
    return REST_DAY.match(label) is not None


def read_targets(text: str) -> tuple[TargetClause, ...]:
    """The muscles and weekly sets behind "target"."""
    cursor = Cursor(text)
    found = []
    while not cursor.done:
        if cursor.take(BETWEEN_TARGETS):
            continue
        words = cursor.take(MUSCLE_WORDS)
        cursor.take(BETWEEN_TARGETS)
        sets = cursor.take(RANGE_OF_SETS)
        spoken = words[0].strip(" -–") if words else ""
        if sets and spoken:
            found.append(TargetClause(spoken, number(sets[1]), number(sets[2] or sets[1])))
        elif not sets and not words:
            cursor.at += 1
        else:
            found.append(TargetClause(spoken or cursor.text[:40], None, None))
    return tuple(found)

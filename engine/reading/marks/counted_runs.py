"""Sets told one after another by the names of their reps, with one load for all: "a triple and a double at 130".

run     = counted ( [ "," | "and" | "then" | "+" ] counted )+ [ ( "@" | "at" | "with" | ":" ) LOAD+ ]
counted = [ NUMBER | "a" ] TRIPLE | NUMBER "sets of" REPS             "two doubles and a single at 140"
The load is that of all of them, and is put behind each; where none is told it is the one in hand. Where the first of
them may have been done at a load told before, it is asked: "120x5, a double, a single at 140". So are names of several
with no count: "fives and triples at 100".
"""

from __future__ import annotations

from decimal import Decimal
from typing import NamedTuple

from engine.reading.values import Context
from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import CUES_OF, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, MOST_SETS, Piece, Role, kinds_in_order, places_of

BETWEEN = frozenset((K.COMMA, K.AND, K.THEN, K.PLUS))
JOINED = frozenset((K.AND, K.PLUS, K.FILLER))
APART = frozenset((K.THEN, K.LINE, K.STOP))
LINKS = frozenset((K.AT, K.WITH, K.COLON, K.BOTH, K.COMMA))
TO_A_LOAD = frozenset(("onto", "setsof", "all"))
"""Words of other senses that stand before a load, too: "на 130", "à 130", "all at 130"."""
ENDS = frozenset((None, K.COMMA, K.STOP, K.LINE, K.THEN, K.NAME, K.NOTE, K.EFFORT))
LISTED = frozenset((K.COMMA, K.AND, K.SLASH))
LIGHTEST = 10
"""Behind the sign up to this is an effort, and behind reps no load."""


class Counted(NamedTuple):
    """One of the sets told by name. `start`, `end`: the places of its pieces; `sets` is 0 where nobody can say."""

    start: int
    end: int
    sets: int
    reps: int
    piece: Piece


def with_counted_runs(pieces: list[Piece], context: Context) -> list[Piece]:
    """The pieces, with each such run told as sets and reps: "1x3 and 1x2 at 130"."""
    at = 0
    while at < len(pieces):
        run, between = _run(pieces, at)
        if len(run) > 1 and any(pieces[one.end - 1].kind is K.COUNT for one in run):
            told, end = _told(pieces, run, between, context)
            return [*told, *with_counted_runs(pieces[end:], context)]
        at = run[-1].end if run else at + 1
    return pieces


def _run(pieces: list[Piece], at: int) -> tuple[list[Counted], set[K]]:
    """The sets that stand one behind the other from there on, and the kinds of what stands between them."""
    run: list[Counted] = []
    between: set[K] = set()
    one = _counted(pieces, at)
    while one is not None:
        if run:
            between |= {piece.kind for piece in pieces[run[-1].end : one.start]}
        run.append(one)
        behind = one.end
        while kind_at(pieces, behind) in BETWEEN or _says_and(pieces, behind):
            behind += 1
        one = _counted(pieces, behind)
        if one is not None and behind == run[-1].end and pieces[one.end - 1].kind is not K.COUNT:
            one = None  # "triple double single": only names follow one another so
    return run, between


def _says_and(pieces: list[Piece], at: int) -> bool:
    """ "een double en een single", where the word has another sense in another language."""
    return kind_at(pieces, at) is K.FILLER and "andword" in CUES_OF[pieces[at].text]


def _counted(pieces: list[Piece], start: int) -> Counted | None:
    """ "two doubles", "a single", "2 sets of 3", with its first piece there."""
    at, sets = start, 0
    if kind_at(pieces, at) is K.FILLER and "an" in CUES_OF[pieces[at].text]:
        at, sets = at + 1, 1
    elif kind_at(pieces, at) is K.NUMBER and pieces[at].role in (Role.BARE, Role.SETS):
        at, sets = at + 1, int(pieces[at].value)
    if sets > MOST_SETS or (sets and kind_at(pieces, start) is K.NUMBER and pieces[start].value != sets):
        return None
    if kind_at(pieces, at) is K.COUNT:
        name = pieces[at]
        return Counted(start, at + 1, sets or int(_is_one(name)), name.told, name)
    named = sets > 0 and (pieces[start].role is Role.SETS or kind_at(pieces, at) is K.SETS)
    at += kind_at(pieces, at) is K.SETS
    if not named or kind_at(pieces, at) is not K.OF or kind_at(pieces, at + 1) is not K.NUMBER:
        return None
    reps = pieces[at + 1]
    return Counted(start, at + 2, sets, int(reps.value), reps) if reps.role in (Role.BARE, Role.REPS) else None


def _is_one(name: Piece) -> bool:
    """ "a triple", "single": one set, where "triples" may be any number of them."""
    return not CUES_OF[name.text].isdisjoint(("an", "onecount"))


def _told(pieces: list[Piece], run: list[Counted], between: set[K], context: Context) -> tuple[list[Piece], int]:
    """The pieces up to the place given, with the run told as sets and reps or asked about; as they stand where each of
    the sets has its load.
    """
    start, end = run[0].start, run[-1].end
    kinds = kinds_in_order(pieces)
    since = max((at + 1 for at in places_of(K.NAME, kinds[:start])), default=0)
    ahead = K.NUMBER in kinds[since:start]
    until = next((at for at in places_of(K.NAME, kinds) if at >= end), len(kinds))
    loads = _loads_at(pieces, end)
    if not loads and (ahead or K.NUMBER in kinds[end:until]):
        return pieces[:end], end
    link = [pieces[end]._replace(kind=K.WITH, text="with", told=0)] if loads else []
    one_each = len(loads) == len(run)
    behind = loads if one_each else loads[:1] * len(run)
    out = list(pieces[:start])
    if (
        not all(one.sets for one in run)
        or (len(loads) > 1 and not one_each)
        or (loads and _in_doubt(pieces, start, between, ahead, context))
    ):
        # What it comes to is asked.
        out.append(pieces[start]._replace(kind=K.ALTERED, end=pieces[end - 1].end, value=Decimal(0), role=Role.BARE))
    for place, one in enumerate(run):
        apart = pieces[run[place - 1].end : one.start] if place else []
        out += [*apart, *_as_pair(one, pieces[one.start]), *(link if loads else []), *behind[place : place + 1]]
    return out, _past(pieces, end, loads) if loads else end


def _loads_at(pieces: list[Piece], end: int) -> list[Piece]:
    """The load that stands behind the run, or several: "at 130", "both at 140", ", 140kg", ": 130, 140"."""
    at = _past_links(pieces, end)
    loads: list[Piece] = []
    while kind_at(pieces, at) is K.NUMBER and kind_at(pieces, at + 1) not in (K.TIMES, K.FOR):
        number = pieces[at]
        bare = number.role is Role.BARE and number.value > (MOST_LOADED_REPS if at == end else LIGHTEST)
        if not (bare or number.role in (Role.LOAD, Role.CHANGE)):
            break
        loads.append(number)
        at += 1
        while kind_at(pieces, at) in LISTED and kind_at(pieces, at + 1) is K.NUMBER:
            at += 1
    lone = kind_at(pieces, end) is K.COMMA and (len(loads) > 1 or kind_at(pieces, at) not in ENDS)
    return [] if lone else loads


def _past_links(pieces: list[Piece], at: int) -> int:
    """The place behind the words that link a load: "both at", "all with", ":"."""
    while at < len(pieces) and (pieces[at].kind in LINKS or is_cued(pieces[at].text, TO_A_LOAD)):
        at += 1
    return at


def _past(pieces: list[Piece], end: int, loads: list[Piece]) -> int:
    return next(at + 1 for at in range(end, len(pieces)) if pieces[at] is loads[-1])


def _in_doubt(pieces: list[Piece], start: int, between: set[K], told: bool, context: Context) -> bool:
    """Whether the first of them may have another load: the one told before, or for what is behind "then" the one in
    hand.
    """
    if between <= JOINED:
        return False
    if told and kind_at(pieces, start - 1) not in APART:
        return True
    return K.THEN in between and (told or context.doing is not None)


def _as_pair(one: Counted, first: Piece) -> list[Piece]:
    """ "two doubles" as 2x2."""
    sets = first._replace(kind=K.NUMBER, value=Decimal(one.sets or 1), role=Role.BARE, told=0)
    times = first._replace(kind=K.TIMES, text="x", value=Decimal(0), role=Role.BARE, told=0)
    reps = one.piece._replace(kind=K.NUMBER, value=Decimal(one.reps), role=Role.BARE, told=0)
    return [sets, times, reps]

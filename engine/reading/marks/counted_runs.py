"""Sets told one after another by the names of their reps, with one load for all: "a triple and a double at 130".

run     = counted ( ( "," | "and" | "then" | "+" ) counted )+ [ ( "@" | "at" | "with" ) LOAD ]
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
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role, kinds_in_order, places_of

BETWEEN = frozenset((K.COMMA, K.AND, K.THEN, K.PLUS))
MAY_GO_ON = BETWEEN | {K.FILLER}
"""Without one of these in the message no such run stands there."""
JOINED = frozenset((K.AND, K.PLUS, K.FILLER))
APART = frozenset((K.THEN, K.LINE, K.STOP))
LINKS = frozenset((K.AT, K.WITH))
TO_A_LOAD = frozenset(("onto", "setsof"))
"""Words of other senses that stand before a load, too: "на 130", "à 130"."""
LISTED = frozenset((K.COMMA, K.AND, K.SLASH))
MOST_SETS = 10
"""So many sets may be counted by a name of their reps. Common practice, no source."""
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
            told = _told(pieces, run, between, context)
            return told if told is not None else pieces
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
        one = _counted(pieces, behind) if behind > run[-1].end else None
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


def _told(pieces: list[Piece], run: list[Counted], between: set[K], context: Context) -> list[Piece] | None:
    """The pieces with the run told as sets and reps, or asked about; None where each of them has its load."""
    start, end = run[0].start, run[-1].end
    numbers = places_of(K.NUMBER, kinds_in_order(pieces))
    ahead = [at for at in numbers if at < start]
    loaded = _load_at(pieces, end)
    if not loaded and (ahead or any(at >= end for at in numbers)):
        return None
    doubted = loaded and (_in_doubt(pieces, start, between, bool(ahead), context) or _goes_on(pieces, loaded))
    out = list(pieces)
    for one in reversed(run):
        behind = pieces[end : loaded + 1] if loaded and one is not run[-1] else []
        out[one.start : one.end] = [*_as_pair(one, pieces[one.start]), *behind]
    if doubted or not all(one.sets for one in run):
        words = pieces[start]._replace(kind=K.ALTERED, end=pieces[end - 1].end, value=Decimal(0), role=Role.BARE)
        out.insert(start, words)  # what it comes to is asked
    return out


def _load_at(pieces: list[Piece], end: int) -> int:
    """The place of a load that stands behind the run; 0 where none does."""
    linked = kind_at(pieces, end) in LINKS or (end < len(pieces) and is_cued(pieces[end].text, TO_A_LOAD))
    at = end + linked
    if kind_at(pieces, at) is not K.NUMBER or kind_at(pieces, at + 1) in (K.TIMES, K.FOR):
        return 0
    number = pieces[at]
    plain = number.role is Role.BARE and number.value > (LIGHTEST if at > end else MOST_LOADED_REPS)
    return at if plain or number.role in (Role.LOAD, Role.CHANGE) else 0


def _goes_on(pieces: list[Piece], load: int) -> bool:
    """ "a triple and a double at 130 and 140": one each, or all of them at both."""
    return kind_at(pieces, load + 1) in LISTED and kind_at(pieces, load + 2) is K.NUMBER and _ends(pieces, load + 3)


def _ends(pieces: list[Piece], at: int) -> bool:
    return kind_at(pieces, at) not in (K.TIMES, K.FOR, K.AT, K.WITH)


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

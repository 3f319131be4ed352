"""The name of a count of reps right behind a whole set: a set of its own, or a word said of that set.

apart = set [ "a" | "top" ] DOUBLE [ "at" ] LOAD      "squat 3x5 100 triple 120": the load behind is that of the triple
named = set DOUBLE LOAD "x" REPS                      "100x5 double 110x2": what the set behind it is called
said  = LOAD "x" REPS DOUBLE                          "swing 32x10 double": two bells, so many doubles, or one: asked
Asked are a load lower than that ahead, "5x5 100 double 60kg belt", and one behind sets told twice, "3x5 80 x2 double
90". DOUBLE is one of the cue "onebyname"; "100x3 doubles" counts them. "100x3 triple" says the reps twice.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, MOST_SETS, Piece, Role, kinds_in_order, places_of

ONE = frozenset(("onebyname",))
LEADING = frozenset((K.FILLER, K.NOTE))
LINKS = frozenset((K.AT, K.WITH, K.FOR))
BEHIND = frozenset((None, K.COMMA, K.STOP, K.LINE, K.THEN, K.CLOSE, K.REST, K.NOTE, K.PLAIN))
TIMED = frozenset((Role.PLURAL, Role.SECONDS))
PAIR = [K.NUMBER, K.TIMES, K.NUMBER]


def with_counts_behind_sets(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with each such count parted from the set before it, or made a question."""
    out: list[Piece] = []
    start = 0
    kinds = kinds_in_order(pieces)
    for at in places_of(K.COUNT, kinds):
        end = at - 1 - (kind_at(pieces, at - 1) in LEADING)  # "100x5 top single 140"
        parted = kind_at(pieces, end) is K.COMMA
        end -= parted
        sets = _set_that_ends_at(pieces, kinds, end)
        load = at + 1 + (kind_at(pieces, at + 1) in LINKS)
        if _is_in_doubt(pieces, kinds, at, end, sets):
            out += [*pieces[start:at], pieces[at]._replace(kind=K.UNCLEAR)]
            start = at + 1
        elif not sets:
            continue
        elif _names_a_pair(pieces, kinds, at):
            out += [*pieces[start:at], pieces[at]._replace(kind=K.COMMA, text=",")]
            start = at + 1
        elif _is_a_load(pieces, load):
            comma = Piece(K.COMMA, pieces[end].end, pieces[end].end, True, ",")
            with_it = Piece(K.WITH, pieces[at].end, pieces[at].end, True, "at")
            out += [*pieces[start : end + 1], comma, *pieces[end + 1 + parted : at + 1], with_it]
            start = load
        elif sets == len(PAIR) and end == at - 1 and kinds[at + 1 : at + 2] != [K.TIMES] and _is_said(pieces, at):
            same = pieces[end].value == pieces[at].told  # "100x3 triple" says it twice
            out += [*pieces[start:at], pieces[at]._replace(kind=K.NOTE if same else K.UNCLEAR)]
            start = at + 1
    return [*out, *pieces[start:]] if start else pieces


def _is_in_doubt(pieces: Sequence[Piece], kinds: Sequence[K], at: int, end: int, sets: int) -> bool:
    """Whether the load right behind the name of one set can hardly be its own, or what stands ahead is told twice."""
    if not is_cued(pieces[at].text, ONE) or not _is_a_load(pieces, at + 1):
        return False
    if sets:
        return pieces[at + 1].value < max(piece.value for piece in pieces[end + 1 - sets : end + 1])
    first = end + 1 - 2 * len(PAIR)
    twice = first >= 0 and list(kinds[first : end + 1]) == [*PAIR, *PAIR]
    return twice and max(pieces[first].value, pieces[first + 2].value) <= MOST_LOADED_REPS < pieces[first + 3].value


def _names_a_pair(pieces: Sequence[Piece], kinds: Sequence[K], at: int) -> bool:
    paired = list(kinds[at + 1 : at + 1 + len(PAIR)]) == PAIR and is_cued(pieces[at].text, ONE)
    return paired and pieces[at + len(PAIR)].value == pieces[at].told


def _set_that_ends_at(pieces: Sequence[Piece], kinds: Sequence[K], end: int) -> int:
    """How many pieces the whole set has that ends there: three of "80x5", four of "3x5 100"; 0 for no whole set."""
    for length in (len(PAIR), len(PAIR) + 1):
        first = end + 1 - length
        if first < 1 or list(kinds[first : first + len(PAIR)]) != PAIR or kinds[first - 1] is K.TIMES:
            continue
        ahead = first - len(PAIR)
        loaded = list(kinds[ahead:first]) == PAIR and pieces[ahead].value > MOST_LOADED_REPS  # "60x5 80x3 single 100"
        if kinds[first - 1] is K.NUMBER and (ahead < 1 or not loaded or kinds[ahead - 1] is K.NUMBER):
            continue
        if kinds[end] is K.NUMBER and max(pieces[first].value, pieces[end].value) > MOST_SETS:
            return length
    return 0


def _is_a_load(pieces: Sequence[Piece], at: int) -> bool:
    """Whether a load stands there, and no reps or sets of it behind."""
    told = kind_at(pieces, at) is K.NUMBER and pieces[at].role in (Role.BARE, Role.LOAD)
    return told and pieces[at].value > MOST_LOADED_REPS and kind_at(pieces, at + 1) is not K.TIMES


def _is_said(pieces: Sequence[Piece], at: int) -> bool:
    timed = kind_at(pieces, at + 1) is K.NUMBER and pieces[at + 1].role in TIMED  # "100x5 single 90s rest"
    return is_cued(pieces[at].text, ONE) and (timed or kind_at(pieces, at + 1) in BEHIND)

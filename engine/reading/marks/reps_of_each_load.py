"""Two lists of one length, loads and then the reps of each: "squat 100 110 120, 5 5 3", "100/110/120 5/5/3".

told  = loads sign reps                 sign: "," ";" "-" ":" "for" or a line end
      | loads "/" ... reps "/" ...      each list tied by its own signs
loads = LOAD { [ sign ] LOAD }          reps: as many numbers that no load is
Bare numbers in one row, "100 110 120 5 5 3", are left to the shapes.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.catalogue.catalogue import catalogue
from engine.reading.words.ahead import kind_at
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role, kinds_in_order, places_of
from engine.values.exercise import Loading, Measure

FEWEST_NUMBERS = 4
"""Two loads and the reps of each."""
TIES = frozenset((K.COMMA, K.SLASH, K.DASH))
SIGNS = frozenset((K.COMMA, K.STOP, K.DASH, K.COLON, K.FOR, K.LINE, K.SLASH))
TIED = frozenset((K.SLASH, K.DASH))
BEHIND = frozenset((None, K.LINE, K.STOP, K.CLOSE, K.NOTE, K.EFFORT, K.PLAIN, K.FILLER, K.AND, K.THEN, K.COMMA))
BARE = frozenset((Role.BARE, Role.LOAD))
TOLD_BARE = frozenset((Role.BARE, Role.REPS))


def with_reps_of_each_load(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with each load of such lists put ahead of its reps."""
    kinds = kinds_in_order(pieces)
    if kinds.count(K.NUMBER) < FEWEST_NUMBERS or SIGNS.isdisjoint(kinds):
        return pieces
    out: list[Piece] = []
    start = 0
    for at in [at for at in places_of(K.NUMBER, kinds) if kind_at(pieces, at - 1) in AHEAD and _is_a_load(pieces, at)]:
        told, behind = _told_from(pieces, at) if _is_loaded(pieces, at) else ([], at)
        if told:
            out += [*pieces[start:at], *told]
            start = behind
    return [*out, *pieces[start:]] if start else pieces


def _is_loaded(pieces: Sequence[Piece], at: int) -> bool:
    """Whether the lift told last is one of a load, of which so many are neither reps nor seconds."""
    names = next((piece.names for piece in reversed(pieces[max(0, at - FAR_AHEAD) : at]) if piece.kind is K.NAME), ())
    known = [catalogue().exercises[name] for name in names if name in catalogue().exercises]
    return bool(known) and all(one.loading is not Loading.BODY and one.measure is Measure.REPS for one in known)


FAR_AHEAD = 8
AHEAD = frozenset((K.NAME, K.COLON, K.LINE))


def _is_a_load(pieces: Sequence[Piece], at: int) -> bool:
    """Whether a load stands there, with another behind it."""
    another = at + 1 + (kind_at(pieces, at + 1) in TIES)
    return _goes_on(pieces, at, loads=True) and _goes_on(pieces, another, loads=True)


def _told_from(pieces: Sequence[Piece], at: int) -> tuple[list[Piece], int]:
    """The pairs of the lists that begin there, and the place behind them; none where there are no such lists."""
    loads, end = _list_from(pieces, at, loads=True)
    first = end + (kind_at(pieces, end) in SIGNS)
    reps, behind = _list_from(pieces, first, loads=False)
    tied = first > end or (_is_tied(pieces, loads) and _is_tied(pieces, reps))
    told = tied and len(loads) == len(reps) >= FEWEST_NUMBERS // 2 and _ends(pieces, behind)
    return (_told_apart(pieces, loads, reps), behind) if told else ([], at)


def _list_from(pieces: Sequence[Piece], at: int, *, loads: bool) -> tuple[list[int], int]:
    """The places of the numbers of a list of loads or of reps that begins there, and the place behind it."""
    found: list[int] = []
    while _goes_on(pieces, at, loads=loads):
        found.append(at)
        ahead = at + 1 + (kind_at(pieces, at + 1) in TIES)
        if not _goes_on(pieces, ahead, loads=loads):
            return found, at + 1
        at = ahead
    return found, at


def _goes_on(pieces: Sequence[Piece], at: int, *, loads: bool) -> bool:
    if kind_at(pieces, at) is not K.NUMBER:
        return False
    number = pieces[at]
    return (number.value > MOST_LOADED_REPS) is loads and number.role in (BARE if loads else TOLD_BARE)


def _is_tied(pieces: Sequence[Piece], places: Sequence[int]) -> bool:
    """Whether a sign other than a comma stands between each two numbers: "5/5/3"."""
    return all(pieces[at + 1].kind in TIED for at in places[:-1])


def _ends(pieces: Sequence[Piece], behind: int) -> bool:
    """Whether nothing behind the reps goes them on: no number, and no sign with one behind it."""
    if kind_at(pieces, behind) not in BEHIND:
        return False
    return kind_at(pieces, behind) not in GOING_ON or kind_at(pieces, behind + 1) is not K.NUMBER


GOING_ON = frozenset((K.COMMA, K.AND, K.THEN))


def _told_apart(pieces: Sequence[Piece], loads: Sequence[int], reps: Sequence[int]) -> list[Piece]:
    """ "100x5, 110x5, 120x3"."""
    told: list[Piece] = []
    for load, count in zip(loads, reps, strict=True):
        end = pieces[load].end
        told += [pieces[load], Piece(K.TIMES, end, end, True, "x"), pieces[count], Piece(K.COMMA, end, end, True, ",")]
    return told[:-1]

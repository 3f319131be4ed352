"""Reps told behind several loads, once for all: "80 85 90, 5 reps each", "80/85, all for 5".

shared = [ SETS [ "at" ] ] LOAD { [ "," | "/" | "and" ] LOAD } [ "," ] { "each" | "all" | "for" } REPS [ "each" ]
The reps are told as such, or some word shares them out. Of a rising list that may be loads or reps it is asked, and a
count of sets that is not that of the loads is left standing.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence

from engine.reading.marks.reps_of_each_load import with_reps_of_each_load
from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, ROLE, Piece, Role, kinds_in_order, places_of

FEWEST_NUMBERS = 3
"""Two loads and the reps of both."""
FEWEST_BARE = 3
"""Loads of which "for 5" alone tells the reps. Common practice, no source."""
LINKS = frozenset((K.COMMA, K.SLASH, K.AND))
LISTING = LINKS | {K.NUMBER}
SHARING = frozenset((K.EACH, K.FOR, K.FILLER))
AHEAD = frozenset((K.WITH, K.AT))
TELLING_ALL = frozenset(("all", "each", "every", "eachtime"))
BEHIND = frozenset((None, K.COMMA, K.STOP, K.LINE, K.THEN, K.CLOSE, K.NOTE))
SHARED_BEHIND = frozenset((K.EACH, K.FILLER, K.SETS))
BARE = frozenset((Role.BARE, Role.LOAD))
TOLD_BARE = frozenset((Role.BARE, Role.REPS))


def with_reps_of_all_loads(pieces: list[Piece]) -> list[Piece]:
    """The pieces with such reps put to each load, and without the count of the loads."""
    out: list[Piece] = []
    start = 0
    places = [at for at in _listed(pieces) if pieces[at].value > MOST_LOADED_REPS]
    each = with_reps_of_each_load(pieces) if places else pieces
    for at in places:
        end = _end_of_list(pieces, at, _is_a_load) if at >= start and not _goes_on(pieces, at) else at
        reps = _reps_behind(pieces, end) if end > at else None
        if reps is None:
            if end > at and each is not pieces:
                return each  # "100 110 120 for 5 5 3"
            continue
        loads = [piece for piece in pieces[at : end + 1] if piece.kind is K.NUMBER]
        counted = _count_ahead(pieces, at, len(loads))
        if counted == at and len(loads) < FEWEST_BARE and _is_bare(pieces, reps):
            continue
        out += [*pieces[start:counted], *_told_apart(loads, pieces[reps])]
        start = reps + 1
    return [*out, *pieces[start:]] if start else pieces


def with_reps_of_light_loads(pieces: list[Piece]) -> list[Piece] | None:
    """The pieces read the other way, where a rising list may be of loads or of reps: "db bench 24 26 28, 8 reps each";
    None where there is no such list.
    """
    for at in _listed(pieces):
        reps = _of_light_loads(pieces, at)
        if reps is not None:
            loads = [piece for piece in pieces[at:reps] if piece.kind is K.NUMBER]
            return [*pieces[:at], *_told_apart(loads, pieces[reps]), *pieces[reps + 1 :]]
    return None


def _listed(pieces: Sequence[Piece]) -> list[int]:
    """The places of the numbers that another one or a sign of lists follows; none where no reps can be shared."""
    kinds = kinds_in_order(pieces)
    if kinds.count(K.NUMBER) < FEWEST_NUMBERS or (SHARING.isdisjoint(kinds) and Role.REPS not in map(ROLE, pieces)):
        return []
    behind = [*kinds[1:], None]
    return [at for at in places_of(K.NUMBER, kinds) if behind[at] in LISTING]


def _told_apart(loads: Sequence[Piece], reps: Piece) -> list[Piece]:
    """ "80x5, 85x5, 90x5"."""
    told: list[Piece] = []
    for load in loads:
        told += [load, _sign(K.TIMES, "x", load), reps, _sign(K.COMMA, ",", load)]
    return told[:-1]


def _sign(kind: K, text: str, behind: Piece) -> Piece:
    return Piece(kind, behind.end, behind.end, True, text)


def _is_a_load(pieces: Sequence[Piece], at: int) -> bool:
    told = kind_at(pieces, at) is K.NUMBER and pieces[at].role in BARE
    return told and pieces[at].value > MOST_LOADED_REPS


def _goes_on(pieces: Sequence[Piece], at: int) -> bool:
    """Whether the load goes on a list or a set that is begun before it."""
    counted = kind_at(pieces, at - 1) is K.NUMBER and pieces[at - 1].role is Role.SETS
    return not _is_a_load(pieces, at) or (kind_at(pieces, at - 1) in GOING_ON and not counted)


GOING_ON = frozenset((K.TIMES, K.NUMBER)) | LINKS


def _end_of_list(pieces: Sequence[Piece], at: int, goes_on: Callable[[Sequence[Piece], int], bool]) -> int:
    """The place of the last number of the list that begins there, each of which goes it on."""
    while True:
        ahead = at + 1 + (kind_at(pieces, at + 1) in LINKS)
        if not goes_on(pieces, ahead):
            return at
        at = ahead


def _rises(pieces: Sequence[Piece], at: int) -> bool:
    """Whether a bare number stands there that is above the one before it."""
    if kind_at(pieces, at) is not K.NUMBER or pieces[at].role is not Role.BARE:
        return False
    before = pieces[at - 1 - (pieces[at - 1].kind in LINKS)]
    return pieces[at].value > before.value


def _of_light_loads(pieces: Sequence[Piece], at: int) -> int | None:
    """The place of reps told for all of a rising list of loads or of reps: "db bench 24 26 28, 8 reps each".
    None where the list tells its reps one by one: "8 10 12 reps", "8 10 12 each leg".
    """
    if kind_at(pieces, at - 1) in GOING_ON or pieces[at].role is not Role.BARE:
        return None
    last = _end_of_list(pieces, at, _rises)
    reps = _reps_behind(pieces, last) if last > at else None
    if reps is None:
        return None
    lower = pieces[reps].role is Role.REPS and pieces[reps].value < pieces[at].value
    worded = kind_at(pieces, reps + 1) is K.FILLER and "repword" in CUES_OF[pieces[reps + 1].text]
    return reps if lower or worded or any(map(_tells_all, pieces[last + 1 : reps])) else None


def _reps_behind(pieces: Sequence[Piece], end: int) -> int | None:
    """The place of the reps that are those of all loads; None where no such reps follow."""
    at = end + 1 + (kind_at(pieces, end + 1) is K.COMMA)
    shared = False
    while kind_at(pieces, at) in SHARING:
        shared = shared or _tells_all(pieces[at])
        at += 1
    if kind_at(pieces, at) is not K.NUMBER or pieces[at].value > MOST_LOADED_REPS:
        return None
    behind = at + 1
    while kind_at(pieces, behind) in SHARED_BEHIND:
        shared = shared or pieces[behind].kind is K.EACH or "repword" in CUES_OF[pieces[behind].text]  # "reps each"
        behind += 1
    told = shared or kind_at(pieces, at - 1) is K.FOR or pieces[at].role is Role.REPS
    return at if told and pieces[at].role in TOLD_BARE and kind_at(pieces, behind) in BEHIND else None


def _is_bare(pieces: Sequence[Piece], reps: int) -> bool:
    """ "deadlift 95, 115 for 5": of both, or the reps of the first are yet to come."""
    apart = pieces[reps].role is Role.BARE and kind_at(pieces, reps - 1) is K.FOR
    return apart and kind_at(pieces, reps + 1) not in SHARED_BEHIND and not _tells_all(pieces[reps - 2])


def _tells_all(piece: Piece) -> bool:
    return piece.kind is K.EACH or not TELLING_ALL.isdisjoint(CUES_OF[piece.text])


def _count_ahead(pieces: Sequence[Piece], at: int, loads: int) -> int:
    """Where a count of just so many sets stands right ahead of the loads; else the place of the first of them."""
    counted = at - 1 - (kind_at(pieces, at - 1) in AHEAD)
    if kind_at(pieces, counted) is not K.NUMBER:
        return at
    return counted if pieces[counted].role is Role.SETS and pieces[counted].value == loads else at

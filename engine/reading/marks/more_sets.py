"""How many more sets there were, told ahead of their reps: "two more at 35, both 14", "two more with 5 kg: 7 and 5".

more = NUMBER "more" [ "sets" ] [ ( "at" | "with" ) load ] [ "," | ":" ] ( alike | REPS{NUMBER} )
alike = ( "both" | "all" ) [ "for" ] REPS         so many sets of these reps
As many reps as sets are told: the count says nothing more. Fewer or more of them: it is asked, as before.
"""

from __future__ import annotations

from engine.reading.words.ahead import kind_at
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role

FEWEST, MOST = 2, 6
"""So many sets more may be told at once. Common practice, no source."""
BOTH = 2
WITH = "with"
BESIDE_A_LOAD = frozenset((K.FILLER, K.ADDED, K.NOTE, K.PLATE))
AHEAD_OF_REPS = frozenset((K.COMMA, K.COLON, K.DASH))
BETWEEN_REPS = frozenset((K.COMMA, K.AND, K.SLASH))
ENDS = frozenset((None, K.COMMA, K.STOP, K.LINE, K.CLOSE, K.THEN, K.NOTE))
ENDS_OF_ALIKE = ENDS - {K.NOTE}
"""In "3 more, all 5 felt good" the five may count sets."""
REPS_ROLES = (Role.BARE, Role.REPS)


def with_more_sets(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with counts of more sets put to the reps behind them."""
    out: list[Piece] = []
    at = 0
    while at < len(pieces):
        end = _more_at(pieces, at)
        told = _told_of(pieces, at, end) if end else None
        if told is None:
            out.append(pieces[at])
            at += 1
        else:
            out += told[0]
            at = told[1]
    return out


def _more_at(pieces: list[Piece], at: int) -> int:
    """The place behind "two more sets"; 0 where no such count stands here."""
    count = pieces[at]
    if count.kind is not K.NUMBER or count.role not in (Role.BARE, Role.SETS) or not FEWEST <= count.value <= MOST:
        return 0
    end = at + 1
    while kind_at(pieces, end) in (K.MORE, K.SETS):
        end += 1
    return end if any(piece.kind is K.MORE for piece in pieces[at + 1 : end]) else 0


def _told_of(pieces: list[Piece], at: int, end: int) -> tuple[list[Piece], int] | None:
    """What stands for the count, and the place behind it; None where the reps behind it do not settle it."""
    count, loaded = pieces[at], _load_behind(pieces, end)
    reps = loaded
    while kind_at(pieces, reps) in AHEAD_OF_REPS:
        reps += 1
    alike = _alike(pieces, reps, count)
    if alike:
        sets = count._replace(role=Role.SETS)
        of = pieces[at + 1]._replace(kind=K.OF, text="of", told=0)
        return [sets, of, pieces[alike], *pieces[end:loaded]], alike + 1
    if reps > end and _listed(pieces, reps) == count.value:
        return _headed_by_load(pieces, end, loaded), reps
    return None


def _headed_by_load(pieces: list[Piece], at: int, end: int) -> list[Piece]:
    """The load of the reps behind it, with its words and no sign between; nothing where none is told."""
    if at == end:
        return []
    load = pieces[at + 1]
    words = [one._replace(kind=K.FILLER) if one.kind is K.PLATE else one for one in pieces[at + 2 : end]]
    return [load._replace(role=Role.LOAD) if load.role is Role.BARE else load, *words]


def _load_behind(pieces: list[Piece], at: int) -> int:
    """The place behind "at 35", "with 5 kg on the belt"; the same place where no load stands there."""
    linked = kind_at(pieces, at) is K.WITH or (kind_at(pieces, at) is K.FILLER and pieces[at].text == WITH)
    if not linked or kind_at(pieces, at + 1) is not K.NUMBER or kind_at(pieces, at + 2) is K.TIMES:
        return at
    if pieces[at + 1].role not in (Role.BARE, Role.LOAD, Role.CHANGE):
        return at
    end = at + 2
    while kind_at(pieces, end) in BESIDE_A_LOAD and pieces[end].text not in phrasebook().cues["all"]:
        end += 1
    return end


def _alike(pieces: list[Piece], at: int, count: Piece) -> int:
    """The place of the reps of "both 14", "all for 14"; 0 where no such word stands here."""
    if at >= len(pieces):
        return 0
    both = pieces[at].kind is K.BOTH and count.value == BOTH
    every = pieces[at].text in phrasebook().cues["all"] and count.value > BOTH
    reps = at + 1
    while kind_at(pieces, reps) in (K.FOR, K.FILLER):
        reps += 1
    if not (both or every) or not _is_reps(pieces, reps):
        return 0
    behind = reps + 1 + (kind_at(pieces, reps + 1) is K.REPS)
    return reps if kind_at(pieces, behind) in ENDS_OF_ALIKE and not _is_reps(pieces, behind + 1) else 0


def _is_reps(pieces: list[Piece], at: int) -> bool:
    if kind_at(pieces, at) is not K.NUMBER or kind_at(pieces, at + 1) in (K.TIMES, K.MORE, K.FOR, K.AT, K.WITH):
        return False
    return pieces[at].role in REPS_ROLES and 0 < pieces[at].value <= MOST_LOADED_REPS


def _listed(pieces: list[Piece], at: int) -> int:
    """How many reps are listed from there on, up to what ends the list; 0 where anything else goes on from it."""
    told = 0
    while _is_reps(pieces, at):
        told += 1
        at += 1
        if kind_at(pieces, at) in BETWEEN_REPS and kind_at(pieces, at + 1) is K.NUMBER:
            at += 1
    return told if kind_at(pieces, at) in ENDS else 0

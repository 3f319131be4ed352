"""Drops told by how soon they came: "60 for 12, no rest, 45 for 10", "the 12s for 11 and straight away the 8s for 10".

drop = SET ... AT-ONCE [ word ]... LOAD        a lighter load than that of the set before; anything else comes next
     | SET ... LIGHTER-SET [ "," ] AT-ONCE     at the end of a line: "60x12, 45x10 straight away"
none = "straight into" LIFT                    "no warm up, straight into squat 100x5"
"""

from __future__ import annotations

from decimal import Decimal

from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.pieces import COUNTED, MOST_LOADED_REPS, NOTHING, Piece, Role, kinds_in_order, places_of

AT_ONCE = 7
"""What a NOTE piece's `told` says of words for how soon a set came."""
NEAR = 16
"""Pieces of two sets and the words beside them. Common practice, no source."""
LOADED = frozenset((Role.LOAD, Role.PLURAL))
BETWEEN = frozenset((K.COMMA, K.FILLER, K.THEN, K.AND, K.WITH, K.AT, K.DASH))
ENDS = frozenset((K.LINE, K.STOP, K.CLOSE))
PAIRING = frozenset((K.TIMES, K.FOR))


def with_drops_told(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with words for at once made those of a drop, where a lighter set stands behind them."""
    if not _may_tell_drops(pieces):
        return pieces
    return _told_behind(_told(_with_next_lifts(pieces)))


def _may_tell_drops(pieces: list[Piece]) -> bool:
    kinds = kinds_in_order(pieces)
    notes = [pieces[at] for at in places_of(K.NOTE, kinds)]
    return K.DROP in kinds or any([note.told == AT_ONCE for note in notes])


def _told(pieces: list[Piece]) -> list[Piece]:
    out: list[Piece] | None = None
    last, waiting = NOTHING, -1
    for at, piece in enumerate(pieces):
        if piece.kind is K.NAME:
            last, waiting = NOTHING, -1
        elif piece.kind is K.NUMBER:
            load = _load(pieces, at)
            if waiting >= 0:
                out = list(pieces) if out is None else out
                out[waiting] = pieces[waiting]._replace(kind=K.DROP if 0 < load < last else K.THEN)
            last, waiting = load or last, -1
        elif piece.kind is K.NOTE and piece.told == AT_ONCE:
            waiting = at
        elif piece.kind is K.DROP and _comes_behind_the_last(pieces, at):
            out = list(pieces) if out is None else out
            out[at - 1] = pieces[at - 1]._replace(kind=K.FILLER)
        elif piece.kind not in BETWEEN:
            waiting = -1
    return pieces if out is None else out


def _told_behind(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with such words made those of a drop where the lighter set stands in front of them."""
    out = pieces
    for at in places_of(K.NOTE, kinds_in_order(pieces)):
        if pieces[at].told != AT_ONCE or (at + 1 < len(pieces) and pieces[at + 1].kind not in ENDS):
            continue
        before, last = _latest_loads(pieces, at)
        if 0 < last < before:
            out = list(pieces) if out is pieces else out
            out[at] = pieces[at]._replace(kind=K.DROP, told=0)
    return out


def _latest_loads(pieces: list[Piece], at: int) -> tuple[Decimal, Decimal]:
    """The loads of the two sets right before this place, the later one last; 0 where none is told."""
    found: list[Decimal] = []
    for place in range(at - 1, max(-1, at - 1 - NEAR), -1):
        if pieces[place].kind is K.NAME or len(found) > 1:
            break
        load = _load(pieces, place) if pieces[place].kind is K.NUMBER else NOTHING
        found += [load] if load else []
    last, before = [*found, NOTHING, NOTHING][:2]
    return before, last


def _comes_behind_the_last(pieces: list[Piece], at: int) -> bool:
    """ "after the last one dropped to 10s for 15": the drop itself is another set."""
    return at > 1 and pieces[at - 1].kind is K.LAST and "after" in CUES_OF[pieces[at - 2].text]


def _with_next_lifts(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with "straight into" ahead of another lift as a word that parts the two."""
    leading = [at for at in places_of(K.DROP, kinds_in_order(pieces)) if _leads_to_a_lift(pieces, at)]
    out = list(pieces) if leading else pieces
    for at in leading:
        counted = any(before.kind in COUNTED for before in pieces[:at])
        out[at] = pieces[at]._replace(kind=K.THEN if counted else K.FILLER)
    return out


def _leads_to_a_lift(pieces: list[Piece], at: int) -> bool:
    """ "straight into squats 3x5 100", "right into 100 3x5 squats": another lift comes next, and no lighter set."""
    if "straightinto" not in CUES_OF[pieces[at].text]:
        return False
    kinds = kinds_in_order(pieces)
    first = COUNTED.isdisjoint(kinds[:at]) and K.LINE not in kinds[at:] and K.NAME in kinds[at:]
    return first or kind_at(pieces, at + 1) is K.NAME


def _load(pieces: list[Piece], at: int) -> Decimal:
    """The load that a number tells; 0 where it tells none."""
    number = pieces[at]
    paired = at + 1 < len(pieces) and pieces[at + 1].kind in PAIRING
    heavy = number.role is Role.BARE and (paired or number.value > MOST_LOADED_REPS)
    return number.value if heavy or number.role in LOADED else NOTHING

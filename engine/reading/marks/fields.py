"""Labels in front of numbers ("sets: 3, reps: 10", "kg=77.5"), and which set or rep is meant ("cramped on set 2")."""

from __future__ import annotations

from engine.reading.marks.scales import RATED
from engine.reading.words.ahead import aside, is_amount, kind_at
from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role
from engine.values.load import Unit

FIRST_OF_SEVERAL = 1
SEVERAL = ([K.NUMBER, K.AND, K.NUMBER], [K.NUMBER, K.DASH, K.NUMBER], [K.NUMBER, K.FILLER, K.NUMBER])
MOST_PLACES_NAMED = 6
"""Nobody tells of a seventh set by its place. Common practice, no source."""
BEHIND_A_PLACE = frozenset((None, K.COMMA, K.LINE, K.STOP, K.AND, K.CLOSE))
REMARKED = RATED | {K.PLAIN, K.FILLER, K.JOINT, K.MUSCLE, K.PAIN, K.SORE}
FIELDS = {K.SETS: Role.SETS, K.REPS: Role.REPS}


def field_told(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """ "sets: 3, reps: 10, weight: 60": the label in front says what the number counts."""
    piece = pieces[at]
    if _is_a_place(pieces, at, out):
        out.append(aside(piece))
        return at + 2
    after = at + 1 + (kind_at(pieces, at + 1) in (K.COLON, K.EQUALS))
    if piece.kind is K.SETS and _names_several(pieces, at, out):
        out.append(pieces[at + 1]._replace(role=Role.SETS, told=FIRST_OF_SEVERAL))
        return at + 2
    if piece.kind is K.SETS and out and (out[-1].kind is K.ORDINAL or "thisone" in CUES_OF[out[-1].text]):
        out.append(piece)  # "2nd set: 9 reps", "that set: 6": one that is pointed at, and no count
        return at + 1
    plural = piece.kind in (K.REPS, K.FILLER) or piece.text.endswith("s") or after > at + 1
    if (
        plural
        and is_amount(pieces, after)
        and pieces[after].role is Role.BARE
        and kind_at(pieces, after + 1) is not K.TIMES
    ):
        out.append(pieces[after]._replace(role=FIELDS.get(piece.kind, Role.LOAD)))
        return after + 1
    out.append(piece)
    return at + 1


def _names_several(pieces: list[Piece], at: int, out: list[Piece]) -> bool:
    """ "sets 2 & 3 10 reps", "sets 1-3: 80x8": which sets they were, and no counts."""
    behind = [piece.kind for piece in pieces[at + 1 : at + 5]]
    counted = bool(out) and out[-1].kind is K.NUMBER  # "3 sets 8-10"
    if counted or behind[:3] not in SEVERAL or len(behind) < len(SEVERAL[0]) + 1:
        return False
    first, last = pieces[at + 1], pieces[at + 3]
    bare = first.role is last.role is Role.BARE
    return bare and first.value < last.value <= MOST_PLACES_NAMED and behind[3] not in (K.TIMES, K.REPS, K.AT, K.SLASH)


def without_places(pieces: list[Piece]) -> list[Piece]:
    """The pieces with a sign of doubt for "sets 2 and 3": whether there was a first one is not told."""
    out: list[Piece] = []
    at = 0
    while at < len(pieces):
        named = pieces[at].kind is K.NUMBER and pieces[at].told == FIRST_OF_SEVERAL
        out.append(pieces[at]._replace(kind=K.UNCLEAR) if named else pieces[at])
        at += 3 if named else 1
    return out


def _is_a_place(pieces: list[Piece], at: int, out: list[Piece]) -> bool:
    """ "cramped on set 2", "knees caved on rep 5", "filmed set 2": which set or rep a remark speaks of."""
    single = pieces[at].kind in FIELDS and not pieces[at].text.endswith("s") and is_amount(pieces, at + 1)
    if not single or not out or kind_at(pieces, at + 2) not in BEHIND_A_PLACE or pieces[at + 1].role is not Role.BARE:
        return False
    if out[-1].text not in ("on", "in", "during", "after", "before", "from", "around", "by", "since"):
        return out[-1].kind in RATED and _tells_sets(out)
    noted = len(out) > 1 and out[-2].kind in REMARKED
    return noted and (out[-2].kind in RATED or _tells_sets(out))


def _tells_sets(ahead: list[Piece]) -> bool:
    return any([piece.kind is K.TIMES for piece in ahead[-FAR_AHEAD:]])


FAR_AHEAD = 40
"""Pieces among which the sets are told that a remark speaks of."""


def unit_label(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """ "sets=3 reps=7 kg=77.5": the unit in front says what the number counts."""
    labels = kind_at(pieces, at + 1) in (K.EQUALS, K.COLON) and is_amount(pieces, at + 2)
    if not labels or pieces[at + 2].role is not Role.BARE or kind_at(pieces, at + 3) in (K.TIMES, K.NUMBER):
        out.append(pieces[at])
        return at + 1
    out.append(pieces[at + 2]._replace(role=Role.LOAD, unit=Unit.KG if pieces[at].kind is K.KG else Unit.LB))
    return at + 3

"""Equipment and bars told beside a lift's name, put to it: "dumbbell bench", "rows with the trap bar"."""

from __future__ import annotations

from engine.catalogue.catalogue import Catalogue
from engine.reading.entries.names import BARS, EQUIPMENT, of_equipment
from engine.reading.marks.limbs_told_of import BEGINS_A_REMARK, with_limbs_told_of
from engine.reading.words.ahead import kind_at
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece
from engine.values.ids import ExerciseName

EACH_DUMBBELL = frozenset(("each dumbbell", "per dumbbell", "per db"))


def with_equipment(pieces: list[Piece], kinds: set[K], catalogue: Catalogue) -> list[Piece]:
    """ "dumbbell bench": the equipment in front of a name of the pieces, which are of these kinds, is part of it, where
    such an exercise is known.
    """
    if K.EACH in kinds and not kinds.isdisjoint(BEGINS_A_REMARK):
        pieces = with_limbs_told_of(pieces, catalogue)
    out: list[Piece] = []
    for piece in pieces:
        before = out[-1] if out else None
        if piece.kind is K.NAME and before is not None and before.text in EACH_DUMBBELL:
            names = of_equipment(piece.names, K.DUMBBELL, piece.text, catalogue)
            piece = piece._replace(names=names) if names else piece  # "24kg each dumbbell bench press"
        elif piece.kind is K.NAME and before is not None and before.kind in EQUIPMENT:
            names = of_equipment(piece.names, before.kind, piece.text, catalogue)
            if names:
                out.pop()
                piece = piece._replace(names=names, start=before.start, text=f"{before.text} {piece.text}")
        out.append(piece)
    return out


def with_headed_equipment(pieces: list[Piece], catalogue: Catalogue) -> list[Piece]:
    """The pieces, with equipment on a line of its own put to the lifts on the lines below it: "smith machine", then
    "squat 3x8 80" and "bench 3x8 60"; up to an empty line, or to a lift that is not known with it.
    """
    head, at = pieces[0], 1 + (kind_at(pieces, 1) is K.COLON)
    if kind_at(pieces, at) is not K.LINE or at + 1 >= len(pieces) or not (head.kind in EQUIPMENT or head.text in BARS):
        return pieces
    out = [head._replace(kind=K.NOTE), *pieces[1:]]
    for place in range(at + 1, len(pieces)):
        before, piece = pieces[place - 1].kind, pieces[place]
        if before is not K.LINE:
            continue
        names = _so_equipped(head, piece, catalogue) if piece.kind is K.NAME else ()
        if piece.kind is K.LINE or (piece.kind is K.NAME and not names):
            break
        out[place] = piece._replace(names=names) if names else piece
    return out if out[at + 1] is not pieces[at + 1] else pieces


def _so_equipped(head: Piece, lift: Piece, catalogue: Catalogue) -> tuple[ExerciseName, ...]:
    if head.kind in EQUIPMENT:
        return of_equipment(lift.names, head.kind, lift.text, catalogue)
    return catalogue.owners(f"{head.text} {lift.text}")


def with_bars(pieces: list[Piece]) -> list[Piece]:
    """ "rows with the trap bar", "bench 3x8 60 incline": a name that only tells how the lift before it was done."""
    out: list[Piece] = []
    named = False
    for place, piece in enumerate(pieces):
        after = pieces[place + 1].kind if place + 1 < len(pieces) else None
        how = piece.kind is K.NAME and piece.text in TELLS_HOW and named
        linked = any(one.kind is K.WITH or one.text == "on" for one in out[-2:])
        out.append(piece._replace(kind=K.VARIANT, names=()) if how and (linked or after in CLAUSE_ENDS) else piece)
        named = piece.kind is K.NAME or (named and piece.kind not in CLAUSE_ENDS)
    return out


TELLS_HOW = BARS | {"incline", "decline"}
CLAUSE_ENDS = frozenset((None, K.LINE, K.COMMA, K.STOP, K.THEN))

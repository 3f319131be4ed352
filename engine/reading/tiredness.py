"""Words that name a lift, and more: "7 and my arms are dead", "dead tired", "hit my chin"; and not "dead 140x5"."""

from __future__ import annotations

from engine.reading.kinds import K
from engine.reading.pieces import Piece

DEAD = "dead"
BEFORE_IT = frozenset((K.ASKS, K.FILLER, K.NOTE, K.MUSCLE, K.JOINT))
FEELING = frozenset(("is", "are", "was", "were", "feel", "feels", "felt", "i'm", "im", "am", "so", "totally"))
BEHIND_IT = frozenset((K.NOTE, K.PLAIN))


CHIN = "chin"
ITS = frozenset(("my", "the", "his", "her", "over", "under", "past", "above"))


def without_tiredness(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with such a word made a note where it tells how one feels, or what the bar hit."""
    out: list[Piece] = []
    for at, piece in enumerate(pieces):
        before = pieces[at - 1] if at else None
        after = pieces[at + 1].kind if at + 1 < len(pieces) else None
        felt = before is not None and before.kind in BEFORE_IT and (before.text in FEELING or before.kind in BODY)
        tired = piece.kind is K.NAME and _is_typed_so(piece) and (felt or after in BEHIND_IT) and after is not K.NUMBER
        hit = piece.kind is K.NAME and piece.text == CHIN and before is not None and before.text in ITS
        hit = hit and after is not K.NUMBER
        out.append(piece._replace(kind=K.NOTE, names=()) if tired or hit else piece)
    return out


def _is_typed_so(piece: Piece) -> bool:
    """ "dead", and not "deads", which is only ever the lift."""
    return piece.text == DEAD and piece.end - piece.start == len(DEAD)


BODY = frozenset((K.MUSCLE, K.JOINT))

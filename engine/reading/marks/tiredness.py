"""Words that name a lift, and more: "dead tired", "hit my chin", "then 1 clean one"; and not "dead 140x5"."""

from __future__ import annotations

from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, is_one_word

DEAD = "dead"
BEFORE_IT = frozenset((K.ASKS, K.FILLER, K.NOTE, K.MUSCLE, K.JOINT))
FEELING = frozenset(("is", "are", "was", "were", "feel", "feels", "felt", "went", "i'm", "im", "am", "so", "totally"))
BEHIND_IT = frozenset((K.NOTE, K.PLAIN))


CHIN = "chin"
ITS = frozenset(("my", "the", "his", "her", "over", "under", "past", "above"))


OF_TWO_MINDS = frozenset((DEAD, CHIN, "clean"))
"""Names that are common words, too."""


def without_tiredness(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with such a word made a note where it tells how one feels, or what the bar hit."""
    out: list[Piece] = []
    for at, piece in enumerate(pieces):
        before = pieces[at - 1] if at else None
        after = pieces[at + 1].kind if at + 1 < len(pieces) else None
        felt = before is not None and before.kind in BEFORE_IT and (before.text in FEELING or before.kind in BODY)
        tired = piece.kind is K.NAME and _is_typed_so(piece) and (felt or after in BEHIND_IT) and after is not K.NUMBER
        hit = piece.kind is K.NAME and piece.text == CHIN and before is not None and before.text in ITS
        hit = hit and after is not K.NUMBER and is_one_word(piece)  # "the chins" are the lift
        clean = piece.kind is K.NAME and _is_a_clean_one(pieces, at)
        out.append(piece._replace(kind=K.NOTE, names=()) if tired or hit or clean else piece)
    return out


def _is_a_clean_one(pieces: list[Piece], at: int) -> bool:
    """ "then 1 clean one", "2 clean reps": how they were done, behind a count and ahead of what it counts."""
    typed = pieces[at].text == CLEAN and is_one_word(pieces[at])
    behind = pieces[at + 1] if at + 1 < len(pieces) else None
    if not typed or not at or behind is None or pieces[at - 1].kind is not K.NUMBER:
        return False
    elsewhere = any(piece.kind is K.NAME for piece in pieces[:at])
    return elsewhere and (behind.kind in (K.REPS, K.SETS) or behind.text in ONES)


CLEAN = "clean"
ONES = frozenset(("one", "ones"))


def _is_typed_so(piece: Piece) -> bool:
    """ "dead", and not "deads", which is only ever the lift."""
    return piece.text == DEAD and is_one_word(piece)


BODY = frozenset((K.MUSCLE, K.JOINT))

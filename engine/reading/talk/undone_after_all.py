"""Sets behind which it is told that nothing came of them: whether they were done is asked.

undone = sets [ day ] ( "," | "but" | "and" ) LEFT_OUT [ "it" ]        squat 5x5 100, skipped it
       | sets [ day ] "but" words SHUT                                squat 5x5 100 but gym closed
       | HAD sets [ day ] "but" words                                 had squat 5x5 100 today but ran out of time
Parts in capitals are cues of the language files. Behind "had", words that only say how it felt leave the sets done.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.talk.clauses_of_talk import turns
from engine.reading.words.cues import any_cued, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import COUNTED, TEXT, Piece, kinds_in_order, places_in

LEFT_OUT, SHUT, HAD = frozenset(("cameofnothing",)), frozenset(("shut",)), frozenset(("meantto",))
CUES = LEFT_OUT | SHUT | HAD
BESIDE_SETS = frozenset((K.KG, K.LB, K.REPS, K.SETS, K.DATE, K.TODAY, K.EFFORT, K.FAILURE, K.EACH, K.NAME))
LINKS = frozenset((K.COMMA, K.DASH, K.AND, K.STOP, K.OPEN))
LITTLE = frozenset((K.FILLER, K.TODAY, K.DATE, K.CLOSE, K.STOP))
DAYS = frozenset((K.TODAY, K.DATE, K.CLOSE, K.STOP))
PLACES = frozenset((K.UNRELATED, K.PLAIN, K.HEADING, K.NOTE, K.SETTING))
FELT = LITTLE | {K.NOTE, K.PAIN, K.SORE, K.MORE, K.COMMA, K.AND}
LONGEST_BEHIND = 3


def may_be_undone(pieces: Sequence[Piece], cleaned: str) -> bool:
    """Whether words behind the last set of a message may say that it was not done."""
    if not any_cued(map(TEXT, pieces), CUES) and not any_cued(cleaned.split()[-1:], SHUT):
        return False
    kinds = kinds_in_order(pieces)
    last = max(places_in(COUNTED, kinds), default=-1) + 1
    while last < len(pieces) and kinds[last] in BESIDE_SETS:
        last += 1
    if K.LINE in kinds or last in (0, len(pieces)):
        return False
    start = last + (kinds[last] in LINKS)
    turned = start < len(pieces) and turns(pieces[start])
    behind = pieces[start + turned :]
    if not behind:
        return False
    if is_cued(behind[0].text, LEFT_OUT) and (start > last or turned):
        return len(behind) <= LONGEST_BEHIND and LITTLE.issuperset(kinds_in_order(behind[1:]))
    if not turned:
        return False
    had = any(is_cued(piece.text, HAD) for piece in pieces[:2]) and K.NOTE not in kinds[:last]  # "had a squat pb 140x1"
    if had and not FELT.issuperset(kinds_in_order(behind)):
        return True
    told = [word for piece in behind if piece.kind not in DAYS for word in cleaned[piece.start : piece.end].split()]
    return any(piece.kind in PLACES for piece in behind) and any_cued(told[-1:], SHUT)

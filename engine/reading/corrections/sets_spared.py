"""Sets that stay where the rest of their lift is deleted or moved: "delete bench but not the first set".

spared sets = ( DELETE | MOVE ) ... ( EXCEPT | "but" | NOT ) place [ sets ] [ lift ] [ to a day ]

The rest is worked out as if the sets named did not stand, so that it never reaches them.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from engine.catalogue.catalogue import Catalogue
from engine.reading.corrections.correcting import cue_at
from engine.reading.corrections.parts import is_all, part_told
from engine.reading.latest_sets import standing
from engine.reading.prepare import Prepared, prepare
from engine.reading.values import Context
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import DENYING, PLACING, K
from engine.reading.words.phrasebook import phrasebook, spoken_words
from engine.reading.words.pieces import Piece
from engine.values.sets import SetRecord

BUT, MOVES = frozenset(("but",)), "moves"
EXCEPTING = frozenset((K.EXCEPT, *DENYING))
OF_THE_PLACE = PLACING | {K.SETS, K.NAME, K.OF}
VALUES = frozenset((K.TIMES, K.EFFORT, K.RPE, K.RIR, K.QUESTION, K.FUTURE, K.TOMORROW))


def without_sets_spared(
    prepared: Prepared, context: Context, catalogue: Catalogue
) -> tuple[Prepared, Context | None] | None:
    """The rest of the message, and what stands besides, None where it is not clear what that is; None where no set of
    a lift is said to stay.
    """
    if prepared.told.isdisjoint(PLACING) or not prepared.told.isdisjoint(VALUES) or not context.recent:
        return None
    pieces, words = prepared.spoken, [word for word, _ in spoken_words(prepared.tokens)]
    opens = cue_at(words, 0, phrasebook().cues["delete"]) or cue_at(words, 0, phrasebook().cues[MOVES])
    at = next((at for at, piece in enumerate(pieces) if _excepts(piece)), 0) if opens else 0
    start = next((n for n in range(at, len(pieces)) if not _leads(pieces[n])), len(pieces))
    end = next((n for n in range(start, len(pieces)) if pieces[n].kind not in OF_THE_PLACE), len(pieces))
    place = pieces[start:end]
    if K.NUMBER in prepared.told and any(map(is_all, pieces[:at])):
        return None  # "delete all but the first 2" has a rule of its own
    if not at or not any(piece.kind in PLACING for piece in place) or _points(pieces[:at]):
        return None
    stay = _staying(pieces[:at], place, context)
    text = f"{prepared.cleaned[: pieces[at].start].rstrip(' ,')} {prepared.cleaned[pieces[end - 1].end :].lstrip(' ,')}"
    left = tuple(record for record in context.recent if record not in stay)
    clear = len(stay) == 1 and K.NUMBER not in prepared.told and left
    return prepare(text, context, catalogue), replace(context, recent=left) if clear else None


def _excepts(piece: Piece) -> bool:
    return piece.kind in EXCEPTING or is_cued(piece.text, BUT)


def _leads(piece: Piece) -> bool:
    """Whether it is "but", "but not", "aber nicht den": what leads to the place."""
    return _excepts(piece) or piece.kind is K.FILLER


def _points(ahead: Sequence[Piece]) -> bool:
    """ "delete the second set, not the first": one set is named, and the other only tells it apart."""
    return any(piece.kind in PLACING or piece.kind is K.NUMBER for piece in ahead)


def _staying(ahead: Sequence[Piece], place: Sequence[Piece], context: Context) -> Sequence[SetRecord]:
    """The sets pointed at, among those of the lift named beside the place or, if need be, ahead of it."""
    names = [piece for piece in place if piece.kind is K.NAME] or [piece for piece in ahead if piece.kind is K.NAME]
    several = not names and any(map(is_all, ahead)) and len({one.done.exercise for one in context.recent}) > 1
    if several or len(names) > 1:
        return ()  # "move everything but the first": of each lift, or of the day
    lift = standing(names[0], context) if names else context.recent[-1].done.exercise
    recent = tuple(record for record in context.recent if record.done.exercise == lift)
    return part_told(place, replace(context, recent=recent)).places if recent else ()

"""A place of sets that stand, and its reps told apart from it: "second one also 7", "the third was a bit less, 7".

told = place ALSO NUMBER | place NUMBER ALSO
     | place ( "was" | felt ) remark cut [ ONLY | GOT ] NUMBER        put right where it says less; else asked
     | remark place cut [ ONLY | GOT ] NUMBER                          "grip went on the last, 4"
     | SETTING place [ "as" ] NUMBER                                  "log the last as 7"

A place counts where such a set stands; the last one only of sets that were told together. Words in capitals are cues of
the language files and kinds of pieces.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from engine.reading.corrections.nothing_changed import CONFIRMED, REPS_APART, nothing_changed
from engine.reading.corrections.parts import part_told
from engine.reading.corrections.said_to_be import is_be
from engine.reading.latest_sets import last_message
from engine.reading.prepare import Prepared
from engine.reading.values import Context, Correction, NoSets
from engine.reading.words.cues import CUES_OF, is_cued
from engine.reading.words.kinds import PLACING, K
from engine.reading.words.pieces import Piece, kinds_of, may_count_reps
from engine.values.sets import SetRecord

CUTS = frozenset((K.COMMA, K.DASH, K.STOP))
LITTLE = frozenset((K.FILLER, K.REPS, K.STOP, K.ONLY, K.GOT))
REMARKED = LITTLE | CUTS | {K.NOTE, K.PLAIN}
ALSO, SETTING, FEWER = frozenset(("also",)), frozenset(("settingto",)), frozenset(("fewer",))
LONGEST = 10


def placed_and_told(prepared: Prepared, context: Context) -> Correction | NoSets | None:
    """The set at the place with its reps, or why nothing is changed; None where the words tell no such thing."""
    pieces = prepared.spoken
    if not context.recent or K.TIMES in prepared.told or PLACING.isdisjoint(prepared.told):
        return None
    place = next((at for at, piece in enumerate(pieces) if piece.kind in PLACING), None)
    numbers = [at for at, piece in enumerate(pieces) if piece.kind is K.NUMBER]
    if (
        place is None
        or len(pieces) > LONGEST
        or len(numbers) != 1
        or numbers[0] < place
        or not may_count_reps(pieces[numbers[0]])
    ):
        return None
    record = _set_at(pieces[place], context)
    if record is None:
        return None
    ahead, between, behind = pieces[:place], pieces[place + 1 : numbers[0]], pieces[numbers[0] + 1 :]
    reps = int(pieces[numbers[0]].value)
    if _sets_it(ahead) and _is_little((*between, *behind)):
        return _with_reps(record, reps)
    if _is_little(ahead) and _says_also((*between, *behind)):
        return _with_reps(record, reps)
    if not _is_little(behind) or not (_is_remark_of_it(ahead, between) or (_is_little(ahead) and _remarks(between))):
        return None
    less = K.ONLY in kinds_of(between) or any(is_cued(piece.text, FEWER) for piece in between)
    return _with_reps(record, reps) if less and reps < record.done.reps else nothing_changed(prepared, REPS_APART)


def _set_at(place: Piece, context: Context) -> SetRecord | None:
    if place.kind is K.LAST and len(last_message(context)) < 2:
        return None
    part = part_told([place], context)
    counted = len(part.places) == 1 and not part.missing
    record = part.places[0] if counted else None
    timed = record is not None and (record.done.seconds is not None or record.done.metres is not None)
    return None if timed else record


def _with_reps(record: SetRecord, reps: int) -> Correction | NoSets:
    if record.done.reps == reps:
        return NoSets(why=CONFIRMED)
    return Correction(changed=((record, replace(record.done, reps=reps)),))


def _sets_it(ahead: Sequence[Piece]) -> bool:
    """ "log", "count": what a number is to stand as."""
    return len(ahead) == 1 and is_cued(ahead[0].text, SETTING)


def _is_little(pieces: Sequence[Piece]) -> bool:
    return all(piece.kind in LITTLE for piece in pieces)


def _says_also(pieces: Sequence[Piece]) -> bool:
    also = [piece for piece in pieces if is_cued(piece.text, ALSO)]
    return len(also) == 1 and _is_little([piece for piece in pieces if piece is not also[0]])


def _is_remark_of_it(ahead: Sequence[Piece], between: Sequence[Piece]) -> bool:
    """ "grip went on the last,": a remark, the place and a sign, ahead of the number."""
    kinds = kinds_of(between)
    remarked = K.NOTE in kinds_of(ahead) and kinds_of(ahead) <= REMARKED - CUTS
    return remarked and not kinds.isdisjoint(CUTS) and kinds <= LITTLE | CUTS


def _remarks(between: Sequence[Piece]) -> bool:
    """ "was ugly," and "felt awful, only": how it was, and a sign ahead of the number."""
    verb = any(map(is_be, between)) or any("felt" in CUES_OF[piece.text] for piece in between)
    kinds = kinds_of(between)
    return verb and K.NOTE in kinds and not kinds.isdisjoint(CUTS) and kinds <= REMARKED

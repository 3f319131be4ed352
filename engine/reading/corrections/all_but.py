"""All sets but one put right, and that one for itself: "all rpe 8 except the last 9", "all were 75, last was 80".

told = all ... value ( EXCEPT | "but" | cut ) place [ "was" ] value      a bare number behind an effort is one, too
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace

from engine.catalogue.catalogue import Catalogue
from engine.reading.corrections.changes_together import as_left
from engine.reading.corrections.clauses import Alone
from engine.reading.corrections.nothing_changed import CONFIRMED, unclear
from engine.reading.corrections.parts import is_all
from engine.reading.prepare import Prepared, prepare
from engine.reading.values import Context, Correction, NoSets
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import PLACING, K
from engine.reading.words.pieces import Piece, Role
from engine.values.effort import TOP_OF_SCALE

BUT = frozenset(("but",))
EXCEPTING = frozenset((K.EXCEPT, K.COMMA))
VALUES = frozenset((K.NUMBER, K.EFFORT))
NUMBERS = re.compile(r"\d+(?:[.,]\d+)?")


def all_but_one(prepared: Prepared, context: Context, catalogue: Catalogue, alone: Alone) -> Correction | NoSets | None:
    """Both changes; NoSets where they cannot be worked out; None where the words tell no such thing."""
    pieces = prepared.spoken
    if prepared.told.isdisjoint(PLACING) or prepared.told.isdisjoint(VALUES) or not context.recent:
        return None
    at = next((at for at, piece in enumerate(pieces) if piece.kind in EXCEPTING or is_cued(piece.text, BUT)), 0)
    ahead, behind = pieces[:at], pieces[at + 1 :]
    if not (at and _tells_all(ahead) and _tells_one(behind)) or not _other_kinds(prepared.told):
        return None
    texts = (prepared.cleaned[: pieces[at].start], _told_alike(prepared.cleaned, ahead, behind))
    every = alone(prepare(texts[0], context, catalogue), context, catalogue)
    left = replace(context, recent=as_left(context.recent, every)) if isinstance(every, Correction) else context
    one = alone(prepare(texts[1], left, catalogue), left, catalogue)
    if isinstance(one, Correction) and isinstance(every, NoSets) and every.why == CONFIRMED:
        return one
    if isinstance(one, Correction) and isinstance(every, Correction) and _changes_alone(every, one):
        return _in_place(every, one, context)
    return None if pieces[at].kind is K.COMMA else unclear(prepared)


def _other_kinds(told: frozenset[K]) -> bool:
    return told.isdisjoint((K.TIMES, K.QUESTION, K.NOT, K.DENY, K.NEVER, K.FUTURE, K.TOMORROW))


def _tells_all(ahead: Sequence[Piece]) -> bool:
    """Whether one value is told of all of them."""
    return any(map(is_all, ahead)) and len(_values(ahead)) == 1


def _tells_one(behind: Sequence[Piece]) -> bool:
    """Whether one place stands ahead of its value, and nothing else of sets."""
    places = [piece for piece in behind if piece.kind in PLACING]
    return len(places) == 1 and len(_values(behind)) == 1 and places[0].start < _values(behind)[0].start


def _values(pieces: Sequence[Piece]) -> list[Piece]:
    """The numbers and efforts; the number of an effort is told with its word."""
    return [piece for piece in pieces if piece.kind in VALUES]


def _told_alike(cleaned: str, ahead: Sequence[Piece], behind: Sequence[Piece]) -> str:
    """What is told of the one, with the word of the effort where its number is bare: "the last rpe 9"."""
    every, one = _values(ahead)[0], _values(behind)[0]
    rated = [piece for piece in ahead if piece.kind in (K.RPE, K.RIR, K.EFFORT)]
    bare = one.kind is K.NUMBER and one.role is Role.BARE and 0 < one.value <= TOP_OF_SCALE
    named = any(piece.kind in (K.RPE, K.RIR) for piece in behind)
    if not rated or not bare or named:
        return cleaned[behind[0].start :]
    word = cleaned[min(rated[0].start, every.start) : every.end]
    number = cleaned[one.start : one.end]
    return cleaned[behind[0].start : one.start] + NUMBERS.sub(number, word) + cleaned[one.end :]


def _changes_alone(every: Correction, one: Correction) -> bool:
    return not (every.added or one.added or every.removed or one.removed or one.moved)


def _in_place(every: Correction, one: Correction, context: Context) -> Correction:
    """What is told of all, and of the one its own besides: "all at 60, last one 6"."""
    before = {record.id: record for record in context.recent}
    done = {record.id: new for record, new in (*every.changed, *one.changed)}
    return replace(every, changed=tuple((before[id_], new) for id_, new in done.items() if new != before[id_].done))

"""One thing told of several lifts at once: "the last of each was 4", "the bench and the squat were rpe 8".

told = place OF-EACH "was" value            of the lifts told together, or of the only two of the day
     | [ place ] lift "and" [ place ] lift "was" value

It is worked out on each lift alone; where it cannot be, nothing is changed.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from engine.catalogue.catalogue import Catalogue
from engine.reading.corrections.clauses import Alone
from engine.reading.corrections.correcting import cue_at
from engine.reading.corrections.nothing_changed import unclear
from engine.reading.corrections.said_to_be import is_be
from engine.reading.latest_sets import last_message, standing
from engine.reading.prepare import Prepared, prepare
from engine.reading.values import Context, Correction, NoSets
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import PLACING, K
from engine.reading.words.phrasebook import phrasebook, spoken_words
from engine.reading.words.pieces import Piece
from engine.values.ids import ExerciseName

OF_EACH, ANDS = "ofeach", frozenset(("andword",))
PLACES = PLACING | {K.EXTREME}
VALUES = frozenset((K.NUMBER, K.COUNT, K.EFFORT, K.RPE, K.RIR, K.FAILURE, K.MISS, K.WARMUP, K.DROP))
HEAD = PLACES | {K.NAME, K.AND, K.COMMA, K.FILLER, K.SETS, K.OF, K.FOR, K.BOTH}
PAIR = 2


def of_each(prepared: Prepared, context: Context, catalogue: Catalogue, alone: Alone) -> Correction | NoSets | None:
    """The change of each lift; NoSets where it is of each and cannot be worked out; None where it is of one."""
    if prepared.told.isdisjoint(VALUES) or K.QUESTION in prepared.told or not context.recent:
        return None
    if K.NAME in prepared.told:
        return _of_each_named(prepared, context, catalogue, alone)
    span = None if prepared.told.isdisjoint(PLACES) else _phrase(prepared)
    lifts = _lifts_of_the_day(context) if span is not None else ()
    if span is None or len(lifts) < PAIR:
        return None
    together = tuple(dict.fromkeys(record.done.exercise for record in last_message(context)))
    if len(together) < PAIR < len(lifts):
        return unclear(prepared)
    rest = prepare(prepared.cleaned[: span[0]] + prepared.cleaned[span[1] :], context, catalogue)
    told = [(rest, lift) for lift in (together if len(together) >= PAIR else lifts)]
    return _worked_out(told, context, catalogue, alone) or unclear(prepared)


def _lifts_of_the_day(context: Context) -> tuple[ExerciseName, ...]:
    day = context.recent[-1].on
    return tuple(dict.fromkeys(record.done.exercise for record in context.recent if record.on == day))


def _phrase(prepared: Prepared) -> tuple[int, int] | None:
    """Where "of each", "of both" stands, behind a place."""
    spoken = spoken_words(prepared.tokens)
    words, phrases = [word for word, _ in spoken], phrasebook().cues[OF_EACH]
    first = next((piece.start for piece in prepared.spoken if piece.kind in PLACES), 0)
    for at, (_, token) in enumerate(spoken):
        length = cue_at(words, at, phrases)
        if length and token.start > first:
            return token.start, spoken[at + length - 1][1].end
    return None


def _of_each_named(
    prepared: Prepared, context: Context, catalogue: Catalogue, alone: Alone
) -> Correction | NoSets | None:
    """ "bench and squat were rpe 8": both; None where the lifts are told apart, or are not of one verb."""
    pieces = prepared.spoken
    verb = next((at for at, piece in enumerate(pieces) if is_be(piece)), 0)
    head, tail = _parts(pieces[:verb]), pieces[verb:]
    lifts = [standing(piece, context) for part in head for piece in part if piece.kind is K.NAME]
    if len(head) < PAIR or None in lifts or len({*lifts}) < len(lifts):
        return None
    kinds = [piece.kind for piece in tail]
    if K.NAME in kinds or K.TIMES in kinds or VALUES.isdisjoint(kinds):
        return None
    if kinds.count(K.NUMBER) > 1 and K.NOT not in kinds:
        return unclear(prepared)  # "bench and squat were 60 and 100"
    behind = prepared.cleaned[tail[0].start :]
    told = [
        (prepare(f"{prepared.cleaned[part[0].start : part[-1].end]} {behind}", context, catalogue), lift)
        for part, lift in zip(head, lifts, strict=True)
        if lift is not None
    ]
    return _worked_out(told, context, catalogue, alone) or unclear(prepared)


def _parts(head: Sequence[Piece]) -> list[list[Piece]]:
    """The words of each lift in front of the verb; none where other words stand among them."""
    if any(piece.kind not in HEAD and not is_cued(piece.text, ANDS) for piece in head):
        return []
    out: list[list[Piece]] = [[]]
    for piece in head:
        if piece.kind in (K.AND, K.COMMA) or is_cued(piece.text, ANDS):
            out.append([])
        elif piece.kind is not K.BOTH:
            out[-1].append(piece)
    return out if all([one.kind for one in part].count(K.NAME) == 1 for part in out) else []


def _worked_out(
    told: Sequence[tuple[Prepared, ExerciseName]], context: Context, catalogue: Catalogue, alone: Alone
) -> Correction | None:
    """The change that each text makes of its lift, together; None where one of them makes none."""
    found = []
    for text, lift in told:
        recent = tuple(record for record in context.recent if record.done.exercise == lift)
        one = alone(text, replace(context, recent=recent), catalogue)
        if not isinstance(one, Correction) or one.added:
            return None
        found.append(one)
    return Correction(
        changed=tuple(change for one in found for change in one.changed),
        removed=tuple(record for one in found for record in one.removed),
        moved=tuple(move for one in found for move in one.moved),
    )

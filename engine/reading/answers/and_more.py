"""An answer to which lift it was, and more of the sets in the same words: "barbell, and from yesterday".

told = answer ( cut | "and" ) ( day | correction ) | answer ( day | effort )

Both are taken; where the rest cannot be worked out on the sets that were chosen, the question stays.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace

from engine.catalogue.catalogue import Catalogue
from engine.reading.answers.amended import as_corrected, records_of
from engine.reading.corrections.clauses import PLACES
from engine.reading.corrections.correcting import UNITS
from engine.reading.corrections.corrections import correction_of
from engine.reading.corrections.days_named import day_named
from engine.reading.corrections.said_to_be import is_be
from engine.reading.days.day_starts import DATE_KINDS
from engine.reading.entries.names import EQUIPMENT
from engine.reading.prepare import Prepared, prepare
from engine.reading.values import Answer, Asked, Context, Correction, Doubt, Settled, StillOpen
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import DENYING, K
from engine.reading.words.pieces import Piece
from engine.values.sets import SetRecord

Answerer = Callable[[str, Asked, Context, Catalogue], Answer]
MOST_JOINTS = 6
"""Words that settle the question are few: what stands behind more joints than these is talk."""
JOINING, ANDS = frozenset((K.COMMA, K.STOP, K.DASH, K.AND)), frozenset(("andword", "but"))
NOT_MORE = frozenset((K.TIMES, K.QUESTION, K.LINE, K.OTHERS, K.TOMORROW, K.FUTURE))
MORE = DATE_KINDS | {K.DATE, K.EFFORT, K.RPE, K.RIR, K.RESERVE, K.FAILURE, K.MISS, K.WARMUP, K.DROP, K.KG, K.LB}
DAYS = DATE_KINDS | {K.DATE}
AROUND_A_DAY = DAYS | {K.FILLER, K.FOR, K.OF, K.AND, K.STOP, K.COMMA, K.HEADING}


def answered_and_more(
    prepared: Prepared, asked: Asked, context: Context, catalogue: Catalogue, answer: Answerer
) -> Answer | None:
    """The sets with all that is told of them, or the question as it stands; None where no more is told."""
    if asked.doubt is not Doubt.EXERCISE or context.now is None or not NOT_MORE.isdisjoint(prepared.told):
        return None
    for start, end in _joints(prepared.spoken)[:MOST_JOINTS]:
        ahead, behind = prepared.cleaned[:start].strip(), prepared.cleaned[end:].strip(" ,.")
        more = prepare(behind, context, catalogue)
        if not ahead or not _tells_more(more):
            continue
        chosen = answer(ahead, asked, context, catalogue)
        if isinstance(chosen, Settled):
            return _with(more, chosen, context, catalogue) or StillOpen(asked, again=True)
    return None


def _joints(pieces: Sequence[Piece]) -> list[tuple[int, int]]:
    """Where more may begin: behind each sign and "and", and in front of an effort or a day, "barbell rpe 8"."""
    found = [(piece.start, piece.end) for piece in pieces if piece.kind in JOINING or is_cued(piece.text, ANDS)]
    bare = next((at for at, piece in enumerate(pieces) if piece.kind in BEGINNING), 0)
    lead = bare - 1 if bare > 1 and pieces[bare - 1].kind in (K.NOT_DATE, K.FOR) else bare
    chosen = bare and all(piece.kind in CHOOSING for piece in pieces[:lead])
    return [*found, (pieces[lead].start, pieces[lead].start)] if chosen else found


CHOOSING = frozenset((K.NAME, K.VARIANT, K.BAR, K.FILLER, K.NUMBER, K.FIRST, K.LAST, K.ORDINAL, *EQUIPMENT))
BEGINNING = DATE_KINDS | {K.DATE, K.EFFORT, K.RPE, K.RIR, K.RESERVE}


def _tells_more(told: Prepared) -> bool:
    """Whether a day, an effort, a mark or a unit is told, or what one of the numbers was; "and it was 14" leaves open
    which.
    """
    if not told.spoken or K.NAME in told.told or any(map(_compares, told.spoken)):
        return False
    denied = not told.told.isdisjoint(DENYING)
    if K.NUMBER in told.told and (denied or not told.told.isdisjoint(PLACES)):
        return True
    if told.told.isdisjoint(MORE) or denied:
        return False
    return not told.told.isdisjoint(MORE - DAYS) or all(map(_is_of_the_day, told.spoken))


def _compares(piece: Piece) -> bool:
    """ "like yesterday", "than monday"; "from yesterday" says of which day it is."""
    return piece.kind is K.NOT_DATE and not is_cued(piece.text, OF_THE_DAY)


def _with(more: Prepared, chosen: Settled, context: Context, catalogue: Catalogue) -> Settled | None:
    """The sets chosen with what is told of them; None where that is not clear."""
    logged, day = chosen.logged, day_named(more, context)
    if day is not None and all(_is_of_the_day(piece) for piece in more.spoken):
        return replace(chosen, logged=replace(logged, on=day.day))
    records = records_of(logged.sets, context)
    found = correction_of(more, replace(context, recent=records), catalogue)
    if found is None and _tells_their_unit(more, records):
        return chosen
    if not isinstance(found, Correction) or (found.moved and len(found.moved) < len(records)):
        return None
    sets = as_corrected(records, found)
    on = found.moved[0][1] if found.moved else logged.on
    return replace(chosen, logged=replace(logged, sets=sets, on=on)) if sets else None


def _is_of_the_day(piece: Piece) -> bool:
    return piece.kind in AROUND_A_DAY or is_be(piece) or is_cued(piece.text, OF_THE_DAY)


OF_THE_DAY = frozenset(("ofaday", "that"))


def _tells_their_unit(more: Prepared, records: Sequence[SetRecord]) -> bool:
    """ "barbell, kg" of sets in kilos."""
    units = {UNITS[piece.kind] for piece in more.spoken if piece.kind in UNITS}
    return bool(units) and units == {record.done.load.unit for record in records if record.done.load is not None}

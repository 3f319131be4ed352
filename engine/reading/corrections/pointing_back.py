"""What a clause is of that points at nothing itself: "last was 3, and it was 77.5" is of the last set twice.

told = clause ( cut | "and" ) [ "it" | "that" | "they" ] "was" value       value = NUMBER | effort | mark

It is of the sets that the clause before it put right. "They" behind one set is of all; a day, a unit or another lift
is of what was logged together.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from engine.catalogue.catalogue import Catalogue
from engine.reading.corrections.amid_talk import renames
from engine.reading.corrections.clauses import PLACES
from engine.reading.corrections.marks import MARKS
from engine.reading.corrections.parts import is_all
from engine.reading.corrections.said_to_be import in_full, is_be
from engine.reading.corrections.so_many import is_both
from engine.reading.days.day_starts import DATE_KINDS
from engine.reading.latest_sets import latest_of_it, run_of_it
from engine.reading.prepare import Prepared, prepare
from engine.reading.values import Context, Correction
from engine.reading.words.cues import any_cued, is_cued
from engine.reading.words.kinds import DENYING, K
from engine.reading.words.phrasebook import spoken_words
from engine.reading.words.pieces import Role
from engine.values.effort import TOP_OF_SCALE
from engine.values.sets import SetRecord

OWN_SUBJECT = PLACES | {K.NAME, K.REMAINING, K.TIMES, K.QUESTION}
VALUES, DAYS = MARKS | {K.NUMBER}, DATE_KINDS | {K.DATE}
PLURALS, SINGULARS = frozenset(("those", "were")), frozenset(("was", "is"))
REST, RATED = frozenset(("remaining",)), frozenset((K.RPE, K.RIR, K.EFFORT, K.RESERVE))
PAIR, PRONOUN_AND_VERB = 2, 2


class OpenWhich(Exception):
    """A clause is of some of the sets that the one before it was of, and of which nobody can say."""


def pointing_back(clause: Prepared, before: Correction | None, context: Context) -> Context | None:
    """The sets that the clause before put right, alone; None where this clause is not of those."""
    if before is None or not before.changed:
        return None
    ids = {record.id for record, _ in before.changed}
    sets = [record for record in context.recent if record.id in ids]
    if not _points_at_nothing(clause):
        return None
    if not sets or ids == {record.id for record in _meant_by_itself(context, sets)}:
        return None
    if not _tells_a_value(clause):
        return _of_that_lift(sets, context)
    if _is_of_more(clause, sets):
        return None
    return replace(context, recent=tuple(replace(record, message=sets[-1].message) for record in sets))


def tells_of_the_rest(clause: Prepared) -> bool:
    """ "the rest were rpe 8": those that no clause before spoke of; a bare "the rest 8" is of what those were."""
    if not any_cued([word for word, _ in spoken_words(clause.tokens)], REST):
        return False
    said = any(map(is_be, in_full(clause))) or not clause.told.isdisjoint(RATED)
    return said and not clause.told.isdisjoint(VALUES | RATED) and clause.told.isdisjoint(DAYS | {K.TIMES})


def of_the_rest(
    clause: Prepared, ahead: Prepared, before: Sequence[Correction], context: Context, catalogue: Catalogue
) -> tuple[Prepared, Context] | None:
    """What is told of the rest, without the words for it, and the other sets of the lift and the day, alone."""
    changed = [record for found in before for record, _ in found.changed]
    if not changed or not tells_of_the_rest(clause):
        return None
    rated = not ahead.told.isdisjoint(RATED) and clause.told.isdisjoint(RATED)
    if rated and any(piece.kind is K.NUMBER and piece.value <= TOP_OF_SCALE for piece in clause.spoken):
        return None  # "last was rpe 9, the rest were 8": efforts, too
    ids, last = {record.id for record in changed}, changed[-1]
    alike = [one for one in context.recent if one.done.exercise == last.done.exercise and one.on == last.on]
    others = tuple(replace(one, message=last.message) for one in alike if one.id not in ids)
    said = next(token.end for word, token in spoken_words(clause.tokens) if is_cued(word, REST))
    told = prepare(clause.cleaned[said:].strip(), context, catalogue)
    return (told, replace(context, recent=others)) if others else None


def leaves_open(
    clause: Prepared,
    found: Correction,
    meant: Context | None,
    *,
    before: Prepared,
    reached: Correction | None,
    context: Context,
) -> bool:
    """Whether a value is told of what stood ahead, and reaches some of those sets, or one of a whole lift that was
    named: "bench was 7 and it was 62.5".
    """
    if reached is None or not _tells_a_value(clause) or not _points_at_nothing(clause):
        return False
    ids = {record.id for record in found.reached}
    if meant is not None and ids != {record.id for record in meant.recent}:
        return True
    ahead = {record.id for record, _ in reached.changed}
    if ids < ahead and not (MARKS & clause.told or clause.spoken[-1].kind in MARKS):
        return True  # "no 62.5, and it was 7 reps" behind three sets
    lifts = {record.done.exercise for record, _ in reached.changed}
    whole = [record for record in context.recent if record.done.exercise in lifts]
    named = K.NAME in before.told and PLACES.isdisjoint(before.told) and K.SETS not in before.told
    return named and not _stands_ahead(before) and len(ahead) == 1 < len(whole)


def _meant_by_itself(context: Context, sets: Sequence[SetRecord]) -> Sequence[SetRecord]:
    """What "it" or "they" mean with nothing ahead of them."""
    return latest_of_it(context) if len(sets) == 1 else run_of_it(context)


def _of_that_lift(sets: Sequence[SetRecord], context: Context) -> Context | None:
    """The sets of a lift told ahead of a day or a unit, where it is not the latest: those logged together."""
    lifts = {record.done.exercise for record in sets}
    if context.recent[-1].done.exercise in lifts:
        return None
    of_it = tuple(record for record in context.recent if record.done.exercise in lifts and record.on == sets[-1].on)
    return replace(context, recent=tuple(replace(record, message=sets[-1].message) for record in of_it))


def _points_at_nothing(clause: Prepared) -> bool:
    """Whether something is told, and not of which sets."""
    pieces = in_full(clause)
    if not clause.told.isdisjoint(OWN_SUBJECT) or any(map(is_all, pieces)):
        return False
    if any(piece.role is Role.SETS for piece in pieces) or _stands_ahead(clause):
        return False
    denied = not clause.told.isdisjoint(DENYING)  # "62.5 not 60" is of the sets that have 60; "it was 62.5 not 60"
    return not denied or any(map(is_be, pieces[:PRONOUN_AND_VERB]))


def _tells_a_value(clause: Prepared) -> bool:
    """Whether it is of the sets told of, and not of a day, a unit or another lift, which is of all of a message."""
    of_a_day = not clause.told.isdisjoint(DAYS)
    return not of_a_day and not clause.told.isdisjoint(VALUES) and not renames(clause.spoken)


def _stands_ahead(clause: Prepared) -> bool:
    """ "the 60 was rpe 9": the number says which."""
    pieces = in_full(clause)
    verb = next((at for at, piece in enumerate(pieces) if is_be(piece)), 0)
    return any(piece.kind is K.NUMBER for piece in pieces[:verb])


def _is_of_more(clause: Prepared, sets: Sequence[SetRecord]) -> bool:
    """Whether the words are of more sets than the clause before: "they" behind one, "both" behind three."""
    if any(map(is_both, clause.spoken)):
        return len(sets) != PAIR
    words = [word for word, _ in spoken_words(clause.tokens)]
    return len(sets) == 1 and any_cued(words, PLURALS) and not any_cued(words, SINGULARS)

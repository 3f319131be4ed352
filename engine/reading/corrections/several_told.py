"""Several things put right in one message: "those were dumbbells, 25 not 60", "4 sets not 3, and that was yesterday".

message = correction ( cut | "and" ) correction [ ... ]      each of which would be one alone, if need be with the
                                                             words that begin the first: "that was incline, yesterday"

Each is worked out on what the one before it leaves. What two of them say of one number, one lift or one day of a set is
left to the rules for lists of parts, which know what "the 70 was 72.5 and the 72.5 was 75" means.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import fields, replace
from itertools import pairwise

from engine.catalogue.catalogue import Catalogue
from engine.reading.corrections.amid_talk import RENAMING, renames
from engine.reading.corrections.clauses import PLACES
from engine.reading.corrections.said_to_be import is_be
from engine.reading.days.day_starts import DATE_KINDS
from engine.reading.prepare import Prepared, prepare
from engine.reading.values import Context, Correction, NoSets
from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import DENYING, K
from engine.reading.words.phrasebook import phrasebook, spoken_words
from engine.reading.words.pieces import Piece, Role, kinds_in_order
from engine.reading.words.spoken_clauses import clauses_of
from engine.values.ids import SetId
from engine.values.sets import SetDone, SetRecord

Alone = Callable[[Prepared, Context, Catalogue], Correction | NoSets | None]
Span = tuple[int, int]
ANDS, MOVES = frozenset(("andword",)), frozenset(("moves",))
DENIED = frozenset((K.NUMBER, K.COUNT, K.NAME))
TOLD_BESIDE = DATE_KINDS | {K.DATE, K.NUMBER}
NOTHING = Correction()
FEWEST, MOST = 2, 3
"""So many things are put right in one message; more are a list, with rules of its own."""
MOST_CUT = 2 * MOST
"""So many clauses are looked at, those that tell nothing among them."""


def several_told(prepared: Prepared, context: Context, catalogue: Catalogue, alone: Alone) -> Correction | None:
    """All the changes in one; None where the message does not tell several. `alone` works one of them out."""
    if _words_that_say_so(prepared.spoken) < FEWEST:
        return None
    for told in _cut(prepared, context, catalogue):
        if all(_words_that_say_so(one.spoken) for one in told):
            found = _one_by_one(told, context, catalogue, alone)
            if found is not None:
                return found
    return None


def with_verb_shared(prepared: Prepared, context: Context, catalogue: Catalogue, alone: Alone) -> Correction | None:
    """The same, where the words that put right stand in the first clause alone: "that was incline and yesterday"."""
    if prepared.told.isdisjoint(RENAMING) or prepared.told.isdisjoint(TOLD_BESIDE):
        return None
    for first, *others in _cut(prepared, context, catalogue):
        head, of_one = _head(first)
        if head and not any(_words_that_say_so(one.spoken) for one in others):
            told = [first, *[prepare(f"{head} {one.cleaned}", context, catalogue) for one in others]]
            found = _one_by_one(told, context, catalogue, alone, of_the_same=not of_one)
            if found is not None:
                return found
    return None


def _words_that_say_so(pieces: Sequence[Piece]) -> int:
    """How many words put something right: "was", "only", and "not" between what it was and what it was not."""
    return sum(
        piece.kind is K.ONLY or is_be(piece) or (piece.kind in DENYING and at > 0 and kind_at(pieces, at + 1) in DENIED)
        for at, piece in enumerate(pieces)
    )


def _head(told: Prepared) -> tuple[str, bool]:
    """The words that put right in the first clause, empty for none; and whether each clause names its own lift, as in
    "move the squat to tuesday and the row to friday".
    """
    was = next((at for at in reversed(range(len(told.spoken))) if is_be(told.spoken[at])), None)
    if was is not None:
        named = any(piece.kind is K.NAME for piece in told.spoken[:was])
        return "" if named else told.cleaned[: told.spoken[was].end], False
    first = told.spoken[0]
    return (told.cleaned[: first.end] if is_cued(first.text, MOVES) else ""), True


def _cut(prepared: Prepared, context: Context, catalogue: Catalogue) -> Iterator[Sequence[Prepared]]:
    """The clauses of the message by each way to cut it: at its signs, and at one "and" or all of them."""
    signs = clauses_of(prepared.cleaned, spoken_words(prepared.tokens), phrasebook())
    joints = [(piece.start, piece.end) for piece in prepared.spoken if _joins(piece)]
    ways = [(), *([joint] for joint in joints[: MOST - 1]), joints if len(joints) > 1 else ()]
    for way in ways:
        spans = [span for one in signs for span in _parted(one, way)]
        clauses = [clause for start, end in spans if (clause := prepared.cleaned[start:end].strip(" .,"))]
        if len(clauses) > MOST_CUT:
            continue
        told = [one for clause in clauses if (one := prepare(clause, context, catalogue)).spoken]  # "💪" tells nothing
        in_a_list = any(_is_in_a_list(one.spoken, after.spoken) for one, after in pairwise(told))
        if FEWEST <= len(told) <= MOST and not in_a_list:
            yield told


def _is_in_a_list(before: Sequence[Piece], after: Sequence[Piece]) -> bool:
    """Whether the cut parts a list of numbers: "it was 8, 8 and 7"; "72.5 not 70 and 7 not 8" is none."""
    if before[-1].kind is not K.NUMBER or after[0].kind is not K.NUMBER:
        return False
    kinds = kinds_in_order(before)
    one = kinds.count(K.NUMBER) == 1 or kinds[-2] in DENYING
    return not one or kind_at(after, 1) not in DENYING


def _joins(piece: Piece) -> bool:
    """ "and", and "en" or "i", which are words of other languages, too."""
    return piece.kind is K.AND or is_cued(piece.text, ANDS)


def _parted(clause: Span, joints: Sequence[Span]) -> list[Span]:
    start, end = clause
    inside = [joint for joint in joints if start <= joint[0] and joint[1] <= end]
    return list(zip([start, *[to for _, to in inside]], [*[at for at, _ in inside], end], strict=True))


def _turn(told: Prepared) -> int:
    """Which of the clauses comes first: the lift, whose the other changes are; how many sets behind what they were, as
    one more is like the last; the day at the end, by which sets are met.
    """
    if renames(told.spoken) and K.NUMBER not in told.told:
        return 0
    if not told.told.isdisjoint(DATE_KINDS) or K.DATE in told.told:
        return 3
    return 2 if _counts_sets(told) else 1


def _counts_sets(told: Prepared) -> bool:
    return any(piece.kind is K.NUMBER and piece.role is Role.SETS for piece in told.spoken)


def _one_by_one(
    clauses: Sequence[Prepared], context: Context, catalogue: Catalogue, alone: Alone, *, of_the_same: bool = False
) -> Correction | None:
    """All the changes; `of_the_same`: none where they are not all of the same sets."""
    found = NOTHING
    for clause in sorted(clauses, key=_turn):
        standing = replace(context, recent=_as_left(context.recent, found))
        more = alone(clause, standing, catalogue)
        if not isinstance(more, Correction):
            return None
        joined = _together(context.recent, found, more)
        if joined is None or (of_the_same and found != NOTHING and _ids(found) != _ids(more)):
            return None
        found = joined
    if found.added and any(not PLACES.isdisjoint(clause.told) for clause in clauses):
        return None  # "4 sets not 3 and last was 4": of the last that stood, or of the one more
    return found


def _ids(found: Correction) -> set[SetId]:
    return {record.id for record in found.reached}


def _as_left(records: Sequence[SetRecord], found: Correction) -> tuple[SetRecord, ...]:
    """The sets as these changes leave them, those that were added aside."""
    done = {record.id: new for record, new in found.changed}
    days = {record.id: day for record, day in found.moved}
    left = set(found.removed)
    return tuple(
        replace(record, done=done.get(record.id, record.done), on=days.get(record.id, record.on))
        for record in records
        if record not in left
    )


def _together(records: Sequence[SetRecord], first: Correction, then: Correction) -> Correction | None:
    """Both, named by the sets as they stand; None where they say two things of one and the same."""
    days = {record.id for record, _ in first.moved}
    if first.added and (then.changed or then.removed):
        return None
    if (first.added and then.added) or any(record.id in days for record, _ in then.moved):
        return None
    before = {record.id: record for record in records}
    done = {record.id: new for record, new in first.changed}
    for record, new in then.changed:
        if record.id in done and _says_otherwise(before[record.id].done, done[record.id], new):
            return None
    done |= {record.id: new for record, new in then.changed}
    gone = [before[record.id] for record in (*first.removed, *then.removed)]
    return Correction(
        changed=_left_changed(before, done, {record.id for record in gone}),
        removed=tuple(gone),
        added=(*first.added, *then.added),
        moved=tuple((before[record.id], day) for record, day in (*first.moved, *then.moved)),
        pain=first.pain or then.pain,
    )


def _left_changed(
    before: dict[SetId, SetRecord], done: dict[SetId, SetDone], gone: set[SetId]
) -> tuple[tuple[SetRecord, SetDone], ...]:
    return tuple((before[id_], new) for id_, new in done.items() if id_ not in gone)


def _says_otherwise(before: SetDone, first: SetDone, then: SetDone) -> bool:
    """Whether the second change takes back what the first made of the set."""
    changed = {one.name for one in fields(SetDone) if getattr(first, one.name) != getattr(before, one.name)}
    if "exercise" in changed:
        changed -= {"load", "side"}  # as that lift counts them
    return any(getattr(then, name) != getattr(first, name) for name in changed)

"""Several things put right in one message: "those were dumbbells, 25 not 60", "4 sets not 3, and that was yesterday".

message = correction ( cut | "and" ) correction [ ... ]      each of which would be one alone, if need be with the
                                                             words that begin the first: "that was incline, yesterday"

Each is worked out on what the one before it leaves, sets that it adds among them: "4 sets not 3 and last was 4". What
two of them say of one number, one lift or one day of a set is left to the rules for lists of parts, which know what
"the 70 was 72.5 and the 72.5 was 75" means; where those find less than the clauses tell, nothing is changed.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from itertools import pairwise

from engine.catalogue.catalogue import Catalogue
from engine.reading.corrections.amid_talk import RENAMING, renames
from engine.reading.corrections.changes_together import as_left, together
from engine.reading.corrections.clauses import PLACES, Alone
from engine.reading.corrections.correcting import cue_at
from engine.reading.corrections.deletes import WEAK
from engine.reading.corrections.nothing_changed import unclear
from engine.reading.corrections.only_so_many import says_only
from engine.reading.corrections.parts import MOST_PARTS, is_all
from engine.reading.corrections.pointing_back import (
    OpenWhich,
    leaves_open,
    of_the_rest,
    pointing_back,
    tells_of_the_rest,
)
from engine.reading.corrections.said_to_be import in_full, is_be
from engine.reading.corrections.told_instead import slips_ahead, taken_back
from engine.reading.corrections.values_tied import (
    RATED,
    are_day_and_mark,
    is_a_place_with_its_number,
    is_an_effort,
    places_of_two_lifts,
    with_values_tied,
)
from engine.reading.corrections.words_that_put_right import head_of, words_that_say_so
from engine.reading.days.day_starts import DATE_KINDS
from engine.reading.prepare import Prepared, prepare
from engine.reading.values import Context, Correction, NoSets
from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import any_cued, is_cued
from engine.reading.words.kinds import DENYING, K
from engine.reading.words.phrasebook import phrasebook, spoken_words
from engine.reading.words.pieces import Piece, Role, kinds_in_order
from engine.reading.words.spoken_clauses import clauses_of
from engine.values.ids import SetId

Span = tuple[int, int]
ANDS = frozenset(("andword",))
SHARING = RENAMING | DATE_KINDS | {K.KG, K.LB, K.DATE}
TOLD_BESIDE = DATE_KINDS | {K.DATE, K.NUMBER}
NOTHING = Correction()
CUTS, REST = frozenset((K.COMMA, K.STOP, K.DASH, K.OTHER_SIGN)), frozenset(("remaining",))
FEWEST, MOST = 2, 3
"""So many things are put right in one message; more are a list, with rules of its own."""
MOST_CUT = 2 * MOST
"""So many clauses are looked at, those that tell nothing among them."""


def several_told(
    prepared: Prepared, context: Context, catalogue: Catalogue, alone: Alone
) -> Correction | NoSets | None:
    """All the changes in one; None where the message does not tell several. `alone` works one of them out."""
    if _said(prepared) < FEWEST:
        return None
    signs = clauses_of(prepared.cleaned, spoken_words(prepared.tokens), phrasebook())
    instead = taken_back(_clauses(prepared, signs, context, catalogue), prepared, context, catalogue, alone)
    if instead is not None:
        return instead
    for cut in _cut(prepared, context, catalogue):
        told = with_values_tied(cut, context, catalogue)
        if _counts_beside_a_bare_number(told):
            return unclear(prepared)
        found = _all_of(told, prepared, context, catalogue, alone)
        if found is not None:
            return found
    return None


def _all_of(
    told: Sequence[Prepared], prepared: Prepared, context: Context, catalogue: Catalogue, alone: Alone
) -> Correction | NoSets | None:
    """All the changes of these clauses; NoSets where it is open what one of them is of."""
    if len(told) < FEWEST or not _all_say_so(told) or _may_be_the_reason(told):
        return None
    try:
        found = _one_by_one(told, context, catalogue, alone)
    except OpenWhich:
        return unclear(prepared)
    if (
        found is None
        and (is_an_effort(told[0]) or _counts_sets(told[0]))
        and all(map(is_a_place_with_its_number, told[1:]))
    ):
        return unclear(prepared)  # "rpe 8, last set 5" behind one set, "4 sets, last one 6"
    return found


def _said(prepared: Prepared) -> int:
    """How many things are put right, as far as single words tell it: a slip ahead of a number puts one right."""
    said = words_that_say_so(prepared) + _takes_away(prepared)
    said += K.NUMBER in prepared.told and (bool(slips_ahead(prepared)) or _asks_to_be_made(prepared))
    said += tells_of_the_rest(prepared)
    if not prepared.told.isdisjoint(PLACES):
        said += not prepared.told.isdisjoint(DENYING)
        said += FEWEST * (prepared.spoken[0].kind in RATED)  # "rpe 8, last set 5 reps"
        said += FEWEST * (K.NAME not in prepared.told and _counts_sets(prepared))  # "did 4 sets, last one 6"
        said += FEWEST * places_of_two_lifts(prepared)  # "last bench 6, last squat 4"
        said += K.TIMES in prepared.told and K.NAME not in prepared.told  # "it was 4x8, last one 6"
        said += K.NAME not in prepared.told and says_only(prepared)  # "only did 2, last one 6"
    return said


def is_half_told(found: Correction, prepared: Prepared, context: Context, catalogue: Catalogue, alone: Alone) -> bool:
    """Whether a clause of the message tells more than was found: then none of it is taken."""
    if not _has_joints(prepared):
        return False
    for told in _cut(prepared, context, catalogue):
        apart = [alone(one, context, catalogue) for one in told]
        changes = [one for one in apart if isinstance(one, Correction)]
        others = [one for one, change in zip(told, apart, strict=True) if not isinstance(change, Correction)]
        if changes and any(_tells_more(one, away=_takes_away(told[0])) for one in others):
            return True
        whole = not others and all(map(_says_so, told))
        of_units = [one for one in changes if _is_of_a_unit(one)]
        if any(_lacks(found, one) for one in (changes if whole else of_units)):
            return True
        if of_units and not _is_of_a_unit(found, alone=False):
            return True  # "7 not 8, in lbs"
    return False


def begins_with_a_place(prepared: Prepared, context: Context, catalogue: Catalogue, alone: Alone) -> bool:
    """Whether what stands ahead of a cut puts one set right by itself: "last was 4, and dieser was rpe 9". Then it
    is no set more, whatever the words behind are.
    """
    if _is_of_a_numbered_set(prepared):
        return True
    if prepared.told.isdisjoint(PLACES) or not _has_joints(prepared) or not words_that_say_so(prepared):
        return False
    for first, *_ in _cut(prepared, context, catalogue):
        told = _is_of_a_place(first) and K.TIMES not in first.told and any(map(is_be, in_full(first)))
        if told and isinstance(alone(first, context, catalogue), Correction):
            return True
    return False


def _is_of_a_numbered_set(prepared: Prepared) -> bool:
    """ "set 1 was just the bar", "set 2 only half reps": of that set, and no set of one rep."""
    pieces = in_full(prepared)
    numbered = [piece.kind for piece in pieces[:2]] == [K.SETS, K.NUMBER] and pieces[1].role is Role.BARE
    said = any(piece.kind is K.ONLY or is_be(piece) for piece in pieces[2:])
    return numbered and said and K.NUMBER not in [piece.kind for piece in pieces[2:]]


def _says_so(told: Prepared) -> bool:
    return bool(words_that_say_so(told)) or _takes_away(told) or _asks_to_be_made(told)


def _asks_to_be_made(told: Prepared) -> bool:
    """ "make the last 72.5"."""
    words = [word for word, _ in spoken_words(told.tokens)]
    return K.NUMBER in told.told and bool(cue_at(words, 0, phrasebook().cues["make"]))


def _all_say_so(told: Sequence[Prepared]) -> bool:
    """Whether each clause puts something right; "last 3" does, beside one that counts: "5 sets not 4, last 3"."""
    counted = any(K.NUMBER in one.told and (not one.told.isdisjoint(DENYING) or says_only(one)) for one in told)
    if all(map(is_a_place_with_its_number, told)) and all(K.NAME in one.told for one in told):
        return True
    placed = counted or is_an_effort(told[0]) or _counts_alone(told[0]) or _restates(told[0])

    return all(
        _says_so(one)
        or (at > 0 and tells_of_the_rest(one))
        or (placed and is_a_place_with_its_number(one))
        or (at == 0 and (is_an_effort(one) or _is_slipped(one) or _counts_alone(one)))
        for at, one in enumerate(told)
    )


def _restates(told: Prepared) -> bool:
    """ "it was 4x8", "sorry 4x8"."""
    return K.TIMES in told.told and (any(map(is_be, in_full(told))) or bool(slips_ahead(told)))


def _counts_alone(told: Prepared) -> bool:
    """ "did 4 sets"; "4 sets of 8 at 50" tells sets of its own."""
    numbers = sum(piece.kind is K.NUMBER for piece in told.spoken)
    return numbers == 1 and _counts_sets(told) and told.told.isdisjoint((K.AT, K.WITH, K.ANOTHER, K.MORE))


def _is_slipped(told: Prepared) -> bool:
    return K.NUMBER in told.told and bool(slips_ahead(told))


def _has_joints(prepared: Prepared) -> bool:
    return not prepared.told.isdisjoint(CUTS) or any(map(_joins, prepared.spoken))


def _tells_more(told: Prepared, *, away: bool) -> bool:
    """Whether the clause is of other sets, or of one more: "the rest were 75", "one more bench", "and last bench" of
    what is to go.
    """
    if away and K.NAME in told.told and not told.told.isdisjoint(PLACES) and K.NUMBER not in told.told:
        return True
    words = [word for word, _ in spoken_words(told.tokens)]
    numbered = not told.told.isdisjoint((K.NUMBER, K.EFFORT)) and any_cued(words, REST) and any(map(is_be, told.spoken))
    return numbered or (K.ANOTHER in told.told and K.NAME in told.told)


def _is_of_a_unit(told: Correction, *, alone: bool = True) -> bool:
    """ "it was in lbs and 7 reps": the unit of the sets, whatever the other clause is; `alone`: and not their loads."""
    loads = [(record.done.load, new.load) for record, new in told.changed]
    changed = [(old, new) for old, new in loads if old and new and old.unit is not new.unit]
    return any(old.amount == new.amount or not alone for old, new in changed)


def _lacks(found: Correction, told: Correction) -> bool:
    """Whether something of what is told is not in what was found."""
    changed = {record.id for record, _ in told.changed} - {record.id for record, _ in found.changed}
    moved = {record.id for record, _ in told.moved} - {record.id for record, _ in found.moved}
    removed = {record.id for record in told.removed} - {record.id for record in found.removed}
    return bool(changed or moved or removed or (told.added and not found.added))


def _may_be_the_reason(told: Sequence[Prepared]) -> bool:
    """ "delete the last one, it was yesterday": why it is to go, or what the others were."""
    away = [_takes_away(one) for one in told]
    return any(away) and not all(gone or _points(one) for one, gone in zip(told, away, strict=True))


def _points(told: Prepared) -> bool:
    return not told.told.isdisjoint(PLACES | {K.NAME}) or any(map(is_all, told.spoken))


def _counts_beside_a_bare_number(told: Sequence[Prepared]) -> bool:
    """ "bench was 4 sets and squat was 2": two sets, or two reps of the last."""
    named = [one for one in told if K.NAME in one.told]
    counted = [_counts_sets(one) for one in named]
    bare = [_tells_a_bare_number(one) for one in named]
    return len(named) > 1 and any(counted) and any(bare)


def _tells_a_bare_number(told: Prepared) -> bool:
    numbers = [piece for piece in told.spoken if piece.kind is K.NUMBER]
    alone = len(numbers) == 1 and PLACES.isdisjoint(told.told)
    return alone and numbers[0].role is Role.BARE and numbers[0].value <= MOST_PARTS


def with_verb_shared(prepared: Prepared, context: Context, catalogue: Catalogue, alone: Alone) -> Correction | None:
    """The same, where the words that put right stand in the first clause alone: "that was incline and yesterday"."""
    if prepared.told.isdisjoint(SHARING) or prepared.told.isdisjoint(TOLD_BESIDE):
        return None
    for first, *others in _cut(prepared, context, catalogue):
        head, of_one = head_of(first)
        if _is_of_a_place(first) and any(map(_is_of_a_day, others)):
            return None  # "last was 4, yesterday": of the last alone, or of what was logged
        if head and not any(words_that_say_so(one) for one in others):
            told = [first, *[prepare(f"{head} {one.cleaned}", context, catalogue) for one in others]]
            try:
                found = _one_by_one(told, context, catalogue, alone, of_the_same=not of_one)
            except OpenWhich:
                continue
            if found is not None:
                return found
    return None


def _is_of_a_place(told: Prepared) -> bool:
    """Whether a value of one of the sets is told: "last was 4"."""
    return not told.told.isdisjoint(PLACES) and K.NUMBER in told.told


def _is_of_a_day(told: Prepared) -> bool:
    return not told.told.isdisjoint(DATE_KINDS) or K.DATE in told.told


def _cut(prepared: Prepared, context: Context, catalogue: Catalogue) -> Iterator[Sequence[Prepared]]:
    """The clauses of the message by each way to cut it: at its signs, and at one "and" or all of them."""
    signs = clauses_of(prepared.cleaned, spoken_words(prepared.tokens), phrasebook())
    joints = [(piece.start, piece.end) for piece in prepared.spoken if _joins(piece)]
    joints += [(b.start, b.start) for a, b in pairwise(prepared.spoken) if are_day_and_mark(a, b)]
    ways: list[Sequence[Span]] = [(), *([joint] for joint in joints[: MOST - 1]), joints if len(joints) > 1 else ()]
    for way in ways:
        told = _clauses(prepared, [span for one in signs for span in _parted(one, way)], context, catalogue)
        if told:
            yield told


def _clauses(prepared: Prepared, spans: Sequence[Span], context: Context, catalogue: Catalogue) -> Sequence[Prepared]:
    """The clauses; none where they are too few or too many, or parts of a list."""
    clauses = [clause for start, end in spans if (clause := prepared.cleaned[start:end].strip(" .,"))]
    if len(clauses) > 1 and clauses[0].lower() in phrasebook().cues["slip"]:
        clauses[:2] = [", ".join(clauses[:2])]
    if len(clauses) > MOST_CUT:
        return ()
    told = [one for clause in clauses if (one := prepare(clause, context, catalogue)).spoken]  # "💪" tells nothing
    in_a_list = any(_is_in_a_list(one.spoken, after.spoken) for one, after in pairwise(told))
    return told if FEWEST <= len(told) <= MOST and not in_a_list else ()


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
    """Which of the clauses comes first: the lift, whose the other changes are; how many sets ahead of places among
    them; what goes behind what was, as places are those that were told; the day at the end, by which sets are met.
    """
    if renames(told.spoken) and K.NUMBER not in told.told:
        return 0
    if _is_of_a_day(told):
        return 4
    if _takes_away(told):
        return 3
    return 1 if _counts_sets(told) else 2


def _takes_away(told: Prepared) -> bool:
    """Whether sets are asked away, or said not to count: "delete the last", "the last didn't count", "no third set"."""
    words, cues = [word for word, _ in spoken_words(told.tokens)], phrasebook().cues
    if cue_at(words, 0, cues["delete"]) and words[0] not in WEAK:
        return True
    kinds = kinds_in_order(told.spoken)
    if any(a is K.DENY and b is K.ORDINAL for a, b in pairwise(kinds)):
        return True
    return any(cue_at(words, at, cues["undone"] | cues["leftundone"]) for at in range(len(words)))


def _counts_sets(told: Prepared) -> bool:
    return any(piece.kind is K.NUMBER and piece.role is Role.SETS for piece in told.spoken)


def _one_by_one(
    clauses: Sequence[Prepared], context: Context, catalogue: Catalogue, alone: Alone, *, of_the_same: bool = False
) -> Correction | None:
    """All the changes; `of_the_same`: none where they are not all of the same sets.

    Errors: OpenWhich where a clause points back, and not clearly at which sets.
    """
    found, apart = NOTHING, dict[int, Correction]()
    for at in sorted(range(len(clauses)), key=lambda at: _turn(clauses[at])):
        standing = replace(context, recent=as_left(context.recent, found))
        ahead = [apart[place] for place in range(at) if place in apart]
        rest = of_the_rest(clauses[at], clauses[at - 1], ahead, standing, catalogue)
        meant = rest[1] if rest else pointing_back(clauses[at], apart.get(at - 1), standing)
        more = alone(rest[0] if rest else clauses[at], meant or standing, catalogue)
        if not isinstance(more, Correction):
            return None
        if leaves_open(clauses[at], more, meant, before=clauses[at - 1], reached=apart.get(at - 1), context=standing):
            raise OpenWhich
        joined = together(context.recent, found, more)
        if joined is None or (of_the_same and found != NOTHING and _ids(found) != _ids(more)):
            return None
        found, apart[at] = joined, more
    return found


def _ids(found: Correction) -> set[SetId]:
    return {record.id for record in found.reached}

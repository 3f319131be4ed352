"""Corrections in words: what they change among the sets that stand.

correction = slip value | value slip | value "i mean" | new "not" old | part "was" value | "make" part value
           | "only" NUMBER | "delete" part | "move it to" day | part effort | "that was" ( name | equipment | unit )
           | "other way round"

Rules: "X not Y" changes the sets that have Y; a bare number is the reps of the latest set, one with a unit, or that
only fits a load, the load of its group; parts count within the exercise of the latest message, or the one named.
Nothing is added but sets of a larger count. What cannot be worked out changes nothing, and is said to be unclear.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace

from engine.catalogue.catalogue import Catalogue
from engine.reading.corrections.additions import adds_a_set, is_long_ago, reaches_back, takes_from_long_ago
from engine.reading.corrections.all_but import all_but_one
from engine.reading.corrections.all_lifts import all_otherwise, leaves_open_which
from engine.reading.corrections.amid_talk import amid_talk, without_gear
from engine.reading.corrections.changing_nothing import is_told_of_what_stands, that_changes_nothing
from engine.reading.corrections.clauses import PLACES
from engine.reading.corrections.correcting import Told, told_of
from engine.reading.corrections.counts import counted
from engine.reading.corrections.days import moved
from engine.reading.corrections.days_apart import moved_apart
from engine.reading.corrections.days_named import Named, day_named, days_named
from engine.reading.corrections.deletes import (
    NOT_DELETED,
    asks_away,
    deleted,
    deletes,
    doubled,
    is_cue,
    names_the_whole_day,
)
from engine.reading.corrections.done_so_often import done_so_often
from engine.reading.corrections.each_hand import halved, held_otherwise
from engine.reading.corrections.held import done_otherwise
from engine.reading.corrections.hours_told import speaks_of_an_hour
from engine.reading.corrections.kinds_of_sets import were_of_a_kind
from engine.reading.corrections.left_open import left_open, points_and_dates
from engine.reading.corrections.left_undone import left_undone
from engine.reading.corrections.load_moved import is_by_an_open_amount, without_move
from engine.reading.corrections.loaded import added_later, loaded, told_behind
from engine.reading.corrections.marks import marked_later
from engine.reading.corrections.misspelt import respelt
from engine.reading.corrections.names import new_exercise, renamed_and_restated, swapped
from engine.reading.corrections.nothing_changed import (
    LOAD_OR_REPS,
    NONE_OF_THAT_SORT,
    NONE_THAT_DAY,
    TOLD_ROUGHLY,
    WHICH_DAY,
    nothing_changed,
    unclear,
)
from engine.reading.corrections.numbers_about_it import numbers_about_it
from engine.reading.corrections.of_each import of_each
from engine.reading.corrections.only_so_many import counts_only_so_many
from engine.reading.corrections.open_numbers import is_of_an_open_number
from engine.reading.corrections.parts import part_told
from engine.reading.corrections.placed_and_told import placed_and_told
from engine.reading.corrections.pointed_away import pointed_away
from engine.reading.corrections.renamed_apart import renamed_apart, tells_names_apart
from engine.reading.corrections.renamed_at_load import is_of_another_lift, renamed_at_load
from engine.reading.corrections.rep_missed import rep_missed
from engine.reading.corrections.reps_away import reps_taken
from engine.reading.corrections.said_to_be import is_be
from engine.reading.corrections.set_or_one_more import set_or_one_more
from engine.reading.corrections.sets_described import sets_described
from engine.reading.corrections.sets_spared import without_sets_spared
from engine.reading.corrections.several_told import (
    begins_with_a_place,
    is_half_told,
    several_told,
    with_verb_shared,
)
from engine.reading.corrections.shifted import shifted
from engine.reading.corrections.sides import sides_told
from engine.reading.corrections.spared import all_besides, is_half, spared_of
from engine.reading.corrections.the_ones import none_of_that_sort
from engine.reading.corrections.told_again_with_a_day import told_again_with_a_day, without_day
from engine.reading.corrections.told_by_parts import reps_by_parts, told_by_parts
from engine.reading.corrections.told_in_part import is_told_in_part
from engine.reading.corrections.typed_wrong import with_what_was_typed
from engine.reading.corrections.unit_apart import unit_is_open, with_unit_tied
from engine.reading.corrections.units import counts_in_a_unit, new_unit
from engine.reading.corrections.unmarked import unmarked
from engine.reading.corrections.value_first import with_value_behind
from engine.reading.corrections.values import (
    TALK,
    new_values,
)
from engine.reading.marks.pain import tells_pain
from engine.reading.prepare import Prepared, prepare
from engine.reading.requests.again import counts_steps, several_steps
from engine.reading.values import Context, Correction, NoSets
from engine.reading.words.kinds import K

REQUESTS = frozenset(("redo", "erase", "undo"))
WAYS: tuple[Callable[[Told], Correction | None], ...] = (
    doubled,
    unmarked,
    reps_taken,
    left_undone,
    deleted,
    pointed_away,
    moved_apart,
    moved,
    renamed_apart,
    swapped,
    new_unit,
    all_otherwise,
    renamed_at_load,
    shifted,
    counted,
    done_so_often,
    loaded,
    added_later,
    told_behind,
    halved,
    held_otherwise,
    were_of_a_kind,
    marked_later,
    renamed_and_restated,
    new_exercise,
    done_otherwise,
    new_values,
)

OF_ONE_NAME = (new_exercise, swapped)


def correction_of(prepared: Prepared, context: Context, catalogue: Catalogue) -> Correction | NoSets | None:
    """The change asked for, worked out on the sets that stand; NoSets that says so where a correction is not clear.

    None where the message is no correction.
    """
    typed = with_what_was_typed(prepared, context, catalogue) if context.recent else None
    found = _corrected(typed or prepared, context, catalogue)
    if typed is None or isinstance(found, Correction):
        return found
    plain = _corrected(prepared, context, catalogue)
    return unclear(prepared) if isinstance(plain, Correction) else plain


def _corrected(prepared: Prepared, context: Context, catalogue: Catalogue) -> Correction | NoSets | None:
    """The change asked for, where sets and lifts that are to stay as they are do not stand in its way."""
    but = without_sets_spared(prepared, context, catalogue)
    if but is not None:
        found = _corrected(but[0], but[1], catalogue) if but[1] is not None else None
        return found if isinstance(found, Correction) else unclear(prepared)
    spared = spared_of(prepared, context, catalogue)
    if spared is None:
        return _put_right(prepared, context, catalogue)
    found = all_besides(spared, catalogue) or _put_right(spared.rest, spared.context, catalogue)
    if isinstance(found, Correction) and not is_half(found, spared):
        return found
    plain = _put_right(prepared, context, catalogue)
    return unclear(prepared) if isinstance(plain, Correction) and not spared.denied else plain


def _put_right(prepared: Prepared, context: Context, catalogue: Catalogue) -> Correction | NoSets | None:
    prepared = with_unit_tied(with_value_behind(prepared, context, catalogue), context, catalogue)
    if adds_a_set(prepared) or is_long_ago(prepared, context):
        return None
    sure = _sure(prepared, context)
    if sure is not None:
        return sure
    bare = without_gear(prepared, context, catalogue)
    several = _told_of_several(bare, context, catalogue)
    earlier = _of_an_earlier_day(prepared, context, catalogue) if several is None else None
    if earlier is not None or (several is None and _tells_new_sets(prepared, context)):
        return earlier
    if not context.recent:
        return None
    meant = several or _meant(bare, context, catalogue)
    if not isinstance(meant, Correction):
        return meant or _begun(prepared, context, catalogue)
    if reaches_back(meant, prepared, context):
        return None
    if meant is not several and is_half_told(meant, bare, context, catalogue, _told_plainly):
        return unclear(prepared)
    return nothing_changed(prepared, WHICH_DAY) if takes_from_long_ago(meant, prepared, context) else meant


def _begun(prepared: Prepared, context: Context, catalogue: Catalogue) -> NoSets | None:
    """What is said where a correction is told that nothing came of, and no new set."""
    begun = points_and_dates(prepared, context) or begins_with_a_place(prepared, context, catalogue, _told_plainly)
    begun = begun or counts_only_so_many(prepared, context, catalogue, _told_plainly)
    return unclear(prepared) if begun else None


def _told_of_several(prepared: Prepared, context: Context, catalogue: Catalogue) -> Correction | NoSets | None:
    """What is told of several lifts, of all sets but one, or of several things at once."""
    for way in (of_each, all_but_one, several_told):
        if (found := way(prepared, context, catalogue, _told_plainly)) is not None:
            return found
    return told_again_with_a_day(prepared, context, catalogue)


def _sure(prepared: Prepared, context: Context) -> Correction | NoSets | None:
    """What a few shapes tell by themselves, or leave open."""
    if context.recent and unit_is_open(prepared):
        return nothing_changed(prepared, LOAD_OR_REPS)
    if none_of_that_sort(prepared, context):
        return nothing_changed(prepared, NONE_OF_THAT_SORT)
    for rule in (sets_described, numbers_about_it, sides_told, rep_missed):
        if (described := rule(prepared, context)) is not None:
            return described
    if context.recent and is_told_in_part(prepared):
        return unclear(prepared)
    return left_open(prepared, context) or set_or_one_more(prepared, context) or placed_and_told(prepared, context)


def _meant(prepared: Prepared, context: Context, catalogue: Catalogue) -> Correction | NoSets | None:
    """What is put right, told plainly, amid talk, or with how a load was moved."""
    found = _told_plainly(prepared, context, catalogue)
    if isinstance(found, NoSets) and found.why == TOLD_ROUGHLY:
        return found
    if not isinstance(found, Correction):
        found = with_verb_shared(prepared, context, catalogue, _told_plainly) or found
    bare = None if isinstance(found, Correction) else amid_talk(prepared, context, catalogue)
    again = _told_plainly(bare, context, catalogue) if bare is not None else None
    if isinstance(again, Correction):
        return replace(again, pain=tells_pain(prepared.pieces))
    if not isinstance(found, Correction) and is_by_an_open_amount(prepared, context):
        return nothing_changed(prepared, LOAD_OR_REPS)
    moved_load = None if isinstance(found, Correction) else without_move(prepared, context, catalogue)
    placed = _told_plainly(moved_load, context, catalogue) if moved_load is not None else None
    return placed if isinstance(placed, Correction) else found or again


def _told_plainly(prepared: Prepared, context: Context, catalogue: Catalogue) -> Correction | NoSets | None:
    told = told_of(prepared, context, catalogue)
    if told is None or _is_request(told) or speaks_of_an_hour(told):
        return None
    if (nothing := is_told_of_what_stands(told, prepared)) is not None:
        return nothing
    other = _respelt(prepared, context, catalogue)
    found = _worked_out(other) if other is not None else None
    if found is None:
        found = _worked_out(told)
    if found is None and other is not None:
        told = other
    if found is not None and _is_of_another_day(found, days_named(prepared, context)):
        return unclear(prepared, NONE_THAT_DAY)
    if found is not None and is_of_an_open_number(found, told):
        return nothing_changed(prepared, TOLD_ROUGHLY)
    return found or that_changes_nothing(told, prepared)


def _is_of_another_day(found: Correction, named: Sequence[Named]) -> bool:
    """Whether a day is named and the sets reached are of others: "the squat on monday was 101" is no word on Friday's.

    A set that moves to the day named is of another, as it should be.
    """
    days = {one.day for one in named}
    return bool(days) and not found.moved and any(record.on not in days for record in found.reached)


def _of_an_earlier_day(prepared: Prepared, context: Context, catalogue: Catalogue) -> Correction | NoSets | None:
    """ "yesterday's bench was 85", "delete monday's squat": one new number for the sets that stand on that day, or
    those sets away; NoSets that says so where none stand on it, so that a correction never makes a new set.
    """
    day = day_named(prepared, context)
    told = without_day(prepared, day, context, catalogue) if day is not None else None
    if day is None or told is None or not (_tells_what_was(told, prepared) or _asks_away(told)):
        return None
    recent = tuple(one for one in context.recent if one.on == day.day)
    then = replace(told, context=replace(context, recent=recent))
    found = _reached_then(then) if recent else None
    plain = (_is_of_sets(told) or _is_of_a_place(told)) and (not recent or deletes(told))
    return found or (unclear(prepared, NONE_THAT_DAY) if plain else None)


def _reached_then(told: Told) -> Correction | None:
    """What the message changes among the sets of the day that it names."""
    if _asks_away(told):
        return Correction(removed=told.context.recent) if names_the_whole_day(told) else _worked_out(told)
    named = any(piece.kind is K.NAME for piece in told.pieces)
    return _worked_out(told) if named or part_told(told.pieces, told.context).points else None


def _tells_new_sets(prepared: Prepared, context: Context) -> bool:
    """ "squat on monday was 100 for 5", where no squat stands on Monday: the whole of a set, and nothing to correct."""
    day = day_named(prepared, context)
    kinds = [piece.kind for piece in prepared.pieces]
    names = {name for piece in prepared.pieces if piece.kind is K.NAME for name in piece.names}
    if day is None or K.NOT in kinds or not names or kinds.count(K.NUMBER) < 2:
        return False
    return not any(one.on == day.day and one.done.exercise in names for one in context.recent)


def _tells_what_was(told: Told, prepared: Prepared) -> bool:
    numbers = sum(piece.kind is K.NUMBER for piece in prepared.pieces)
    one = numbers == 1 or any(piece.kind is K.NOT for piece in prepared.pieces)
    return one and any(map(is_be, told.pieces))


def _asks_away(told: Told) -> bool:
    return bool(told.words) and asks_away(told) and not told.kinds() & NOT_DELETED


def _is_of_a_place(told: Told) -> bool:
    """ "monday, last was 7": what one of the sets was, and none of that day."""
    part = part_told(told.pieces, told.context)
    plain = all(piece.kind in TELLING_A_PLACE or is_be(piece) for piece in told.pieces)
    valued = any(piece not in part.used for piece in told.numbers())
    return plain and valued and bool(part.places) and any(map(is_be, told.pieces))


TELLING_A_PLACE = PLACES | {K.FILLER, K.NUMBER, K.COMMA, K.STOP, K.SETS, K.REPS, K.KG, K.LB}


def _is_of_sets(told: Told) -> bool:
    """Whether a lift is named, and nothing but what a correction of it is told with: "squat was 4 reps"."""
    kinds = {piece.kind for piece in told.pieces if not is_cue(piece, told)}
    return K.NAME in kinds and not kinds & (TALK | {K.TIMES, K.QUESTION})


LATEST_CHANGE = frozenset(("undo last", "undo the last", "undo last one", "undo the last one", "undo last change"))
"""What takes back the latest change; "undo the last set" is of a set."""


def _is_request(told: Told) -> bool:
    """ "put it back" and "delete everything" are no corrections; "delete the last set" is."""
    if counts_steps(told.pieces) and several_steps(told.words, told.pieces) is not None:
        return True
    names = {told.book.said[phrase] for phrase in told.book.slips.mended(told.words, told.book.said)}
    if "undo" in names and " ".join(told.words) in LATEST_CHANGE:
        return True
    if "undo" in names:
        return not part_told(told.pieces, told.context).points
    return bool(names & REQUESTS)


def _worked_out(told: Told) -> Correction | None:
    if reps_by_parts(told):
        return told_by_parts(replace(told, changes={}, removed=[], added=[], pointed=[]))
    if leaves_open_which(told):
        return None
    other_lift, apart = is_of_another_lift(told) or counts_in_a_unit(told), tells_names_apart(told)
    for way in WAYS:
        if (other_lift and way is new_values) or (apart and way in OF_ONE_NAME):
            return None
        try:
            found = way(replace(told, changes={}, removed=[], added=[], pointed=[]))
        except ValueError:  # a set or a load that cannot be: nothing is changed
            return None
        if found is not None:
            return found
    return None


def _respelt(prepared: Prepared, context: Context, catalogue: Catalogue) -> Told | None:
    text = respelt(prepared, catalogue)
    return told_of(prepare(text, context, catalogue), context, catalogue) if text else None

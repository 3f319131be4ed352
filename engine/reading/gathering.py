"""Days and marks gathered from the pieces of a message, and counts put to what the words beside them tell."""

from __future__ import annotations

from engine.reading.days.dated import dated
from engine.reading.days.headed_days import opens_plainly
from engine.reading.days.headings import without_days_counted, without_sessions_headed
from engine.reading.days.week_headings import with_weeks
from engine.reading.marks.announced_ones import with_ones_announced
from engine.reading.marks.breaths import with_breaths
from engine.reading.marks.compared import with_compared, without_more_than
from engine.reading.marks.counted_runs import with_counted_runs
from engine.reading.marks.counts_behind_sets import with_counts_behind_sets
from engine.reading.marks.counts_described import SAID_OF_A_COUNT, with_counts_joined
from engine.reading.marks.drops_told import with_drops_told
from engine.reading.marks.every_minute import with_every_minute
from engine.reading.marks.excepted_sets import with_excepted_sets
from engine.reading.marks.felt import with_felt, with_rated
from engine.reading.marks.hours_beside import with_hour_ahead, with_hours_beside
from engine.reading.marks.loads_lowered import with_loads_lowered
from engine.reading.marks.loads_spoken_of import with_failed_single, with_load_spoken_of, without_loads_told_twice
from engine.reading.marks.loads_to_failure import AS_OFTEN, with_loads_to_failure
from engine.reading.marks.made_of_tries import with_tries_in_doubt
from engine.reading.marks.marks import holds_odd_numbers, without_marks
from engine.reading.marks.more_sets import with_more_sets
from engine.reading.marks.named_sets import SETS_NAMED, with_named_sets
from engine.reading.marks.parted_numbers import with_parted_numbers
from engine.reading.marks.places_counted import with_places_counted
from engine.reading.marks.planned_told import PLANNING, with_planned_told, with_sets_got
from engine.reading.marks.progress_told import with_progress_told
from engine.reading.marks.reasons_behind import with_reasons
from engine.reading.marks.relative_loads import with_relative_loads, with_steps_up, without_counts_compared
from engine.reading.marks.reps_of_all_loads import with_reps_of_all_loads
from engine.reading.marks.reps_perhaps import with_reps_counted, with_reps_of_each
from engine.reading.marks.restated_pairs import with_restated_pairs
from engine.reading.marks.rests_between import with_rests_between
from engine.reading.marks.scheme_headings import without_scheme_headings
from engine.reading.marks.sessions_counted import without_sessions_counted
from engine.reading.marks.sets_called_warm_ups import with_sets_called_warm_ups
from engine.reading.marks.sets_of_a_lift import with_counts_in_doubt, without_of_a_lift
from engine.reading.marks.sets_of_another_time import without_sets_of_another_time
from engine.reading.marks.sets_shared_out import MAY_SHARE, with_sets_shared_out
from engine.reading.marks.things_held import with_things_held
from engine.reading.marks.times_past import with_times_past
from engine.reading.marks.told_of_one import with_results_of_one
from engine.reading.marks.warmed_up import without_warm_ups_told
from engine.reading.marks.weighted_from_there import with_weight_in_doubt
from engine.reading.naming import PLAINLY_SETS
from engine.reading.values import Context
from engine.reading.words.kinds import K
from engine.reading.words.pieces import ROLE, Piece, Role, kinds_of

SAYING_EACH = frozenset((K.FILLER, K.EACH))
SAYING = frozenset((K.FILLER, K.PLAIN))
TELLING_STEPS = frozenset((K.NOTE, K.PLAIN, K.MORE, K.ADDED, K.ALTERED))


def gathered(pieces: list[Piece], kinds: set[K], context: Context) -> list[Piece]:
    """The pieces, which are of these kinds, with days and marks gathered, and without numbers that are no sets."""
    plain = kinds <= PLAINLY_SETS and pieces and (pieces[0].kind is K.NAME or opens_plainly(pieces[0]))
    if plain and not holds_odd_numbers(pieces, kinds):
        return pieces  # most messages tell sets and nothing else
    return gathered_with_care(with_hour_ahead(pieces) if kinds <= PLAINLY_SETS else pieces, kinds, context)


def gathered_with_care(pieces: list[Piece], kinds: set[K], context: Context) -> list[Piece]:
    """The same, for pieces of all kinds."""
    if not kinds.isdisjoint(MAY_TELL_A_TIME_PAST):
        pieces = with_times_past(pieces, kinds, context.now.date() if context.now else None)
        kinds = kinds_of(pieces)
    if K.LAST_TIME in kinds:
        pieces = with_relative_loads(pieces)
        kinds = kinds_of(pieces)
    if K.NOT_DATE in kinds and K.MORE in kinds:
        pieces = without_counts_compared(pieces)
        kinds = kinds_of(pieces)
    pieces = with_progress_told(pieces) if K.NUMBER in kinds else pieces
    pieces = _with_counts_settled(with_things_held(pieces, kinds), kinds, context)
    pieces = _without_comparisons(pieces, kinds)
    if not kinds.isdisjoint(NAMING_A_WEEK) and (K.WEEKDAY in kinds or K.LINE in kinds):
        pieces = with_weeks(pieces, context.now.date() if context.now else None)
        kinds = kinds_of(pieces)
    pieces = with_sets_got(pieces) if K.GOT in kinds else pieces
    pieces = with_weight_in_doubt(pieces) if K.ADDED in kinds else pieces
    pieces = with_reps_counted(pieces) if K.NUMBER in kinds and not kinds.isdisjoint(SAYING) else pieces
    pieces = with_reps_of_each(pieces) if K.COMMA in kinds and not kinds.isdisjoint(SAYING_EACH) else pieces
    pieces = with_results_of_one(pieces if kinds.isdisjoint(PLANNING) else with_planned_told(pieces), kinds)
    if not kinds.isdisjoint(TELLING_STEPS):
        pieces = with_steps_up(pieces)
    pieces = _without_days_and_hours(pieces, kinds)
    if K.WARMUP in kinds:
        pieces = without_warm_ups_told(with_sets_called_warm_ups(pieces))
        kinds = kinds_of(pieces)
    pieces, kinds = without_sets_of_another_time(pieces, kinds)
    told = dated(pieces, kinds, context)
    return without_marks(told, kinds if told is pieces else kinds_of(told))


def _without_days_and_hours(pieces: list[Piece], kinds: set[K]) -> list[Piece]:
    """The pieces, which were of these kinds, without numbers of sessions, days and hours told beside sets."""
    if not kinds.isdisjoint(MAY_TELL_AN_HOUR):
        pieces = without_sessions_headed(with_hours_beside(pieces))
    if kinds.isdisjoint(MAY_COUNT_DAYS):
        return pieces
    return without_scheme_headings(without_days_counted(with_every_minute(pieces)))


def _with_counts_settled(pieces: list[Piece], kinds: set[K], context: Context) -> list[Piece]:
    """The pieces, which are of these kinds, with counts of sets put to the reps that the words beside them tell."""
    if K.DROP in kinds:
        pieces = with_loads_lowered(pieces)
    if K.NOTE in kinds or K.DROP in kinds:
        pieces = with_drops_told(pieces)
    if not kinds.isdisjoint(AS_OFTEN):
        pieces = with_loads_to_failure(pieces)
    if not kinds.isdisjoint(BREATHING) or Role.NOT_A_SET in map(ROLE, pieces):
        pieces = with_breaths(pieces)
    if not kinds.isdisjoint(DESCRIBING):
        pieces = with_ones_announced(pieces)
    pieces = with_tries_in_doubt(pieces, kinds)
    pieces = with_places_counted(pieces, kinds)
    pieces = without_sessions_counted(with_failed_single(pieces, context), kinds)
    if K.MORE in kinds or K.ANOTHER in kinds:
        pieces = with_more_sets(pieces, context)
    pieces = with_parted_numbers(with_rests_between(pieces), kinds)
    if not kinds.isdisjoint(SETS_NAMED):
        pieces = with_named_sets(pieces, kinds)
        kinds = kinds_of(pieces)
    return _with_counts_told(pieces, kinds, context)


def _with_counts_told(pieces: list[Piece], kinds: set[K], context: Context) -> list[Piece]:
    """The pieces, which are of these kinds, with the names of reps and the counts of sets put to what they count."""
    if K.COUNT in kinds and K.TIMES in kinds:
        pieces = with_counts_behind_sets(pieces)
    if K.COUNT in kinds and not kinds.isdisjoint(SAID_OF_A_COUNT):
        pieces = with_counts_joined(pieces)
    if K.COUNT in kinds:
        pieces = with_counted_runs(pieces, context)
    pieces = with_excepted_sets(pieces, kinds)
    worded = K.COUNT in kinds or K.SETS in kinds or Role.SETS in map(ROLE, pieces)
    if not kinds.isdisjoint(MAY_SHARE):
        pieces = with_sets_shared_out(pieces)
    pieces = with_reps_of_all_loads(with_counts_in_doubt(pieces, kinds))
    if worded and K.OF in kinds and K.NAME in kinds:
        pieces = without_of_a_lift(pieces)
    return with_restated_pairs(pieces) if worded and K.TIMES in kinds else pieces


def _without_comparisons(pieces: list[Piece], kinds: set[K]) -> list[Piece]:
    """The pieces, which are of these kinds, with other loads that a remark names set aside."""
    if K.TIMES in kinds and not kinds.isdisjoint(MAY_GIVE_A_REASON):
        pieces = with_reasons(pieces)
    if K.NOT_DATE in kinds and K.NOTE in kinds:
        pieces = with_felt(pieces)
    if not kinds.isdisjoint(MAY_COMPARE):
        pieces = with_compared(pieces)
    if K.MORE in kinds and K.NUMBER in kinds:
        pieces = without_more_than(pieces)
    pieces = with_load_spoken_of(without_loads_told_twice(pieces) if K.NUMBER in kinds else pieces, kinds)
    return with_rated(pieces) if K.TIMES in kinds and K.FILLER in kinds else pieces


BREATHING = frozenset((K.REST, K.PAUSE, K.PLAIN, K.NOTE, K.FAR))
DESCRIBING = frozenset((K.COLON, K.WORKING, K.PLAIN, K.DROP))
MAY_COMPARE = frozenset((K.NOT_DATE, K.FILLER, K.ASKS, K.WEEKDAY, K.EARLIER))
"""Kinds of the words for like and than in one language or another."""
MAY_GIVE_A_REASON = frozenset((K.NOT, K.NOT_DATE, K.FILLER, K.PLAIN))
MAY_TELL_AN_HOUR = frozenset((K.FILLER, K.WITH, K.OF, K.PLAIN))
MAY_COUNT_DAYS = frozenset((K.HEADING, K.SLASH, K.OF, K.OUT_OF, K.WITH, K.MAX))
MAY_TELL_A_TIME_PAST = frozenset((K.PLAIN, K.FILLER, K.NOT_DATE, K.MUSCLE, K.NAME))
NAMING_A_WEEK = frozenset((K.EARLIER, K.WEEKS_AGO))

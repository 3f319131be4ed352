"""From text to pieces that only need grammar: cleaned, cut to tokens, names mended, days and marks gathered."""

from __future__ import annotations

from typing import NamedTuple

from engine.catalogue.catalogue import Catalogue
from engine.reading.days.dated import dated
from engine.reading.days.headed_days import opens_plainly
from engine.reading.days.headings import without_days_counted, without_sessions_headed
from engine.reading.days.week_headings import with_weeks
from engine.reading.entries.equipment_told import TELLS_HOW, with_bars, with_equipment, with_headed_equipment
from engine.reading.entries.labelled_lifts import with_labelled_lifts
from engine.reading.entries.names import EQUIPMENT
from engine.reading.entries.way_of_the_last import with_ways_of_all
from engine.reading.entries.ways import WAYS
from engine.reading.entries.ways_of_own_sets import with_ways_of_own_sets
from engine.reading.lexing.beside_words import with_months, with_words_settled
from engine.reading.lexing.counts_misspelt import with_counts_mended
from engine.reading.lexing.days_misspelt import with_days_mended
from engine.reading.lexing.furniture import FURNITURE, without_furniture
from engine.reading.lexing.lexer import Lexer
from engine.reading.lexing.lift_letters import IMPLEMENTS, with_lift_letters
from engine.reading.lexing.lifts_as_verbs import LOG, with_rows, without_verb
from engine.reading.lexing.longer_names import with_longer_names
from engine.reading.lexing.marks_misspelt import with_marks_mended
from engine.reading.lexing.name_words import may_make_names, tells_a_pause, with_words_beside
from engine.reading.lexing.names_misspelt import PERHAPS_A_NAME, mended
from engine.reading.lexing.places_in_figures import with_places_in_figures
from engine.reading.lexing.too_many import MOST_NUMBERS, too_many
from engine.reading.marks.announced import with_announced
from engine.reading.marks.announced_ones import with_ones_announced
from engine.reading.marks.bar_ahead import with_bar_warmed_up_with
from engine.reading.marks.breaths import with_breaths
from engine.reading.marks.company import with_company, with_lifts_done_with
from engine.reading.marks.compared import with_compared, without_more_than
from engine.reading.marks.counted_runs import with_counted_runs
from engine.reading.marks.counting_talk import COUNTING_PERHAPS, with_counting_talk
from engine.reading.marks.counts_behind_sets import with_counts_behind_sets
from engine.reading.marks.counts_described import SAID_OF_A_COUNT, with_counts_joined
from engine.reading.marks.drops_told import with_drops_told
from engine.reading.marks.equipment_talk import SPOKEN_OF, without_equipment_taken, without_lifts_taken
from engine.reading.marks.every_minute import with_every_minute
from engine.reading.marks.excepted_sets import with_excepted_sets
from engine.reading.marks.felt import with_felt, with_rated
from engine.reading.marks.grips import GRIP, with_grips
from engine.reading.marks.hers_behind_theirs import may_be_hers_behind_theirs, with_hers_behind_theirs
from engine.reading.marks.hours_beside import with_hour_ahead, with_hours_beside
from engine.reading.marks.loads_lowered import with_loads_lowered
from engine.reading.marks.loads_spoken_of import with_failed_single, with_load_spoken_of, without_loads_told_twice
from engine.reading.marks.loads_to_failure import AS_OFTEN, with_loads_to_failure
from engine.reading.marks.made_of_tries import with_tries_in_doubt
from engine.reading.marks.marks import holds_odd_numbers, without_marks
from engine.reading.marks.more_sets import with_more_sets
from engine.reading.marks.named_sets import SETS_NAMED, with_named_sets
from engine.reading.marks.names_as_words import may_name_somebody, with_names_as_words
from engine.reading.marks.not_quite import MARKS, with_marks_denied
from engine.reading.marks.others_doing import MAY_BE_PEOPLE, with_others_doing
from engine.reading.marks.parted_numbers import with_parted_numbers
from engine.reading.marks.people_in_turn import WORDS as MAY_TAKE_TURNS
from engine.reading.marks.people_in_turn import may_hold_turns, with_turns
from engine.reading.marks.places_counted import with_places_counted
from engine.reading.marks.planned_told import PLANNING, with_planned_told, with_sets_got
from engine.reading.marks.progress_told import with_progress_told
from engine.reading.marks.pronouns import OF_TWO_LANGUAGES, with_pronouns_settled
from engine.reading.marks.reasons_behind import with_reasons
from engine.reading.marks.relative_loads import with_relative_loads, with_steps_up, without_counts_compared
from engine.reading.marks.reps_of_all_loads import with_reps_of_all_loads, with_reps_of_light_loads
from engine.reading.marks.reps_spoken_of import may_speak_of_reps, with_reps_spoken_of
from engine.reading.marks.reps_stopped import MAY_END, with_reps_stopped
from engine.reading.marks.restated_pairs import with_restated_pairs
from engine.reading.marks.rests_between import with_rests_between
from engine.reading.marks.results_relisted import with_results_relisted
from engine.reading.marks.scheme_headings import without_scheme_headings
from engine.reading.marks.sessions_counted import without_sessions_counted
from engine.reading.marks.sets_called_warm_ups import with_sets_called_warm_ups
from engine.reading.marks.sets_of_a_lift import with_counts_in_doubt, without_of_a_lift
from engine.reading.marks.sets_of_another_time import without_sets_of_another_time
from engine.reading.marks.sets_shared_out import MAY_SHARE, with_sets_shared_out
from engine.reading.marks.somebodys_sets import with_somebody_parted
from engine.reading.marks.taken_back import may_take_back, without_sets_taken_back
from engine.reading.marks.things_held import with_things_held
from engine.reading.marks.times_past import with_times_past
from engine.reading.marks.tiredness import OF_TWO_MINDS, without_tiredness
from engine.reading.marks.told_of_one import with_results_of_one
from engine.reading.marks.tries import with_tries, with_tries_failed
from engine.reading.marks.warmed_up import without_warm_ups_told
from engine.reading.marks.weights_apart import MAY_WEIGH, with_weight_apart
from engine.reading.values import Context
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook, spoken
from engine.reading.words.pieces import ROLE, Piece, Role, kinds_in_order, kinds_of, places_of
from engine.reading.words.spelt_freely import SPELT_FREELY, spelt_freely
from engine.reading.words.tokens import Token, clean, tokenize


class Prepared(NamedTuple):
    """`spoken`: the pieces before dates and marks were gathered, as intents and corrections want them.

    `other`: the same message read the other way, where "52,5" may be one number or two, a way that of the last sets
    alone, or a rising list loads or reps.
    `told`: the kinds of the spoken pieces; most messages hold few, and most questions about a message are settled by
    them alone.
    """

    cleaned: str
    tokens: list[Token]
    spoken: list[Piece]
    pieces: list[Piece]
    other: list[Piece] | None = None
    told: frozenset[K] = frozenset()

    @property
    def is_too_much(self) -> bool:
        """Whether the message holds more numbers, signs, lifts or days than it may; none of it was read."""
        return bool(self.tokens) and not self.spoken


MOST_NAMES = 100
"""Lifts that one message may name: more than fits into a week's training, pasted. Common practice, no source."""
MOST_DAYS = 100
"""Days that one message may tell, with a lift each. Common practice, no source."""
MOST_WALKED = 2 * MOST_NAMES
"""Names as they are met; two and two may still be one lift ("curl, hammer")."""


def prepare(text: str, context: Context, catalogue: Catalogue) -> Prepared:
    """The pieces of a message."""
    cleaned = clean(text)
    tokens = tokenize(cleaned)
    if len(tokens) > MOST_NUMBERS and too_many(tokens):
        return Prepared(cleaned, tokens, [], [])
    lexer = Lexer(tokens, catalogue, context.taught)
    spoken, told = _named(lexer, cleaned, catalogue, context.called)
    listed, spelt = spoken, tokens
    right = with_marks_mended(tokens, spoken, catalogue) if K.PLAIN in told else None
    if right is not None:
        # Requests and corrections mend their own words, so they are shown what was typed.
        spelt, lexer = right, Lexer(right, catalogue, context.taught)
        listed, more = _named(lexer, cleaned, catalogue, context.called)
        told |= more
    if len(spoken) > MOST_NAMES and kinds_in_order(spoken).count(K.NAME) > MOST_NAMES:
        return Prepared(cleaned, tokens, [], [])
    other = None
    if lexer.in_doubt:
        again = Lexer(spelt, catalogue, context.taught, lexer.comma_in_doubt, not lexer.comma_in_doubt)
        other = gathered(*_named(again, cleaned, catalogue, context.called), context)
    elif K.NAME in told and (of_all := with_ways_of_all(listed)) is not None:
        other = gathered(of_all, told | {K.NOTE}, context)
    elif K.NUMBER in told and (shared := with_reps_of_light_loads(listed)) is not None:
        other = gathered(shared, told | {K.TIMES}, context)
    if K.NUMBER in told and not told <= PLAINLY_SETS:
        listed = with_results_relisted(listed, cleaned) if K.TIMES in told else listed
        listed = without_sets_taken_back(listed, cleaned) if may_take_back(tokens) else listed
        listed = with_reps_spoken_of(listed, cleaned) if may_speak_of_reps(told, listed) else listed
    return _of_days(Prepared(cleaned, tokens, spoken, gathered(listed, told, context), other, frozenset(told)))


def _of_days(prepared: Prepared) -> Prepared:
    """The same; without its pieces where they tell more days than a message may."""
    pieces = prepared.pieces
    too_many_days = len(pieces) > MOST_DAYS and kinds_in_order(pieces).count(K.DATE) > MOST_DAYS
    return Prepared(prepared.cleaned, prepared.tokens, [], []) if too_many_days else prepared


OF_TWO_SENSES = frozenset((K.SLASH, K.REST, K.RIGHT, K.HEADING, K.PLAIN))
"""Kinds among which is a word that those beside it give another sense."""


def _named(lexer: Lexer, cleaned: str, catalogue: Catalogue, called: str) -> tuple[list[Piece], set[K]]:
    """The pieces of a walk with slips of the thumb put right, and equipment put to its names; and their kinds."""
    pieces = walked = lexer.run()
    kinds = kinds_of(pieces)
    if len(pieces) > MOST_WALKED and kinds_in_order(pieces).count(K.NAME) > MOST_WALKED:
        return pieces, kinds
    pieces = with_places_in_figures(pieces, kinds, cleaned)
    if K.RPE in kinds or K.PLAIN in kinds:
        pieces = with_counts_mended(pieces)
    if K.PLAIN in kinds or kinds >= PERHAPS_A_NAME:
        pieces = with_days_mended(mended(pieces, cleaned, catalogue), catalogue)
        if K.ONLY in kinds:
            pieces = [piece._replace(kind=K.FILLER) if _says_planned(piece) else piece for piece in pieces]
    if K.NAME in kinds:
        pieces = with_months(with_longer_names(pieces, cleaned, catalogue))
    pieces = _as_said(pieces, kinds, catalogue)
    pieces = with_announced(pieces) if K.FILLER in kinds and K.TIMES in kinds else pieces
    pieces = _with_whole_names(_with_people(pieces, kinds, called, cleaned), kinds, cleaned, catalogue)
    if not kinds.isdisjoint(OF_TWO_SENSES):
        pieces = with_words_settled(pieces, catalogue)
    pieces = _with_tries_and_labels(pieces, kinds)
    return pieces, kinds if pieces is walked else kinds_of(pieces)


def _with_people(pieces: list[Piece], kinds: set[K], called: str, cleaned: str) -> list[Piece]:
    """The pieces, which were of these kinds, with others told of by what they do, and with company."""
    if K.NUMBER in kinds and not kinds <= PLAINLY_SETS and may_name_somebody(pieces):
        pieces = with_names_as_words(pieces)
        kinds = kinds_of(pieces)
    if K.PLAIN in kinds and K.NUMBER in kinds:
        pieces = with_somebody_parted(pieces, called, cleaned)
    if K.NUMBER in kinds and not kinds.isdisjoint(MAY_TAKE_TURNS) and may_hold_turns(pieces, kinds):
        pieces = with_turns(pieces, called)
    if may_be_hers_behind_theirs(pieces, kinds):
        pieces = with_hers_behind_theirs(pieces, called)
    if K.NUMBER in kinds and not kinds.isdisjoint(MAY_BE_PEOPLE):
        pieces = with_others_doing(pieces)
    if not kinds.isdisjoint(OF_TWO_LANGUAGES):
        pieces = with_pronouns_settled(pieces)
    if K.WITH in kinds and K.NAME in kinds:
        pieces = with_lifts_done_with(pieces)
    return with_company(pieces) if K.OTHERS in kinds and K.WITH in kinds else pieces


def _as_said(pieces: list[Piece], kinds: set[K], catalogue: Catalogue) -> list[Piece]:
    """The pieces, which were of these kinds, with words that are spelt or said freely put to what they mean."""
    if not kinds.isdisjoint(SPELT_FREELY):
        pieces = spelt_freely(pieces)
    if {K.NAME, K.NUMBER} <= kinds and not kinds.isdisjoint(MAY_WEIGH):
        pieces = with_weight_apart(pieces, kinds, catalogue)
    if K.WARMUP in kinds and K.BARBELL in kinds:
        pieces = with_bar_warmed_up_with(pieces)
    return with_rows(pieces, catalogue) if K.UNRELATED in kinds else pieces


def _with_tries_and_labels(pieces: list[Piece], kinds: set[K]) -> list[Piece]:
    """The pieces, which were of these kinds, with labels of lifts and tries told in words put in their places."""
    if K.LINE in kinds and K.NAME in kinds:
        pieces = with_labelled_lifts(pieces)
    if K.NUMBER in kinds and not kinds.isdisjoint(MAY_END):
        pieces = with_reps_stopped(pieces)
        kinds = kinds_of(pieces)
    if not kinds.isdisjoint(MARKS):
        pieces = with_marks_denied(pieces)
    if K.MISS in kinds:
        pieces = with_tries(pieces)
    if K.FAILURE in kinds and K.PLUS in kinds:
        pieces = with_tries_failed(pieces)
    return pieces if kinds.isdisjoint(COUNTING_PERHAPS) else with_counting_talk(pieces)


def _names_told(pieces: list[Piece]) -> list[str]:
    return [pieces[at].text for at in places_of(K.NAME, kinds_in_order(pieces))]


def _with_whole_names(pieces: list[Piece], kinds: set[K], cleaned: str, catalogue: Catalogue) -> list[Piece]:
    """The pieces, which were of these kinds, with what stands beside the names put to them."""
    if not kinds.isdisjoint(IMPLEMENTS):
        pieces = with_lift_letters(pieces, catalogue)
    names = _names_told(pieces)
    if not OF_TWO_MINDS.isdisjoint(names):
        pieces = without_tiredness(pieces)
        names = _names_told(pieces)
    if len(names) > 1:
        pieces = _without_other_names(pieces, names, kinds)
        if any([name.endswith(GRIP) for name in names[1:]]):
            pieces = with_grips(pieces, catalogue)
    if may_make_names(kinds, len(names)) or any(map(tells_a_pause, names)):
        before, pieces = pieces, with_words_beside(pieces, cleaned, catalogue)
        names = names if pieces is before else _names_told(pieces)
    if len(names) > 1 and not TELLS_HOW.isdisjoint(names):
        pieces = with_bars(pieces)
    pieces = _with_equipment_told(pieces, kinds, catalogue)
    return with_ways_of_own_sets(pieces, catalogue) if _may_tell_ways(names, kinds) else pieces


def _may_tell_ways(names: list[str], kinds: set[K]) -> bool:
    return bool(names) and K.NUMBER in kinds and (len(names) > 1 or not kinds.isdisjoint(WAYS))


def _with_equipment_told(pieces: list[Piece], kinds: set[K], catalogue: Catalogue) -> list[Piece]:
    """The pieces, which were of these kinds, with equipment put to the names that it belongs to."""
    if not kinds.isdisjoint(SPOKEN_OF):
        pieces = without_equipment_taken(pieces)
    if K.LINE in kinds and pieces and pieces[0].kind in SPOKEN_OF:
        pieces = with_headed_equipment(pieces, catalogue)
    return with_equipment(pieces, kinds, catalogue) if not kinds.isdisjoint(EQUIPMENT) or K.EACH in kinds else pieces


def _without_other_names(pieces: list[Piece], names: list[str], kinds: set[K]) -> list[Piece]:
    """The pieces, with names that are no lift here made plain words: a verb, or the bench that one lies on."""
    if names[0] == LOG:
        pieces = without_verb(pieces)
    pieces = without_furniture(pieces) if FURNITURE in names[1:] else pieces
    return without_lifts_taken(pieces) if K.NUMBER in kinds and K.FILLER in kinds else pieces


TELLING_STEPS = frozenset((K.NOTE, K.PLAIN, K.MORE, K.ADDED, K.ALTERED))


def _says_planned(piece: Piece) -> bool:
    """ "planned 4 sets of 8 at 60, only did 3": behind "only" stands what was done."""
    return piece.kind is K.PLAIN and spoken(piece.text) in phrasebook().cues["markedplanned"]


def gathered(pieces: list[Piece], kinds: set[K], context: Context) -> list[Piece]:
    """The pieces, which are of these kinds, with days and marks gathered, and without numbers that are no sets."""
    plain = kinds <= PLAINLY_SETS and pieces and (pieces[0].kind is K.NAME or opens_plainly(pieces[0]))
    if plain and not holds_odd_numbers(pieces, kinds):
        return pieces  # most messages tell sets and nothing else
    return gathered_with_care(with_hour_ahead(pieces) if kinds <= PLAINLY_SETS else pieces, kinds, context)


PLAINLY_SETS = frozenset((K.NAME, K.NUMBER, K.TIMES, K.COMMA, K.AT))
"""Kinds of which nothing is gathered, as long as each number is a plain one."""


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


BREATHING = frozenset((K.REST, K.PLAIN, K.NOTE, K.FAR))
DESCRIBING = frozenset((K.COLON, K.WORKING, K.PLAIN, K.DROP))
MAY_COMPARE = frozenset((K.NOT_DATE, K.FILLER, K.ASKS, K.WEEKDAY, K.EARLIER))
"""Kinds of the words for like and than in one language or another."""
MAY_GIVE_A_REASON = frozenset((K.NOT, K.NOT_DATE, K.FILLER, K.PLAIN))
MAY_TELL_AN_HOUR = frozenset((K.FILLER, K.WITH, K.OF, K.PLAIN))
MAY_COUNT_DAYS = frozenset((K.HEADING, K.SLASH, K.OF, K.OUT_OF, K.WITH, K.MAX))
MAY_TELL_A_TIME_PAST = frozenset((K.PLAIN, K.FILLER, K.NOT_DATE, K.MUSCLE, K.NAME))
NAMING_A_WEEK = frozenset((K.EARLIER, K.WEEKS_AGO))

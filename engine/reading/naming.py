"""The walk over a message, with slips of the thumb put right and people, equipment and ways put to the names."""

from __future__ import annotations

from engine.catalogue.catalogue import Catalogue
from engine.reading.days.short_dates import with_short_dates
from engine.reading.entries.equipment_told import TELLS_HOW, with_bars, with_equipment, with_headed_equipment
from engine.reading.entries.labelled_lifts import with_labelled_lifts
from engine.reading.entries.names import EQUIPMENT
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
from engine.reading.lexing.name_words import may_make_names, tells_a_pause, with_words_beside
from engine.reading.lexing.names_misspelt import PERHAPS_A_NAME, mended
from engine.reading.lexing.places_in_figures import with_places_in_figures
from engine.reading.lexing.too_many import MOST_NAMES
from engine.reading.marks.announced import with_announced
from engine.reading.marks.bar_ahead import with_bar_warmed_up_with
from engine.reading.marks.company import with_company, with_lifts_done_with
from engine.reading.marks.counting_talk import COUNTING_PERHAPS, with_counting_talk
from engine.reading.marks.equipment_talk import SPOKEN_OF, without_equipment_taken, without_lifts_taken
from engine.reading.marks.grips import GRIP, with_grips
from engine.reading.marks.hers_behind_theirs import may_be_hers_behind_theirs, with_hers_behind_theirs
from engine.reading.marks.names_as_words import may_name_somebody, with_names_as_words
from engine.reading.marks.not_quite import MARKS, with_marks_denied
from engine.reading.marks.others_doing import MAY_BE_PEOPLE, with_others_doing
from engine.reading.marks.people_in_turn import WORDS as MAY_TAKE_TURNS
from engine.reading.marks.people_in_turn import may_hold_turns, with_turns
from engine.reading.marks.pronouns import OF_TWO_LANGUAGES, with_pronouns_settled
from engine.reading.marks.reps_stopped import MAY_END, with_reps_stopped
from engine.reading.marks.settings_like_lifts import with_settings_in_doubt
from engine.reading.marks.somebodys_sets import with_somebody_parted
from engine.reading.marks.tiredness import OF_TWO_MINDS, without_tiredness
from engine.reading.marks.tries import with_tries, with_tries_failed
from engine.reading.marks.weights_apart import MAY_WEIGH, with_weight_apart
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook, spoken
from engine.reading.words.pieces import Piece, kinds_in_order, kinds_of, places_of
from engine.reading.words.spelt_freely import SPELT_FREELY, spelt_freely

TELLING_MORE = frozenset((K.FILLER, K.PLAIN))
PLAINLY_SETS = frozenset((K.NAME, K.NUMBER, K.TIMES, K.COMMA, K.AT))
"""Kinds of which nothing is gathered, as long as each number is a plain one."""

MOST_WALKED = 2 * MOST_NAMES
"""Names as they are met; two and two may still be one lift ("curl, hammer")."""

OF_TWO_SENSES = frozenset((K.SLASH, K.REST, K.RIGHT, K.HEADING, K.PLAIN))
"""Kinds among which is a word that those beside it give another sense."""


def named(lexer: Lexer, cleaned: str, catalogue: Catalogue, called: str) -> tuple[list[Piece], set[K]]:
    """The pieces of a walk with slips of the thumb put right, and equipment put to its names; and their kinds."""
    pieces = walked = lexer.run()
    kinds = kinds_of(pieces)
    if len(pieces) > MOST_WALKED and kinds_in_order(pieces).count(K.NAME) > MOST_WALKED:
        return pieces, kinds
    pieces = with_places_in_figures(pieces, kinds, cleaned)
    if K.NUMBER in kinds and (not kinds <= PLAINLY_SETS or pieces[0].spelled):
        pieces = with_short_dates(pieces, kinds)
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
    pieces = with_ways_of_own_sets(pieces, catalogue) if _may_tell_ways(names, kinds) else pieces
    return with_settings_in_doubt(pieces) if len(names) > 1 else pieces


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
    return without_lifts_taken(pieces) if K.NUMBER in kinds and not kinds.isdisjoint(TELLING_MORE) else pieces


def _says_planned(piece: Piece) -> bool:
    """ "planned 4 sets of 8 at 60, only did 3": behind "only" stands what was done."""
    return piece.kind is K.PLAIN and spoken(piece.text) in phrasebook().cues["markedplanned"]

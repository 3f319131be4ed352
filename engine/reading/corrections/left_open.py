"""What begins as a correction and leaves open what is to be put right: nothing is changed, and it is asked.

open = "set" NUMBER "and" NUMBER | POINTING NUMBER [ "are" ] | [ "the" ] NUMBER "was" "wrong"
     | "the bar" "was" NUMBER | HAD NUMBER "on" "the bar" | "double" THAT
     | FORGOT "a" "set" [ cut value ]           "i missed a set and the reps were 4": none of those that stand
     | slip NUMBER                             "no, 2" right behind an answer to a question
     | place NUMBER "x" NUMBER                 "last one 142.5x4" behind 3x5
     | "swap" "sets" NUMBER "and" NUMBER | "the other one" "was" NUMBER
     | NOT mark cut NUMBER                     "no drop set, 4 reps"
     | NUMBER "up from" day                    "5 up from monday"
     | THAT "was" mark cut sets               "that was a warm-up, now 120x5": of the set before, and sets more
     | THAT "was" NUMBER ( cut | "and" ) name sets      "that was 7 and squat 100x5"
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from engine.reading.corrections.correcting import MOST_SLIPS, cue_at
from engine.reading.corrections.days_named import day_named
from engine.reading.corrections.marks import MARKS
from engine.reading.corrections.nothing_changed import (
    CHOICE_OR_REPS,
    LOAD_OR_REPS,
    OF_ONE_MORE,
    REPS_APART,
    TWO_THINGS,
    WEIGHT_OF_THE_BAR,
    nothing_changed,
    unclear,
)
from engine.reading.corrections.said_to_be import is_be
from engine.reading.days.day_starts import DATE_KINDS
from engine.reading.latest_sets import last_message
from engine.reading.marks.marks_in_remarks import mark_denied
from engine.reading.marks.said_of_things import tells_its_weight
from engine.reading.prepare import Prepared
from engine.reading.talk.statements import names_sets_alone
from engine.reading.values import Context, NoSets
from engine.reading.words.cues import any_cued, is_cued
from engine.reading.words.kinds import DENYING, K
from engine.reading.words.phrasebook import phrasebook, spoken_words
from engine.reading.words.pieces import Piece, Role, kinds_in_order, texts_in_order

POINTING, WRONGLY, HAD, ONTO = (frozenset((cue,)) for cue in ("those", "wrongly", "had", "onbar"))
SWAPPING, OTHERS = frozenset(("swapping",)), frozenset(("remaining",))
MOST_SETS = 12
MARKED = MARKS | {K.RPE}
LEAST_OF_SETS = 3
THAT = frozenset(("that",))
CUTS = frozenset((K.COMMA, K.STOP, K.DASH, K.THEN))
JOINTS = CUTS | {K.AND}
REACH_OF_THAT = 5
VALUE_TOLD = frozenset((K.FILLER, K.NUMBER, K.REPS, K.KG, K.LB, K.ONLY))
LINKS = frozenset((K.FILLER, K.WITH, K.OF, K.FOR, K.AT))
UNITS = frozenset((K.REPS, K.KG, K.LB, K.NUMBER))
ENDS = frozenset((K.STOP, K.COMMA))


def left_open(prepared: Prepared, context: Context) -> NoSets | None:
    """Why nothing is changed, where the message leaves open what of the sets that stand it puts right."""
    if not context.recent:
        return None
    if not MARKED.isdisjoint(prepared.told) and _goes_on_behind_a_mark(prepared.spoken):
        return nothing_changed(prepared, TWO_THINGS)
    if K.NAME in prepared.told and _goes_on_with_another_lift(prepared.spoken):
        return nothing_changed(prepared, TWO_THINGS)
    if K.COUNT in prepared.told and _doubles_it(prepared.spoken):
        return unclear(prepared)
    if K.TIMES in prepared.told:
        return nothing_changed(prepared, OF_ONE_MORE) if _places_a_whole_set(prepared.spoken, context) else None
    return _leaves_open_without_a_times(prepared, context)


def _places_a_whole_set(pieces: Sequence[Piece], context: Context) -> bool:
    """ "last one 142.5x4" behind sets that were told together: one of those, or one more, which was her last."""
    kinds = [piece.kind for piece in pieces if piece.kind not in BESIDE_A_PLACE]
    placed = kinds in ([K.LAST, *CROSSED], [K.FIRST, *CROSSED], [K.ORDINAL, *CROSSED])
    return placed and not any(map(is_be, pieces)) and len(last_message(context)) > 1


CROSSED = (K.NUMBER, K.TIMES, K.NUMBER)
BESIDE_A_PLACE = frozenset((K.FILLER, K.SETS, K.COLON, K.STOP, K.REPS))


def points_and_dates(prepared: Prepared, context: Context) -> bool:
    """ "last set was 4 reps, at 95, and it was yesterday": of sets that stand, where no rule has worked it out, and
    never more of them.
    """
    if prepared.told.isdisjoint(DAYS) or K.NUMBER not in prepared.told or not NOT_OF_THOSE.isdisjoint(prepared.told):
        return False
    verb = next((at for at, piece in enumerate(prepared.spoken[: PAIR + 1]) if is_be(piece)), None)
    if verb is None or day_named(prepared, context) is None:
        return False
    ahead = prepared.spoken[:verb]
    return all(piece.kind in POINTERS or is_cued(piece.text, OF_THOSE) for piece in ahead)


NOT_OF_THOSE = frozenset((K.TIMES, K.NAME, K.LINE, K.COLON, K.QUESTION, K.TODAY, K.SLASH))
POINTERS = frozenset((K.LAST, K.FIRST, K.ORDINAL, K.MIDDLE, K.FROM_LAST, K.SETS, K.BOTH))
OF_THOSE = frozenset(("that", "those"))


def _leaves_open_without_a_times(prepared: Prepared, context: Context) -> NoSets | None:
    if _forgets_one(prepared):
        return nothing_changed(prepared, OF_ONE_MORE)
    if K.BAR in prepared.told and (_weighs_the_bar(prepared) or _had_on_the_bar(prepared.spoken)):
        return nothing_changed(prepared, WEIGHT_OF_THE_BAR)
    if K.NUMBER not in prepared.told:
        return None
    if context.chosen and _may_be_the_choice(prepared):
        return nothing_changed(prepared, CHOICE_OR_REPS)
    if _denies_a_mark_and_counts(prepared):
        return nothing_changed(prepared, REPS_APART)
    if not prepared.told.isdisjoint(COMPARING) and _compares_a_number(prepared.spoken):
        return nothing_changed(prepared, LOAD_OR_REPS)
    alone = K.SETS in prepared.told and names_sets_alone(prepared.spoken)
    alone = alone or _points_at_so_many(prepared.spoken) or _blames_a_number(prepared.spoken)
    alone = alone or _swaps_places(prepared) or _is_of_the_other(prepared) or _may_deny_a_place(prepared.spoken)
    return unclear(prepared) if alone else None


def _may_be_the_choice(prepared: Prepared) -> bool:
    """ "no, 2", "i meant 2" right behind an answer: the second of the choices, or two reps."""
    numbers = [piece for piece in prepared.spoken if piece.kind is K.NUMBER]
    if len(numbers) != 1 or numbers[0].role is not Role.BARE or not 1 <= numbers[0].value <= MOST_CHOICES:
        return False
    cues, words = phrasebook().cues, [word for word, _ in spoken_words(prepared.tokens)]
    slips, at = cues["slip"] | cues["retracts"] | cues["mean"], 0
    while length := cue_at(words, at, slips):
        at += length
    return bool(at) and at == len(words) - 1


MOST_CHOICES = 4


def _forgets_one(prepared: Prepared) -> bool:
    """ "i missed a set and the reps were 4", "forgot a set": it is none of those that stand."""
    if prepared.told.isdisjoint(FORGETTING):
        return False
    words, phrases = [word for word, _ in spoken_words(prepared.tokens)], phrasebook().cues["oneforgotten"]
    return any(cue_at(words, at, phrases) for at in range(min(MOST_SLIPS, len(words))))


FORGETTING = frozenset((K.NUMBER, K.MISS))


def _swaps_places(prepared: Prepared) -> bool:
    """ "swap sets 1 and 3": no new number of either."""
    numbers = [piece for piece in prepared.spoken if piece.kind is K.NUMBER]
    placed = K.SETS in prepared.told or numbers[0].role is Role.SETS
    swaps = is_cued(prepared.spoken[0].text, SWAPPING) and K.NAME not in prepared.told
    return swaps and placed and len(numbers) == 2 and numbers[0].value < numbers[1].value <= MOST_SETS


def _denies_a_mark_and_counts(prepared: Prepared) -> bool:
    """ "no drop set, 4 reps": of the set before, which was none, or of one more."""
    pieces = prepared.spoken
    cut = next((at for at, piece in enumerate(pieces) if piece.kind in CUTS), 0)
    head, behind = pieces[:cut], [piece.kind for piece in pieces[cut + 1 :]]
    if behind.count(K.NUMBER) != 1 or not set(behind) <= COUNTED_ALONE:
        return False
    if [piece.kind for piece in head] == [K.NOTE]:
        denied = mark_denied(head[0]._replace(text=prepared.cleaned[head[0].start : head[0].end].lower()))
        return denied in KINDS_OF_SETS
    return cut == PAIR and head[0].kind in DENYING and head[1].kind in KINDS_OF_SETS


COUNTED_ALONE = frozenset((K.NUMBER, K.REPS, K.STOP, K.FILLER))
KINDS_OF_SETS = frozenset((K.DROP, K.WARMUP))


def _compares_a_number(pieces: Sequence[Piece]) -> bool:
    """ "5 up from monday", "up 5 from monday": so much more than then, and no set."""
    kinds = [piece.kind for piece in pieces if piece.kind is not K.STOP]
    raised = is_cued(pieces[0].text, UP)
    told, than = (kinds[1:], K.NOT_DATE) if raised else (kinds, K.EARLIER)
    return len(told) == LEAST_OF_SETS and told[:2] == [K.NUMBER, than] and told[2] in DAYS


COMPARING, UP = frozenset((K.EARLIER, K.NOT_DATE)), frozenset(("up",))


DAYS = (DATE_KINDS | {K.DATE}) - {K.TODAY}


def _may_deny_a_place(pieces: Sequence[Piece]) -> bool:
    """ "no third set and it was 95": none was done, or the third is meant; "no third was 95" puts it right."""
    kinds = [piece.kind for piece in pieces if piece.kind is not K.SETS]
    return kinds[:2] == [K.DENY, K.ORDINAL] and len(kinds) > PAIR and kinds[2] in JOINTS and any(map(is_be, pieces))


PAIR = 2


def _is_of_the_other(prepared: Prepared) -> bool:
    """ "the other one was 62.5": not the latest, and which of those before it nobody can say."""
    pieces = prepared.spoken
    if len(pieces) <= 2 or not is_be(pieces[1]) or pieces[0].kind is not K.FILLER:
        return False
    words = prepared.cleaned[pieces[0].start : pieces[0].end].lower().split()
    return len(words) > 1 and any_cued(words, OTHERS) and pieces[2].kind is K.NUMBER


def _goes_on_behind_a_mark(pieces: Sequence[Piece]) -> bool:
    """ "that was a warm-up, now 120x5": the mark is of the set that stands, and behind it more sets are told."""
    cut = next((at for at, piece in enumerate(pieces) if piece.kind in CUTS), len(pieces))
    head, behind = pieces[:cut], [piece.kind for piece in pieces[cut:]]
    marked = any(piece.kind in MARKED for piece in head) and any(map(is_be, head))
    bare = [b for a, b in pairwise(head) if b.kind is K.NUMBER and a.kind is not K.RPE]
    points = bool(head) and any_cued(head[0].text.split()[:1], THAT) and not bare
    sets = K.TIMES in behind or behind.count(K.NUMBER) >= LEAST_OF_SETS
    return marked and points and sets and K.NUMBER in behind and K.NOT not in behind


def _goes_on_with_another_lift(pieces: Sequence[Piece]) -> bool:
    """ "that was 7 and squat 100x5": the number is of the set that stands, and sets of a lift are told behind it."""
    kinds = [piece.kind for piece in pieces[: REACH_OF_THAT + 1]]
    cut = next((at for at, kind in enumerate(kinds) if kind in JOINTS), 0)
    head, behind = pieces[:cut], kinds_in_order(pieces[cut + 1 :])
    if not head or not any_cued(head[0].text.split()[:1], THAT) or not any(map(is_be, head)):
        return False
    told = kinds[:cut].count(K.NUMBER) == 1 and set(kinds[:cut]) <= VALUE_TOLD
    return told and behind[:1] == [K.NAME] and (K.TIMES in behind or behind.count(K.NUMBER) >= LEAST_OF_SETS)


def _doubles_it(pieces: Sequence[Piece]) -> bool:
    """ "double that": twice of what, and no set of two reps."""
    return len(pieces) == 2 and pieces[0].kind is K.COUNT and is_cued(pieces[1].text, THAT)


def _weighs_the_bar(prepared: Prepared) -> bool:
    """ "the bar was 15": what was lifted with it, nobody can say."""
    bar = next(at for at, piece in enumerate(prepared.spoken) if piece.kind in (K.BAR, K.NUMBER))
    return prepared.spoken[bar].kind is K.BAR and tells_its_weight(prepared.spoken, bar + 1)


def _had_on_the_bar(pieces: Sequence[Piece]) -> bool:
    """ "had 20 on the bar": in all, or beside it; and no reps with it."""
    at = next((at for at, piece in enumerate(pieces) if piece.kind is K.NUMBER), 0)
    links = pieces[at + 1 : -1]
    if not at or pieces[-1].kind is not K.BAR or not any_cued(pieces[at - 1].text.split(), HAD):
        return False
    return {piece.kind for piece in links} <= LINKS and any(is_cued(piece.text, ONTO) for piece in links)


def _points_at_so_many(pieces: Sequence[Piece]) -> bool:
    """ "those two are", "the last two": so many of the sets that stand, and nothing told of them."""
    at = next((at for at, piece in enumerate(pieces) if piece.kind is K.NUMBER), 0)
    number, pointing = pieces[at], pieces[at - 1]
    if (
        not at
        or not all(is_cued(piece.text, ARTICLES) for piece in pieces[: at - 1])
        or not {piece.kind for piece in pieces[at + 1 :]} <= NOTHING_TOLD
    ):
        return False
    if not 1 < number.value <= MOST or number.role not in (Role.BARE, Role.SETS):
        return False
    return is_cued(pointing.text, POINTING) or (pointing.kind in (K.LAST, K.FIRST) and number.spelled)


NOTHING_TOLD = ENDS | {K.FILLER, K.SETS, K.ASKS}
ARTICLES = frozenset(("the", "and", "but", "my"))
MOST = 5


def _blames_a_number(pieces: Sequence[Piece]) -> bool:
    """ "8 was wrong", "delete that, 8 was wrong": what it was instead is not told."""
    if not any_cued(texts_in_order(pieces), WRONGLY):
        return False
    numbers = [at for at, piece in enumerate(pieces) if piece.kind is K.NUMBER]
    behind = [piece for piece in pieces[numbers[0] + 1 :] if piece.kind not in ENDS | UNITS]
    blamed = len(behind) == 2 and is_be(behind[0]) and is_cued(behind[1].text, WRONGLY)
    return len(numbers) == 1 and blamed and not (numbers[0] and pieces[numbers[0] - 1].kind is K.SETS)

"""Whether an unusual load is right: yes, the load that was meant, or the set told again; other words leave it open.

answer = "yes" | "no" | { said } LOAD [ unit ] { said }      "60", "no, 60 kg", "i meant 60"
       | LOAD "," remark | remark "," LOAD                    "160, too many zeros": one digit away from 1600
       | a correction of the sets asked about               "160 not 1600"
       | the set told again, with its signs and its load     "60x5", "5 at 60"

Said is what answers are told with and nothing else: "2 of them felt bad" and "only 8 though" tell no load.
A load that is as unlikely as the one asked about is asked about in its turn.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from functools import lru_cache

from rapidfuzz.distance import OSA

from engine.reading.answers.amended import corrected
from engine.reading.answers.answering import Answering, exercises, settled
from engine.reading.asking import question_of
from engine.reading.chunks.choices import Traits
from engine.reading.prepare import prepare
from engine.reading.read import read_sets
from engine.reading.values import LOADS_IN_DOUBT, Answer, Asked, Correction, Doubt, Logged, Outcome, Reading, StillOpen
from engine.reading.weighing.candidates import NOTHING_BESIDE
from engine.reading.weighing.evidence import evidence
from engine.reading.weighing.history import NOTHING, is_far_off, known_of
from engine.reading.wording import label_of
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook, spoken
from engine.reading.words.pieces import Piece, Role
from engine.values.load import Load
from engine.values.sets import SetDone

LEAST_LIKELY = 0.1
"""Sets that fit their equipment and what anybody lifts less than this are asked about. Common practice, no source."""
SIGNS = frozenset((K.NUMBER, K.KG, K.LB, K.COMMA, K.STOP, K.COLON, K.DASH, K.LINE, K.DENY))
SAYING_A_LOAD = ("polite", "please", "slip", "mean", "tail", "be", "yes", "no", "chatter", "loadword", "instead", "had")
DENYING = frozenset(("no",))
SIGNS_OF_A_SET = frozenset((K.TIMES, K.FOR, K.AT, K.WITH, K.COUNT))


def load_in_doubt(told: Answering) -> Answer | None:
    """What the words make of the load in doubt; None where they say nothing of it."""
    if told.asked.doubt not in LOADS_IN_DOUBT or not told.asked.readings or not told.numbers():
        return None
    number = load_alone(told)
    sets = _at(told, number) if number is not None else _told_again(told) or _put_right(told)
    return checked(told, sets) if sets else None


def puts_no_load_right(told: Answering) -> bool:
    """Whether a slip in front of a number can mean another number than the reading that holds it: "17x5" (five times 17
    at the 70 of before?), "oops 70".
    """
    if told.asked.doubt is not Doubt.NUMBERS or not any(_is_slip(piece) for piece in told.prepared.pieces):
        return False
    number = load_alone(told)
    if number is None:
        return False
    known = [known_of(name, told.context).load for name in {one for r in told.asked.readings for one in exercises(r)}]
    return any(load is not None and load.amount == number.value for load in known)


def may_be_of_the_open_set(told: Answering, outcome: Outcome) -> bool:
    """Whether words that would be read on their own may speak of the set asked about: "only 8 though", "rpe 8".

    Another lift, a set with its signs, a place or a day says that they do not, and so does taking a set away.
    """
    kinds = {piece.kind for piece in told.prepared.pieces}
    if told.names() or not kinds.isdisjoint(OF_ANOTHER_SET):
        return False
    if isinstance(outcome, Correction):
        only_changes = bool(outcome.changed) and not (outcome.removed or outcome.moved or outcome.added)
        return only_changes and kinds.isdisjoint(PLACES)
    return isinstance(outcome, Logged | Asked) and bool(told.numbers())


OF_ANOTHER_SET = frozenset((K.TIMES, K.FOR, K.COUNT, K.DATE, K.YESTERDAY))
PLACES = frozenset((K.FIRST, K.LAST, K.FROM_LAST, K.MIDDLE, K.ORDINAL))


def _is_slip(piece: Piece) -> bool:
    return piece.kind is K.DENY or is_cued(piece.text, SLIPS)


SLIPS = frozenset(("slip", "mean"))
ENDS_OF_CLAUSES = frozenset((K.COMMA, K.STOP, K.COLON, K.DASH, K.LINE))
DOUBTING = frozenset(("or", "perhaps"))
NO_REMARK = frozenset(
    (K.COUNT, K.EFFORT, K.RPE, K.RIR, K.RESERVE, K.FAILURE, K.MISS, K.DROP, K.REST_PAUSE, K.WARMUP, K.NAME, K.TIMES,
     K.SETS, K.REPS, K.LAST, K.FIRST, K.ORDINAL, K.MIDDLE, K.FROM_LAST, K.DATE, K.YESTERDAY, K.WEEKDAY, K.AGO,
     K.QUESTION, K.PAIN, K.EACH, K.BOTH, K.BODY, K.DUMBBELL, K.BARBELL, K.CABLE, K.MACHINE, K.KETTLEBELL, K.OTHERS,
     K.LEFT, K.RIGHT, K.PLATE, K.PIN, K.BAND, K.ASSISTED, K.FOR, K.SECONDS, K.MINUTES, K.METRES,
     K.FUTURE, K.TOMORROW, K.SAYING, K.ASKS, K.STORY)
)  # fmt: skip
"""What stands beside no load put right: an effort, reps or another lift would be lost, and "or" leaves it open."""
COMPARING = frozenset((K.NOT, K.MORE, K.ADDED, K.LAST_TIME, K.NOT_DATE))
COMPARED = frozenset(("like", "than", "over", "under"))


def load_alone(told: Answering) -> Piece | None:
    """The only number, where nothing is said beside it but what answers are told with."""
    numbers = told.numbers()
    if len(numbers) != 1 or numbers[0].role not in (Role.BARE, Role.LOAD):
        return None
    number = numbers[0]
    if _is_somebodys(number, told.prepared.spoken):
        return None
    if all(_says_a_load(piece, number) for piece in told.prepared.pieces):
        return number
    return number if _is_the_load_put_right(told, number) else None


def _is_somebodys(number: Piece, pieces: Sequence[Piece]) -> bool:
    """ "my mate did 100", "coach says 100"; "mate, 100" is said to him."""
    whose = False
    for piece in pieces:
        whose = piece.kind is K.OTHERS or (whose and piece.kind not in ENDS_OF_CLAUSES)
        if piece.start >= number.start:
            return whose
    return False


def _is_the_load_put_right(told: Answering, number: Piece) -> bool:
    """ "160, too many zeros" to 1600, "100 lol one zero too many": one digit away, whatever is said beside it."""
    doubtful = [one.load for one in told.asked.readings[0].sets if one.load is not None]
    near = bool(doubtful) and is_digit_away(str(number.value), str(doubtful[0].amount))
    return near and stands_beside_a_remark(told, number)


def stands_beside_a_remark(told: Answering, number: Piece) -> bool:
    """Whether what is said beside the number may be a remark, and nothing of sets, of somebody or of another load."""
    pieces = told.prepared.pieces
    if not NO_REMARK.isdisjoint(told.prepared.told) or told.heads_a_request():
        return False
    if any(is_cued(piece.text, DOUBTING) for piece in pieces) or _is_somebodys(number, told.prepared.spoken):
        return False
    own = _clause_of(pieces, pieces.index(number))
    return not any(piece.kind in COMPARING or is_cued(piece.text, COMPARED) for piece in own)


def _clause_of(pieces: Sequence[Piece], at: int) -> Sequence[Piece]:
    """The pieces between the signs around this one."""
    start, end = at, at + 1
    while start and pieces[start - 1].kind not in ENDS_OF_CLAUSES:
        start -= 1
    while end < len(pieces) and pieces[end].kind not in ENDS_OF_CLAUSES:
        end += 1
    return pieces[start:end]


def is_digit_away(told: str, before: str) -> bool:
    """Whether a load is another one with a digit left out, put in or changed, or its point forgotten: 62.5 for 625."""
    return told != before and OSA.distance(told, before, score_cutoff=1) <= 1


def _says_a_load(piece: Piece, number: Piece) -> bool:
    if piece.kind in SIGNS:
        return piece.kind is not K.NUMBER or piece is number
    if piece.kind is K.NOT:
        return is_cued(piece.text, DENYING)
    if piece.kind is K.BAR:
        return piece.start > number.start  # "70 on the bar"
    if piece.kind is K.ONLY:
        return False
    return all(spoken(word) in _words_of_a_load() for word in piece.text.split())


@lru_cache(maxsize=1)
def _words_of_a_load() -> frozenset[str]:
    cues = phrasebook().cues
    phrases = [phrase for name in SAYING_A_LOAD for phrase in cues.get(name, ())]
    return frozenset(word for phrase in phrases for word in phrase.split()) | {"on", "at"}


def _at(told: Answering, number: Piece) -> tuple[SetDone, ...]:
    """The sets asked about, at the load that was meant instead and with the effort told beside it."""
    sets = []
    efforts = [effort for piece in told.prepared.pieces for effort in piece.efforts]
    if len(efforts) > 1:
        return ()
    for one in told.asked.readings[0].sets:
        if one.load is None:
            return ()
        load = Load(number.value, number.unit or one.load.unit, one.load.basis)
        sets.append(replace(one, load=load, effort=efforts[0] if efforts else one.effort))
    return tuple(sets)


def _put_right(told: Answering) -> tuple[SetDone, ...]:
    """The one reading as a correction leaves it, "160 not 1600"; empty where another lift is named."""
    readings = told.asked.readings
    named = told.names()
    return corrected(told, readings[0]) if len(readings) == 1 and named <= {*exercises(readings[0])} else ()


def _told_again(told: Answering) -> tuple[SetDone, ...]:
    """The set told again with its signs; without a load it is at the one in doubt."""
    if SIGNS_OF_A_SET.isdisjoint([piece.kind for piece in told.prepared.pieces]) or len(told.numbers()) < 2:
        return ()
    asked_about = exercises(told.asked.readings[0])
    named = told.names()
    if len(asked_about) != 1 or (named and asked_about[0] not in named):
        return ()
    context = replace(told.context, doing=asked_about[0], plan=(), recent=(), last={}, best={})
    outcome = read_sets(prepare(told.text, context, told.catalogue), context, told.catalogue)
    if not isinstance(outcome, Logged) or outcome.unread or exercises(Reading(outcome.sets, 1.0)) != asked_about:
        return ()
    doubtful = told.asked.readings[0].sets[0].load
    return tuple(replace(one, load=doubtful) if one.load is None else one for one in outcome.sets)


def checked(told: Answering, sets: tuple[SetDone, ...]) -> Answer:
    """The sets where their load is likely, or is the one asked about said again; else the question is about them."""
    before = told.asked.readings[0]
    denied = any(piece.kind in (K.DENY, K.NOT) for piece in told.prepared.pieces)
    if sets == before.sets and not denied:
        return settled(told, sets)
    if _are_likely(told, sets):
        return settled(told, sets)
    readings = (Reading(sets, before.plausibility, label_of(sets, [sets])),)
    question = question_of(told.asked.doubt, told.asked.typed or told.asked.term, readings)
    return StillOpen(replace(told.asked, readings=readings, question=question), again=True)


def _are_likely(told: Answering, sets: Sequence[SetDone]) -> bool:
    for one in dict.fromkeys(sets):
        exercise = told.catalogue.exercises[one.exercise]
        if one.load is None:
            continue
        if is_far_off(one.load, known_of(one.exercise, told.context), exercise):
            return False
        if evidence((one,), NOTHING_BESIDE, exercise, NOTHING, Traits.of(exercise)) < LEAST_LIKELY:
            return False
    return True

"""A number amid words, sent behind a set: one more set, or talk; where it may be either, it is asked.

doubt = THING NUMBER                              "grip 2", "spotter 2", "energy 7": a setting or a rating
      | NUMBER [ remark ] unknown word            "7 already", "7 good ones", "3 eggs and 2 toast"
      | NUMBER "was" ( ASSISTED | PARTIAL )       "1 was assisted": of the reps before
      | NUMBER "/" NUMBER word                    "10/10 session", "4/5 stars"
      | half a rep                                "7.5 reps"
      | "1" FAILURE                               "1 fail": a rep before it, or a set of one
      | NUMBER rest                               "3 rest": minutes, or the reps of a set
Nothing is asked where a lift, a load or an x is told.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.asking import question_of
from engine.reading.corrections.said_to_be import is_be
from engine.reading.marks.reps_perhaps import FAILING
from engine.reading.prepare import Prepared
from engine.reading.values import Asked, Doubt, Logged, Reading
from engine.reading.wording import label_of
from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role, is_one_word
from engine.values.effort import TOP_OF_SCALE

LONGEST, MOST_NUMBERS, MOST_MINUTES = 10, 2, 5
SETS_TOLD = frozenset((K.NAME, K.TIMES, K.KG, K.LB, K.AT, K.ANOTHER, K.MORE, K.THEN, K.GOT, K.LINE))
IN_DOUBT = frozenset((K.NOTE, K.PLAIN, K.SLASH, K.ASSISTED, K.PARTIAL, K.REST, K.REPS, K.FAILURE))
THING = frozenset(("besidethebar",))
HELPED = frozenset((K.ASSISTED, K.PARTIAL))
BARE = frozenset((Role.BARE, Role.REPS, Role.NOT_A_SET))
MARKS = frozenset((None, K.FAILURE, K.MISS, K.EFFORT, K.RPE, K.RIR, K.COMMA, K.STOP, K.EACH, K.LEFT, K.RIGHT, K.SLASH))


def asked_if_a_remark(logged: Logged, prepared: Prepared) -> Logged | Asked:
    """The sets, or the question whether the numbers beside such words are any."""
    pieces = prepared.spoken
    if len(pieces) > LONGEST or not prepared.told.isdisjoint(SETS_TOLD):
        return logged
    numbers = [at for at, piece in enumerate(pieces) if piece.kind is K.NUMBER]
    if not 0 < len(numbers) <= MOST_NUMBERS or not all(_is_bare(pieces[at]) for at in numbers):
        return logged
    halved = pieces[numbers[0]].value % 1 != 0
    if not halved and (prepared.told.isdisjoint(IN_DOUBT) or not _is_in_doubt(pieces, numbers[0])):
        return logged
    reading = (Reading(logged.sets, 1.0, label_of(logged.sets)),)
    asked = question_of(Doubt.WHETHER, "", reading)
    return Asked(asked, reading, Doubt.WHETHER, "", logged.on, logged.note, logged.pain, typed=prepared.cleaned.strip())


def _is_bare(number: Piece) -> bool:
    return number.role in BARE and number.value <= MOST_LOADED_REPS


def _is_in_doubt(pieces: Sequence[Piece], at: int) -> bool:
    behind = pieces[at + 1 :]
    if at and pieces[at - 1].kind is K.NOTE and is_cued(pieces[at - 1].text, THING):
        return True
    if kind_at(pieces, at + 1) is K.SLASH:
        return _is_a_rating(pieces, at)
    if not behind:
        return False
    if [piece.kind for piece in behind] == [K.REST]:
        return pieces[at].value <= MOST_MINUTES
    if [piece.kind for piece in behind] == [K.FAILURE]:
        return pieces[at].value == 1 and is_one_word(behind[0]) and is_cued(behind[0].text, FAILING)
    if len(behind) > 1 and is_be(behind[0]):
        return behind[1].kind in HELPED
    word = behind[1] if behind[0].kind is K.NOTE and len(behind) > 1 else behind[0]
    return word.kind is K.PLAIN


def _is_a_rating(pieces: Sequence[Piece], at: int) -> bool:
    """ "10/10 session", "4/5 stars": with words right behind it, and not "10/10 rpe 9"."""
    if kind_at(pieces, at + 2) is not K.NUMBER:
        return False
    scale, behind = pieces[at + 2], kind_at(pieces, at + 3)
    out_of_ten = scale.value == TOP_OF_SCALE and behind not in MARKS
    return scale.role is Role.NOT_A_SET or behind is K.PLAIN or out_of_ten

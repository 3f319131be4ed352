"""The load of sets that were read without one, since the number told for it can be none: "3x11 5250", then "52.5".

answer = { said } LOAD [ unit ] { said }        "52.5", "i meant 52.5", "52.5 sorry"
       | LOAD remark | remark "," LOAD          "52.5 fat thumbs": one digit away from 5250, or its point forgotten
"""

from __future__ import annotations

from dataclasses import replace

from engine.reading.answers.answering import Answering
from engine.reading.answers.loads import checked, is_digit_away, load_alone, stands_beside_a_remark
from engine.reading.values import Answer, Asked, Doubt
from engine.reading.weighing.resolve import BASES
from engine.reading.words.pieces import Piece, Role
from engine.values.load import Basis, Load
from engine.values.sets import SetDone


def load_left_out(told: Answering) -> Answer | None:
    """The sets asked about at the load that was meant; None where none was left out, or none is told."""
    left = number_left_out(told.asked)
    if not left or told.names() or told.tells_sets():
        return None
    number = load_alone(told) or _near(told, left)
    if number is None or _may_be_else(number, told.asked):
        return None
    sets = tuple(_at(one, number, told) for one in told.asked.readings[0].sets)
    return checked(replace(told, asked=replace(told.asked, note=None)), sets)


def _may_be_else(number: Piece, asked: Asked) -> bool:
    """ "1": the choice shown with it; "11": the reps, said again."""
    bare = number.role is Role.BARE and number.unit is None
    return bare and (number.value <= MOST_CHOICES or number.value in {one.reps for one in asked.readings[0].sets})


MOST_CHOICES = 9


def number_left_out(asked: Asked) -> str:
    """The number that found no place in the only reading, whose sets have no load; empty where there is none."""
    if asked.doubt is not Doubt.NUMBERS or len(asked.readings) != 1 or asked.note is None:
        return ""
    loaded = any(one.load is not None for one in asked.readings[0].sets)
    return "" if loaded or not _digits(asked.note).isdecimal() else asked.note


def _near(told: Answering, left: str) -> Piece | None:
    """The only number, whatever is said beside it, where the one left out is the same number with a slip in it."""
    numbers = told.numbers()
    if len(numbers) != 1 or not stands_beside_a_remark(told, numbers[0]):
        return None
    meant, typed = _digits(str(numbers[0].value)), _digits(left)
    return numbers[0] if meant == typed or is_digit_away(meant, typed) else None


def _digits(number: str) -> str:
    return number.replace(".", "").replace(",", "")


def _at(done: SetDone, number: Piece, told: Answering) -> SetDone:
    loading = told.catalogue.exercises[done.exercise].loading
    return replace(done, load=Load(number.value, number.unit or told.context.unit, BASES.get(loading, Basis.TOTAL)))

"""What each hand held, told behind the sets: "30 each" behind 60, "that was both together", "26 kg each hand".

told = NUMBER [ unit ] EACH, and no more | TOGETHER (a cue of the language files)

The half of the load that stands was that of both hands, the load itself changes nothing. Another number is a load by
its unit, or near the load beside a word for the hand; without one it may be reps as well, and changes nothing.
"""

from __future__ import annotations

from dataclasses import replace

from engine.reading.corrections.correcting import Told
from engine.reading.corrections.load_or_reps import is_either, is_rather_the_load
from engine.reading.latest_sets import run_of_it
from engine.reading.values import Correction
from engine.reading.words.cues import any_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role
from engine.values.load import Basis, Load
from engine.values.sets import SetRecord

OF_EACH = frozenset((K.NUMBER, K.EACH, K.FILLER, K.KG, K.LB))
HANDS, LIMBS, SIDES = frozenset(("handword",)), frozenset(("limb",)), frozenset(("barside",))


def halved(told: Told) -> Correction | None:
    """The latest sets at half their load, where it was that of both hands; else None."""
    group = _held(told)
    number = _of_each(told)
    told_halves = number is not None and all(load.amount == 2 * number.value for _, load in group)
    if not group or (not told_halves and " ".join(told.words) not in told.book.cues["together"]):
        return None
    for record, load in group:
        told.set_to(record, replace(record.done, load=Load(load.amount / 2, load.unit, load.basis)))
    return told.correction()


def held_otherwise(told: Told) -> Correction | None:
    """The latest sets at the load that each hand held, where the message tells another one; else None."""
    number = _of_each(told)
    group = _held(told) if number is not None else []
    if number is None or not group or not _is_a_load(number, told, group[-1][0]):
        return None
    for record, _ in group:
        told.set_to(record, told.at_load(told.now(record), number))
    return told.correction()


def tells_what_each_held(told: Told) -> bool:
    """Whether the message names the load of each hand that stands, which is no count of reps."""
    number = _of_each(told)
    group = _held(told) if number is not None and not any_cued(_said_of_each(told), SIDES) else []
    return number is not None and bool(group) and all(_is_that(number, record, load) for record, load in group)


def may_be_held(told: Told) -> bool:
    """Whether the number may be what each hand held or reps of each side, so that nothing is changed."""
    number = _of_each(told)
    group = _held(told) if number is not None else []
    return number is not None and bool(group) and is_either(told, number, group[-1][0].done)


def _held(told: Told) -> list[tuple[SetRecord, Load]]:
    """The latest sets with what each hand held; none where one was held otherwise."""
    group = [(record, record.done.load) for record in run_of_it(told.context)]
    held = [(record, load) for record, load in group if load is not None and load.basis is Basis.PER_HAND]
    return held if len(held) == len(group) else []


def _of_each(told: Told) -> Piece | None:
    """The only number of a message that tells what is of each, and of no leg or arm; None in any other."""
    numbers, kinds = told.numbers(), told.kinds()
    if len(numbers) != 1 or K.EACH not in kinds or not kinds <= OF_EACH:
        return None
    of_limbs = numbers[0].role is not Role.LOAD and any_cued(_said_of_each(told), LIMBS)
    return None if of_limbs else numbers[0]


def _said_of_each(told: Told) -> list[str]:
    return [word for piece in told.pieces if piece.kind is K.EACH for word in piece.text.split()]


def _is_that(number: Piece, record: SetRecord, load: Load) -> bool:
    unlike = number.role is Role.LOAD or number.value != record.done.reps
    return unlike and number.value == load.amount and number.unit in (None, load.unit)


def _is_a_load(number: Piece, told: Told, latest: SetRecord) -> bool:
    if number.role is Role.LOAD:
        return True
    near = is_rather_the_load(told, number, latest.done) or is_either(told, number, latest.done)
    return near and any_cued(_said_of_each(told), HANDS)

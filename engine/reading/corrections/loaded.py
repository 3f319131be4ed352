"""A load told later of sets that stand: "those had 10 kg on the belt", "sorry, grabbed the 34s", "the last had 5kg on".

told = ( pronoun | part | slip ) HAD load [ "on" | "on the belt" ]      a load has a unit, or is a pair of dumbbells
     | HAD load "on" [ "the belt" ]                                      behind sets of the body that told no load

Whose hands held what is no new set: no reps are told.
"""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

from engine.reading.corrections.correcting import Told
from engine.reading.corrections.parts import part_told
from engine.reading.latest_sets import last_message
from engine.reading.values import Correction
from engine.reading.words.cues import any_cued, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import spoken
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role
from engine.values.load import Basis, Load, Unit
from engine.values.sets import SetDone

ABOUT_LOADS = frozenset(
    (K.FILLER, K.NUMBER, K.KG, K.LB, K.ADDED, K.ASSISTED, K.LAST, K.FIRST, K.MIDDLE, K.ORDINAL, K.FROM_LAST, K.BOTH,
     K.SETS, K.OF, K.WITH, K.NAME, K.DUMBBELL, K.KETTLEBELL, K.EACH, K.STOP, K.COMMA, K.ONLY, K.PLATE, K.RESERVE_LEFT)
)  # fmt: skip
LOADS = frozenset((Role.LOAD, Role.PLURAL))


def loaded(told: Told) -> Correction | None:
    """The sets pointed at, at the load that they had."""
    numbers = [piece for piece in told.pieces if piece.kind is K.NUMBER]
    held = [word for word in told.words if word in told.book.cues["had"]]
    if len(held) != 1 or not numbers or K.QUESTION in told.kinds():
        return None
    if not all(piece.kind in ABOUT_LOADS or _is_held(piece, told) for piece in told.pieces):
        return None
    part = part_told(told.pieces, told.context)
    loads = [number for number in numbers if number not in part.used]
    if (
        len(loads) != 1
        or not (loads[0].role in LOADS or _was_hung_on(told, loads[0]))
        or part.missing
        or part.named_unknown
    ):
        return None
    hung = _was_hung_on(told, loads[0])
    if not (told.slipped or _points(told) or part.places or hung or _says_what_was_used(told, loads[0])):
        return None
    for record in part.reached(told.context, told.plural or not part.places):
        told.set_to(record, _at(told.now(record), loads[0], told))
    return told.correction()


def _was_hung_on(told: Told, load: Piece) -> bool:
    """ "had 5kg on", "had 10 on the belt": what was hung on the body in the latest message's sets, which told none."""
    behind = told.pieces[told.pieces.index(load) + 1 :]
    onto = bool(behind) and (behind[0].kind is K.ADDED or any_cued(behind[0].text.split()[:1], ONTO))
    if not onto or load.value > MOST_ADDED[load.unit or told.context.unit]:
        return False
    loads = [record.done.load for record in last_message(told.context)]
    return all(one is not None and one.basis is Basis.BODY and one.amount == 0 for one in loads)


ONTO = frozenset(("onbar",))


def _says_what_was_used(told: Told, load: Piece) -> bool:
    """ "used the 24s", "i used 24s": the dumbbells that it was; "grabbed the 24s" may be for what comes next."""
    done = told.context.recent[-1].done.load
    if done is None or done.basis is not Basis.PER_HAND or load.role is not Role.PLURAL:
        return False
    little = all(piece.kind in SAYING_LITTLE or _is_held(piece, told) for piece in told.pieces)
    return little and any_cued(told.words[:2], USED) and NEAREST * done.amount <= load.value <= 2 * done.amount


USED, SAYING_LITTLE = frozenset(("tookup",)), frozenset((K.FILLER, K.NUMBER, K.STOP, K.ONLY))
NEAREST = Decimal("0.5")


def added_later(told: Told) -> Correction | None:
    """ "with 10kg added", "with a 10 kg plate": what the latest sets of a lift of the body were loaded with, or helped
    by; they told no load of their own.
    """
    numbers = [piece for piece in told.pieces if piece.kind is K.NUMBER]
    kinds = [piece.kind for piece in told.pieces]
    plain = len(numbers) == 1 and kinds[:1] == [K.WITH] and ABOUT_ADDED.issuperset(kinds)
    if not plain or not (numbers[0].role is Role.LOAD or (numbers[0].role is Role.BARE and K.ADDED in kinds)):
        return None
    if numbers[0].value > MOST_ADDED[numbers[0].unit or told.context.unit]:
        return None
    latest = told.context.recent[-1]
    for record in told.context.recent:
        load = record.done.load
        if record.message != latest.message:
            continue
        if load is None or load.basis is not Basis.BODY or load.amount != 0 or record.done.reps is None:
            return None
        told.set_to(record, _at(told.now(record), numbers[0], told))
    return told.correction()


def told_behind(told: Told) -> Correction | None:
    """ "80", "at 80", "used the 24s" behind "squat 5x5": the load of the latest message's sets, which told none."""
    held = [piece for piece in told.pieces if piece.kind is K.PLAIN and _is_held(piece, told)]
    numbers, kinds = told.numbers(), {piece.kind for piece in told.pieces if piece not in held}
    if len(numbers) != 1 or not kinds <= ABOUT_A_LOAD or numbers[0].role not in (*LOADS, Role.BARE):
        return None
    weighs = numbers[0].role in LOADS or kinds & {K.AT, K.WITH} or numbers[0].value > MOST_LOADED_REPS
    weighs = weighs or (bool(held) and is_cued(told.pieces[told.pieces.index(numbers[0]) - 1].text, THE))
    latest = last_message(told.context)
    if not weighs or any(one.done.load is not None or one.done.seconds is not None for one in latest):
        return None
    for record in latest if len({one.done.exercise for one in latest}) == 1 else ():
        told.set_to(record, told.at_load(told.now(record), numbers[0]))
    return told.correction()


ABOUT_A_LOAD = frozenset((K.NUMBER, K.KG, K.LB, K.AT, K.WITH, K.STOP, K.FILLER))
MOST_ADDED = {Unit.KG: 60, Unit.LB: 135}
"""More than that is hung on by few, and may be the load of the next lift. Common practice, no source."""
ABOUT_ADDED = frozenset((K.WITH, K.NUMBER, K.ADDED, K.FILLER, K.PLATE, K.ASSISTED, K.KG, K.LB, K.STOP, K.EXTRA))
POINTING = frozenset(("that", "those", "all"))
THE = frozenset(("the",))


def _points(told: Told) -> bool:
    return any_cued(told.words[:2], POINTING) or (K.BOTH in [piece.kind for piece in told.pieces[:2]])


def _is_held(piece: Piece, told: Told) -> bool:
    return all(spoken(word) in told.book.cues["had"] or is_cued(word, POINTING) for word in piece.text.split())


def _at(done: SetDone, number: Piece, told: Told) -> SetDone:
    """The set at the load; help on a lift of the body counts against it."""
    one = told.at_load(done, number)
    load = one.load
    if load is None or load.basis is not Basis.BODY or K.ASSISTED not in told.kinds():
        return one
    return replace(one, load=Load(-abs(load.amount), load.unit, load.basis))

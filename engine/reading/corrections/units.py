"""Another unit for sets that stand: "lbs not kg", "that was in pounds", "those two are pounds", "last two were in lb".

told = [ POINTING [ count ] | part [ count ] ] "were" | "in" unit [ "not" unit ]

The numbers stay. A count behind what points at sets is of sets, and never of reps: where it fits none that stand,
nothing is changed or added.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from engine.reading.corrections.correcting import UNITS, Told
from engine.reading.corrections.parts import Part, is_all, part_told, sets_of
from engine.reading.corrections.said_to_be import is_be
from engine.reading.latest_sets import last_message, run_of_it, two_latest
from engine.reading.values import Correction
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import DENYING, K
from engine.reading.words.phrasebook import phrasebook, spoken
from engine.reading.words.pieces import Piece, Role
from engine.values.load import Unit
from engine.values.sets import SetRecord

MOST_COUNTED = 12
LEAST_FOR_A_COUNT = 4
"""How many times the number the loads that stand must be, so that "those two lbs" tells no load of two."""
POINTING = frozenset(("those", "that", "the"))
IN = frozenset(("inunit",))
ENDS = frozenset((K.LAST, K.FIRST))
ABOUT_UNITS = frozenset(
    (K.KG, K.LB, K.FILLER, K.NOT, K.NAME, K.LAST, K.FIRST, K.ORDINAL, K.BOTH, K.SETS, K.WITH, K.COMMA, K.STOP, K.ASKS,
     K.FUTURE, K.MIDDLE, K.FOR, K.OTHERS, K.ONLY, K.HEADING, K.DENY, K.PLAIN, K.NOTE)
)  # fmt: skip
BESIDE_A_COUNT = frozenset((K.OF, K.EACH, K.DASH, K.AT))


def new_unit(told: Told) -> Correction | None:
    """ "lbs not kg", "that was in pounds": the numbers stay."""
    counted = _counted(told)
    unit = _units(told, counted)
    if unit is None:
        return None
    placed = part_told(told.pieces, told.context).used if counted is None and K.SETS in told.kinds() else []
    if [number for number in told.numbers() if number not in placed] != ([counted] if counted else []):
        return None
    if not all(piece in placed or _is_about(piece, counted) for piece in told.pieces) or _asks(told.pieces[0]):
        return None
    short = len(told.pieces) == 2 and is_cued(told.pieces[0].text, IN)
    if not (len(told.pieces) == 1 or told.slipped or short or placed or _is_said(told, counted)):
        return None
    for record in _of_unit(told, counted):
        if record.done.load is not None and record.done.load.amount:
            told.set_to(record, replace(told.now(record), load=replace(record.done.load, unit=unit)))
    return told.correction()


def counts_in_a_unit(told: Told) -> bool:
    """ "those four are pounds", where two sets stand: of so many sets, and no reps."""
    counted = _counted(told)
    return counted is not None and told.numbers() == [counted] and _units(told, counted) is not None


def _units(told: Told, counted: Piece | None) -> Unit | None:
    """The unit that it was; None where none is told."""
    if counted is not None and counted.unit is not None:
        return counted.unit
    place = next((at for at, piece in enumerate(told.pieces) if piece.kind in DENYING), len(told.pieces))
    kept = [piece.kind for piece in told.pieces[:place] if piece.kind in UNITS]
    denied = [piece.kind for piece in told.pieces[place:] if piece.kind in UNITS]
    if not kept and not denied:
        return None
    return UNITS[kept[0]] if kept else next(one for kind, one in UNITS.items() if kind is not denied[0])


def _counted(told: Told) -> Piece | None:
    """The number that counts the sets pointed at: "those two", "the last 2", "all three"."""
    kinds = [piece.kind for piece in told.pieces]
    at = kinds.index(K.NUMBER) if K.NUMBER in kinds else 0
    number = told.pieces[at]
    if not at or not 1 < number.value <= MOST_COUNTED or number.value != int(number.value):
        return None
    ahead = told.pieces[at - 1]
    if not (ahead.kind in ENDS or is_all(ahead) or is_cued(spoken(ahead.text), POINTING)):
        return None
    if number.role is Role.LOAD:
        loads = [record.done.load for record in run_of_it(told.context) if record.done.load is not None]
        heavy = bool(loads) and min(load.amount for load in loads) >= number.value * LEAST_FOR_A_COUNT
        return number if number.spelled and heavy else None
    return number if number.role in (Role.BARE, Role.SETS) else None


def _is_about(piece: Piece, counted: Piece | None) -> bool:
    if piece is counted or piece.kind in ABOUT_UNITS or (piece.kind is K.NEVER and is_be(piece)):
        return True
    return counted is not None and (piece.kind in BESIDE_A_COUNT or spoken(piece.text) in phrasebook().copulas)


def _asks(first: Piece) -> bool:
    return first.kind is K.ASKS and not is_cued(first.text, ASSERTING)


ARE, ASSERTING = frozenset(("unitsare",)), frozenset(("those", "unitsare"))


def _is_said(told: Told, counted: Piece | None) -> bool:
    kinds = told.kinds()
    if K.NOT in kinds or {K.DENY, *UNITS} <= kinds:
        return True
    are = any(is_cued(piece.text, ARE) for piece in told.pieces)
    said = are or any(is_be(piece) for piece in told.pieces) or told.has("mean") or told.starts("make")
    pointed = K.BOTH in told.kinds() or counted is not None
    plain = sum(piece.kind is K.PLAIN and is_cued(piece.text, POINTING) for piece in told.pieces)
    named = sum(piece.kind is K.PLAIN and is_cued(piece.text, ARE) for piece in told.pieces)
    return bool(said or pointed) and told.unknown() == (plain if pointed else 0) + named


def _of_unit(told: Told, counted: Piece | None) -> Sequence[SetRecord]:
    """The sets whose unit is put right: those that are counted or that the part points at, the latest message's, or
    with "those" the row of single sets that it ends.
    """
    part = part_told([piece for piece in told.pieces if piece is not counted], told.context)
    if part.missing or part.named_unknown:
        return ()
    if counted is not None:
        return _so_many(int(counted.value), told, part)
    if part.points and not part.whole:
        return part.reached(told.context, told.plural)
    latest = last_message(told.context)
    return run_of_it(told.context) if len(latest) == 1 and told.plural else latest


def _so_many(count: int, told: Told, part: Part) -> Sequence[SetRecord]:
    """The sets that are so many: of the row that ends the log, or of the latest messages; none where that is open."""
    group, kinds = sets_of(part, told.context), told.kinds()
    if kinds & ENDS and count <= len(group):
        return group[:count] if K.FIRST in kinds else group[-count:]
    if part.named is not None or K.FIRST in kinds:
        return group if len(group) == count else ()
    run, latest = run_of_it(told.context), last_message(told.context)
    for sets in (run, latest, two_latest(told.context)):
        if len(sets) == count:
            return sets
    if len(latest) > 1:
        return ()
    singles = told.context.recent[-count:]
    messages = {record.message for record in singles}
    alike = len(singles) == count and {record.on for record in singles} == {latest[-1].on}
    return singles if alike and len(messages) in (1, count) else ()

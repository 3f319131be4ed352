"""Values told apart of the set that was told ahead of them: "last was 4 reps, at 95, and that was yesterday".

tied = clause "," ( "at" | "with" ) NUMBER | clause "," effort | clause "," NUMBER unit | clause "," NUMBER "reps"
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.catalogue.catalogue import Catalogue
from engine.reading.corrections.clauses import PLACES
from engine.reading.corrections.said_to_be import in_full, is_be
from engine.reading.days.day_starts import DATE_KINDS
from engine.reading.prepare import Prepared, prepare
from engine.reading.values import Context
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role, kinds_in_order

RATED = frozenset((K.RPE, K.RIR, K.EFFORT))
MARKED = RATED | {K.FAILURE}
TIES = frozenset((K.AT, K.WITH))
OF_A_VALUE = RATED | TIES | {K.NUMBER, K.KG, K.LB, K.REPS, K.FILLER, K.STOP}
COUNTED = frozenset((Role.LOAD, Role.REPS))


def with_values_tied(told: Sequence[Prepared], context: Context, catalogue: Catalogue) -> Sequence[Prepared]:
    """The clauses, with those that hold no more than a value joined to the one ahead."""
    if not any(map(_is_a_value, told[1:])):
        return told
    out: list[Prepared] = []
    for clause in told:
        if out and _is_a_value(clause) and not is_an_effort(out[-1]):
            out[-1] = prepare(f"{out[-1].cleaned}, {clause.cleaned}", context, catalogue)
        else:
            out.append(clause)
    return out


def is_an_effort(told: Prepared) -> bool:
    """Whether an effort is told and nothing else: "rpe 8"."""
    return not told.told.isdisjoint(RATED) and (RATED | {K.NUMBER, K.FILLER}).issuperset(told.told)


def _is_a_value(told: Prepared) -> bool:
    if not OF_A_VALUE.issuperset(told.told) or any(map(is_be, in_full(told))):
        return False
    first = told.spoken[0]
    return first.kind in RATED | TIES or (first.kind is K.NUMBER and first.role in COUNTED)


def is_a_place_with_its_number(told: Prepared) -> bool:
    """ "last one 6", "last bench 6": nothing but which set, and its number."""
    kinds = [piece.kind for piece in told.spoken if piece.kind not in BESIDE_A_PLACE]
    return len(kinds) == len((K.LAST, K.NUMBER)) and kinds[0] in PLACES and kinds[1] is K.NUMBER


TWO = 2
BESIDE_A_PLACE = frozenset((K.FILLER, K.SETS, K.THEN, K.ONLY, K.NAME))


def places_of_two_lifts(told: Prepared) -> bool:
    """ "last bench 6, last squat 4"."""
    kinds = kinds_in_order(told.spoken)
    named = kinds.count(K.NAME) == TWO and K.TIMES not in kinds
    return named and sum(kind in PLACES for kind in kinds) == TWO


def are_day_and_mark(first: Piece, then: Piece) -> bool:
    """ "that was yesterday to failure", "it was rpe 9 monday": two things, with nothing between them."""
    return (first.kind in DATE_KINDS and then.kind in MARKED) or (first.kind in MARKED and then.kind in DATE_KINDS)

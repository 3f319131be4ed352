"""Another lift that is on for later, or was left out, told right behind whole sets: they are done, whatever it is.

"squat 3x5 100 will bench tomorrow", "squat 3x5 100 bench tomorrow", "bench 3x8 60 skipped rows"
A time right behind the numbers may be theirs, as "and" may join both lifts: those are asked about ("squat 3x5 100
tomorrow bench", "squat 3x5 100 and bench tomorrow"), and so is a day of rest or of a muscle ("100x5 tomorrow off").
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.pieces import COUNTED, Piece, kinds_in_order, places_in

CUES = frozenset((K.FUTURE, K.TOMORROW, K.NEVER))
CLAUSE_ENDS = frozenset((K.COMMA, K.THEN, K.DASH, K.STOP, K.LINE, K.OPEN))
OF_ANOTHER_DAY = frozenset((K.NAME, K.REST, K.MUSCLE, K.JOINT))
OF_A_SET = frozenset((K.KG, K.LB, K.REPS, K.SETS, K.EFFORT, K.EACH, K.NOTE))
JOINING = frozenset((K.AND, K.PLUS, K.WITH, K.SLASH))
LONGEST = 10
"""Words of such a plan. Common practice, no source."""


def plan_of_another_lift(sentence: Sequence[Piece]) -> int:
    """The place behind the sets of a sentence where one lift more is told of that was not done; 0 where none is."""
    kinds = kinds_in_order(sentence)
    if CUES.isdisjoint(kinds) or K.NAME not in kinds:
        return 0
    last = max(places_in(COUNTED, kinds), default=-1)
    behind = last + 1
    while kind_at(sentence, behind) in OF_A_SET:
        behind += 1
    told = kinds[behind : behind + LONGEST]
    told = told[: next((at for at, kind in enumerate(told) if kind in CLAUSE_ENDS), len(told))]
    planned = not OF_ANOTHER_DAY.isdisjoint(told) and not CUES.isdisjoint(told)
    return behind if planned and last >= 0 and K.NAME in kinds[:last] else 0


def may_be_of_both(plan: Sequence[Piece]) -> bool:
    """Whether the sets in front may be on for the time that the plan tells."""
    first = plan[0]
    ahead = first.kind is K.TOMORROW or (first.kind is K.FUTURE and _tells_when(first))
    return ahead or first.kind in JOINING or all(piece.kind is not K.NAME for piece in plan)


def _tells_when(wish: Piece) -> bool:
    """ "next monday", "next time"; and not "will", "planning"."""
    return wish.told > 0 or "next" in CUES_OF[wish.text.split()[0]]

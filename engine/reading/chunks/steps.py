"""A load told as a step from the set before it: "added five kilos and got 4", "up 5 kg for 3", "5 kilos more".

step = ( "added" | "up" ) LOAD | LOAD "more"     the load has a unit, and is small beside the one before
"""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal

from engine.reading.chunks.chunks import Chunk
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role, is_one_word

RAISED = frozenset(("up", "add", "raised", "plus"))


def tells_a_step(pieces: Sequence[Piece], at: int) -> bool:
    """Whether the load here is what was added to the one before it."""
    step = pieces[at]
    before = pieces[at - 1] if at else None
    behind = pieces[at + 1].kind if at + 1 < len(pieces) else None
    raised = before is not None and (before.kind is K.ADDED or (is_cued(before.text, RAISED) and is_one_word(before)))
    return step.unit is not None and (raised or behind is K.MORE)


def loads_told(chunks: Sequence[Chunk]) -> list[Decimal]:
    """The loads told so far, in order."""
    return [one.value for chunk in chunks for one in _loads_of(chunk)]


def tells_a_load(chunks: Sequence[Chunk]) -> bool:
    """Whether a load was told so far; where any was, it is seldom far behind the first chunk."""
    return any(_loads_of(chunk) for chunk in chunks)


def _loads_of(chunk: Chunk) -> list[Piece]:
    head = chunk.factors[0][-1:] if chunk.factors else ()
    return [one for one in (*head, *chunk.at) if one.role is Role.LOAD or _is_heavy(one)]


def _is_heavy(number: Piece) -> bool:
    return number.role in (Role.BARE, Role.BAR) and number.value > MOST_LOADED_REPS


def is_a_load_and_its_reps(told: Sequence[Chunk]) -> bool:
    """ "45 kg, five reps, twice": two numbers that tell one set."""
    numbers = [one.factors[0][0] for one in told if one.size == 1 and len(one.factors[0]) == 1 and not one.at]
    if len(told) != len(numbers) or len(numbers) != 2:
        return False
    return numbers[0].role in (Role.LOAD, Role.BARE) and numbers[1].role is Role.REPS

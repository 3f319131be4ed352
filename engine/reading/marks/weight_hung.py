"""Weight put on the body, or taken off it, in a word ahead of its number.

"dips 8 8 8 weighted 15", "chin ups 3x5 assisted 20" are told as "+15" and "-20" are. Behind counted sets any number is
that weight; behind reps alone a larger one than all of them is, where no list of reps may go on: "pull ups 8 7 assisted
6" may be one more set, and "pull ups 5, then assisted 10 8" are two more. "20, 20, weighted 10" may be either.
"""

from __future__ import annotations

from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role, kinds_in_order, places_in

HUNG = frozenset((K.ADDED, K.ASSISTED))
ENDS_OF_SETS = frozenset((K.NAME, K.LINE, K.STOP, K.THEN, K.SUPERSET))
BESIDE_REPS = frozenset((K.NUMBER, K.COMMA, K.TIMES, K.REPS, K.SETS, K.OF, K.FILLER, K.COLON, K.AND, K.WITH))
BY = frozenset((K.BY, K.WITH, K.FILLER, K.OF))
COUNTED = (Role.BARE, Role.SETS, Role.REPS)
SETS_AND_REPS = 2
OFF = frozenset(("off",))
"""Of the rack, of blocks, of the bench ("dips off the bench"): nobody was helped by what stands behind it."""


def with_weight_hung(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with what was put on the body or taken off it told as its load, or as a change of it."""
    out = pieces
    kinds = kinds_in_order(pieces)
    for at in places_in(HUNG, kinds):
        number = at + 1 + (kind_at(pieces, at + 1) in BY)
        role = _role_of(pieces, kinds, at, number)
        if role is None:
            continue
        out = list(pieces) if out is pieces else out
        if role is Role.BARE:
            out[at] = pieces[at]._replace(kind=K.ALTERED)
        else:
            value = pieces[number].value * (-1 if role is Role.CHANGE and kinds[at] is K.ASSISTED else 1)
            out[number] = pieces[number]._replace(role=role, value=value)
    return out


def _role_of(pieces: list[Piece], kinds: list[K], at: int, number: int) -> Role | None:
    """What the number behind the word at `at` is; BARE where it may be a weight or reps, None where others tell it."""
    start = next((place + 1 for place in range(at - 1, -1, -1) if kinds[place] in ENDS_OF_SETS), 0)
    counts = [piece for piece in pieces[start:at] if piece.kind is K.NUMBER]
    bare = number < len(pieces) and pieces[number].role is Role.BARE and not pieces[number].spelled
    plain = BESIDE_REPS.issuperset(kinds[start:at]) and all(piece.role in COUNTED for piece in counts)
    if not counts or not bare or not plain or kinds[number] is not K.NUMBER or is_cued(pieces[at].text, OFF):
        return None
    behind = kind_at(pieces, number + 1)
    goes_on = behind is K.TIMES or K.NUMBER in (behind, behind is K.COMMA and kind_at(pieces, number + 2))
    if kinds[at - 2 : at] == [K.WITH, K.NUMBER] or (len(counts) == 1 and goes_on):
        return None  # "pull ups with 10 assist 8 8 7"
    if K.TIMES in kinds[start:at] or any(piece.role is Role.SETS for piece in counts):
        return Role.LOAD if len(counts) == SETS_AND_REPS and behind is not K.TIMES else None
    larger = pieces[number].value > max(piece.value for piece in counts)
    if len(counts) == 1 and not larger:
        return None  # "20 assist 7"
    if behind is K.TIMES:
        return Role.CHANGE if larger else None
    if larger and (not goes_on or kinds[at] is K.ADDED):
        return Role.CHANGE if goes_on else Role.LOAD
    parted = goes_on or kinds[at - 1] is K.COMMA or kinds[at] is K.ASSISTED
    return Role.BARE if parted else Role.LOAD

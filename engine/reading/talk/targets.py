"""What came of a wish: "wanted 100x5, got 4", "plan was 5x5 at 85 but only 4x5".

wish   = FUTURE word, lift and load and reps
result = [ "but" ] ( GOT | "only" | "did" ) reps
The result counts, at the load of the wish unless it tells its own. Common practice, no source.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.talk.clauses_of_talk import tells_a_plan
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import COUNTED, Piece, Role

WISHED = frozenset((K.FUTURE, K.NEVER))
WISHING = WISHED | {K.STORY}
NOT_MINE = frozenset((K.OTHERS, K.SAYING, K.TOMORROW))
DID = frozenset(("did", "didso"))
OPENERS = frozenset((K.FILLER, K.COMMA, K.THEN, K.DASH, K.AND, K.PLAIN))
LEADS = frozenset((K.GOT, K.ONLY))
IN_THE_END = 7
"""What a THEN piece's `told` says of "finally": behind a wish it tells what came of it."""
PAIRED = frozenset((K.TIMES, K.FOR))
RESULTS = PAIRED | frozenset((K.AT, K.WITH, K.KG, K.LB, K.NUMBER, K.COMMA, K.AND, K.REPS, K.ONLY, K.FILLER, K.GOT))
MOST_SETS = 12


def target_of(clause: Sequence[Piece]) -> list[Piece]:
    """What was to be done, without the words that say so; empty where it tells no numbers of a set."""
    kinds = [piece.kind for piece in clause]
    planned = any(map(tells_a_plan, clause))
    wished = planned or (K.STORY not in kinds and not WISHED.isdisjoint(kinds))
    told = [piece for piece in clause if piece.kind not in WISHING]
    numbers = sum(kind in COUNTED for kind in kinds)
    enough = numbers > 1 or (numbers == 1 and K.NAME in kinds)
    return told if wished and NOT_MINE.isdisjoint(kinds) and enough else []


def is_result_of(target: Sequence[Piece], clause: Sequence[Piece]) -> bool:
    """ ", got 4", "but only 4", of a wish of one number only a pair: "wanted 100 on squat, got 95 for 3"."""
    whole = sum(piece.kind in COUNTED for piece in target) > 1 or _tells_its_load(clause)
    return whole and _is_result(clause)


def result_in(target: Sequence[Piece], clause: Sequence[Piece]) -> list[Piece] | None:
    """What a clause behind a wish tells to have come of it: none yet, where it is a comma; None where it tells else."""
    if len(clause) == 1 and clause[0].kind in (K.COMMA, K.DASH, K.THEN):
        return []  # ", but"
    return with_target(target, clause) if is_result_of(target, clause) else None


def _is_result(clause: Sequence[Piece]) -> bool:
    """Whether a clause tells what came of a target, by its reps alone or as a pair of its own."""
    if any(piece.kind is K.PLAIN and piece.text != "instead" for piece in clause):
        return False
    told = [piece for piece in map(_as_result, clause) if piece.kind not in OPENERS]
    if told and told[-1].kind is K.NAME and PAIRED.isdisjoint([piece.kind for piece in told]):
        told = told[:-1]  # "got 4 on squat"
    return len(told) > 1 and told[0].kind in LEADS and all(piece.kind in RESULTS for piece in told[1:])


def with_target(target: Sequence[Piece], result: Sequence[Piece]) -> list[Piece]:
    """The pieces that tell the result at the load of the target, or at its own."""
    named = [piece for piece in result if piece.kind is K.NAME]
    if named and not any(piece.kind is K.NAME for piece in target):
        rest = [piece for piece in result if piece not in named]
        ahead = target[0].start
        return with_target([named[0]._replace(start=ahead, end=ahead), *target], rest)
    if _tells_its_load(result):
        named = [piece for piece in target if piece.kind is K.NAME][-1:]
        at = result[0].end
        return [result[0], *(piece._replace(start=at, end=at) for piece in named), *result[1:]]
    led = [_as_result(piece) for piece in result]
    if not any(piece.kind is K.GOT for piece in led):
        led = [piece._replace(kind=K.GOT) if piece.kind is K.ONLY else piece for piece in led]
    return [*target, *led]


def tells_reps_alone(clause: Sequence[Piece]) -> bool:
    """Whether a clause tells reps and neither a lift nor a load."""
    kinds = {piece.kind for piece in clause}
    loaded = not kinds.isdisjoint(LOADED) or _tells_its_load(clause)
    return not loaded and any(piece.kind is K.NUMBER and piece.role is Role.BARE for piece in clause)


LOADED = frozenset((K.NAME, K.AT, K.WITH, K.BODY, K.PLATE, K.SIDE_PLATES, K.BAR, K.LAST_TIME, K.SAME))


def _tells_its_load(result: Sequence[Piece]) -> bool:
    numbers = [piece for piece in result if piece.kind is K.NUMBER]
    if not numbers:
        return False
    paired = sum(piece.kind in PAIRED for piece in result)
    pair = paired > 0 and (numbers[0].value > MOST_SETS or _is_whole(numbers))
    return pair or any(piece.role is Role.LOAD for piece in numbers)


def _is_whole(numbers: Sequence[Piece]) -> bool:
    """ "3x8 at 70": sets, reps and their load."""
    return len(numbers) == LEAST_OF_A_WHOLE and numbers[-1].value > MOST_SETS


LEAST_OF_A_WHOLE = 3


def _as_result(piece: Piece) -> Piece:
    """ "did 3x8 instead", "in the end 3x8" tell what came of it as "got 3x8" does."""
    did = piece.kind is K.FILLER and is_cued(piece.text, DID)
    did = did or (piece.kind is K.THEN and piece.told == IN_THE_END)
    return piece._replace(kind=K.GOT) if did else piece

"""Tries at one load told in words: "missed snatch 72 twice, then got it", "snatch 72: miss, miss, made it".

tries = ( NAME | load | "missed" | "twice" | NUMBER "times" )+ [ "then" ] [ made ]       one load, and no reps
made  = "got it" | "made it" | "good"       behind the last miss
They become what a list of tries is: the load missed so often, and then lifted once.
"""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from itertools import pairwise

from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook, spoken
from engine.reading.words.pieces import Piece, Role

LEAST_LOAD = 30
"""More than this is no count of reps beside a miss. Common practice, no source."""
MOST_TRIES = 9
MADE = frozenset(("got", "made", "hit", "nailed", "smashed", "lifted", "stood"))
OF_TRIES = frozenset(
    (K.NAME, K.NUMBER, K.MISS, K.ONCE, K.GOT, K.THEN, K.AND, K.COMMA, K.COLON, K.STOP, K.DASH, K.FILLER, K.NOTE, K.AT,
     K.ORDINAL, K.LAST, K.FOR)
)  # fmt: skip


def with_tries(pieces: list[Piece]) -> list[Piece]:
    """The pieces with each line that tells tries in words told as a list of them."""
    out: list[Piece] = []
    line: list[Piece] = []
    for piece in pieces:
        if piece.kind is K.LINE:
            out += [*_as_list(line), piece]
            line = []
        else:
            line.append(piece)
    return [*out, *_as_list(line)]


def with_tries_failed(pieces: list[Piece]) -> list[Piece]:
    """ "5, 5, 4 + fail": behind a plus the word tells of one more try, and not of how the set before it ended."""
    out = list(pieces)
    for at, (before, piece) in enumerate(pairwise(pieces), start=1):
        whole = piece.end - piece.start == len(piece.text) and piece.text not in ENDS_OF_SETS
        if piece.kind is K.FAILURE and before.kind is K.PLUS and whole:
            out[at] = piece._replace(kind=K.MISS)
    return out


ENDS_OF_SETS = frozenset(("f", "tf", "failure", "mv"))


def _as_list(line: list[Piece]) -> list[Piece]:
    misses = [at for at, piece in enumerate(line) if piece.kind is K.MISS]
    if not misses or not OF_TRIES.issuperset([piece.kind for piece in line]):
        return line
    names = [piece for piece in line if piece.kind is K.NAME]
    load = _only_load(line)
    if load is not None and line == [line[misses[0]], load]:
        return [load, line[misses[0]]] if _is_one_word(line[misses[0]]) else line
    made = _is_made(line[misses[-1] + 1 :])
    tries = _told(line) or len(misses)
    if load is None or len(names) > 1 or tries > MOST_TRIES or (tries == 1 and not made):
        return line
    if made and not all(piece.told == tries + 1 for piece in line if piece.kind is K.ORDINAL):
        return line
    return [*names, *_listed(load, line[misses[0]], tries, made)]


def _is_one_word(piece: Piece) -> bool:
    """ "failed 170" is told as "170 failed" is; "missed the 90" points at a set that stands."""
    return piece.end - piece.start == len(piece.text)


def _only_load(line: Sequence[Piece]) -> Piece | None:
    """The one number that is no count of tries, where it can only be a load."""
    numbers = [piece for piece in line if piece.kind is K.NUMBER and piece.role is not Role.TIMES]
    if len(numbers) != 1:
        return None
    heavy = numbers[0].role is Role.LOAD or (numbers[0].role is Role.BARE and numbers[0].value > LEAST_LOAD)
    return numbers[0] if heavy else None


def _told(line: Sequence[Piece]) -> int:
    """How often, where that is told: "twice", "3 times"; 0 where it is not."""
    for piece in line:
        if piece.kind is K.ONCE:
            return piece.told
        if piece.kind is K.NUMBER and piece.role is Role.TIMES:
            return int(piece.value)
    return 0


def _is_made(behind: Sequence[Piece]) -> bool:
    counted = phrasebook().cues["counted"]
    for piece in behind:
        if piece.kind is K.GOT or (piece.kind is K.FILLER and piece.text.split()[0] in MADE):
            return True
        if piece.kind is K.NOTE and spoken(piece.text) in counted:
            return True
    return False


def _listed(load: Piece, miss: Piece, tries: int, made: bool) -> list[Piece]:
    between = load._replace(kind=K.COMMA, role=Role.BARE, unit=None, text=",", start=load.end)
    out: list[Piece] = []
    for place in range(tries):
        out += [*([between] if place else []), load, miss]
    if made:
        times = between._replace(kind=K.TIMES, text="x")
        once = load._replace(role=Role.BARE, unit=None, text="1", value=Decimal(1))
        out += [between, load, times, once]
    return out

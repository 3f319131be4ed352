"""Tries at one load told in words: "missed snatch 72 twice, then got it", "snatch 72: miss, miss, made it".

tries = ( NAME | load | "missed" | "twice" | NUMBER "times" )+ [ "then" ] [ made ]       one load, and no reps
made  = "got it" | "made it" | "good"       behind the last miss
attempts = NAME ... ( load [ "good" | "missed" ] )+        each load judged, or "attempts" said: "140 good, 160 no lift"
They become what a list of tries is: the load missed so often, and then lifted once.
"""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from itertools import pairwise

from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook, spoken
from engine.reading.words.pieces import Piece, Role, is_one_word

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
        whole = is_one_word(piece) and piece.text not in ENDS_OF_SETS
        if piece.kind is K.FAILURE and before.kind is K.PLUS and whole:
            out[at] = piece._replace(kind=K.MISS)
    return out


ENDS_OF_SETS = frozenset(("f", "tf", "failure", "mv"))


def _as_list(line: list[Piece]) -> list[Piece]:
    misses = [at for at, piece in enumerate(line) if piece.kind is K.MISS]
    if misses and (attempts := _attempts(line)):
        return attempts
    if not misses or not OF_TRIES.issuperset([piece.kind for piece in line]):
        return line
    names = [piece for piece in line if piece.kind is K.NAME]
    load = _only_load(line)
    if load is not None and line == [line[misses[0]], load]:
        return [load, line[misses[0]]] if is_one_word(line[misses[0]]) else line
    made = _is_made(line[misses[-1] + 1 :])
    tries = _told(line) or len(misses)
    if load is None or len(names) > 1 or tries > MOST_TRIES or (tries == 1 and not made):
        return line
    if made and not all(piece.told == tries + 1 for piece in line if piece.kind is K.ORDINAL):
        return line
    return [*names, *_listed(load, line[misses[0]], tries, made)]


def _attempts(line: Sequence[Piece]) -> list[Piece]:
    """ "squat attempts 170, 180, 187.5 miss", "log: 100 good, 105 good, 110 no lift": a single or a miss of each;
    nothing where anything else is told.
    """
    first = next((at for at, piece in enumerate(line) if piece.kind is K.NUMBER), 0)
    head, out = line[:first], [piece for piece in line[:first] if piece.kind is K.NAME]
    if len(out) > 1 or not {piece.kind for piece in head} <= HEADING_ATTEMPTS:
        return []
    announced, judged, loads = any(is_cued(piece.text, ATTEMPTS) for piece in head), 0, 0
    for clause in _clauses(line[first:]):
        load = clause[0] if clause else None
        verdict = _verdict(clause[1:])
        if load is None or verdict is None or _only_load(clause) is not load:
            return []
        out += [*([_comma(load)] if loads else []), *_judged(load, verdict)]
        loads, judged = loads + 1, judged + bool(clause[1:])
    if loads > 1 and not (announced or judged == loads):
        if loads > MOST_IN_DOUBT:
            return []  # "snatch 60, 65, 70 miss" lists singles
        return [piece._replace(kind=K.UNCLEAR) if piece.kind is K.MISS else piece for piece in line]
    return out if loads > 1 else []


MOST_IN_DOUBT = 2
ATTEMPTS = frozenset(("oneset",))
HEADING_ATTEMPTS = frozenset((K.NAME, K.FILLER, K.PLAIN, K.NOTE, K.COLON, K.MAX, K.TODAY, K.SETS))
PARTING = frozenset((K.COMMA, K.THEN, K.STOP))


def _clauses(pieces: Sequence[Piece]) -> list[list[Piece]]:
    found: list[list[Piece]] = [[]]
    for piece in pieces:
        if piece.kind in PARTING:
            found.append([])
        else:
            found[-1].append(piece)
    return found if found[-1] else found[:-1]


def _verdict(behind: Sequence[Piece]) -> Sequence[Piece] | None:
    """The words of how a try ended, which are none where it only was made; None where they tell anything else."""
    made = not behind or _is_made(behind)
    missed = len(behind) == 1 and behind[0].kind is K.MISS
    return behind[:1] if missed else () if made and len(behind) <= 1 else None


def _judged(load: Piece, verdict: Sequence[Piece]) -> list[Piece]:
    if verdict:
        return [load, *verdict]
    times = load._replace(kind=K.TIMES, role=Role.BARE, unit=None, text="x", start=load.end)
    return [load, times, load._replace(role=Role.BARE, unit=None, text="1", value=Decimal(1))]


def _comma(load: Piece) -> Piece:
    return load._replace(kind=K.COMMA, role=Role.BARE, unit=None, text=",", start=load.end)


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
    between = _comma(load)
    out: list[Piece] = []
    for place in range(tries):
        out += [*([between] if place else []), load, miss]
    if made:
        times = between._replace(kind=K.TIMES, text="x")
        once = load._replace(role=Role.BARE, unit=None, text="1", value=Decimal(1))
        out += [between, load, times, once]
    return out

"""A correction cut at its parts: "first two were 70, last at 65" speaks of two of them."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from decimal import Decimal
from itertools import pairwise

from engine.catalogue.catalogue import Catalogue
from engine.reading.corrections.said_to_be import is_be
from engine.reading.marks.felt import is_effort, with_felt
from engine.reading.prepare import Prepared
from engine.reading.values import Context, Correction, NoSets
from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role
from engine.values.effort import TOP_OF_SCALE, Effort
from engine.values.sets import SetDone

Alone = Callable[[Prepared, Context, Catalogue], Correction | NoSets | None]
"""How one correction of several is worked out by itself."""
CUTS = frozenset((K.COMMA, K.AND, K.STOP, K.THEN, K.DASH))
POINTERS = frozenset((K.LAST, K.FIRST, K.ORDINAL, K.MIDDLE, K.FROM_LAST, K.EXTREME, K.NAME, K.REMAINING))
PLACES = POINTERS - {K.NAME, K.REMAINING}
TOLD = frozenset((K.NUMBER, K.EFFORT, K.WARMUP, K.FAILURE, K.MISS, K.DROP))
NEAR = 3
NEAR_THE_REPS = 1


def clauses(pieces: Sequence[Piece]) -> list[list[Piece]]:
    """The pieces in clauses, each with its own part and value."""
    out: list[list[Piece]] = [[]]
    for at, piece in enumerate(pieces):
        told = any(p.kind in TOLD for p in out[-1])
        behind = pieces[at + 1 : at + 1 + NEAR]
        pointed = piece.kind in CUTS and told and (_points(behind) or _is_another_load(behind, out[-1]))
        if pointed and _tells(pieces[at + 1 :]):
            out.append([])
        elif told and (piece.kind is K.REMAINING or _is_the_next_place(pieces, at, out[-1])):
            out.append([piece])
        else:
            out[-1].append(piece)
    return [_counted(_signed(with_felt(clause))) for clause in out]


def rated(clause: list[Piece], done: SetDone) -> list[Piece]:
    """ "last was a 9" of a set of five with an effort: an effort too, where it is no number of reps near those."""
    for at, piece in enumerate(clause[1:], start=1):
        article = any("an" in CUES_OF[word] for word in clause[at - 1].text.split()[-1:])
        if done.effort is None or not article or not is_effort(piece) or piece.value <= done.reps + NEAR_THE_REPS:
            continue
        rir = TOP_OF_SCALE - piece.value if done.effort.as_rpe else piece.value
        effort = replace(done.effort, rir=rir)
        return [*clause[:at], piece._replace(kind=K.EFFORT, efforts=(effort,)), *clause[at + 1 :]]
    return clause


def _points(pieces: Sequence[Piece]) -> bool:
    for at, piece in enumerate(pieces):
        numbered = at + 1 < len(pieces) and pieces[at + 1].kind is K.NUMBER
        if piece.kind in POINTERS or (piece.kind is K.SETS and numbered):
            return True
        if piece.kind not in (K.FILLER, K.THEN, K.AND):
            return False
    return False


def _is_another_load(behind: Sequence[Piece], before: Sequence[Piece]) -> bool:
    """ "105 was rpe 8, 110 was rpe 9": a number ahead of a verb of its own."""
    at = next((at for at, piece in enumerate(behind) if piece.kind is not K.FILLER or is_be(piece)), 0)
    numbered = at + 1 < len(behind) and behind[at].kind is K.NUMBER and is_be(behind[at + 1])
    return numbered and any(map(is_be, before))


def _is_the_next_place(pieces: Sequence[Piece], at: int, before: Sequence[Piece]) -> bool:
    """ "first two were 8 last one 7": a place with its number behind one with its own, and no comma between."""
    if pieces[at].kind not in PLACES or pieces[at].text.split()[0] in ("on", "for", "in"):
        return False
    behind = [piece for piece in pieces[at + 1 : at + 1 + NEAR] if piece.kind is not K.FILLER]
    placed = next((piece for piece in before if piece.kind not in (K.FILLER, K.THEN, K.AND)), None)
    return placed is not None and placed.kind in PLACES and bool(behind) and behind[0].kind is K.NUMBER


def _tells(pieces: Sequence[Piece]) -> bool:
    return any(piece.kind in TOLD for piece in pieces)


def _signed(clause: list[Piece]) -> list[Piece]:
    """ "@9" behind the last number, or alone: an effort, where no set is told again."""
    if any(piece.kind is K.TIMES for piece in clause):
        return clause
    for at, piece in enumerate(clause[:-1]):
        number = clause[at + 1]
        if piece.kind is K.AT and piece.text == "@" and is_effort(number):
            effort = number._replace(kind=K.EFFORT, efforts=(Effort.from_rpe(number.value),))
            return [*clause[:at], effort, *clause[at + 2 :]]
    return clause


def _counted(clause: list[Piece]) -> list[Piece]:
    """ "it was a triple": three reps."""
    return [
        piece._replace(kind=K.NUMBER, value=Decimal(piece.told), role=Role.REPS) if piece.kind is K.COUNT else piece
        for piece in clause
    ]


def is_of_all_reps(clause: Sequence[Piece]) -> bool:
    """ "wrong reps, 12", "the reps are wrong, 12": of all the sets that were told alike."""
    kinds = [piece.kind for piece in clause]
    at = kinds.index(K.REPS) if K.REPS in kinds else len(kinds)
    return K.COMMA in kinds[at:] and clause[at].text.endswith("s") and K.NUMBER not in kinds[:at]


def speaks_of_the_last_reps(pieces: Sequence[Piece]) -> bool:
    """ "cheated the last 2 reps of the last set": how some reps were done, and no number of them."""
    return any(a.text == THE_LAST and b.role is Role.REPS for a, b in pairwise(pieces) if a.kind is K.LAST)


THE_LAST = "the last"

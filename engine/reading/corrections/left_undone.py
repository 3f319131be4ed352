"""Sets that were counted and not done: "skipped the fourth one", "didn't get to set 4, gym was closing", "no 4th set".

undone = { "only did 3" "," } LEFT-UNDONE place [ reason ] | place LEFT-UNDONE | "there was no" ORDINAL
place  = ORDINAL | "set" NUMBER | "last" of sets that were told together

A set that was sent by itself was done, so that "skipped the last one" behind it is of none that stands; and so it is
where the plan has more sets than stand.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from engine.reading.corrections.correcting import Told
from engine.reading.corrections.parts import part_told
from engine.reading.latest_sets import latest_of_it
from engine.reading.marks.pain import tells_pain
from engine.reading.values import Context, Correction
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import PLACING, K
from engine.reading.words.pieces import Piece
from engine.values.sets import SetRecord

UNDONE, BECAUSE = frozenset(("leftundone",)), frozenset(("because",))
CUTS = frozenset((K.COMMA, K.STOP, K.DASH, K.OPEN))
BESIDE = PLACING | {K.SETS, K.NUMBER, K.FILLER, K.NAME, K.OF, K.GOT, K.NOTE, K.AND, K.FOR}
TELLING = PLACING | {K.NUMBER, K.COUNT, K.NAME, K.KG, K.LB, K.TIMES, K.EFFORT, K.NEVER, K.DENY, K.MISS, K.FAILURE}
ASKED = frozenset((K.QUESTION, K.FUTURE, K.TOMORROW, K.STORY, K.OTHERS, K.TIMES))


def left_undone(told: Told) -> Correction | None:
    """The sets pointed at, away; None where the words are of none that stand, or of more."""
    if not told.kinds().isdisjoint(ASKED) or told.pieces[0].kind is K.ASKS:
        return None
    clauses = _clauses(told.pieces)
    at = next((at for at, clause in enumerate(clauses) if _says_so(clause)), None)
    if at is None or not all(_may_stand_ahead(clause) for clause in clauses[:at]):
        return None
    if any(not TELLING.isdisjoint([piece.kind for piece in clause]) for clause in clauses[at + 1 :]):
        return None
    clause = [piece for piece in clauses[at] if not is_cued(piece.text, UNDONE) and piece.kind is not K.DENY]
    part = part_told(clause, told.context)
    if (
        part.missing
        or part.named_unknown
        or not part.places
        or not _are_of_one_message(clause, part.places, told.context)
    ):
        return None
    return Correction(removed=tuple(dict.fromkeys(part.places)), pain=tells_pain(told.pieces))


def _clauses(pieces: Sequence[Piece]) -> list[list[Piece]]:
    """The pieces cut at their signs, and where a reason begins."""
    out: list[list[Piece]] = [[]]
    for piece in pieces:
        if piece.kind in CUTS or (out[-1] and is_cued(piece.text, BECAUSE)):
            out.append([])
        else:
            out[-1].append(piece)
    return [clause for clause in out if clause]


def _says_so(clause: Sequence[Piece]) -> bool:
    """Whether a place stands beside words for leaving out, or right behind a no, and nothing else of sets."""
    said = [at for at, piece in enumerate(clause) if is_cued(piece.text, UNDONE) or _denies(clause, at)]
    if len(said) != 1:
        return False
    placed = not PLACING.isdisjoint([piece.kind for piece in clause])
    numbered = any(a.kind is K.SETS and b.kind is K.NUMBER for a, b in pairwise(clause))
    others = [piece.kind for at, piece in enumerate(clause) if at not in said]
    return (placed or numbered) and BESIDE.issuperset(others)


def _denies(clause: Sequence[Piece], at: int) -> bool:
    behind = clause[at + 1].kind if at + 1 < len(clause) else None
    return clause[at].kind is K.DENY and behind is K.ORDINAL


def _may_stand_ahead(clause: Sequence[Piece]) -> bool:
    """ "only did 3", "ugh": what says the same, or nothing."""
    kinds = [piece.kind for piece in clause]
    return TELLING.isdisjoint(kinds) or (
        K.ONLY in kinds and kinds.count(K.NUMBER) == 1 and TELLING.isdisjoint({*kinds} - {K.NUMBER})
    )


def _are_of_one_message(clause: Sequence[Piece], places: Sequence[SetRecord], context: Context) -> bool:
    """Whether sets that are pointed at as the last ones were told together, and no more of them were planned."""
    if K.LAST not in {piece.kind for piece in clause}:
        return True
    group = [record for record in context.recent if record.message == places[-1].message]
    alike = [record for record in group if record.done.exercise == places[-1].done.exercise]
    planned = sum(slot.sets for slot in context.plan if slot.exercise == places[-1].done.exercise)
    return len(alike) > len(places) and planned <= len(latest_of_it(context))

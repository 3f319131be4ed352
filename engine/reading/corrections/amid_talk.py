"""A correction amid talk: "phew, the 4th only 6", "62.5 not 60, the phone froze", "last was 6 cos i was tired".

message = [ talk cut ] correction [ cut talk ]      cut = "," | "." | "!" | " - " | bracket | BECAUSE

Talk is a clause that holds nothing a correction is told with. Numbers that others did are never cut away; pain is noted
beside the correction, and stays where its clause has a number or another lift in it.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.catalogue.catalogue import Catalogue
from engine.reading.corrections.parts import part_told
from engine.reading.corrections.said_to_be import is_be
from engine.reading.latest_sets import names_several
from engine.reading.prepare import Prepared, prepare
from engine.reading.values import Context
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook, spoken_words
from engine.reading.words.pieces import Piece, Role
from engine.reading.words.spoken_clauses import clauses_of

POINTS = frozenset((K.LAST, K.FIRST, K.ORDINAL, K.MIDDLE, K.FROM_LAST, K.NOT, K.SETS, K.ONLY, K.BOTH, K.DENY, K.FILLER))
TOLD = frozenset(
    (K.NUMBER, K.COUNT, K.EFFORT, K.RPE, K.RIR, K.RESERVE, K.RESERVE_LEFT, K.FAILURE, K.WARMUP, K.MISS, K.DROP, K.KG,
     K.LB, K.NOT, K.TIMES, K.AT, K.LAST, K.FIRST, K.ORDINAL, K.MIDDLE, K.FROM_LAST, K.EXTREME, K.EXCEPT,
     K.DATE, K.WEEKDAY, K.YESTERDAY, K.TODAY, K.AGO)
)  # fmt: skip
NOT_TALK = frozenset((K.QUESTION, K.STORY, K.TOMORROW, K.LINE))
PUTTING_RIGHT = frozenset((K.NUMBER, K.COUNT, K.KG, K.LB, K.DATE, K.WEEKDAY, K.YESTERDAY, K.TODAY, K.AGO))
RENAMING = frozenset((K.NAME, K.VARIANT, K.DUMBBELL, K.BARBELL, K.CABLE, K.MACHINE, K.KETTLEBELL))
NAMED_ALONE = frozenset((K.NAME, K.FILLER, K.AND, K.COMMA, K.STOP))
TAKEN = frozenset(("taken",))
SAID = frozenset((K.PLAIN, K.JOINT, K.MUSCLE, K.UNRELATED, K.NOTE))
REMARK = frozenset((K.NAME, K.NOTE, K.FILLER, K.PLAIN, K.STOP, K.COMMA, K.AND))
MOST_CLAUSES = 6
POINTED_AND_WAS = 2


def amid_talk(prepared: Prepared, context: Context, catalogue: Catalogue) -> Prepared | None:
    """The message without its clauses of talk; None where it has none, or nothing else."""
    if prepared.told & NOT_TALK or not prepared.told & POINTS or not prepared.told & (PUTTING_RIGHT | RENAMING):
        return None
    clauses = clauses_of(prepared.cleaned, spoken_words(prepared.tokens), phrasebook())
    kept = [(start, end) for start, end in clauses if _tells(prepared, start, end, context)]
    if not 1 < len(clauses) <= MOST_CLAUSES or len(kept) == len(clauses) or not kept:
        return None
    if any(piece.kind is K.OTHERS and start <= piece.start < end for piece in prepared.spoken for start, end in kept):
        return None
    return prepare(", ".join(prepared.cleaned[start:end].strip() for start, end in kept), context, catalogue)


def _tells(prepared: Prepared, start: int, end: int, context: Context) -> bool:
    inside: Sequence[Piece] = [piece for piece in prepared.spoken if start <= piece.start < end]
    if any(is_cued(piece.text, TAKEN) for piece in inside):
        return not PUTTING_RIGHT.isdisjoint([piece.kind for piece in inside])  # "the bench was taken"
    if any(piece.kind is K.PLANNED for piece in inside):
        # "first two as planned" changes nothing of those that stand; "as planned apart from the last set" tells which
        return any(piece.kind is K.EXCEPT for piece in inside) or part_told(inside, context).missing
    kinds = {piece.kind for piece in inside}
    done = {record.done.exercise for record in context.recent}
    if K.PAIN in kinds:
        latest = context.recent[-1].done.exercise
        others = any(piece.kind is K.NAME and latest not in piece.names for piece in inside)
        days = {piece.kind for piece, ahead in zip(inside, [None, *inside], strict=False) if _is_since(ahead)}
        return others or not (kinds - days).isdisjoint(TOLD)
    if kinds & TOLD == {K.TODAY} and not kinds.isdisjoint((K.PLAIN, K.NEVER, K.NOTE, K.UNRELATED)):
        return False  # "can't count today"
    if renames(inside) or K.NAME in kinds <= NAMED_ALONE:  # "front squat, and bench was incline"
        return True
    if _remarks(kinds, prepared, context):
        return False
    return any(piece.kind in TOLD or (piece.kind is K.NAME and not done.isdisjoint(piece.names)) for piece in inside)


def _remarks(kinds: set[K], prepared: Prepared, context: Context) -> bool:
    """ "knees weren't having it", "had smaller plates on", and "squat felt heavy" beside another lift."""
    if kinds & TOLD == {K.NOT}:
        return not kinds.isdisjoint(SAID)
    felt = K.NOTE in kinds and kinds <= REMARK and names_several(prepared.spoken, context)
    return felt or kinds & TOLD == {K.RESERVE_LEFT}


def _is_since(piece: Piece | None) -> bool:
    """Whether the day behind the word is one since which something hurts, and none of sets."""
    return piece is not None and piece.kind is K.NOT_DATE and is_cued(piece.text, SINCE)


SINCE = frozenset(("since",))


def without_gear(prepared: Prepared, context: Context, catalogue: Catalogue) -> Prepared:
    """The message without a clause that only tells what was on the bar, or what it weighs, beside the one new load."""
    if prepared.told.isdisjoint(GEAR) and not any(piece.role is Role.PLURAL for piece in prepared.spoken):
        return prepared
    clauses = clauses_of(prepared.cleaned, spoken_words(prepared.tokens), phrasebook())
    inside = [[piece for piece in prepared.spoken if start <= piece.start < end] for start, end in clauses]
    told = [span for span, clause in zip(clauses, inside, strict=True) if not _is_of_gear(clause, inside)]
    if len(told) != 1 or len(clauses) == 1:
        return prepared
    return prepare(prepared.cleaned[told[0][0] : told[0][1]].strip(), context, catalogue)


def _is_of_gear(clause: Sequence[Piece], clauses: Sequence[Sequence[Piece]]) -> bool:
    """ "used the short bar which is 15" beside one new load; "saw i had 1.25s on" beside "the press was 42.5"."""
    numbers = [piece for piece in clause if piece.kind is K.NUMBER]
    kinds = {piece.kind for piece in clause}
    others = [piece for other in clauses if other is not clause for piece in other]
    if not numbers or kinds & TELLING_SETS or sum(piece.kind is K.NUMBER for piece in others) != 1:
        return False
    if K.BAR in kinds:
        return True
    if K.NOT in kinds:
        return False
    named = any(piece.kind is K.NAME for piece in others) and any(map(is_be, others))
    on_it = K.PLATE in kinds or all(piece.role is Role.PLURAL for piece in numbers)
    return named and on_it and not any(map(is_be, clause))


GEAR = frozenset((K.BAR, K.PLATE))
TELLING_SETS = frozenset((K.NAME, K.TIMES, K.LAST, K.FIRST, K.ORDINAL, K.MIDDLE, K.FROM_LAST, K.REPS, K.SETS))


def renames(clause: Sequence[Piece]) -> bool:
    """ "that was incline", "those were dumbbells"."""
    head = clause[:POINTED_AND_WAS]
    return (
        len(head) == POINTED_AND_WAS
        and is_be(head[1])
        and not RENAMING.isdisjoint([piece.kind for piece in clause[POINTED_AND_WAS:]])
    )

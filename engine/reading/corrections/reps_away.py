"""Reps taken off sets that stand: "remove a rep from the last", "2 reps off set 1", "the last rep didn't count".

away   = verb amount [ "from" | "off" | "of" ] [ part ]  |  "last rep" [ "of" part ] "didn't count"
amount = ( "a" | NUMBER ) "rep"  |  "the last rep"
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import NamedTuple

from engine.reading.corrections.correcting import Told
from engine.reading.corrections.parts import part_told
from engine.reading.corrections.shifted import MOST_CHANGED, REP, TAKING
from engine.reading.latest_sets import latest_of_it
from engine.reading.values import Correction
from engine.reading.words.cues import any_cued, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import spoken
from engine.reading.words.pieces import Piece, Role, last_word
from engine.values.sets import SetRecord

ONE = frozenset(("an",))
THE = frozenset(("the",))
ENDS = frozenset((K.LAST, K.FIRST))
BESIDE = frozenset(
    (K.FILLER, K.NAME, K.LAST, K.FIRST, K.MIDDLE, K.FROM_LAST, K.ORDINAL, K.SETS, K.NUMBER, K.BOTH, K.OF, K.COMMA,
     K.STOP, K.EACH, K.ASSISTED, K.NOT_DATE, K.FOR, K.NOTE)
)  # fmt: skip


class Amount(NamedTuple):
    """So many reps; `end`: they are the last ones of a set. The pieces from `start` to before `stop` say so."""

    reps: int
    start: int
    stop: int
    end: bool = False


def reps_taken(told: Told) -> Correction | None:
    """The sets pointed at, with so many reps fewer."""
    amount = reps_asked_away(told)
    if amount is None:
        return None
    rest = [*told.pieces[: amount.start], *told.pieces[amount.stop :]]
    if any(piece.kind not in BESIDE and not _is_of_taking(piece, told) for piece in rest):
        return None
    for record in _reached(rest, amount, told):
        done = told.now(record)
        told.set_to(record, replace(done, reps=done.reps - amount.reps))
    return told.correction()


def reps_asked_away(told: Told) -> Amount | None:
    """What the message wants off a set, where it speaks of reps and of no whole set."""
    taking = told.starts("delete") or any_cued(told.words[:1], TAKING)
    undone = told.has("undone")
    if not (taking or undone) or K.QUESTION in told.kinds():
        return None
    amounts = (_amount(told.pieces, at) for at in range(len(told.pieces)))
    amount = next((one for one in amounts if one is not None), None)
    if amount is None or (undone and amount.end):
        return amount
    ahead = told.pieces[: amount.start]
    return amount if taking and all(p.kind in AHEAD or _is_of_taking(p, told) for p in ahead) else None


def _is_of_taking(piece: Piece, told: Told) -> bool:
    known = {word for cue in CUES for said in told.book.cues[cue] for word in said.split()}
    return known.issuperset(map(spoken, piece.text.split()))


CUES = ("delete", "undone", "take", "minus")
AHEAD = frozenset((K.FILLER, K.ASSISTED))


def _amount(pieces: Sequence[Piece], at: int) -> Amount | None:
    piece = pieces[at]
    before = pieces[at - 1] if at else None
    if at + 1 < len(pieces) and pieces[at + 1].kind is K.SETS:
        return None  # "the 5 rep set"
    if piece.kind is K.NUMBER and piece.role is Role.REPS:
        several = 1 <= piece.value <= MOST_CHANGED and not (before and is_cued(before.text, THE))
        return Amount(int(piece.value), at, at + 1) if several and piece.value % 1 == 0 else None
    if piece.kind in ENDS and is_cued(last_word(piece), REP):
        return Amount(1, at, at + 1, end=True)
    if piece.kind is not K.REPS or before is None:
        return None
    if before.kind in ENDS and before.text.split()[-1:] != ["one"]:
        return Amount(1, at - 1, at + 1, end=True)
    return Amount(1, at - 1, at + 1) if is_cued(before.text, ONE) else None


def _reached(rest: Sequence[Piece], amount: Amount, told: Told) -> Sequence[SetRecord]:
    """The sets that lose them; none where that is open, or where a set has no more."""
    part = part_told(rest, told.context)
    each = any(piece.kind is K.EACH for piece in rest)
    latest = latest_of_it(told.context)
    if part.missing or part.named_unknown:
        return ()
    if part.points or each:
        reached: Sequence[SetRecord] = part.reached(told.context, plural=True)
    else:
        reached = latest[-1:] if amount.end or len(latest) == 1 else ()
    return reached if all(record.done.reps > amount.reps for record in reached) else ()

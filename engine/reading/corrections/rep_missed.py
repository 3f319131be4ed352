"""The rep that was not made, told by its number behind the set: "rep 6 failed", "failed on rep 5", "rep 6 fail".

missed = REP NUMBER MISS | MISS REP NUMBER | ORDINAL REP MISS      of the set just told, where it is the rep behind
         those made, or the last of those told; of any other, or behind sets told together, it is asked
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from engine.reading.corrections.nothing_changed import REPS_APART, nothing_changed
from engine.reading.latest_sets import last_message
from engine.reading.marks.reps_perhaps import FAILING
from engine.reading.prepare import Prepared
from engine.reading.values import Context, Correction, NoSets
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role

MISSED = frozenset((K.MISS, K.FAILURE))
PLAIN = MISSED | {K.REPS, K.NUMBER, K.ORDINAL, K.FILLER, K.STOP, K.COMMA, K.COLON, K.AT}


def rep_missed(prepared: Prepared, context: Context) -> Correction | NoSets | None:
    """The set with that rep missed, or why nothing is changed; None where no such rep is told."""
    if MISSED.isdisjoint(prepared.told) or not prepared.told <= PLAIN or not _is_missed(prepared.spoken):
        return None
    rep = _rep_told(prepared.spoken)
    if not rep:
        return None
    latest, made = context.recent[-1], rep - 1
    done = latest.done
    fits = done.reps in (made, rep) and done.seconds is None and done.metres is None and not done.missed
    if len(last_message(context)) > 1 or not fits:
        return nothing_changed(prepared, REPS_APART)
    return Correction(changed=((latest, replace(done, reps=made, missed=True)),))


def _is_missed(pieces: Sequence[Piece]) -> bool:
    """ "failed", "fail"; "to failure" may be of the set."""
    return any(piece.kind is K.MISS or (piece.kind is K.FAILURE and is_cued(piece.text, FAILING)) for piece in pieces)


def _rep_told(pieces: Sequence[Piece]) -> int:
    """The number of the rep; 0 where none is told, or more than one number."""
    if sum(piece.kind in (K.NUMBER, K.ORDINAL) for piece in pieces) != 1:
        return 0
    for before, piece in pairwise(pieces):
        if before.kind is K.REPS and piece.kind is K.NUMBER and piece.role is Role.BARE and piece.value % 1 == 0:
            return int(piece.value)
        if before.kind is K.ORDINAL and piece.kind is K.REPS:
            return before.told
    return 0

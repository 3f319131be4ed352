"""A set named by its numbers: "the 30x6 wasn't a warm-up", "60x10 should be 9", "delete the 30x6".

named = [ "the" ] NUMBER "x" NUMBER      ahead of "was" or of words that deny, or behind "the" of what asks for it away

It stands for its place among the lift's sets, as "the second one" does, where just one of them has those numbers.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.corrections.parts import Part, part_told, sets_of
from engine.reading.corrections.said_to_be import is_be
from engine.reading.corrections.sets_having import having
from engine.reading.values import Context
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import DENYING, K
from engine.reading.words.pieces import Piece, Role, first_word, last_word
from engine.values.ids import ExerciseName
from engine.values.sets import SetRecord

PAIR = (K.NUMBER, K.TIMES, K.NUMBER)
AHEAD = frozenset((K.FILLER, K.NAME, K.ONLY, K.OTHERS, K.NOTE, K.PLAIN))
MARKED = frozenset((K.WARMUP, K.FAILURE, K.DROP, K.MISS))
THE, FELT = frozenset(("the", "that")), frozenset(("felt",))


def with_named_by_numbers(pieces: list[Piece], context: Context, *, asked: bool) -> list[Piece]:
    """The pieces with the load and reps that name one set as its place, and as its lift where that is not the latest;
    as they are where they name none. `asked`: something is asked for, as "delete" and "make" do.
    """
    at = _place(pieces, asked=asked) if context.recent else None
    if at is None:
        return pieces
    named = [piece for piece in pieces[:at] if piece.kind is K.NAME]
    for lift in _lifts(pieces[:at], context):
        group = sets_of(Part(named=lift), context)
        found = [place for place, one in enumerate(group, start=1) if _has(one, pieces[at], pieces[at + 2], group)]
        if len(found) > 1:
            return pieces
        if found:
            place = pieces[at]._replace(
                kind=K.ORDINAL, end=pieces[at + 2].end, told=found[0], role=Role.BARE, unit=None
            )
            other = lift != context.recent[-1].done.exercise and not named
            lifted = [place._replace(kind=K.NAME, text=str(lift), names=(lift,), told=0)] if other else []
            return [*pieces[:at], *lifted, place, *pieces[at + 3 :]]
    return pieces


def names_none(pieces: Sequence[Piece]) -> bool:
    """ "the 60x8 was a warm-up", where no such set stands: no new set is told so, but one that was to be there."""
    at = _place(pieces, asked=False)
    if at is None or not at or not is_cued(last_word(pieces[at - 1]), THE):
        return False
    behind = pieces[at + 3 :]
    return any(piece.kind in MARKED or piece.kind in DENYING for piece in behind) and is_be(behind[0])


def _place(pieces: Sequence[Piece], *, asked: bool) -> int | None:
    at = next((at for at in range(len(pieces) - 2) if _is_pair(pieces, at)), None)
    return at if at is not None and _names_a_set(pieces, at, asked=asked) else None


def _lifts(ahead: Sequence[Piece], context: Context) -> list[ExerciseName]:
    """The lift named, or each lift of the latest day, the latest first."""
    named = part_told(ahead, context).named
    day = context.recent[-1].on
    done = dict.fromkeys(one.done.exercise for one in reversed(context.recent) if one.on == day)
    return [named] if named is not None else list(done)


def _has(record: SetRecord, load: Piece, reps: Piece, group: Sequence[SetRecord]) -> bool:
    return record.done.reps == reps.value and record in having(load._replace(role=Role.LOAD), group)


def _is_pair(pieces: Sequence[Piece], at: int) -> bool:
    return tuple(piece.kind for piece in pieces[at : at + 3]) == PAIR


def _names_a_set(pieces: Sequence[Piece], at: int, *, asked: bool) -> bool:
    """Whether the pair tells which set is meant, and not what was lifted."""
    if not all(piece.kind in AHEAD and not is_be(piece) for piece in pieces[:at]):
        return False
    behind = next((piece for piece in pieces[at + 3 :] if piece.kind not in (K.KG, K.LB)), None)
    article = at > 0 and is_cued(last_word(pieces[at - 1]), THE)
    if behind is None or (asked and article):
        return asked and article
    denied = behind.kind in DENYING or (behind.kind is K.NOTE and len(behind.text.split()) > 1)
    felt = article and (behind.kind in MARKED or is_cued(first_word(behind), FELT))
    return is_be(behind) or denied or felt

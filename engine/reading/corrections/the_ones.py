"""Sets called "ones": "the squat ones were 102.5", "the rope ones were pushdowns", and "really", which says no more.

ones = NAME "ones" | word of a lift's name "ones" | NUMBER "ones"      a word that just one lift of the day has
     | EQUIPMENT "ones"                                                where no lift of the day is called so
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.corrections.said_to_be import in_full, is_be
from engine.reading.entries.names import EQUIPMENT, WORDS
from engine.reading.prepare import Prepared
from engine.reading.values import Context
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.lexicon import plain_word
from engine.reading.words.pieces import Piece
from engine.values.ids import ExerciseName

BESIDE = frozenset((K.FILLER, K.SETS, K.WITH))
VALUES = frozenset((K.NUMBER, K.EFFORT, K.RPE, K.RIR))
ONES, TRULY = frozenset(("theones",)), frozenset(("intruth",))


def with_ones(pieces: list[Piece], context: Context) -> list[Piece]:
    """The pieces with the lift in place of the word that tells which ones, and without "really" behind a verb."""
    pieces = [piece._replace(kind=K.FILLER) if is_cued(piece.text, TRULY) and at else piece
              for at, piece in enumerate(pieces)]  # fmt: skip
    at = next((at for at in range(1, len(pieces)) if _are_ones(pieces, at)), 0)
    if not at or not context.recent:
        return pieces
    before = pieces[at - 1]
    if before.kind is K.NUMBER:
        return [*pieces[:at], *pieces[at + 1 :]]
    lifts = _lifts(before, context)
    if not lifts and before.kind in EQUIPMENT:
        return [*pieces[:at], *pieces[at + 1 :]]  # "the cable ones": with what they were done
    if len(lifts) != 1:
        return pieces
    named = before._replace(kind=K.NAME, names=(lifts[0],))
    return [*pieces[: at - 1], named, *pieces[at + 1 :]]


def _are_ones(pieces: Sequence[Piece], at: int) -> bool:
    """ "ones", and "sets" behind what they were done with: "die kurzhantelsätze"."""
    return is_cued(pieces[at].text, ONES) or (pieces[at].kind is K.SETS and pieces[at - 1].kind in EQUIPMENT)


def none_of_that_sort(prepared: Prepared, context: Context) -> bool:
    """ "the dumbbell ones were 22", "die kurzhantelsätze waren 22" where nothing was done with dumbbells that day."""
    if prepared.told.isdisjoint(EQUIPMENT) or K.TIMES in prepared.told or not context.recent:
        return False
    pieces = in_full(prepared)
    verb = next((at for at, piece in enumerate(pieces) if is_be(piece)), 0)
    ahead, behind = pieces[:verb], pieces[verb + 1 :]
    sorts = [piece for piece in ahead if piece.kind in EQUIPMENT]
    said = all(
        piece.kind in (K.FILLER, K.SETS, K.WITH) or piece in sorts or is_cued(piece.text, ONES) for piece in ahead
    )
    if len(sorts) != 1 or not said or VALUES.isdisjoint([piece.kind for piece in behind]):
        return False
    called = any(piece.kind is K.SETS or is_cued(piece.text, ONES) for piece in ahead)
    return called and not _lifts(sorts[0], context)


def _lifts(word: Piece, context: Context) -> list[ExerciseName]:
    """The lifts of the latest day that are called so, or whose names hold the word."""
    day = context.recent[-1].on
    done = list(dict.fromkeys(record.done.exercise for record in context.recent if record.on == day))
    named = [lift for lift in done if lift in word.names]
    said = plain_word(WORDS.get(word.kind, word.text)).split()
    return named[:1] if named else [lift for lift in done if set(said) <= {*lift.replace("-", " ").split()}]

"""So many sets or reps said to have been of some kind, behind sets that stand: a remark on them, and no value.

described = { word } "was" NUMBER word+ ( SETS | REPS | "ones" )       "that was 1 hard set", "those were 3 good ones"
One alone, or just as many as were told, says what they were like; of any other number of sets it is asked what is
meant, and other reps are a correction: "that was 4 slow reps".
"""

from __future__ import annotations

from engine.reading.corrections.nothing_changed import unclear
from engine.reading.corrections.said_to_be import is_be
from engine.reading.latest_sets import run_of_it
from engine.reading.marks.counts_described import MOST_WORDS, SAID_OF_A_COUNT
from engine.reading.prepare import Prepared
from engine.reading.values import Context, NoSets
from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role, kinds_in_order

SAID = "talk: what the sets were like"
HEADING = frozenset((K.FILLER, K.PLAIN, K.DENY, K.COMMA))
NAMING = frozenset((K.SETS, K.REPS))
ONES = frozenset(("oneset",))


def sets_described(prepared: Prepared, context: Context) -> NoSets | None:
    """That nothing is changed, and whether anything was meant to be; None where no sets are described."""
    pieces = prepared.spoken
    if not context.recent or K.NUMBER not in prepared.told or SAID_OF_A_COUNT.isdisjoint(prepared.told):
        return None
    kinds = kinds_in_order(pieces)
    at = kinds.index(K.NUMBER)
    if kinds.count(K.NUMBER) > 1 or not _heads(pieces[:at]) or not _is_described(pieces, at):
        return None
    told = pieces[at].value
    if K.REPS in kinds[at:]:
        return NoSets(why=SAID) if told in (1, context.recent[-1].done.reps) else None
    return NoSets(why=SAID) if told in (1, len(run_of_it(context))) else unclear(prepared)


def _heads(pieces: list[Piece]) -> bool:
    """ "that was", "oh those were"."""
    return any(map(is_be, pieces)) and all(piece.kind in HEADING for piece in pieces)


def _is_described(pieces: list[Piece], at: int) -> bool:
    end = at + 1
    while kind_at(pieces, end) in SAID_OF_A_COUNT and end - at <= MOST_WORDS and not _is_named(pieces, end):
        end += 1
    return pieces[at].role is Role.BARE and end > at + 1 and _is_named(pieces, end)


def _is_named(pieces: list[Piece], at: int) -> bool:
    return kind_at(pieces, at) in NAMING or (at < len(pieces) and is_cued(pieces[at].text, ONES))

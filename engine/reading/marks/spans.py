"""Spans of time that count no reps: "squat 3x5 100 after 2 weeks off", "first bench in 3 months: 60x8".

span = NUMBER DAYS "a" WEEK
     | ( "after" | "in" | "for" | "," | "a" | NUMBER ) NUMBER WEEKS [ "off" ]      also at the start of a line
"""

from __future__ import annotations

from engine.reading.words.ahead import aside, is_amount, kind_at
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook, spoken
from engine.reading.words.pieces import Piece, kinds_in_order, places_in

BEFORE_A_SPAN = frozenset(
    (
        K.NOT_DATE,
        K.THEN,
        K.FILLER,
        K.FOR,
        K.WITH,
        K.OF,
        K.COMMA,
        K.OPEN,
        K.ASSISTED,
        K.EARLIER,
        K.EFFORT,
        K.PLAIN,
        K.NUMBER,
        K.STOP,
        K.LINE,
    )
)
BEHIND_A_SPAN = frozenset((K.ASSISTED, K.REST))
LONGEST_SPAN = 60
ONE_OF_THEM = frozenset(("onetime",))


def past_a_span(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """The place behind a span that begins with the number here, which is set aside; 0 where none does."""
    behind = _behind_a_span(pieces, at, out)
    if behind:
        out.append(aside(pieces[at]))
    return behind


def _behind_a_span(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    if pieces[at].value > LONGEST_SPAN or not _is_unit(pieces, at + 1):
        return 0
    if pieces[at].value != 1 and is_cued(pieces[at + 1].text, ONE_OF_THEM):
        return 0  # "5, 4 settimana di scarico": no four weeks
    if _is_unit(pieces, at + 3) and spoken(pieces[at + 2].text) in phrasebook().cues["often"]:
        return at + 4
    led = not out or out[-1].kind in BEFORE_A_SPAN
    after = kind_at(pieces, at + 2)
    if not led or is_amount(pieces, at + 2) or after in (K.TIMES, K.AGO, K.WEEKS_AGO):
        return 0
    return at + 2 + (after in BEHIND_A_SPAN)


def _is_unit(pieces: list[Piece], at: int) -> bool:
    if at >= len(pieces) or pieces[at].kind not in UNITS:
        return False
    return spoken(pieces[at].text) in phrasebook().cues["span"]


def may_hold_spans(pieces: list[Piece], kinds: set[K]) -> bool:
    """Whether a unit of such spans stands among the pieces, which are of these kinds."""
    if kinds.isdisjoint(UNITS):
        return False
    words = [spoken(pieces[at].text) for at in places_in(UNITS, kinds_in_order(pieces))]
    return not phrasebook().cues["span"].isdisjoint(words)


UNITS = frozenset((K.PLAIN, K.HEADING, K.FAR, K.FILLER, K.UNRELATED))

"""When and how long somebody trained: times beside the sets that are no sets.

hour    = CLOCK behind "at", or ahead of a lift that has numbers of its own; 7am     "at 18:30", "18:30 bench 3x5 80"
session = TIME ( "total" | "session" | "in the gym" ), ( "trained" | "total" ) TIME, or one in brackets  "(45 min)"
"""

from __future__ import annotations

from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import CUES_OF, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role, is_one_word

EARLIEST_HOUR, END_OF_DAY = 4 * 60, 24 * 60
"""A clock from 4:00 on may tell the hour; a shorter one is rather a hold of minutes. Common practice, no source."""
SHORTEST_SESSION = 15 * 60
"""Seconds; a time in brackets from here on is the session's and no set's. Common practice, no source."""
SHORTEST_TIME_HAD = 5 * 60
REACH = 60
"""How many pieces from an hour its first lift may stand; and from a time had. Common practice, no source."""
SESSIONS = frozenset(("workout", "exercise"))
TRAINED = SESSIONS | {"lasted"}
HALVES_OF_THE_DAY = frozenset(("am", "pm"))
LINKS = frozenset((K.COLON, K.FILLER, K.FOR, K.TOTAL, K.EQUALS))
STARTS = frozenset((None, K.LINE, K.WEEKDAY, K.DATE, K.TODAY, K.HEADING, K.OPEN))


def of_the_day(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """The place behind an hour or the length of a session that starts here; `at` where none does."""
    piece, after = pieces[at], pieces[at + 1] if at + 1 < len(pieces) else None
    if piece.role is Role.BARE:
        return _past_half_of_the_day(pieces, at, out)
    if piece.role is not Role.SECONDS:
        return at
    if after is not None and (after.kind in (K.WARMUP, K.UNRELATED) or is_cued(after.text, SESSIONS)):
        return at + 2
    if _is_hour(pieces, at, out) or (piece.value >= SHORTEST_TIME_HAD and _is_time_had(pieces, at, out)):
        return at + 1
    if piece.value >= SHORTEST_SESSION and _is_at_the_gym(pieces, at + 1):
        return at + 1
    if piece.value >= SHORTEST_SESSION and _is_session(pieces, at, out):
        return at + 1 + (after is not None and after.kind is K.TOTAL)
    return at


def _is_at_the_gym(pieces: list[Piece], at: int) -> bool:
    """ "55 minutes in the gym and only bench 3x8 60"."""
    while kind_at(pieces, at) in (K.FILLER, K.WITH, K.SECONDS):
        at += 1
    return at < len(pieces) and "venue" in CUES_OF[pieces[at].text]


def _past_half_of_the_day(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """The place behind "7pm", "7 pm", "at 7 am"; the German "am" has a day behind it."""
    half = pieces[at + 1] if at + 1 < len(pieces) else None
    if half is None or half.text not in HALVES_OF_THE_DAY:
        return at
    parted = half.text != BEFORE_NOON or kind_at(pieces, at + 2) in PARTING
    if not half.glued and not (parted and is_one_word(half) and pieces[at].value <= LAST_OF_A_HALF):
        return at
    if out and is_cued(out[-1].text, AT_HOUR):
        out[-1] = out[-1]._replace(kind=K.FILLER)
    return at + 2


BEFORE_NOON = "am"
LAST_OF_A_HALF = 12
AT_HOUR = frozenset(("athour",))
PARTING = frozenset((None, K.COMMA, K.STOP, K.LINE, K.CLOSE, K.DASH, K.COLON))


def _is_hour(pieces: list[Piece], at: int, out: list[Piece]) -> bool:
    piece = pieces[at]
    if ":" not in piece.text or not EARLIEST_HOUR <= piece.value < END_OF_DAY:
        return False
    if out and (out[-1].text == "@" or "athour" in CUES_OF[out[-1].text]):
        return True
    bound = out[-2] if len(out) > 1 and out[-1].kind is K.COLON else out[-1] if out else None
    if bound is not None and "bound" in CUES_OF[bound.text] and kind_at(pieces, at + 1) in (None, K.LINE):
        return True  # "end: 19:05"
    if (out[-1].kind if out else None) not in STARTS:
        return False
    if _bounds_the_session(pieces, at + 1):
        return True
    ahead = [one.kind for one in pieces[at + 1 : at + 1 + REACH]]
    named = next((place for place, kind in enumerate(ahead) if kind is K.NAME), len(ahead))
    return K.NUMBER not in ahead[:named] and K.NUMBER in ahead[named:]


def _bounds_the_session(pieces: list[Piece], at: int) -> bool:
    """ "19:05 end" on a line of its own: one word behind the clock, which says that they began or were done."""
    return at < len(pieces) and "bound" in CUES_OF[pieces[at].text] and kind_at(pieces, at + 1) in (None, K.LINE)


def _is_time_had(pieces: list[Piece], at: int, out: list[Piece]) -> bool:
    """ "i only had 20 min so just squats 3x5 100": a time among the words ahead of the first lift and its numbers."""
    if any(piece.kind in (K.NAME, K.NUMBER) for piece in out) or kind_at(pieces, at + 1) in (K.NAME, K.OF, None):
        return False
    ahead = [piece.kind for piece in pieces[at + 1 : at + 1 + REACH]]
    named = next((place for place, kind in enumerate(ahead) if kind is K.NAME), len(ahead))
    # "25 min late but: front squat 4x3 80"
    apart = named > 0 and (out or K.COLON in ahead[:named]) and K.NUMBER not in ahead[:named]
    return bool(apart) and K.NUMBER in ahead[named:]


def _is_session(pieces: list[Piece], at: int, out: list[Piece]) -> bool:
    bracketed = bool(out) and out[-1].kind is K.OPEN and kind_at(pieces, at + 1) is K.CLOSE
    if bracketed or kind_at(pieces, at + 1) is K.TOTAL:
        return True
    before = len(out)
    while before and (out[before - 1].kind in LINKS or is_cued(out[before - 1].text, TRAINED)):
        before -= 1
    told = any(one.kind is K.TOTAL or is_cued(one.text, TRAINED) for one in out[before:])
    out[before:] = [one for one in out[before:] if one.kind is not K.TOTAL]
    return told


def past_total(pieces: list[Piece], at: int) -> int:
    """The place behind "in total", which belongs to the hours in front of it."""
    end = at
    while kind_at(pieces, end) is K.FILLER:
        end += 1
    return end + 1 if kind_at(pieces, end) is K.TOTAL else at

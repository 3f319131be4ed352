"""What was left out, ahead of what was done: "skipped squats did bench 3x5 80", "all but the last of bench 3x8 60".

lifts = NEVER name ":" name NUMBER | name NEVER ":" name NUMBER              "skipped bench: squat 3x5 100"
      | NEVER ... name+ ( "only" | "did" | "so" | "but" ) ... name NUMBER    those in front are parted from the sets
set   = LEFT ... place ( "of" | "on" | ":" ) name sets "x" reps              LEFT: never, a drop, "all but", "cut"
      | LEFT ... place ":" name load reps+          a remark: of sets that are listed it is none
Whether the sets behind a place were counted with it or without is asked.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.cues import any_cued, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role, kinds_in_order, places_of

MAY_LEAVE_OUT = frozenset((K.NEVER, K.LAST, K.FIRST))
LEFT = frozenset((K.NEVER, K.DROP, K.EXCEPT))
LEFT_OFF = frozenset(("leftoff", "but"))
TURNING = frozenset(("did", "so", "but", "instead"))
BETWEEN_LIFTS = frozenset((K.FILLER, K.AND, K.SLASH, K.TODAY))
AHEAD_OF_SETS = frozenset((K.FILLER, K.ONLY, K.AND))
OF_A_LIFT = frozenset((K.OF, K.FILLER, K.WITH, K.AT))
PARTED_BY = frozenset((K.COLON, K.COMMA, K.DASH))
LEAST_LISTED = 3
"""A load and the reps of two sets."""
PLACES = frozenset((K.LAST, K.FIRST))
LONGEST_HEAD = 6


def with_left_out(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with such lifts parted from the sets behind them, and such a set asked about."""
    kinds = kinds_in_order(pieces)
    names = places_of(K.NAME, kinds)
    if not names or K.NUMBER in kinds[: names[0]] or names[0] > LONGEST_HEAD:
        return pieces
    place = next((at for at in range(names[0]) if kinds[at] in PLACES), -1)
    parted = not PARTED_BY.isdisjoint(kinds[place + 1 : names[0]])
    between = OF_A_LIFT | PARTED_BY | {K.NEVER} if parted else OF_A_LIFT  # "letzten satz ausgelassen: beinpresse"
    told = kinds[place + 1 : names[0]]
    if place >= 0 and set(told) <= between and (_leaves_off(pieces[:place]) or K.NEVER in told):
        if parted and K.TIMES not in kinds and kinds.count(K.NUMBER) >= LEAST_LISTED:
            return [pieces[0]._replace(kind=K.NOTE, end=pieces[names[0] - 1].end), *pieces[names[0] :]]
        return _with_head_asked(pieces, names[0])
    if len(names) < 2 or K.NEVER not in kinds[:2]:
        return pieces
    return _parted(pieces, kinds) if kinds[0] is K.NEVER else _headed(pieces, kinds)


def _leaves_off(head: Sequence[Piece]) -> bool:
    return any(piece.kind in LEFT or is_cued(piece.text, LEFT_OFF) for piece in head)


def _with_head_asked(pieces: list[Piece], name: int) -> list[Piece]:
    """The head behind the sets, as words that may change them: where several were counted and nothing else is told."""
    behind = pieces[name + 1 :]
    counts = [piece.kind for piece in behind[:3]] == [K.NUMBER, K.TIMES, K.NUMBER] and behind[0].value > 1
    if not counts or behind[0].role is Role.LOAD or any(piece.kind in (K.NAME, K.LINE) for piece in behind):
        return pieces
    return [pieces[name], *behind, pieces[0]._replace(kind=K.ALTERED, end=pieces[name - 1].end)]


def _parted(pieces: list[Piece], kinds: Sequence[K]) -> list[Piece]:
    """A comma behind the lifts that were left out, where a word turns to what was done."""
    at = 1
    while at < len(kinds) and (kinds[at] is K.NAME or (kinds[at] in BETWEEN_LIFTS and not _turns(pieces[at]))):
        at += 1
    if kinds[at : at + 3] == HEADED_SETS and K.NAME in kinds[:at]:
        return _with_a_comma(pieces, at)  # "skipped bench: squat 3x5 100"
    behind = at
    while behind < len(kinds) and kinds[behind] in AHEAD_OF_SETS:
        behind += 1
    done = kinds[behind : behind + 2] == [K.NAME, K.NUMBER] and K.NAME in kinds[:at]
    if behind == at or not done:
        return pieces
    return [*pieces[:at], pieces[at]._replace(kind=K.COMMA, text=",", end=pieces[at].start), *pieces[at:]]


def _headed(pieces: list[Piece], kinds: Sequence[K]) -> list[Piece]:
    """ "bankdrücken ausgelassen: kniebeuge 3x5 100"."""
    return _with_a_comma(pieces, 2) if kinds[0] is K.NAME and kinds[2:5] == HEADED_SETS else pieces


def _with_a_comma(pieces: list[Piece], at: int) -> list[Piece]:
    """The pieces, with a comma for the colon there."""
    return [*pieces[:at], pieces[at]._replace(kind=K.COMMA, text=","), *pieces[at + 1 :]]


HEADED_SETS = [K.COLON, K.NAME, K.NUMBER]


def _turns(piece: Piece) -> bool:
    return any_cued(piece.text.split()[:1], TURNING)

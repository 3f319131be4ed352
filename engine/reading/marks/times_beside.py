"""Times told beside holds that are no hold of their own: "60s, five minutes to closing", "60s, 5s better".

away     = TIME ( "to" | "till" | "late" | "off" | "better" ) word      of the clock, or of a best; no hold
left     = TIME "left"                     minutes are of the clock; fewer seconds may be a side's: asked
behind   = TIME ( "after" | "in" ) word | LONG     behind holds far shorter: asked
part     = ( "first" | "last" ) TIME word     behind one hold: a part of it, and what it was like
of_reps  = few TIME word* HELD     behind sets that are counted in reps: "3x6, 2 s hold", "5 5 5 with 3s negatives"
heading  = MINUTES [ "of" ] [ NAME ] ":" TIMES | LONG [ NAME ] NUMBER "x" NUMBER     how long all of it took
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.catalogue.catalogue import catalogue
from engine.reading.words.ahead import aside, kind_at
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role
from engine.values.exercise import Measure

TIMED = frozenset((Role.SECONDS, Role.PLURAL))
LONG, LONGEST_HOLD = 120, 300
"""Seconds: from the first on a time with a list behind it heads it, from the second on it is rather no hold. Common
practice, no source.
"""
AWAY, AROUND, WITHIN = frozenset(("timeaway",)), frozenset(("timearound",)), frozenset(("within",))
ENDS = frozenset((None, K.COMMA, K.STOP, K.LINE, K.CLOSE))
PARTS = frozenset((K.FIRST, K.LAST))
OFF_WHAT = frozenset((K.STORY, K.FILLER, K.PLAIN))
HAPPENED = frozenset((K.PLAIN, K.FOR, K.NOTE))
FAR_ABOVE = 3
"""Common practice, no source."""
SAYING = frozenset((K.NOTE, K.PLAIN, K.PAIN, K.SORE, K.MUSCLE, K.JOINT))
AHEAD_OF_A_LIST = frozenset((K.NAME, K.OF, K.FILLER))
REACH = 16
"""Pieces around a time that tell what it is of. Common practice, no source."""
HELD = frozenset(("heldrep",))
OF_A_HELD_REP = frozenset((K.PLAIN, K.FILLER, K.NOTE, K.VARIANT, K.WITH, K.OF, K.PARTIAL, K.EACH, K.PAUSE, K.REST))
PAUSES = frozenset((K.PAUSE, K.REST))
A_WAY = 8
"""What the languages' files label "on the way down" with."""
LONGEST_REP, LONGEST_HELD = 10, 5
"""Seconds that a rep is held or lowered, and pieces that may tell of it. Common practice, no source."""
NEAR = 4
"""Pieces between a time and the list that it heads. Common practice, no source."""


def past_a_time(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """The place behind a time that is no hold; 0 where it may be one."""
    number = pieces[at]
    if number.role not in TIMED:
        return 0
    if number.role is Role.SECONDS and number.value >= LONG and _heads_a_list(pieces, at):
        out.append(aside(number))
        return at + 1
    if behind := _past_a_held_rep(pieces, at, out):
        told_of_reps = number.value <= LONGEST_REP
        out.append(
            (aside(number) if told_of_reps else number._replace(kind=K.UNCLEAR))._replace(end=pieces[behind - 1].end)
        )
        return behind
    told = [piece for piece in out[-REACH:] if piece.kind is K.NUMBER]
    return _behind_holds(pieces, at, out, told) if told else 0


def _past_a_held_rep(pieces: Sequence[Piece], at: int, out: Sequence[Piece]) -> int:
    """The place behind "2 s hold" behind "3x6" of a lift that is counted in reps; 0 for anything else. A long one
    may be a set of its own, and is asked about behind a comma.
    """
    if pieces[at].value > LONGEST_REP and kind_at(out, len(out) - 1) is not K.COMMA:
        return 0
    behind = at + 1
    while behind < min(len(pieces), at + LONGEST_HELD) and pieces[behind].kind in OF_A_HELD_REP:
        behind += 1
        word = pieces[behind - 1]
        paused = pieces[at].value <= LONGEST_REP and word.kind in PAUSES
        if is_cued(word.text, HELD) or word.told == A_WAY or paused:
            return behind if _counts_reps(out[-REACH:]) else 0
    return 0


def _counts_reps(told: Sequence[Piece]) -> bool:
    """Whether a pair without a time, or numbers without one behind a lift's name, stand ahead, of a lift that nobody
    holds.
    """
    names = [at for at, piece in enumerate(told) if piece.kind is K.NAME]
    if any(_is_held(told[at]) for at in names):
        return False
    pairs = zip(told, told[1:], told[2:], strict=False)
    counted = [piece for pair in pairs if pair[1].kind is K.TIMES for piece in (pair[0], pair[2])]
    if not counted and names:
        counted = [piece for piece in told[names[-1] :] if piece.kind is K.NUMBER]
    numbers = [piece for piece in counted if piece.kind is K.NUMBER]
    return bool(numbers) and not any(piece.role in TIMED for piece in numbers)


def _is_held(name: Piece) -> bool:
    lifts = [catalogue().get(known) for known in name.names]
    return any(lift is not None and lift.measure is not Measure.REPS for lift in lifts)


def _behind_holds(pieces: list[Piece], at: int, out: list[Piece], told: list[Piece]) -> int:
    number, word = pieces[at], pieces[at + 1] if at + 1 < len(pieces) else None
    far = number.value >= LONGEST_HOLD and max(piece.value for piece in told) * FAR_ABOVE < number.value
    if far and out[-1].kind in HAPPENED:
        out.append(number._replace(kind=K.UNCLEAR))  # "3x60s waited 10 min"
        return at + 1
    if word is None or word.kind in ENDS:
        if not far or out[-1].kind not in (K.NUMBER, K.COMMA):
            return 0
        out.append(number._replace(kind=K.UNCLEAR))
        return at + 1
    own = word.kind is K.FAILURE and out[-1].kind not in PARTS  # "60s, 45s to failure"
    if not own and _tells_how_far(pieces, at + 1):
        out.append(aside(number)._replace(end=word.end))
        return at + 2
    amid = is_cued(word.text, WITHIN) and kind_at(pieces, at + 2) is not K.NUMBER  # "30s in was hard"
    if word.kind is K.LEFT or amid or (number.value >= LONG and is_cued(word.text, AROUND)):
        return _around(pieces, at, out)
    if out[-1].kind in PARTS and len(told) == 1 and number.value < told[0].value and _is_felt(pieces, at):
        out[-1] = aside(out[-1])._replace(end=number.end)
        return at + 1
    return 0


def _tells_how_far(pieces: Sequence[Piece], at: int) -> bool:
    """ "to closing", "better"; "60s on, 30s off" tells another thing."""
    behind = kind_at(pieces, at + 1)
    alone = pieces[at].kind is K.ASSISTED and behind not in OFF_WHAT
    return is_cued(pieces[at].text, AWAY) and behind is not K.NUMBER and not alone


def _heads_a_list(pieces: Sequence[Piece], at: int) -> bool:
    """ "20 min plank: 3x60", "plank 5 min: 60 60 60", "plank 20 min 3x60"."""
    behind = at + 1
    while behind < min(len(pieces), at + NEAR) and pieces[behind].kind in AHEAD_OF_A_LIST:
        behind += 1
    signed = kind_at(pieces, behind) is K.COLON
    first = behind + signed
    if kind_at(pieces, first) is not K.NUMBER or pieces[first].role is Role.LOAD:
        return False
    paired = kind_at(pieces, first + 1) is K.TIMES and kind_at(pieces, first + 2) is K.NUMBER
    return signed or (paired and pieces[at].value >= LONGEST_HOLD)


def _around(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """A time left, before or after something else: minutes left are of the clock; of the others nobody can say."""
    number = pieces[at]
    clocked = number.value >= LONG and pieces[at + 1].kind is K.LEFT
    sided = any(piece.kind is K.RIGHT for piece in pieces[max(0, at - REACH) : at + REACH])
    if pieces[at + 1].kind is K.LEFT and sided:
        return 0
    out.append(aside(number) if clocked else number._replace(kind=K.UNCLEAR))
    return at + 2


def _is_felt(pieces: Sequence[Piece], at: int) -> bool:
    """Whether words of what it was like stand behind the time."""
    behind = at + 1
    while behind < len(pieces) and pieces[behind].kind is K.FILLER:
        behind += 1
    return kind_at(pieces, behind) in SAYING

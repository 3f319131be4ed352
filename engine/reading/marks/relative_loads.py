"""Loads told against the last time: "2.5 more than last time", "last weight + 2.5", "up 5 from last time".

change = ( "up" | "down" | "+" | "-" ) NUMBER LAST | NUMBER ( "more" | "less" ) LAST | LAST ( "+" | "-" ) NUMBER
What is told of the last time without a change is a story: "last time 80". "last weight" alone is that load.
"""

from __future__ import annotations

from engine.reading.marks.earlier_sets import CLAUSE_ENDS
from engine.reading.words.ahead import aside
from engine.reading.words.cues import is_cued
from engine.reading.words.kept import Kept
from engine.reading.words.kinds import K
from engine.reading.words.pieces import KIND, MOST_LOADED_REPS, TEXT, Piece, Role

AGAINST_LAST = 1
"""What a CHANGE piece's `told` says of a change that counts from the last time, and not from the plan."""
SAYS_WEIGHT, COMPARES = 1, 2
LEFT_OVER = {SAYS_WEIGHT: K.FILLER, COMPARES: K.NOTE}
"""What words of the last time are where no change stands beside them; else they open a story."""
UP = frozenset(("up", "plus", "heavier", "above"))
DOWN = frozenset(("down", "minus", "fewer", "lighter", "below"))
BETWEEN = frozenset(
    (K.FILLER, K.NOTE, K.MORE, K.NOT_DATE, K.PLAIN, K.OF, K.WITH, K.BY, K.ASSISTED, K.KG, K.LB, K.PLUS, K.EARLIER,
     K.ALTERED, K.EXCEPT)
)  # fmt: skip
COUNTS = (Role.REPS, Role.SETS, Role.BARE, Role.CHANGE)
REACH = 4


def with_relative_loads(pieces: list[Piece]) -> list[Piece]:
    """The pieces with each change against the last time made one number."""
    out = list(pieces)
    for at in range(len(out) - 1, -1, -1):
        if at < len(out) and out[at].kind is K.LAST_TIME:
            _gather(out, at)
    return _with_changes_put_to_lifts(out)


def _with_changes_put_to_lifts(pieces: list[Piece]) -> list[Piece]:
    """ "+2.5 on last week, bench 3x5": a change that heads the message is that of the only lift behind it; a remark,
    where the lift tells its load.
    """
    at = next((place for place, piece in enumerate(pieces) if piece.kind not in AROUND_A_CHANGE), len(pieces))
    named = [place for place, piece in enumerate(pieces) if piece.kind is K.NAME]
    if len(named) != 1 or named[0] <= at or pieces[at].role is not Role.CHANGE or pieces[at].told != AGAINST_LAST:
        return pieces
    name, between = named[0], [piece.kind for piece in pieces[at + 1 : named[0]]]
    parted = sum(kind in PARTING for kind in between) == 1 and AROUND_A_CHANGE.union(PARTING).issuperset(between)
    if not parted:
        return pieces
    behind = pieces[name + 1 :]
    change = aside(pieces[at]) if _tells_load(behind) else pieces[at]
    return [*pieces[:at], pieces[name], change, *behind]


AROUND_A_CHANGE = frozenset((K.FILLER, K.NOTE, K.TODAY, K.AND))
PARTING = frozenset((K.COMMA, K.COLON, K.STOP, K.DASH, K.LINE, K.THEN))


def with_steps_up(pieces: list[Piece]) -> list[Piece]:
    """The pieces with "bench up 2.5 today, 5 5 5" and "2.5 heavier: 9 8" told as a change against the last time: it
    stands at the head or right behind the name, and the reps behind a sign.
    """
    told_added = K.ADDED in map(KIND, pieces)
    if not told_added and True not in map(COMPARES_LOADS.__getitem__, map(TEXT, pieces)):
        return pieces
    for at in range(len(pieces) - 2):
        if not at or pieces[at - 1].kind in (K.NAME, K.LINE):
            if told_added and (put_on := _put_on(pieces, at)):
                return put_on
            changed, end = _step(pieces, at)
            if changed is not None:
                return [*pieces[:at], changed, *pieces[end:]]
    return pieces


def _put_on(pieces: list[Piece], at: int) -> list[Piece]:
    """ "bench added 5 kg, 9 8", "added 5 kg to bench, 9 8": as "+5 kg" is; empty where no amount was added there."""
    start = at
    while start < len(pieces) and is_cued(pieces[start].text, SAYERS):
        start += 1
    head = [piece.kind for piece in pieces[start : start + 2]]
    if head != [K.ADDED, K.NUMBER] or pieces[start + 1].unit is None or pieces[start + 1].value > MOST_OF_A_STEP:
        return []
    added, end = pieces[start + 1]._replace(role=Role.CHANGE), start + 2
    named = end + 1 < len(pieces) and pieces[end].kind in (K.FILLER, K.WITH) and pieces[end + 1].kind is K.NAME
    names = [pieces[end + 1]] if named else []
    end += 2 * named
    ends = end < len(pieces) and pieces[end].kind in BEHIND_A_STEP
    return [*pieces[:at], *names, added, *pieces[end:]] if ends else []


def _step(pieces: list[Piece], at: int) -> tuple[Piece | None, int]:
    """The change told there, and the place behind it; None where none is."""
    start = at
    while start < len(pieces) and is_cued(pieces[start].text, SAYERS):
        start += 1
    first, second, behind = (*pieces[start : start + 3], None, None, None)[:3]
    if first is None or second is None:
        return None, at
    if first.kind is K.NUMBER:
        number, way, end = first, _direction(second), start + 2
    elif is_cued(first.text, WENT):
        up = first.kind is K.ADDED
        number, way, end = (second, 1, start + 2) if up else (behind or second, STEPS[second.text], start + 3)
    else:
        number, way, end = second, STEPS[first.text], start + 2
    ends = end < len(pieces) and pieces[end].kind in BEHIND_A_STEP
    if not way or not ends or not _is_step(number, told_as_load=number is not first):
        return None, at
    return _changed(number, way), end


def _is_step(number: Piece, *, told_as_load: bool) -> bool:
    """ "up 5", "2.5 heavier", "5 kg less"; "5 more" and "3 less" may be reps."""
    if number.kind is not K.NUMBER or number.role not in (Role.BARE, Role.LOAD) or number.value > MOST_OF_A_STEP:
        return False
    return told_as_load or number.unit is not None or number.value % 1 != 0


def _way(text: str) -> int:
    return 1 if is_cued(text, UP) else -1 if is_cued(text, DOWN) else 0


def _compares(text: str) -> bool:
    return is_cued(text, COMPARED)


STEPS = Kept(_way)
"""1 for a word that says heavier, -1 for one that says lighter, 0 for any other."""
SAYERS = frozenset(("me", "we", "only", "so"))
WENT = frozenset(("went", "raised"))
COMPARED = UP | DOWN | WENT | {"more"}
COMPARES_LOADS = Kept(_compares)
BEHIND_A_STEP = frozenset((K.TODAY, K.COMMA, K.STOP, K.COLON, K.LINE, K.DATE, K.THEN))
MOST_OF_A_STEP = 20
"""A load this many units above the last one or fewer is a step. Common practice, no source."""


COUNTED = frozenset((K.SETS, K.REPS, K.MORE, K.FILLER))
DAYS = frozenset((K.WEEKDAY, K.LAST_WEEKDAY, K.YESTERDAY, K.DAYS_AGO))


def without_counts_compared(pieces: list[Piece]) -> list[Piece]:
    """The pieces with "1 more set than tuesday", "2 reps more than yesterday" made a remark."""
    out = list(pieces)
    for at in range(len(out) - 1, 0, -1):
        if at >= len(out) or out[at].kind not in DAYS or out[at - 1].kind is not K.NOT_DATE:
            continue
        start = at - 2
        while start >= 0 and out[start].kind in COUNTED:
            start -= 1
        number = out[start] if start >= 0 and out[start].kind is K.NUMBER else None
        if number is None or number.value > MOST_MORE:
            continue
        if number.role in (Role.SETS, Role.REPS) or K.MORE in [piece.kind for piece in out[start:at]]:
            out[start : at + 1] = [aside(number)]
    return out


MOST_MORE = 10
"""How many sets or reps more a remark may count. Common practice, no source."""


def _gather(out: list[Piece], at: int) -> None:
    if _change_behind(out, at) or _change_ahead(out, at):
        return
    if out[at].told == COMPARES:
        _aside_reps(out, at)
    out[at] = out[at]._replace(kind=LEFT_OVER.get(out[at].told, K.EARLIER))


def _aside_reps(out: list[Piece], at: int) -> None:
    """ "one rep more than last time": a remark, and no set."""
    place = at - 1
    while place >= 0 and at - place <= REACH and out[place].kind in BETWEEN | {K.REPS}:
        place -= 1
    counted = place >= 0 and out[place].kind is K.NUMBER and out[place].role in COUNTS
    compared = any(_direction(piece) for piece in out[place + 1 : at]) or (counted and out[place].role is Role.CHANGE)
    if counted and compared and (out[place].role is not Role.BARE or K.REPS in [one.kind for one in out[place:at]]):
        out[place] = aside(out[place])


def _change_behind(out: list[Piece], at: int) -> bool:
    """ "last weight + 2.5", "last time plus 5"."""
    end = at + 1
    while end < len(out) and out[end].kind is K.FILLER and STEPS[out[end].text] <= 0:
        end += 1
    sign = out[end] if end < len(out) else None
    if sign is None:
        return False
    if sign.kind is K.NUMBER and sign.role is Role.CHANGE:
        out[at : end + 1] = [sign._replace(told=AGAINST_LAST)]
        return True
    direction = _direction(sign)
    number = out[end + 1] if end + 1 < len(out) else None
    if not direction or number is None or not _is_amount(number):
        return False
    out[at : end + 2] = [_changed(number, direction)]
    return True


def _change_ahead(out: list[Piece], at: int) -> bool:
    """ "2.5 more than last time", "up 5 from last time"."""
    start = at - 1
    while start >= 0 and at - start <= REACH and out[start].kind in BETWEEN:
        start -= 1
    if start < 0 or not _is_amount(out[start]):
        return False
    number, before = out[start], out[start - 1] if start else None
    if number.role is Role.BARE and number.value % 1 == 0 and (reps := _is_of_reps(out, start, at)):
        out[at] = out[at]._replace(kind=reps)
        return True
    between = out[start + 1 : at]
    direction = next((way for piece in between if (way := _direction(piece) or LESS.get(piece.kind, 0))), 0)
    signed = number.role is Role.CHANGE
    if not direction and not signed and before is not None:
        direction = _direction(before) or PUT_ON_OR_OFF.get(before.kind, 0)
        start -= bool(direction)
    if not direction and not signed:
        return False
    behind = out[at + 1].kind if at + 1 < len(out) else None
    told = behind in CLAUSE_ENDS and _tells_load(out[:start])  # "3x5 80, 2.5 more than last week": a remark
    out[start : at + 1] = [aside(out[at]) if told else _changed(number, direction or 1)]
    return True


def _is_of_reps(out: list[Piece], at: int, end: int) -> K | None:
    """What the comparison is where its number is that of a set: "8/8/7 heavier than last week" a remark, "8 8 7 heavier
    than last week" open; None where the number compares.
    """
    before = [piece.kind for piece in out[max(0, at - REACH_OF_A_LIST) : at]]
    parted = before[-1:] == [K.COMMA]
    listed = (
        at > 1 + parted and out[at - 1 - parted].role is Role.BARE and out[at - 1 - parted].value <= MOST_LOADED_REPS
    )
    listed = listed and before[-1 - parted :][:1] == [K.NUMBER] and before[-2 - parted :][:1] in ([K.NUMBER], [K.COMMA])
    of_set = before[-1:] in ([K.TIMES], [K.RPE], [K.RIR]) or (before[-1:] == [K.SLASH] and out[at - 1].glued)
    if not listed and not of_set:
        return None
    if not any(_direction(piece) for piece in out[at + 1 : end]):
        return None
    of_feel = any(piece.kind in (K.NOTE, K.PLAIN, K.UNRELATED) for piece in out[at + 1 : end] if not _direction(piece))
    return K.NOTE if of_set or of_feel else K.UNCLEAR


LESS = {K.EXCEPT: -1}
""" "2,5 kg menos que la última vez"."""
PUT_ON_OR_OFF = {K.ADDED: 1, K.DROP: -1}
""" "added 2.5 kg to last time", "dropped 2.5 kg from last time"."""
REACH_OF_A_LIST = 4


def _tells_load(before: list[Piece]) -> bool:
    """Whether this line told its load ahead of the change."""
    lines = [at for at, piece in enumerate(before) if piece.kind in (K.LINE, K.NAME)]
    line = before[lines[-1] :] if lines else before
    return any(piece.kind is K.NUMBER and (piece.role is Role.LOAD or piece.value > MOST_LOADED_REPS) for piece in line)


def _direction(piece: Piece) -> int:
    if piece.kind in (K.MORE, K.PLUS):
        return 1
    return -1 if piece.text == "-" else STEPS[piece.text]


def _is_amount(piece: Piece) -> bool:
    return piece.kind is K.NUMBER and piece.role in (Role.BARE, Role.LOAD, Role.CHANGE)


def _changed(number: Piece, direction: int) -> Piece:
    return number._replace(role=Role.CHANGE, value=direction * number.value, told=AGAINST_LAST)

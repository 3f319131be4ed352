"""Rest and pauses beside the sets: "90s rest", "rest 2-3 min", ", 90 rest", "3s pause".

rest = time "rest" | "rest" time      time = NUMBER [ ( "-" | "/" ) NUMBER ] [ unit ]
"rest" with numbers of sets behind it tells of the other sets.
"""

from __future__ import annotations

from decimal import Decimal

from engine.reading.marks.rests_in_minutes import is_of_one_set, rested_ahead_of_reps, rested_in_minutes
from engine.reading.words.ahead import aside, is_amount, kind_at, past_links
from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role

TIMED = frozenset((Role.SECONDS, Role.PLURAL))
SHORTEST_TYPED = 45
"""Seconds; from here on two numbers with a slash behind "rest" are no reps. Common practice, no source."""
AHEAD_OF_THE_OTHERS = frozenset((K.FILLER, K.COMMA, K.AND, K.THEN, K.LINE))
"""Behind these "rest 80x7" tells of the other sets, and of no time between them."""
RANGED = frozenset((K.DASH, K.SLASH))
SHORTEST_REST = 10
"""Seconds; a smaller number behind "rest" may be reps. Common practice, no source."""
LONGEST_REST_IN_MINUTES = 10
ENDS = frozenset((None, K.STOP, K.LINE))
LONGEST_BETWEEN, SHORTEST_BETWEEN = 5, 30
"""Minutes, and seconds: what lies between them is no rest told without its unit. Common practice, no source."""
FEWEST_OF_A_LIST = 4
"""Pieces of "push ups 30, 25"."""
WIDEST_SPAN = 4
"""How many times the shorter rest of a span the longer one may be. Common practice, no source."""


def rest(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """The place behind the word there and its time; both become a remark in `out`."""
    if (span := _behind_a_span(pieces, at)) > at:
        out.append(aside(pieces[at]))
        return span
    after = past_links(pieces, at + 1)
    told = rested_in_minutes(pieces, at, after, out) if is_amount(pieces, after) else None
    told = told or (rested_ahead_of_reps(pieces, at + 1, out) if after == at + 1 and is_amount(pieces, after) else None)
    if told is K.NOTE and _tells_of_the_others(pieces, at, out) and not is_of_one_set(out):
        told = None
    if told is K.ALTERED or (told is K.NOTE and _may_be_timed_ahead(out)):
        out.append(pieces[at]._replace(kind=K.ALTERED))
        return at + 1
    if told is K.NOTE or (is_amount(pieces, after) and _is_a_rest(pieces, after)):
        end = after + 1
        while kind_at(pieces, end) in RANGED and is_amount(pieces, end + 1):
            end += 2  # "rest 2-3 min", "rest 90/120"
        out.append(aside(pieces[at])._replace(end=pieces[end - 1].end) if told is K.NOTE else aside(pieces[at]))
        return end
    if not is_amount(pieces, after) and _ends_in_a_list(out):
        return _behind_a_list(pieces, at, out)
    if not is_amount(pieces, after) and _may_be_of_a_set(out):
        out.append(pieces[at]._replace(kind=K.ALTERED))
        return at + 1
    _drop_timed(out, also_bare=True)
    others = _tells_of_the_others(pieces, at, out)
    out.append(pieces[at]._replace(kind=K.ALTERED) if others else aside(pieces[at]))
    return at + 1


def _may_be_of_a_set(out: list[Piece]) -> bool:
    """ "80x8 3 rest": minutes, or the reps of one more."""
    behind_a_pair = [piece.kind for piece in out[-3:]] == [K.TIMES, K.NUMBER, K.NUMBER]
    return behind_a_pair and out[-1].role is Role.BARE and out[-1].value <= LONGEST_BETWEEN


def _may_be_timed_ahead(out: list[Piece]) -> bool:
    """ "80x8 15 rest 4": fifteen seconds, or a set of fifteen; "3x10 15 rest 3" tells the load."""
    behind_a_pair = [piece.kind for piece in out[-4:]] == [K.NUMBER, K.TIMES, K.NUMBER, K.NUMBER]
    few = behind_a_pair and out[-1].role is Role.BARE and out[-1].value <= MOST_LOADED_REPS
    return few and out[-4].value > MOST_LOADED_REPS


def _tells_of_the_others(pieces: list[Piece], at: int, out: list[Piece]) -> bool:
    """ "..., rest 5", "then rest 80x7": the sets that are left, or a time between them."""
    told = pieces[at].text == "rest" and is_amount(pieces, at + 1)
    return told and bool(out) and out[-1].kind in AHEAD_OF_THE_OTHERS


def _behind_a_span(pieces: list[Piece], at: int) -> int:
    """The place behind "between 22 and 7", "between 6 and 8 people"; `at` where it may be reps."""
    first, last = at + 1, at + 3
    joined = is_amount(pieces, first) and kind_at(pieces, at + 2) is K.AND and is_amount(pieces, last)
    if not joined or "between" not in CUES_OF[pieces[at].text]:
        return at
    timed = pieces[last].role in TIMED or pieces[last].value < pieces[first].value
    counted = kind_at(pieces, last + 1) in (K.PLAIN, K.OTHERS, K.REST)
    told = pieces[last].role is Role.LOAD or kind_at(pieces, last + 1) in (K.TIMES, K.REPS, K.KG, K.LB)
    return last + 1 if (timed or counted) and not told else at


def _is_a_rest(pieces: list[Piece], at: int) -> bool:
    """ "rest 90", "rest 2 min"; and not "short rest 3x5 100", "short rest 5 5 5"."""
    if pieces[at].role in TIMED:
        return True
    behind = kind_at(pieces, at + 1)
    if behind is K.DASH and is_amount(pieces, at + 2) and pieces[at + 2].role in TIMED:
        return True  # "rested 2-3 min"
    if behind is K.SLASH and is_amount(pieces, at + 2) and pieces[at].value >= SHORTEST_TYPED:
        return True
    if behind is K.PLUS and pieces[at + 1].glued:
        return False  # "rest 12+4+3"
    return pieces[at].value >= SHORTEST_REST and behind not in (K.TIMES, K.NUMBER, K.AT, K.KG, K.LB, K.SLASH)


def _drop_timed(out: list[Piece], also_bare: bool) -> None:
    """Takes the time before "rest" or "pause" away: "90s rest", "2-3 min rest", and ", 90 rest"."""
    if not out or kind_at(out, len(out) - 1) is not K.NUMBER:
        return
    bare = also_bare and out[-1].role is Role.BARE and len(out) >= 2 and out[-2].kind is K.COMMA
    if out[-1].role in TIMED or bare:
        time = out.pop()
        if len(out) >= 2 and out[-1].kind is K.DASH and out[-2].kind is K.NUMBER:
            if _is_span(out, time):
                del out[-2:]
            elif _ends_a_list(out) and not out[-2].glued and _rises_to(out[-2], time):
                out.append(time._replace(kind=K.UNCLEAR))  # "8, 8, 2 - 3 min rest": reps, or minutes


def _behind_a_list(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """The place behind the word in "30, 25, 20 in between"; "60, 60, 60 rest" may be told of reps or of the rest, and
    "8, 7, 6 in between bench sets" names a lift that has no sets here.
    """
    either = not LONGEST_BETWEEN < out[-1].value < SHORTEST_BETWEEN or out[-4].kind is K.TIMES
    out.append(pieces[at]._replace(kind=K.ALTERED) if either else aside(pieces[at]))
    after = past_links(pieces, at + 1)
    if kind_at(pieces, after) is not K.NAME:
        return at + 1
    behind = after + 1 + (kind_at(pieces, after + 1) is K.SETS)
    if kind_at(pieces, behind) not in ENDS:
        return at + 1
    out += [aside(piece) for piece in pieces[after:behind]]
    return behind


def _ends_in_a_list(out: list[Piece]) -> bool:
    """Whether the number in front of the word may be the last of the reps before it, by what it comes to."""
    if [piece.kind for piece in out[-2:]] != [K.COMMA, K.NUMBER] or out[-1].role is not Role.BARE:
        return False
    if len(out) < FEWEST_OF_A_LIST or out[-3].kind is not K.NUMBER or out[-3].role is not Role.BARE:
        return False
    before, number = out[-3].value, out[-1].value
    if out[-4].kind is K.TIMES and number <= LONGEST_BETWEEN:
        return False  # "3x5, 3 between"
    behind_a_group = out[-4].kind is K.NUMBER and kind_at(out, len(out) - 5) is K.TIMES  # "3x5 80, 90 between"
    return not behind_a_group and before <= 2 * number <= 3 * before


def _rises_to(first: Piece, time: Piece) -> bool:
    """Whether "2 - 3 min" may be a span of minutes."""
    most = Decimal(time.text) if time.text.isdigit() else time.value
    return most <= LONGEST_REST_IN_MINUTES and first.value < most <= first.value * WIDEST_SPAN


def _ends_a_list(out: list[Piece]) -> bool:
    """Whether "8, 8, 2" stands before the dash."""
    return [piece.kind for piece in out[-5:-2]] == [K.COMMA, K.NUMBER, K.COMMA]


def _is_span(out: list[Piece], time: Piece) -> bool:
    """ "2-3 min rest", "2 - 3 min rest" on its own; in "3x8 @ 85 - 90s rest" the dash parts the load from the rest."""
    if out[-1].glued and time.glued:
        return True
    if len(out) > 2 and out[-3].kind is K.COMMA and (out[-2].glued or _ends_a_list(out)):
        return False  # "4,3,2,1 - 2 min pause": the last of the reps
    apart = len(out) == 2 or out[-3].kind in (K.COMMA, K.OPEN, K.STOP, K.LINE)
    return apart and _rises_to(out[-2], time)


def pause(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """The place behind the word there and its time; both become a remark in `out`."""
    after, behind = at + 1, past_links(pieces, at + 1)
    told = rested_in_minutes(pieces, at, behind, out) if is_amount(pieces, behind) else None
    told = told or (rested_ahead_of_reps(pieces, after, out) if behind == after and is_amount(pieces, after) else None)
    if told is K.ALTERED:
        out.append(pieces[at]._replace(kind=K.ALTERED))
        return after
    if told is K.NOTE:
        out.append(aside(pieces[at])._replace(end=pieces[behind].end))
        return behind + 1
    if after < len(pieces) and pieces[after].kind is K.NUMBER and pieces[after].role in TIMED:
        after += 1
    else:
        _drop_timed(out, also_bare=False)
    some = _may_be_some_of_them(pieces, at, out)
    out.append(aside(pieces[at]) if not some else pieces[at]._replace(kind=K.UNCLEAR))
    return after


def _may_be_some_of_them(pieces: list[Piece], at: int, out: list[Piece]) -> bool:
    """ "80x10, 2 paused": a set of two, or two of the ten."""
    out = out[:-1] if kind_at(out, len(out) - 1) is K.WITH else out  # "2 con pausa"
    kinds = [piece.kind for piece in out[-4:]]
    if kinds != [K.TIMES, K.NUMBER, K.COMMA, K.NUMBER] or kind_at(pieces, at + 1) not in ENDS_OF_A_REMARK:
        return False
    return out[-1].role is Role.BARE and 2 * out[-1].value <= out[-3].value


ENDS_OF_A_REMARK = frozenset((None, K.COMMA, K.STOP, K.LINE, K.CLOSE))

"""Numbers that stand beside the sets and are none: effort, rest, tempo, pauses, settings, scales.

setting = "seat" NUMBER | NUMBER "degrees"
Rest and pauses, what she weighs, and labels in front of numbers are read in modules of their own.
"""

from __future__ import annotations

from collections.abc import Callable
from itertools import chain

from engine.reading.marks.clocks import HALVES_OF_THE_DAY, of_the_day, past_total
from engine.reading.marks.efforts import EFFORT_WORDS, with_efforts
from engine.reading.marks.fields import field_told, unit_label, without_places
from engine.reading.marks.labels import may_hold_labels, without_labels
from engine.reading.marks.numbered_rows import without_row_numbers
from engine.reading.marks.parts_of_sets import part_of_the_sets
from engine.reading.marks.reps_of_all_loads import FEWEST_NUMBERS
from engine.reading.marks.rests import pause, rest
from engine.reading.marks.roughly import may_be_rough, with_rough_numbers
from engine.reading.marks.said_of_things import said_of_a_plate, said_of_the_bar
from engine.reading.marks.scales import (
    RATED,
    TEMPO,
    TEMPO_DIGITS,
    behind_bare_tempo,
    behind_dashed_tempo,
    is_x_tempo,
    rates,
    tells_tempo,
    tempo,
)
from engine.reading.marks.sets_of_a_lift import counts_at_a_set
from engine.reading.marks.spans import may_hold_spans, past_a_span
from engine.reading.marks.times_beside import past_a_time
from engine.reading.marks.weights_told import ENDS, body_told, weight_told
from engine.reading.words.ahead import aside, is_amount, kind_at, past_links
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import (
    MOST_LOADED_REPS,
    ROLE,
    Piece,
    Role,
    kinds_in_order,
    kinds_of,
    places_in,
    places_of,
    texts_in_order,
)


def without_marks(pieces: list[Piece], kinds: set[K]) -> list[Piece]:
    """The pieces, which are of these kinds, with efforts gathered into one piece each, and with numbers that are no
    sets taken out.
    """
    left = without_asides(pieces, kinds)
    if K.SETS in kinds:
        left = without_places(left)
    if left is not pieces:
        kinds = kinds_of(left)
    if K.LINE in kinds:
        left = without_row_numbers(left)
    return without_labels(left) if left and may_hold_labels(left, kinds) else left


def without_asides(pieces: list[Piece], kinds: set[K]) -> list[Piece]:
    """The same, with the labels of lines and clauses left in: a correction points with "set 2"."""
    if K.SLASH in kinds and K.EACH in kinds:
        pieces = _without_slash_of_each(pieces)
    if not kinds.isdisjoint(EFFORT_WORDS):
        pieces = with_efforts(pieces)
    rough = may_be_rough(pieces, kinds)
    rated = not kinds.isdisjoint(RATING) and not (kinds.isdisjoint(RATED) and K.HEADING not in kinds)
    beside = rated or not kinds.isdisjoint(BESIDE_WORDS) or holds_odd_numbers(pieces, kinds)
    if beside or may_hold_spans(pieces, kinds):
        pieces = _beside(pieces)
    return with_rough_numbers(pieces) if rough else pieces


def holds_odd_numbers(pieces: list[Piece], kinds: set[K]) -> bool:
    """Whether a number here is told in words, may be the reps of several loads, or may tell a time, a tempo or a pair
    by its spelling or an "am" behind it.
    """
    if K.AT in kinds and K.TIMES in kinds and counts_at_a_set(pieces):
        return True
    places = places_of(K.NUMBER, kinds_in_order(pieces))
    if len(places) >= FEWEST_NUMBERS and Role.REPS in map(ROLE, pieces):
        return True
    for at in places:
        number = pieces[at]
        if number.spelled or number.role in ODD_ROLES or (len(number.text) == TEMPO_DIGITS and number.text.isdigit()):
            return True
    return not kinds <= WORDLESS and not HALVES_OF_THE_DAY.isdisjoint(texts_in_order(pieces))


def _without_slash_of_each(pieces: list[Piece]) -> list[Piece]:
    """ "8/side" is "8 a side"."""
    behind: list[Piece | None] = [*pieces[1:], None]
    return [
        piece
        for piece, after in zip(pieces, behind, strict=True)
        if piece.kind is not K.SLASH or after is None or after.kind is not K.EACH
    ]


# ---- rest, pauses, tempo, settings


def _beside(pieces: list[Piece]) -> list[Piece]:
    out: list[Piece] = []
    kinds = kinds_in_order(pieces)
    of_tempos = K.TEMPO in kinds or TEMPO in texts_in_order(pieces)
    readers = BESIDE_TEMPOS if of_tempos else BESIDE
    behind = 0
    for at in places_in(readers, kinds):
        if at < behind or (kinds[at] is K.NUMBER and not of_tempos and _is_left(pieces[at], kinds[at + 1 : at + 2])):
            continue
        out += pieces[behind:at]
        behind = readers[kinds[at]](pieces, at, out)
    out += pieces[behind:]
    return out


def _is_left(number: Piece, behind: list[K]) -> bool:
    """Whether the number stands where nothing can make anything of it but what it is; most do."""
    plain = number.role is Role.BARE and len(number.text) != TEMPO_DIGITS
    return plain and LEAVING_A_NUMBER.issuperset(behind)


def _setting(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """ "seat 5", "30 degrees"."""
    measure = is_cued(pieces[at].text, MEASURE)
    if measure and out and out[-1].kind is K.NUMBER and out[-1].role is Role.BARE:
        if out[-1].value > STEEPEST and kind_at(out, len(out) - 2) is K.NUMBER:
            out.append(pieces[at]._replace(kind=K.UNCLEAR))  # "3x5 100 degrees": rather a load
        else:
            out[-1] = aside(out[-1])
        return at + 1
    after = past_links(pieces, at + 1)
    if out and out[-1].kind in POINTING_ON and is_cued(pieces[at].text, RECKONED):
        out.pop()  # "110x1 -> e1rm 115"
    after += is_cued(pieces[at].text, RECKONED) and kind_at(pieces, after) in ROUGHLY  # "e1rm about 115"
    out.append(aside(pieces[at]))
    roles = (Role.BARE, Role.LOAD) if is_cued(pieces[at].text, SUMS) else (Role.BARE,)
    if kind_at(pieces, after + 1) is K.TIMES and is_cued(pieces[at].text, RECKONED) and _counts(out):
        return after + 3  # "110x1 e1rm 115x1"
    if not is_amount(pieces, after) or pieces[after].role not in roles or kind_at(pieces, after + 1) is K.TIMES:
        return at + 1
    out[-1] = out[-1]._replace(end=pieces[after].end)
    return after + 1


def _counts(out: list[Piece]) -> bool:
    return any(piece.kind is K.TIMES for piece in out[-REACH_OF_A_PAIR:])


STEEPEST = 90
"""Degrees of a bench, or of the air. Common practice, no source."""
POINTING_ON = frozenset((K.ARROW, K.EQUALS))
ROUGHLY = frozenset((K.RESERVE_LEFT, K.ALTERED, K.OTHER_SIGN))
REACH_OF_A_PAIR = 6
MEASURE = frozenset(("measure",))
SUMS, RECKONED = frozenset(("sumword",)), frozenset(("reckonword",))


def _sets_follow(pieces: list[Piece], at: int) -> bool:
    """ "10kg plate 3x5", "10kg plate 5 5 5"; "40kg plate 8 3x5" tells a place in the stack first."""
    listed = kind_at(pieces, at + 1) in (K.NUMBER, K.COMMA, K.SLASH) and kind_at(pieces, at + 2) is not K.TIMES
    return kind_at(pieces, at + 1) is K.TIMES or (listed and kind_at(pieces, at + 2 + listed) is not K.TIMES)


def _pin(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """ "pin 5", "plate 9": a place in the stack, no load."""
    if said_of_a_plate(pieces, at, out):
        return at + 1
    piece, after = pieces[at], pieces[at + 1] if at + 1 < len(pieces) else None
    numbered = after is not None and after.kind is K.NUMBER and after.role is Role.BARE
    if piece.kind is K.PLATE and kind_at(pieces, at + 2) is K.TIMES and pieces[at + 2].glued:
        numbered = False  # "with a 10kg plate 3x12" counts sets
    behind_number = bool(out) and out[-1].kind is K.NUMBER and not _is_a_place_in_the_stack(pieces, at, out)
    if piece.text == STACK and _is_weight_of_stack(out):
        out.append(aside(piece))
        return at + 1
    hung = piece.kind is K.PLATE and kind_at(out, len(out) - 2) is K.WITH  # "with a 10kg plate 8"
    weighed = bool(out) and out[-1].role is Role.LOAD and (hung or _sets_follow(pieces, at + 1))
    if numbered and not behind_number and not weighed:
        out.append(piece._replace(kind=K.PIN))
        return at + 2
    out.append(piece)
    return at + 1


def _is_a_place_in_the_stack(pieces: list[Piece], at: int, out: list[Piece]) -> bool:
    """ "47kg pin 9", "3x12 pin 6, 25kg"; in "12 pin 6 10" nobody knows."""
    return out[-1].unit is not None or (pieces[at].kind is K.PIN and kind_at(pieces, at + 2) in ENDS | {None})


def _is_weight_of_stack(out: list[Piece]) -> bool:
    """ "with 60 on the stack": no stack has sixty places."""
    at = len(out) - 1
    while at >= 0 and out[at].kind is K.FILLER:
        at -= 1
    number = out[at] if 0 <= at < len(out) - 1 and out[at].kind is K.NUMBER else None
    return number is not None and (number.role is Role.LOAD or number.value > MOST_PLACES_OF_A_STACK)


STACK = "stack"
MOST_PLACES_OF_A_STACK = 25
"""Common practice, no source."""


def _shared_reps(piece: Piece, pieces: list[Piece], at: int) -> Piece:
    """ "6s: 60 70 80": reps of each of the loads behind the colon; "14s: 11 10 8" are dumbbells."""
    headed = piece.role is Role.PLURAL and kind_at(pieces, at + 1) is K.COLON and is_amount(pieces, at + 2)
    headed = headed and pieces[at + 2].value > MOST_LOADED_REPS
    return piece._replace(kind=K.COUNT, told=int(piece.value)) if headed else piece


def _x_tempo(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """ "31x1" or "3-1-1", in a message that speaks of tempo."""
    linked = bool(out) and out[-1].kind in (K.TIMES, K.AT, K.WITH, K.SLASH, K.DASH, K.COLON)
    behind = at if linked or pieces[at].role is not Role.BARE else behind_dashed_tempo(pieces, at)
    if behind > at:
        out.append(aside(pieces[at])._replace(end=pieces[behind - 1].end))
        return behind
    beside = [*out[-2:], *pieces[at + 3 : at + 4]]
    told = is_x_tempo(pieces, at) and any([tells_tempo(piece) for piece in beside])
    if not told or not any(piece.kind is K.NUMBER for piece in chain(pieces[at + 3 :], out)):
        return _no_set(pieces, at, out)
    out.append(aside(pieces[at])._replace(end=pieces[at + 2].end))
    return at + 3


def _of_the_day(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    behind = of_the_day(pieces, at, out)
    if behind > at:
        out.append(aside(pieces[at]))
    return behind if behind > at else 0


def _no_set(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """A number that may be a scale, a time, a tempo or a pair."""
    after = kind_at(pieces, at + 1)
    if after in (K.SLASH, K.OF, K.OUT_OF) and not _in_a_list(pieces, at) and rates(pieces, at, out):
        return at + 3
    behind = part_of_the_sets(pieces, at, out) or _of_the_day(pieces, at, out)
    if behind:
        return behind
    return _by_role(pieces, at, out)


def _by_role(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """The place behind a number that may be a tempo, a time or shared reps by how it is written."""
    piece = pieces[at]
    if piece.role is Role.SECONDS and piece.value >= LONGEST_HOLD and _tells_how_long(pieces, at + 1, out):
        out.append(aside(piece))
        return at + 1
    if behind_it := past_a_span(pieces, at, out) if piece.role is Role.BARE else past_a_time(pieces, at, out):
        return behind_it
    if piece.role is Role.BARE:
        behind_tempo = behind_bare_tempo(pieces, at, out)
        if behind_tempo > at:
            piece, at = aside(piece), behind_tempo - 1
    elif piece.role is Role.NOT_A_SET:
        if piece.text == "%" and kind_at(pieces, at + 1) is K.OF and is_amount(pieces, at + 2):
            out.append(piece._replace(kind=K.UNCLEAR))  # "75% of 140": so much of it was lifted
        piece, at = aside(piece), past_total(pieces, at + 1) - 1
    elif piece.role is Role.PLURAL:
        held = kind_at(out, len(out) - 2) is K.WITH and is_cued(out[-1].text, ARTICLE)  # "farmers with the 24s"
        piece = piece._replace(role=Role.LOAD) if held else _shared_reps(piece, pieces, at)
    out.append(piece)
    return at + 1


ARTICLE = frozenset(("the",))


def _tells_how_long(pieces: list[Piece], at: int, out: list[Piece]) -> bool:
    """ "10 min of cycling", "15 min on the bike"; "after waiting 15 minutes"."""
    if kind_at(pieces, at) in ENDING_A_TIME and any(piece.kind is K.NOT_DATE for piece in out[-REACH_OF_AFTER:]):
        return True
    while at < len(pieces) and pieces[at].kind in (K.OF, K.FILLER, K.WITH):
        at += 1
    return kind_at(pieces, at) is K.UNRELATED


ENDING_A_TIME = frozenset((None, K.COMMA, K.STOP, K.LINE, K.CLOSE, K.FOR))
REACH_OF_AFTER = 3
LONGEST_HOLD = 300
"""Seconds; from here on a time is no hold. Common practice, no source."""


def _in_a_list(pieces: list[Piece], at: int) -> bool:
    """ "12/10/10/10": more than two numbers with slashes between them are no scale."""
    before = at > 0 and pieces[at - 1].kind is K.SLASH and pieces[at].glued
    return before or (kind_at(pieces, at + 3) is K.SLASH and is_amount(pieces, at + 4))


BESIDE: dict[K, Callable[[list[Piece], int, list[Piece]], int]] = {
    K.REST: rest,
    K.PAUSE: pause,
    K.TEMPO: tempo,
    K.SETTING: _setting,
    K.BAR: said_of_the_bar,
    K.KG: unit_label,
    K.LB: unit_label,
    K.BODY: body_told,
    K.FILLER: weight_told,
    K.SETS: field_told,
    K.REPS: field_told,
    K.PIN: _pin,
    K.PLATE: _pin,
    K.NUMBER: _no_set,
}


BESIDE_TEMPOS = {**BESIDE, K.NUMBER: _x_tempo}
BESIDE_WORDS = (frozenset(BESIDE) - {K.NUMBER}) | {K.DASH}
RATING = frozenset((K.SLASH, K.OF, K.OUT_OF))
LEAVING_A_NUMBER = frozenset((K.TIMES, K.NUMBER, K.COMMA, K.AT, K.LINE, K.COLON, K.OPEN, K.CLOSE, K.NAME))
"""Behind a plain number these, or nothing, make nothing of it but what it is."""
WORDLESS = frozenset(
    (K.NAME, K.NUMBER, K.TIMES, K.COMMA, K.AT, K.LINE, K.COLON, K.OPEN, K.CLOSE, K.SLASH, K.DASH, K.PLUS)
)
ODD_ROLES = frozenset((Role.NOT_A_SET, Role.PLURAL, Role.SECONDS, Role.SETS))

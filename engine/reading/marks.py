"""Numbers that stand beside the sets and are none: effort, rest, tempo, pauses, settings, scales.

effort  = ( "rpe" | "rir" ) NUMBER+ | NUMBER ( "rpe" | "rir" | "in the tank" | "left" | "more" )
rest    = NUMBER "rest" | "rest" NUMBER        tempo = "tempo" NUMBER ( "-" NUMBER )*
setting = "seat" NUMBER | NUMBER "degrees"     scale = NUMBER "/" 10     beside a word of body or feel
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from decimal import Decimal
from itertools import islice

from engine.reading.kinds import K
from engine.reading.labels import LABEL_KINDS, SEPARATORS, without_labels
from engine.reading.pieces import LOAD_LABELS, Piece, Role
from engine.values.effort import TOP_OF_SCALE, Effort

MOST_LEFT_IN_RESERVE = 5
TEMPO_DIGITS = 4
LEAST_BODY_WEIGHT = 35
HOLDS_A_NUMBER = 1
ENDS = SEPARATORS | {K.OPEN, K.CLOSE, K.TODAY, K.DATE}
FASTEST_TEMPO, SLOWEST_TEMPO = 2, 6
"""The seconds of a lowering that four digits on their own may tell: 4010. Common practice, no source."""
YEARS = range(1990, 2100)
TOP_OF_PAIN = 10
NEAR_A_SCALE = 4
"""How many pieces from "4/10" the word may stand that it rates."""

LINKS = frozenset((K.COLON, K.OF, K.FILLER, K.EQUALS, K.WITH, K.FOR))
NOT_LAST_EFFORT = frozenset((K.TIMES, K.AT, K.RPE, K.RIR, K.RESERVE, K.SLASH, K.DASH, K.PLUS, K.REPS))
TIMED = frozenset((Role.SECONDS, Role.PLURAL))


def without_marks(pieces: list[Piece]) -> list[Piece]:
    """The pieces with efforts gathered into one piece each, and with numbers that are no sets taken out."""
    kinds = {piece.kind for piece in pieces}
    if kinds & EFFORT_WORDS:
        pieces = _efforts(pieces)
    rated = K.SLASH in kinds and kinds & RATED
    if kinds & BESIDE_WORDS or rated or any(p.role in ODD_ROLES or len(p.text) == TEMPO_DIGITS for p in pieces):
        pieces = _beside(pieces)
    return without_labels(pieces) if kinds & LABEL_KINDS else pieces


def _aside(piece: Piece) -> Piece:
    """A note that holds its own number, so that the next one is not taken for part of it."""
    return piece._replace(kind=K.NOTE, told=HOLDS_A_NUMBER)


# ---- efforts


def _efforts(pieces: list[Piece]) -> list[Piece]:
    out: list[Piece] = []
    at = 0
    while at < len(pieces):
        piece = pieces[at]
        if piece.kind in (K.RPE, K.RIR):
            at = _scaled(pieces, at, out)
        elif piece.kind is K.RESERVE or (piece.kind in (K.MORE, K.LEFT) and _left_over(pieces, at, out)):
            at = _reserve(pieces, at, out)
        else:
            out.append(piece)
            at += 1
    return out


def _scaled(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    scale = pieces[at]
    after = at + 1
    while after < len(pieces) and pieces[after].kind in (K.COLON, K.EQUALS, K.OF, K.AT):
        after += 1
    if out and out[-1].kind is K.AT:
        out.pop()
    values, end = _effort_list(pieces, after)
    if not values and out and _is_small(out[-1]):
        scale = scale._replace(start=out[-1].start)
        values, end = [out.pop().value], at + 1
        if out and out[-1].kind is K.AT:
            out.pop()
    efforts = tuple(effort for value in values if (effort := _effort(scale.kind, value)) is not None)
    if not efforts or len(efforts) < len(values):
        unclear = bool(values) or (_is_amount(pieces, after) and pieces[after].role is Role.BARE)
        out.append(scale._replace(kind=K.UNCLEAR) if unclear else _aside(scale))
        return max(end, at + 1)
    out.append(scale._replace(kind=K.EFFORT, efforts=efforts, end=pieces[end - 1].end))
    return end


def _effort_list(pieces: list[Piece], at: int) -> tuple[list[Decimal], int]:
    values: list[Decimal] = []
    end = at
    while at < len(pieces) and _is_small(pieces[at]):
        after = pieces[at + 1].kind if at + 1 < len(pieces) else None
        if after is K.TIMES or (
            values and after in NOT_LAST_EFFORT and not (after is K.SLASH and pieces[at + 1].glued)
        ):
            break
        values.append(pieces[at].value)
        at = end = at + 1
        if at < len(pieces) and pieces[at].kind in (K.COMMA, K.SLASH):
            at += 1
    return values, end


def _is_small(piece: Piece) -> bool:
    return piece.kind is K.NUMBER and piece.role is Role.BARE and 0 <= piece.value <= TOP_OF_SCALE


def _effort(scale: K, value: Decimal) -> Effort | None:
    if scale is K.RIR:
        return Effort(value) if value <= TOP_OF_SCALE else None
    return Effort.from_rpe(value) if 1 <= value <= TOP_OF_SCALE else None


def _left_over(pieces: list[Piece], at: int, out: list[Piece]) -> bool:
    """ "had 3 left", "left one in", "2 more": reps in reserve, where it is not a side and not a request for sets."""
    if pieces[at].kind is K.LEFT and at + 2 < len(pieces) and pieces[at + 2].text == "in":
        return _is_small(pieces[at + 1])
    if len(out) < 2 or not _is_small(out[-1]) or out[-1].glued:
        return False
    if pieces[at].kind is K.MORE:
        return out[-2].kind is K.RESERVE_LEFT
    return out[-2].kind in (K.RESERVE_LEFT, K.WITH, K.COMMA) and not any(p.kind is K.RIGHT for p in pieces)


def _reserve(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    piece, end = pieces[at], at + 1
    if piece.kind is K.LEFT and end < len(pieces) and _is_small(pieces[end]) and not (out and _is_small(out[-1])):
        value, end = pieces[end].value, end + 2
    elif out and _is_small(out[-1]) and out[-1].value <= MOST_LEFT_IN_RESERVE:
        value = out.pop().value
    else:
        out.append(_aside(piece))
        return end
    while out and out[-1].kind in (K.RESERVE_LEFT, K.LEFT, K.WITH):
        out.pop()
    out.append(piece._replace(kind=K.EFFORT, efforts=(Effort(value),)))
    return end


# ---- rest, pauses, tempo, settings


def _beside(pieces: list[Piece]) -> list[Piece]:
    out: list[Piece] = []
    at = 0
    while at < len(pieces):
        gather = BESIDE.get(pieces[at].kind)
        if gather is None:
            out.append(pieces[at])
            at += 1
        else:
            at = gather(pieces, at, out)
    return out


def _rest(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    after = _past_links(pieces, at + 1)
    if _is_amount(pieces, after):
        end = after + 1
        if _kind(pieces, end) is K.DASH and _is_amount(pieces, end + 1):
            end += 2
        out.append(_aside(pieces[at]))
        return end
    _drop_timed(out, also_bare=True)
    out.append(_aside(pieces[at]))
    return at + 1


def _drop_timed(out: list[Piece], also_bare: bool) -> None:
    """Takes the time before "rest" or "pause" away: "90s rest", "2-3 min rest", and ", 90 rest"."""
    if not out or _kind(out, len(out) - 1) is not K.NUMBER:
        return
    bare = also_bare and out[-1].role is Role.BARE and len(out) >= 2 and out[-2].kind is K.COMMA
    if out[-1].role in TIMED or bare:
        out.pop()
        if len(out) >= 2 and out[-1].kind is K.DASH and out[-2].kind is K.NUMBER:
            del out[-2:]


def _pause(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    after = at + 1
    if after < len(pieces) and pieces[after].kind is K.NUMBER and pieces[after].role in TIMED:
        after += 1
    else:
        _drop_timed(out, also_bare=False)
    out.append(_aside(pieces[at]))
    return after


def _tempo(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """ "tempo 3-1-0", "tempo 4010", "tempo 3 1 0": up to four counts of a few seconds, and no number behind them."""
    out.append(_aside(pieces[at]))
    at = _past_links(pieces, at + 1)
    joined, before = True, None
    for _ in range(TEMPO_DIGITS):
        if not _is_amount(pieces, at) or not (joined or _is_one_count(before, pieces[at])):
            break
        if pieces[at].role is not Role.BARE or _kind(pieces, at + 1) is K.TIMES:
            break
        before, at = pieces[at], at + 1
        joined = _kind(pieces, at) in TEMPO_SIGNS and _is_amount(pieces, at + 1)
        at += joined
    return at


def _is_one_count(before: Piece | None, piece: Piece) -> bool:
    """ "3 1 0": single seconds, one after the other."""
    return before is not None and max(before.value, piece.value) < SLOWEST_COUNT


SLOWEST_COUNT = 10
TEMPO_SIGNS = frozenset((K.DASH, K.SLASH, K.COLON))


def _setting(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    after = _past_links(pieces, at + 1)
    if _is_amount(pieces, after) and _kind(pieces, after + 1) is not K.TIMES:
        out.append(_aside(pieces[at]))
        return after + 1
    if (
        out
        and out[-1].kind is K.NUMBER
        and out[-1].role is Role.BARE
        and pieces[at].text.startswith(("deg", "inch", "cm"))
    ):
        out.pop()
    out.append(_aside(pieces[at]))
    return at + 1


def _body_told(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """ "bw 77.2" tells what she weighs; "bw 12 10 8" and "bw x 12" are sets."""
    after = _past_links(pieces, at + 1)
    end = after + 1
    told = (
        _is_amount(pieces, after)
        and pieces[after].value >= LEAST_BODY_WEIGHT
        and (end >= len(pieces) or pieces[end].kind in ENDS or pieces[after].role is Role.LOAD)
        and (pieces[after].value % 1 != 0 or pieces[after].role is Role.LOAD or not out or out[-1].kind in ENDS)
    )
    if told:
        out.append(pieces[at]._replace(kind=K.UNRELATED))
        return _behind_a_change(pieces, end)
    out.append(pieces[at])
    return at + 1


def _behind_a_change(pieces: list[Piece], end: int) -> int:
    """ "bw 82.6 this morning, down 0.4": the change belongs to the weight."""
    at = end
    while _kind(pieces, at) in (K.TODAY, K.DATE, K.COMMA, K.FILLER):
        at += 1
    changed = at < len(pieces) and pieces[at].text in ("down", "up") and _is_amount(pieces, at + 1)
    return at + 2 if changed and _kind(pieces, at + 2) is not K.TIMES else end


def _field(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """ "sets: 3, reps: 10, weight: 60": the label in front says what the number counts."""
    piece = pieces[at]
    if _is_a_place(pieces, at, out):
        out.append(_aside(piece))
        return at + 2
    after = at + 1 + (_kind(pieces, at + 1) in (K.COLON, K.EQUALS))
    plural = piece.kind in (K.REPS, K.FILLER) or piece.text.endswith("s") or after > at + 1
    if (
        plural
        and _is_amount(pieces, after)
        and pieces[after].role is Role.BARE
        and _kind(pieces, after + 1) is not K.TIMES
    ):
        out.append(pieces[after]._replace(role=FIELDS.get(piece.kind, Role.LOAD)))
        return after + 1
    out.append(piece)
    return at + 1


def _is_a_place(pieces: list[Piece], at: int, out: list[Piece]) -> bool:
    """ "cramped on set 2": which set a note speaks of."""
    single = pieces[at].kind is K.SETS and not pieces[at].text.endswith("s") and _is_amount(pieces, at + 1)
    if not single or not out or out[-1].text not in ("on", "in", "during", "after", "before", "from"):
        return False
    noted = len(out) > 1 and out[-2].kind in RATED
    return noted and _kind(pieces, at + 2) in (None, K.COMMA, K.LINE, K.STOP, K.AND)


FIELDS = {K.SETS: Role.SETS, K.REPS: Role.REPS}


def _weight_told(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """ "weight 77.2 this morning" tells what she weighs; "reps 8 weight 55" is a load."""
    piece, end = pieces[at], at + 2
    starts = not out or out[-1].kind in SEPARATORS or out[-1].kind is K.FILLER
    weighed = piece.text in ("weight", "gewicht", "peso", "poids") and starts and _is_amount(pieces, at + 1)
    if weighed and (_kind(pieces, end) is K.TODAY or (pieces[at + 1].value * 4) % 1 != 0):
        out.append(piece._replace(kind=K.UNRELATED))
        return end
    if piece.text in LOAD_LABELS:
        return _field(pieces, at, out)
    out.append(piece)
    return at + 1


def _pin(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """ "pin 5", "plate 9": a place in the stack, no load."""
    piece, after = pieces[at], pieces[at + 1] if at + 1 < len(pieces) else None
    numbered = after is not None and after.kind is K.NUMBER and after.role is Role.BARE
    behind_number = bool(out) and out[-1].kind is K.NUMBER
    if numbered and not behind_number:
        out.append(piece._replace(kind=K.PIN))
        return at + 2
    out.append(piece)
    return at + 1


def _shared_reps(piece: Piece, pieces: list[Piece], at: int) -> Piece:
    """ "6s: 60 70 80": reps of each of the loads behind the colon."""
    headed = piece.role is Role.PLURAL and _kind(pieces, at + 1) is K.COLON and _is_amount(pieces, at + 2)
    return piece._replace(kind=K.COUNT, told=int(piece.value)) if headed else piece


def _is_tempo(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """The place behind a bare tempo: "4010", or "3-1-0" with a zero in it."""
    piece = pieces[at]
    after = _kind(pieces, at + 1)
    if after is not K.DASH and len(piece.text) != TEMPO_DIGITS:
        return at
    linked = bool(out) and out[-1].kind in (K.TIMES, K.AT, K.WITH, K.SLASH, K.DASH)
    if piece.role is not Role.BARE or linked:
        return at
    if is_bare_tempo(piece) and after not in (K.TIMES, K.KG, K.LB):
        return at + 1
    end, values = at + 1, [piece.value]
    while end + 1 < len(pieces) and pieces[end].kind is K.DASH and pieces[end].glued and _is_amount(pieces, end + 1):
        values.append(pieces[end + 1].value)
        end += 2
    return end if len(values) in (3, 4) and max(values) < 10 and 0 in values else at


def is_bare_tempo(piece: Piece) -> bool:
    """Whether four digits with no word to them may be a tempo: 3010, and not 1000, 2025 or 8080."""
    digits = piece.text
    if len(digits) != TEMPO_DIGITS or not digits.isdigit() or int(digits) in YEARS or digits.endswith("000"):
        return False
    return int(digits[0]) >= FASTEST_TEMPO and all(int(digit) <= SLOWEST_TEMPO for digit in digits)


def _rated(pieces: list[Piece], at: int, out: list[Piece]) -> bool:
    """ "knee pain 3/10": so much on a scale of ten, where a word beside it says of what."""
    if not _is_amount(pieces, at + 2) or _kind(pieces, at + 3) is K.TIMES:
        return False
    piece, slash, top = pieces[at : at + 3]
    scale = top.value == TOP_OF_PAIN and top.role is Role.BARE and 0 <= piece.value <= TOP_OF_PAIN
    if not scale or not slash.glued or not top.glued:
        return False
    beside = (*_words(reversed(out)), *_words(iter(pieces[at + 3 :])))
    if not beside:
        return False
    joint = any(word.kind is K.JOINT for word in beside) and not any(word.kind is K.SORE for word in beside)
    rated = piece._replace(kind=K.PAIN if joint and piece.value > 0 else K.NOTE, end=top.end, told=HOLDS_A_NUMBER)
    out.append(rated)
    return True


def _words(pieces: Iterable[Piece]) -> list[Piece]:
    """The words of body and feel among the next few pieces, up to a number or the end of the line."""
    found = []
    for piece in islice(pieces, NEAR_A_SCALE):
        if piece.kind in (K.NUMBER, K.LINE, K.STOP):
            break
        if piece.kind in RATED:
            found.append(piece)
    return found


RATED = frozenset((K.JOINT, K.PAIN, K.SORE, K.MUSCLE, K.NOTE, K.DENY, K.DENIED, K.UNRELATED))


def _is_of_the_day(pieces: list[Piece], at: int) -> bool:
    """ "7am", "40 min session", "10 min warm up": when and how long, and no set."""
    if at + 1 >= len(pieces):
        return False
    piece, after = pieces[at], pieces[at + 1]
    if piece.role is Role.BARE:
        return after.glued and after.text in HOURS
    return piece.role is Role.SECONDS and (after.kind in (K.WARMUP, K.UNRELATED) or after.text in SESSIONS)


HOURS = frozenset(("am", "pm"))
SESSIONS = frozenset(("session", "workout", "training", "exercise"))


def _no_set(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    piece = pieces[at]
    if _kind(pieces, at + 1) is K.SLASH and _rated(pieces, at, out):
        return at + 3
    if _is_of_the_day(pieces, at):
        out.append(_aside(piece))
        return at + 2
    if piece.role is Role.BARE:
        behind_tempo = _is_tempo(pieces, at, out)
        if behind_tempo > at:
            piece, at = _aside(piece), behind_tempo - 1
    elif piece.role is Role.NOT_A_SET:
        piece = _aside(piece)
    elif piece.role is Role.PLURAL:
        piece = _shared_reps(piece, pieces, at)
    out.append(piece)
    return at + 1


def _past_links(pieces: list[Piece], at: int) -> int:
    while at < len(pieces) and pieces[at].kind in LINKS:
        at += 1
    return at


def _is_amount(pieces: list[Piece], at: int) -> bool:
    return at < len(pieces) and pieces[at].kind is K.NUMBER


def _kind(pieces: list[Piece], at: int) -> K | None:
    return pieces[at].kind if at < len(pieces) else None


BESIDE: dict[K, Callable[[list[Piece], int, list[Piece]], int]] = {
    K.REST: _rest,
    K.PAUSE: _pause,
    K.TEMPO: _tempo,
    K.SETTING: _setting,
    K.BODY: _body_told,
    K.FILLER: _weight_told,
    K.SETS: _field,
    K.REPS: _field,
    K.PIN: _pin,
    K.PLATE: _pin,
    K.NUMBER: _no_set,
}


EFFORT_WORDS = frozenset((K.RPE, K.RIR, K.RESERVE, K.MORE, K.LEFT))
BESIDE_WORDS = (frozenset(BESIDE) - {K.NUMBER}) | {K.DASH}
ODD_ROLES = frozenset((Role.NOT_A_SET, Role.PLURAL))

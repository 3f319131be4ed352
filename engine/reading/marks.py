"""Numbers that stand beside the sets and are none: effort, rest, tempo, pauses, settings, labels and bullets.

effort  = ( "rpe" | "rir" ) NUMBER+ | NUMBER ( "rpe" | "rir" | "in the tank" | "left" | "more" )
rest    = NUMBER "rest" | "rest" NUMBER        tempo = "tempo" NUMBER ( "-" NUMBER )*
setting = "seat" NUMBER | NUMBER "degrees"     label = A1 | B) | 1. | "set" 1 | bullet       at the start of a line
or clause
"""

from __future__ import annotations

from collections.abc import Callable
from decimal import Decimal

from engine.reading.kinds import K
from engine.reading.pieces import LOAD_LABELS, Piece, Role
from engine.values.effort import TOP_OF_SCALE, Effort

MOST_LEFT_IN_RESERVE = 5
MOST_LABEL = 30
TEMPO_DIGITS = 4
LEAST_BODY_WEIGHT = 35
LABEL_LETTERS = "abcdefgh"

SEPARATORS = frozenset((K.LINE, K.COMMA, K.STOP, K.THEN, K.SUPERSET, K.AND))
LINKS = frozenset((K.COLON, K.OF, K.FILLER, K.EQUALS, K.WITH, K.FOR))
NOT_LAST_EFFORT = frozenset((K.TIMES, K.AT, K.RPE, K.RIR, K.RESERVE, K.SLASH, K.DASH, K.PLUS, K.REPS))
TIMED = frozenset((Role.SECONDS, Role.PLURAL))


def without_marks(pieces: list[Piece]) -> list[Piece]:
    """The pieces with efforts gathered into one piece each, and with numbers that are no sets taken out."""
    kinds = {piece.kind for piece in pieces}
    if kinds & EFFORT_WORDS:
        pieces = _efforts(pieces)
    if kinds & BESIDE_WORDS or any(piece.role in ODD_ROLES or len(piece.text) == TEMPO_DIGITS for piece in pieces):
        pieces = _beside(pieces)
    return _labels(pieces) if kinds & LABEL_KINDS else pieces


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
        out.append(scale._replace(kind=K.NOTE))
        return max(end, at + 1)
    out.append(scale._replace(kind=K.EFFORT, efforts=efforts, end=pieces[end - 1].end))
    return end


def _effort_list(pieces: list[Piece], at: int) -> tuple[list[Decimal], int]:
    values: list[Decimal] = []
    end = at
    while at < len(pieces) and _is_small(pieces[at]):
        after = pieces[at + 1].kind if at + 1 < len(pieces) else None
        if values and after in NOT_LAST_EFFORT and not (after is K.SLASH and pieces[at + 1].glued):
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
        out.append(piece._replace(kind=K.NOTE))
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
        out.append(pieces[at]._replace(kind=K.NOTE))
        return end
    _drop_timed(out, also_bare=True)
    out.append(pieces[at]._replace(kind=K.NOTE))
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
    out.append(pieces[at]._replace(kind=K.NOTE))
    return after


def _tempo(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    out.append(pieces[at]._replace(kind=K.NOTE))
    at = _past_links(pieces, at + 1)
    while at < len(pieces) and pieces[at].kind in (K.NUMBER, K.DASH, K.SLASH, K.TIMES, K.COLON):
        if pieces[at].kind is K.NUMBER and pieces[at].role is not Role.BARE and pieces[at].value >= 0:
            break
        at += 1
    return at


def _setting(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    after = _past_links(pieces, at + 1)
    if _is_amount(pieces, after) and _kind(pieces, after + 1) is not K.TIMES:
        out.append(pieces[at]._replace(kind=K.NOTE))
        return after + 1
    if (
        out
        and out[-1].kind is K.NUMBER
        and out[-1].role is Role.BARE
        and pieces[at].text.startswith(("deg", "inch", "cm"))
    ):
        out.pop()
    out.append(pieces[at]._replace(kind=K.NOTE))
    return at + 1


def _body_told(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """ "bw 77.2" tells what she weighs; "bw 12 10 8" and "bw x 12" are sets."""
    after = _past_links(pieces, at + 1)
    end = after + 1
    told = (
        _is_amount(pieces, after)
        and pieces[after].value >= LEAST_BODY_WEIGHT
        and (end >= len(pieces) or pieces[end].kind in SEPARATORS or pieces[after].role is Role.LOAD)
        and (pieces[after].value % 1 != 0 or pieces[after].role is Role.LOAD or not out or out[-1].kind in SEPARATORS)
    )
    if told:
        out.append(pieces[at]._replace(kind=K.UNRELATED))
        return end
    out.append(pieces[at])
    return at + 1


def _field(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """ "sets: 3, reps: 10, weight: 60": the label in front says what the number counts."""
    piece = pieces[at]
    after = at + 1 + (_kind(pieces, at + 1) in (K.COLON, K.EQUALS))
    plural = piece.kind is K.REPS or piece.text.endswith("s") or after > at + 1
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
    if len(piece.text) == TEMPO_DIGITS and piece.text.isdigit() and after not in (K.TIMES, K.KG, K.LB):
        return at + 1
    end, values = at + 1, [piece.value]
    while end + 1 < len(pieces) and pieces[end].kind is K.DASH and pieces[end].glued and _is_amount(pieces, end + 1):
        values.append(pieces[end + 1].value)
        end += 2
    return end if len(values) in (3, 4) and max(values) < 10 and 0 in values else at


def _no_set(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    piece = pieces[at]
    if piece.role is Role.BARE:
        behind_tempo = _is_tempo(pieces, at, out)
        if behind_tempo > at:
            piece, at = piece._replace(kind=K.NOTE), behind_tempo - 1
    elif piece.role is Role.NOT_A_SET:
        piece = piece._replace(kind=K.NOTE)
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


# ---- labels and bullets


def _labels(pieces: list[Piece]) -> list[Piece]:
    out: list[Piece] = []
    at = 0
    line_start = clause_start = True
    while at < len(pieces):
        piece = pieces[at]
        skipped = _label(pieces, at, line_start, clause_start) if clause_start else at
        if skipped > at:
            at = skipped
            line_start = False
            continue
        out.append(piece)
        line_start = piece.kind is K.LINE or (line_start and piece.kind in (K.DATE, K.OTHER_SIGN))
        clause_start = line_start or piece.kind in SEPARATORS or piece.kind in (K.COLON, K.SLASH, K.NAME, K.PLUS)
        at += 1
    return out


def _label(pieces: list[Piece], at: int, line_start: bool, clause_start: bool) -> int:
    """The place behind a label that starts here, or `at` where none does."""
    piece, after = pieces[at], _kind(pieces, at + 1)
    if line_start and (piece.kind is K.DASH or piece.text in (";", "*", "~")):
        return at + 1
    if piece.kind is K.NUMBER and line_start and piece.role is Role.BARE and 0 < piece.value <= MOST_LABEL:
        numbered = after in (K.STOP, K.CLOSE) and pieces[at + 1].glued and at + 2 < len(pieces)
        return at + 2 if numbered else at
    if piece.kind is K.SETS and after is K.NUMBER and not piece.text.endswith("s"):
        return _set_number(pieces, at)
    if _is_label_word(piece) and after is not None and after is not K.TIMES:
        return _behind_label(pieces, at + 1, piece)
    return at


def _set_number(pieces: list[Piece], at: int) -> int:
    """ "set 2: 100x5": an ordinal, where more numbers follow it."""
    ordinal = pieces[at + 1]
    after = at + 2 + (_kind(pieces, at + 2) in (K.COLON, K.EQUALS, K.DASH, K.CLOSE))
    follows = _kind(pieces, after) in (K.NUMBER, K.BAR, K.BODY, K.WARMUP)
    return after if follows and ordinal.value <= MOST_LABEL and ordinal.role is Role.BARE else at


def _is_label_word(piece: Piece) -> bool:
    text = piece.text
    if len(text) == 2 and piece.kind is K.PLAIN:
        return text[0] in LABEL_LETTERS + "s" and text[1].isdigit()
    return len(text) == 1 and text in LABEL_LETTERS


def _behind_label(pieces: list[Piece], at: int, label: Piece) -> int:
    if pieces[at].kind in (K.CLOSE, K.STOP, K.COLON) and pieces[at].glued:
        return at + 1
    two = len(label.text) == 2
    return at if two else at - 1


EFFORT_WORDS = frozenset((K.RPE, K.RIR, K.RESERVE, K.MORE, K.LEFT))
BESIDE_WORDS = (frozenset(BESIDE) - {K.NUMBER}) | {K.DASH}
ODD_ROLES = frozenset((Role.NOT_A_SET, Role.PLURAL))
LABEL_KINDS = frozenset((K.STOP, K.CLOSE, K.DASH, K.OTHER_SIGN, K.SETS, K.COLON, K.PLAIN, K.FILLER, K.EACH))

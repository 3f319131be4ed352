"""What she weighs, told beside the sets: "bw 77.2", "i'm 79kg now", "8 8 8 at 79kg bodyweight". It is no load."""

from __future__ import annotations

from engine.reading.marks.fields import field_told
from engine.reading.marks.labels import SEPARATORS
from engine.reading.marks.rests import TIMED
from engine.reading.words.ahead import aside, is_amount, kind_at, past_links
from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.pieces import NOTHING, Piece, Role

NUMBERS_OF_SETS = 3
LEAST_BODY_WEIGHT = 35
"""Less than this is taken for a load, as a person seldom weighs it. Common practice, no source."""
I_AM = frozenset(("i'm", "im", "am"))
ENDS = SEPARATORS | {K.OPEN, K.CLOSE, K.TODAY, K.DATE}
END_OR_FILLER = ENDS | {None, K.FILLER}


def body_told(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """ "bw 77.2" tells what she weighs; "bw 12 10 8" and "bw x 12" are sets."""
    after = past_links(pieces, at + 1)
    end = after + 1
    told = (
        is_amount(pieces, after)
        and pieces[after].value >= LEAST_BODY_WEIGHT
        and (end >= len(pieces) or pieces[end].kind in ENDS or pieces[after].role is Role.LOAD or _heads(pieces, end))
        and (pieces[after].value % 1 != 0 or pieces[after].role is Role.LOAD or _stands_apart(pieces[after], out))
    )
    if told:
        heads = not out or out[-1].kind in ENDS  # in "8, 8, 7 bodyweight 79" the clause tells of a set, too
        out.append(pieces[at]._replace(kind=K.UNRELATED) if heads else aside(pieces[at]))
        return _behind_a_change(pieces, end)
    if out and _weighs(out, pieces, at):
        if out[-1].kind is K.OF:
            out.pop()
        out[-1] = aside(out[-1])
        if len(out) > 1 and out[-2].kind in (K.AT, K.WITH):
            del out[-2]
        return at + 1
    out.append(pieces[at])
    return at + 1


def _heads(pieces: list[Piece], at: int) -> bool:
    """Whether a lift begins here with its sets behind it: "bodyweight 82.4 squat 85x5"."""
    return kind_at(pieces, at) is K.NAME and kind_at(pieces, at + 1) is K.NUMBER


def _stands_apart(weight: Piece, out: list[Piece]) -> bool:
    """Whether nothing, or only counts of reps, stands before it: "pull ups 8 8 8 bodyweight 79"."""
    if not out or out[-1].kind in ENDS:
        return True
    told = [piece for piece in out if piece.kind is K.NUMBER and piece.role not in TIMED]
    if out[-1].kind is not K.NUMBER or Role.CHANGE in [piece.role for piece in told]:
        return False
    loaded = Role.LOAD in [piece.role for piece in told]  # "squat 100kg 3x5 bw 82"
    loaded = loaded or (len(told) >= NUMBERS_OF_SETS and any(piece.kind is K.TIMES for piece in out))
    return loaded or max([piece.value for piece in told], default=NOTHING) * 2 < weight.value


def _weighs(out: list[Piece], pieces: list[Piece], at: int) -> bool:
    """ "dips 8 8 8 at 79kg bodyweight": what she weighs; and not "push ups 40 bodyweight", "79kg bodyweight squats"."""
    at_weight = len(out) - (2 if out[-1].kind is K.OF and len(out) > 1 else 1)
    weight = out[at_weight]
    if weight.kind is not K.NUMBER or weight.value < LEAST_BODY_WEIGHT or kind_at(pieces, at + 1) is K.TIMES:
        return False
    linked = at_weight > 0 and out[at_weight - 1].kind in (K.AT, K.WITH)
    told = weight.role is Role.LOAD or (weight.role is Role.BARE and linked)
    return told and kind_at(pieces, at + 1) in END_OR_FILLER


def _behind_a_change(pieces: list[Piece], end: int) -> int:
    """ "bw 82.6 this morning, down 0.4": the change belongs to the weight."""
    at = end
    while kind_at(pieces, at) in (K.TODAY, K.DATE, K.COMMA, K.FILLER):
        at += 1
    changed = at < len(pieces) and pieces[at].text in ("down", "up") and is_amount(pieces, at + 1)
    return at + 2 if changed and kind_at(pieces, at + 2) is not K.TIMES else end


def weight_told(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """ "weight 77.2 this morning", "i'm 79kg now" tell what she weighs; "reps 8 weight 55" is a load."""
    piece, end = pieces[at], at + 2
    if piece.text in I_AM and is_amount(pieces, at + 1) and kind_at(pieces, end) in END_OR_FILLER:
        weight = pieces[at + 1]
        if weight.role is Role.LOAD and weight.value >= LEAST_BODY_WEIGHT:
            out.append(piece._replace(kind=K.UNRELATED))
            return end
    starts = not out or out[-1].kind in SEPARATORS or out[-1].kind is K.FILLER
    weighed = "loadword" in CUES_OF[piece.text] and starts and is_amount(pieces, at + 1)
    if weighed and (kind_at(pieces, end) is K.TODAY or (pieces[at + 1].value * 4) % 1 != 0):
        out.append(piece._replace(kind=K.UNRELATED))
        return end
    if "loadword" in CUES_OF[piece.text]:
        return field_told(pieces, at, out)
    out.append(piece)
    return at + 1

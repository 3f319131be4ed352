"""An effort told as lying between two neighbours: "rpe 8-9", "between 8 and 9 rpe", "1 or 2 in the tank".

span = [ "between" ] NUMBER ( "-" | "to" | "or" ) NUMBER | "between" NUMBER "and" NUMBER        beside a scale's word
Neighbours tell the half between them: the scale has a step of its own for it, 8.5 for one or two repetitions left.
Source: Zourdos et al. 2016, J Strength Cond Res 30(1):267-275, table 1. Two that lie further apart are left as they
stand, and asked about.
"""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal

from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import CUES_OF, any_cued, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role, kinds_in_order, texts_in_order
from engine.values.effort import TOP_OF_SCALE

BETWEEN_TWO = 9
"""What a number or an effort tells that lies between two: of two sets it may be one for each."""
SCALES = frozenset((K.RPE, K.RIR))
BEHIND_A_SPAN = frozenset((K.RPE, K.RIR, K.RESERVE))
BEHIND_WORDS_FOR_LEFT = frozenset((K.MORE, K.LEFT))
AHEAD_OF_A_SPAN = frozenset((K.RESERVE, K.RESERVE_LEFT))
LINKS = frozenset(("or", "upto", "spanlink"))
LINKED = frozenset((K.DASH, K.AND))
SPAN = 3
NEIGHBOURS = 1
COUNTING = frozenset((K.TIMES, K.KG, K.LB, K.SETS, K.REPS, K.NUMBER, K.DASH, K.SLASH))


def with_effort_spans(pieces: list[Piece]) -> list[Piece]:
    """The pieces with each effort that lies between two neighbours made one number."""
    if LINKED.isdisjoint(kinds_in_order(pieces)) and not any_cued(texts_in_order(pieces), LINKS):
        return pieces
    out: list[Piece] = []
    at = 0
    while at < len(pieces):
        between = _between_ahead(out)
        low, high = _value(pieces, at), _value(pieces, at + 2)
        is_span = low is not None and high is not None and 0 < abs(high - low) <= NEIGHBOURS
        if low is None or high is None or not is_span or not _is_linked(pieces[at + 1], between=bool(between)):
            out.append(pieces[at])
            at += 1
            continue
        if not _tells_effort(pieces, at, out[: len(out) - between], rises=low < high):
            out.append(pieces[at])
            at += 1
            continue
        if between:
            out.pop(-between)
        told = 0 if between else BETWEEN_TWO
        middle = pieces[at]._replace(kind=K.NUMBER, value=(low + high) / 2, end=pieces[at + 2].end, told=told)
        out.append(middle._replace(spelled=False))
        at += SPAN
    return out


def _between_ahead(out: Sequence[Piece]) -> int:
    """How many pieces back "between" stands: right in front of the number, or in front of its scale; 0 for nowhere."""
    if out and "between" in CUES_OF[out[-1].text]:
        return 1
    return 2 if len(out) > 1 and out[-1].kind in SCALES and "between" in CUES_OF[out[-2].text] else 0


def _is_linked(link: Piece, *, between: bool) -> bool:
    joined = link.kind is K.DASH or is_cued(link.text, LINKS)
    return joined or (between and link.kind is K.AND)


def _value(pieces: Sequence[Piece], at: int) -> Decimal | None:
    """The small number that stands there; None where none does."""
    piece = pieces[at] if at < len(pieces) else None
    if piece is None:
        return None
    if piece.text == "one":
        return Decimal(1)
    small = piece.kind is K.NUMBER and piece.role is Role.BARE and 0 <= piece.value <= TOP_OF_SCALE
    return piece.value if small else None


def _tells_effort(pieces: Sequence[Piece], at: int, before: Sequence[Piece], *, rises: bool) -> bool:
    """Whether a scale stands in front of the span that begins there, or what names an effort behind it.

    "8-8-7 rpe 9" and "9-8 2 in the tank" are lists of reps, whose numbers have no part in the effort.
    """
    behind = kind_at(pieces, at + SPAN)
    ahead = before[-1].kind if before else None
    if ahead in SCALES or (at and pieces[at - 1].kind in SCALES):
        return behind not in COUNTING
    if not rises or ahead in (K.DASH, K.SLASH, K.TIMES) or _value(pieces, at + SPAN + 1) is not None:
        return False
    if behind in BEHIND_A_SPAN:
        return True
    return ahead in AHEAD_OF_A_SPAN and (behind in BEHIND_WORDS_FOR_LEFT or behind is None)

"""Rest-pause told by its breaths: "60x12, ten breaths, 4 more, ten breaths, 3 more", "10, short rest, 4, rest, 3".

told   = [ LOAD ] REPS ( BREATH FEWER )+          FEWER: at most half of the first reps, as no set of its own has
"80x8 rest 3" alone tells minutes of rest (`rests_in_minutes.py`).
BREATH = NUMBER "breaths" | up to 30 seconds [ "rest" ] | [ "short" ] "rest" [ SECONDS ] | "breathe"
SECONDS stands between "rest" and reps: "80x8 rest 15 4"; without a unit it is 10 or more.
"""

from __future__ import annotations

from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.pieces import NOTHING, Piece, Role, kinds_in_order

LONGEST = 30
"""Seconds between the parts of one set. Common practice, no source."""
REPS = frozenset((Role.BARE, Role.REPS))
TIMED = frozenset((Role.SECONDS, Role.PLURAL))
SHORTEST, STEP = 10, 5
AMID = frozenset((K.NOTE, K.PLAIN, K.FILLER, K.COMMA, K.THEN))
ENDS = frozenset((None, K.COMMA, K.STOP, K.LINE, K.THEN, K.AND, K.MORE, K.REPS, K.REST, K.PAUSE))


def with_breaths(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with breaths between the parts of their only set made words for rest-pause."""
    kinds = kinds_in_order(pieces)
    first = next((at for at in range(len(pieces)) if _is_breath(pieces, at)), 0)
    reps = next((at for at in range(first - 1, 0, -1) if kinds[at] is K.NUMBER), 0)
    if not reps or pieces[reps].role not in REPS or not _is_only_set(kinds[:reps]):
        return pieces
    most, at, out = pieces[reps].value / 2, reps + 1, pieces[: reps + 1]
    while at < len(pieces) and (end := _part(pieces, at)):
        if not NOTHING < pieces[end].value <= most:
            return pieces
        breath = next(one for one in pieces[at:end] if one.kind is not K.COMMA)
        out += [breath._replace(kind=K.REST_PAUSE), pieces[end]._replace(role=Role.BARE)]
        at = end + 1 + (kinds[end + 1 : end + 2] == [K.MORE])
    left = any(kind is K.NUMBER for kind in kinds[at:])
    return pieces if at == reps + 1 or left or _may_be_minutes(pieces, kinds, reps, at) else [*out, *pieces[at:]]


def _may_be_minutes(pieces: list[Piece], kinds: list[K], reps: int, end: int) -> bool:
    """ "80x8 rest 3", "80x8, rested 3": the only rest, with its number right behind the word."""
    told = [kind for kind in kinds[reps + 1 : end] if kind is not K.COMMA]
    return told == [K.REST, K.NUMBER] and kinds[end - 2] is K.REST and pieces[end - 1].role is Role.BARE


def _is_only_set(ahead: list[K]) -> bool:
    """Whether in front of its reps stands a lift, and at most its load."""
    return ahead.count(K.NUMBER) <= 1 and ahead.count(K.NAME) == 1


def _is_breath(pieces: list[Piece], at: int) -> bool:
    piece = pieces[at]
    if piece.kind is K.NUMBER:
        rested = at + 1 < len(pieces) and pieces[at + 1].kind is K.REST
        timed = piece.role is Role.SECONDS or (piece.role is Role.PLURAL and rested)  # "15s rest"
        return at > 0 and ((timed and piece.value <= LONGEST) or piece.role is Role.NOT_A_SET)
    if piece.kind is K.PAUSE:
        return _is_timed(pieces, at)
    return piece.kind is K.REST or "breathing" in CUES_OF[piece.text]


def _is_timed(pieces: list[Piece], at: int) -> bool:
    """ "rest 15 4", "pause 15s, 4": whether the seconds of a rest stand behind the word there, and reps behind them."""
    reps = at + 2 + (kind_at(pieces, at + 2) is K.COMMA)
    if kind_at(pieces, at + 1) is not K.NUMBER or kind_at(pieces, reps) is not K.NUMBER:
        return False
    time = pieces[at + 1]
    typed = time.role in TIMED or (time.role is Role.BARE and time.value % STEP == 0)
    return typed and SHORTEST <= time.value <= LONGEST and pieces[reps].role in REPS


def _part(pieces: list[Piece], at: int) -> int:
    """The place of the reps behind a breath that begins there; 0 where none stands there."""
    breath = False
    while at < len(pieces):
        piece = pieces[at]
        if piece.kind is K.NUMBER and piece.role in REPS:
            behind = pieces[at + 1].kind if at + 1 < len(pieces) else None
            return at if breath and behind in ENDS else 0
        if _is_breath(pieces, at):
            breath = True
            at += piece.kind is not K.NUMBER and _is_timed(pieces, at)
        elif piece.kind not in AMID:
            return 0
        at += 1
    return 0

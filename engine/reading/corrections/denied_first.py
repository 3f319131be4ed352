"""What it was not, told ahead of what it was: "not dumbbells, ez bar", "not today, yesterday".

denied first = ( "not" | "no" | "wasn't" ) [ was ] THING ( "," | "but" ) [ was ] THING      both of one class

It is read as the other way round, "ez bar, not dumbbells".
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.days.day_starts import DATE_KINDS
from engine.reading.entries.names import EQUIPMENT
from engine.reading.words.cues import any_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, last_word
from engine.reading.words.token_walk import KNOWN

CLASSES = (
    frozenset((*EQUIPMENT, K.VARIANT, K.BAR)),
    frozenset((K.KG, K.LB)),
    frozenset((*DATE_KINDS, K.DATE, K.TODAY, K.YESTERDAY)),
)
DENYING = frozenset((K.NOT, K.DENY))
DATED, PAST = CLASSES[-1], frozenset((K.YESTERDAY, K.DAYS_AGO, K.AGO))
SIGNS, BUT = frozenset((K.COMMA, K.STOP, K.DASH)), frozenset(("but", "typedlink"))
AHEAD = frozenset((K.FILLER,))


def with_denied_behind(pieces: list[Piece]) -> list[Piece]:
    """The pieces with what is denied behind what is said; as they are where they do not begin by denying."""
    pieces = _with_today_apart(pieces)
    at = next((at for at, piece in enumerate(pieces) if piece.kind not in AHEAD), 0)
    cut = next((place for place in range(at + 1, len(pieces)) if _parts(pieces[place])), 0)
    if not cut or pieces[at].kind not in DENYING or not _are_alike(pieces[at + 1 : cut], pieces[cut + 1 :]):
        return pieces
    said = [_as_past(piece) for piece in pieces[cut + 1 :] if piece.kind not in SIGNS]
    return [*pieces[:at], *said, pieces[at]._replace(kind=K.NOT), *pieces[at + 1 : cut]]


def _with_today_apart(pieces: list[Piece]) -> list[Piece]:
    """ "not today, yesterday": nothing will be done today, the words say, but where a past day stands behind them."""
    first = pieces[0] if pieces else None
    if first is None or first.kind is not K.NEVER or not any(map(_is_past, pieces[1:])):
        return pieces
    if _meaning(last_word(first)) is not K.TODAY:
        return pieces
    return [first._replace(kind=K.NOT), first._replace(kind=K.TODAY, text=last_word(first)), *pieces[1:]]


def _is_past(piece: Piece) -> bool:
    return piece.kind in DATED and _meaning(last_word(piece)) in PAST


def _as_past(piece: Piece) -> Piece:
    """The day as its word tells it, where it was taken for no day beside the one that is denied."""
    undated = piece.kind is K.DATE and piece.day is None and _meaning(piece.text) is K.YESTERDAY
    return piece._replace(kind=K.YESTERDAY) if undated else piece


def _meaning(word: str) -> K | None:
    meaning = KNOWN[word].meaning
    return meaning.kind if meaning is not None else None


def _parts(piece: Piece) -> bool:
    return piece.kind in SIGNS or (piece.kind in (K.FILLER, K.AND) and any_cued(piece.text.split(), BUT))


def _are_alike(denied: Sequence[Piece], said: Sequence[Piece]) -> bool:
    """Whether both name things of one class and nothing else, and what is said denies nothing more."""
    both = {piece.kind for piece in (*denied, *said)}
    if K.NUMBER in both or K.TIMES in both or DENYING & {piece.kind for piece in said}:
        return False
    if _holds(DATED, said) and not any(map(_is_past, said)):
        return False  # "not today, monday then" is to come
    return any(_holds(one, denied) and _holds(one, said) for one in CLASSES)


def _holds(one: frozenset[K], pieces: Sequence[Piece]) -> bool:
    return any(piece.kind in one for piece in pieces)

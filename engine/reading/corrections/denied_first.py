"""What it was not, told ahead of what it was: "not dumbbells, ez bar", "not today, yesterday".

denied first = ( "not" | "no" | "wasn't" ) [ was ] THING ( "," | "but" ) [ was ] THING      both of one class
             | ( "not" | "no" ) [ was ] NUMBER RATHER NUMBER          "no 8 sino 7", "nie 8 tylko 7"

It is read as the other way round, "ez bar, not dumbbells".
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.days.day_starts import DATE_KINDS
from engine.reading.entries.names import EQUIPMENT
from engine.reading.values import Context
from engine.reading.words.cues import any_cued, is_cued
from engine.reading.words.kinds import DENYING, K
from engine.reading.words.phrasebook import phrasebook, spoken
from engine.reading.words.pieces import Piece, last_word
from engine.reading.words.token_walk import KNOWN
from engine.values.effort import Effort

CLASSES = (
    frozenset((*EQUIPMENT, K.VARIANT, K.BAR)),
    frozenset((K.KG, K.LB)),
    frozenset((*DATE_KINDS, K.DATE, K.TODAY, K.YESTERDAY)),
)
DATED, PAST = CLASSES[-1], frozenset((K.YESTERDAY, K.DAYS_AGO, K.AGO))
SIGNS, BUT = frozenset((K.COMMA, K.STOP, K.DASH)), frozenset(("but", "typedlink"))
AHEAD = frozenset((K.FILLER,))


def with_denied_behind(pieces: list[Piece]) -> list[Piece]:
    """The pieces with what is denied behind what is said; as they are where they do not begin by denying."""
    pieces = _with_today_apart(pieces)
    if (turned := _with_number_turned(pieces)) is not None:
        return turned
    at = next((at for at, piece in enumerate(pieces) if piece.kind not in AHEAD), 0)
    cut = next((place for place in range(at + 1, len(pieces)) if _parts(pieces[place])), 0)
    if not cut or pieces[at].kind not in DENYING or not _are_alike(pieces[at + 1 : cut], pieces[cut + 1 :]):
        return pieces
    said = [_as_past(piece) for piece in pieces[cut + 1 :] if piece.kind not in SIGNS]
    return [*pieces[:at], *said, pieces[at]._replace(kind=K.NOT), *pieces[at + 1 : cut]]


def _with_number_turned(pieces: list[Piece]) -> list[Piece] | None:
    """ "no 8 sino 7" as "7 no 8"; None where it is no such denial."""
    numbers = [at for at, piece in enumerate(pieces) if piece.kind is K.NUMBER]
    if len(numbers) != 2 or numbers[0] > MOST_AHEAD or numbers[0] < 1:
        return None
    first, second = numbers
    denying = next((at for at in range(first) if pieces[at].kind in DENYING), None)
    parting = [at for at in range(first + 1, second) if is_cued(pieces[at].text, RATHER)]
    if denying is None or len(parting) != 1 or not all(_is_little(piece) for piece in pieces[:first]):
        return None
    old, new = pieces[first : parting[0]], pieces[parting[0] + 1 :]
    if any(piece.kind not in OF_A_NUMBER for piece in (*old, *new)):
        return None
    denied = [piece for piece in old if piece.kind not in SIGNS]
    return [*new, pieces[denying]._replace(kind=K.NOT), *denied]


def _is_little(piece: Piece) -> bool:
    return piece.kind in DENYING or piece.kind is K.FILLER or spoken(piece.text) in phrasebook().copulas


RATHER = frozenset(("butrather",))
OF_A_NUMBER = frozenset((K.NUMBER, K.KG, K.LB, K.REPS, K.COMMA, K.STOP, K.FILLER))
MOST_AHEAD = 3


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


def without_denied_effort(pieces: list[Piece], context: Context) -> list[Piece]:
    """ "rpe 9 not 8" without the eight, where the latest set is said to have been that hard; else as they are."""
    kinds = [piece.kind for piece in pieces]
    at = next((at for at in range(len(kinds) - 1) if kinds[at : at + 2] == [K.EFFORT, K.NOT]), None)
    if at is None or kinds[at + 2 : at + 3] not in ([K.NUMBER], [K.EFFORT]) or not context.recent:
        return pieces
    denied, effort = pieces[at + 2], context.recent[-1].done.effort
    old = denied.efforts[:1] == (effort,) if denied.kind is K.EFFORT else _is_of(denied, effort)
    return [*pieces[: at + 1], *pieces[at + 3 :]] if old else pieces


def _is_of(number: Piece, effort: Effort | None) -> bool:
    return effort is not None and number.value == (effort.rpe if effort.as_rpe else effort.rir)

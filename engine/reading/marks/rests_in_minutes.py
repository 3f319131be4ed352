"""A rest behind sets told by a bare number of minutes: "bench 80x8 rest 3", "bench 80x8, rested 5", "80x8 Pause 3".

rest = set REST [ "of" ] NUMBER          NUMBER: up to 5; a rest-pause has a word of its own, or commas
From there up to what can be told in seconds it may be reps: it is asked. Common practice, no source.
"""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal

from engine.reading.words.ahead import is_amount, kind_at
from engine.reading.words.kinds import K
from engine.reading.words.pieces import NOTHING, Piece, Role

LONGEST, SHORTEST_IN_SECONDS = Decimal(5), Decimal(10)
REACH = 12
"""Pieces in front of the word that may tell the sets it stands behind."""
SPANNING = frozenset((K.DASH, K.SLASH))
COUNTING_ON = frozenset(
    (K.TIMES, K.AT, K.KG, K.LB, K.SLASH, K.DASH, K.PLUS, K.REPS, K.SETS, K.MORE, K.OF, K.BY, K.COLON, K.FOR, K.RPE,
     K.RIR, K.EACH, K.NAME)
)  # fmt: skip
"""Behind the number these tell that it counts sets or reps."""
SETS_TOLD = frozenset((K.TIMES, K.NUMBER))
FEWEST_OF_A_LIST = 3
LOAD_AND_REPS = 2


def rested_in_minutes(pieces: list[Piece], word: int, at: int, out: Sequence[Piece]) -> K | None:
    """What the word is with the number there: a remark, what is asked about, or None where it tells reps."""
    number, behind = pieces[at], kind_at(pieces, at + 1)
    if number.role is not Role.BARE or not NOTHING < number.value < SHORTEST_IN_SECONDS:
        return None
    pair_behind = behind is K.NUMBER and kind_at(pieces, at + 2) is K.TIMES  # "80x8 rest 3 80x7"
    span = behind in SPANNING and is_amount(pieces, at + 2) and number.value < pieces[at + 2].value <= LONGEST
    if (behind is K.NUMBER and not pair_behind) or (behind in COUNTING_ON and not span):
        return None
    if not _stands_behind_sets(out, pieces[word].kind):
        return None
    return K.NOTE if number.value <= LONGEST and behind is not K.REST else K.ALTERED


def rested_ahead_of_reps(pieces: Sequence[Piece], at: int, out: Sequence[Piece]) -> K | None:
    """What a word for a rest is, right behind the reps of a set and with two numbers behind it, "80x8 rest 15 4": a
    remark where the first can only be its seconds, else asked about; None where no such numbers stand there.
    """
    if kind_at(pieces, at + 1) is not K.NUMBER or kind_at(pieces, at + 2) in PAIRING:
        return None
    last = len(out) - 1 - (kind_at(out, len(out) - 1) in SIGNS)
    counted = pieces[at].role in COUNTS and pieces[at + 1].role in COUNTS
    if not counted or last < 0 or out[last].kind is not K.NUMBER:
        return None
    time, reps, before = pieces[at].value, pieces[at + 1].value, out[last].value
    load = out[last - LOAD_AND_REPS].value if last >= LOAD_AND_REPS else NOTHING
    paused = pieces[at - 1].kind is K.PAUSE  # "squat 140x3 paused 120 3": seconds, or another load
    lighter = paused and load > time >= load / LEAST_OF_A_LOAD
    timed = time > before and time >= SHORTEST_IN_SECONDS and time % STEP == 0 and not lighter
    return K.NOTE if timed and reps <= before else K.ALTERED


PAIRING = frozenset((K.TIMES, K.AT, K.FOR, K.KG, K.LB))
SIGNS = frozenset((K.COMMA, K.PLUS, K.STOP))
COUNTS = frozenset((Role.BARE, Role.REPS))
STEP, LEAST_OF_A_LOAD = 5, 2


def is_of_one_set(out: Sequence[Piece]) -> bool:
    """Whether no other sets are told ahead of "rest 3" than one, so that "the rest" cannot be of them."""
    return [piece.kind for piece in out if piece.kind in SETS_TOLD] == [K.NUMBER, K.TIMES, K.NUMBER]


def _stands_behind_sets(out: Sequence[Piece], word: K) -> bool:
    kinds = [piece.kind for piece in out[-REACH:]]
    if K.LINE in kinds:
        kinds = kinds[len(kinds) - kinds[::-1].index(K.LINE) :] or kinds  # "80x8", and "rest 3" on the next line
    numbers = kinds.count(K.NUMBER)
    if word is K.PAUSE:
        return K.TIMES in kinds or numbers >= FEWEST_OF_A_LIST  # "100 5 pause 5" may tell a paused set
    return K.TIMES in kinds or numbers >= (LOAD_AND_REPS if K.NAME in kinds else 1)

"""So many sets counted with a word for all, and no reps: "all three were", "all 3 to failure", "las tres al fallo".

so many = ALL little* NUMBER ( was | mark ) | "the" NUMBER mark      as many as stand, where a mark follows
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.latest_sets import latest_of_it, run_of_it
from engine.reading.values import Context
from engine.reading.words.cues import any_cued, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role
from engine.reading.words.token_walk import KNOWN

ALL_OF_THEM = frozenset(("all", "each", "every", "allofit"))
THE_OR_THOSE = frozenset(("the", "those"))
LITTLE = frozenset((K.FILLER, K.AND, K.OF))
BESIDE_A_MARK = frozenset((K.FILLER, K.OF, K.SETS, K.NOTE))
MARKING = frozenset((K.EFFORT, K.FAILURE, K.WARMUP, K.MISS, K.DROP))


def counted_behind_all(pieces: Sequence[Piece]) -> tuple[Piece | None, Sequence[Piece]]:
    """The number of sets behind a word for all, past the little words of "tutte e tre", and what stands behind it."""
    start = next((at for at, piece in enumerate(pieces) if not _is_little(piece)), len(pieces))
    return _counted(pieces[start : start + 1]), pieces[start + 1 :]


def counted_and_marked(behind: Sequence[Piece], context: Context) -> Piece | None:
    """The number behind an article where it counts all of the sets that stand, and a mark follows; None otherwise."""
    number = _counted(behind[:1])
    if number is None or not marks_follow(behind[1:]) or number.value < SEVERAL:
        return None
    return number if number.value in so_many_stand(context) else None


def so_many_stand(context: Context) -> tuple[int, int]:
    """How many sets "all" may be of: the row of single ones, and those of the latest message."""
    return len(run_of_it(context)), len(latest_of_it(context))


def marks_follow(pieces: Sequence[Piece]) -> bool:
    """Whether a mark of sets comes next."""
    at = next((at for at, piece in enumerate(pieces) if piece.kind not in BESIDE_A_MARK), len(pieces))
    return at < len(pieces) and pieces[at].kind in MARKING


def is_both(piece: Piece) -> bool:
    """Whether it says both, as "both of them" does; "both my brothers" is of others."""
    words = piece.text.split() if piece.kind is K.OTHERS else []
    meaning = KNOWN[words[0]].meaning if len(words) > 1 else None
    of_those = meaning is not None and meaning.kind is K.BOTH and is_cued(words[-1], THE_OR_THOSE)
    return piece.kind is K.BOTH or of_those


def _counted(pieces: Sequence[Piece]) -> Piece | None:
    return next((one for one in pieces if one.kind is K.NUMBER and one.role in (Role.BARE, Role.SETS)), None)


def _is_little(piece: Piece) -> bool:
    return piece.kind in LITTLE and not any_cued(piece.text.split()[:1], ALL_OF_THEM)


SEVERAL = 2


def ends_behind_reps(pieces: Sequence[Piece], at: int, stand: int) -> bool:
    """Whether a number ends the words behind this place and counts sets: "4 on the last 2", the reps ahead of it."""
    if at + 2 != len(pieces) or pieces[-1].kind is not K.NUMBER or pieces[-1].role is not Role.BARE:
        return False
    return 1 < pieces[-1].value <= stand and any(piece.kind is K.NUMBER for piece in pieces[:at])

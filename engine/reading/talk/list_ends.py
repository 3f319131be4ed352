"""The last number of a list with words right behind it: "8, 8, 7 slept badly", "8, 8, 7 sensations".

end = "," NUMBER [ ( "+" | "@" ) NUMBER ] MARK* word+       behind the numbers of sets, with no other number
Behind reps a word that counts nothing leaves the number what it is; where a word may be counted, it is asked.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.talk.clauses_of_talk import AHEAD, BEHIND
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import COUNTED, MOST_LOADED_REPS, Piece, Role

MARKS = frozenset((K.MISS, K.FAILURE, K.EFFORT, K.PLUS, K.REPS, K.NOTE))
IN_A_LIST = frozenset((K.COMMA, K.TIMES, K.NUMBER, K.SLASH, K.DASH))
OF_SOMETHING_ELSE = AHEAD | BEHIND | {K.NAME, K.STORY, K.OTHERS, K.ASKS}
PLURAL = "s"


def ends_a_list(kept: Sequence[Piece], clause: Sequence[Piece]) -> bool:
    """Whether the number of a clause is the last of the reps that were kept, and its words a remark."""
    behind = _behind_the_number(clause)
    if not behind or clause[1].value == 1 or is_cued(behind[0].text, THINGS):
        return False  # "1 coffee", "2 koffie"
    if not _goes_on(kept, clause) or not OF_SOMETHING_ELSE.isdisjoint([one.kind for one in behind]):
        return False
    return _tells_no_count(behind)


def may_end_a_list(kept: Sequence[Piece], clause: Sequence[Piece]) -> bool:
    """Whether a number that is talk by the words behind it may be the last of the reps all the same."""
    if not kept or kept[-1].kind is not K.NUMBER or [piece.kind for piece in clause[:2]] != IN_FRONT:
        return False
    if _counts_things(kept[-1], clause):
        return False
    counted = len(clause) > len(IN_FRONT) and (clause[2].kind in COUNTING or _is_plural(clause[2]))
    counted = counted or clause[1].value == 1  # "1 coffee"
    lone = len(clause) == len(IN_FRONT) or clause[2].kind not in COUNTED or _counts_on(clause)
    return (_goes_on(kept, clause) and lone and not counted) or _tells_no_count(_behind_the_number(clause))


IN_FRONT = [K.COMMA, K.NUMBER]
THINGS = frozenset(("things", "people"))
COUNTING = frozenset((K.FAR, K.TIMES, K.MORE, K.OF, K.DASH, K.SLASH))
"""Behind a number these tell what it counts, or make it part of something else."""


def _counts_things(last: Piece, clause: Sequence[Piece]) -> bool:
    """ "10, 8, 7, 2 kaffee": far fewer than the reps before it, and coffee or people behind it."""
    told = len(clause) > len(IN_FRONT) and is_cued(clause[2].text, THINGS)
    return told and 1 < clause[1].value <= last.value - FAR_FEWER


FAR_FEWER = 3


def _counts_on(clause: Sequence[Piece]) -> bool:
    """ "4 2 coffees before": the second number counts other things."""
    behind = [piece.kind for piece in clause[2:4]]
    return behind[:1] == [K.NUMBER] and len(behind) > 1 and behind[1] not in COUNTED


def _is_plural(piece: Piece) -> bool:
    """ "3 guys", "2 koffie"; and not "4 coach was happy"."""
    return is_cued(piece.text, THINGS) or (piece.kind is K.OTHERS and piece.text.endswith(PLURAL))


def _goes_on(kept: Sequence[Piece], clause: Sequence[Piece]) -> bool:
    """ "..., 8, 8" and ", 7 ...": reps behind reps."""
    listed = len(kept) > 1 and kept[-2].kind in IN_A_LIST and _is_reps(kept[-1])
    return listed and [piece.kind for piece in clause[:2]] == IN_FRONT and _is_reps(clause[1])


def _behind_the_number(clause: Sequence[Piece]) -> Sequence[Piece]:
    """The words behind the number of a clause and its marks; none where another number stands there."""
    at = len(IN_FRONT)
    while [piece.kind for piece in clause[at : at + 2]] in ([K.PLUS, K.NUMBER], [K.AT, K.NUMBER]):
        at += 2
    behind = clause[at:]
    return behind if COUNTED.isdisjoint([piece.kind for piece in behind]) else ()


def _tells_no_count(behind: Sequence[Piece]) -> bool:
    """ "7 slept badly", "7 miss slept badly": the first word that is no mark cannot be what is counted."""
    word = next((piece for piece in behind if piece.kind not in MARKS), None)
    return word is not None and word.kind is K.UNRELATED and not word.text.endswith(PLURAL)


def _is_reps(number: Piece) -> bool:
    return number.kind is K.NUMBER and number.role is Role.BARE and number.value <= MOST_LOADED_REPS

"""Words that only say that the sets standing were all done: "did all 3", "3 of them", "got all 5 reps on each".

told = [ verb ] ( "all" | verb "the" ) NUMBER [ "sets" | "reps" | "of them" | "on each" ] [ how it felt ]

The number is one that stands already: of the sets, of their reps, or of all reps together. Nothing is added for it.
"""

from __future__ import annotations

from engine.reading.corrections.correcting import Told
from engine.reading.corrections.parts import is_all
from engine.reading.latest_sets import latest_of_it, run_of_it
from engine.reading.words.cues import CUES_OF, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role, first_word
from engine.values.sets import SetRecord

AROUND = frozenset(
    (K.FILLER, K.GOT, K.NUMBER, K.SETS, K.REPS, K.NOTE, K.OF, K.EACH, K.COMMA, K.STOP, K.AND, K.DASH, K.DENY, K.ONLY)
)
MOST_UNKNOWN = 1


def confirms(told: Told) -> bool:
    """Whether the message tells no more than that what stands was all done."""
    numbers = told.numbers()
    if len(numbers) != 1 or numbers[0].role not in (Role.BARE, Role.SETS, Role.REPS):
        return False
    strange = [piece for piece in told.pieces if piece.kind not in AROUND]
    if not all(piece.kind is K.PLAIN for piece in strange) or told.unknown() > MOST_UNKNOWN:
        return False
    group = run_of_it(told.context)
    singles = len(latest_of_it(told.context)) == 1
    if len(group) < 2 or not _all_of(told.pieces, numbers[0]) or not _is_said(told.pieces, numbers[0]):
        return False
    return _stands(numbers[0], told, group, singles=singles)


def _all_of(pieces: list[Piece], number: Piece) -> bool:
    """ "all 3", "all the 3"; "did the 3"."""
    at = pieces.index(number)
    before, behind = pieces[:at], pieces[at + 1 : at + 3]
    if [piece.kind for piece in behind[:1]] == [K.OF] and _is_them(behind[-1].text):
        return True
    near = [piece for piece in before[-2:] if piece.kind is K.FILLER]
    done = any(piece.kind is K.GOT or is_cued(piece.text, DONE) for piece in before[:-1])
    return any(map(is_all, near)) or (done and bool(near) and "the" in CUES_OF[near[-1].text])


DONE = frozenset(("did", "made", "finished"))


def _is_them(word: str) -> bool:
    return word == "em" or "those" in CUES_OF[word]


def _is_said(pieces: list[Piece], number: Piece) -> bool:
    """Whether a word says that they were done, or how; "all 8" alone tells new reps of all."""
    return any(
        piece.kind in (K.GOT, K.NOTE, K.EACH) or is_cued(first_word(piece), DONE) or _is_them(first_word(piece))
        for piece in pieces
        if piece != number
    )


def _stands(number: Piece, told: Told, group: list[SetRecord], *, singles: bool) -> bool:
    reps = [record.done.reps for record in group]
    if number.value == len(group) and number.role is not Role.REPS:
        return not singles or number.role is Role.SETS or number.value != reps[-1]
    if number.role is Role.SETS:
        return False
    return (len(set(reps)) == 1 and number.value == reps[0] and K.EACH in told.kinds()) or number.value == sum(reps)

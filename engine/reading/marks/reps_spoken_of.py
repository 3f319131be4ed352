"""Reps that a remark speaks of beside the sets: "80x8 rep 6 slow", "first 5 reps fast", "last 2 reps spotted", "felt
like 9 reps".

one   = ONE-REP NUMBER word+                   ONE-REP: the singular, or any word for reps where "was" stands behind
some  = ( "first" | "last" ) NUMBER "reps" word+      behind sets or alone: of the set before, and no set of so many
felt  = FELT [ "like" ] NUMBER "reps"
No other number stands behind them in the message; a miss or failure among the words keeps them what they are.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.ahead import aside, kind_at
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook, spoken
from engine.reading.words.pieces import ROLE, Piece, Role, is_one_word, places_in

SPEAKING = frozenset((K.NOTE, K.PLAIN, K.FILLER, K.ASSISTED, K.PARTIAL))
PLACED = frozenset((K.FIRST, K.LAST))
SAID = frozenset(
    (K.NOTE, K.PLAIN, K.FILLER, K.ASSISTED, K.PARTIAL, K.JOINT, K.MUSCLE, K.WITH, K.OTHERS, K.PAIN, K.SORE, K.EACH,
     K.UNRELATED, K.NOT, K.DENY, K.PAUSE, K.NOT_DATE, K.AND, K.STOP, K.COMMA)
)  # fmt: skip
LITTLE = frozenset((K.FILLER, K.STOP, K.COMMA, K.AND))
ONE_REP, FELT = frozenset(("onerep",)), frozenset(("felt", "seemed"))
COUNTED = frozenset((Role.BARE, Role.REPS))
REACH_OF_A_FEEL = 3


def may_speak_of_reps(kinds: set[K], pieces: list[Piece]) -> bool:
    """Whether reps are counted or named by their word, and words are told beside them."""
    return not kinds.isdisjoint(SPEAKING) and (K.REPS in kinds or Role.REPS in map(ROLE, pieces))


def with_reps_spoken_of(pieces: list[Piece], cleaned: str) -> list[Piece]:
    """The pieces, with the only number behind the sets made part of a remark where it speaks of their reps."""
    numbers = places_in((Role.REPS, Role.BARE), [*map(ROLE, pieces)])
    at = next((place for place in reversed(numbers) if pieces[place].kind is K.NUMBER), 0)
    if not at or not SAID.issuperset([piece.kind for piece in pieces[at + 1 :] if piece.kind is not K.REPS]):
        return pieces
    start = _starts_one(pieces, at, cleaned)
    start = _starts_some(pieces, at) if start is None else start
    start = _starts_a_feel(pieces, at) if start is None else start
    if start is None:
        return pieces
    end = at + (kind_at(pieces, at + 1) is K.REPS)
    remark = aside(pieces[start])._replace(end=pieces[end].end)
    if start == at and pieces[at].role is Role.BARE:
        remark = remark._replace(start=pieces[at - 1].end - len(_word_at_its_end(pieces[at - 1], cleaned)))
    return [*pieces[:start], remark, *pieces[end + 1 :]]


def _starts_one(pieces: Sequence[Piece], at: int, cleaned: str) -> int | None:
    """The place of "rep 6" in "80x8 rep 6 slow"; the word may have been taken to count the reps in front of it."""
    before, behind = pieces[at - 1], pieces[at + 1 :]
    if pieces[at].role is not Role.BARE or not _says_something(behind):
        return None
    was = spoken(behind[0].text.rpartition(" ")[2]) in phrasebook().copulas
    told = K.TIMES in [piece.kind for piece in pieces[: at - 1]]
    if before.kind is K.REPS:
        alone = all(piece.kind not in (K.NUMBER, K.NAME) for piece in pieces[: at - 1])  # "100 kg rep 6 easy"
        return at - 1 if (was or is_cued(before.text, ONE_REP)) and (told or alone) else None
    if not told or before.role is not Role.REPS or before.value < pieces[at].value:
        return None
    word = _word_at_its_end(before, cleaned)
    return at if word and (was or is_cued(word, ONE_REP)) else None


def _word_at_its_end(number: Piece, cleaned: str) -> str:
    """ "rep" of "8 rep"."""
    return cleaned[number.start : number.end].lower().lstrip("0123456789., ")


def _starts_some(pieces: Sequence[Piece], at: int) -> int | None:
    """The place of "first" in "80x8, first 5 reps fast"; "bench last 5 reps easy" may be the set of that day."""
    placed = pieces[at - 1].kind in PLACED and is_one_word(pieces[at - 1])
    counted = pieces[at].role is Role.REPS or kind_at(pieces, at + 1) is K.REPS
    behind = [piece for piece in pieces[at + 1 :] if piece.kind is not K.REPS]
    if not placed or not counted or not _says_something(behind):
        return None
    ahead = [piece.kind for piece in pieces[: at - 1]]
    return at - 1 if K.NAME not in ahead or K.NUMBER in ahead else None


def _starts_a_feel(pieces: Sequence[Piece], at: int) -> int | None:
    """The place of "felt" in "80x8, felt like 9 reps"."""
    if pieces[at].role is not Role.REPS and kind_at(pieces, at + 1) is not K.REPS:
        return None
    for place in range(at - 1, max(-1, at - 1 - REACH_OF_A_FEEL), -1):
        piece = pieces[place]
        if piece.kind is K.NOTE and is_cued(piece.text.split()[0], FELT):
            return place if place < at - 1 else None
        if piece.kind not in (K.NOT_DATE, K.FILLER):
            return None
    return None


def _says_something(behind: Sequence[Piece]) -> bool:
    return any(piece.kind not in LITTLE for piece in behind)

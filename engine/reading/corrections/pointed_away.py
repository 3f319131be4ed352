"""Sets of the latest message taken away without a name: "delete them", "those were my brother's, delete those please".

away   = [ reason "," ] delete ( "them" | "those" ) [ "all" | "please" ]
       | somebody's "," delete [ "it" | "that" | "them" ]               "that was someone else's log, delete"
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.corrections.correcting import LONGEST_CUE, LOOSE, Told
from engine.reading.corrections.deletes import WEAK
from engine.reading.corrections.parts import says_all
from engine.reading.corrections.said_to_be import is_be
from engine.reading.latest_sets import last_message, run_of_it
from engine.reading.values import Correction
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import spoken
from engine.reading.words.pieces import Piece
from engine.values.sets import SetRecord

THEM = frozenset(("those",))
ONE = frozenset(("that",))
POSSESSIVE = "s"
OF_A_PART = frozenset(
    (K.NUMBER, K.COUNT, K.TIMES, K.LAST, K.FIRST, K.MIDDLE, K.FROM_LAST, K.ORDINAL, K.EXTREME, K.WARMUP, K.SETS, K.DATE,
     K.QUESTION, K.FUTURE, K.TOMORROW, K.STORY, K.NEVER, K.EFFORT, K.YESTERDAY, K.WEEKDAY, K.EXCEPT, K.ONLY)
)  # fmt: skip


def pointed_away(told: Told) -> Correction | None:
    """The latest message's sets, away; None where the words may be of some of them, or of another day."""
    at, length = _where_it_is_asked(told)
    if not length or not OF_A_PART.isdisjoint(told.kinds()):
        return None
    ahead, behind = told.pieces[:at], told.pieces[at + length :]
    somebodys = _were_somebodys(ahead, told)
    if not somebodys and (spoken(told.pieces[at].text) in WEAK or any(piece.kind is K.NAME for piece in ahead)):
        return None
    parted = all(_adds_nothing(piece, told) for piece in ahead) or ahead[-1].kind in LOOSE | {K.AND}
    if not parted and not (somebodys and _is_somebodys(ahead[-1], told)):
        return None  # "don't delete them", "he said delete them"
    if not _points_at_all(behind, told) and not (somebodys and _points_at_one(behind, told)):
        return None
    return Correction(removed=tuple(_all_of_it(told)))


def _where_it_is_asked(told: Told) -> tuple[int, int]:
    """The place of the first word that takes away, and how many words it is."""
    words = [spoken(piece.text) for piece in told.pieces]
    cues = told.book.cues["delete"]
    for at in range(len(words)):
        for length in range(min(LONGEST_CUE, len(words) - at), 0, -1):
            if " ".join(words[at : at + length]) in cues:
                return at, length
    return 0, 0


def _points_at_all(behind: Sequence[Piece], told: Told) -> bool:
    """Whether "them" or "those" stands there, and nothing that picks some."""
    pointed = any(is_cued(piece.text, THEM) for piece in behind)
    return pointed and all(is_cued(piece.text, THEM) or _adds_nothing(piece, told) for piece in behind)


def _points_at_one(behind: Sequence[Piece], told: Told) -> bool:
    return all(is_cued(piece.text, ONE) or _adds_nothing(piece, told) for piece in behind)


def _adds_nothing(piece: Piece, told: Told) -> bool:
    little = piece.kind in LOOSE | {K.OF} or says_all(piece)
    return little or spoken(piece.text) in told.book.cues["please"] | told.book.cues["chatter"] | told.book.cues["tail"]


def _were_somebodys(ahead: Sequence[Piece], told: Told) -> bool:
    """Whether the words say whose they were; "my brother's squats were heavy" and "the curls were my brother's" speak
    of others.
    """
    at = next((at for at, piece in enumerate(ahead) if _is_somebodys(piece, told)), None)
    if at is None:
        return False
    named = any(piece.kind is K.NAME for piece in ahead[:at])
    return not named and not any(map(is_be, ahead[at:]))


def _is_somebodys(piece: Piece, told: Told) -> bool:
    """ "my brother's", "someone else's": whose they were."""
    whose = spoken(piece.text).removesuffix(POSSESSIVE)
    return piece.kind is K.OTHERS or (piece.kind is K.PLAIN and whose in told.book.cues["others"])


def _all_of_it(told: Told) -> Sequence[SetRecord]:
    """The sets of the latest message, of all its lifts; or the row of single ones that it ends."""
    message = last_message(told.context)
    return message if len(message) > 1 else run_of_it(told.context)

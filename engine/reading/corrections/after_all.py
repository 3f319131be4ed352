"""What sets that stand, or stood, were like: "set 3 was hard", "actually 2 was fine", "put set 2 back".

told = [ slip ] ( "set" NUMBER | NUMBER | "the last one" ) was how [ "after all" ]  |  "put" "set" NUMBER "back"

The number is a place and no new value. "Fine" and "right" may ask for a set back that was deleted: the chat knows.
"""

from __future__ import annotations

from itertools import pairwise

from engine.reading.corrections.correcting import Told, cue_at
from engine.reading.corrections.parts import MOST_PARTS
from engine.reading.corrections.said_to_be import is_be
from engine.reading.latest_sets import run_of_it
from engine.reading.marks.marks_in_remarks import mark_denied
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import PLACING, K
from engine.reading.words.phrasebook import spoken
from engine.reading.words.pieces import Piece, Role, first_word

WAS_FINE = "says that a set was right after all"
WAS_LIKE = "talk: what sets that stand were like"
FINE, FELT = frozenset(("fine",)), frozenset(("felt",))
ABOUT = PLACING | {K.SETS, K.NUMBER, K.FILLER, K.NOTE, K.NAME, K.OF, K.STOP, K.COMMA}


def was_like(told: Told) -> str:
    """Why the message changes nothing, where it tells how sets were; empty for any other."""
    if _asks_back(told):
        return WAS_FINE
    ended = told.book.cues["afterall"]
    end = next((at for at in range(len(told.words)) if cue_at(told.words, at, ended)), len(told.words))
    tail = set(told.words[end:])
    pieces = [piece for piece in told.pieces if not tail.issuperset(map(spoken, piece.text.split()))]
    if not _tells_how(pieces) or not _all_are_places(pieces, told):
        return ""
    fine = any(is_cued(first_word(piece), FINE) for piece in pieces if piece.kind is K.NOTE)
    return WAS_FINE if fine and (told.slipped or end < len(told.words)) else WAS_LIKE


def _asks_back(told: Told) -> bool:
    """ "put set 2 back": a place, and no reps."""
    placed = any(a.kind is K.SETS and b.kind is K.NUMBER for a, b in pairwise(told.pieces))
    back = told.words[-1] in told.book.cues["back"] and told.starts("putsback") > 0
    return placed and back and len(told.numbers()) == 1


def _tells_how(pieces: list[Piece]) -> bool:
    kinds = [piece.kind for piece in pieces]
    verb = next((at for at, piece in enumerate(pieces) if is_be(piece) or is_cued(first_word(piece), FELT)), None)
    if verb is None or not ABOUT.issuperset(kinds) or K.NOTE not in kinds[verb:]:
        return False
    if any(map(mark_denied, pieces[verb:])):
        return False
    return K.NUMBER not in kinds[verb:] and not {K.NUMBER, *PLACING}.isdisjoint(kinds[:verb])


def _all_are_places(pieces: list[Piece], told: Told) -> bool:
    """Whether no number may be a value: "8 was right" behind a change gives the 8 back."""
    for at, piece in enumerate(pieces):
        if piece.kind is not K.NUMBER or (at and pieces[at - 1].kind is K.SETS):
            continue
        most = min(len(run_of_it(told.context)) + 1, MOST_PARTS)
        if piece.role is not Role.BARE or piece.value > most or told.context.amended:
            return False
    return True

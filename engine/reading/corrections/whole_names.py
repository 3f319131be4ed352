"""Whether the name of a lift is all that the sets were, or a common word that is also the name of one.

renaming = [ "that" ] was [ "a" | "the" | "my" ] NAME          "that was incline", "that was a front squat"
no more  = "was not" NAME | was "a" NAME "of a" WORD | was NAME "day" | "someone else's" NAME | "wrong" NAME
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from engine.reading.corrections.correcting import LOOSE, Told
from engine.reading.corrections.said_to_be import is_be
from engine.reading.lexing.name_words import ANGLES
from engine.reading.words.cues import any_cued, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import spoken
from engine.reading.words.pieces import Piece
from engine.values.ids import ExerciseName

PARTING = LOOSE | frozenset((K.AND, K.NOT, K.ARROW))
SPEAKING_OF_A_TIME = frozenset(("workout", "day", "week"))
ARTICLES = frozenset(("an",))
OWN_CUES = ("mean", "slip", "tail", "chatter", "be", "wrongly", "please")


def without_denied(pieces: Sequence[Piece], old: ExerciseName) -> list[Piece]:
    """The pieces without another lift that it was not: "that was not sumo"."""
    out: list[Piece] = []
    denied = False
    for piece in pieces:
        if piece.kind is K.NOT:
            denied = True
        elif piece.kind in LOOSE or (denied and is_be(piece)):
            denied = False
        elif denied and piece.kind is K.NAME and old not in piece.names:
            continue
        out.append(piece)
    return out


def is_all_it_was(told: Told, named: Iterable[Piece]) -> bool:
    """Whether each of these new names is the whole of what the sets were."""
    verbs = [at for at, piece in enumerate(told.pieces) if is_be(piece)]
    return all(_is_whole(told, told.pieces.index(piece), verbs) for piece in named)


def _is_whole(told: Told, at: int, verbs: Sequence[int]) -> bool:
    ahead = told.pieces[max((verb for verb in verbs if verb < at), default=-1) + 1 : at]
    behind = _to_the_end(told.pieces[at + 1 :])
    if verbs and verbs[0] > at and not told.has("mean"):
        return False  # "my log is wrong"
    if told.blamed and at == 0:
        return False  # "wrong log"
    if verbs and any(piece.kind in (K.NOTE, K.HEADING) for piece in ahead):
        return False  # "that was easy, good morning all"
    strange = STRANGE if verbs else STRANGE - {K.PLAIN}  # "change leg press to hack squat"
    if not all(_says_little(piece, told) for piece in ahead if piece.kind in strange):
        return False  # "someone else's log"
    if _leaves_out_the_lift(told.pieces[at], ahead):
        return False
    return all(_may_follow(piece, ahead, told) for piece in behind)


def _may_follow(piece: Piece, ahead: Sequence[Piece], told: Told) -> bool:
    """Whether the word behind the name makes it nothing else: a day, a session or somebody of it."""
    if piece.kind is K.OTHERS:
        return not ahead  # "that was incline bro", and not "my dip partner"
    if piece.kind in (K.OF, K.HEADING) or is_cued(piece.text, SPEAKING_OF_A_TIME):
        return False
    return piece.kind is not K.PLAIN or _says_little(piece, told)


def _to_the_end(pieces: Sequence[Piece]) -> list[Piece]:
    """The rest of the clause."""
    at = next((at for at, piece in enumerate(pieces) if piece.kind in PARTING), len(pieces))
    return list(pieces[:at])


STRANGE = frozenset((K.PLAIN, K.OTHERS))


def _says_little(piece: Piece, told: Told) -> bool:
    """Whether it is a word of the correction itself, or of chat."""
    known = {word for cue in OWN_CUES for phrase in told.book.cues[cue] for word in phrase.split()}
    return all(spoken(word) in known for word in piece.text.split())


def _leaves_out_the_lift(piece: Piece, ahead: Sequence[Piece]) -> bool:
    """ "a hack": behind an article nobody stops short of the lift itself, "a hack squat"."""
    article = bool(ahead) and any_cued(ahead[-1].text.split()[-1:], ARTICLES)
    short = any(name.startswith(f"{piece.text} ") for name in piece.names)
    return piece.kind is K.NAME and article and short and piece.text not in ANGLES

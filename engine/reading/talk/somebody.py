"""Somebody of whom no list knows, told as the one who did the sets: "tom did bench 3x8", "our janitor can bench 100x3".

somebody = WORD "did" sets | WORD LIFT-ED sets                         an unknown subject in front of a verb
         | ( "my" | "the" | "a" ... ) ... WORD DOES [ lift ] sets      a subject with its article, and what one did
A word that no list knows and that may as well be said of one's own set is asked about: "tom got 100x3" (`whose.py`).
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece

BETWEEN_CLAUSES = frozenset((K.COMMA, K.AND, K.THEN, K.STOP, K.LINE, K.DASH))
BEFORE_THE_SETS = frozenset(
    (K.NAME, K.FILLER, K.WITH, K.FOR, K.VARIANT, K.BAR, K.SETS, K.ONLY, K.BARBELL, K.DUMBBELL, K.CABLE, K.MACHINE,
     K.KETTLEBELL, K.AND, K.GOT)
)  # fmt: skip
OF_A_SUBJECT = frozenset((K.PLAIN, K.NOTE, K.FILLER, K.HALF, K.OTHERS, K.WITH, K.UNRELATED, K.HEADING))
LEAST_LETTERS = 2
NEAR = 5
"""Words of a subject and its verb. Common practice, no source."""


def somebody_did(ahead: Sequence[Piece]) -> bool:
    """ "paul squatted 150x5", "my janitor does 3x10": an unknown subject in front of the numbers of a clause."""
    told = [piece for piece in ahead if piece.kind is not K.ONLY]  # "paul just squatted 150x5"
    for subject, verb in pairwise(told):
        if is_somebody(subject) and verb.kind is K.NAME and verb.text.endswith("ed") and len(subject.text) > 1:
            return True
    told = told[1:] if told and told[0].kind in BETWEEN_CLAUSES else told
    if [piece.kind for piece in told[:3]] == [K.PLAIN, K.AND, K.PLAIN]:
        told = told[2:]  # "anna and lisa did 5x5"
    if len(told) > 1 and told[1].text == "did" and is_somebody(told[0]):
        return True
    return _with_an_article(told)


def is_somebody(piece: Piece) -> bool:
    """ "tom did bench 3x8": a word that no list knows, and no adverb."""
    return piece.kind is K.PLAIN and piece.text.isalpha() and not piece.text.endswith("ly")


def _with_an_article(told: Sequence[Piece]) -> bool:
    """ "the new caretaker can bench 100x3": nothing but the lift stands between what they did and the numbers."""
    if not told or "article" not in CUES_OF[told[0].text] or told[0].kind not in OF_A_SUBJECT:
        return False
    verb = next((at for at in range(2, len(told)) if "theydo" in CUES_OF[told[at].text]), 0)
    subject = told[1:verb]
    if not subject or "reached" in CUES_OF[told[verb].text] or not any(map(is_somebody, (subject[0], subject[-1]))):
        return False
    if not OF_A_SUBJECT.issuperset([one.kind for one in subject]):
        return False
    return BEFORE_THE_SETS.issuperset([piece.kind for piece in told[verb + 1 :]])


def had_me_do(ahead: Sequence[Piece]) -> bool:
    """ "my coach made me do 3x10 squats", "my sister spotted me on bench 80x5": whoever is told of did not lift it."""
    places = [at for at in range(2, len(ahead)) if "tome" in CUES_OF[ahead[at].text]]
    return any("doneto" in CUES_OF[ahead[at - 1].text] and ahead[at - 2].kind is K.OTHERS for at in places)


def may_be_somebody(pieces: Sequence[Piece]) -> Piece | None:
    """ "tom got 100x3 on bench", "my comeback got 100x5": the unknown word in front of what was reached; or None."""
    verb = next((at for at in range(1, min(len(pieces) - 1, NEAR)) if "theydo" in CUES_OF[pieces[at].text]), 0)
    if not verb or pieces[verb + 1].kind is not K.NUMBER:
        return None
    subject, led = pieces[verb - 1], verb == 1 or "article" in CUES_OF[pieces[0].text]
    said = is_somebody(subject) and len(subject.text) > LEAST_LETTERS and "adverb" not in CUES_OF[subject.text]
    return subject if led and said else None

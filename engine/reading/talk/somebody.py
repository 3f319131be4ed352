"""Somebody of whom no list knows, told as the one who did the sets: "tom did bench 3x8", "our janitor can bench 100x3".

somebody = WORD "did" sets | WORD LIFT-ED sets                         an unknown subject in front of a verb
         | ( "my" | "the" | "a" ... ) ... WORD DOES [ lift ] sets      a subject with its article, and what one did
A word that no list knows and that may as well be said of one's own set is asked about: "tom got 100x3" (`whose.py`).
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import CUES_OF, any_cued
from engine.reading.words.kinds import K
from engine.reading.words.people import is_somebody, verb_behind
from engine.reading.words.pieces import Piece

BETWEEN_CLAUSES = frozenset((K.COMMA, K.AND, K.THEN, K.STOP, K.LINE, K.DASH))
BEFORE_THE_SETS = frozenset(
    (K.NAME, K.FILLER, K.WITH, K.FOR, K.VARIANT, K.BAR, K.SETS, K.ONLY, K.BARBELL, K.DUMBBELL, K.CABLE, K.MACHINE,
     K.KETTLEBELL, K.AND, K.GOT)
)  # fmt: skip
OF_A_SUBJECT = frozenset((K.PLAIN, K.NOTE, K.FILLER, K.HALF, K.OTHERS, K.WITH, K.UNRELATED, K.HEADING))
LEAST_LETTERS = 2
THEY_DID = frozenset(("auxthey", "theydo"))
NEAR = 5
"""Words of a subject and its verb. Common practice, no source."""


def somebody_did(ahead: Sequence[Piece]) -> bool:
    """ "paul squatted 150x5", "my janitor does 3x10": an unknown subject in front of the numbers of a clause."""
    told = [piece for piece in ahead if piece.kind is not K.ONLY]  # "paul just squatted 150x5"
    for subject, verb in pairwise(told):
        if is_somebody(subject) and verb.kind is K.NAME and verb.text.endswith("ed") and len(subject.text) > 1:
            return True
    told = told[1:] if told and told[0].kind in BETWEEN_CLAUSES else told
    told = told[1:] if told and "meanwhile" in CUES_OF[told[0].text] else told  # ", while tom did 100x5"
    if [piece.kind for piece in told[:3]] == [K.PLAIN, K.AND, K.PLAIN]:
        told = told[2:]  # "anna and lisa did 5x5"
    if len(told) > 1 and told[1].text == "did" and is_somebody(told[0]):
        return True
    if len(told) < len(ahead) and _does_it(told):
        return True
    return _with_an_article(told)


def _does_it(told: Sequence[Piece]) -> bool:
    """ "squat 3x6 77.5, joris deed 100": behind her own sets, what no "I" did."""
    verb = verb_behind(told, 0) if told and is_somebody(told[0]) else 0
    if not verb or (verb == 1 and told[verb].kind is K.GOT) or "reached" in CUES_OF[told[verb].text]:
        return False
    return not any("me" in CUES_OF[piece.text] for piece in told)


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
    if not any_cued([piece.text for piece in pieces[1 : NEAR + 1]], THEY_DID):
        return None
    who = next((at for at in range(min(len(pieces) - 2, NEAR - 1)) if verb_behind(pieces, at)), -1)
    verb = verb_behind(pieces, who) if who >= 0 else 0
    if not verb or not _leads_to_a_number(pieces, verb + 1, who):
        return None
    subject, led = pieces[who], who == 0 or "article" in CUES_OF[pieces[0].text]
    said = is_somebody(subject) and len(subject.text) > LEAST_LETTERS and "adverb" not in CUES_OF[subject.text]
    return subject if led and said else None


def _leads_to_a_number(pieces: Sequence[Piece], at: int, who: int) -> bool:
    """ "tom got 100x3", "luca ha fatto squat 3x5": numbers, or a lift and its numbers behind a single word."""
    named = who == 0 and kind_at(pieces, at) is K.NAME
    return kind_at(pieces, at + named) is K.NUMBER

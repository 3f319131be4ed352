"""Names of people that are words, too, of one language or another: "mia did 70x5" (Italian "my"), "may benched 60x5".

somebody = NAME-WORD ( DID ( set | LIFT ) | LIFT-ED )    at the head of a clause or behind a set; no "I" behind the verb
         | "mia" set                                     a word for "my" says nothing of a number
They become words that no list knows, so that the rules for somebody named hold (`somebodys_sets.py`, `somebody.py`).
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.people import verb_behind
from engine.reading.words.phrasebook import phrasebook
from engine.reading.words.pieces import Piece, is_one_word, texts_in_order

HEADS_A_CLAUSE = frozenset(
    (None, K.LINE, K.COMMA, K.STOP, K.AND, K.THEN, K.SLASH, K.PLUS, K.DASH, K.OPEN, K.NOT_DATE, K.EARLIER, K.WITH)
)
BEHIND_A_SET = frozenset((K.NUMBER, K.KG, K.LB, K.REPS, K.NOTE))
ALSO_BEHIND_NUMBERS = frozenset((K.MAX, K.FAR, K.MONTH))
"""Words that belong to the number in front of them: "3x8 max", "10 miles", "12 may"."""
REACH = 3
"""Words up to the numbers. Common practice, no source."""


def may_name_somebody(pieces: list[Piece]) -> bool:
    """Whether a name that is a word stands among them."""
    return not phrasebook().cues["alsoaname"].isdisjoint(texts_in_order(pieces))


def with_names_as_words(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with such names as words that no list knows."""
    named = phrasebook().cues["alsoaname"]
    out = list(pieces)
    for at, piece in enumerate(pieces):
        if piece.text in named and is_one_word(piece) and _stands_for_somebody(pieces, at):
            out[at] = piece._replace(kind=K.PLAIN, told=0, names=())
    return out


def _stands_for_somebody(pieces: Sequence[Piece], at: int) -> bool:
    before = kind_at(pieces, at - 1)
    behind_a_set = before in BEHIND_A_SET and pieces[at].kind not in ALSO_BEHIND_NUMBERS
    if not behind_a_set and before not in HEADS_A_CLAUSE and not _is_a_link(pieces[at - 1]):
        return False
    if "my" in CUES_OF[pieces[at].text] and _is_a_set(pieces, at + 1):
        return True
    if kind_at(pieces, at + 1) is K.NAME:
        return pieces[at + 1].text.endswith("ed")
    verb = verb_behind(pieces, at)
    behind = pieces[verb + 1 : verb + 1 + REACH] if verb else ()
    if any("me" in CUES_OF[piece.text] for piece in behind):
        return False  # Dutch "dan deed ik 100x5"
    return any(piece.kind is K.NUMBER for piece in behind)


def _is_a_link(piece: Piece) -> bool:
    """ "while mia did 70x5"."""
    return "meanwhile" in CUES_OF[piece.text]


def _is_a_set(pieces: Sequence[Piece], at: int) -> bool:
    return kind_at(pieces, at) is K.NUMBER and K.TIMES in (kind_at(pieces, at + 1), kind_at(pieces, at + 2))

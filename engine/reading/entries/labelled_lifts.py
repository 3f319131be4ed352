"""Lifts that were given a label, and sets told under the label alone: "A: bench", "B: row", then "A 80x8", "B 60x10".

given = LABEL [ sign ] NAME                    anywhere in the lines above
told  = LABEL [ sign ] NUMBER                  at the start of a line; the label stands for the name
LABEL = a letter | a letter and a digit        A, B, A1, B2
A line that only gave the label holds no sets of its own and is passed over.
"""

from __future__ import annotations

from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, kinds_in_order, places_of

LETTERS = frozenset("abcd")
DIGITS = frozenset("123456789")
LETTERS_WITH_DIGITS = frozenset("abcdef")
SIGNS = frozenset((K.STOP, K.CLOSE, K.COLON, K.DASH, K.EQUALS))
ENDS = frozenset((K.LINE, K.COMMA, K.STOP, K.SLASH, K.PLUS, K.AND, K.SUPERSET))
LABEL_LENGTH = 2


def with_labelled_lifts(pieces: list[Piece]) -> list[Piece]:
    """The pieces with the name of the lift in each place where its label stands in front of numbers."""
    given = _given(pieces)
    used = {pieces[at].text for at in _told(pieces, given)} if given else set()
    if not used:
        return pieces
    told = set(_told(pieces, given))
    out: list[Piece] = []
    at = 0
    while at < len(pieces):
        piece = pieces[at]
        if at in told:
            name = given[piece.text]
            out.append(name._replace(start=piece.start, end=piece.end))
            at = _behind_sign(pieces, at + 1)
            continue
        if piece.text in used and (behind := _behind_a_bare_one(pieces, at)):
            at = behind
            continue
        out.append(piece)
        at += 1
    return out


def is_label(piece: Piece) -> bool:
    """Whether it may label a lift: "A", "b2"."""
    text = piece.text.lower()
    if len(text) == 1:
        return text in LETTERS
    return len(text) == LABEL_LENGTH and text[0] in LETTERS_WITH_DIGITS and text[1] in DIGITS


def _given(pieces: list[Piece]) -> dict[str, Piece]:
    """Each label with the name that was given it; one that two lifts were given stands for none."""
    found: dict[str, Piece] = {}
    twice: set[str] = set()
    for name in places_of(K.NAME, kinds_in_order(pieces)):
        label = pieces[name - 1 - (name > 1 and pieces[name - 1].kind in SIGNS)]
        if not name or not is_label(label):
            continue
        if label.text in found and found[label.text].names != pieces[name].names:
            twice.add(label.text)
        found.setdefault(label.text, pieces[name])
    return {label: name for label, name in found.items() if label not in twice}


def _told(pieces: list[Piece], given: dict[str, Piece]) -> list[int]:
    """The places of labels that stand at the start of a line in front of numbers."""
    found = []
    for at, piece in enumerate(pieces):
        starts = at == 0 or pieces[at - 1].kind is K.LINE
        behind = _behind_sign(pieces, at + 1)
        if starts and piece.text in given and behind < len(pieces) and pieces[behind].kind is K.NUMBER:
            found.append(at)
    return found


def _behind_sign(pieces: list[Piece], at: int) -> int:
    return at + (at < len(pieces) and pieces[at].kind in SIGNS)


def _behind_a_bare_one(pieces: list[Piece], at: int) -> int:
    """The place behind a label and its name where no numbers stand with them; 0 where some do."""
    name = _behind_sign(pieces, at + 1)
    if name >= len(pieces) or pieces[name].kind is not K.NAME:
        return 0
    behind = name + 1
    ends = behind >= len(pieces) or pieces[behind].kind in ENDS or is_label(pieces[behind])
    return behind if ends else 0

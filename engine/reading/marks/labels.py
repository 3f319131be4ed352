"""Labels and bullets that lines and clauses begin with, and that are no sets.

label = A1 | B) | 1. | 1/ | #1 | 1a) | R1 | "set" 1 | "round" 1 | bullet
"""

from __future__ import annotations

from itertools import compress

from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import CUES_OF
from engine.reading.words.kept import Kept
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role, kinds_in_order, places_in, texts_in_order

MOST_LABEL = 30
FEWEST_NUMBERED = 2
UNSTARRED = frozenset((None, K.NUMBER, K.MAX, K.LINE))
"""A star in front of anything but a number, or in front of a whole set, is a bullet, although it reads as an x."""
LABEL_LETTERS = "abcdefgh"
SEPARATORS = frozenset((K.LINE, K.COMMA, K.STOP, K.THEN, K.SUPERSET, K.AND))
LABEL_KINDS = frozenset((K.STOP, K.CLOSE, K.DASH, K.OTHER_SIGN, K.SETS, K.COLON, K.ROUNDS))
LABEL_WORDS = frozenset((K.PLAIN, K.FILLER, K.EACH))
ABBREVIATED = ("#", "r")
"""For a number, and for a round."""
LONGEST_LABEL = 2
MAY_BE_A_LABEL = LABEL_WORDS | {K.NUMBER, K.SETS, K.DASH, K.STOP, K.TIMES, K.OTHER_SIGN}
CLAUSE_STARTS = SEPARATORS | {K.COLON, K.SLASH, K.NAME, K.PLUS}
BEFORE_A_LABEL = frozenset((K.DATE, K.OTHER_SIGN))
AHEAD_OF_LABELS = CLAUSE_STARTS | BEFORE_A_LABEL
AT_A_LINE_START = frozenset((K.SLASH, K.TIMES))


def may_hold_labels(pieces: list[Piece], kinds: set[K]) -> bool:
    """Whether these pieces, which are of these kinds, may hold a label or a bullet."""
    if not kinds.isdisjoint(LABEL_KINDS):
        return True
    if not kinds.isdisjoint(LABEL_WORDS):
        words = [piece.text for piece in pieces if piece.kind in LABEL_WORDS]
        if any([len(word) <= LONGEST_LABEL or "round" in CUES_OF[word] for word in words]):
            return True
    if K.LINE in kinds:
        return not kinds.isdisjoint(AT_A_LINE_START)
    first = pieces[0].kind
    return first is K.TIMES or (first is K.NUMBER and K.SLASH in kinds and K.NAME in kinds)  # "* squat", "2/ squat"


def without_labels(pieces: list[Piece]) -> list[Piece]:
    """The pieces without the labels and bullets that lines and clauses begin with."""
    pieces = _without_words_of_sets(_without_numbers_of_sets(pieces))
    kinds = kinds_in_order(pieces)
    out: list[Piece] = []
    behind = seen = 0
    line_start, several = True, K.LINE in kinds
    for at in _perhaps_labels(pieces, kinds):
        of_lifts = _is_of_lifts(pieces[at].text)
        if at < behind or (at > behind and kinds[at - 1] not in AHEAD_OF_LABELS and not of_lifts):
            continue
        line_start, seen = _starts_a_line(kinds, at, seen, line_start), at
        end = _numbered_lift(pieces, at) if of_lifts else at
        if end == at and (line_start or at == behind or kinds[at - 1] in CLAUSE_STARTS):
            end = _label(pieces, at, line_start, several)
            line_start = line_start and end == at
        if end > at:
            out += pieces[behind:at]
            behind = seen = end
    return out + pieces[behind:] if behind else pieces


def _perhaps_labels(pieces: list[Piece], kinds: list[K]) -> list[int]:
    """The places where a label may stand by its kind or its word."""
    found = places_in(MAY_BE_A_LABEL, kinds)
    texts = texts_in_order(pieces)
    labelling = list(map(LABELLING.__getitem__, texts))
    if True not in labelling:
        return found
    return sorted({*found, *compress(range(len(labelling)), labelling)})


def _starts_a_line(kinds: list[K], at: int, seen: int, started: bool) -> bool:
    """Whether a line starts here, but for a day or a sign ahead of it; `started` says so of the place `seen`."""
    while at > seen:
        at -= 1
        if kinds[at] is K.LINE:
            return True
        if kinds[at] not in BEFORE_A_LABEL:
            return False
    return started


def _without_numbers_of_sets(pieces: list[Piece]) -> list[Piece]:
    """ "bench: 1) 80x5 2) 80x5 3) 80x4": numbers that count up, each with a bracket that nothing opened."""
    kinds = kinds_in_order(pieces)
    signs = places_in(MAY_POINT, kinds)
    closed = _closing_nothing(pieces, kinds) or _pointed(pieces, signs, ".") or _headed(pieces, signs)
    if not closed and K.OTHER_SIGN in kinds:
        return _without_hashes(pieces)
    if len(closed) > FEWEST_NUMBERED and [int(pieces[at - 1].value) for at in closed[:2]] == [1, 1]:
        closed = closed[1:]  # "1) bench: 1) 80x5 2) 80x5"
    told = [(pieces[at - 1].kind, int(pieces[at - 1].value)) for at in closed]
    if len(closed) < FEWEST_NUMBERED or told != [(K.NUMBER, count) for count in range(1, len(closed) + 1)]:
        return pieces
    parting = {at - 1: pieces[at]._replace(kind=K.COMMA, text=",") for at in closed}
    return [parting.get(at, piece) for at, piece in enumerate(pieces) if at not in closed]


def _without_words_of_sets(pieces: list[Piece]) -> list[Piece]:
    """ "bench set 1 80x8 set 2 80x7", "s1 80 8 s2 80 7": sets that are counted up in one line, with nothing between."""
    words = places_in(COUNTING_UP, kinds_in_order(pieces))
    named = [at for at in words if pieces[at].kind is K.SETS or pieces[at].text[:1] == "s"]
    counted = [(at, place) for at in named if (place := _place_told(pieces, at))]
    if len(counted) < FEWEST_NUMBERED or [place for _, place in counted] != list(range(1, len(counted) + 1)):
        return pieces
    commas = {at: pieces[at]._replace(kind=K.COMMA, text=",") for at, _ in counted}
    numbers = {at + 1 for at in commas if pieces[at].kind is K.SETS}
    numbers |= {at + 1 for at in numbers if kind_at(pieces, at + 1) in (K.COLON, K.EQUALS, K.DASH, K.CLOSE)}
    return [commas.get(at, piece) for at, piece in enumerate(pieces) if at not in numbers]


COUNTING_UP = frozenset((K.SETS, K.PLAIN))


def _place_told(pieces: list[Piece], at: int) -> int:
    """The number of a set that is told here, "set 2" or "s2", with its numbers behind it; 0 where there is none."""
    piece = pieces[at]
    if piece.kind is K.SETS:
        told = not piece.text.endswith("s") and kind_at(pieces, at + 1) is K.NUMBER
        named = kind_at(pieces, at + 2) is K.NAME  # "set 1 squat 100x5, set 2 105x5"
        return int(pieces[at + 1].value) if told and (named or _set_number(pieces, at) > at) else 0
    named = piece.kind is K.PLAIN and len(piece.text) == 2 and piece.text[0] == "s" and piece.text[1].isdecimal()
    return int(piece.text[1]) if named and kind_at(pieces, at + 1) in (K.NUMBER, K.COLON) else 0


def _closing_nothing(pieces: list[Piece], kinds: list[K]) -> list[int]:
    """The places of brackets that close, where none was opened."""
    found: list[int] = []
    depth = 0
    for at in places_in(BRACKETS, kinds) if K.CLOSE in kinds else ():
        if pieces[at].kind is K.OPEN:
            depth += 1
        elif depth:
            depth -= 1
        elif pieces[at].glued and at:
            found.append(at)
    return found


BRACKETS = frozenset((K.OPEN, K.CLOSE))


MAY_POINT = frozenset((K.STOP, K.COLON))


def _headed(pieces: list[Piece], signs: list[int]) -> list[int]:
    """ "1: 80x8, 2: 80x7", "1: 8 2: 7": as with full stops, where the sets or their reps stand right behind; of "1: 100
    2: 90" the reps are missing.
    """
    return [at for at in _pointed(pieces, signs, ":") if pieces[at + 1].kind is K.NUMBER]


def _without_hashes(pieces: list[Piece]) -> list[Piece]:
    """ "squat #1 100x5 #2 105x5"."""
    signs = [at for at, piece in enumerate(pieces[:-2]) if piece.text == "#" and pieces[at + 1].kind is K.NUMBER]
    counted = [int(pieces[at + 1].value) for at in signs if pieces[at + 1].glued]
    parted = all(kind_at(pieces, at + 2) in (K.NUMBER, K.COLON) for at in signs)
    if len(signs) < FEWEST_NUMBERED or counted != list(range(1, len(signs) + 1)) or not parted:
        return pieces
    gone = {at + 1 for at in signs} | {at + 2 for at in signs if pieces[at + 2].kind is K.COLON}
    commas = {at: pieces[at]._replace(kind=K.COMMA, text=",") for at in signs}
    return [commas.get(at, piece) for at, piece in enumerate(pieces) if at not in gone]


def _pointed(pieces: list[Piece], signs: list[int], sign: str) -> list[int]:
    """ "1. 80x8 2. 80x7", "1: 80x8, 2: 80x7": the places of the signs behind bare numbers, where sets stand between
    them.
    """
    return [
        at
        for at in signs
        if 0 < at < len(pieces) - 1
        and pieces[at].text == sign
        and pieces[at].glued
        and not pieces[at + 1].glued
        and pieces[at - 1].kind is K.NUMBER
        and pieces[at - 1].role is Role.BARE
        and kind_at(pieces, at + 2) is not K.STOP
    ]


def _is_numbered(piece: Piece) -> bool:
    return piece.text in ABBREVIATED or "round" in CUES_OF[piece.text]


def _is_of_lifts(text: str) -> bool:
    return text == "ex" or "exercise" in CUES_OF[text]


def _labels(text: str) -> bool:
    return text in ABBREVIATED or "round" in CUES_OF[text] or _is_of_lifts(text)


LABELLING = Kept(_labels)


def _numbered_lift(pieces: list[Piece], at: int) -> int:
    """The place of the lift behind "ex 2", "exercise 2:"; `at` where none is numbered here."""
    number = pieces[at + 1] if at + 1 < len(pieces) else None
    if number is None or number.kind is not K.NUMBER or number.role is not Role.BARE or number.value > MOST_LABEL:
        return at
    behind = at + 2 + (kind_at(pieces, at + 2) in (K.COLON, K.STOP, K.DASH, K.CLOSE))
    return behind if kind_at(pieces, behind) is K.NAME else at


def _label(pieces: list[Piece], at: int, line_start: bool, several: bool) -> int:
    """The place behind a label that starts here, or `at` where none does; `several`: the message has several lines."""
    piece, after = pieces[at], kind_at(pieces, at + 1)
    if line_start and (piece.kind is K.DASH or piece.text in (";", "*", "~") or _is_star(pieces, at)):
        return at + 1
    if line_start and kind_at(pieces, at + 1) is K.NUMBER and _is_numbered(piece):
        return _behind_number(pieces, at + 1, ends=(K.COLON, K.STOP, K.CLOSE, K.DASH, K.NAME), several=several) or at
    if piece.kind is K.NUMBER and (line_start or _is_lettered(pieces, at)):
        return _behind_number(pieces, at, ends=(K.STOP, K.CLOSE, K.SLASH), several=several) or at
    if piece.kind is K.SETS and after is K.NUMBER and not piece.text.endswith("s"):
        return _set_number(pieces, at)
    if _is_label_word(piece) and after is not None and after is not K.TIMES:
        return _behind_label(pieces, at + 1, piece)
    return at


def _is_star(pieces: list[Piece], at: int) -> bool:
    """ "* bench 3x8 60", "* 60x8 bench"; and not "x8"."""
    if pieces[at].kind is not K.TIMES:
        return False
    whole = [piece.kind for piece in pieces[at + 1 : at + 3]] == [K.NUMBER, K.TIMES] and not pieces[at + 1].glued
    return whole or kind_at(pieces, at + 1) not in UNSTARRED


def _is_lettered(pieces: list[Piece], at: int) -> bool:
    """ "2a)": a number that a letter makes a label of, also inside a line."""
    behind = pieces[at + 1 : at + 3]
    closed = len(behind) == 2 and behind[1].kind in (K.CLOSE, K.STOP) and behind[1].glued
    return closed and behind[0].glued and len(behind[0].text) == 1 and behind[0].text in LABEL_LETTERS


def _behind_number(pieces: list[Piece], at: int, ends: tuple[K, ...], several: bool) -> int:
    """The place behind "1.", "1)", "1a)", "2/ squat", "#1 squat"; what was in front of it is skipped with it."""
    number = pieces[at]
    if number.role is not Role.BARE or not 0 < number.value <= MOST_LABEL or at + 2 >= len(pieces):
        return 0
    behind = at + 1
    if len(pieces[behind].text) == 1 and pieces[behind].text in LABEL_LETTERS and pieces[behind].glued:
        behind += 1
    sign = pieces[behind] if behind < len(pieces) else number
    if sign.kind in (K.STOP, K.CLOSE) and not _heads_sets(pieces, behind, several):
        return 0
    if sign.kind is K.NAME and K.NAME in ends:
        return behind
    named = kind_at(pieces, behind + 1) is K.NAME or sign.kind is not K.SLASH
    return behind + 1 if sign.kind in ends and sign.glued and named else 0


def _heads_sets(pieces: list[Piece], at: int, several: bool) -> bool:
    """Whether a lift or sets stand behind the sign here; "8. tired", "8! tired" and "8. 7. 6" tell eight.

    In a message of several lines a word is enough: "1. stretching".
    """
    if pieces[at].text not in (".", ")"):
        return False
    rest = pieces[at + 1 : at + 1 + FAR_BEHIND_A_LABEL]
    line = rest[: next((place for place, piece in enumerate(rest) if piece.kind is K.LINE), len(rest))]
    kinds = {piece.kind for piece in line}
    return not kinds.isdisjoint(HEADED_IN_A_LIST if several else HEADED)


FAR_BEHIND_A_LABEL = 40
"""Pieces among which a label's sets begin, whatever is said ahead of them."""
HEADED = frozenset((K.NAME, K.TIMES, K.BAR, K.BODY, K.WARMUP, K.DATE))
HEADED_IN_A_LIST = HEADED | {K.NUMBER, K.COUNT, K.PLAIN}


def _set_number(pieces: list[Piece], at: int) -> int:
    """ "set 2: 100x5": an ordinal, where more numbers follow it."""
    ordinal = pieces[at + 1]
    after = at + 2 + (kind_at(pieces, at + 2) in (K.COLON, K.EQUALS, K.DASH, K.CLOSE))
    follows = kind_at(pieces, after) in (K.NUMBER, K.BAR, K.BODY, K.WARMUP)
    follows = follows or (kind_at(pieces, after) is K.NAME and after > at + 2)  # "set 1: squat 100x5"
    return after if follows and ordinal.value <= MOST_LABEL and ordinal.role is Role.BARE else at


def _is_label_word(piece: Piece) -> bool:
    text = piece.text
    if piece.kind not in LABEL_WORDS:
        return False  # "3x8 60, a cedimento"
    if len(text) == 2 and piece.kind is K.PLAIN:
        return text[0] in LABEL_LETTERS + "rs" and text[1].isdecimal()
    return len(text) == 1 and text in LABEL_LETTERS


def _behind_label(pieces: list[Piece], at: int, label: Piece) -> int:
    if pieces[at].kind in (K.CLOSE, K.STOP, K.COLON) and pieces[at].glued:
        return at + 1
    two = len(label.text) == 2
    return at if two else at - 1

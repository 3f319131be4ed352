"""Numbers with a scale or a count of their own beside the sets: so much out of ten, and a tempo.

scale = NUMBER ( "/" | "out of" ) 10     beside a word of body or feel
tempo = "tempo" NUMBER ( "-" NUMBER )* | 4010 | 3-1-0
"""

from __future__ import annotations

from collections.abc import Iterable
from itertools import islice

from engine.reading.words.ahead import HOLDS_A_NUMBER, aside, is_amount, kind_at, past_links
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role

TEMPO_DIGITS = 4
ENDS_OF_A_TEMPO = frozenset((None, K.COMMA, K.LINE, K.STOP, K.CLOSE))
LONGEST_CHAIN = 2 * TEMPO_DIGITS
"""Pieces; numbers joined by more signs are no tempo, however they end."""
PHASES_OF_A_TEMPO = (3, 4)
FEWEST_PHASES = 3
FASTEST_TEMPO, SLOWEST_TEMPO = 2, 6
"""The seconds of a lowering that four digits on their own may tell: 4010. Common practice, no source."""
YEARS = range(1990, 2100)
SLOWEST_COUNT = 10
LONGEST_SQUEEZE = 2
"""Seconds at the top, behind an "x" for as fast as one can: "31x1". Common practice, no source."""
TEMPO_SIGNS = frozenset((K.DASH, K.SLASH, K.COLON))
TOP_OF_PAIN = 10
NEAR_A_SCALE = 4
"""How many pieces from "4/10" the word may stand that it rates."""
RATED = frozenset((K.JOINT, K.PAIN, K.SORE, K.MUSCLE, K.NOTE, K.DENY, K.DENIED, K.UNRELATED))


def rates(pieces: list[Piece], at: int, out: list[Piece]) -> bool:
    """ "knee pain 3/10": so much on a scale of ten, where a word beside it says of what."""
    if not is_amount(pieces, at + 2) or kind_at(pieces, at + 3) is K.TIMES:
        return False
    piece, link, top = pieces[at : at + 3]
    scale = top.value == TOP_OF_PAIN and top.role is Role.BARE and 0 <= piece.value <= TOP_OF_PAIN
    if not scale or piece.role is not Role.BARE or (link.kind is K.SLASH and not (link.glued and top.glued)):
        return False
    if link.kind is K.OF and not (out and out[-1].kind in RATED):
        return False  # "tight today, 2 of 10 at 30"
    beside = (*_words(reversed(out)), *_words(pieces[place] for place in range(at + 3, len(pieces))))
    of_the_day = kind_at(pieces, at + 3) is K.HEADING and not is_amount(pieces, at + 4)  # "6/10 day"
    if not beside and not of_the_day:
        return False
    joint = any(word.kind is K.JOINT for word in beside) and not any(word.kind is K.SORE for word in beside)
    rated = piece._replace(kind=K.PAIN if joint and piece.value > 0 else K.NOTE, end=top.end, told=HOLDS_A_NUMBER)
    out.append(rated)
    return True


def _words(pieces: Iterable[Piece]) -> list[Piece]:
    """The words of body and feel among the next few pieces, up to a number or the end of the line."""
    found = []
    for piece in islice(pieces, NEAR_A_SCALE):
        if piece.kind in (K.NUMBER, K.LINE, K.STOP):
            break
        if piece.kind in RATED:
            found.append(piece)
    return found


def behind_bare_tempo(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """The place behind a bare tempo: "4010", or "3-1-0" with a zero in it."""
    piece = pieces[at]
    after = kind_at(pieces, at + 1)
    if after is not K.DASH and len(piece.text) != TEMPO_DIGITS:
        return at
    named = _end_ahead_of_its_word(pieces, at)
    if named > at:
        if out and out[-1].kind in (K.AT, K.WITH):
            out.pop()  # "@ 3-1-0 tempo"
        return named
    if is_bare_tempo(piece) and after in ENDS_OF_A_TEMPO and out and out[-1].kind in (K.AT, K.WITH):
        out.pop()  # "4x5 100 @ 4010": nobody lifts so much
        return at + 1
    linked = bool(out) and out[-1].kind in (K.TIMES, K.AT, K.WITH, K.SLASH, K.DASH)
    if piece.role is not Role.BARE or linked:
        return at
    if is_bare_tempo(piece) and after not in (K.TIMES, K.KG, K.LB):
        return at + 1
    end = _behind_dashes(pieces, at)
    values = [one.value for one in pieces[at:end:2]]
    return end if len(values) in PHASES_OF_A_TEMPO and max(values) < SLOWEST_COUNT and 0 in values else at


def _behind_dashes(pieces: list[Piece], at: int) -> int:
    """The place behind numbers with glued dashes between them, or behind the first few, where they are no tempo."""
    end = at + 1
    while (
        end - at < LONGEST_CHAIN and kind_at(pieces, end) is K.DASH and pieces[end].glued and is_amount(pieces, end + 1)
    ):
        end += 2
    return end


def _end_ahead_of_its_word(pieces: list[Piece], at: int) -> int:
    """The place behind "3-1-1" where the word follows, "3-1-1 tempo"; `at` where none does."""
    end = at + 1
    while end - at < LONGEST_CHAIN and kind_at(pieces, end) in TEMPO_SIGNS and is_amount(pieces, end + 1):
        end += 2
    counts = [piece.value for piece in pieces[at:end] if piece.kind is K.NUMBER]
    timed = 1 < len(counts) <= TEMPO_DIGITS and max(counts) < SLOWEST_COUNT
    return end if kind_at(pieces, end) is K.TEMPO and (timed or is_bare_tempo(pieces[at])) else at


def is_bare_tempo(piece: Piece) -> bool:
    """Whether four digits with no word to them may be a tempo: 3010, and not 1000, 2025 or 8080."""
    digits = piece.text
    if len(digits) != TEMPO_DIGITS or not digits.isdigit() or int(digits) in YEARS or digits.endswith("000"):
        return False
    return int(digits[0]) >= FASTEST_TEMPO and all(int(digit) <= SLOWEST_TEMPO for digit in digits)


def tempo(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """ "tempo 3-1-0", "tempo 4010", "tempo 3 1 0": up to four counts of a few seconds, and no number behind them."""
    told = bool(out) and out[-1].kind is K.NOTE and out[-1].text[:1].isdigit()  # "3-1-1 tempo 70 3x5"
    out.append(aside(pieces[at]))
    if told:
        return at + 1
    at = past_links(pieces, at + 1)
    joined, before = True, None
    if _is_the_load(pieces, at):
        return at
    for _ in range(TEMPO_DIGITS):
        if not is_amount(pieces, at) or not (joined or _is_one_count(before, pieces[at])):
            break
        if pieces[at].role is not Role.BARE or kind_at(pieces, at + 1) is K.TIMES:
            break
        before, at = pieces[at], at + 1
        joined = kind_at(pieces, at) in TEMPO_SIGNS and is_amount(pieces, at + 1)
        at += joined
    return at


def _is_the_load(pieces: list[Piece], at: int) -> bool:
    """ "tempo 70 3x5": no counts of a tempo, and no other load behind the sets and reps."""
    if not is_amount(pieces, at) or [piece.kind for piece in pieces[at + 1 : at + 3]] != [K.NUMBER, K.TIMES]:
        return False
    digits = pieces[at].text
    counted = len(digits) == FEWEST_PHASES and digits.isdigit() and int(digits[0]) >= FASTEST_TEMPO
    counted = counted and all(int(digit) <= SLOWEST_TEMPO for digit in digits)
    behind = [piece for piece in pieces[at + 4 : at + 4 + TEMPO_DIGITS] if piece.kind is K.NUMBER]
    loaded = any(piece.role is Role.LOAD or piece.value > MOST_LOADED_REPS for piece in behind)
    return pieces[at].value >= SLOWEST_COUNT and not counted and not loaded


def _is_one_count(before: Piece | None, piece: Piece) -> bool:
    """ "3 1 0": single seconds, one after the other."""
    return before is not None and max(before.value, piece.value) < SLOWEST_COUNT


def behind_dashed_tempo(pieces: list[Piece], at: int) -> int:
    """The place behind "3-1-1" in a message that speaks of tempo; `at` where none stands here."""
    end = _behind_dashes(pieces, at)
    counts = [piece.value for piece in pieces[at:end:2]]
    phases = len(counts) in PHASES_OF_A_TEMPO and max(counts) < SLOWEST_COUNT
    loaded = kind_at(pieces, end) is K.NUMBER and kind_at(pieces, end + 1) is K.NUMBER  # "3-1-1 70 3x5"
    ahead_of_sets = kind_at(pieces, end) is K.NUMBER and kind_at(pieces, end + 1 + loaded) is K.TIMES
    ends = kind_at(pieces, end) in (None, K.COMMA, K.LINE, K.STOP, K.CLOSE)
    rises = counts != sorted(counts, reverse=True)  # reps of one set after another seldom do
    return end if phases and (ahead_of_sets or (ends and rises)) else at


def is_x_tempo(pieces: list[Piece], at: int) -> bool:
    """Whether "31x1" stands here."""
    if not is_amount(pieces, at + 2) or kind_at(pieces, at + 1) is not K.TIMES:
        return False
    head, sign, tail = pieces[at : at + 3]
    glued = sign.glued and tail.glued and kind_at(pieces, at + 3) not in (K.TIMES, K.DASH, K.SLASH, K.COMMA)
    counts = len(head.text) == 2 and len(tail.text) == 1 and (head.text + tail.text).isdigit()
    counts = counts and all(int(digit) <= SLOWEST_TEMPO for digit in head.text) and tail.value <= LONGEST_SQUEEZE
    return glued and counts


def tells_tempo(piece: Piece) -> bool:
    """Whether the piece speaks of tempo."""
    return piece.kind is K.TEMPO or piece.text == TEMPO


TEMPO = "tempo"

"""Sessions, weeks and days that are counted beside sets: "3x5 80, another week", "noch 2 Einheiten", "2 pass kvar".

another = "another" [ NUMBER ] [ word ] TIME [ "more" ]     no set more, and no reps
left    = LEFT NUMBER TIME | NUMBER TIME LEFT               no reps in reserve
things  = NUMBER NUMBER THING                           "10 8 7 2 kaffe": asked, where the word is of no plural in -s
often   = ( NUMBER "times" | "twice" ) TRAINED              how often somebody trained, and no repeat of the set before
        | "(" WORD+ ( NUMBER "times" | "twice" ) ")"        asked, where a word is unknown
placed  = NUMBER "of" NUMBER DONE                           "80x8, 1 of 3 done": how far the sets have come
TIME is a word for a span of time or for a session: cues of the language files. "One more for the day" counts a set.
"""

from __future__ import annotations

from engine.reading.words.ahead import aside, kind_at
from engine.reading.words.cues import cues_told, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import ROLE, Piece, Role, kinds_in_order, places_in, texts_in_order

TIME = frozenset(("span", "workout", "sessions"))
TRAINED = frozenset(("trains", "workout"))
BETWEEN = frozenset((K.FILLER, K.NOTE, K.PLAIN))
AMONG_SETS = frozenset((K.TIMES, K.FOR, K.AT, K.WITH, K.SLASH, K.PLUS, K.OF, K.BY))
LEFT = frozenset((K.RESERVE, K.RESERVE_LEFT, K.LEFT))
SAYING_SO = frozenset((K.ANOTHER, K.ONCE, K.UNRELATED)) | LEFT
THINGS = frozenset(("things",))
AHEAD_OF_A_COUNT = frozenset((K.NUMBER, K.FILLER))
DONE = frozenset(("bound",))
SAID_BESIDE = TIME | TRAINED | THINGS | DONE
FEW = 4
PLURAL = "s"
BRACKETED = frozenset((K.OPEN, K.PLAIN, K.CLOSE))
NO_LINK = frozenset(("an",))
MOST = 14
"""So many sessions or days somebody may have ahead. Common practice, no source."""


def without_sessions_counted(pieces: list[Piece], kinds: set[K]) -> list[Piece]:
    """The pieces, which are of these kinds, with what counts sessions made part of remarks."""
    if kinds.isdisjoint(SAYING_SO) and K.OF not in kinds and Role.TIMES not in map(ROLE, pieces):
        return pieces
    if SAID_BESIDE.isdisjoint(cues_told(texts_in_order(pieces))) and not kinds >= BRACKETED:
        return pieces
    out = list(pieces)
    for at in places_in(SAYING_SO | {K.NUMBER}, kinds_in_order(pieces)):
        for place in _counting(pieces, at):
            out[place] = aside(pieces[place])
        often = pieces[at].kind is K.ONCE or pieces[at].role is Role.TIMES
        if often and _is_of_a_word_in_brackets(pieces, at):
            out[at] = pieces[at]._replace(kind=K.UNCLEAR)
        if pieces[at].kind is K.UNRELATED and _may_count_things(pieces, at):
            out[at] = pieces[at]._replace(kind=K.UNCLEAR)
    return out


def _counting(pieces: list[Piece], at: int) -> tuple[int, ...]:
    """The places of what counts sessions by the word here; none where it speaks of sets."""
    kind = pieces[at].kind
    if kind is K.ANOTHER:
        return _another(pieces, at)
    if kind in LEFT:
        return _left(pieces, at)
    if _is_placed(pieces, at):
        return at, at + 2
    often = kind is K.ONCE or pieces[at].role is Role.TIMES
    trained = often and at + 1 < len(pieces) and is_cued(pieces[at + 1].text, TRAINED)
    return (at,) if trained and kind_at(pieces, at - 1) not in AMONG_SETS else ()


def _is_placed(pieces: list[Piece], at: int) -> bool:
    """ "80x8, 1 of 3 done": the first of three sets, and no set of three."""
    if not _is_count(pieces, at) or kind_at(pieces, at + 1) is not K.OF or not _is_count(pieces, at + 2):
        return False
    done = at + 3 < len(pieces) and is_cued(pieces[at + 3].text, DONE) and kind_at(pieces, at + 4) in ENDS
    return done and pieces[at].value <= pieces[at + 2].value and kind_at(pieces, at - 1) not in AMONG_SETS


ENDS = frozenset((None, K.COMMA, K.STOP, K.LINE, K.CLOSE, K.DASH))


def _is_of_a_word_in_brackets(pieces: list[Piece], at: int) -> bool:
    """ "80x8 (chalked up twice)", "(baby woke 3 times)": of something else, or of the set, as "(did it twice)" is."""
    start = at
    while start and at - start < MOST_WORDS and pieces[start - 1].kind in WORDS:
        start -= 1
    words = kinds_in_order(pieces[start:at])
    return K.PLAIN in words and kind_at(pieces, start - 1) is K.OPEN and kind_at(pieces, at + 1) is K.CLOSE


WORDS, MOST_WORDS = frozenset((K.FILLER, K.NOTE, K.PLAIN, K.OTHERS, K.JOINT, K.MUSCLE, K.UNRELATED)), 6


def _may_count_things(pieces: list[Piece], at: int) -> bool:
    """ "10 8 7 2 kaffe innan": the last number is of the reps, or counts what stands behind it."""
    if at < 2 or not is_cued(pieces[at].text, THINGS) or pieces[at].text.endswith(PLURAL):
        return False
    counts = _is_count(pieces, at - 1) and pieces[at - 1].value <= FEW
    return (
        counts
        and pieces[at - 2].kind in AHEAD_OF_A_COUNT
        and K.NUMBER in kinds_in_order(pieces[max(0, at - 4) : at - 1])
    )


def _another(pieces: list[Piece], at: int) -> tuple[int, ...]:
    number = _is_count(pieces, at + 1)
    noun = at + 1 + number
    if not _is_time(pieces, noun) and kind_at(pieces, noun) in BETWEEN and not _points(pieces[noun]):
        noun += 1
    if not _is_time(pieces, noun) or kind_at(pieces, at - 1) in AMONG_SETS:
        return ()
    more = (noun + 1,) if kind_at(pieces, noun + 1) is K.MORE else ()
    return (at, *range(at + 1, at + 1 + number), *more)


def _left(pieces: list[Piece], at: int) -> tuple[int, ...]:
    if _is_count(pieces, at + 1) and _is_time(pieces, at + 2):
        return at, at + 1
    counted = _is_time(pieces, at - 1) and _is_count(pieces, at - 2) and kind_at(pieces, at - 3) not in AMONG_SETS
    return (at - 2, at) if counted else ()


def _is_count(pieces: list[Piece], at: int) -> bool:
    if kind_at(pieces, at) is not K.NUMBER:
        return False
    number = pieces[at]
    return number.role is Role.BARE and number.value <= MOST


def _is_time(pieces: list[Piece], at: int) -> bool:
    return 0 <= at < len(pieces) and pieces[at].kind not in (K.SETS, K.NAME) and is_cued(pieces[at].text, TIME)


def _points(piece: Piece) -> bool:
    """ "One more for the session", "one more this session": a set of it."""
    return piece.kind is K.FILLER and not is_cued(piece.text, NO_LINK)

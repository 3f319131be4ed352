"""A mark of a set that is said not to be one, or nearly so, or of something else: "close to failure", "missed the bus".

denied = ( "no" | "not" | NEARLY ) between* MARK          MARK: failed, missed, a drop, rest-pause
left   = NUMBER [ "reps" ] NEARLY between* FAILURE        "stopped 2 reps short of failure": two in reserve
failed = GRIP "failed"                            of an unknown word it is asked: "camera failed"
other  = MARK ( FILLER | "of" )* OBJECT                   "missed my warm-up", "dropped my phone", "cluster of people"
What is denied, or of something else, tells what the day was like, and changes no set; of an unknown word it is asked.
"""

from __future__ import annotations

from decimal import Decimal

from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import DENYING, K
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role, is_one_word, kinds_in_order, places_in
from engine.values.effort import Effort

MARKS = frozenset((K.FAILURE, K.MISS, K.DROP, K.REST_PAUSE, K.TOTAL))
SPEAKING_OF = MARKS - {K.FAILURE}
MOST_BETWEEN = 4
MOST_LEFT, MOST_LEFT_BARE = 5, 3
"""Reps that may be left until failure; without a word for reps, more may be those of a set. Common practice, no
source.
"""
NEARLY, QUITE, ONE = frozenset(("nearly", "shortof")), frozenset(("quite",)), frozenset(("an",))
SHORT_BY = frozenset(("leftby",))
BETWEEN = frozenset((K.FILLER, K.OF, K.GOT, K.RESERVE_LEFT, K.ONLY, K.COUNT))
PART_OF_A_SET = frozenset((K.NUMBER, K.TIMES, K.AT, K.SLASH, K.DASH, K.PLUS, K.FOR, K.BY, K.NAME, None))


def with_marks_denied(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with marks that were not met made remarks, or the reps that were left until them."""
    if not any([_speaks_of_no_set(pieces, at) for at in places_in(MARKS, kinds_in_order(pieces))]):
        return pieces
    out: list[Piece] = []
    missed = -1
    for at, piece in enumerate(pieces):
        if at == missed:
            out.append(piece._replace(kind=K.NOTE))
            continue
        if piece.kind in SPEAKING_OF and (other := _of_something_else(pieces, at)) is not None:
            thing = _behind(pieces, at)
            missed = thing if kind_at(pieces, thing) is K.WARMUP else -1  # "missed my warm-up": neither of them
            out.append(piece._replace(kind=other))
            continue
        start = _denied_from(pieces, at) if piece.kind in MARKS and piece.kind is not K.TOTAL else None
        if start is None:
            out.append(piece)
            continue
        left = _reps_left(pieces, start) if piece.kind is K.FAILURE else None
        begin = start if left is None else left[0]
        first = pieces[begin]._replace(kind=K.NOTE, end=piece.end)
        del out[len(out) - (at - begin) :]
        out.append(first if left is None else first._replace(kind=K.EFFORT, efforts=(Effort(left[1]),)))
    return out


def _speaks_of_no_set(pieces: list[Piece], at: int) -> bool:
    """Whether the mark here is denied, or of something else; most marks of a message are neither."""
    kind = pieces[at].kind
    if kind in SPEAKING_OF and _of_something_else(pieces, at) is not None:
        return True
    return kind is not K.TOTAL and _denied_from(pieces, at) is not None


def _behind(pieces: list[Piece], at: int) -> int:
    """The place of what stands behind the mark here, past little words."""
    behind = at + 1
    while behind < len(pieces) and pieces[behind].kind in (K.FILLER, K.OF):
        behind += 1
    return behind


def _of_something_else(pieces: list[Piece], at: int) -> K | None:
    """What a mark is that speaks of what stands behind it: a remark, or words that are asked about; None of a set."""
    if (told := _told_ahead(pieces, at)) is not None:
        return told
    behind = _behind(pieces, at)
    if behind == len(pieces):
        return None
    thing = pieces[behind]
    if pieces[at].kind is K.TOTAL:
        if at > 0 and pieces[at - 1].kind is K.OPEN and thing.kind is K.CLOSE:
            return K.UNCLEAR  # "80x8 (total)": of the load, or of the reps?
        counted = at > 0 and pieces[at - 1].kind in (K.NUMBER, K.REPS, K.SETS)
        return K.NOTE if thing.kind is K.PLAIN and not counted else None
    mark = pieces[at]
    apart = behind > at + 1 or not is_one_word(mark)  # "missed the ..."
    if not apart and at and pieces[at - 1].kind in OF_THE_SET_BEFORE:
        if not is_cued(mark.text, MISSING) or pieces[at - 1].kind is K.PLUS:
            return None  # "8, 8, 7 miss slept badly"
        return _missed_perhaps(thing)
    if thing.kind in (MISSED if mark.kind is K.MISS else OBJECTS) or (
        thing.kind is K.FAR and pieces[behind - 1].kind is K.OF
    ):
        return K.NOTE
    unknown = mark.kind is K.MISS and thing.kind is K.PLAIN and not is_cued(thing.text, HOW_MISSED)
    return K.UNCLEAR if unknown and not thing.text.endswith(ADVERB) else None


def _told_ahead(pieces: list[Piece], at: int) -> K | None:
    """What the word is by what stands ahead of it: what failed, or "80x8 total", of the load or of all reps."""
    if pieces[at].kind is K.MISS:
        return _of_what_failed(pieces, at)
    paired = at >= len(PAIR) and [piece.kind for piece in pieces[at - len(PAIR) : at]] == PAIR
    loaded = paired and pieces[at - len(PAIR)].value > MOST_LOADED_REPS
    return K.UNCLEAR if loaded and pieces[at].kind is K.TOTAL and kind_at(pieces, at + 1) in ENDS else None


PAIR = [K.NUMBER, K.TIMES, K.NUMBER]


def _of_what_failed(pieces: list[Piece], at: int) -> K | None:
    """What the word is behind what else than a rep failed: "80x8, grip failed", "camera failed"; None of a rep."""
    if not at or pieces[at].text != FAILED or kind_at(pieces, at + 1) not in ENDS:
        return None
    thing, before = pieces[at - 1], kind_at(pieces, at - 2)
    if is_cued(thing.text, GIVING_OUT) or thing.kind in OF_THE_BODY:
        return K.NOTE
    unknown = thing.kind is K.PLAIN and before in PARTING and not is_cued(thing.text, HOW_MISSED)
    return K.UNCLEAR if unknown and not thing.text.endswith(ADVERB) else None


FAILED = "failed"
GIVING_OUT = frozenset(("givesout",))
OF_THE_BODY = frozenset((K.MUSCLE, K.JOINT))
ENDS = frozenset((None, K.COMMA, K.STOP, K.LINE, K.CLOSE, K.DASH, K.FILLER))
PARTING = frozenset((None, K.COMMA, K.STOP, K.LINE, K.OPEN, K.DASH))


def _missed_perhaps(thing: Piece) -> K | None:
    """What a verb right behind a set is, by what stands behind it: "80x8 missed breakfast", and no "missed lockout"."""
    unknown = thing.kind is K.PLAIN and not is_cued(thing.text, HOW_MISSED) and not thing.text.endswith(ADVERB)
    return K.UNCLEAR if unknown or thing.kind in (K.UNRELATED, K.HEADING) else None


MISSING = frozenset(("missing",))
OF_THE_SET_BEFORE = frozenset((K.NUMBER, K.PLUS, K.EFFORT, K.REPS))
OBJECTS = frozenset((K.UNRELATED, K.HEADING, K.WARMUP, K.OTHERS))
MISSED = OBJECTS | {K.WEEKDAY}
"""Behind "rest-pause" or "drop set" stands the day of the sets."""
HOW_MISSED = frozenset(("howmissed",))
ADVERB = "ly"


def _denied_from(pieces: list[Piece], at: int) -> int | None:
    """Where the words begin that say so of the mark at this place."""
    for place in range(at - 1, max(-1, at - 1 - MOST_BETWEEN), -1):
        before = pieces[place]
        if before.kind in DENYING or _is_near(before):
            return place
        if before.kind not in BETWEEN and not is_cued(before.text, QUITE):
            return None
    return None


def _is_near(piece: Piece) -> bool:
    return piece.kind is K.UNCLEAR or is_cued(piece.text, NEARLY)


def _reps_left(pieces: list[Piece], near: int) -> tuple[int, Decimal] | None:
    """Where the number stands in front of the words, and how many reps it says were left."""
    if pieces[near].kind is not K.UNCLEAR and not is_cued(pieces[near].text, SHORT_BY):
        return None
    at = near - 1
    while at > 0 and (is_cued(pieces[at].text, SHORT_BY | QUITE) or pieces[at].kind is K.REPS):
        at -= 1
    number = pieces[at]
    before = pieces[at - 1].kind if at > 0 else None
    if at < 0 or before in PART_OF_A_SET:
        return None
    if number.kind is K.FILLER and is_cued(number.text, ONE):
        return at, Decimal(1)
    worded = number.role is Role.REPS or any(one.kind in (K.REPS, K.UNCLEAR) for one in pieces[at : near + 1])
    counts = number.kind is K.NUMBER and number.role in (Role.BARE, Role.REPS)
    counts = counts and number.value <= (MOST_LEFT if worded else MOST_LEFT_BARE)
    return (at, number.value) if counts else None

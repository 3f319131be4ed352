"""A set that the same message takes back: "80x8, no 82.5x8", "100x5 scratch that 105x5".

taken back = PAIR WORDS PAIR        the second pair stands for the first; one number behind the words is asked about
lift       = LIFT sets WORDS LIFT   the second lift is meant: "bench 80x5 no wait squat"; "bench 80x5 no squat" is left
set        = LIFT sets WORDS LIFT sets                                 asked: "bench 80x5 no wait squat 90x5"
Words are cues of the language files: "takesback" takes a set back, "takesbackwith" only goes with one of them.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import CUES_OF, cues_told
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import spoken
from engine.reading.words.pieces import Piece, Role, kinds_in_order, places_of
from engine.reading.words.tokens import WRITTEN, Token

TAKES_BACK = "takesback"
SIGNS = frozenset((K.COMMA, K.STOP, K.DASH))
LONGEST = 6
LEAST_AHEAD = 2
WORDLESS = frozenset((K.NUMBER, K.TIMES, K.AT, K.SLASH, K.PLUS, K.LINE, K.OPEN, K.CLOSE, K.COLON, K.EQUALS))
"""Behind a number these are no words that take anything back."""
PAIR = [K.NUMBER, K.TIMES, K.NUMBER]
ENDS = frozenset((None, K.COMMA, K.STOP, K.LINE, K.NOTE))
GOES_ON = frozenset((K.TIMES, K.SLASH, K.DASH, K.AT))


def may_take_back(tokens: Iterable[Token]) -> bool:
    """Whether a word that takes a set back stands anywhere among the tokens of a message."""
    return TAKES_BACK in cues_told(map(WRITTEN, tokens))


def without_sets_taken_back(pieces: list[Piece], cleaned: str) -> list[Piece]:
    """The pieces without each pair that the next one takes the place of."""
    kinds = kinds_in_order(pieces)
    if kinds.count(K.NAME) > 1:
        pieces = _with_the_lift_meant(pieces, kinds, cleaned)
        kinds = kinds_in_order(pieces)
    for at in places_of(K.NUMBER, kinds[:-1]):
        at += 1
        if at < LEAST_AHEAD or kinds[at] in WORDLESS:
            continue
        end = _behind_the_words(pieces, at, cleaned)
        lift = 0 if end else _lift_behind_the_words(pieces, at, cleaned)
        if lift:  # "bench 80x5 no wait squat 90x5": the second set may stand for the first
            return [*pieces[:at], pieces[at]._replace(kind=K.ALTERED, end=pieces[lift - 1].end), *pieces[lift:]]
        if not end:
            continue
        told = [piece.kind for piece in pieces[end : end + 3]]
        pair = pieces[at - 2].kind is K.TIMES and kind_at(pieces, at - 3) is K.NUMBER
        alone = pair and kind_at(pieces, at - 4) not in GOES_ON
        if told == PAIR and alone and kind_at(pieces, end + 3) in ENDS:
            return [*pieces[: at - 3], *pieces[end:]]
        return [*pieces[:at], pieces[at]._replace(kind=K.ALTERED, end=pieces[end - 1].end), *pieces[end:]]
    return pieces


def _with_the_lift_meant(pieces: list[Piece], kinds: list[K], cleaned: str) -> list[Piece]:
    """ "bench 80x5 no wait squat": the name that ends the message in the place of the one ahead of the sets."""
    last = len(kinds) - 1
    while last > 0 and kinds[last] is K.STOP:
        last -= 1
    start = last
    while start > 0 and last - start < LONGEST and kinds[start - 1] not in AHEAD_OF_THE_WORDS:
        start -= 1
    if kinds[last] is not K.NAME or not _ends_sets(kinds[:start]) or _is_denial(pieces[last - 1]):
        return pieces
    if not _take_back(pieces[start:last], cleaned):
        return pieces
    named = start - 1 - kinds[start - 1 :: -1].index(K.NAME)
    meant = pieces[named]._replace(text=pieces[last].text, names=pieces[last].names)
    return [*pieces[:named], meant, *pieces[named + 1 : start], *pieces[last + 1 :]]


def _ends_sets(ahead: Sequence[K]) -> bool:
    """Whether a lift and its numbers stand there, in this order or the other."""
    return bool(ahead) and ahead[-1] in AHEAD_OF_THE_WORDS and {K.NAME, K.NUMBER} <= set(ahead)


def _is_denial(piece: Piece) -> bool:
    """ "no squat" may tell that there was none."""
    return piece.kind in (K.DENY, K.NOT) or "nottoday" in CUES_OF[piece.text]


def _take_back(words: Sequence[Piece], cleaned: str) -> bool:
    """Whether these are words that take back what stands before them, and nothing else."""
    told = [CUES_OF[spoken(word)] for piece in words if piece.kind not in SIGNS for word in _typed(piece, cleaned)]
    return any(TAKES_BACK in cues for cues in told) and all(not WORDS.isdisjoint(cues) for cues in told)


def _typed(piece: Piece, cleaned: str) -> list[str]:
    return cleaned[piece.start : piece.end].split()


WORDS = frozenset((TAKES_BACK, "takesbackwith"))
AHEAD_OF_THE_WORDS = frozenset((K.NUMBER, K.NAME, K.KG, K.LB, K.REPS, K.LINE))


def _lift_behind_the_words(pieces: Sequence[Piece], at: int, cleaned: str) -> int:
    """The place of the lift with numbers of its own behind words that take back the set before them; 0 for none."""
    end = at
    while end < len(pieces) and end - at < LONGEST and pieces[end].kind not in AHEAD_OF_THE_WORDS:
        end += 1
    if kind_at(pieces, end) is not K.NAME or kind_at(pieces, end + 1) is not K.NUMBER:
        return 0
    words = pieces[at:end]
    remarked = all(piece.kind in SIGNS or "alsoaremark" in CUES_OF[piece.text] for piece in words)
    return end if not remarked and _take_back(words, cleaned) else 0


def _behind_the_words(pieces: Sequence[Piece], at: int, cleaned: str) -> int:
    """The place of the number behind words that take back what stands before them; 0 where others stand there."""
    end, takes = at, False
    while end < len(pieces) and end - at < LONGEST and pieces[end].kind is not K.NUMBER:
        if pieces[end].kind is K.FUTURE:
            return 0  # "100x5 was meant to be 105x5"
        if pieces[end].kind not in SIGNS:
            cues = [CUES_OF[spoken(word)] for word in _typed(pieces[end], cleaned)]
            if not all(WORDS & cue for cue in cues):
                return 0
            takes = takes or any(TAKES_BACK in cue for cue in cues)
        end += 1
    number = kind_at(pieces, end) is K.NUMBER and pieces[end].role in (Role.BARE, Role.LOAD)
    return end if takes and number else 0

"""Times long past told in figures, which make a story of what they stand beside: "ten years ago", "in 2015".

ago  = AHEAD [ count ] YEARS | [ count ] YEARS BEHIND        hace diez años, il y a 10 ans; 10 jaar geleden, rok temu
year = [ "in" | "from" ... ] NUMBER                          a year before this one, at the head of a clause or behind
A time that is only compared ("like 10 years ago") or told behind other words of a remark makes no story.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from engine.reading.words.ahead import aside, kind_at
from engine.reading.words.cues import CUES_OF, any_cued, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import COUNTED, TOLD_IN_FIGURES, Piece, Role, kinds_in_order, places_of, texts_in_order

LONG_SPANS = frozenset(("spanyears", "spanmonths"))
AGO_AHEAD, AGO_BEHIND = frozenset(("agoahead",)), frozenset(("agobehind",))
COUNTS_ONE = frozenset(("onespan", "vaguely", "acouple"))
COMPARES = frozenset(("like", "compared"))
IN_A_YEAR = frozenset(("inyear", "spanyears"))
MOST_WORDS_OF_A_COUNT = 3
FIRST_YEAR = 1950
LENGTH_OF_A_YEAR = 4
CLAUSE_ENDS = frozenset((None, K.LINE, K.COMMA, K.STOP, K.OPEN, K.COLON, K.DASH))
ENDS_OF_SETS = CLAUSE_ENDS | COUNTED | {K.NAME, K.KG, K.LB, K.REPS, K.SETS}
NO_YEAR = frozenset((K.TIMES, K.SLASH, K.DASH, K.KG, K.LB, K.REPS, K.SECONDS, K.METRES, K.FAR, K.AT))
AHEAD_OF_NO_YEAR = frozenset((K.TIMES, K.SLASH, K.DASH, K.MONTH, K.AT, K.PLUS))


def with_times_past(pieces: list[Piece], kinds: set[K], today: date | None) -> list[Piece]:
    """The pieces, which are of these kinds, with such times as parts of a story."""
    out = pieces
    texts = texts_in_order(pieces)
    if any_cued(texts, LONG_SPANS):
        out = _with_spans_ago(out)
    if today is not None and LENGTH_OF_A_YEAR in map(len, texts) and any([_may_be_a_year(text) for text in texts]):
        out = _with_years(out, today)
    return out


def _with_spans_ago(pieces: list[Piece]) -> list[Piece]:
    out, done = [], 0
    for at, piece in enumerate(pieces):
        if at < done or not is_cued(piece.text, LONG_SPANS):
            continue
        start = _start_of_the_count(pieces, at)
        whole = piece.kind is K.STORY  # "years ago"
        behind = not whole and at + 1 < len(pieces) and is_cued(pieces[at + 1].text, AGO_BEHIND)
        ahead = start > 0 and is_cued(pieces[start - 1].text, AGO_AHEAD)
        start, end = start - ahead, at + 1 + behind
        if not (ahead or behind or (whole and start < at)) or start < done:
            continue
        if _tells_when(pieces, start):
            out += [*pieces[done:start], _as_story(pieces, start, end)]
        elif whole:
            out += [*pieces[done:start], aside(pieces[start])]
        else:
            continue
        done = end
    return [*out, *pieces[done:]] if done else pieces


def _start_of_the_count(pieces: Sequence[Piece], at: int) -> int:
    """The place of the first word that counts the years here: "ten", "a few", "un par de"."""
    start = at
    while start and at - start < MOST_WORDS_OF_A_COUNT:
        before = pieces[start - 1]
        if before.kind is K.NUMBER and before.role is Role.BARE:
            return start - 1
        if not is_cued(before.text, COUNTS_ONE) and not (before.kind is K.OF and start < at + 1):
            break
        start -= 1
    return start


def _tells_when(pieces: Sequence[Piece], at: int) -> bool:
    """Whether the time that begins there is of the sets, and neither compared nor said of what stands before it."""
    start = at - (kind_at(pieces, at - 1) is K.FILLER)
    if at and not COMPARES.isdisjoint(CUES_OF[pieces[at - 1].text]):
        return False
    clause = at
    while clause and pieces[clause - 1].kind not in CLAUSE_ENDS:
        clause -= 1
    told = not COUNTED.isdisjoint([piece.kind for piece in pieces[clause:at]])
    return not told or kind_at(pieces, start - 1) in ENDS_OF_SETS


def _as_story(pieces: Sequence[Piece], start: int, end: int) -> Piece:
    return pieces[start]._replace(
        kind=K.STORY, role=Role.BARE, unit=None, told=TOLD_IN_FIGURES, spelled=False, end=pieces[end - 1].end
    )


def _may_be_a_year(text: str) -> bool:
    return len(text) == LENGTH_OF_A_YEAR and text[:2] in ("19", "20") and text.isdigit()


def _with_years(pieces: list[Piece], today: date) -> list[Piece]:
    out = list(pieces)
    for at in places_of(K.NUMBER, kinds_in_order(pieces)):
        if _may_be_a_year(pieces[at].text) and _is_a_past_year(pieces, at, today):
            out[at] = _as_story(pieces, at, at + 1)
    return out


def _is_a_past_year(pieces: Sequence[Piece], at: int, today: date) -> bool:
    number, before = pieces[at], kind_at(pieces, at - 1)
    if number.role is not Role.BARE or not FIRST_YEAR <= number.value < today.year:
        return False
    if before in AHEAD_OF_NO_YEAR or kind_at(pieces, at + 1) in NO_YEAR:
        return False
    linked = at > 0 and is_cued(pieces[at - 1].text, IN_A_YEAR)
    return (linked and _tells_when(pieces, at - 1)) or before in CLAUSE_ENDS

"""Sets told only to say what those lifted were like: "80x5 felt like 100x5", "easier than 75x5", "as easy as 90x5".

compared = ( sets | FELT ) ... ( LIKE | LIKEWISE ) [ article ] NUMBER ( "x" | "for" ) NUMBER [ unit ]
         | FELT LIKE NUMBER         a load, and no effort
         | sets ... LIKE EARLIER    "like last time"
         | sets ... "same" LIKE DAY "same as monday"
Sets stand in front of it in the same message, or a word for what they felt like; "did like 60x8" tells of a set.
Parts in capitals are cues of the language files.
"""

from __future__ import annotations

from engine.reading.words.ahead import aside
from engine.reading.words.cues import CUES_OF, cues_told, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import COUNTED, Piece, Role, first_place, first_word, kinds_in_order, texts_in_order
from engine.values.effort import TOP_OF_SCALE

JOINED = frozenset((K.TIMES, K.FOR, K.AT))
ENDS_OF_A_CLAUSE = frozenset((K.COMMA, K.STOP, K.LINE, K.THEN, K.QUESTION, K.NUMBER, K.NAME))
EARLIER = frozenset((K.STORY, K.EARLIER))
COMPARING = frozenset(("compared", "beats"))
SAYING_LIKE = COMPARING | {"better", "likewise"}
FEELING = frozenset(("felt", "moved"))
DAYS = frozenset((K.WEEKDAY, K.YESTERDAY, K.LAST_WEEKDAY, K.TODAY))
NEAR, REACH = 2, 5
OF_A_LOAD = frozenset((Role.BARE, Role.LOAD))


def with_compared(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with such sets as remarks."""
    kinds = kinds_in_order(pieces)
    if K.NOT_DATE not in kinds and SAYING_LIKE.isdisjoint(cues_told(texts_in_order(pieces))):
        return pieces
    out, at = list(pieces), 0
    counted = _counted_ends(kinds)
    while at < len(out):
        start, end = _span_compared(out, kinds, counted, at) if _may_compare(out, at) else (at, at)
        if end > start:
            out[start:end] = [aside(out[start])]
            kinds = kinds_in_order(out)
            counted = _counted_ends(kinds)
            at = start
        at += 1
    return out if len(out) < len(pieces) else pieces


def _may_compare(pieces: list[Piece], at: int) -> bool:
    text, kind = pieces[at].text, pieces[at].kind
    if kind is K.ASKS and "better" in CUES_OF[text]:
        return not any(one.kind in (K.ASKS, K.QUESTION) for one in (*pieces[:at], *pieces[at + 1 :]))
    if kind is K.NOT_DATE or is_cued(text, COMPARING):
        return True
    if at == 0 or "likewise" not in CUES_OF[text]:
        return False
    before = pieces[max(0, at - NEAR) : at]
    return before[-1].kind is K.SAME or any("likewise" in CUES_OF[one.text] for one in before)


def _counted_ends(kinds: list[K]) -> tuple[int, int]:
    """The places of the first and of the last number; where there is none, behind the end and ahead of the start."""
    return first_place(COUNTED, kinds), len(kinds) - 1 - first_place(COUNTED, kinds[::-1])


def _span_compared(pieces: list[Piece], kinds: list[K], ends: tuple[int, int], at: int) -> tuple[int, int]:
    """The places from which and up to which the word there compares the sets before it; the same one where it does
    not.
    """
    counted = ends[0] < at
    behind = at + 1
    while behind < len(pieces) and kinds[behind] is K.FILLER:
        behind += 1
    if behind >= len(pieces):
        return at, at
    if kinds[behind] is K.NUMBER:
        return at, _behind_what_is_compared(pieces, kinds, counted, at, behind)
    same = at > 0 and kinds[at - 1] is K.SAME
    if counted and same and kinds[behind] in DAYS:
        return at - 1, behind + 1
    earlier = kinds[behind] in EARLIER and is_cued(pieces[at].text, COMPARING)
    earlier = earlier and ends[1] < behind
    return at, behind + 1 if counted and earlier else at


def _behind_what_is_compared(pieces: list[Piece], kinds: list[K], counted: bool, at: int, number: int) -> int:
    """The place behind the numbers that stand behind the word at `at`; `at` where they tell of a set."""
    if pieces[at].kind is K.NOT_DATE and "compared" not in CUES_OF[pieces[at].text]:
        return at
    said = _said_before(pieces, at)
    felt = any(is_cued(first_word(word), FEELING) for word in said)
    if not felt and (not counted or not _is_of_quality(pieces[at], said)):
        return at
    if kinds[number + 1 : number + 2] and kinds[number + 1] in JOINED and kinds[number + 2 : number + 3] == [K.NUMBER]:
        return number + 3
    load = pieces[number]
    heavy = load.role in OF_A_LOAD and load.value > TOP_OF_SCALE and kinds[number + 1 : number + 2] != [K.REPS]
    return number + 1 if felt and heavy else at


def without_more_than(pieces: list[Piece]) -> list[Piece]:
    """ "190x2, 10 kilos more than in march", "3x5 100, 10 more than my brother": by how much, behind sets; no set."""
    out = list(pieces)
    for at in range(len(pieces) - 1, LEAST_AHEAD, -1):
        if pieces[at].kind is not K.MORE or at + 1 >= len(pieces) or not is_cued(pieces[at + 1].text, COMPARED):
            continue
        number = at - 1
        while number > 1 and pieces[number].kind in OF_WHAT:
            number -= 1
        parted = pieces[number].kind is K.NUMBER and pieces[number - 1].kind in PARTING
        earlier = at + 2 == len(pieces) or pieces[at + 2].kind in WHEN  # "than last month", which was taken out
        if parted and earlier and not COUNTED.isdisjoint([piece.kind for piece in pieces[:number]]):
            ends = at + 2 < len(pieces) and pieces[at + 2].kind not in PARTED_OFF
            out[number : at + 2 + ends] = [aside(pieces[number])]
    return out


COMPARED = frozenset(("compared",))
OF_WHAT = frozenset((K.KG, K.LB, K.REPS, K.FILLER))
PARTING = frozenset((K.COMMA, K.STOP, K.LINE, K.THEN, K.DASH, K.AND, K.FILLER, K.OPEN))
PARTED_OFF = frozenset((K.COMMA, K.STOP, K.LINE, K.CLOSE))
WHEN = frozenset((*EARLIER, *DAYS, *PARTED_OFF, K.OTHERS, K.LAST_TIME, K.MONTH))
LEAST_AHEAD = 2


def _said_before(pieces: list[Piece], at: int) -> list[Piece]:
    """The words of the clause in front of a place."""
    start = at
    while start and at - start < REACH and pieces[start - 1].kind not in ENDS_OF_A_CLAUSE:
        start -= 1
    return pieces[start:at]


def _is_of_quality(word: Piece, said: list[Piece]) -> bool:
    """Whether a word says what the sets were like: "easier than", "as easy as"; "than" and "like" do by themselves."""
    return (
        word.kind is K.NOT_DATE
        or "better" in CUES_OF[word.text]
        or any(one.kind in (K.NOTE, K.PLAIN, K.SAME) for one in said)
    )

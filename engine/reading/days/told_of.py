"""What a day in words is told of, where its place alone does not tell: of the sets, of something else, or perhaps of
either, which is asked.

sets = clause with a lift or numbers, and no words of sleep, rest, people or comparing     squat tuesday, paused 3x5 100
else = clause of sleep or rest or people without sets           squat 3x5 100, slept badly yesterday
open = any other                                                gym was packed yesterday, squat 3x5 100

A day word that is passed over makes the sets today's, so nothing is passed over that may be theirs.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from engine.reading.days.day_places import (
    COMPARING,
    COUNTED,
    FROM,
    ON_A_DAY,
    SAID,
    TELLING_NO_SETS,
    follows_an_opening,
    may_head_a_lift,
)
from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import any_cued, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role

ENDS = frozenset((K.LINE, K.COMMA, K.STOP, K.COLON, K.DASH, K.OPEN, K.CLOSE, K.THEN, K.OTHER_SIGN))
REACH_OF_A_CLAUSE = 10
"""How many pieces of its clause are looked at on each side of a day. Common practice, no source."""
SLEPT = frozenset(("slept",))
GRIP = "grip"
""" "close grip", and no other lift."""
WITH_A_DAY = frozenset(("withaday",))
SETS = frozenset((K.NAME, K.TIMES, K.COUNT))
HEADING = frozenset((K.HEADING, K.NUMBER, K.FILLER))
OF_ELSE = frozenset((K.UNRELATED, K.REST, K.OTHERS))
HOW_ONE_WAS = frozenset((K.PAIN, K.SORE))
OF_A_BODY = HOW_ONE_WAS | {K.MUSCLE, K.MISS, K.UNRELATED}
NO_SETS = TELLING_NO_SETS | OF_ELSE | HOW_ONE_WAS
OF_A_DAY = frozenset((K.YESTERDAY, K.DAYS_AGO, K.WEEKDAY, K.LAST_WEEKDAY))
MORE = COMPARING | {"up", "down", "more", "fewer"}
OF_AN_ENTRY = frozenset(("entry", "workout", "logged"))
WAS = frozenset(("was", "were"))
OF_ANOTHER_DAY = MORE | {"inplace", "off", "returning"}
IN_A_PLACE = frozenset(("onlift",))
PARTING = frozenset((K.COMMA, K.STOP, K.DASH, K.OPEN))


def is_of_something_else(pieces: list[Piece], at: int) -> bool:
    """ "slept badly yesterday, bench 3x8 60", "squat 3x5 100, my brother came by on monday"."""
    ahead, behind = _clause(pieces, at)
    if _is_a_day_off(behind) and SETS.isdisjoint([piece.kind for piece in ahead]):
        return True
    if kind_at(pieces, at + len(behind) + 1) is K.COLON:
        return not behind and (_is_likened(pieces, at) or _is_first_since(pieces, at))
    if not behind and (_is_compared(pieces, at) or _is_counted(ahead) or _is_how_a_body_is(pieces, at, ahead)):
        return True
    if opens_with_sleep(pieces, at):
        return False
    if _has_slept((*ahead, *behind)):
        return True
    if not behind:
        ahead, _ = _clause(pieces, at, SAID)  # "squat 3x5 100 rest day yesterday"
    kinds = {piece.kind for piece in (*ahead, *behind)}
    if SAID.isdisjoint(kinds):
        compared = bool(ahead) and _is_compared(pieces, at)
        return compared or _is_of_rest(pieces, at, kinds) or (K.OTHERS in kinds and not _is_company(ahead))
    return False


def _is_a_day_off(behind: list[Piece]) -> bool:
    """ "took monday off, bench 3x8 80": the day on which nothing was done; and not "yesterday off the rack"."""
    free = [is_cued(piece.text, FREE) for piece in behind[:NEAR]]
    others = [piece.kind for piece, is_free in zip(behind, free, strict=False) if not is_free]
    return len(behind) <= NEAR and any(free) and all([kind is K.FILLER for kind in others])


FREE = frozenset(("dayoff",))
NEAR = 3


def _is_likened(pieces: list[Piece], at: int) -> bool:
    """ "same as monday: bench 3x8 80"; and not "again monday: bench 3x8 80"."""
    ahead = pieces[max(0, at - MOST_ARTICLES) : at]
    return any([one.kind is K.SAME and is_cued(link.text, LIKENING) for one, link in pairwise(ahead)])


LIKENING = frozenset(("likening",))


def _is_first_since(pieces: list[Piece], at: int) -> bool:
    """ "first session since tuesday: squat 3x5 90"."""
    if not is_cued(pieces[at - 1].text, SINCE) and not is_cued(pieces[linked_at(pieces, at)].text, SINCE):
        return False
    return any_cued([piece.text for piece in pieces[max(0, at - MOST_WORDS_AHEAD) : at]], FIRST_OF_ALL)


MOST_WORDS_AHEAD = 5
FIRST_OF_ALL = frozenset(("firsttime",))


def _is_counted(ahead: list[Piece]) -> bool:
    """ "squat 3x5 100, 2 beers last night": something else than sets was counted that day."""
    counted = [piece for piece in ahead if piece.kind is K.NUMBER]
    return (
        len(counted) == 1 and counted[0] is ahead[-1] and counted[0].role is Role.NOT_A_SET and counted[0].text != "%"
    )


def _is_how_a_body_is(pieces: list[Piece], at: int, ahead: list[Piece]) -> bool:
    """ "quads still wrecked from tuesday, squat 3x5 95": since when a part of the body feels so."""
    if kind_at(pieces, at - 1) is K.THEN and is_cued(pieces[at - 1].text, AFTER):
        return True  # "ноги убиты после вторника"
    body = any(piece.kind in PARTS_OF_A_BODY or is_cued(piece.text, BODY) for piece in ahead[:-1])
    if not body or not is_cued(ahead[-1].text, SINCE) or not SAID.isdisjoint([piece.kind for piece in ahead]):
        return False
    felt = any(piece.kind in FELT for piece in ahead[:-1])
    return felt and not any_cued([piece.text for piece in ahead], OF_AN_ENTRY)


AFTER = frozenset(("after",))
SINCE = AFTER | {"since", "fromwhen"}
BODY = frozenset(("bodyday",))
PARTS_OF_A_BODY = frozenset((K.MUSCLE, K.JOINT))
FELT = HOW_ONE_WAS | {K.PLAIN, K.NOTE}


def _has_slept(clause: Sequence[Piece]) -> bool:
    """ "slept 6h last night", "squat 3x5 100 slept badly yesterday"; and not "squat 3x5 100 at my flat yesterday"."""
    slept = [at for at, piece in enumerate(clause) if piece.kind is K.UNRELATED and is_cued(piece.text, SLEPT)]
    return bool(slept) and SETS.isdisjoint([piece.kind for piece in clause[slept[0] :]])


def opens_with_sleep(pieces: list[Piece], at: int) -> bool:
    """ "yesterday ran 5k, then squat 3x5 100": the day of the run, and perhaps of the sets."""
    ahead, behind = _clause(pieces, at)
    return not ahead and kind_at(pieces, at - 1) in (None, K.LINE) and _has_slept(behind)


def _is_of_rest(pieces: list[Piece], at: int, kinds: set[K]) -> bool:
    """ "rest day yesterday"; and not "3x5 100 with 2 min rest on friday"."""
    if [piece.kind for piece in pieces[max(0, at - 2) : at]] == [K.REST, K.HEADING]:
        return True
    return K.REST in kinds and K.NUMBER not in [piece.kind for piece in _clause(pieces, at)[0]]


def stands_among_sets(pieces: list[Piece], at: int) -> bool:
    """ "squat yesterday with a belt 3x5 100": a lift and numbers in its clause, and nothing that may have the day."""
    if pieces[at].kind not in OF_A_DAY or may_head_a_lift(pieces, at):
        return False
    ahead, behind = _clause(pieces, at)
    if ahead and not behind and kind_at(pieces, at + 1) is K.COLON:
        return HEADING.issuperset(piece.kind for piece in ahead)  # "week 3 monday: squat 3x5 100"
    said = (*ahead, *behind)
    kinds = {piece.kind for piece in said}
    alone = [piece.kind for piece in said].count(K.NAME) == 1 and not kinds.isdisjoint(COUNTED)
    return alone and NO_SETS.isdisjoint(kinds) and not any_cued([piece.text for piece in said], MORE)


def may_be_of_the_sets(pieces: list[Piece], at: int) -> bool:
    """Whether a day that no rule took may still be that of the sets; "better than yesterday" is not."""
    if pieces[at].kind not in OF_A_DAY or is_of_something_else(pieces, at) or _has_its_date(pieces, at):
        return False
    link = linked_at(pieces, at)
    if _is_compared(pieces, at):
        return False
    if may_head_a_lift(pieces, at):
        return True
    if link >= 0 and pieces[link].kind is K.NOT_DATE:
        if pieces[at].kind is K.WEEKDAY and _leads_to_sets(pieces, at):
            return True
        return is_cued(pieces[link].text, FROM) and kind_at(pieces, link - 1) is K.PLAIN and _heads(pieces, at)
    kinds = {piece.kind for piece in (*_clause(pieces, at)[0], *_clause(pieces, at)[1])}
    return TELLING_NO_SETS.isdisjoint(kinds)


def may_start_then(pieces: list[Piece], at: int) -> bool:
    """ "bench from monday 4x5": sets and reps without a load may be what is to be done from then on."""
    if not _leads_to_sets(pieces, at):
        return False
    ahead, behind = _clause(pieces, at)
    return [piece.kind for piece in (*ahead, *behind)].count(K.NUMBER) == A_PAIR


def _leads_to_sets(pieces: list[Piece], at: int) -> bool:
    """Whether a word that may tell a day to begin on stands ahead of the day, and sets right behind it."""
    first = at + 1 + (kind_at(pieces, at + 1) is K.COLON)
    paired = [piece.kind for piece in pieces[first : first + 3]] == [K.NUMBER, K.TIMES, K.NUMBER]
    return paired and at > 0 and is_cued(pieces[at - 1].text, STARTING)


STARTING = frozenset(("startingon",))
A_PAIR = 2


def _is_compared(pieces: list[Piece], at: int) -> bool:
    """ "squat 3x5 100, same as last tuesday", "next one thursday"."""
    link = linked_at(pieces, at)
    ahead = pieces[max(0, link - 1) : link + 1]
    return any(piece.kind is K.SAME or is_cued(piece.text, NEXT) for piece in ahead)


NEXT = frozenset(("next",))


def _has_its_date(pieces: list[Piece], at: int) -> bool:
    """ "lunes 10 de marzo": the date behind it is the day."""
    dated = kind_at(pieces, at + 1) in (K.NUMBER, K.ORDINAL, K.MONTH)
    return dated and K.MONTH in [piece.kind for piece in pieces[at + 1 : at + 1 + LONGEST_DATE]]


LONGEST_DATE = 4


def is_hardly_theirs(pieces: list[Piece], at: int) -> bool:
    """ "bench 3x5 80, shoulder hurt yesterday", "squat 3x5 100, up on tuesday": a day behind the sets and behind
    words that may have it.
    """
    if pieces[at - 1].role is Role.NOT_A_SET and pieces[at - 1].text != "%":
        return True  # "squat 3x5 100 2 beers last night"
    ahead, _ = _clause(pieces, at, SAID)
    kinds = {piece.kind for piece in ahead}
    if [piece.kind for piece in ahead[:2]] == HOW_A_DAY_WAS:
        return True  # "3x5 100 long day yesterday"
    before = kind_at(pieces, at - len(ahead) - 1)
    if before is K.NAME and _is_another_lift(pieces, at - len(ahead) - 1):
        return True  # "squat 3x5 100 bench on tuesday"
    if (K.REST in kinds and pieces[at - len(ahead) - 1].role is not Role.SECONDS) or any_cued(
        [piece.text for piece in ahead], WITH_A_DAY
    ):
        return True  # "3x5 100 and the rest on tuesday", "3x5 100, comp saturday"
    parted = (
        before in PARTING or kind_at(ahead, 0) is K.AND or (before is K.LINE and at == len(pieces) - 1)
    )  # "3x5 100, exam monday"
    of_an_entry = any_cued([piece.text for piece in ahead], OF_AN_ENTRY)
    if parted and K.HEADING in kinds and not of_an_entry:
        return True  # "3x5 100, leg day yesterday"
    if K.PLAIN in kinds and K.WITH not in kinds:
        placed = any_cued([piece.text for piece in ahead if piece.kind is K.FILLER], IN_A_PLACE)  # "in the garage"
        heads = before in (None, K.NUMBER) and not of_an_entry and not placed  # "party last night, squat 3x5 100"
        return parted or heads or any_cued([piece.text for piece in ahead], WAS)  # "gym was packed on monday"
    hurt = not OF_A_BODY.isdisjoint([piece.kind for piece in ahead])
    return hurt or any_cued([piece.text for piece in ahead], OF_ANOTHER_DAY)


HOW_A_DAY_WAS = [K.NOTE, K.HEADING]
OF_A_SET = COUNTED | {K.KG, K.LB, K.REPS}


def _is_another_lift(pieces: list[Piece], name: int) -> bool:
    """Whether the lift there has no numbers of its own, and another one in its clause has those in front of it."""
    ahead, _ = _clause(pieces, name)
    kinds = [piece.kind for piece in ahead]
    grip = pieces[name].text.endswith(GRIP)
    if kind_at(pieces, name - 1) in (K.COMMA, K.STOP, K.AND) and kind_at(pieces, name - 2) in OF_A_SET:
        return not grip and K.NAME not in [piece.kind for piece in pieces[max(0, name - REACH_OF_A_CLAUSE) : name]]
    return not grip and K.NAME in kinds and not COUNTED.isdisjoint(kinds[kinds.index(K.NAME) :])


def linked_at(pieces: list[Piece], at: int) -> int:
    """The place of the word that the day hangs on: "from" of "from the last friday"."""
    link = at - 1
    while link > max(0, at - MOST_ARTICLES) and _is_an_article(pieces[link]):
        link -= 1
    return link


MOST_ARTICLES = 3


def _is_an_article(piece: Piece) -> bool:
    return piece.kind is K.LAST or (
        piece.kind is K.FILLER and is_cued(piece.text, ON_A_DAY) and not is_cued(piece.text, FROM)
    )


def is_an_entry_from(pieces: list[Piece], at: int, link: int) -> bool:
    """ "quick one from yesterday, squat 3x5 100": what is from that day are the sets; "since" tells of none."""
    return (
        link > 0
        and is_cued(pieces[link].text, FROM)
        and is_cued(pieces[link - 1].text, OF_AN_ENTRY)
        and (_heads(pieces, at) or follows_an_opening(pieces, at))
    )


def _heads(pieces: list[Piece], at: int) -> bool:
    """Whether a lift stands behind the day, but for a sign."""
    behind = at + 1 + (kind_at(pieces, at + 1) in (K.COMMA, K.COLON, K.DASH, K.STOP, K.LINE))
    return kind_at(pieces, behind) in (K.NAME, K.WARMUP, K.HEADING)


def _is_company(ahead: list[Piece]) -> bool:
    return any(piece.kind is K.WITH for piece in ahead)


def _clause(pieces: list[Piece], at: int, more_ends: frozenset[K] = frozenset()) -> tuple[list[Piece], list[Piece]]:
    """The pieces of the day's clause in front of it and behind it."""
    ends_ahead = ENDS | more_ends
    ahead = pieces[max(0, at - REACH_OF_A_CLAUSE) : at]
    behind = pieces[at + 1 : at + 1 + REACH_OF_A_CLAUSE]
    start = next((place for place in range(len(ahead), 0, -1) if ahead[place - 1].kind in ends_ahead), 0)
    end = next((place for place, piece in enumerate(behind) if piece.kind in ENDS), len(behind))
    return ahead[start:], behind[:end]

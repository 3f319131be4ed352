"""A way of lifting behind the last of several groups of sets: it names that group alone, "squat 100x5, 80x5 front".

line  = lift group { parting group } way [ effort ]
group = LOAD "x" REPS | SETS "x" REPS and LOAD

Where three and more loads rise or fall all along, where the loads are one, or no sign parts them, all sets may have
been done so: it is asked.
"""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from itertools import pairwise

from engine.catalogue.catalogue import Catalogue
from engine.reading.entries.names import EQUIPMENT
from engine.reading.entries.ways import is_a_remark, lifts_with, tells_sets
from engine.reading.lexing.name_words import tells_a_pause
from engine.reading.marks.grips import GRIPS, is_a_grip
from engine.reading.words.ahead import aside, kind_at
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import (
    AGAIN_OR_SO,
    BEHIND_OR_AHEAD,
    MOST_SETS,
    SETTING_OR_LIFT,
    TOLD,
    WAY_IN_DOUBT,
    WAY_OR_KIT,
    Piece,
    kinds_in_order,
    places_of,
)

REMARKS = frozenset((K.NOTE, K.PLAIN, K.DENY))
TELLING = frozenset((K.VARIANT, K.JOINT, K.NAME, *EQUIPMENT))
PARTING = frozenset((K.COMMA, K.THEN, K.AND, K.STOP))
BESIDE = frozenset((K.OPEN, K.CLOSE, K.EFFORT, K.AT, K.COMMA))


def of_the_last_group(line: list[Piece], lift: Piece | None, catalogue: Catalogue) -> list[Piece] | None:
    """The line, with the way behind its last sets made their name; None where it is of all sets, or there is none.

    Shape: `lift` is that of the line above, which a line without a name goes on with.
    """
    kinds = kinds_in_order(line)
    at = _way_behind(line) if K.TIMES in kinds else 0
    if not at:
        return None
    lifts = [place for place in places_of(K.NAME, kinds) if place < at]
    head = line[lifts[-1]] if lifts else lift
    if head is None or not TELLING.isdisjoint(kinds[lifts[-1] + 1 if lifts else 0 : at]):
        return None
    meant = lifts_with(line[at], head, catalogue)
    if not meant and line[at].kind is K.NAME and is_a_remark(line[at], head, catalogue):
        return [*line[:at], line[at]._replace(kind=K.NOTE, names=()), *line[at + 1 :]]  # "push ups 3x20, 2x12 decline"
    if not meant or set(meant) == set(head.names) or (lifts and set(meant) <= set(head.names)):
        return None
    groups = groups_of_sets(line, lifts[-1] + 1 if lifts else 0, at)
    if not groups or (lifts and len(groups) < 2):
        return None
    named = line[at]._replace(kind=K.NAME, names=meant)
    if not lifts:
        return [*line[:at], named, *line[at + 1 :]]
    start = groups[-1]
    if _is_clear(line, groups, at):
        return [*line[:at], named, *line[at + 1 :]]
    cut = (
        [] if kind_at(line, start - 1) in PARTING else [Piece(K.COMMA, line[start].start, line[start].start, True, ",")]
    )
    return [*line[:start], *cut, *line[start:at], named._replace(told=WAY_IN_DOUBT), *line[at + 1 :]]


WORN = frozenset(("worn",))
SAID_OF_KIT = frozenset((WAY_OR_KIT, SETTING_OR_LIFT))
IN_DOUBT = frozenset((WAY_IN_DOUBT, WAY_OR_KIT, SETTING_OR_LIFT, AGAIN_OR_SO, BEHIND_OR_AHEAD))


def with_ways_of_all(pieces: list[Piece]) -> list[Piece] | None:
    """The pieces, with each way in doubt put to all sets of its lift, or to what was worn; None where there is none."""
    if IN_DOUBT.isdisjoint(map(TOLD, pieces)):
        return None
    named = places_of(K.NAME, kinds_in_order(pieces))
    if IN_DOUBT.isdisjoint([pieces[at].told for at in named]):
        return None  # the number told was that of another word
    out = list(pieces)
    lift, found = None, False
    for at in named:
        piece = pieces[at]
        if piece.told == WAY_IN_DOUBT and lift is not None:
            out[lift] = pieces[lift]._replace(names=piece.names)
            out[at] = piece._replace(kind=K.NOTE, names=(), told=0)
            found = True
        elif piece.told in SAID_OF_KIT:
            out[at] = piece._replace(kind=K.NOTE, names=(), told=0)
            number = [aside(out[at + 1])] if piece.told == SETTING_OR_LIFT else []
            out[at + 1 : at + 1 + len(number)] = number
            found = True
        elif piece.told == AGAIN_OR_SO:
            out[at] = piece._replace(kind=K.FILLER, names=(), told=0)
            found = True
        elif piece.told == BEHIND_OR_AHEAD and lift is not None:
            out[lift], out[at] = pieces[lift]._replace(names=piece.names), piece._replace(names=pieces[lift].names)
            found = True
        else:
            lift = at
    return out if found else None


def _way_behind(line: Sequence[Piece]) -> int:
    """The place of the way right behind sets, with only how hard they were behind it, "80x5 front @7"; 0 for none.

    A remark is one where a lift is known by it; a pause or a grip that is told in passing stays a remark.
    """
    at = len(line) - 1
    while at > 0 and (line[at].kind in BESIDE or (line[at].kind is K.NUMBER and line[at - 1].kind is K.AT)):
        at -= 1
    if at < 1 or line[at].kind not in TELLING | REMARKS:
        return 0
    word = line[at].text
    if is_cued(word, WORN) and any(piece is not line[at] and piece.text.startswith(word) for piece in line):
        return 0  # "80x5 beltless, 90x5 belt, 90x4 belt": worn in some sets
    if line[at].kind in REMARKS and (tells_a_pause(word) or is_cued(word, GRIPS) or is_a_grip(word)):
        return 0
    ahead = line[at - 1].kind
    bracketed = ahead is K.OPEN and kind_at(line, at + 1) is K.CLOSE
    return at if bracketed or ahead in ENDS_OF_SETS else 0


ENDS_OF_SETS = frozenset((K.NUMBER, K.EFFORT, K.KG, K.LB))


def groups_of_sets(line: Sequence[Piece], start: int, end: int) -> list[int]:
    """The places where groups of whole sets begin, with the load that may stand ahead of them: "80x5", "70 3x5"."""
    found: list[int] = []
    for at in range(start, end):
        ahead = kind_at(line, at - 1)
        if not tells_sets(line, at) or ahead is K.TIMES or ahead is K.AT:
            continue
        if found and ahead is K.NUMBER and (found[-1] == at - 1 or kind_at(line, at + 1) is K.NUMBER):
            continue  # "70 3x5", "3x5 100 80x5": the number ahead is the load
        found.append(at)
    return found


def _is_clear(line: Sequence[Piece], groups: Sequence[int], end: int) -> bool:
    """Whether the last group stands apart from those before it, so that the way can only be its own."""
    before = kind_at(line, groups[-1] - 1)
    if before is K.STOP or (before is K.THEN and len(groups) == FEWEST):
        return True
    if before not in PARTING:
        return False
    bounds = [*groups, end]
    told = [line[one:other] for one, other in pairwise(bounds)]
    if len(groups) == FEWEST and _is_counted(told[-1]):
        return True
    loads = [_load(one) for one in told]
    if len(groups) == FEWEST:
        return loads[0] != loads[1]
    falls = [high > low for high, low in pairwise(loads)]
    return falls[-1] and not all(falls[:-1])


FEWEST = 2


def _numbers(group: Sequence[Piece]) -> list[Decimal]:
    return [piece.value for at, piece in enumerate(group) if piece.kind is K.NUMBER and not _rates(group, at)]


def _rates(group: Sequence[Piece], at: int) -> bool:
    return kind_at(group, at - 1) is K.AT and group[at].value <= MOST_SETS


def _is_counted(group: Sequence[Piece]) -> bool:
    """ "3x5 80", "80 3x5", "3x8"; and not "80x5"."""
    numbers = _numbers(group)
    return len(numbers) > FEWEST or numbers[0] <= MOST_SETS


def _load(group: Sequence[Piece]) -> Decimal:
    return max(_numbers(group))

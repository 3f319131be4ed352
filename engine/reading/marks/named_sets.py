"""Sets counted by a word for their place in the session: "2 back offs of 5", "3 top sets of 3", "2 back off triples".

named = NUMBER BACK-OFFS | NUMBER BACK-OFF REPS-NAME
The word goes in front of its number, which then counts sets as "2 sets" does. A number that belongs to what stands in
front of it counts none: "100x5 back offs 80x8".
"""

from __future__ import annotations

from decimal import Decimal

from engine.reading.marks.announced_ones import sets_listed
from engine.reading.marks.names_carried import with_names_carried
from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, MOST_SETS, ROLE, Piece, Role, kinds_in_order, places_of

PAIRING = frozenset((K.TIMES, K.SLASH, K.DASH, K.PLUS))
HEADING = frozenset((K.NAME, K.FOR, K.COMMA, K.THEN, K.LINE, K.STOP, K.AND, K.COLON))
ENDS = frozenset((None, K.COMMA, K.STOP, K.LINE))
BEHIND_ALL = ENDS | {K.CLOSE, K.NOTE, K.PLAIN, K.FILLER, K.EFFORT, K.FAILURE, K.PAUSE, K.AT, K.WITH}
REACH_OF_THOSE = 8
"""How many pieces may stand between a name of reps and the words that point at it. Common practice, no source."""
SETS_NAMED = frozenset((K.COUNT, K.SETS, K.FILLER))
"""Kinds of the words by which sets are named or counted here."""
SEVERAL = 2
"""What a word for such sets tells where it names several of them."""
STARTS = frozenset(
    (None, K.NAME, K.COMMA, K.THEN, K.AND, K.PLUS, K.LINE, K.STOP, K.COLON, K.OPEN, K.FILLER, K.NOTE, K.FOR, K.GOT,
     K.ARROW, K.DASH, K.WORKING)
)  # fmt: skip


def with_named_sets(pieces: list[Piece], kinds: set[K]) -> list[Piece]:
    """The pieces, which are of these kinds, with words for their place in a session ahead of the numbers that count
    them, and with names of reps put to their counts and their loads.
    """
    if K.SETS in kinds and K.NAME in kinds:
        pieces = _without_places_ahead(pieces)
    if K.SETS in kinds and Role.SETS in map(ROLE, pieces):
        pieces = _with_one_set(pieces)
    if K.FILLER in kinds and K.NUMBER in kinds:
        pieces = _with_all_counted(_with_places_ahead(pieces))
    named = K.COUNT in kinds or (K.SETS in kinds and K.OF in kinds)
    return _with_counts_named(pieces) if named and K.TOTAL not in kinds else pieces


def _without_places_ahead(pieces: list[Piece]) -> list[Piece]:
    """The pieces, without "set 3" ahead of a lift and one set of it: "set 3 bench 80x4" is no three sets."""
    kinds = kinds_in_order(pieces)
    gone: set[int] = set()
    for at in places_of(K.SETS, kinds):
        heads = at == 0 or kinds[at - 1] in ENDS
        if not heads or kinds[at + 1 : at + 6] != ONE_SET_OF_A_LIFT or kind_at(pieces, at + 6) is K.TIMES:
            continue
        place, load = pieces[at + 1], pieces[at + 3]
        cues = CUES_OF[pieces[at].text]
        if "setword" in cues and "alsosets" not in cues and place.value <= MOST_SETS < load.value:
            gone |= {at, at + 1}
    return [piece for at, piece in enumerate(pieces) if at not in gone] if gone else pieces


def _with_one_set(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with "a set" as one set where other sets are counted: in "zwei sätze 8, ein satz 6" the six are reps,
    and no sixth set.
    """
    out: list[Piece] = []
    for at, piece in enumerate(pieces):
        counts = piece.kind is K.SETS and kind_at(pieces, at + 1) is K.NUMBER and pieces[at + 1].role is Role.BARE
        one = out[-1] if counts and out else None
        if one is not None and one.kind in SAYING_ONE and "an" in CUES_OF[one.text]:
            out[-1] = one._replace(kind=K.NUMBER, value=ONE, role=Role.SETS, end=piece.end, spelled=True)
        else:
            out.append(piece)
    return out


ONE = Decimal(1)
SAYING_ONE = frozenset((K.FILLER, K.PLAIN))
ONE_SET_OF_A_LIFT = [K.NUMBER, K.NAME, K.NUMBER, K.TIMES, K.NUMBER]


def _with_counts_named(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with an x between a count and a name of reps taken out: "3x doubles", "x3 doubles", "120 x triples";
    and with "sets of 5", where no number counts them, as a name of reps.
    """
    out: list[Piece] = []
    numbers = kinds_in_order(pieces).count(K.NUMBER)
    at = 0
    while at < len(pieces):
        piece = pieces[at]
        named = _sets_of(pieces, at) if numbers > 1 else None
        if named is not None:
            out.append(named)
            at += 2
        elif (behind := _past_those(pieces, at, out)) > at:
            out.append(piece._replace(role=Role.TIMES))
            at = behind - 1
        elif piece.kind is K.TIMES and _joins_a_name(pieces, at):
            if at and pieces[at - 1].kind is K.NUMBER and pieces[at - 1].value > MOST_SETS:
                out.append(piece._replace(kind=K.FOR, text="for"))
        else:
            out.append(piece)
        at += 1
    return with_names_carried(out) if K.COUNT in kinds_in_order(out) else out


def _past_those(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """The place behind "five of those", which counts the sets that a name of their reps told; `at` where it is none."""
    count = pieces[at]
    if count.kind is not K.NUMBER or count.role is not Role.BARE or not 1 <= count.value <= MOST_SETS:
        return at
    name = next((place for place in range(len(out) - 1, -1, -1)[:REACH_OF_THOSE] if out[place].kind is K.COUNT), -1)
    if name < 0 or (name and out[name - 1].kind is K.NUMBER and out[name - 1].value <= MOST_SETS):
        return at
    ends = kind_at(pieces, at + 1) in ENDS
    if out[name].role is Role.REPS and ends and "did" in CUES_OF[out[-1].text]:
        return at + 1  # "100, sets of 5, did 4"
    behind = pieces[at + 1 : at + 3]
    if behind and behind[0].kind is K.ALTERED and "of" in CUES_OF[behind[0].text]:
        return at + 2
    pointed = len(behind) > 1 and behind[0].kind is K.OF and "those" in CUES_OF[behind[1].text]
    return at + 3 if pointed else at


def _joins_a_name(pieces: list[Piece], at: int) -> bool:
    before = kind_at(pieces, at - 1) if at else None
    if kind_at(pieces, at + 1) is K.COUNT:
        return before is K.NUMBER
    counted = kind_at(pieces, at + 1) is K.NUMBER and kind_at(pieces, at + 2) is K.COUNT
    return counted and before in STARTS and 1 < pieces[at + 1].value <= MOST_SETS


def _sets_of(pieces: list[Piece], at: int) -> Piece | None:
    """ "sets of 5" as fives."""
    reps = pieces[at + 2] if at + 2 < len(pieces) else None
    if pieces[at].kind is not K.SETS or reps is None or kind_at(pieces, at + 1) is not K.OF:
        return None
    bare = reps.kind is K.NUMBER and reps.role in (Role.BARE, Role.REPS) and 1 <= reps.value <= MOST_LOADED_REPS
    if not bare or reps.value % 1 or kind_at(pieces, at + 3) in PAIRING or (at and pieces[at - 1].kind not in HEADING):
        return None
    return pieces[at]._replace(kind=K.COUNT, end=reps.end, told=int(reps.value), role=Role.REPS)


def _with_all_counted(pieces: list[Piece]) -> list[Piece]:
    """ "8 on all three", "all three paused": a number behind "all" that counts the sets told."""
    out: list[Piece] | None = None
    for at in places_of(K.FILLER, kinds_in_order(pieces)):
        number = pieces[at + 1] if kind_at(pieces, at + 1) is K.NUMBER and "all" in CUES_OF[pieces[at].text] else None
        if number is None or number.role is not Role.BARE or not 1 < number.value <= MOST_SETS:
            continue
        linked = at > 1 and pieces[at - 1].kind in (K.FILLER, K.FOR) and pieces[at - 2].kind in (K.NUMBER, K.EFFORT)
        if (number.spelled or linked) and kind_at(pieces, at + 2) in BEHIND_ALL:
            out = list(pieces) if out is None else out
            out[at + 1] = number._replace(role=Role.SETS)
    return pieces if out is None else out


def _with_places_ahead(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with such words in front of the numbers that count them."""
    out: list[Piece] | None = None
    for at in places_of(K.FILLER, kinds_in_order(pieces)):
        if pieces[at].told and at > 1 and (meant := _counted_amid_sets(pieces, at - 1)) is not None:
            out = list(pieces) if out is None else out
            out[at - 1] = meant
        elif pieces[at].told and _counts(pieces, at - 1, pieces[at], kind_at(pieces, at + 1)):
            out = list(pieces) if out is None else out
            several = pieces[at].told == SEVERAL
            count = pieces[at - 1]
            out[at - 1], out[at] = pieces[at], count._replace(role=Role.SETS) if several else count
            paired = several and kind_at(pieces, at + 2) is K.TIMES and Role.SETS not in map(ROLE, out[: at - 1])
            if paired and sets_listed(pieces, at + 1) == count.value > 1:
                out[at] = count._replace(kind=K.FILLER)  # "2 back offs 80x5, 80x4": the sets themselves stand behind
            if at > 1 and pieces[at - 2].kind is K.PLUS:
                out[at - 2] = pieces[at - 2]._replace(kind=K.THEN)
    return pieces if out is None else out


def _counted_amid_sets(pieces: list[Piece], at: int) -> Piece | None:
    """ "100x5 2 back offs 80x8", "100x5, 1 back off 80x8": the count is no set; how many they were is asked."""
    count, word, behind = pieces[at], pieces[at + 1], kind_at(pieces, at + 2)
    told = count.kind is K.NUMBER and count.role is Role.BARE and not count.glued and behind in LISTING
    if not told:
        return None
    if count.value == 1 and word.told != SEVERAL:
        return count._replace(kind=K.FILLER)
    amid = word.told == SEVERAL and pieces[at - 1].kind is K.NUMBER and count.value <= MOST_SETS
    return count._replace(kind=K.ALTERED) if amid else None


LISTING = frozenset((K.NUMBER, K.COLON))


def _counts(pieces: list[Piece], at: int, word: Piece, behind: K | None) -> bool:
    count = pieces[at] if at >= 0 else word
    if count.kind is not K.NUMBER or count.role is not Role.BARE:
        return False
    if not 1 <= count.value <= MOST_SETS or count.value % 1:
        return False
    glued = count.glued and kind_at(pieces, at - 1) is K.COMMA  # "100x5,5 back offs 80x8"
    return (word.told == SEVERAL or behind is K.COUNT) and not glued and (at == 0 or pieces[at - 1].kind in STARTS)

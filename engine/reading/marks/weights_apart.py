"""What she weighs in a clause of its own beside sets that need no load of it: "peso 77,2 hoy, sentadilla 100x5".

clause = [ "my" ] [ DAY ] WEIGHS [ DAY ] [ "is" | ":" ] NUMBER [ UNIT ] [ DAY ]     WEIGHS: "weight", "bodyweight"
       | NUMBER [ UNIT ] "on the scale" [ DAY ]
The same words tell the load of a lift: it is what she weighs where every lift of the message is done with the body or
has loads of its own, and where no numbers without a lift stand behind it.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.catalogue.catalogue import Catalogue
from engine.reading.marks.weights_told import LEAST_BODY_WEIGHT
from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import CUES_OF, cues_told
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role, kinds_in_order, kinds_of, places_in, places_of
from engine.values.exercise import Loading

SEPARATORS = frozenset((K.LINE, K.COMMA, K.STOP, K.OPEN, K.CLOSE, K.THEN, K.AND))
MAY_WEIGH = frozenset((K.PLAIN, K.FILLER, K.WITH, K.BODY, K.UNRELATED))
BESIDE = MAY_WEIGH | {K.NUMBER, K.KG, K.LB, K.TODAY, K.COLON, K.EQUALS, K.HEADING, K.DASH, K.OF}
WEIGHING, ON_SCALES = frozenset(("loadword", "scales")), "scales"
UNLOADED = frozenset((Loading.BODY, Loading.BAND))
BESIDE_SCALES = BESIDE | {K.FOR, K.MONTH, K.AT, K.NOTE, K.WEEKDAY}
MOST_UNKNOWN = 2
"""Words that no list knows beside one for the scales: "la báscula marca 77". Common practice, no source."""
LOADED, PAIRED = 2, 3
"""Numbers of a list with its load, and of sets with theirs."""


def with_weight_apart(pieces: list[Piece], kinds: set[K], catalogue: Catalogue) -> list[Piece]:
    """The pieces, which are of these kinds, with a clause that tells what she weighs as words of something else."""
    if K.BODY not in kinds:
        words = [pieces[at].text for at in places_in(MAY_WEIGH, kinds_in_order(pieces))]
        if WEIGHING.isdisjoint(cues_told(words)):
            return pieces
    clauses = _clauses(pieces)
    weights = [at for at, (start, end) in enumerate(clauses) if _tells_a_weight(pieces[start:end])]
    if not weights or not _need_no_load(pieces, clauses, weights, catalogue):
        return pieces
    out, done = [], 0
    for at in weights:
        start, end = clauses[at]
        behind = clauses[at + 1] if at + 1 < len(clauses) else (end, end)
        if not _stands_alone(pieces, start, pieces[behind[0] : behind[1]]):
            continue
        word = next(one for one in pieces[start:end] if one.kind in MAY_WEIGH)
        told = word._replace(kind=K.UNRELATED, start=pieces[start].start, end=pieces[end - 1].end)
        out += [*pieces[done:start], told]
        done = end
    return [*out, *pieces[done:]]


def _clauses(pieces: Sequence[Piece]) -> list[tuple[int, int]]:
    """Where each clause begins and ends; those with nothing in them are left out."""
    cuts = [
        at for at, piece in enumerate(pieces) if piece.kind in SEPARATORS or (piece.kind is K.DASH and not piece.glued)
    ]
    spans = zip([0, *[at + 1 for at in cuts]], [*cuts, len(pieces)], strict=True)
    return [(start, end) for start, end in spans if start < end]


def _tells_a_weight(clause: Sequence[Piece]) -> bool:
    kinds = kinds_in_order(clause)
    scales = any(ON_SCALES in CUES_OF[piece.text] for piece in clause)
    if kinds.count(K.NUMBER) != 1 or not (BESIDE_SCALES if scales else BESIDE).issuperset(kinds):
        return False
    number = kinds.index(K.NUMBER)
    if clause[number].role not in (Role.BARE, Role.LOAD) or clause[number].value < LEAST_BODY_WEIGHT:
        return False
    words = [piece for piece in clause if piece.kind in MAY_WEIGH]
    ahead = any(_weighs(piece) for piece in clause[:number])
    unknown = sum(piece.kind is K.PLAIN and not _weighs(piece) for piece in words)
    return (scales and unknown <= MOST_UNKNOWN) or (ahead and not unknown)


def _weighs(piece: Piece) -> bool:
    return piece.kind is K.BODY or (piece.kind in MAY_WEIGH and not WEIGHING.isdisjoint(CUES_OF[piece.text]))


def _need_no_load(
    pieces: Sequence[Piece], clauses: Sequence[tuple[int, int]], weights: Sequence[int], catalogue: Catalogue
) -> bool:
    """Whether some lift is told with numbers, and all that are have loads of their own, or are done with the body, and
    nobody would hang so much on it.
    """
    others = [piece for at, (start, end) in enumerate(clauses) if at not in weights for piece in pieces[start:end]]
    names = places_of(K.NAME, kinds_in_order(others))
    groups = [others[at:end] for at, end in zip(names, [*names[1:], len(others)], strict=True)]
    told = [group for group in groups if K.NUMBER in kinds_of(group)]
    behind = clauses[weights[0]][0] > pieces.index(told[0][0]) if told else False
    clear = all(_is_no_load(pieces[slice(*clauses[at])], behind) for at in weights)
    return bool(told) and all(
        _has_loads(group[1:]) or (clear and _is_of_the_body(group[0], catalogue)) for group in told
    )


def _is_no_load(clause: Sequence[Piece], behind: bool) -> bool:
    """Whether a day, "my", a word for the body or tenths that no plates make tell of no load; ahead of lifts, how much
    it is.
    """
    number = next(piece for piece in clause if piece.kind is K.NUMBER)
    if not {K.TODAY, K.BODY}.isdisjoint(kinds_of(clause)) or (number.value * 4) % 1 != 0:
        return True
    own = any({"my", ON_SCALES} & CUES_OF[piece.text] for piece in clause)
    return own or (not behind and number.value >= MORE_THAN_IS_HUNG)


MORE_THAN_IS_HUNG = 60
"""Kilos or pounds; a weight added to body weight is seldom so much. Common practice, no source."""


def _is_of_the_body(name: Piece, catalogue: Catalogue) -> bool:
    known = [catalogue.exercises.get(one) for one in name.names]
    return bool(known) and all(one is not None and one.loading in UNLOADED for one in known)


def _has_loads(sets: Sequence[Piece]) -> bool:
    """ "100x5", "3x5 100", "60 8 8 7"; "3x5" may be at a load told elsewhere."""
    kinds = kinds_in_order(sets)
    numbers = [sets[at] for at in places_of(K.NUMBER, kinds)]
    large = any(one.role is Role.LOAD or one.value > MOST_LOADED_REPS for one in numbers)
    return len(numbers) >= (LOADED if large else PAIRED) and (large or K.TIMES in kinds)


def _stands_alone(pieces: Sequence[Piece], start: int, behind: Sequence[Piece]) -> bool:
    """Whether no numbers without a lift follow, "peso 80, 8 reps", and nothing leads to a set, "then weight 85"."""
    kinds = kinds_of(behind)
    return not (K.NUMBER in kinds and K.NAME not in kinds) and kind_at(pieces, start - 1) not in GOING_ON


GOING_ON = frozenset((K.THEN, K.AND))

"""A way of lifting that has sets of its own beside those of a lift: each way is a lift, "squat 3x5 100, front 3x5 70".

heads   = lift sets { parting way sets }        the way heads its sets
follows = lift sets way { parting sets way }    each way stands behind its sets: "bench 60x8 close grip, 70x5 normal"
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.catalogue.catalogue import Catalogue
from engine.reading.entries.names import ALL_WORDS, EQUIPMENT, of_equipment, of_the_lift
from engine.reading.marks.grips import is_a_grip
from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, kinds_in_order, places_of
from engine.values.exercise import Equipment
from engine.values.ids import ExerciseName

WAYS = frozenset((K.VARIANT, K.JOINT, K.NOTE, K.PAUSE, K.BAR, *EQUIPMENT))
USUAL = frozenset(("usualway",))
AHEAD = frozenset((K.COMMA, K.THEN, K.AND, K.OPEN, K.STOP, K.SLASH, K.PLUS, K.NUMBER, K.KG, K.LB))
REMARKS = frozenset((K.NOTE, K.PAUSE))
AHEAD_OF_A_REMARK = frozenset((K.COMMA, K.THEN, K.AND, K.STOP))
BEHIND = frozenset((None, K.COMMA, K.THEN, K.AND, K.STOP, K.CLOSE, K.NUMBER))
SETS_TOLD = frozenset((K.TIMES, K.FOR))
ENDS = WAYS | {K.NAME, K.CLOSE}


def with_ways_of_own_sets(pieces: list[Piece], catalogue: Catalogue) -> list[Piece]:
    """The pieces, with each way that has whole sets of its own made the name of its lift."""
    out: list[Piece] = []
    start = 0
    walk = Heads(catalogue)
    for end in (*places_of(K.LINE, kinds_in_order(pieces)), len(pieces)):
        line = pieces[start:end]
        out += _behind_their_sets(line, catalogue) or walk.through(line, pieces[end + 1 : end + 4])
        out += pieces[end : end + 1]
        start = end + 1
    return out


class Heads:
    """The walk over lines whose ways stand ahead of their sets; a line goes on with the lift of the one before."""

    def __init__(self, catalogue: Catalogue) -> None:
        self.catalogue = catalogue
        self.lift: Piece | None = None
        self.names: tuple[ExerciseName, ...] = ()
        self.told = False

    def through(self, line: list[Piece], below: Sequence[Piece]) -> list[Piece]:
        """The line, with each way that heads sets of another lift than those before it made a name.

        Shape: `below` are the first pieces of the next line, whose sets a way alone on its line heads.
        """
        kinds = kinds_in_order(line)
        if WAYS.isdisjoint(kinds):
            return self._without_ways(line, kinds)
        out = list(line)
        for at, piece in enumerate(line):
            if piece.kind is K.NAME:
                self.lift, self.names, self.told = piece, piece.names, False
            elif piece.kind is K.NUMBER:
                self.told = self.told or _tells_sets(line, at)
            elif piece.kind in WAYS and self.lift is not None:
                parting = AHEAD_OF_A_REMARK if piece.kind in REMARKS else AHEAD
                heads = _heads_sets(line, at) and (at == 0 or line[at - 1].kind in parting)
                out[at] = self._way(piece, self.lift, heads=heads or (len(line) == 1 and _tells_sets(below, 0)))
        return out

    def _without_ways(self, line: list[Piece], kinds: list[K]) -> list[Piece]:
        if names := places_of(K.NAME, kinds):
            self.lift, self.names, self.told = line[names[-1]], line[names[-1]].names, False
        self.told = self.told or not SETS_TOLD.isdisjoint(kinds) or kinds.count(K.NUMBER) > 2
        return line

    def _way(self, way: Piece, lift: Piece, *, heads: bool) -> Piece:
        if self.told and not heads:
            return way
        names = _with_way(way, lift, self.catalogue)
        if not names or (self.told and names == self.names and way.kind is not K.BAR):
            return way
        self.names = names
        if not self.told:
            return way  # "squat: front 3x5 70, back 3x5 100"
        self.told = False
        return way._replace(kind=K.NAME, names=names)


def _behind_their_sets(line: list[Piece], catalogue: Catalogue) -> list[Piece] | None:
    """The line, where it ends with a way, and two and more stand behind sets, not all of them of one lift."""
    first = next((at for at, piece in enumerate(line) if piece.kind is K.NAME), None)
    if first is None or line[-1].kind not in ENDS:
        return None
    lift = line[first]
    out: list[Piece] = line[: first + 1]
    lifts: list[tuple[ExerciseName, ...]] = []
    told = False
    for at in range(first + 1, len(line)):
        piece, follows = line[at], kind_at(line, at + 1)
        told = told or _tells_sets(line, at)
        names = _with_way(piece, lift, catalogue)
        if names and not (told and line[at - 1].kind is K.NUMBER and follows in BEHIND):
            return None
        if not names and piece.kind is K.NAME:
            return None
        out.append(piece._replace(kind=K.NAME, names=names) if names else piece)
        if names:
            lifts.append(names)
        if names and follows is K.NUMBER:
            out.append(Piece(K.COMMA, piece.end, piece.end, True, ","))
    if len(set(lifts)) < 2:
        return None
    out[first] = lift._replace(names=lifts[0])
    return out


def _heads_sets(line: Sequence[Piece], at: int) -> bool:
    """Whether sets stand behind the way, with or without a sign between: "front: 80x5", "front @70 3x5"."""
    return _tells_sets(line, at + 2 if kind_at(line, at + 1) in (K.COLON, K.AT, K.DASH) else at + 1)


def _tells_sets(pieces: Sequence[Piece], at: int) -> bool:
    """Whether sets begin there: "80x5", "30 10 10", "70 3x5"."""
    kinds = [piece.kind for piece in pieces[at : at + 3]]
    if kinds[:1] != [K.NUMBER]:
        return False
    return len(kinds) == 3 and (kinds[1] in (K.TIMES, K.FOR) or kinds[1:] in TOLD_ON)


TOLD_ON = ([K.NUMBER, K.NUMBER], [K.NUMBER, K.TIMES])


def _with_way(way: Piece, lift: Piece, catalogue: Catalogue) -> tuple[ExerciseName, ...]:
    """The lifts that this one is in that way; none where no such lift is known."""
    if way.kind is K.BAR:
        return _with_a_bar(lift, catalogue)
    if way.kind in EQUIPMENT:
        return of_equipment(lift.names, way.kind, lift.text, catalogue)
    if way.kind is K.NAME:
        plain, movement = set(lift.text.split()), lift.text.split()[-1]
        closer = tuple(name for name in way.names if plain <= set(name.replace("-", " ").split()))
        return closer if movement not in way.text.split() else ()
    if way.kind is K.NOTE and is_cued(way.text, USUAL):
        return _bare(lift, catalogue)
    if way.kind not in WAYS or not lift.names or (way.kind is K.NOTE and is_a_grip(way.text)):
        return ()  # a grip that was made a remark of another movement stays one
    owners = of_the_lift(way.text, lift.names[0], catalogue)
    return owners if ALL_WORDS.isdisjoint(lift.text.split()) or _held_alike(owners, lift, catalogue) else ()


def _held_alike(some: Sequence[ExerciseName], lift: Piece, catalogue: Catalogue) -> bool:
    """ "single arm" behind a cable row is no dumbbell row."""
    held = {catalogue.exercises[name].equipment for name in lift.names if name in catalogue.exercises}
    return all(catalogue.exercises[name].equipment in held for name in some)


def _with_a_bar(lift: Piece, catalogue: Catalogue) -> tuple[ExerciseName, ...]:
    """The bar of a cable is no load, "pushdown 25 12 12 10, bar 30 10 10"; behind dumbbells it is another lift."""
    held = {catalogue.exercises[name].equipment for name in lift.names if name in catalogue.exercises}
    if held == {Equipment.CABLE}:
        return _bare(lift, catalogue)
    return of_equipment(lift.names, K.BARBELL, lift.text, catalogue) if held == {Equipment.DUMBBELL} else ()


def _bare(lift: Piece, catalogue: Catalogue) -> tuple[ExerciseName, ...]:
    """The lift by the last word of its name: "close grip bench" is a bench, "rope pushdown" a pushdown."""
    found = [catalogue.owners(word) for word in reversed(lift.text.split())]
    others = [owners for owners in found if owners and owners != lift.names and _held_alike(owners, lift, catalogue)]
    return others[0] if others else lift.names

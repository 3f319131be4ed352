"""Ways that head sets of their own: "squat 3x5 100, front 3x5 70"; a line goes on with the lift of the one before.

heads = lift sets { parting way sets }
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.catalogue.catalogue import Catalogue
from engine.reading.entries.way_of_the_last import WORN
from engine.reading.entries.ways import (
    SIDEWAYS,
    WAYS,
    is_a_remark,
    is_held_from_the_floor,
    is_of_the_body,
    lifts_with,
    tells_a_way,
    tells_sets,
    unlike_lifts_with,
)
from engine.reading.entries.ways_behind_sets import BEHIND
from engine.reading.marks.grips import is_a_grip
from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import (
    AGAIN_OR_SO,
    BEHIND_OR_AHEAD,
    MOST_SETS,
    WAY_OR_KIT,
    Piece,
    Role,
    kinds_in_order,
    places_in,
    places_of,
)
from engine.values.exercise import Measure
from engine.values.ids import ExerciseName

AHEAD = frozenset((K.COMMA, K.THEN, K.AND, K.OPEN, K.STOP, K.SLASH, K.PLUS, K.DASH, K.NUMBER, K.KG, K.LB))
REMARKS = frozenset((K.NOTE, K.PLAIN, K.PAUSE, K.EACH, K.DENY))
AHEAD_OF_A_REMARK = frozenset((K.COMMA, K.THEN, K.AND, K.STOP))
ENDING_REPS = BEHIND - {K.NUMBER}
AHEAD_OF_A_WAY = AHEAD_OF_A_REMARK | {K.NUMBER}
UNPAUSED = "unpaused"
SETS_TOLD = frozenset((K.TIMES, K.FOR))
HEADING = WAYS | {K.NAME, K.NUMBER}


class Heads:
    """The walk over lines whose ways stand ahead of their sets; a line goes on with the lift of the one before."""

    def __init__(self, catalogue: Catalogue) -> None:
        self.catalogue = catalogue
        self.lift: Piece | None = None
        self.names: tuple[ExerciseName, ...] = ()
        self.told = False
        self.way_above = False

    def past(self, line: list[Piece], named: list[Piece]) -> list[Piece]:
        """The line, whose ways stand behind their sets and were named; it goes on with its lift."""
        kinds = kinds_in_order(line)
        self.without_ways(line, kinds)
        self.way_above = K.NAME not in kinds
        return named

    def again(self, line: list[Piece]) -> list[Piece]:
        """The lift, named again ahead of a line of sets below one that told its way: "squat // 80x5 front // 100x5"."""
        ends, self.way_above = self.way_above, False
        if not ends or self.lift is None or not tells_sets(line, 0):
            return []
        return [self.lift._replace(start=line[0].start, end=line[0].start, told=AGAIN_OR_SO)]

    def through(self, line: list[Piece], below: Sequence[Piece]) -> list[Piece]:
        """The line, with each way that heads sets of another lift than those before it made a name.

        Shape: `below` are the first pieces of the next line, whose sets a way alone on its line heads.
        """
        kinds = kinds_in_order(line)
        if WAYS.isdisjoint(kinds) and kinds.count(K.NAME) < 1 + (self.lift is None):
            return self.without_ways(line, kinds)
        out = list(line)
        for at in places_in(HEADING, kinds):
            piece, kind = line[at], kinds[at]
            if kind is K.NAME and self.told:
                out[at] = piece = self._read_name(line, at)
            if piece.kind is K.NAME:
                self.lift, self.names, self.told = piece, piece.names, False
            elif kind is K.NUMBER:
                self.told = self.told or tells_sets(line, at) or self._is_a_set(piece)
            elif kind in WAYS and self.lift is not None:
                out[at] = self._told_at(line, at, self.lift, below)
        return out

    def _read_name(self, line: list[Piece], at: int) -> Piece:
        """The name there, of the lift in hand where it says how that is done and heads sets, or ends reps."""
        name, lift = line[at], self.lift
        if lift is None or (at and line[at - 1].kind not in AHEAD_OF_A_WAY):
            return name
        if at and line[at - 1].kind is K.NUMBER:
            return name._replace(kind=K.NOTE, names=()) if self._is_said_of_reps(line, at, lift) else name
        heads = kind_at(line, at + 1) is K.NUMBER and tells_a_way(name, lift, self.catalogue)
        return self._named_way(name) if heads else name

    def _told_at(self, line: list[Piece], at: int, lift: Piece, below: Sequence[Piece]) -> Piece:
        """The way there, made a name where it heads sets."""
        way = line[at]
        parting = AHEAD_OF_A_REMARK if way.kind in REMARKS else AHEAD
        heads = _heads_sets(line, at) or (way.kind is K.EACH and _heads_a_time(line, at))
        if way.kind is K.DENY and kind_at(line, at + 1) is K.PAUSE:
            way, heads = way._replace(text=UNPAUSED), _heads_sets(line, at + 1)
        ahead = at - 1 - (way.kind is K.BAR and kind_at(line, at - 1) is K.FILLER)  # "straight bar 35x8"
        heads = heads and (at == 0 or kind_at(line, ahead) in parting)
        told = self._way(way, lift, heads=heads or (len(line) == 1 and tells_sets(below, 0)))
        if told is way:
            return line[at]
        if told.kind is K.NAME and self._is_loaded(line, at, told, lift):
            return way._replace(kind=K.ALTERED)
        if told.told == WAY_OR_KIT and is_cued(way.text, WORN) and _is_heavier(line, at):
            self.told = True
            self.names = lift.names
            return way._replace(kind=K.NOTE)  # with a belt on
        either = told.kind is K.NAME and way.kind is K.VARIANT and _may_stand_behind(line, at)
        return told._replace(told=BEHIND_OR_AHEAD) if either else told

    def _is_loaded(self, line: list[Piece], at: int, way: Piece, lift: Piece) -> bool:
        """ "squat 100x5, single leg 20x8": a load, and no sets of a lift that is done with the body alone."""
        if is_of_the_body(lift, self.catalogue) or not is_of_the_body(way, self.catalogue):
            return False
        return kind_at(line, at + 1) is K.NUMBER and line[at + 1].value > MOST_SETS

    def _is_said_of_reps(self, line: list[Piece], at: int, lift: Piece) -> bool:
        """ "push ups 20 incline, 15 decline": a slope right behind the reps of a lift of the body."""
        if kind_at(line, at + 1) not in ENDING_REPS or is_a_grip(line[at].text):
            return False
        return is_of_the_body(lift, self.catalogue) and is_a_remark(line[at], lift, self.catalogue)

    def _named_way(self, name: Piece) -> Piece:
        """ "db bench 24x10, incline 20x10", "pulldown 50x10, close grip 60x8": that lift done so; where no such lift is
        known, the grip of a pull and the slope of a lift of the body are remarks.
        """
        lift = self.lift or name
        if names := lifts_with(name, lift, self.catalogue):
            return name._replace(names=names)
        if is_a_remark(name, lift, self.catalogue):
            return name._replace(kind=K.NOTE, names=())
        either = is_a_grip(name.text) and is_held_from_the_floor(lift, self.catalogue)
        return name._replace(names=(*lift.names, *name.names)) if either else name  # "deadlift 100x5, close grip 60x8"

    def _is_a_set(self, number: Piece) -> bool:
        """Whether a number alone is a set of the lift: "plank 60s", "push ups 20"."""
        if number.role in TIMES:
            return self._is_held()
        return number.role is Role.BARE and self.lift is not None and is_of_the_body(self.lift, self.catalogue)

    def _is_held(self) -> bool:
        """Whether the lift is held for a time."""
        known = [self.catalogue.exercises[name] for name in self.names if name in self.catalogue.exercises]
        return bool(known) and all(one.measure is Measure.TIME for one in known)

    def without_ways(self, line: list[Piece], kinds: list[K]) -> list[Piece]:
        """The line as it is; the next one goes on with its lift."""
        if names := places_of(K.NAME, kinds):
            self.lift, self.names, self.told = line[names[-1]], line[names[-1]].names, False
        self.told = self.told or not SETS_TOLD.isdisjoint(kinds) or kinds.count(K.NUMBER) > 2
        self.told = self.told or (kinds == [K.NUMBER] and self.lift is not None and self._is_a_set(line[0]))
        return line

    def _way(self, way: Piece, lift: Piece, *, heads: bool) -> Piece:
        if (self.told or way.kind is K.PLAIN) and not heads:
            return way
        names = lifts_with(way, lift, self.catalogue)
        if not names and self.told and way.kind is K.EACH and is_cued(way.text, SIDEWAYS):
            return way._replace(kind=K.PLAIN)  # "lunge 3x10 20, side 3x10 15": a lift that is not known
        if not names and self.told and (unlike := unlike_lifts_with(way, lift, self.catalogue)):
            self.told = False
            self.names = unlike
            return way._replace(kind=K.NAME, names=unlike, told=WAY_OR_KIT)
        if not names and self.told and way.kind is K.VARIANT and " " not in way.text:
            return way._replace(kind=K.ALTERED)  # "deadlift 100x5, front 60x8": of another lift; no "snatch grip"
        if not names or (self.told and names == self.names and way.kind is not K.BAR):
            return way
        self.names = names
        if not self.told:
            return way  # "squat: front 3x5 70, back 3x5 100"
        self.told = False
        worn = is_cued(way.text, WORN)  # "squat 100x5, belt 120x3": a belt squat, or with a belt on
        return way._replace(kind=K.NAME, names=names, told=WAY_OR_KIT if worn else 0)


def _may_stand_behind(line: Sequence[Piece], at: int) -> bool:
    """ "squat 80x5 front 100x5": between two sets with no sign, of which the second is heavier."""
    kinds = kinds_in_order(line[max(0, at - 4) : at + 4])
    between = kinds[:4] == [K.NAME, *PAIR] and kinds[5:] == PAIR
    return between and line[at - 3].value < line[at + 1].value


PAIR = [K.NUMBER, K.TIMES, K.NUMBER]


def _is_heavier(line: Sequence[Piece], at: int) -> bool:
    """ "squat 100x5, belt 120x3": the next set has no less load, and no more reps."""
    ahead, behind = _pair(line[:at][-PIECES_OF_A_SET:][::-1]), _pair(line[at + 1 : at + 1 + PIECES_OF_A_SET])
    if ahead is None or behind is None:
        return False
    return behind[0].value >= ahead[1].value and behind[1].value <= ahead[0].value


def _pair(pieces: Sequence[Piece]) -> list[Piece] | None:
    """The numbers of the first set, where they are two."""
    numbers: list[Piece] = []
    for piece in pieces:
        if numbers and piece.kind in AHEAD_OF_A_REMARK:
            break
        numbers += [piece] if piece.kind is K.NUMBER else []
    return numbers if len(numbers) == len(PAIR) - 1 else None


PIECES_OF_A_SET = 6


def _heads_a_time(line: Sequence[Piece], at: int) -> bool:
    """ "side 30s"."""
    return kind_at(line, at + 1) is K.NUMBER and line[at + 1].role in TIMES


TIMES = frozenset((Role.SECONDS, Role.PLURAL))


def _heads_sets(line: Sequence[Piece], at: int) -> bool:
    """Whether sets stand behind the way, with or without a sign between: "front: 80x5", "front @70 3x5"."""
    return tells_sets(line, at + 2 if kind_at(line, at + 1) in (K.COLON, K.AT, K.DASH) else at + 1)

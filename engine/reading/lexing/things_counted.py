"""Whether a word right behind a number says what it counts, or begins a remark behind a load or reps.

pair   = NUMBER "x" number THING                     "sumo 160x2 fingers went numb": the x wants its reps
load   = SETS ( "x" | "of" ) REPS number THING        "3x5 130 fingers went numb": so many fingers nobody has;
                                                     "3x8 60 people watching", "3x5 100 euro": asked;
                                                     "3x8 2 spotters", "pull ups 3x8 20 people": they are counted
list   = LOAD REPS REPS ... number THING             "60 8 8 7 fingers numb": one more of the list, or fingers: asked
single = LOAD [ "for" | "/" ] number THING            "60 8 fingers numb": the load wants its reps
"""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from enum import Enum

from engine.catalogue.catalogue import Catalogue
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, MOST_SETS, Piece, Role
from engine.values.exercise import Exercise, Loading, Pattern

FEW_THINGS, PEOPLE = frozenset(("fewthings",)), frozenset(("manythings",))
DISTANCES, HOURS = frozenset(("paced",)), frozenset(("hourly",))
MOST_THINGS = 20
"""More fingers, spotters or coffees nobody counts beside a set. Common practice, no source."""
MOST_HOURS = 24
FEWEST_IN_DOUBT = 10
"""So few people, minutes or steps are no load of a lift. Common practice, no source."""
HEAVIEST = 500
"""More kilograms nobody takes for a load. Common practice, no source."""
FEWEST_MINUTES = 3
"""Holds are told in fewer minutes. Common practice, no source."""
COUNTING_SETS = frozenset((K.SETS, K.TIMES_WORD, K.REPS))
MAY_COUNT = frozenset((K.FAR, K.MINUTES)) | COUNTING_SETS
SPAN_OF_TIME = K.HEADING
MOST_OF_A_LIST = 4
"""A load and its three sets, which are told in full. Common practice, no source."""
LISTING = frozenset((K.COMMA, K.SLASH))
ALIKE = (Decimal("0.5"), Decimal("1.5"))
"""What a number of a list is at least and at most, as a part of the one before it. Common practice, no source."""
FOR_DISTANCE = frozenset((Pattern.CARRY, Pattern.LUNGE, Pattern.EXPLOSIVE))


class Counted(Enum):
    """What the number before a word is."""

    __hash__ = object.__hash__

    THINGS = "so many of the things"
    OF_A_SET = "a part of a set, and the word begins a remark"
    EITHER = "one or the other"


class Place(Enum):
    """Where in a set line the number stands."""

    __hash__ = object.__hash__

    PAIR = "behind an x"
    LOAD = "behind sets x reps without a load"
    LIST = "behind other reps"
    SINGLE = "behind a load without reps"


def counted_by(piece: Piece, word: str, kind: K, out: Sequence[Piece], catalogue: Catalogue) -> Counted:
    """What the number is that stands behind these pieces, with this word right behind it."""
    place = _place_of(piece, out) if piece.role is Role.BARE else None
    if place is None:
        return Counted.THINGS
    if piece.value % 1:  # "3x8 62.5 people watching"
        return Counted.OF_A_SET if is_cued(word, FEW_THINGS | PEOPLE) else Counted.THINGS
    return _by_kind(piece, word, kind, place, out, _lift_of(out, catalogue))


def _by_kind(piece: Piece, word: str, kind: K, place: Place, out: Sequence[Piece], lift: Exercise | None) -> Counted:
    if kind in COUNTING_SETS:
        return _of_sets(piece, kind, place, out)
    if kind is SPAN_OF_TIME:
        return _in_a_list(piece, out) if place is Place.LIST and _goes_on(out) else Counted.THINGS
    walked = is_cued(word, DISTANCES) and (lift is None or lift.pattern in FOR_DISTANCE)
    few, many = is_cued(word, FEW_THINGS) and not walked, is_cued(word, PEOPLE)
    match place:
        case Place.PAIR:
            return _in_a_pair(piece, word, kind, out[-2].value, few or many, lift)
        case Place.SINGLE:
            return Counted.OF_A_SET if (few or many) and piece.value >= FEWEST_MINUTES else Counted.THINGS
        case Place.LIST:
            return Counted.OF_A_SET if few and piece.value > MOST_THINGS else _in_a_list(piece, out)
        case Place.LOAD:
            return _as_a_load(piece, word, kind, few, many, lift)


def _in_a_pair(piece: Piece, word: str, kind: K, ahead: Decimal, things: bool, lift: Exercise | None) -> Counted:
    if things or is_cued(word, HOURS):
        return Counted.OF_A_SET
    for_reps = lift is not None and lift.pattern not in FOR_DISTANCE
    if kind is K.MINUTES:
        return Counted.EITHER if for_reps and piece.value >= FEWEST_MINUTES else Counted.THINGS
    if is_cued(word, DISTANCES) and not for_reps:
        return Counted.THINGS
    return Counted.EITHER if ahead <= MOST_SETS else Counted.OF_A_SET


def _of_sets(piece: Piece, kind: K, place: Place, out: Sequence[Piece]) -> Counted:
    """ "pull ups 3x8 sets felt long", "60 8 8 7 sets felt long"; "60 8 5 sets felt good" counts them."""
    listed = place is Place.LIST and out[-1].kind is out[-2].kind is K.NUMBER and out[-2].value <= MOST_LOADED_REPS
    if place is Place.LOAD and piece.value > MOST_LOADED_REPS:
        return Counted.OF_A_SET
    if kind is K.REPS:
        return Counted.THINGS
    return Counted.EITHER if place is Place.PAIR or listed else Counted.THINGS


def _as_a_load(piece: Piece, word: str, kind: K, few: bool, many: bool, lift: Exercise | None) -> Counted:
    if few and piece.value > MOST_THINGS:
        return Counted.OF_A_SET
    if not FEWEST_IN_DOUBT < piece.value <= HEAVIEST or lift is None or lift.loading in UNLOADED:
        return Counted.THINGS
    if is_cued(word, HOURS):
        return Counted.EITHER if piece.value > MOST_HOURS else Counted.THINGS
    paced = is_cued(word, DISTANCES) and lift.pattern not in FOR_DISTANCE
    return Counted.EITHER if few or many or kind in NO_LOAD or paced else Counted.THINGS


NO_LOAD = frozenset((K.MINUTES, K.FAR))
UNLOADED = frozenset((Loading.BODY, Loading.BAND))


def _in_a_list(piece: Piece, out: Sequence[Piece]) -> Counted:
    before = out[-1] if out[-1].kind is K.NUMBER else out[-2]
    least, most = (before.value * part for part in ALIKE)
    return Counted.EITHER if least <= piece.value <= most else Counted.THINGS


def _goes_on(out: Sequence[Piece]) -> bool:
    """ "60 8 8 7 weeks off" may have a third set; "60 8 8 7 5 weeks out" has its three."""
    listed = [one.kind is K.NUMBER for one in out[-MOST_OF_A_LIST:]]
    return listed[-2:] == [True, True] and not all(listed)


def _place_of(piece: Piece, out: Sequence[Piece]) -> Place | None:
    """Where the number stands behind these pieces; None where no set line wants it."""
    kinds = [one.kind for one in out[-4:]]
    if kinds[-2:] == [K.NUMBER, K.TIMES]:
        return Place.PAIR
    if kinds[-2:] == [K.NUMBER, K.FOR]:
        return Place.SINGLE if out[-2].value > MOST_SETS else None
    if kinds[-1:] == [K.NUMBER]:
        if kinds[-3:-1] == [K.NUMBER, K.OF] and out[-3].role is Role.SETS:
            return Place.LOAD
        if kinds[-3:-1] == [K.NUMBER, K.TIMES]:
            unloaded = out[-3].value <= MOST_SETS and kinds[0] is not K.NUMBER
            return Place.LOAD if unloaded and out[-1].role is Role.BARE else None
        if out[-1].value > MOST_LOADED_REPS or out[-1].role is Role.LOAD:
            return Place.SINGLE if kinds[-2:-1] == [K.NAME] else None
        return Place.LIST if kinds[-2:-1] == [K.NUMBER] else None
    listed = piece.glued and len(kinds) > 1 and kinds[-1] in LISTING and kinds[-2] is K.NUMBER
    return (Place.LIST if out[-2].value <= MOST_LOADED_REPS else Place.SINGLE) if listed else None


def _lift_of(out: Sequence[Piece], catalogue: Catalogue) -> Exercise | None:
    """The lift that was named last."""
    for piece in reversed(out[-REACH:]):
        if piece.kind is K.NAME and piece.names:
            return catalogue.exercises.get(piece.names[0])
    return None


REACH = 12
"""Pieces of one lift's sets; further back another may be meant."""

"""The lifts that a lift is in some way: with other equipment, in another stance, on another bar, without its way."""

from __future__ import annotations

from collections.abc import Sequence

from engine.catalogue.catalogue import Catalogue
from engine.catalogue.catalogue import catalogue as all_lifts
from engine.reading.entries.equipment_told import TELLS_HOW
from engine.reading.entries.names import ALL_WORDS, EQUIPMENT, of_equipment
from engine.reading.entries.told_as_one import of_the_lift, plainly, together
from engine.reading.lexing.name_words import tells_a_pause
from engine.reading.marks.grips import GRIP, GRIPS, is_a_grip, moved_alike
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, is_one_word
from engine.values.exercise import Equipment, Loading, Pattern
from engine.values.ids import ExerciseName

WAYS = frozenset((K.VARIANT, K.JOINT, K.NOTE, K.PLAIN, K.PAUSE, K.BAR, K.EACH, K.DENY, *EQUIPMENT))
USUAL = frozenset(("usualway",))
FREE = frozenset(("freeweight",))
SIDEWAYS = frozenset(("sideways",))
WIDE = frozenset(("gripwide",))
NO_PAUSE = frozenset(("nopause",))
CUED = USUAL | FREE | GRIPS | NO_PAUSE
OF_ONE_SENSE = frozenset((K.EACH, K.DENY))
"""Kinds of words that hardly ever tell a way: "side", "free"."""
PULLS = frozenset((Pattern.VERTICAL_PULL, Pattern.HORIZONTAL_PULL))
MAY_BE_FREE = frozenset((Equipment.MACHINE, Equipment.SMITH_MACHINE, Equipment.BARBELL))
BARS = frozenset((Equipment.BARBELL, Equipment.EZ_BAR))


NOTED = frozenset((K.NOTE, K.PLAIN))


def tells_sets(pieces: Sequence[Piece], at: int) -> bool:
    """Whether sets begin there: "80x5", "30 10 10", "70 3x5"."""
    kinds = [piece.kind for piece in pieces[at : at + 3]]
    if kinds[:1] != [K.NUMBER]:
        return False
    return len(kinds) == 3 and (kinds[1] in (K.TIMES, K.FOR) or kinds[1:] in TOLD_ON)


TOLD_ON = ([K.NUMBER, K.NUMBER], [K.NUMBER, K.TIMES])


def lifts_with(way: Piece, lift: Piece, catalogue: Catalogue) -> tuple[ExerciseName, ...]:
    """The lifts that this one is in that way; none where no such lift is known."""
    if way.kind is K.BAR:
        return _with_a_bar(lift, catalogue)
    if way.kind in EQUIPMENT:
        return of_equipment(lift.names, way.kind, lift.text, catalogue)
    if way.kind is K.NAME:
        return _named_more_closely(way, lift, catalogue)
    if way.kind not in WAYS or not lift.names:
        return ()
    if way.kind in OF_ONE_SENSE:
        return _sideways_or_free(way, lift, catalogue)
    if way.kind in NOTED and (is_cued(way.text, CUED) or is_a_grip(way.text)):
        return _as_noted(way, lift, catalogue)
    if way.kind is K.NOTE and not is_one_word(way):
        return ()  # "back to back"
    owners = of_the_lift(way.text, lift.names[0], catalogue) or _told_together(way, lift, catalogue)
    return owners if ALL_WORDS.isdisjoint(lift.text.split()) or _held_alike(owners, lift, catalogue) else ()


def _told_together(way: Piece, lift: Piece, catalogue: Catalogue) -> tuple[ExerciseName, ...]:
    """The lifts known by both words in the writer's language: "sentadilla 100x5, 80x5 frontal"."""
    words = lift.text.split()
    heads = [" ".join(words[:end]) for end in range(len(words), 0, -1)]
    for said in heads:
        if owners := together(said, way.text, catalogue):
            return tuple(name for name in owners if _held_alike((name,), lift, catalogue)) or owners
    return ()


def tells_a_way(name: Piece, lift: Piece, catalogue: Catalogue) -> bool:
    """Whether a name may only say how the lift is done, although it names one or several by itself: "incline"."""
    if not lift.names or name.text in lift.names[0].split():
        return False  # "bench 80x5, press 40x8"
    alike = len(name.names) > 1 and moved_alike(lift.names, name.names, catalogue)
    return alike or name.text in TELLS_HOW or is_a_grip(name.text)


def unlike_lifts_with(way: Piece, lift: Piece, catalogue: Catalogue) -> tuple[ExerciseName, ...]:
    """The lifts that are known by that way and held otherwise: "barbell row 60x8, seated 50x12"."""
    if way.kind not in (K.VARIANT, K.NOTE, K.JOINT) or not lift.names or is_cued(way.text, CUED):
        return ()
    return of_the_lift(way.text, lift.names[0], catalogue)


def _named_more_closely(way: Piece, lift: Piece, catalogue: Catalogue) -> tuple[ExerciseName, ...]:
    """ "deadlift 140x5, 120x5 sumo"; of those that are named so, the ones with the same in the hands."""
    movement = lift.text.split()[-1]
    closer = named_so(way, lift.text, lift.names)
    if not closer and tells_a_way(way, lift, catalogue):
        closer = of_the_lift(way.text, lift.names[0], catalogue)
        closer = closer or _told_together(way, lift, catalogue)
        if is_a_grip(way.text) and not moved_alike(lift.names, closer, catalogue):
            return ()  # "barbell close grip" is no row
    alike = tuple(name for name in closer if _held_alike((name,), lift, catalogue))
    return (alike or closer) if movement not in way.text.split() else ()


def named_so(way: Piece, phrase: str, lifts: Sequence[ExerciseName]) -> tuple[ExerciseName, ...]:
    """Those lifts of a name that hold all words of the one before it, or what the plain lift is called where that one
    is of another language: "kreuzheben 3x5 100, sumo", and no "rdl 3x8 90, sumo".
    """
    plain, told = set(words_of(phrase)), set(words_of(way.text))
    closer = tuple(name for name in way.names if plain <= set(words_of(name)))
    if closer or not lifts or not plain.isdisjoint(word for name in lifts for word in words_of(name)):
        return closer
    known = plainly(lifts[0], all_lifts()).split()
    alike = tuple(name for name in way.names if set(known) <= set(name.split()) and told <= set(words_of(name)))
    owners = () if alike else together(phrase, way.text, all_lifts())
    return alike or tuple(name for name in way.names if name in owners)


def named_closer(way: Piece, phrase: str, lifts: Sequence[ExerciseName]) -> tuple[ExerciseName, ...]:
    """The same, or the lifts known by both together where the way names lifts of that movement by itself: "press banca
    3x5 80 inclinado", and no "bench 3x8 60, dips".
    """
    closer = named_so(way, phrase, lifts)
    return closer or (together(phrase, way.text, all_lifts()) if moved_alike(lifts, way.names, all_lifts()) else ())


def words_of(name: str) -> list[str]:
    return name.replace("-", " ").split()


def _as_noted(way: Piece, lift: Piece, catalogue: Catalogue) -> tuple[ExerciseName, ...]:
    """ "normal", "free weights", "wide grip", "close grip"."""
    if is_cued(way.text, USUAL):
        return _bare(lift, catalogue)
    if is_cued(way.text, NO_PAUSE):
        return _without_a_pause(lift, catalogue)
    if is_cued(way.text, FREE):
        return _with_a_free_bar(lift, catalogue)
    return _with_a_grip(way, lift, catalogue)


def _sideways_or_free(way: Piece, lift: Piece, catalogue: Catalogue) -> tuple[ExerciseName, ...]:
    """ "plank 3x60s, side 3x30s"; "bench smith 60x8, free 70x5"; "squat pause 80x5, no pause 100x5"."""
    if way.kind is K.DENY and is_cued(way.text, NO_PAUSE):
        return _without_a_pause(lift, catalogue)
    if way.kind is K.DENY:
        return _with_a_free_bar(lift, catalogue) if is_cued(way.text, FREE) else ()
    if not is_cued(way.text, SIDEWAYS):
        return ()
    return catalogue.owners(f"{way.text} {lift.text}") or catalogue.owners(f"{lift.text} {way.text}")


def _without_a_pause(lift: Piece, catalogue: Catalogue) -> tuple[ExerciseName, ...]:
    """The lift, which was told with a pause, without it."""
    return _bare(lift, catalogue) if any(map(tells_a_pause, lift.text.split())) else lift.names


def _with_a_free_bar(lift: Piece, catalogue: Catalogue) -> tuple[ExerciseName, ...]:
    """The lift as it is done with a barbell, behind sets of it on a machine."""
    held = {catalogue.exercises[name].equipment for name in lift.names if name in catalogue.exercises}
    return of_equipment(lift.names, K.BARBELL, lift.text, catalogue) if held <= MAY_BE_FREE else ()


def _with_a_grip(way: Piece, lift: Piece, catalogue: Catalogue) -> tuple[ExerciseName, ...]:
    """The lift that is known by that grip; a wide one makes no other lift of it where none is known."""
    grip = way.text if is_a_grip(way.text) else f"{way.text} {GRIP}"
    owners = of_the_lift(grip, lift.names[0], catalogue) or of_the_lift(way.text, lift.names[0], catalogue)
    owners = owners or _told_together(way, lift, catalogue)
    return owners or (_bare(lift, catalogue) if is_cued(way.text, WIDE) else ())


def _held_alike(some: Sequence[ExerciseName], lift: Piece, catalogue: Catalogue) -> bool:
    """ "single arm" behind a cable row is no dumbbell row; a barbell curl and a reverse curl are held alike."""
    held = {catalogue.exercises[name].equipment for name in lift.names if name in catalogue.exercises}
    held = held | BARS if held & BARS else held
    return all(catalogue.exercises[name].equipment in held for name in some)


def is_a_pull(lift: Piece, catalogue: Catalogue) -> bool:
    """Whether a grip may well be one of it."""
    known = [catalogue.exercises[name].pattern for name in lift.names if name in catalogue.exercises]
    return bool(known) and set(known) <= PULLS


def is_held_from_the_floor(lift: Piece, catalogue: Catalogue) -> bool:
    """Whether a grip may be one of it although no lift is known by it: of a deadlift, and of no squat."""
    known = [catalogue.exercises[name].pattern for name in lift.names if name in catalogue.exercises]
    return bool(known) and set(known) == {Pattern.HINGE}


def is_of_the_body(lift: Piece, catalogue: Catalogue) -> bool:
    """Whether the lift is done with the body alone, or with weight added to it."""
    known = [catalogue.exercises[name].loading for name in lift.names if name in catalogue.exercises]
    return bool(known) and set(known) == {Loading.BODY}


def is_a_remark(name: Piece, lift: Piece, catalogue: Catalogue) -> bool:
    """Whether a grip or a slope names no lift of its own beside this one: of a pull, or of a lift of the body."""
    if is_a_grip(name.text):
        return is_a_pull(lift, catalogue)
    return name.text in TELLS_HOW and is_of_the_body(lift, catalogue)


def _with_a_bar(lift: Piece, catalogue: Catalogue) -> tuple[ExerciseName, ...]:
    """The bar of a cable is no load, "pushdown 25 12 12 10, bar 30 10 10"; behind dumbbells it is another lift."""
    held = {catalogue.exercises[name].equipment for name in lift.names if name in catalogue.exercises}
    if held == {Equipment.CABLE}:
        return _bare(lift, catalogue)
    open_name = len(lift.names) > 1 and Equipment.BARBELL in held  # "curl 30x10 ez, 25x10 straight bar"
    told = open_name or held in OTHER_THAN_A_BAR
    return of_equipment(lift.names, K.BARBELL, lift.text, catalogue) if told else ()


OTHER_THAN_A_BAR = ({Equipment.DUMBBELL}, {Equipment.EZ_BAR})


def _bare(lift: Piece, catalogue: Catalogue) -> tuple[ExerciseName, ...]:
    """The lift by the last word of its name: "close grip bench" is a bench, "rope pushdown" a pushdown."""
    found = [catalogue.owners(word) for word in reversed(lift.text.split())]
    others = [owners for owners in found if owners and owners != lift.names and _held_alike(owners, lift, catalogue)]
    return others[0] if others else lift.names

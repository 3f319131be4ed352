"""Equipment that a remark speaks of, where no lift was done with it: "bench 3x8 60, dumbbells were all taken".

taken = EQUIPMENT word* TAKEN       in one clause without a number; "taken", "broken", "busy"
Right behind the numbers of a set it is asked what was meant; "4 of 6 machines are broken" counts them.
      | LIFT ( "was" | "is" ) TAKEN     ahead of another lift: "bench was busy so i did 3x10 dips"
      | LIFT number [ "was" ] TAKEN     beside another lift: "bench 3 was taken"
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.cues import any_cued, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role, kinds_in_order, places_of, texts_in_order

SPOKEN_OF = frozenset((K.DUMBBELL, K.BARBELL, K.CABLE, K.MACHINE, K.KETTLEBELL, K.VARIANT))
ENDS = frozenset((K.COMMA, K.STOP, K.LINE, K.OPEN, K.CLOSE, K.COLON, K.DASH, K.THEN, K.NUMBER, K.NAME))
TAKEN = frozenset(("taken",))
REACH = 4
REMARKING = frozenset((K.PLAIN, K.UNRELATED, K.BY, K.OTHERS, K.STORY, K.SETTING))


def without_equipment_taken(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with equipment that was not to be had, and a limb that is spoken of, made a remark."""
    out = list(pieces)
    for at, piece in enumerate(pieces):
        if piece.kind not in SPOKEN_OF:
            continue
        if _was_taken(pieces, at):
            out[at] = piece._replace(kind=_said_behind(pieces, at))
        elif _is_a_limb_spoken_of(pieces, at):
            out[at] = piece._replace(kind=K.NOTE)
    return out


def _was_taken(pieces: list[Piece], at: int) -> bool:
    if at + 1 < len(pieces) and pieces[at + 1].kind is K.SETTING:
        return True  # "the dumbbell rack is a mess"
    for behind in pieces[at + 1 : at + 1 + REACH]:
        if behind.kind in ENDS:
            return False
        if is_cued(behind.text, TAKEN):
            return True
    return False


def _said_behind(pieces: list[Piece], at: int) -> K:
    """What it is where it was taken: a remark; behind a number it may be counted, and behind a lift be its own."""
    before = pieces[at - 1].kind if at else None
    if before is K.NAME:
        return pieces[at].kind
    if before is not K.NUMBER:
        return K.NOTE
    crossed = any(piece.kind is K.TIMES for piece in pieces[max(0, at - REACH) : at])
    return K.UNCLEAR if crossed or (at > 1 and pieces[at - 2].kind is K.NUMBER) else pieces[at].kind


def without_lifts_taken(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with the lifts ahead of another one whose place was taken made remarks."""
    if not any_cued(texts_in_order(pieces), TAKEN):
        return pieces
    names = places_of(K.NAME, kinds_in_order(pieces))
    out = list(pieces)
    for at in names:
        taken = _numbered_one_taken(pieces, at) or (_place_of_taken(pieces, at) if at != names[-1] else 0)
        if taken:
            out[at : taken + 1] = [piece._replace(kind=K.NOTE, names=()) for piece in pieces[at : taken + 1]]
    return out


def _numbered_one_taken(pieces: list[Piece], at: int) -> int:
    """Where the word stands that says that "bench 3" was not to be had; 0 where no such is told of."""
    number = pieces[at + 1] if at + 2 < len(pieces) else None
    if number is None or number.kind is not K.NUMBER or number.role is not Role.BARE or number.value > MOST_NUMBERED:
        return 0
    taken = at + 2 + is_cued(pieces[at + 2].text, WAS)
    return taken if taken < len(pieces) and is_cued(pieces[taken].text, TAKEN) else 0


MOST_NUMBERED = 30
"""Benches and racks of a gym are numbered so far. Common practice, no source."""


def _place_of_taken(pieces: list[Piece], at: int) -> int:
    """Where the word stands that says that the lift at this place was not to be had; 0 where it was."""
    was = False
    for place in range(at + 1, min(at + 1 + REACH, len(pieces) - 1)):
        piece, behind = pieces[place], pieces[place + 1]
        if was and is_cued(piece.text, TAKEN):
            ends = behind.kind in (K.FILLER, K.AND, *ENDS) and behind.kind is not K.NUMBER
            return place if ends and not is_cued(behind.text, UP_TO) else 0  # "was down to 80x5", "was dead slow"
        was = was or is_cued(piece.text, WAS)
        if piece.kind in ENDS or not (piece.kind in BESIDE_IT or is_cued(piece.text, WAS)):
            return 0
    return 0


WAS, UP_TO = frozenset(("was", "were", "is", "are")), frozenset(("upto",))
BESIDE_IT = frozenset((K.FILLER, K.SETTING, K.PLAIN, K.MACHINE, K.BAR))


def is_talked_of(pieces: Sequence[Piece], at: int) -> bool:
    """Whether a remark begins with the equipment at this place, so that it is open what was lifted with it."""
    if _is_linked(pieces, at):
        return False
    if at > 1 and pieces[at - 1].kind is K.PLAIN and pieces[at - 2].kind in ENDS - {K.NUMBER, K.NAME}:
        return True  # "bench 80x8, rowing machine before"
    behind, said = at + 1, False
    while behind < len(pieces) and (pieces[behind].kind is K.FILLER or is_cued(pieces[behind].text, WAS)):
        said = said or is_cued(pieces[behind].text, WAS)
        behind += 1
    if behind == len(pieces):
        return said
    return pieces[behind].kind in REMARKING or (said and pieces[behind].kind is not K.NUMBER)


def is_followed_by_words(pieces: Sequence[Piece], told: K) -> bool:
    """Whether a word stands right behind the equipment, as in a remark."""
    kinds = [piece.kind for piece in pieces]
    behind = kinds.index(told) + 1 if told in kinds else len(kinds)
    return behind < len(kinds) and kinds[behind] in (K.NOTE, K.PLAIN, K.UNRELATED)


def _is_linked(pieces: Sequence[Piece], at: int) -> bool:
    """ "on the machine", "with dumbbells", and not "3x8 60, the machine squeaks"."""
    if at and is_cued(pieces[at - 1].text, ARTICLE):
        at -= 1
    return at > 0 and pieces[at - 1].kind in LINKING


ARTICLE, LIMB = frozenset(("the",)), frozenset(("limb",))
LINKING = frozenset((K.WITH, K.FILLER, K.AT, K.FOR, K.EACH))


def _is_a_limb_spoken_of(pieces: Sequence[Piece], at: int) -> bool:
    """ "3x10 50, one arm felt weak": of an arm, and no lift of one arm; "one arm at a time" is."""
    limb = pieces[at].kind is K.VARIANT and is_cued(pieces[at].text.split()[-1], LIMB)
    return limb and at + 1 < len(pieces) and is_cued(pieces[at + 1].text, SPEAKING)


SPEAKING = WAS | {"felt", "seemed", "moved"}

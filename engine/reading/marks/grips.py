"""A grip that is the short name of one lift, said of another: "pulldown 60 3x10, then 50 3x12 close grip"."""

from __future__ import annotations

from collections.abc import Sequence

from engine.catalogue.catalogue import Catalogue
from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, first_word
from engine.values.exercise import Pattern
from engine.values.ids import ExerciseName

GRIP = "grip"


def with_grips(pieces: list[Piece], catalogue: Catalogue) -> list[Piece]:
    """The pieces, with each grip behind the numbers of a lift of another movement than its own made a remark."""
    out: list[Piece] = []
    before: Piece | None = None
    for at, piece in enumerate(pieces):
        if before is not None and _is_of_another_movement(pieces, at, before, catalogue):
            if owners := catalogue.owners(f"{piece.text} {before.text}") if _is_headed(pieces, at, before) else ():
                out[at - 2] = before._replace(names=owners)  # "pulldown, close grip 50x8"
            out.append(piece._replace(kind=K.NOTE, names=()))
            continue
        before = piece if piece.kind is K.NAME else before
        out.append(piece)
    return out


def _is_of_another_movement(pieces: list[Piece], at: int, before: Piece, catalogue: Catalogue) -> bool:
    piece = pieces[at]
    if piece.kind is not K.NAME or not is_a_grip(piece.text) or not _goes_on(pieces, at, before):
        return False
    return not moved_alike(before.names, piece.names, catalogue)


def moved_alike(some: Sequence[ExerciseName], others: Sequence[ExerciseName], catalogue: Catalogue) -> bool:
    """Whether some of each have one movement, by pattern and last word of the name: a pulldown is no pull-up."""
    return not _movements(some, catalogue).isdisjoint(_movements(others, catalogue))


def _movements(names: Sequence[ExerciseName], catalogue: Catalogue) -> set[tuple[Pattern, str]]:
    known = [catalogue.exercises[name] for name in names if name in catalogue.exercises]
    return {(one.pattern, str(one.name).split()[-1]) for one in known}


def _goes_on(pieces: list[Piece], at: int, before: Piece) -> bool:
    """Whether the grip stands right behind numbers or the lift, or that was told with a grip of its own."""
    told = is_cued(first_word(before), GRIPS) and pieces[at - 1].kind in PARTING
    alone = pieces[at - 1].kind in BEFORE_A_REMARK and kind_at(pieces, at + 1) in ENDS
    return at > 0 and (pieces[at - 1].kind is K.NUMBER or told or alone or _is_headed(pieces, at, before))


def _is_headed(pieces: list[Piece], at: int, before: Piece) -> bool:
    """ "barbell row, close grip 50x8": the lift stands right in front, with a sign between."""
    return at > 1 and pieces[at - 2] is before and pieces[at - 1].kind in BEHIND_A_LIFT


BEHIND_A_LIFT = frozenset((K.COMMA, K.COLON, K.DASH))
BEFORE_A_REMARK = frozenset((K.COMMA, K.OPEN, K.STOP, K.DASH))
ENDS = frozenset((None, K.COMMA, K.CLOSE, K.STOP, K.LINE))
PARTING = frozenset((K.COMMA, K.THEN, K.AND, K.LINE, K.STOP, K.SLASH))
GRIPS = frozenset(("gripnarrow", "gripwide"))


def is_a_grip(name: str) -> bool:
    """Whether a name tells a grip and nothing else: "close grip"."""
    words = name.split()
    return len(words) == 2 and words[-1] == GRIP

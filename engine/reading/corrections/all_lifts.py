"""Other equipment for the lifts of the latest message together: "did both with dumbbells", "all of those were cables".

"Those were dumbbells" behind two lifts may be of the last or of both: where both are known so, nothing is changed, and
which is asked for. A word for both or all settles it.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from engine.reading.corrections.correcting import Told
from engine.reading.corrections.names import with_name
from engine.reading.corrections.parts import is_all, is_be
from engine.reading.corrections.renaming import NewName, renamed
from engine.reading.entries.names import EQUIPMENT
from engine.reading.latest_sets import last_message, two_latest
from engine.reading.values import Correction
from engine.reading.words.cues import any_cued, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece
from engine.values.ids import ExerciseName
from engine.values.sets import SetRecord

AROUND = frozenset((K.FILLER, K.WITH, K.OF, K.FOR, K.COMMA, K.STOP, K.SETS, K.BOTH, K.ALTERED))
THOSE = frozenset(("those",))
LITTLE = frozenset(("those", "that", "tookup", "did", "objects"))


class OfWhichLift(ValueError):
    """The words may be of one of the lifts or of all."""


def all_otherwise(told: Told) -> Correction | None:
    """All lifts of the latest message, or of the latest two for "both", with the equipment told.

    Errors: OfWhichLift where "those" may be one lift's or all, and where one of all is not known so.
    """
    manner = _equipment(told)
    group = _group(told) if manner else []
    lifts = list(dict.fromkeys(record.done.exercise for record in group))
    if len(lifts) < 2:
        return None
    new = {lift: _named_so(lift, manner, told) for lift in lifts}
    if not _says_all(told):
        if sum(one is not None for one in new.values()) > 1:
            raise OfWhichLift
        return None
    if any(one is None and not _is_so(lift, manner, told) for lift, one in new.items()):
        raise OfWhichLift
    return _renamed(told, group, new)


def leaves_open_which(told: Told) -> bool:
    """Whether the words are of other equipment, and do not say of which of the lifts told together."""
    try:
        all_otherwise(told)
    except OfWhichLift:
        return True
    return False


def _renamed(told: Told, group: Sequence[SetRecord], new: Mapping[ExerciseName, NewName | None]) -> Correction | None:
    for record in group:
        name = new[record.done.exercise]
        if name is not None:
            told.set_to(record, with_name(told.now(record), name))
    return told.correction()


def _equipment(told: Told) -> list[Piece]:
    """The equipment, where nothing else is told and several sets are spoken of."""
    found = [piece for piece in told.pieces if piece.kind in EQUIPMENT]
    several = _says_all(told) or any_cued(told.words, THOSE)
    if len(found) != 1 or not several or not all(_is_little(piece) for piece in told.pieces if piece not in found):
        return []
    return found


def _is_little(piece: Piece) -> bool:
    return piece.kind in AROUND or is_be(piece) or is_all(piece) or is_cued(piece.text, LITTLE)


def _says_all(told: Told) -> bool:
    return K.BOTH in told.kinds() or any(map(is_all, told.pieces))


def _group(told: Told) -> list[SetRecord]:
    if K.BOTH in told.kinds() and len({record.done.exercise for record in last_message(told.context)}) < 2:
        return two_latest(told.context)
    return last_message(told.context)


def _named_so(lift: ExerciseName, manner: Sequence[Piece], told: Told) -> NewName | None:
    """The same movement with that equipment."""
    new = renamed(manner, lift, told.context, told.catalogue)
    one, other = told.catalogue.get(lift), told.catalogue.get(new.exercise) if new is not None else None
    return new if one is not None and other is not None and one.pattern is other.pattern else None


def _is_so(lift: ExerciseName, manner: Sequence[Piece], told: Told) -> bool:
    known = told.catalogue.get(lift)
    return known is not None and known.equipment in EQUIPMENT[manner[0].kind]

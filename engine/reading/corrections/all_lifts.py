"""Other equipment for the lifts of the latest message together: "did both with dumbbells", "all of those were cables".

"Those were dumbbells" behind two lifts may be of the last or of both: where both are known so, nothing is changed, and
which is asked for. A word for both or all settles it.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from engine.reading.corrections.correcting import Told
from engine.reading.corrections.names import with_name
from engine.reading.corrections.parts import is_all
from engine.reading.corrections.renaming import NewName, renamed
from engine.reading.corrections.said_to_be import is_be
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


def all_otherwise(told: Told) -> Correction | None:
    """All lifts of the latest message, or of the latest two for "both", with the equipment told; None where one of them
    is not known so, or where "those" may be one lift's.
    """
    manner = _equipment(told)
    group = _group(told) if manner and _says_all(told) else []
    new = _lifts_so(group, manner, told)
    return _renamed(told, group, new) if len(new) > 1 and _is_known(manner, new, told) else None


def leaves_open_which(told: Told) -> bool:
    """Whether the words are of other equipment, and it is open which of the lifts told together are done so."""
    manner = _equipment(told)
    new = _lifts_so(_group(told), manner, told) if manner else {}
    if len(new) < 2:
        return False
    return not _is_known(manner, new, told) if _says_all(told) else sum(one is not None for one in new.values()) > 1


Lifts = Mapping[ExerciseName, NewName | None]
"""What each lift is called with the equipment; None for one that is not known so."""


def _lifts_so(group: Sequence[SetRecord], manner: Sequence[Piece], told: Told) -> Lifts:
    lifts = dict.fromkeys(record.done.exercise for record in group)
    return {lift: _named_so(lift, manner, told) for lift in lifts}


def _is_known(manner: Sequence[Piece], new: Lifts, told: Told) -> bool:
    """Whether each of the lifts is known with that equipment, or is done with it."""
    return all(one is not None or _is_so(lift, manner, told) for lift, one in new.items())


def _renamed(told: Told, group: Sequence[SetRecord], new: Lifts) -> Correction | None:
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

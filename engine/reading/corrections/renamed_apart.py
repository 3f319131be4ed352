"""Lifts told each under its own new name, or in each other's place: "squat was bench and bench was squat".

told = lift "was" lift ( cut | "and" ) lift "was" lift [ ... ]
     | lift "was" lift ( cut | "and" ) SWAPPED | lift "and" lift "were" SWAPPED | MIXED-UP lift "and" lift

"I swapped bench and squat" may tell which was done first, and changes nothing.

All are worked out on the sets as they stand, so that none is renamed twice.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import lru_cache

from engine.reading.corrections.correcting import Told
from engine.reading.corrections.names import NEWLY_NAMED, with_name
from engine.reading.corrections.parts import Part, sets_of
from engine.reading.corrections.renaming import renamed
from engine.reading.corrections.said_to_be import is_be
from engine.reading.latest_sets import standing
from engine.reading.values import Correction
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import DENYING, K
from engine.reading.words.phrasebook import phrasebook, spoken
from engine.reading.words.pieces import Piece, kinds_of
from engine.values.ids import ExerciseName

CUTS = frozenset((K.COMMA, K.STOP, K.DASH, K.AND))
ANDS = frozenset(("andword", "but"))
LITTLE = frozenset((K.FILLER, K.SETS, K.ALTERED, K.NOTE, K.PLAIN))
AROUND_NAMES = CUTS | {K.NAME, K.FILLER, K.SETS, K.COLON, K.ALTERED}
SLIPS, NUMBERS_ALONE = frozenset(("slip", "polite")), frozenset(("loadword", "repword"))
PAIR, MIXED_UP = 2, "mixedup"


def renamed_apart(told: Told) -> Correction | None:
    """Each lift under its new name; None where a clause tells anything else."""
    clauses = [clause for clause in _clauses(told.pieces) if any(piece.kind is K.NAME for piece in clause)]
    news = [(clause, _names(clause)) for clause in clauses]
    if told.has("swapped") or told.has(MIXED_UP):
        return _in_each_others_place(told)
    if len(news) < PAIR or any(len(names) != PAIR for _, names in news):
        return None
    for clause, (old, _) in news:
        lift, others = standing(old, told.context), [piece for piece in clause if piece is not old]
        if lift is None or not _is_of_names_alone(clause) or not _rename(told, lift, others):
            return None
    return told.correction()


def tells_names_apart(told: Told) -> bool:
    """Whether more than one lift is said to be another, or two to be mixed up: no rule for one of them may take it."""
    if (told.has("swapped") or told.has(MIXED_UP)) and len(_names_told(told)) >= PAIR:
        return True
    if names_one_more(told):
        return True
    verbs = [at for at, piece in enumerate(told.pieces) if is_be(piece)]
    named = [at for at in verbs if any(one.kind is K.NAME for one in told.pieces[max(0, at - 2) : at])]
    return sum(any(one.kind is K.NAME for one in told.pieces[at + 1 : at + 3]) for at in named) >= PAIR


def names_one_more(told: Told) -> bool:
    """ "front squat, and bench was incline": beside a lift and its new name one more, and nobody says of which lift."""
    clauses = [clause for clause in _clauses(told.pieces) if K.NAME in kinds_of(clause)]
    renaming = [clause for clause in clauses if _is_renamed_there(clause)]
    others = [clause for clause in clauses if clause not in renaming and DENYING.isdisjoint(kinds_of(clause))]
    return bool(renaming and others)


def _is_renamed_there(clause: Sequence[Piece]) -> bool:
    """ "bench was incline": a lift, and behind the verb what it was."""
    at = next((at for at, piece in enumerate(clause) if is_be(piece)), 0)
    return K.NAME in kinds_of(clause[:at]) and not NEWLY_NAMED.isdisjoint(kinds_of(clause[at:]))


def _in_each_others_place(told: Told) -> Correction | None:
    """ "bench and squat were swapped": the two lifts that are named, both of which stand."""
    names, verb = _names_told(told), any(map(is_be, told.pieces))
    if verb is told.has(MIXED_UP) or not all(_is_of_the_exchange(piece) for piece in told.pieces):
        return None
    lifts = [standing(piece, told.context) for piece in names]
    if len(names) != PAIR or None in lifts or len({*lifts}) != PAIR or told.numbers():
        return None
    for lift, other in zip(lifts, reversed(names), strict=True):
        if lift is None or not _rename(told, lift, [other]):
            return None
    return told.correction()


def _is_of_the_exchange(piece: Piece) -> bool:
    """Whether nothing but the two lifts and their exchange is told: an order, a form and days are mixed up, too."""
    if is_cued(piece.text, NUMBERS_ALONE):
        return False  # "bench and squat weights are swapped"
    if piece.kind in AROUND_NAMES or is_be(piece) or is_cued(piece.text, SLIPS):
        return True
    return not spoken(piece.text) or not _words_of_exchange().isdisjoint(spoken(piece.text).split())


@lru_cache(maxsize=1)
def _words_of_exchange() -> frozenset[str]:
    cues = phrasebook().cues
    return frozenset(word for phrase in cues["swapped"] | cues[MIXED_UP] for word in phrase.split())


def _names_told(told: Told) -> list[Piece]:
    return [piece for piece in told.pieces if piece.kind is K.NAME]


def _rename(told: Told, lift: ExerciseName, pieces: Sequence[Piece]) -> bool:
    """Whether the sets of the lift have got the name told, and had none before."""
    new = renamed(pieces, lift, told.context, told.catalogue)
    sets = sets_of(Part(named=lift), told.context)
    if new is None or any(record.id in told.changes for record in sets):
        return False
    for record in sets:
        told.set_to(record, with_name(record.done, new))
    return True


def _clauses(pieces: Sequence[Piece]) -> list[list[Piece]]:
    out: list[list[Piece]] = [[]]
    for piece in pieces:
        if piece.kind in CUTS or is_cued(piece.text, ANDS):
            out.append([])
        else:
            out[-1].append(piece)
    return out


def _names(clause: Sequence[Piece]) -> list[Piece]:
    """The lift in front of the verb and the one behind it."""
    at = next((at for at, piece in enumerate(clause) if is_be(piece)), 0)
    ahead = [piece for piece in clause[:at] if piece.kind is K.NAME]
    behind = [piece for piece in clause[at:] if piece.kind is K.NAME]
    return [*ahead, *behind] if len(ahead) == len(behind) == 1 else []


def _is_of_names_alone(clause: Sequence[Piece]) -> bool:
    return all(piece.kind is K.NAME or is_be(piece) or piece.kind in LITTLE for piece in clause)

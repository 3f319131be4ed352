"""Another exercise for sets that were told under the wrong name: the numbers stay.

"that was incline" after a barbell lift stays a barbell lift; "it was dumbbells" is the same lift with dumbbells.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from engine.catalogue.catalogue import Catalogue
from engine.reading.entries.names import ALL_WORDS, EQUIPMENT, of_equipment
from engine.reading.lexing.name_words import ANGLES
from engine.reading.values import Context
from engine.reading.weighing.resolve import BASES
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece
from engine.values.exercise import Measure
from engine.values.ids import ExerciseName
from engine.values.load import Basis

BARE_LIFT = (
    "barbell",
    "dumbbell",
    "cable",
    "machine",
    "smith machine",
    "ez-bar",
    "standing",
    "seated",
    "lying",
    "incline",
    "decline",
)


GRIP = "grip"


@dataclass(frozen=True, slots=True)
class NewName:
    exercise: ExerciseName
    basis: Basis


def renamed(pieces: Sequence[Piece], old: ExerciseName, context: Context, catalogue: Catalogue) -> NewName | None:
    """The exercise that is meant instead of `old`; None where that is not told clearly."""
    place = next((at for at, piece in enumerate(pieces) if piece.kind is K.NOT), len(pieces))
    ahead = [piece for at, piece in enumerate(pieces) if at < place] or list(pieces)
    named = [piece for piece in ahead if piece.kind is K.NAME and old not in piece.names] or [
        piece for piece in ahead if piece.kind is K.NAME
    ]
    owners = _of_name(named[0], old, catalogue) if named else _by_word(ahead, old, catalogue)
    exercise = _same_kind(owners, old, catalogue)
    known = catalogue.get(exercise) if exercise else None
    before = catalogue.get(old)
    if known is None or known.name == old:
        return None
    if named and named[0].text in ANGLES and before is not None and before.pattern is not known.pattern:
        return None  # "incline" behind a row is no bench press
    if before is not None and (before.measure is Measure.REPS) is not (known.measure is Measure.REPS):
        return None  # a plank's seconds are nobody's bench press
    return NewName(known.name, BASES.get(known.loading, Basis.TOTAL))


def _of_name(named: Piece, old: ExerciseName, catalogue: Catalogue) -> tuple[ExerciseName, ...]:
    """The lifts of the name; a grip is one of the old lift, and "close grip" of a pulldown no bench press."""
    if not named.text.endswith(GRIP):
        return named.names
    of_it = catalogue.owners(f"{named.text} {_bare(old)}") or catalogue.owners(f"{named.text} {old}")
    before = catalogue.get(old)
    alike = [name for name in named.names if before is not None and catalogue.exercises[name].pattern is before.pattern]
    return of_it or tuple(alike)


def _same_kind(owners: tuple[ExerciseName, ...], old: ExerciseName, catalogue: Catalogue) -> ExerciseName | None:
    """The owner that is most like the old exercise: its equipment first, then its movement."""
    before = catalogue.get(old)
    if len(owners) < 2 or before is None:
        return owners[0] if owners else None
    known = [exercise for name in owners if (exercise := catalogue.get(name)) is not None]
    same_equipment = [exercise for exercise in known if exercise.equipment is before.equipment]
    same = [exercise for exercise in same_equipment or known if exercise.pattern is before.pattern] or same_equipment
    return same[0].name if len(same) == 1 else None


def _by_word(pieces: Sequence[Piece], old: ExerciseName, catalogue: Catalogue) -> tuple[ExerciseName, ...]:
    if any(piece.text.startswith("smith") for piece in pieces):
        return _on_a_smith_machine(old, catalogue)
    for piece in pieces:
        if piece.kind in EQUIPMENT:
            # The whole name first, so that an incline stays one.
            return of_equipment((old,), piece.kind, old, catalogue) or of_equipment(
                (old,), piece.kind, _bare(old), catalogue
            )
        if piece.kind in (K.VARIANT, K.PLAIN, K.PAUSE, K.JOINT):
            found = catalogue.owners(f"{piece.text} {_bare(old)}") or catalogue.owners(f"{piece.text} {old}")
            found = found or _of_another_sort(piece, old, catalogue) or _in_another_posture(piece, old, catalogue)
            if found:
                return found
    return ()


def _of_another_sort(piece: Piece, old: ExerciseName, catalogue: Catalogue) -> tuple[ExerciseName, ...]:
    """ "front" of a back squat: the word in the place of the sort that the lift was."""
    lift = _bare(old).split()[1:]
    return catalogue.owners(" ".join((piece.text, *lift))) if lift and piece.kind in (K.VARIANT, K.JOINT) else ()


def _in_another_posture(piece: Piece, old: ExerciseName, catalogue: Catalogue) -> tuple[ExerciseName, ...]:
    """ "standing" of a seated lift, "paused" of a back squat: the word with what is left of the name once the posture
    and the words are gone that nobody says.
    """
    words = old.split()
    for at, word in enumerate(words[:-1]):
        if word not in UNSAID:
            break
        found = catalogue.owners(" ".join((piece.text, *words[at + 1 :])))
        if found:
            return found
    return ()


UNSAID = frozenset(("barbell", "dumbbell", "standing", "seated", "lying", "back", "conventional"))


def _on_a_smith_machine(old: ExerciseName, catalogue: Catalogue) -> tuple[ExerciseName, ...]:
    """ "barbell back squat" is "smith machine squat": the longest end of the name that is known with those words.

    The slope of a bench is never dropped, its name may be.
    """
    words = [word for word in old.split() if word not in ALL_WORDS]
    sloped = next((at for at, word in enumerate(words) if word in ANGLES), len(words) - 1)
    whole = [words[at:] for at in range(sloped + 1)]
    short = [[word for word in end if word != "bench"] for end in whole]
    ends = (" ".join(end) for end in (*whole, *short))
    return next((owners for end in ends if (owners := catalogue.owners(f"smith machine {end}"))), ())


def _bare(name: str) -> str:
    """The lift without the word for its equipment or position."""
    for word in BARE_LIFT:
        if name.startswith(f"{word} "):
            return name[len(word) + 1 :]
    return name

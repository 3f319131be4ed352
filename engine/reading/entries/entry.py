"""One exercise's part of a message: the names it may have, the pieces told of it, its day, and what is in doubt."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date

from engine.reading.words.modifiers import COUNTS
from engine.reading.words.pieces import KIND, Piece
from engine.values.ids import ExerciseName


@dataclass(slots=True)
class Entry:
    """One exercise's part of a message. `names` empty: none was said. `unknown`: the words that stood where a name
    would.
    """

    names: tuple[ExerciseName, ...] = ()
    phrase: str = ""
    pieces: list[Piece] = field(default_factory=list)
    unknown: str = ""
    day: date | None = None
    no_day: str = ""
    """Why nothing can be recorded for the day that was told, where nothing can."""
    rounds: int = 1
    doubtful: bool = False
    modified_by: str = ""
    """The unknown word that may make another exercise of the name."""
    both: bool = False
    shared_in_doubt: bool = False
    """The numbers stood behind the next name, and no word says whose they are: "squat and bench 3x5 100"."""
    led: bool = False
    """Its number stood in front of its name: "10 push ups"."""
    led_up_to: bool = False
    """Whole sets stood in front of its name whose loads rise to its own: "60x5 80x3 squat 100x5"."""
    warm_up_led: bool = False
    """Sets stood in front of its name, and nothing behind it yet: "warmed up with 60x8 on bench"."""
    bare: bool = False
    """A name that stands alone on its line, and no number with it."""
    no_reps: bool = False
    """ "same weight on incline": a lift whose load was told by another's, and no reps."""
    by_the_plan: bool = False
    """A name with "as planned" behind it, among others that tell their numbers."""

    @property
    def has_numbers(self) -> bool:
        return not COUNTS.isdisjoint(map(KIND, self.pieces))

"""The muscles and the sets that words ask more or less of: "3 more sets of side delts", "less chest", "more arms".

request = [ "more" | "less" ] [ sign NUMBER ] [ "sets" ] [ "of" | "for" ] muscle, in any order
Groups of muscles are trade words. Common practice, no source.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass

from engine.plan.names import muscle_named
from engine.values.muscles import Muscle

GROUPS: Mapping[str, tuple[Muscle, ...]] = {
    "arms": (Muscle.BICEPS, Muscle.TRICEPS, Muscle.FOREARMS),
    "arm": (Muscle.BICEPS, Muscle.TRICEPS, Muscle.FOREARMS),
    "shoulders": (Muscle.SIDE_DELTS, Muscle.REAR_DELTS, Muscle.FRONT_DELTS),
    "shoulder": (Muscle.SIDE_DELTS, Muscle.REAR_DELTS, Muscle.FRONT_DELTS),
    "delts": (Muscle.SIDE_DELTS, Muscle.REAR_DELTS, Muscle.FRONT_DELTS),
    "back": (Muscle.LATS, Muscle.MID_BACK, Muscle.UPPER_BACK),
    "legs": (Muscle.QUADS, Muscle.HAMSTRINGS, Muscle.CALVES),
    "leg": (Muscle.QUADS, Muscle.HAMSTRINGS, Muscle.CALVES),
    "thighs": (Muscle.QUADS, Muscle.HAMSTRINGS, Muscle.ADDUCTORS),
    "core": (Muscle.ABS, Muscle.OBLIQUES, Muscle.LOWER_BACK),
    "hips": (Muscle.GLUTES, Muscle.ABDUCTORS, Muscle.HIP_FLEXORS),
}
COUNT = re.compile(r"([+\-−–])?\s*\b(\d{1,4})\b")
FEWER = re.compile(r"\b(?:less|fewer|cut|drop|reduce|remove|take|off|minus|lower)\b", re.IGNORECASE)
WORD = re.compile(r"[^\W\d_]+(?:['-][^\W\d_]+)*")
LONGEST = 3


@dataclass(frozen=True, slots=True)
class Asked:
    """`muscles` holds several where a group was named, and none where no muscle was; `sets` None: no number was told.

    `fewer`: sets are to be taken off. `rest` is what was said behind the muscle.
    """

    muscles: tuple[Muscle, ...]
    sets: int | None
    fewer: bool
    rest: str = ""

    @property
    def change(self) -> int | None:
        """The sets to add, below 0 to take off; None where no number was told."""
        return None if self.sets is None else -self.sets if self.fewer else self.sets


def asked(text: str) -> Asked:
    """What words ask for."""
    number = COUNT.search(text)
    fewer = bool(FEWER.search(text)) or (number is not None and number[1] is not None and number[1] != "+")
    muscles, end = _muscles(text)
    return Asked(muscles, int(number[2]) if number else None, fewer, text[end:].strip(" .,!?"))


def _muscles(text: str) -> tuple[tuple[Muscle, ...], int]:
    """The muscle, or those of the group, that the longest known phrase names, and where that phrase ends."""
    words = list(WORD.finditer(text))
    for length in range(LONGEST, 0, -1):
        for first in range(len(words) - length + 1):
            phrase = " ".join(word.group() for word in words[first : first + length]).casefold()
            end = words[first + length - 1].end()
            if (one := muscle_named(phrase)) is not None:
                return (one,), end
            if phrase in GROUPS:
                return GROUPS[phrase], end
    return (), len(text)

"""Whether a prescription asks for more or less load than was last really lifted in its slot."""

from __future__ import annotations

from collections.abc import Sequence
from enum import Enum

from engine.progression.terms import Terms
from engine.progression.work import loads_of
from engine.values.load import Load
from engine.values.prescription import Exposure, Prescription, Verdict


class Change(Enum):
    HEAVIER = "heavier"
    LIGHTER = "lighter"
    SAME = "same"


def change_since(prescription: Prescription) -> Change | None:
    """How the heaviest load asked compares with what as many sets last lifted; None where there is nothing to compare.

    Body weight alone is a load of nothing added.
    """
    lifted = prescription.lifted
    if lifted is None or prescription.verdict is Verdict.FIND_LOAD:
        return None
    loads = [one.load for one in prescription.sets if one.load is not None]
    shown = max(loads, default=None)
    if shown is None:
        return Change.LIGHTER if lifted.amount > 0 else Change.HEAVIER if lifted.amount < 0 else Change.SAME
    if shown == lifted:
        return Change.SAME
    return Change.HEAVIER if lifted < shown else Change.LIGHTER


def last_lifted(terms: Terms, exposures: Sequence[Exposure], sets: int | None = None) -> Load | None:
    """The load that so many sets (None: as many as the slot's) reached when the slot was last trained, as it was told.

    Shape: `exposures` oldest first; None where there is none with a load told.
    """
    for exposure in reversed(exposures):
        loads = loads_of(exposure, terms)
        if loads:
            return loads[min(sets or terms.slot.sets, len(loads)) - 1]
    return None

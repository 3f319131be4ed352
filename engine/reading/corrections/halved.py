"""Both hands' load told as that of each, and put right: "30 each" behind 60, "that was both together".

told = NUMBER EACH, the half of the load that stands | TOGETHER (a cue of the language files), and no more
"""

from __future__ import annotations

from dataclasses import replace

from engine.reading.corrections.correcting import Told
from engine.reading.latest_sets import run_of_it
from engine.reading.values import Correction
from engine.reading.words.kinds import K
from engine.values.load import Basis, Load

OF_EACH = frozenset((K.NUMBER, K.EACH, K.FILLER, K.KG, K.LB))


def halved(told: Told) -> Correction | None:
    """The latest sets at half their load, where it was that of both hands; else None."""
    group = run_of_it(told.context)
    loads = [record.done.load for record in group]
    if any(load is None or load.basis is not Basis.PER_HAND for load in loads):
        return None
    numbers = told.numbers()
    kinds = told.kinds()
    of_each = len(numbers) == 1 and K.EACH in kinds and kinds <= OF_EACH
    told_halves = of_each and all(load is not None and load.amount == 2 * numbers[0].value for load in loads)
    if not told_halves and " ".join(told.words) not in told.book.cues["together"]:
        return None
    for record in group:
        load = record.done.load
        if load is not None:
            told.set_to(record, replace(record.done, load=Load(load.amount / 2, load.unit, load.basis)))
    return told.correction()

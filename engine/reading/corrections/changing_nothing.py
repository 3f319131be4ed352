"""What is said where the words are of a correction, or of what stands, and nothing comes of them."""

from __future__ import annotations

from dataclasses import replace

from engine.reading.corrections.after_all import was_like
from engine.reading.corrections.all_lifts import leaves_open_which
from engine.reading.corrections.confirming import tells_what_stands_already
from engine.reading.corrections.correcting import Told
from engine.reading.corrections.deletes import counts_otherwise
from engine.reading.corrections.done_so_often import tells_how_often, tells_reps_apart
from engine.reading.corrections.each_hand import may_be_held
from engine.reading.corrections.going_on import goes_on
from engine.reading.corrections.held import has_no_such_lift
from engine.reading.corrections.load_or_reps import may_be_load_or_reps
from engine.reading.corrections.nothing_changed import (
    CONFIRMED,
    COUNTED_OTHERWISE,
    LOAD_OR_REPS,
    NO_SUCH_LIFT,
    OF_WHICH_LIFT,
    REPS_APART,
    nothing_changed,
    unclear,
)
from engine.reading.corrections.reads_as_one import is_correcting
from engine.reading.corrections.renamed_apart import names_one_more
from engine.reading.corrections.said_to_be import is_be
from engine.reading.corrections.shifted import is_by_an_open_step
from engine.reading.corrections.units import counts_in_a_unit
from engine.reading.corrections.values import tells_what_stands
from engine.reading.prepare import Prepared
from engine.reading.values import NoSets


def is_told_of_what_stands(told: Told, prepared: Prepared) -> NoSets | None:
    """What is said where the words confirm what stands or tell what it was like, or cannot be of it."""
    if tells_what_stands_already(told):
        return NoSets(why=CONFIRMED)
    if counts_otherwise(told):
        return nothing_changed(prepared, COUNTED_OTHERWISE)
    like = was_like(told)
    return NoSets(why=like) if like else None


def that_changes_nothing(told: Told, prepared: Prepared) -> NoSets | None:
    """What is said where the words are of a correction, and nothing comes of it."""
    if _tells_what_stands(told):
        return NoSets(why=CONFIRMED)
    if tells_how_often(told) or counts_in_a_unit(told) or goes_on(told) or names_one_more(told):
        return unclear(prepared)
    if tells_reps_apart(told):
        return nothing_changed(prepared, REPS_APART)
    if leaves_open_which(told):
        return nothing_changed(prepared, OF_WHICH_LIFT)
    if may_be_held(told) or is_by_an_open_step(told) or (may_be_load_or_reps(told) and any(map(is_be, told.pieces))):
        return nothing_changed(prepared, LOAD_OR_REPS)
    if has_no_such_lift(told):
        return nothing_changed(prepared, NO_SUCH_LIFT)
    return unclear(prepared) if is_correcting(told) else None


def _tells_what_stands(told: Told) -> bool:
    try:
        return tells_what_stands(replace(told, changes={}, removed=[], added=[], pointed=[]))
    except ValueError:
        return False

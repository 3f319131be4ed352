"""Corrections that change nothing, and why: what is said where it is not clear what is to be put right."""

from __future__ import annotations

from engine.reading.prepare import Prepared
from engine.reading.values import NoSets, Unread

UNCLEAR = "a correction, but not clear of what"
CONFIRMED = "says that what stands was all done"
WHICH_DAY = "those sets are of an earlier day: name it, as in monday's squat was 2 sets"
REPS_APART = "of the set before, or of one more? Send “that was 4”, or its reps alone"
OF_ONE_MORE = (
    "of a set that stands, or of one more? Send one more by itself, as in 110x1 miss, or what stands: the 100 was 110x1"
)
COUNTED_OTHERWISE = "what is to go does not fit how many were done: send how many it was, as in only did 1 set"
WHICH_SET = "of the last set, or of the one before it? Send “last was 4”, or “set 2 was 4”"
OF_WHICH_LIFT = (
    "it may be of one lift or of all: send all with dumbbells, or name one, as in the bench was with dumbbells"
)
NO_SUCH_LIFT = "no such lift is known, so the sets stand as they are"
CHOICE_OR_REPS = "of the reps, or of the choice? Send what it was, as in that was 2, or undo and the choice again"
LOAD_OR_REPS = "of the load or of the reps? Send what it was, as in last was 95kg, or last was 4"
NONE_OF_THAT_SORT = "no sets of today were done with that: name the lift, as in the bench was 22"
TOLD_ROUGHLY = "a correction, but the number is told roughly: send it as it was, as in that was 82.5"
WEIGHT_OF_THE_BAR = "what the bar weighed; send all that was lifted with it, as in that was 35kg"
TWO_THINGS = "of the set before, and sets more: send each by itself, that was a warm-up, then 120x5"
ONE_SIDE = "of one side only? Send both, as in that was 10 left 8 right, or what both came to, as in that was 8"
SETS_SO_FAR = "of this lift, or of all so far? Send how many it was of the lift, as in that was 3 sets"
NONE_THAT_DAY = "a correction, but no such sets stand on that day"


SURELY = frozenset((COUNTED_OTHERWISE,))
"""Reasons that hold also where the words could be taken as a request."""


def unclear(prepared: Prepared, why: str = UNCLEAR) -> NoSets:
    """What may be a correction, with what is not clear about it."""
    return NoSets(unread=(Unread(prepared.cleaned.strip(), why),), why=why)


def nothing_changed(prepared: Prepared, why: str) -> NoSets:
    """What is a correction and changes nothing, with the reason."""
    return NoSets(unread=(Unread(prepared.cleaned.strip(), why, of_a_request=True),), why=why)

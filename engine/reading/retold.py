"""Sets told behind a group of the same lift with "i did": more of them, or what that group came to.

retold = [ me ] DID sets "x" reps         behind 3x5 "i did 5x5" may be two sets more, five more, or five in all
A word for more ("another", "then") or a load of its own makes them new ones.
"""

from __future__ import annotations

from engine.reading.latest_sets import latest_of_it
from engine.reading.prepare import Prepared
from engine.reading.values import Asked, Context, Doubt, Logged, Reading
from engine.reading.wording import label_of
from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.token_walk import KNOWN

PLAIN = frozenset((K.FILLER, K.NUMBER, K.TIMES, K.GOT, K.STOP, K.TODAY, K.DATE, K.KG, K.LB))


def asked_if_more(logged: Logged, prepared: Prepared, context: Context) -> Logged | Asked:
    """The sets, or the question whether they are more than those that stand."""
    if not context.recent or K.TIMES not in prepared.told or not prepared.told <= PLAIN or len(logged.sets) < 2:
        return logged
    if not _says_did(prepared) or not _are_of_the_group(logged, context):
        return logged
    label = label_of(logged.sets)
    said = f"Are these more sets? {label}. If they are the ones before, say “it was” in front. Nothing is saved yet."
    more = (Reading(logged.sets, 1.0, label),)
    return Asked(said, more, Doubt.MORE, "", logged.on, logged.note, logged.pain, typed=prepared.cleaned.strip())


def _says_did(prepared: Prepared) -> bool:
    """ "i did"; and not "then i did"."""
    told = [KNOWN[word].meaning for piece in prepared.spoken for word in piece.text.split()]
    next_ones = any(meaning is not None and meaning.kind is K.THEN for meaning in told)
    return not next_ones and any("did" in CUES_OF[piece.text] for piece in prepared.spoken)


def _are_of_the_group(logged: Logged, context: Context) -> bool:
    """Whether the lift and the load are those of a group that was told last; or the lift is taken to be the next one of
    the plan, whose sets are others.
    """
    latest = [record.done for record in latest_of_it(context)]
    today = context.now is None or context.recent[-1].on == context.now.date()
    first, before = logged.sets[0], latest[-1]
    grouped = len(latest) > 1 and len({one.reps for one in latest}) == 1 and len({one.reps for one in logged.sets}) == 1
    if first.exercise != before.exercise:
        planned = any(slot.exercise == first.exercise and slot.sets == len(logged.sets) for slot in context.plan)
        return today and grouped and first.reps == before.reps and not planned
    same = first.load == before.load
    return today and grouped and same and (first.reps == before.reps or len(latest) == len(logged.sets))

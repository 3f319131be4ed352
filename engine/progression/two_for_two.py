"""Two for two: repetitions to spare in the last set, twice running, offer a heavier load before the rule asks for it.

Offered where a rule holds the load for now and goes on from whatever heavier load is made (set wave, double
progression, load step). It is taken by lifting it, and undone like any set: nothing is stored. Not offered for pain,
in a deload, after time away, nor where the plan holds the load.

Source: two or more repetitions over the goal in the last set in two consecutive sessions: Graves & Baechle, in NSCA
Essentials of Strength Training and Conditioning, read in a secondary source.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from engine.progression.asked import Laid
from engine.progression.ceiling import heavier
from engine.progression.terms import Terms, top_reps
from engine.progression.words import day, stated
from engine.progression.work import Work, session_of
from engine.values.load import Load
from engine.values.plan import RepRange, Reps
from engine.values.prescription import Exposure, Offer, Prescription, Verdict
from engine.values.schemes import DoubleProgression, LoadStep, SetWave
from engine.values.sets import SetRecord

SPARE, SESSIONS = 2, 2
HOLDS = frozenset({Verdict.ADD_SET, Verdict.ADD_REPS, Verdict.REPEAT})
"""The verdicts under which a load stays that could go up."""


def offered(laid: Laid, past: Sequence[Exposure], terms: Terms) -> Offer | None:
    """The heavier load that the last sessions offer; None where they offer none.

    Shape: `past` the sessions that prove something, oldest first.
    """
    scheme, load = terms.slot.scheme, laid.ask.sets[0].load
    if not isinstance(scheme, SetWave | DoubleProgression | LoadStep) or load is None or laid.held:
        return None
    if laid.ask.verdict not in HOLDS or not has_spare(past, terms, load):
        return None
    up = heavier(load, scheme.step, terms).load
    if up <= load:
        return None
    spare = f"{SPARE} or more reps to spare in the last set on {day(past[-2].on)} and {day(past[-1].on)}"
    return Offer(up, f"{spare}: take {stated(up)} if you like, and it goes on from there.")


def taken(asked: Prescription, done: Sequence[SetRecord]) -> Prescription:
    """What is asked of the sets still to do once the offer was taken; `asked` itself where it was not.

    Shape: `done` the sets of the day, in the order of the log; the latest work set of the exercise decides.
    """
    mine = [one.done for one in done if one.done.exercise == asked.exercise and one.done.counts_as_work]
    if asked.offer is None or not mine or mine[-1].load is None or mine[-1].load < asked.offer.load:
        return asked
    up = asked.offer.load
    sets = tuple(replace(one, load=up) if one.load is not None and one.load < up else one for one in asked.sets)
    reason = f"You took {stated(up)}, with repetitions to spare at the last two sessions."
    return replace(asked, sets=sets, reason=reason, next_step="It goes on from what you make of it.", offer=None)


def has_spare(past: Sequence[Exposure], terms: Terms, load: Load) -> bool:
    """Whether the last set of each of the last two sessions, at this load or more, went well past its goal."""
    if len(past) < SESSIONS or not isinstance(terms.slot.target, Reps | RepRange):
        return False
    goal = top_reps(terms.slot.target) + SPARE
    return all(_last_goes_past(exposure, terms, load, goal) for exposure in past[-SESSIONS:])


def _last_goes_past(exposure: Exposure, terms: Terms, load: Load, goal: int) -> bool:
    session = session_of(exposure, terms)
    last: Work | None = None if session is None else session.works[-1]
    return last is not None and load <= last.load and last.reps >= goal and not last.missed

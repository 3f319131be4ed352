"""A movement that hurts is not pushed.

Decided: from the day pain is told until it is over, a session of the movement asks what the session before it asked,
never more load than was last lifted and no more sets than the rule asks now; a load that a rule brings down comes down
all the same. Sessions held that way prove nothing: the rule goes on from where it stood. The first session after the
pain is asked the same way, and only from there does the load go up. The words name a professional; nothing here judges
the pain.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from engine.progression.asked import Ask, Laid
from engine.progression.words import day, stated
from engine.values.load import Load
from engine.values.prescription import Exposure, Held, SetTarget, Verdict

NOTE = "You told of pain here, so nothing is pushed: stop if it hurts, and have a professional look at it."
AGAIN = "No more than last time is asked."
NEXT_STEP = "Nothing goes up here until you say it is free of pain."
AFTER_STEP = "Make this free of pain, and it goes on from there."


def proving(exposures: Sequence[Exposure]) -> tuple[Exposure, ...]:
    """The exposures that a rule folds over: no deload weeks, none held for pain.

    Where nothing else was done, the first that was held stands in: a load that was to be found is known by it.
    """
    usual = [exposure for exposure in exposures if not exposure.deload]
    free = [exposure for exposure in usual if not exposure.held]
    return tuple(free or usual[:1])


def unpushed(now: Ask, before: Ask, lifted: Load | None, last: Exposure | None) -> Laid:
    """What to ask of a painful movement: `now` is what the rule asks, `before` what it asked the time before."""
    known = last is not None or now.anchor is not None
    evidence = now.evidence if last is None else last.evidence
    if now.verdict is Verdict.FIND_LOAD:
        return Laid(now).noted(Held.PAIN, NOTE)
    reason = AGAIN if known else now.reason
    held = replace(now, verdict=Verdict.HOLD, reason=reason, next_step=NEXT_STEP, evidence=evidence, of_step=())
    return Laid(held).with_sets(tuple(_held(now, before, lifted)), Held.PAIN, NOTE)


def eased_in(now: Ask, before: Ask, lifted: Load | None, last: Exposure) -> Laid:
    """The same for the first session after the pain."""
    if now.verdict is Verdict.FIND_LOAD:
        return Laid(now)
    most = "no more than was done" if lifted is None else f"no more than the {stated(lifted)}"
    reason = f"First session since the pain you told of: {most} on {day(last.on)}."
    held = replace(now, verdict=Verdict.HOLD, reason=reason, next_step=AFTER_STEP, evidence=last.evidence, of_step=())
    return Laid(replace(held, sets=tuple(_held(now, before, lifted))), (Held.AFTER_PAIN,))


def _held(now: Ask, before: Ask, lifted: Load | None) -> Iterator[SetTarget]:
    """The sets asked the time before, no more of them than now, and none heavier than now or than what was lifted."""
    kept = before.sets if now.anchor is not None and now.verdict is not Verdict.RESET else now.sets
    for at, one in enumerate(kept[: len(now.sets)]):
        asked_now = now.sets[min(at, len(now.sets) - 1)].load
        limits = [load for load in (one.load, asked_now, lifted) if load is not None]
        # A load that was still to be found the time before is the one known now.
        yield replace(one, load=min(limits)) if asked_now is not None and limits else one

"""A movement that hurts is not pushed.

Decided: with pain told for a movement, its session asks what the session before it asked, never more load than was last
lifted; a load that a rule brings down comes down all the same. The words name a professional; nothing here judges
the pain.
"""

from __future__ import annotations

from dataclasses import replace

from engine.progression.asked import Ask, Laid, each_load
from engine.values.load import Load
from engine.values.prescription import Held, SetTarget, Verdict

NOTE = "You told of pain here, so nothing is pushed: stop if it hurts, and have a professional look at it."
AGAIN = "No more than last time is asked."
NEXT_STEP = "Nothing goes up here until you say it is free of pain."


def unpushed(now: Ask, before: Ask) -> Laid:
    """What to ask of a painful movement: `now` is what the rule asks, `before` what it asked the time before."""
    kept = _as_before(now, before) if now.anchor is not None and now.verdict is not Verdict.RESET else now.sets
    most = min((one.load for one in now.sets if one.load is not None), default=None)
    limits = [load for load in (now.anchor.load if now.anchor else None, most) if load is not None]

    def eased(load: Load) -> Load:
        return min([load, *limits])

    reason = AGAIN if now.anchor is not None else now.reason
    held = replace(now, verdict=Verdict.HOLD, reason=reason, next_step=NEXT_STEP, steep=False)
    return Laid(held).with_sets(each_load(kept, eased), Held.PAIN, NOTE)


def _as_before(now: Ask, before: Ask) -> tuple[SetTarget, ...]:
    """The sets asked the time before; a load that was still to be found then is the one known now."""
    found = next((one.load for one in now.sets if one.load is not None), None)
    return tuple(one if one.load is not None else replace(one, load=found) for one in before.sets)

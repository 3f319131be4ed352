"""warm up squat: the ramp to the day's first work set."""

from __future__ import annotations

import re
from dataclasses import replace
from decimal import Decimal

from bot.replies.loading import no_ramp, ramp_card
from bot.session_frames import Loadables, gym_of
from bot.sessions import session_of
from bot.turn import Turn
from engine.loading.exercises import empty_bar
from engine.loading.ramp import warm_ups
from engine.reading.values import Act

TOLD = re.compile(r"\d{1,4}(?:\.\d{1,2})?")
"""A load of her own, "warm up 85", in place of the planned one."""


def warmup(turn: Turn, act: Act) -> None:
    """Nothing; the warm-up sets are said."""
    session = session_of(turn)
    following = session.following(session.latest_exercise)
    name = act.exercise or (following.prescription.exercise if following is not None else None)
    asked = session.prescription_of(name) if name is not None else None
    work = asked.sets[0].load if asked is not None else None
    if work is not None and TOLD.fullmatch(act.text):
        work = replace(work, amount=Decimal(act.text))
    known = turn.catalogue.get(name) if name is not None else None
    if name is None or work is None or known is None:
        turn.say(no_ramp())
        return
    gym = gym_of(turn.preferences.gym, turn.unit)
    loadable = Loadables(turn.catalogue, turn.unit, gym)(name)
    turn.say(ramp_card(name, work, warm_ups(work, loadable, empty_bar(known, gym, turn.unit))))

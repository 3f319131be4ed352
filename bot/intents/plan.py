"""plan: the plan in force, all of it as text, or from which day it runs."""

from __future__ import annotations

from bot import mending
from bot.plan_drafts import Draft, draft_of
from bot.planning import looks_like_plan, receive_plan
from bot.replies.plan_guide import plan_guide
from bot.replies.plans import how_to, moved_start, overview, whole
from bot.sessions import forget_plan, session_of
from bot.turn import Turn
from bot.words import day_named
from engine.reading.values import Act
from storage.records import ChangeKind

GUIDE = ("help", "guide", "how", "how to", "format", "example", "words", "progression")
STARTS = ("from", "start", "starts")


def plan(turn: Turn, act: Act) -> None:
    """Nothing; the plan is shown, or its start is moved."""
    if looks_like_plan(f"plan {act.text}"):
        receive_plan(turn, turn.inbound.text)
        return
    if act.text.strip().casefold() in GUIDE:
        turn.say(plan_guide())
        return
    in_force, draft = session_of(turn).in_force, draft_of(turn)
    if draft is not None and (in_force is None or not act.text.strip()):
        mending.show(turn, draft)
    if in_force is None:
        _none_yet(turn, draft)
    elif act.text.strip().casefold() in ("text", "all", "whole"):
        turn.say(whole(in_force.plan, in_force.stored.text))
    elif act.text.split(" ", 1)[0].casefold() in STARTS:
        _restart(turn, act)
    else:
        turn.say(overview(in_force.plan, in_force.week(turn.today)))


def _none_yet(turn: Turn, draft: Draft | None) -> None:
    if draft is None:
        turn.say(how_to())


def _restart(turn: Turn, act: Act) -> None:
    in_force = session_of(turn).in_force
    day = day_named(act.text, turn.today)
    if in_force is None or day is None:
        turn.say(how_to())
        return
    change = turn.begin(ChangeKind.PLAN, f"the start of {in_force.plan.name}")
    turn.store.plans.assign(change, in_force.stored.name, in_force.stored.text, starts_on=day, at=turn.at)
    forget_plan(turn)
    turn.say(moved_start(in_force.plan, day, turn.today))

"""Which file answers which intent."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from bot.examples import example_for
from bot.intents import (
    accept,
    add_exercise,
    adjust,
    bend,
    best,
    bodyweight,
    check,
    clients,
    digest,
    done,
    erase,
    export,
    forget,
    gym,
    help,
    history,
    invite,
    more,
    move,
    next,
    note,
    note_to,
    pair_order,
    pause,
    plan,
    plan_for,
    plates,
    preview,
    privacy,
    quiet,
    redo,
    remind,
    repeat,
    rest,
    resume,
    settings,
    share,
    skip,
    snooze,
    start,
    swap,
    teach,
    today,
    undo,
    units,
    volume,
    warmup,
    week,
    what_if,
    why,
)
from bot.replies.talk import lost
from bot.turn import Turn
from engine.reading.values import Act

Intent = Callable[[Turn, Act], None]

INTENTS: Mapping[str, Intent] = {
    "gym": gym.gym,
    "plates": plates.plates,
    "warmup": warmup.warmup,
    "check": check.check,
    "preview": preview.preview,
    "what_if": what_if.what_if,
    "more": more.more,
    "adjust": adjust.adjust,
    "today": today.today,
    "next": next.next_up,
    "done": done.done,
    "repeat": repeat.repeat,
    "undo": undo.undo,
    "redo": redo.redo,
    "skip": skip.skip,
    "swap": swap.swap,
    "move": move.move,
    "short": bend.short,
    "lighten": bend.lighten,
    "elsewhere": bend.elsewhere,
    "cannot": bend.cannot,
    "why": why.why,
    "plan": plan.plan,
    "week": week.week,
    "volume": volume.volume,
    "history": history.history,
    "best": best.best,
    "rest": rest.rest,
    "bodyweight": bodyweight.bodyweight,
    "note": note.note,
    "share": share.share,
    "units": units.units,
    "teach": teach.teach,
    "load_first": pair_order.load_first,
    "reps_first": pair_order.reps_first,
    "forget": forget.forget,
    "add_exercise": add_exercise.add_exercise,
    "remind": remind.remind,
    "snooze": snooze.snooze,
    "quiet": quiet.quiet,
    "pause": pause.pause,
    "resume": resume.resume,
    "settings": settings.settings,
    "start": start.start,
    "accept": accept.accept,
    "help": help.help_,
    "privacy": privacy.privacy,
    "export": export.export,
    "erase": erase.erase,
    "clients": clients.clients,
    "invite": invite.invite,
    "digest": digest.digest,
    "plan_for": plan_for.plan_for,
    "note_to": note_to.note_to,
}


def act_on(turn: Turn, act: Act) -> None:
    """Nothing; the intent is done and answered."""
    intent = INTENTS.get(act.name)
    if intent is None:
        turn.say(lost(example_for(turn)))
    else:
        intent(turn, act)

"""same: the last set of the exercise in hand once more, or as many times as said."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import replace

from bot.context import context_of
from bot.examples import example_for
from bot.recording import log
from bot.replies.reply import Reply
from bot.turn import Turn
from engine.reading.values import Act, Logged
from engine.values.sets import SetRecord

MOST = 20
NOTHING_TO_REPEAT = "there is no set to repeat yet"


def repeat(turn: Turn, act: Act) -> None:
    """Nothing; the set is in the log again."""
    again = repeated(turn, act)
    if again is None:
        turn.say(Reply(f"Not saved: {NOTHING_TO_REPEAT}. A set looks like {example_for(turn)}"))
    else:
        log(turn, again)


def repeated(turn: Turn, act: Act, without: Collection[SetRecord] = ()) -> Logged | None:
    """The set once more, or as many times as said; None where there is none to repeat."""
    latest = _last_set(turn, act, without)
    if latest is None:
        return None
    load = context_of(turn).told.get(latest.done.exercise)
    done = latest.done if load is None else replace(latest.done, load=load)  # "+5", then "same"
    return Logged((done,) * max(1, min(act.count or 1, MOST)))


def _last_set(turn: Turn, act: Act, without: Collection[SetRecord]) -> SetRecord | None:
    """The set that "same" means: the last one logged today, of the exercise named where one is.

    `without`: those of a message that is being edited, which say nothing of what its new words repeat.
    """
    own = {record.id for record in without}
    recent = [record for record in context_of(turn).recent if record.id not in own]
    today = [record for record in recent if record.on == turn.today or record.at.date() == turn.at.date()]
    named = [record for record in today if act.exercise in (None, record.done.exercise)]
    return max(named, key=lambda record: (record.at, record.place), default=None)

"""export: everything of hers, as CSV for a spreadsheet and JSON for machines."""

from __future__ import annotations

from bot.replies.privacy import exported
from bot.turn import Turn
from engine.progression.words import counted
from engine.reading.values import Act


def export(turn: Turn, act: Act) -> None:
    """Nothing; the files are on their way."""
    count = turn.store.sets.count(turn.athlete)
    for name, text in turn.store.belongings.as_csv(turn.athlete).items():
        if text.count("\n") > 1:
            turn.say(exported(name, text.encode("utf-8"), counted(text.count("\n") - 1, "row")))
    everything = turn.store.belongings.as_json(turn.athlete).encode("utf-8")
    turn.say(exported("everything.json", everything, counted(count, "set")))

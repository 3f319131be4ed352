"""Plates, warm-up ramps and the gym in words."""

from __future__ import annotations

from collections.abc import Sequence

from bot.replies.names import title
from bot.replies.reply import UNDO, Reply, row
from engine.loading.plates import Loaded, PlateAnswer
from engine.loading.ramp import WarmUp
from engine.values.ids import ExerciseName
from engine.values.load import Load, plain
from engine.values.problem import Problem

MOST_LINES = 9


def plates_card(target: Load, bar: Load, answer: PlateAnswer) -> Reply:
    """One side's plates, largest first; or the nearest loads below and above."""
    if answer.exact is not None:
        return Reply(f"{target}: {_side(answer.exact)}, on a bar of {bar}.")
    lines = [f"{target} can't be loaded with your plates. Nearest:"]
    lines += [f"{one.load}: {_side(one)}" for one in (answer.below, answer.above) if one is not None]
    return Reply("\n".join(lines))


def _side(loaded: Loaded) -> str:
    if not loaded.side:
        return "the empty bar"
    return f"{' + '.join(plain(plate.amount) for plate in loaded.side)} {loaded.side[0].unit.value} a side"


def no_bar() -> Reply:
    """The gym has no such bar."""
    return Reply("Your gym has no bar for that. Tell me: my gym: bar 20 kg")


def ramp_card(name: ExerciseName, work: Load, ramp: Sequence[WarmUp]) -> Reply:
    """The warm-up sets, lightest first."""
    if not ramp:
        return Reply(f"{title(name)} at {work} needs no ramp: start with an easy set.")
    lines = [f"Warm up for {name} at {work}:"]
    lines += [f"{one.load} × {one.reps}" for one in ramp]
    lines.append("Log them with the word warmup, or not at all: they don't count.")
    return Reply("\n".join(lines))


def no_ramp() -> Reply:
    """There is no load to warm up to."""
    return Reply("I need a lift of today's plan with a load. Send: warm up squat")


def gym_card(words: str) -> Reply:
    """What can be loaded, as it is known, and how to change it."""
    lines = words.splitlines()
    return Reply("\n".join(["Your gym, as I take it:", *lines[:MOST_LINES], "To change: my gym: plates 20x2, 10, 5"]))


def gym_set(words: str, problems: Sequence[Problem], *, changed: bool) -> Reply:
    """What was kept of the words, and what was not read."""
    lines = ["Kept:" if changed else "Nothing changed.", *(words.splitlines()[:MOST_LINES] if changed else [])]
    lines += [str(problem) for problem in problems[:2]]
    return Reply("\n".join(lines), row(UNDO) if changed else ())

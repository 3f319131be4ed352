"""what if I swap A for B, what if I add 2 sets of A: volume, spacing and minutes before and after; nothing is saved."""

from __future__ import annotations

import re

from bot.plans_in_force import PlanInForce
from bot.replies.plans import how_to
from bot.replies.preview import proposal_problem, what_if_card
from bot.replies.trouble import needs
from bot.sessions import session_of
from bot.turn import Turn
from engine.plan.names import Named, exercise_named
from engine.plan.what_if import WhatIf, if_sets_added, if_swapped
from engine.reading.values import Act
from engine.values.ids import ExerciseName
from engine.values.problem import Problem

SWAP = re.compile(r"\b(?:swap|replace|do)\s+(.{1,60}?)\s+(?:for|with|by|instead of)\s+(.{1,60})", re.IGNORECASE)
SETS = re.compile(
    r"\b(add|drop|remove|cut|take off)?\s*([+-]?\d{1,2}|a|one)\s*(?:more\s+)?sets?\s+"
    r"(?:of|to|for|on|from)?\s*(.{1,60})",
    re.IGNORECASE,
)
FEWER = ("drop", "remove", "cut", "take off")
EXAMPLE = "what if I swap squat for leg press"


def what_if(turn: Turn, act: Act) -> None:
    """Nothing; the difference is said, and the plan stays as it is."""
    in_force = session_of(turn).in_force
    if in_force is None:
        turn.say(how_to())
        return
    text = act.text.strip(" ?.")
    found = _swapped(turn, in_force, text) or _sets(turn, in_force, text)
    if found is None:
        turn.say(needs("a swap or a number of sets", EXAMPLE))
    elif isinstance(found, Problem):
        turn.say(proposal_problem(found))
    else:
        turn.say(what_if_card(text, found, found.off_target(in_force.plan.targets)))


def _swapped(turn: Turn, in_force: PlanInForce, text: str) -> WhatIf | Problem | None:
    said = SWAP.search(text)
    if said is None:
        return None
    old, new = planned_name(turn, in_force, said[1]), planned_name(turn, in_force, said[2])
    if old is None or new is None:
        return _unknown(said[1] if old is None else said[2])
    if "instead" in said.group().casefold():
        old, new = new, old
    return if_swapped(in_force.plan, in_force.block_at(turn.today), old, new, turn.catalogue, turn.unit)


def _sets(turn: Turn, in_force: PlanInForce, text: str) -> WhatIf | Problem | None:
    said = SETS.search(text)
    if said is None:
        return None
    name = planned_name(turn, in_force, said[3])
    if name is None:
        return _unknown(said[3])
    count = int(said[2]) if said[2].lstrip("+-").isdecimal() else 1
    more = -count if (said[1] or "").casefold() in FEWER else count
    return if_sets_added(in_force.plan, in_force.block_at(turn.today), name, more, turn.catalogue)


def planned_name(turn: Turn, in_force: PlanInForce, words: str) -> ExerciseName | None:
    """The exercise that words name: one of the plan's where several go by that name."""
    cleaned = re.sub(r"^(?:the|my)\s+", "", words.strip(" ?.,"), flags=re.IGNORECASE)
    named = exercise_named(cleaned, turn.catalogue)
    if isinstance(named, Named):
        return named.exercise
    planned = in_force.exercises
    fits = [name for name in turn.catalogue.closest(cleaned) if name in planned]
    return fits[0] if len(fits) == 1 else None


def _unknown(words: str) -> Problem:
    return Problem(0, words.strip(), "an exercise of the plan or of the catalogue", EXAMPLE)

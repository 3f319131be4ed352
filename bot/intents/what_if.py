"""what if I swap A for B, add 2 sets of A, drop A, move tue to wed: before and after; nothing is saved."""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from dataclasses import replace

from bot.muscle_words import asked
from bot.plans_in_force import PlanInForce
from bot.proposals import USUAL
from bot.replies.plans import how_to
from bot.replies.preview import proposal_problem, what_if_card
from bot.replies.trouble import needs
from bot.sessions import session_of
from bot.turn import Turn
from bot.words import weekdays_named
from engine.plan.names import Named, exercise_named
from engine.plan.weak_points import more_sets
from engine.plan.what_if import WhatIf, if_dropped, if_moved, if_sets_added, if_swapped
from engine.reading.values import Act
from engine.values.ids import ExerciseName
from engine.values.problem import Problem

SWAP = re.compile(
    r"\b(?:swap|swapped|replace|replaced|change|do|did)\s+(.{1,60}?)\s+(?:for|with|by|to|instead of)\s+(.{1,60})",
    re.IGNORECASE,
)
SETS = re.compile(
    r"\b(add|added|did|do|drop|dropped|remove|cut|take off|skip)?\s*([+-]?\d{1,6}|an?|one|two|three)\s*"
    r"(?:more |fewer |less |extra )?sets?\b\s*(?:of|to|for|on|from|less of|more of)?\s*(.{0,60})",
    re.IGNORECASE,
)
DROP = re.compile(
    r"\b(?:drop|dropped|skip|skipped|remove|removed|cut|leave out|left out|stop|stopped|lose|lost|without|delete)\s+"
    r"(.{1,60})",
    re.IGNORECASE,
)
MOVE = re.compile(
    r"\b(?:move|moved|shift|shifted|train|trained|do|did|put)\s+(.{1,30}?)\s+(?:to|on|onto|instead of)\s+(.{1,30})",
    re.IGNORECASE,
)
FEWER = re.compile(r"\b(?:drop|dropped|remove|cut|take off|skip|fewer|less)\b", re.IGNORECASE)
AND = re.compile(
    r"\s*(?:,|;|\band\b|&|\bthen\b|\+)+\s*(?:also |then )?(?=(?:i |we )?"
    r"(?:swap|replace|change|add|drop|skip|remove|cut|take off|leave out|stop|lose|delete|move|shift)(?:ped|d|ed)?\b)",
    re.IGNORECASE,
)
"""What parts one change from the next: only in front of a word that begins a change."""
LIFTS = re.compile(r"\s*(?:,|\band\b|&)+\s*", re.IGNORECASE)
WORDS = {"a": 1, "an": 1, "one": 1, "two": 2, "three": 3}
EXAMPLE = "what if I swap squat for leg press"
KINDS = "a swap, sets of a lift, a lift to drop, or a day to move"

Found = WhatIf | Problem | None


def what_if(turn: Turn, act: Act) -> None:
    """Nothing; the difference is said, and the plan stays as it is."""
    in_force = session_of(turn).in_force
    if in_force is None:
        turn.say(how_to())
        return
    text = act.text.strip(" ?.")
    found = _all_of(turn, in_force, _changes(text))
    if found is None:
        turn.say(needs(KINDS, EXAMPLE))
    elif isinstance(found, Problem):
        turn.say(proposal_problem(found))
    else:
        turn.say(what_if_card(text, found, found.off_target(in_force.plan.targets)))


def _changes(text: str) -> list[str]:
    """The changes told in one message: "drop bench and add 2 sets of squat", "drop bench and squat"."""
    changes: list[str] = []
    for one in AND.split(text):
        lifts = LIFTS.split(said[1]) if (said := DROP.search(one)) and not SETS.search(one) else []
        changes += [f"drop {lift}" for lift in lifts] if len(lifts) > 1 else [one]
    return changes


def _all_of(turn: Turn, in_force: PlanInForce, changes: Sequence[str]) -> Found:
    """The changes one after the other, against the plan as it is; the first that cannot be is said."""
    whole: WhatIf | None = None
    for text in changes:
        found = next((one for read in READERS if (one := read(turn, in_force, text)) is not None), None)
        if not isinstance(found, WhatIf):
            return found
        whole = found if whole is None else replace(found, before=whole.before)
        in_force = replace(in_force, plan=found.plan)
    return whole


def _moved(turn: Turn, in_force: PlanInForce, text: str) -> Found:
    said = MOVE.search(text)
    if said is None:
        return None
    old, new = weekdays_named(said[1]), weekdays_named(said[2])
    if len(old) != 1 or len(new) != 1:
        return None
    if "instead" in said.group().casefold():
        old, new = new, old
    return if_moved(in_force.plan, in_force.block_at(turn.today), old[0], new[0], turn.catalogue)


def _swapped(turn: Turn, in_force: PlanInForce, text: str) -> Found:
    said = SWAP.search(text)
    if said is None or SETS.search(text):
        return None
    old, new = planned_name(turn, in_force, said[1]), planned_name(turn, in_force, said[2])
    if old is None or new is None:
        return _unknown(said[1] if old is None else said[2])
    if "instead" in said.group().casefold():
        old, new = new, old
    return if_swapped(in_force.plan, in_force.block_at(turn.today), old, new, turn.catalogue, turn.unit)


def _sets(turn: Turn, in_force: PlanInForce, text: str) -> Found:
    said = SETS.search(text)
    if said is None:
        return None
    typed = said[2].casefold()
    count = WORDS[typed] if typed in WORDS else int(typed)
    more = -abs(count) if FEWER.search(text) else count
    name = planned_name(turn, in_force, said[3])
    block = in_force.block_at(turn.today)
    if name is not None:
        return if_sets_added(in_force.plan, block, name, more, turn.catalogue, turn.unit)
    muscles = asked(said[3]).muscles
    if not said[3].strip() or len(muscles) != 1:
        return Problem(
            0, text, "of which lift or muscle", f"what if I add {min(abs(more), 2)} sets of {_a_lift(in_force)}"
        )
    found = more_sets(in_force.plan, block, muscles[0], more, turn.catalogue, unit=turn.unit)
    return found if isinstance(found, Problem) else found.what_if


def _dropped(turn: Turn, in_force: PlanInForce, text: str) -> Found:
    said = DROP.search(text)
    if said is None:
        return None
    name = planned_name(turn, in_force, said[1])
    if name is None:
        return _unknown(said[1])
    return if_dropped(in_force.plan, in_force.block_at(turn.today), name, turn.catalogue)


def _more(turn: Turn, in_force: PlanInForce, text: str) -> Found:
    """More, or less, of a muscle in general: as many sets as `more` would propose where no number is told."""
    said = asked(text)
    if len(said.muscles) != 1 or not re.search(r"\b(?:more|less|extra|fewer)\b", text, re.IGNORECASE):
        return None
    change = said.change if said.change is not None else -USUAL if said.fewer else USUAL
    block = in_force.block_at(turn.today)
    found = more_sets(in_force.plan, block, said.muscles[0], change, turn.catalogue, unit=turn.unit)
    return found if isinstance(found, Problem) else found.what_if


READERS: Sequence[Callable[[Turn, PlanInForce, str], Found]] = (_moved, _swapped, _sets, _dropped, _more)


def _a_lift(in_force: PlanInForce) -> ExerciseName:
    return next(slot.exercise for day in in_force.days for slot in day.day.slots)


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

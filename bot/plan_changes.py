"""Changes of a plan told in words: a swap, sets of a lift, a lift to drop, a day to move; several in one message.

change = "swap" lift "for" lift | ("add" | "drop") NUMBER "sets" ["of"] lift | "drop" lift | "move" day "to" day
       | ("more" | "less") muscle
Who asks what a change would bring and who proposes one to a client say it in the same words.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from datetime import date

from bot.muscle_words import asked
from bot.plans_in_force import PlanInForce
from bot.words import weekdays_named
from engine.catalogue.catalogue import Catalogue, normalise
from engine.plan.finish import DAY_NAMES
from engine.plan.names import Named, exercise_named
from engine.plan.weak_points import more_sets
from engine.plan.what_if import WhatIf, if_dropped, if_moved, if_sets_added, if_swapped
from engine.progression.words import counted
from engine.values.ids import ExerciseName
from engine.values.load import Unit
from engine.values.problem import Problem

SWAP = re.compile(
    r"\b(?:swap|swapped|replace|replaced|change|do|did)\s+(.{1,60}?)\s+(?:for|with|by|to|instead of)\s+(.{1,60})",
    re.IGNORECASE,
)
SETS = re.compile(
    r"(?<!\w)(add|added|did|do|drop|dropped|remove|cut|take off|skip)?\s*([+\-−–]?\s?\d{1,6}|an?|one|two|three)\s*"
    r"(?:more |fewer |less |extra )?sets?\b\s*(?:of|to|for|on|from|less of|more of)?\s*(.{0,60})",
    re.IGNORECASE,
)
DROP = re.compile(
    r"\b(?:drop|dropped|skip|skipped|remove|removed|cut|take out|taken out|scrap|bin|leave out|left out|stop|stopped|"
    r"lose|lost|without|delete)\s+(.{1,60})",
    re.IGNORECASE,
)
ALONE = re.compile(r"\s*(?:swap|replace|change)\s+(?:the\s+)?(.{1,60})", re.IGNORECASE)
MORE_OR_LESS = re.compile(r"\s*(more|extra|less|fewer)\s+(?:of\s+)?(.{1,60})", re.IGNORECASE)
ADD = re.compile(r"\s*(?:add|put in|include)\s+(.{1,60})", re.IGNORECASE)
MOVE = re.compile(
    r"\b(?:move|moved|shift|shifted|train|trained|do|did|put)\s+(.{1,30}?)\s+(?:to|on|onto|instead of)\s+(.{1,30})",
    re.IGNORECASE,
)
MINUS = "-−–"
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
USUAL = 2
"""Sets added at once where no number is told. Common practice, no source."""


@dataclass(frozen=True, slots=True)
class Change:
    """What the plan would be, and the change in one line: "+1 set barbell row"."""

    what_if: WhatIf
    description: str


@dataclass(frozen=True, slots=True)
class Asker:
    """Whose plan it is that words would change, and how that person trains."""

    in_force: PlanInForce
    catalogue: Catalogue
    unit: Unit
    today: date

    @property
    def block(self) -> int:
        """The block that the day falls in."""
        return self.in_force.block_at(self.today)


Found = Change | Problem | None


def changed_by(words: str, asker: Asker) -> Found:
    """The changes that words tell, one after the other, against the plan as it is; the first that cannot be is said."""
    whole: Change | None = None
    for text in _changes(words):
        found = next((one for read in READERS if (one := read(asker, text)) is not None), None)
        if not isinstance(found, Change):
            return found
        whole = found if whole is None else _both(whole, found)
        asker = replace(asker, in_force=replace(asker.in_force, plan=found.what_if.plan))
    return whole


def _both(first: Change, second: Change) -> Change:
    what_if = replace(second.what_if, before=first.what_if.before)
    return Change(what_if, f"{first.description}; {second.description}")


def _told(found: WhatIf | Problem, description: str) -> Found:
    return found if isinstance(found, Problem) else Change(found, description)


def _changes(text: str) -> list[str]:
    """The changes told in one message: "drop bench and add 2 sets of squat", "drop bench and squat"."""
    changes: list[str] = []
    for one in AND.split(text):
        lifts = LIFTS.split(said[1]) if (said := DROP.search(one)) and not SETS.search(one) else []
        changes += [f"drop {lift}" for lift in lifts] if len(lifts) > 1 else [one]
    return changes


def _moved(asker: Asker, text: str) -> Found:
    said = MOVE.search(text)
    if said is None:
        return None
    old, new = weekdays_named(said[1]), weekdays_named(said[2])
    if len(old) != 1 or len(new) != 1:
        return None
    if "instead" in said.group().casefold():
        old, new = new, old
    found = if_moved(asker.in_force.plan, asker.block, old[0], new[0], asker.catalogue)
    return _told(found, f"{DAY_NAMES[old[0]]} to {DAY_NAMES[new[0]]}")


def _swapped(asker: Asker, text: str) -> Found:
    said = SWAP.search(text)
    if said is None or SETS.search(text) or any(letter.isdigit() for letter in said[2]):
        return None  # "change squat to 3x8" names no other lift
    old, new = planned_name(asker, said[1]), planned_name(asker, said[2])
    if old is None or new is None:
        return _unknown(said[1] if old is None else said[2])
    if "instead" in said.group().casefold():
        old, new = new, old
    found = if_swapped(asker.in_force.plan, asker.block, old, new, asker.catalogue, asker.unit)
    return _told(found, f"{new} instead of {old}")


def _sets(asker: Asker, text: str) -> Found:
    said = SETS.search(text)
    if said is None:
        return None
    typed = said[2].casefold()
    count = WORDS[typed] if typed in WORDS else int(typed.lstrip("+-−– "))
    more = -count if FEWER.search(text) or typed[0] in MINUS else count
    name = planned_name(asker, said[3])
    plan = asker.in_force.plan
    if name is not None:
        found = if_sets_added(plan, asker.block, name, more, asker.catalogue, asker.unit)
        return _told(found, f"{'+' if more > 0 else '-'}{counted(abs(more), 'set')} {name}")
    muscles = asked(said[3]).muscles
    if not said[3].strip() or len(muscles) != 1:
        return Problem(
            0, text, "of which lift or muscle", f"what if I add {min(abs(more), 2)} sets of {_a_lift(asker.in_force)}"
        )
    found_for = more_sets(plan, asker.block, muscles[0], more, asker.catalogue, unit=asker.unit)
    return found_for if isinstance(found_for, Problem) else Change(found_for.what_if, found_for.description)


def _dropped(asker: Asker, text: str) -> Found:
    said = DROP.search(text)
    if said is None:
        return None
    name = planned_name(asker, said[1])
    if name is None:
        return _unknown(said[1])
    return _told(if_dropped(asker.in_force.plan, asker.block, name, asker.catalogue), f"{name} taken out")


def _more(asker: Asker, text: str) -> Found:
    """More, or less, of a muscle in general: as many sets as `more` would propose where no number is told."""
    said = asked(text)
    if len(said.muscles) != 1 or not re.search(r"\b(?:more|less|extra|fewer)\b", text, re.IGNORECASE):
        return None
    change = said.change if said.change is not None else -USUAL if said.fewer else USUAL
    found = more_sets(asker.in_force.plan, asker.block, said.muscles[0], change, asker.catalogue, unit=asker.unit)
    return found if isinstance(found, Problem) else Change(found.what_if, found.description)


def _added(asker: Asker, text: str) -> Found:
    """ "add face pulls": nobody can say how many sets."""
    said = ADD.match(text)
    name = planned_name(asker, said[1]) if said is not None else None
    return Problem(0, text, "how many sets", f"what if I add 2 sets of {name}") if name is not None else None


def _swapped_for_what(asker: Asker, text: str) -> Found:
    """ "swap squat": for what."""
    said = ALONE.fullmatch(text)
    name = planned_name(asker, said[1]) if said is not None else None
    known = asker.catalogue.get(name) if name is not None else None
    if name is None or known is None:
        return None
    to = known.swaps[0] if known.swaps else "leg press"
    return Problem(0, text, "the lift to do instead", f"what if I swap {name} for {to}")


def _more_of_a_lift(asker: Asker, text: str) -> Found:
    """ "more squats": one set, which is shown before it is made."""
    said = MORE_OR_LESS.fullmatch(text)
    name = planned_name(asker, said[2]) if said is not None else None
    if said is None or name is None:
        return None
    more = 1 if said[1].casefold() in ("more", "extra") else -1
    found = if_sets_added(asker.in_force.plan, asker.block, name, more, asker.catalogue, asker.unit)
    return _told(found, f"{'+' if more > 0 else '-'}1 set {name}")


READERS: Sequence[Callable[[Asker, str], Found]] = (
    _moved,
    _swapped,
    _sets,
    _dropped,
    _more,
    _more_of_a_lift,
    _added,
    _swapped_for_what,
)


def _a_lift(in_force: PlanInForce) -> ExerciseName:
    return next(slot.exercise for day in in_force.days for slot in day.day.slots)


def planned_name(asker: Asker, words: str) -> ExerciseName | None:
    """The exercise that words name: one of the plan's where several go by that name."""
    cleaned = re.sub(r"^(?:the|my)\s+", "", words.strip(" ?.,"), flags=re.IGNORECASE)
    named = exercise_named(cleaned, asker.catalogue)
    if isinstance(named, Named):
        return named.exercise
    planned = asker.in_force.exercises
    fits = [name for name in asker.catalogue.closest(cleaned) if name in planned]
    # "curls", where the plan has hammer curls alone.
    fits = fits or [name for name in planned if f" {name}".endswith(f" {normalise(cleaned)}")]
    return fits[0] if len(fits) == 1 else None


def _unknown(words: str) -> Problem:
    return Problem(0, words.strip(), "an exercise of the plan or of the catalogue", EXAMPLE)

"""A change to a plan that is shown first, and only when accepted becomes the plan."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import date, timedelta

from bot import zones
from bot.plan_changes import USUAL, Asker, changed_by
from bot.plans_in_force import plan_in_force
from bot.preferences import preferences
from bot.replies.coaching import no_plan_of
from bot.replies.plans import dropped, how_to
from bot.replies.preview import (
    plan_changed_by,
    proposal_card,
    proposal_left,
    proposal_problem,
    proposal_taken,
)
from bot.sessions import forget_plan
from bot.turn import Turn
from engine.catalogue.catalogue import Catalogue
from engine.plan.printing import print_plan
from engine.plan.weak_points import Proposal, more_sets, sets_by_week, to_target
from engine.plan.what_if import WhatIf
from engine.reading.words.phrasebook import phrasebook, spoken
from engine.values.ids import AthleteId
from engine.values.load import Unit
from engine.values.muscles import Muscle
from engine.values.plan import Plan
from engine.values.problem import Problem
from storage.records import ChangeKind, Permission, Person, Question, QuestionState

PROPOSAL = "proposal"
OPEN_FOR = timedelta(days=1)
YES = ("yes", "accept", "ok", "okay", "do it", "sure")
BEGINS_A_CHANGE = re.compile(
    r"\s*(?:please )?"
    r"(?:swap|replace|change|add|drop|remove|cut|scrap|more|extra|less|fewer|"
    r"take (?:off|out)|leave out|delete|move|shift|[+\-−–]\s?\d)",
    re.IGNORECASE,
)
"""How a change of somebody's plan begins: "do 2 sets of squat" tells what to do, not what to change."""
WHAT_IF = "what if I "
COUNT = re.compile(r"\d{1,2}")
INSTEAD = re.compile(
    r"(?:no,? )?(?P<lead>make (?:it|that) |only |just |rather )?(?P<sign>[+-])?(?P<count>\d{1,2})(?P<sets> sets?)?"
    r"(?P<behind> instead| please| is enough)?$"
)
NO = ("no", "leave it", "not now", "forget it", "cancel")


def propose(turn: Turn, person: Person, muscle: Muscle, change: int | None, *, fewer: bool = False) -> None:
    """Nothing; the best place for the sets is shown, and waits for a yes.

    `change` None: as many sets as the target lacks, or has too many where `fewer`; two where no target says.
    """
    asker = _asker(turn, person)
    if asker is None:
        return
    plan, block, catalogue = asker.in_force.plan, asker.block, asker.catalogue
    if change is not None:
        found = more_sets(plan, block, muscle, change, catalogue, unit=turn.unit)
    else:
        found = _as_many_as_fit(
            plan, block, muscle, _lacking(plan, block, muscle, catalogue, fewer), catalogue, turn.unit
        )
    if isinstance(found, Problem):
        turn.say(proposal_problem(found))
        return
    _ask(turn, person, asker, found.what_if, found.description, muscle, fewer=fewer or (change or 0) < 0)


def propose_change(turn: Turn, person: Person, words: str) -> bool:
    """Whether the words tell a change of the person's plan; it waits for a yes, or why it cannot be is said.

    "swap squat for leg press", "-1 set squat", "drop curls", "move tue to wed".
    """
    if BEGINS_A_CHANGE.match(words) is None:
        return False
    asker = _asker(turn, person)
    found = changed_by(words.strip(" .!"), asker) if asker is not None else None
    if isinstance(found, Problem):
        turn.say(proposal_problem(replace(found, try_instead=found.try_instead.replace(WHAT_IF, f"{person.name}: "))))
    elif found is not None and asker is not None:
        _ask(turn, person, asker, found.what_if, found.description, words=words)
    return asker is None or found is not None


def _asker(turn: Turn, person: Person) -> Asker | None:
    """The plan to change; None where there is none, which is said."""
    mine = person.id == turn.athlete
    today = turn.today if mine else _today_of(turn, person)
    in_force = plan_in_force(turn.store, turn.memory, person.id, today)
    if in_force is None:
        turn.say(how_to() if mine else no_plan_of(person.name))
        return None
    return Asker(in_force, turn.memory.catalogue_of(turn.store, person.id), turn.unit, today)


def _ask(
    turn: Turn,
    person: Person,
    asker: Asker,
    found: WhatIf,
    description: str,
    muscle: Muscle | None = None,
    *,
    fewer: bool = False,
    words: str = "",
) -> None:
    payload = {
        "kind": PROPOSAL,
        "athlete": person.id,
        "plan": asker.in_force.stored.id,
        "text": print_plan(found.plan, asker.catalogue),
        "description": description,
        "muscle": muscle.value if muscle is not None else "",
        "fewer": fewer,
        "words": words,
    }
    turn.store.questions.ask(turn.athlete, payload, at=turn.at, expires_at=turn.at + OPEN_FOR)
    whose = [] if person.id == turn.athlete else [person.name]
    whose += [muscle.value] if muscle is not None else []
    target = asker.in_force.plan.targets.get(muscle) if muscle is not None else None
    turn.say(proposal_card(description, found, ", ".join(whose), muscle, target))


def _lacking(plan: Plan, block: int, muscle: Muscle, catalogue: Catalogue, fewer: bool) -> tuple[int, ...]:
    """The sets for each week kind that bring it to the target; two each where the target asks for none."""
    off = to_target(plan, block, muscle, catalogue)
    wanted = tuple(min(0, sets) if fewer else max(0, sets) for sets in off)
    return wanted if any(wanted) else tuple(-USUAL if fewer else USUAL for _ in off)


def _as_many_as_fit(
    plan: Plan, block: int, muscle: Muscle, counts: tuple[int, ...], catalogue: Catalogue, unit: Unit
) -> Proposal | Problem:
    """The sets wanted or, in a week without room for so many, the most that fit."""
    fitting = []
    for at, wanted in enumerate(counts):
        alone = [0] * len(counts)
        for fewer in range(abs(wanted), 0, -1):
            alone[at] = fewer if wanted > 0 else -fewer
            if not isinstance(sets_by_week(plan, block, muscle, alone, catalogue, unit=unit), Problem):
                break
        else:
            alone[at] = 0
        fitting.append(alone[at])
    return sets_by_week(plan, block, muscle, fitting if any(fitting) else counts, catalogue, unit=unit)


def answered(turn: Turn, question: Question, text: str) -> bool:
    """Whether the words accepted or left the proposal, or said how many sets instead."""
    said = text.strip().casefold().rstrip(".!")
    if (sets := _sets_instead(turn, question, said)) is not None:
        return _propose_anew(turn, question, sets)
    cues = phrasebook().cues
    yes, no = said in YES or spoken(said) in cues["yes"], said in NO or spoken(said) in cues["no"]
    if yes or no:
        settle(turn, question, taken=yes)
    return yes or no


def _sets_instead(turn: Turn, question: Question, said: str) -> int | None:
    """How many sets are wanted instead: "make it 2 sets"; None where the words say none.

    For a client the word may be missing: a coach tells no sets of hers. Of her own a bare number is a set.
    """
    told = INSTEAD.match(said)
    if told is None or not (told["sets"] or AthleteId(question.payload["athlete"]) != turn.athlete):
        return None
    if told["sets"] and not (told["lead"] or told["sign"] or told["behind"]):
        return None if AthleteId(question.payload["athlete"]) == turn.athlete else int(told["count"])
    return -int(told["count"]) if told["sign"] == "-" else int(told["count"])


def _propose_anew(turn: Turn, question: Question, sets: int) -> bool:
    """Whether the proposal could be made for so many sets; the person must still be hers to ask for."""
    person = turn.store.people.get(AthleteId(question.payload["athlete"]))
    muscle = next((one for one in Muscle if one.value == question.payload.get("muscle")), None)
    if person is None or not _may_change(turn, person.id):
        return False
    words = str(question.payload.get("words", ""))
    if muscle is None:
        return "set" in words and sets > 0 and propose_change(turn, person, COUNT.sub(str(sets), words, count=1))
    propose(turn, person, muscle, -sets if question.payload["fewer"] and sets > 0 else sets)
    return True


def _may_change(turn: Turn, athlete: AthleteId) -> bool:
    link = turn.store.coaching.link(turn.athlete, athlete)
    return athlete == turn.athlete or (link is not None and Permission.CHANGE_PLAN in link.permissions)


def settle(turn: Turn, question: Question, *, taken: bool) -> None:
    """Nothing; the changed plan is in force from its old start on, or left."""
    turn.store.questions.close(question, QuestionState.ANSWERED if taken else QuestionState.DROPPED)
    if not taken:
        turn.say(proposal_left())
        return
    athlete = AthleteId(question.payload["athlete"])
    stored = turn.store.plans.newest(athlete)
    if stored is None or stored.id != question.payload["plan"] or not _may_change(turn, athlete):
        turn.say(dropped())
        return
    description = str(question.payload["description"])
    change = turn.store.changes.begin(
        athlete, ChangeKind.PLAN, description, turn.at, by=turn.athlete, inbound=turn.event
    )
    coach = turn.athlete if athlete != turn.athlete else stored.coach
    turn.store.plans.assign(
        change, stored.name, str(question.payload["text"]), starts_on=stored.starts_on, at=turn.at, coach=coach
    )
    forget_plan(turn)
    turn.say(proposal_taken(description))
    if athlete != turn.athlete:
        turn.tell(athlete, plan_changed_by(turn.me.name, description))


def _today_of(turn: Turn, person: Person) -> date:
    own = preferences(turn.store.settings.all(person.id), turn.preferences.zone)
    return zones.local(turn.at, own.zone).date()

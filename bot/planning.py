"""Plans by text or document: read, mended line by line where need be, checked, and put in force."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import timedelta
from typing import Any

from bot import imports
from bot.context import context_of
from bot.replies.coaching import plan_handed
from bot.replies.plans import dropped, given, needs_mending, put_in_force, unreadable
from bot.schedule import plan_person
from bot.sessions import forget_plan
from bot.turn import Turn
from engine.plan.check import check_plan
from engine.plan.lines import PlanLine
from engine.plan.printing import print_plan
from engine.plan.sheet import parse_sheet
from engine.plan.text import ParsedPlan, mend, parse_plan, read_lines
from engine.reading import read
from engine.reading.values import Act, NoSets, Outcome
from engine.values.plan import Plan
from engine.values.problem import Problem
from storage.records import ChangeKind, Permission, Person, Question, QuestionState

MEND = "mend plan"
PLAN_WORDS = ("plan:", "plan ", "day ", "week ", "target ")
OPEN_FOR = timedelta(days=1)


def looks_like_plan(text: str) -> bool:
    """Whether a message is a plan and no set: its first line says plan, or a line opens a training day."""
    lines = [line.strip().casefold() for line in text.splitlines() if line.strip()]
    if len(lines) < 2:
        return False
    return lines[0].startswith(("plan:", "plan ")) or any(line.startswith("day ") and ":" in line for line in lines)


def receive_plan(turn: Turn, text: str, client: Person | None = None) -> None:
    """Nothing; the plan is in force, or the lines that need mending are asked for."""
    go_on(turn, parse_plan(text, turn.catalogue, turn.unit), client)


def receive_document(turn: Turn, name: str, content: bytes) -> None:
    """Nothing; a document is a plan, or an old log to take over."""
    client = _client_waiting(turn)
    if client is None and imports.received(turn, name, content):
        return
    parsed = parse_sheet(name, content, turn.catalogue, turn.unit)
    if parsed.plan is None and not parsed.lines:
        turn.say(unreadable(parsed.problems))
        return
    go_on(turn, parsed, client)


def go_on(turn: Turn, parsed: ParsedPlan, client: Person | None) -> None:
    """Nothing; a whole plan is put in force, a broken one waits for its next line."""
    if parsed.plan is not None and not parsed.errors:
        if client is None:
            assign(turn, parsed.plan, parsed.problems)
        else:
            hand_over(turn, parsed.plan, client)
        return
    payload: dict[str, Any] = {
        "kind": MEND,
        "lines": [[line.number, line.text] for line in parsed.lines],
        "line": parsed.errors[0].line,
        "client": client.id if client else None,
    }
    turn.store.questions.ask(turn.athlete, payload, at=turn.at, expires_at=turn.at + OPEN_FOR)
    turn.say(needs_mending(parsed.errors))


def _is_no_line(outcome: Outcome) -> bool:
    """Whether words that might mend a line ask for something else or tell of pain; the plan waits meanwhile."""
    return isinstance(outcome, Act) or (isinstance(outcome, NoSets) and outcome.pain)


def mended(turn: Turn, question: Question, text: str) -> bool:
    """Whether the words mended a line of the plan that waits; the rest of it stays as sent."""
    said = text.strip()
    if said.casefold() in ("cancel", "forget it", "never mind", "/cancel"):
        turn.store.questions.close(question, QuestionState.DROPPED)
        turn.say(dropped())
        return True
    if not said.casefold().startswith(PLAN_WORDS) and _is_no_line(read(text, context_of(turn), turn.catalogue)):
        return False
    if looks_like_plan(text) or said.startswith("/"):
        turn.store.questions.close(question, QuestionState.DROPPED)
        return False
    lines = tuple(PlanLine(number, words) for number, words in question.payload["lines"])
    before = read_lines(lines, turn.catalogue, turn.unit)
    after = mend(before, question.payload["line"], said, turn.catalogue, turn.unit)
    turn.store.questions.close(question, QuestionState.ANSWERED)
    client_id = question.payload["client"]
    go_on(turn, after, turn.store.people.get(client_id) if client_id else None)
    return True


def assign(turn: Turn, plan: Plan, problems: Sequence[Problem]) -> None:
    """Nothing; the plan is hers from today on."""
    text = print_plan(plan, turn.catalogue)
    change = turn.begin(ChangeKind.PLAN, f"the plan {plan.name}")
    turn.store.plans.assign(change, plan.name, text, starts_on=turn.today, at=turn.at)
    forget_plan(turn)
    plan_person(turn.store, turn.memory, turn.me, turn.preferences, turn.at)
    found = [*problems, *check_plan(plan, turn.catalogue)]
    turn.say(put_in_force(plan, turn.today, found))


def hand_over(turn: Turn, plan: Plan, client: Person) -> None:
    """Nothing; the client has the plan from her today on, and is told."""
    from bot import zones
    from bot.preferences import preferences

    link = turn.store.coaching.link(turn.athlete, client.id)
    if link is None or Permission.CHANGE_PLAN not in link.permissions:
        turn.say(dropped())
        return
    own = preferences(turn.store.settings.all(client.id), turn.preferences.zone)
    today = zones.local(turn.at, own.zone).date()
    text = print_plan(plan, turn.catalogue)
    change = turn.store.changes.begin(
        client.id, ChangeKind.PLAN, f"the plan {plan.name}", turn.at, by=turn.athlete, inbound=turn.event
    )
    turn.store.plans.assign(change, plan.name, text, starts_on=today, at=turn.at, coach=turn.athlete)
    plan_person(turn.store, turn.memory, client, own, turn.at)
    turn.tell(client.id, given(turn.me.name, plan, today))
    turn.say(plan_handed(client.name, plan.name))


def _client_waiting(turn: Turn) -> Person | None:
    """The client whose plan the coach was asked to send."""
    question = turn.store.questions.open(turn.athlete, turn.at)
    if question is None or question.payload.get("kind") != "plan for":
        return None
    turn.store.questions.close(question, QuestionState.ANSWERED)
    return turn.store.people.get(question.payload["client"])


def plan_text_for(turn: Turn, question: Question, text: str) -> bool:
    """Whether the words were the plan for the client it was asked for."""
    if not looks_like_plan(text):
        return False
    client = _client_waiting(turn)
    receive_plan(turn, text, client)
    return True

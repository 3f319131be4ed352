"""Plans by text or document: read, mended line by line where need be, checked, and put in force."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import PurePath

from bot import imports, plan_drafts
from bot.context import context_of
from bot.replies.coaching import no_plan_sent, plan_handed, plan_or_own_sets
from bot.replies.mending import needs_mending
from bot.replies.plans import dropped, given, put_in_force, unreadable
from bot.schedule import plan_person
from bot.sessions import forget_plan
from bot.turn import Turn
from engine.plan.changes import with_name
from engine.plan.check import check_plan
from engine.plan.printing import print_plan
from engine.plan.sheet import is_pasted, parse_sheet
from engine.plan.text import ParsedPlan, mend, parse_plan
from engine.reading import read
from engine.reading.values import Asked, Logged
from engine.reading.words.phrasebook import phrasebook, spoken
from engine.values.ids import AthleteId
from engine.values.plan import Plan
from engine.values.problem import Problem, Severity
from storage.records import ChangeKind, Permission, Person, Question, QuestionState

LONGEST_NAME = 60


def looks_like_plan(text: str) -> bool:
    """Whether a message is a plan and no set: its first line says plan, or a line opens a training day."""
    lines = [line.strip().casefold() for line in text.splitlines() if line.strip()]
    if len(lines) < 2:
        return False
    return lines[0].startswith(("plan:", "plan ")) or any(line.startswith("day ") and ":" in line for line in lines)


def receive_plan(turn: Turn, text: str, client: Person | None = None) -> None:
    """Nothing; the plan is in force, or the lines that need mending are asked for."""
    if is_pasted(text):
        go_on(turn, parse_sheet("plan.csv", text.strip().encode(), turn.catalogue, turn.unit), client)
    else:
        go_on(turn, parse_plan(text, turn.catalogue, turn.unit), client)


def receive_document(turn: Turn, name: str, content: bytes) -> None:
    """Nothing; a document is a plan, or an old log to take over."""
    client = _client_waiting(turn)
    if client is None and imports.received(turn, name, content):
        return
    parsed = parse_sheet(name, content, turn.catalogue, turn.unit)
    go_on(turn, parsed, client, name_of(name))


def go_on(
    turn: Turn, parsed: ParsedPlan, client: Person | None, name: str = "", mends: plan_drafts.Draft | None = None
) -> None:
    """Nothing; a whole plan is put in force, a broken one waits for its next line, and what is none is told so."""
    if parsed.plan is None and not (parsed.errors and parsed.errors[0].line):
        turn.say(unreadable(parsed.problems))
    elif parsed.plan is None or parsed.errors:
        plan_drafts.keep(turn, parsed, client, name, mends)
        warnings = plan_drafts.warnings_of(parsed) if mends is None else ()
        turn.say(needs_mending(parsed.errors, example(turn, parsed), warnings, whole=mends is None))
    else:
        if mends is not None:
            plan_drafts.settle(turn, mends)
        plan_drafts.replace(turn, client)
        plan = parsed.plan if parsed.named else with_name(parsed.plan, name or parsed.plan.name)
        before = mends.warnings if mends is not None else ()
        problems = dict.fromkeys((*before, *plan_drafts.warnings_of(parsed)))
        if client is None:
            assign(turn, plan, tuple(problems))
        else:
            hand_over(turn, plan, client)


def name_of(file_name: str) -> str:
    """A plan's name from its file's: winter block.xlsx is the winter block."""
    return " ".join(PurePath(file_name).stem.replace("_", " ").split())[:LONGEST_NAME]


def example(turn: Turn, parsed: ParsedPlan) -> str:
    """What to send for the first line that cannot be read: the remedy itself, where it mends the line."""
    first = parsed.errors[0]
    after = mend(parsed, first.line, first.try_instead, turn.catalogue, turn.unit)
    mends = "\n" not in first.try_instead and not any(one.line == first.line for one in after.errors)
    return f"line {first.line}: {first.try_instead}" if mends else f"line {first.line}: … (the line, mended)"


def client_of(turn: Turn, draft: plan_drafts.Draft) -> Person | None:
    """The client that a draft is for; None where it is her own."""
    return turn.store.people.get(draft.client) if draft.client is not None else None


def assign(turn: Turn, plan: Plan, problems: Sequence[Problem]) -> None:
    """Nothing; the plan is hers from today on."""
    text = print_plan(plan, turn.catalogue)
    change = turn.begin(ChangeKind.PLAN, f"the plan {plan.name}")
    turn.store.plans.assign(change, plan.name, text, starts_on=turn.today, at=turn.at)
    forget_plan(turn)
    plan_person(turn.store, turn.memory, turn.me, turn.preferences, turn.at)
    found = [one for one in check_plan(plan, turn.catalogue) if one.severity is Severity.WARNING]
    turn.say(put_in_force(plan, turn.today, problems, found))


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
    """Whether the words were the plan for the client it was asked for, or lines that may be one; it is let go too."""
    if spoken(text.strip().casefold().rstrip(".!")) in phrasebook().cues["forget"]:
        turn.store.questions.close(question, QuestionState.DROPPED)
        turn.say(no_plan_sent())
        return True
    if looks_like_plan(text) or is_pasted(text):
        receive_plan(turn, text, _client_waiting(turn))
        return True
    client = turn.store.people.get(AthleteId(question.payload["client"]))
    meant = client is not None and _may_be_a_plan(turn, text)
    if client is not None and meant:
        turn.say(plan_or_own_sets(client.name))
    return meant


def _may_be_a_plan(turn: Turn, text: str) -> bool:
    """Whether lines told as sets may be those of a plan: several, or of a lift without a load."""
    found = read(text, context_of(turn), turn.catalogue)
    several = len(text.strip().splitlines()) > 1 and isinstance(found, Logged | Asked)
    bare = isinstance(found, Logged) and len(found.sets) > 1 and all(one.load is None for one in found.sets)
    return several or bare

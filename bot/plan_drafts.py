"""A plan with lines still to be mended: it waits a day, whatever else is said meanwhile.

It is kept as a question that waits beside the open one. It is settled when its plan is in force, when another plan for
the same person takes its place, when it is cancelled, and when it lapses.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from bot.schedule import cancel_all, plan_beside
from bot.scheduled.draft import LAPSE, MEND, OPEN_FOR
from bot.turn import Turn
from engine.plan.lines import PlanLine
from engine.plan.text import ParsedPlan
from engine.values.ids import AthleteId
from engine.values.problem import Problem, Severity
from storage.records import Person, Question, QuestionState

KEY = "plan draft"


@dataclass(frozen=True, slots=True)
class Draft:
    """`line` is the first that needs mending; `told`: it was said since that the draft waits."""

    question: Question
    lines: tuple[PlanLine, ...]
    line: int
    client: AthleteId | None
    name: str
    told: bool
    warnings: tuple[Problem, ...]


def draft_of(turn: Turn) -> Draft | None:
    """The plan that waits for a line of hers."""
    if KEY not in turn.kept:
        waiting = turn.store.questions.waiting(turn.athlete, turn.at)
        turn.kept[KEY] = next((_draft(one) for one in waiting if one.payload.get("kind") == MEND), None)
    found: Draft | None = turn.kept[KEY]
    return found


def keep(turn: Turn, parsed: ParsedPlan, client: Person | None, name: str, mends: Draft | None) -> None:
    """Nothing; the draft waits for its next line: the one that was mended in part, or a new one in its place."""
    # What a sheet made of its cells is known once only: the lines are read again at each mending, the cells are not.
    warnings = mends.warnings if mends is not None else warnings_of(parsed)
    payload = {
        "kind": MEND,
        "lines": [[line.number, line.text] for line in parsed.lines],
        "line": parsed.errors[0].line,
        "client": client.id if client else None,
        "name": name,
        "warnings": [_written(one) for one in warnings],
    }
    if mends is not None:
        turn.store.questions.update(mends.question, payload)
    else:
        replace(turn, client)
        turn.store.questions.keep_waiting(turn.athlete, payload, at=turn.at, expires_at=turn.at + OPEN_FOR)
        plan_beside(turn, LAPSE, turn.at + OPEN_FOR)
    turn.kept.pop(KEY, None)


def warnings_of(parsed: ParsedPlan) -> tuple[Problem, ...]:
    """What was read otherwise than written, and is said back."""
    return tuple(one for one in parsed.problems if one.severity is Severity.WARNING)


def replace(turn: Turn, client: Person | None) -> None:
    """Nothing; another plan for the same person came, and its older draft waits no more."""
    before = draft_of(turn)
    if before is not None and before.client == (client.id if client else None):
        settle(turn, before)


def settle(turn: Turn, draft: Draft) -> None:
    """Nothing; the draft waits no more."""
    turn.store.questions.close(draft.question, QuestionState.ANSWERED)
    if not turn.store.questions.waiting(turn.athlete, turn.at):
        cancel_all(turn, LAPSE)
    turn.kept.pop(KEY, None)


def mark_told(turn: Turn, draft: Draft) -> None:
    """Nothing; she knows that the draft waits."""
    payload: dict[str, Any] = {**draft.question.payload, "told": True}
    turn.store.questions.update(draft.question, payload)
    turn.kept.pop(KEY, None)


def _draft(question: Question) -> Draft:
    payload = question.payload
    return Draft(
        question,
        tuple(PlanLine(number, words) for number, words in payload["lines"]),
        payload["line"],
        payload["client"],
        payload.get("name", ""),
        bool(payload.get("told")),
        tuple(
            Problem(line, read, expected, try_instead, Severity.WARNING)
            for line, read, expected, try_instead in payload.get("warnings", ())
        ),
    )


def _written(problem: Problem) -> list[Any]:
    return [problem.line, problem.read, problem.expected, problem.try_instead]

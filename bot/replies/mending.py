"""A plan with lines that could not be read: which they are, what waits, what was made of an answer."""

from __future__ import annotations

from collections.abc import Sequence

from bot.messages import Attachment, Button
from bot.replies.names import counted
from bot.replies.reply import Reply, row
from bot.replies.trouble import quoted
from engine.values.problem import Problem

PROBLEMS_SHOWN = 3


def needs_mending(errors: Sequence[Problem], example: str, *, whole: bool = True) -> Reply:
    """Which lines need another try; the good ones are kept. `whole`: all of them go along where they are many."""
    lines = [f"{counted(len(errors), 'line')} I can't read; the rest is kept. No plan is saved yet."]
    lines += [str(problem) for problem in errors[:PROBLEMS_SHOWN]]
    more = len(errors) - PROBLEMS_SHOWN
    if more > 0:
        lines.append(f"and {more} more, in the file" if whole else f"and {more} more. Send: problems")
    lines.append(f"Send it with its number: {example}")
    lines.append("Sets still work meanwhile; cancel drops this plan.")
    return Reply("\n".join(lines), attachment=_all(errors) if whole and more > 0 else None)


def all_problems(errors: Sequence[Problem]) -> Reply:
    """Every line that needs another try, as a document."""
    return Reply(f"{counted(len(errors), 'line')} to mend, as a file.", attachment=_all(errors))


def _all(errors: Sequence[Problem]) -> Attachment:
    text = "\n".join(str(problem) for problem in errors)
    return Attachment("problems.txt", f"{text}\n".encode())


def waits(name: str, line: int) -> Reply:
    """Sets and requests go on; the plan is not forgotten."""
    return Reply(f"{_the_plan(name)} waits for line {line}. Send: line {line}: and the line. cancel drops it.")


def lapsed(name: str, line: int) -> Reply:
    """A day went by."""
    return Reply(
        f"{_the_plan(name)} waited a day for line {line} and is dropped. Nothing of it was saved. "
        "Send it again when you like."
    )


def _the_plan(name: str) -> str:
    return f"The plan {quoted(name)}" if name else "Your plan"


def no_such_line(number: int, errors: Sequence[Problem]) -> Reply:
    """A line that the plan does not have."""
    first = errors[0].line
    return Reply(f"Nothing changed: the plan has no line {number}. Line {first} is the one I can't read.")


def plan_or_sets(line: int, text: str, question: int) -> Reply:
    """A message that is a line of the plan as well as sets done."""
    return Reply(
        f"{quoted(text)}: line {line} of the plan, or sets you did? Nothing is saved yet.",
        row(
            Button(f"Plan line {line}", f"v1:plan-or-sets:{question}:plan"),
            Button("Sets I did", f"v1:plan-or-sets:{question}:sets"),
        ),
    )

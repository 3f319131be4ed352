"""A plan with lines that could not be read: which they are, what waits, what was made of an answer."""

from __future__ import annotations

from collections.abc import Sequence

from bot.messages import Attachment, Button
from bot.replies.reply import Reply, row
from bot.replies.screen import fitting
from bot.replies.trouble import quoted
from engine.progression.words import counted
from engine.values.problem import Problem

PROBLEMS_SHOWN = 3


def needs_mending(
    errors: Sequence[Problem], example: str, warnings: Sequence[Problem] = (), *, whole: bool = True
) -> Reply:
    """Which lines need another try; the good ones are kept. `whole`: all of them go along where they are many.

    `warnings`: what was read otherwise than written, said back as well.
    """
    head = f"{counted(len(errors), 'line')} I can't read; the rest is kept. No plan is saved yet."
    foot = f"Send: {example}\nSets still work; cancel drops this plan."

    def told(most: int) -> list[str]:
        more = len(errors) - most
        rest = [f"and {more} more" + (", in the file" if whole else ": problems")] if more > 0 else []
        return [head, *map(str, errors[:most]), *rest, *read_as(warnings, most), *foot.splitlines()]

    lines = fitting(told, most=PROBLEMS_SHOWN)
    every = [*map(str, errors), *map(taken, warnings)]
    return Reply("\n".join(lines), attachment=_all(every) if whole and not set(every) <= set(lines) else None)


def read_as(warnings: Sequence[Problem], most: int) -> list[str]:
    """What was read otherwise than written, the first few of it."""
    more = len(warnings) - most
    rest = [f"and {more} more read with a guess, in the file"] if more > 0 else []
    return [*map(taken, warnings[:most]), *rest]


def guesses(warnings: Sequence[Problem], lines: Sequence[str]) -> Attachment | None:
    """All that was read otherwise than written, as a file where a card's lines do not hold all of it."""
    every = [taken(one) for one in warnings]
    return None if set(every) <= set(lines) else Attachment("read.txt", "".join(f"{one}\n" for one in every).encode())


def taken(warning: Problem) -> str:
    """What was read otherwise than written."""
    where = f"Line {warning.line}: " if warning.line else ""
    return f"{where}{quoted(warning.read)}: {warning.expected}."


def all_problems(errors: Sequence[Problem], warnings: Sequence[Problem]) -> Reply:
    """Every line that needs another try, as a document."""
    every = [*map(str, errors), *map(taken, warnings)]
    return Reply(f"{counted(len(errors), 'line')} to mend, as a file.", attachment=_all(every))


def _all(every: Sequence[str]) -> Attachment:
    return Attachment("problems.txt", "".join(f"{one}\n" for one in every).encode())


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

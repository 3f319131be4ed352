"""Plans in words: read, to be mended, in force, printed back."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from bot.messages import Attachment
from bot.replies.dates import DAYS, near
from bot.replies.mending import guesses, read_as
from bot.replies.names import listed, title
from bot.replies.reply import UNDO, Reply, row
from bot.replies.screen import fitting
from engine.plan.finish import DAY_NAMES
from engine.progression.words import counted
from engine.values.plan import Plan, TrainingDay
from engine.values.problem import Problem

FINDINGS_SHOWN = 4
EXAMPLE = """plan: first block, 4 weeks
day mon: full body
squat 3x5 at 60 kg, then +2.5 kg
cable row 3x8-12 at 45 kg, then +2.5 kg
push-up 2x max, +1 rep"""


def unreadable(problems: Sequence[Problem]) -> Reply:
    """A file that is no plan."""
    return Reply("Not saved: " + (str(problems[0]) if problems else "the file is empty"))


def dropped() -> Reply:
    """A plan that was left."""
    return Reply("No plan saved. What was in force stays.")


def put_in_force(plan: Plan, starts_on: date, problems: Sequence[Problem], found: Sequence[Problem] = ()) -> Reply:
    """The plan as read, from when, and what is worth a look: how it was read comes first, what `check` found behind."""
    head = f"Plan saved: {plan.name}, {counted(plan.weeks, 'week')}, starts {near(starts_on, starts_on)}."
    worth = [finding(one) for one in found]

    def told(most: int) -> list[str]:
        return [head, *day_lines(plan, each=most), *read_as(problems, most), *_worth_a_look(worth, most - 1)]

    lines = fitting(told, 1)
    return Reply("\n".join(lines), row(UNDO), attachment=guesses(problems, lines))


def _worth_a_look(worth: Sequence[str], most: int) -> list[str]:
    if len(worth) <= most:
        return list(worth)
    more = f"and {len(worth) - most} more" if most else counted(len(worth), "thing")
    return [*worth[:most], f"{more} to look at: check"]


def day_lines(plan: Plan, most: int = 5, each: int = 3) -> list[str]:
    """The training days of the first block's weeks, one a line, with the first lifts of each."""
    kinds = plan.blocks[0].kinds
    days = [(kind.label if len(kinds) > 1 else "", day) for kind in kinds for day in kind.days]
    lines = [_day(label, day, each) for label, day in days[:most]]
    return [*lines, f"and {counted(len(days) - most, 'more day')}"] if len(days) > most else lines


def _day(kind: str, day: TrainingDay, most: int) -> str:
    when = f"{DAYS[day.weekday.value]} " if day.weekday is not None else ""
    prefix = f"{kind}, " if kind else ""
    own = "" if day.weekday is not None and day.label == DAY_NAMES[day.weekday] else day.label
    return f"{prefix}{(when + own).strip()}: {listed([slot.exercise for slot in day.slots], most)}"


def given(coach: str, plan: Plan, starts_on: date) -> Reply:
    """At the client's side: a coach's plan is in force."""
    head = f"{coach} gave you a plan: {plan.name}, {counted(plan.weeks, 'week')}, from {near(starts_on, starts_on)}."
    return Reply("\n".join(fitting(lambda most: [head, *day_lines(plan, each=most)])))


def overview(plan: Plan, week: int | None, client: str = "") -> Reply:
    """The plan in force, one's own or a client's."""
    where = f", week {week} of {plan.weeks}" if week else f", {counted(plan.weeks, 'week')}"
    ways = f"/plan text sends all of it; preview {min(plan.weeks, (week or 1) + 1)} looks ahead."
    if client:
        ways = f"To change it, for example: {client}: -1 set {_first_lift(plan)}"
    whose = f"{client}: " if client else ""
    return Reply("\n".join(fitting(lambda most: [f"{whose}{plan.name}{where}", *day_lines(plan, 7, most), ways])))


def _first_lift(plan: Plan) -> str:
    return next((slot.exercise for kind in plan.blocks[0].kinds for day in kind.days for slot in day.slots), "squat")


def whole(plan: Plan, text: str) -> Reply:
    """The whole plan as text, fit to be edited and sent again."""
    if len(text) <= 3000:
        return Reply(text)
    return Reply(f"{plan.name}, as a file.", attachment=Attachment("plan.txt", text.encode("utf-8")))


def how_to() -> Reply:
    """There is no plan; how to send one."""
    return Reply(
        "No plan yet. Send one as text or a file (.txt, .md, .csv, .xlsx). For example:\n"
        f"{EXAMPLE}\nhelp plan has all the words."
    )


def moved_start(plan: Plan, starts_on: date, today: date) -> Reply:
    """The plan begins on another day."""
    return Reply(f"{plan.name} starts {near(starts_on, today)}.", row(UNDO))


def findings(plan: Plan, found: Sequence[Problem]) -> Reply:
    """What is worth a look, the gravest first; advice, never a ban. Much of it goes along as a file."""
    if not found:
        return Reply(f"{plan.name}: nothing found. Volume, spacing, rep ranges and session length look sound.")
    head, told = f"{plan.name}: {counted(len(found), 'thing')} to look at.", [finding(one) for one in found]

    def shown(most: int) -> list[str]:
        more = [f"and {len(told) - most} more, in the file"] if len(told) > most else []
        return [head, *told[:most], *more]

    lines = fitting(shown, most=FINDINGS_SHOWN)
    if len(lines) > len(told):
        return Reply("\n".join(lines))
    return Reply("\n".join(lines), attachment=Attachment("check.txt", "".join(f"{one}\n" for one in told).encode()))


def finding(problem: Problem) -> str:
    """One finding on a plan that can be read: what is planned, what would be better, what to do."""
    where = f"Line {problem.line}: " if problem.line else ""
    read = title(problem.read) if problem.read else "Not written"
    better = problem.expected if problem.expected.startswith("your ") else f"better {problem.expected}"
    verb = "Send" if problem.try_instead.startswith(("more ", "less ")) else "Try"
    behind = f" {title(better)}" if read.endswith(".") else f", {better}"
    return f"{where}{read}{behind}. {verb}: {problem.try_instead}"

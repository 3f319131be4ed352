"""A projected week, and what a change to the plan would bring."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal

from bot.messages import Attachment, Button
from bot.replies.dates import DAYS, day
from bot.replies.names import listed
from bot.replies.reply import UNDO, Reply, row
from bot.replies.screen import fits_card, fitting
from bot.replies.sets import asked_text
from bot.replies.structured import prescription_json
from engine.plan.finish import DAY_NAMES
from engine.plan.invented import FIRST_MAXIMUM
from engine.plan.projection import ProjectedDay
from engine.plan.what_if import WhatIf
from engine.progression.words import counted
from engine.values.load import plain
from engine.values.muscles import Muscle
from engine.values.plan import Plan, TrainingDay, VolumeTarget, WeekKind
from engine.values.problem import Problem

MUSCLES_SHOWN = 4
SESSIONS_SHOWN = 2
TENTH = Decimal("0.1")


def preview_card(
    plan: Plan,
    week: int,
    days: Sequence[ProjectedDay],
    share: Decimal | None,
    first_sets: Sequence[str] = (),
    *,
    has_rate: bool = False,
) -> Reply:
    """What a week, or a day of it, would ask under the assumptions named; all of it as a file where it is long.

    `first_sets`: the lifts whose first set of maximum reps is not in the log and had to be assumed; `has_rate`: a rate
    of her own is known from sessions done.
    """
    if not days:
        return Reply(f"Week {week} of {plan.weeks} is over. What you did of it is in your log: history shows it.")
    head = [f"Week {week} of {plan.weeks}, if {_made(share)}:"]
    body = [line for projected in days for line in _projected(projected)]
    foot = [f"A first set of {FIRST_MAXIMUM} is assumed for {listed(first_sets, 2)}."] if first_sets else []
    if share is None and has_rate:
        foot.append(f"Also: preview {week} at my rate")
    prescribes = [prescription_json(one) for projected in days for one in projected.asked]
    if len(days) == 1 or fits_card([*head, *body, *foot]):
        return Reply("\n".join([*head, *body, *foot]), prescribes=prescribes)
    names = [DAYS[projected.on.weekday()].lower() for projected in days]
    more = [f"The rest is in the file; one day: preview {week} {names[-1]}"]
    shown = _as_fits(days, [*head, *foot, *more])
    whole = "\n".join([*head, *body, *foot])
    file = Attachment(f"week {week}.txt", f"{whole}\n".encode())
    return Reply("\n".join([*head, *shown, *foot, *more]), prescribes=prescribes, attachment=file)


def _made(share: Decimal | None) -> str:
    if share is None:
        return "all reps are made"
    return f"you make {plain((share * 100).quantize(Decimal(1)))} % of sessions, as so far"


def _projected(projected: ProjectedDay) -> list[str]:
    deload = ", deload" if projected.planned.deload else ""
    head = f"{day(projected.on)}, {projected.planned.day.label}{deload}"
    return [head, *(f"{one.exercise} {asked_text(one)}" for one in projected.asked)]


def _as_fits(days: Sequence[ProjectedDay], rest: Sequence[str]) -> list[str]:
    """As many whole days as a card holds beside the rest of it, one at least."""
    shown = _projected(days[0])
    for projected in days[1:]:
        longer = [*shown, *_projected(projected)]
        if not fits_card([*longer, *rest]):
            break
        shown = longer
    return shown


def no_rate(week: int) -> Reply:
    """Nothing was trained on this plan yet."""
    return Reply(f"No sessions of this plan yet, so there is no rate of yours. Send: preview {week}")


def no_such_day(week: int, days: Sequence[str]) -> Reply:
    """A day on which the week has no session."""
    return Reply(f"Week {week} has no session then, only {listed(days)}. Send: preview {week} {days[0].casefold()}")


def no_such_week(weeks: int) -> Reply:
    """A week that the plan does not have."""
    return Reply(f"Your plan has weeks 1 to {weeks}. Send: preview {weeks}")


def what_if_card(question: str, found: WhatIf, targets: Sequence[Muscle]) -> Reply:
    """Volume, spacing and minutes before and after; nothing is saved."""
    said = question if question.casefold().startswith("i ") else f"I {question}"
    off = [muscle.value for muscle in targets]
    foot = [f"Out of its target range then: {', '.join(off)}"] if off else []
    head = f"If {said} (nothing is saved):"
    return Reply("\n".join(fitting(lambda most: [head, *_difference(found, most), *foot], most=MUSCLES_SHOWN)))


def _difference(found: WhatIf, most: int) -> list[str]:
    """Every muscle by how much it changes, every session by its minutes, and what comes too close or no longer does."""
    lines = muscle_lines(found, most)
    lines += _minutes(found, min(most, SESSIONS_SHOWN))
    lines += [f"Careful: {one.caution.reason} {one.caution.remedy}" for one in found.cautions_added[:2]]
    if found.cautions_gone:
        gone = found.cautions_gone[0].caution
        lines.append(f"No longer too close: {gone.before} and {gone.after}")
    if not lines:
        return ["Weekly sets, spacing and minutes stay as they are."]
    if not found.cautions_added and not found.cautions_gone:
        lines.append("Spacing stays as it is.")
    return lines


def muscle_lines(found: WhatIf, most: int, but: Muscle | None = None) -> list[str]:
    """The muscles that change, the biggest change first, with the weekly sets before and after."""
    changed = sorted(found.muscles_changed, key=lambda one: -abs(one[2] - one[1]))
    changed = [one for one in changed if one[0] is not but]
    lines = [_changed(found, muscle) for muscle, _, _ in changed[:most]]
    fewer = [one.value for one, _, _ in changed[most:]]
    return [*lines, f"less changed: {listed(fewer, 4)}"] if fewer else lines


def _changed(found: WhatIf, muscle: Muscle) -> str:
    """The muscle's weekly sets before and after; week by week where the weeks of the block differ."""
    before, after = found.before.weeks_of(muscle), found.after.weeks_of(muscle)
    pairs = [(was, now) for was, now in zip(before, after, strict=True)]
    if len(set(pairs)) == 1:
        return f"{muscle.value}: {_count(before[0])} to {_count(after[0])} sets a week"
    labels = [kind.label for kind in found.plan.blocks[found.block].kinds]
    told = [f"{label} {_count(was)} to {_count(now)}" for label, (was, now) in zip(labels, pairs, strict=True)]
    return f"{muscle.value}, sets in week {', '.join(told)}"


def _minutes(found: WhatIf, most: int) -> list[str]:
    kinds = found.plan.blocks[found.block].kinds
    changed = sorted(found.minutes_changed, key=lambda one: -abs(one[2] - one[1]))
    lines = [
        f"{session_name(kinds[at.kind], kinds[at.kind].days[at.day], several=len(kinds) > 1)}: {was} to {now} min"
        for at, was, now in changed[:most]
    ]
    more = len(changed) - most
    return [*lines, f"and {counted(more, 'more session')}"] if more > 0 else lines


def session_name(kind: WeekKind, session: TrainingDay, *, several: bool) -> str:
    """A session as a line names it: A, Mon full body."""
    when = DAYS[session.weekday.value] if session.weekday is not None else ""
    own = "" if session.weekday is not None and session.label == DAY_NAMES[session.weekday] else session.label
    return f"{f'{kind.label}, ' if several else ''}{f'{when} {own}'.strip()}"


def _count(sets: Decimal) -> str:
    return plain(sets.quantize(TENTH))


def proposal_card(
    description: str,
    found: WhatIf,
    whose: str,
    muscle: Muscle | None,
    target: VolumeTarget | None,
) -> Reply:
    """Where the sets of a muscle would go, or another change of the plan, to accept or to leave."""
    head = [f"For {whose}: {description}", *_against_target(muscle, target, found)]
    known = muscle if target is not None else None

    def told(most: int) -> list[str]:
        beside = [*muscle_lines(found, most, but=known), *_minutes(found, min(most, SESSIONS_SHOWN))]
        careful = [f"Careful: {one.caution.reason} {one.caution.remedy}" for one in found.cautions_added[:1]]
        return [*head, *beside, *careful, "Not saved yet."]

    lines = fitting(told, 1)
    return Reply("\n".join(lines), row(Button("Accept", "v1:proposal:yes"), Button("Leave it", "v1:proposal:no")))


def _against_target(muscle: Muscle | None, target: VolumeTarget | None, found: WhatIf) -> list[str]:
    if muscle is None or target is None:
        return []
    return [f"{_changed(found, muscle)}, target {plain(target.low)}-{plain(target.high)}"]


def which_muscle(muscles: Sequence[Muscle], sets: int | None, client: str, *, fewer: bool) -> Reply:
    """A group of muscles was named: which of them. The words to type say for whom."""
    verb = "less" if fewer else "more"
    number = f"{'-' if fewer else '+'}{sets} sets" if sets is not None else verb
    whom = f"{client}: " if client else ""
    lines = [f"Which one: {listed([one.value for one in muscles])}? Send: {whom}{number} {muscles[0].value}"]
    if client:
        return Reply("\n".join(lines))
    sign = f"{'-' if fewer else '+'}{sets if sets is not None else ''}"
    return Reply(
        "\n".join(lines),
        row(*(Button(one.value.capitalize(), f"v1:more:{sign}:{one.value.replace(' ', '-')}") for one in muscles[:3])),
    )


def proposal_problem(problem: Problem) -> Reply:
    """Why there is no such change."""
    return Reply(f"Nothing changed: {problem}")


def proposal_taken(description: str) -> Reply:
    """The plan as changed is in force."""
    return Reply(f"Plan changed: {description}", row(UNDO))


def proposal_left() -> Reply:
    """The plan stays."""
    return Reply("Left as it was. Nothing changed.")


def plan_changed_by(coach: str, description: str) -> Reply:
    """At the client's side."""
    return Reply(f"{coach} changed your plan: {description}. today shows it on your next session.")

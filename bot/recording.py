"""Sets go into the log, and the receipt says what was read, what is left of the lift, and what comes next."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace
from datetime import date

from bot import pain
from bot.replies.question import never_answered
from bot.replies.receipt import Aside, Lift, lift_line, lift_list
from bot.replies.sets import sets_text
from bot.sessions import forget_plan, forget_session, session_of
from bot.turn import FAR_ABOVE, LEFT_OUT, TOLD, Turn
from engine.reading.values import Logged
from engine.values.ids import ExerciseName
from engine.values.sets import SetDone, SetRecord
from storage.envelopes import OutboxId
from storage.records import Change, ChangeKind

PLAIN_SETS = "plain sets"
"""Under this name a turn keeps that it recorded sets for today and did nothing else."""


def log(turn: Turn, logged: Logged) -> None:
    """Nothing; the sets are in the log and the receipt is said."""
    kind = ChangeKind.SETS
    change = turn.begin(kind, label_of(logged.sets))
    record(turn, change, logged, turn.inbound.message)
    receipt(turn, logged, turn.inbound.message)
    turn.kept[PLAIN_SETS] = not logged.pain and not logged.note and turn.kinds == {kind}
    if logged.pain:
        pain.respond(turn, pained_lift(turn, logged))


def record(
    turn: Turn, change: Change, logged: Logged, message: int, on: date | None = None, place: int | None = None
) -> Sequence[SetRecord]:
    """The sets as recorded, with the note that came with them; `place`: where in the log, if not at its end."""
    day = logged.on or on or turn.today
    records: list[SetRecord] = []
    for told_for, sets in by_day(logged, day):
        records += turn.store.sets.add(change, sets, on=told_for, at=turn.at, message=message, place=place)
        place = None
    note_beside(turn, change, logged, message, day)
    forget_session(turn, earlier=any(one.on != turn.today for one in records))
    return records


def note_beside(turn: Turn, change: Change, logged: Logged, message: int, day: date) -> None:
    """Nothing; the note or the pain that came with the sets is kept."""
    if not (logged.note or logged.pain):
        return
    turn.store.notes.add(
        change,
        logged.note or turn.inbound.text,
        on=day,
        at=turn.at,
        exercise=pained_lift(turn, logged),
        pain=logged.pain,
        message=message,
    )
    forget_plan(turn)


def pained_lift(turn: Turn, logged: Logged) -> ExerciseName | None:
    """The lift that a note beside sets is about: the only one, else one that the note names, else the last."""
    names = list(lifts_in_order(logged.sets))
    if len(names) > 1 and logged.note:
        return pain.named_in(turn, logged.note) or names[-1]
    return names[-1] if names else None


def by_day(logged: Logged, day: date) -> list[tuple[date, list[SetDone]]]:
    """The sets with the day each was told for, in the order told; `day` where the message names none."""
    days = [told or day for told in logged.days] or [day] * len(logged.sets)
    groups: list[tuple[date, list[SetDone]]] = []
    for told_for, done in zip(days, logged.sets, strict=True):
        if groups and groups[-1][0] == told_for:
            groups[-1][1].append(done)
        else:
            groups.append((told_for, [done]))
    return groups


def receipt(turn: Turn, logged: Logged, message: int, lines: Sequence[str] = ()) -> None:
    """Nothing; what was saved is said: in the line of its lift, or as a list where there are several."""
    day = logged.on or (logged.days[0] if logged.days and logged.days[0] else turn.today)
    told = lifts_in_order(logged.sets)
    session = session_of(turn)
    complete = day == turn.today and bool(session.prescriptions) and session.next_up() is None
    if turn.kept.get(LEFT_OUT):
        lines = [*lines, never_answered(turn.kept[LEFT_OUT]).text]
        turn.kept[LEFT_OUT] = TOLD
    aside = Aside(day, bool(logged.note), lines, logged.unread, complete)
    groups = by_day(logged, day)
    if len({told_for for told_for, _ in groups}) > 1:
        lifts = [
            Lift(name, sets, on=told_for) for told_for, done in groups for name, sets in lifts_in_order(done).items()
        ]
        turn.say(lift_list(lifts, None, Aside(turn.today, bool(logged.note), lines, logged.unread), turn.today))
        return
    if len(told) == 1 and not logged.unread:
        say_lift(turn, next(iter(told)), day, aside, new=logged.sets)
        return
    following = session_of(turn).next_up() if day == turn.today else None
    lifts = [Lift(exercise, sets) for exercise, sets in told.items()]
    turn.say(lift_list(lifts, following, aside, turn.today))
    for exercise in told:
        turn.store.lift_lines.drop(turn.athlete, day, exercise)


def say_lift(
    turn: Turn,
    exercise: ExerciseName,
    day: date,
    aside: Aside,
    *,
    quietly: bool = True,
    new: Sequence[SetDone] = (),
) -> None:
    """Nothing; the line of a lift says what stands of it now: edited in place while it can be seen. Else a message of
    its own tells the new sets and how many stand: the others were told further up.
    """
    session = session_of(turn)
    standing = [one.done for one in turn.store.sets.of_day(turn.athlete, day) if one.done.exercise == exercise]
    today = day == turn.today
    lift = Lift(exercise, standing, session.planned_sets(exercise) if today else 0)
    following = session.following(exercise) if today else None
    line = turn.store.lift_lines.get(turn.athlete, day, exercise) if today else None
    if line is not None and line.buried <= FAR_ABOVE:
        if quietly and turn.preferences.reactions:
            turn.react()
        turn.edit(OutboxId(line.outbox), lift_line(lift, following, aside, turn.today))
        return
    if len(new) < len(standing):
        lift = replace(lift, new=new)
    turn.store.lift_lines.put(turn.athlete, day, exercise, turn.say(lift_line(lift, following, aside, turn.today)))


def lifts_in_order(sets: Iterable[SetDone]) -> dict[ExerciseName, list[SetDone]]:
    """The sets by exercise, exercises in the order first told."""
    lifts: dict[ExerciseName, list[SetDone]] = {}
    for done in sets:
        lifts.setdefault(done.exercise, []).append(done)
    return lifts


def label_of(sets: Sequence[SetDone]) -> str:
    """What undo will say: barbell row 3×12 at 55 kg; or how many sets of how many lifts."""
    lifts = lifts_in_order(sets)
    if len(lifts) == 1:
        exercise = next(iter(lifts))
        return f"{exercise} {sets_text(sets)}"
    return f"{len(sets)} sets of {len(lifts)} lifts"

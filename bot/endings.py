"""What a session came to."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from datetime import date, timedelta
from itertools import pairwise

from bot.recording import lifts_in_order
from bot.replies.records import record_text
from bot.replies.session import Ending
from bot.replies.sets import load_text
from bot.sessions import Session, session_of
from bot.turn import Turn
from engine.strength.records import records_broken
from engine.values.ids import ExerciseName
from engine.values.load import Load
from engine.values.sets import SetRecord

LONGEST_GAP = timedelta(minutes=75)
"""A longer break between two sets is another visit. Common practice, no source."""


def ending_of(turn: Turn) -> Ending:
    """Today's session as it stands in the log."""
    session = session_of(turn)
    work = [record for record in session.sets_today if record.done.counts_as_work]
    lifts = lifts_in_order([record.done for record in work])
    asked = [one.prescription for _, slots in session.begun for one in slots if not one.skipped]
    return Ending(
        on=turn.today,
        label=" and ".join(dict.fromkeys(day.day.label for day, _ in session.begun)),
        lifts=len(lifts),
        sets=len(work),
        planned_sets=sum(len(one.sets) for one in asked),
        planned_done=sum(min(len(one.sets), session.sets_done(one.exercise)) for one in asked),
        minutes=_minutes(work),
        up=_up(turn, work),
        short=_short(session),
        records=_records(turn, lifts),
        unanswered=_unanswered(turn),
        coming=session.coming,
    )


def _minutes(work: Sequence[SetRecord]) -> int | None:
    """From the first set to the last; None where a long gap says that it was no one visit."""
    instants = sorted(record.at for record in work)
    gaps = [later - earlier for earlier, later in pairwise(instants)]
    if not gaps or max(gaps) > LONGEST_GAP:
        return None
    return round(sum(gap.total_seconds() for gap in gaps) / 60) or None


def _up(turn: Turn, work: Sequence[SetRecord]) -> list[tuple[ExerciseName, str]]:
    """Lifts whose heaviest work set is heavier than on the last day of that lift."""
    up = []
    for exercise, sets in lifts_in_order([record.done for record in work]).items():
        now = max((done.load for done in sets if done.load), default=None)
        before = _heaviest_before(turn, exercise)
        if now is not None and before is not None and before < now:
            up.append((exercise, load_text(now)))
    return up


def _heaviest_before(turn: Turn, exercise: ExerciseName) -> Load | None:
    earlier = [
        record
        for record in turn.store.sets.history(turn.athlete, exercise, until=turn.today, days=2)
        if record.on < turn.today and record.done.counts_as_work
    ]
    last = max((record.on for record in earlier), default=date.min)
    return max((record.done.load for record in earlier if record.on == last and record.done.load), default=None)


def _short(session: Session) -> list[str]:
    """Planned lifts with fewer sets than asked."""
    short = []
    for one in session.prescriptions:
        sets = session.sets_done(one.exercise)
        if sets < len(one.sets):
            short.append(f"{one.exercise} {sets} of {len(one.sets)} sets")
    return short


def _records(turn: Turn, lifts: Iterable[ExerciseName]) -> list[str]:
    """The records that today's sets broke, in words."""
    weighed = turn.store.body_weights.at(turn.athlete, turn.today)
    body_weight = weighed.load if weighed else None
    found = []
    for name in lifts:
        exercise = turn.catalogue.get(name)
        if exercise is None:
            continue
        history = turn.store.sets.history(turn.athlete, name, until=turn.today)
        before = [record for record in history if record.on < turn.today]
        now = [record for record in history if record.on == turn.today]
        broken = records_broken(before, now, exercise, body_weight)
        found += [record_text(name, one) for one in broken[:1]]
    return found


def _unanswered(turn: Turn) -> list[str]:
    still_open = turn.store.questions.open(turn.athlete, turn.at)
    if still_open is None or still_open.payload["kind"] != "sets":
        return []
    return [str(still_open.payload["text"])]

"""Laws of volume and spacing, on any week of the real catalogue: sets add up, order and warm-ups do not matter."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, time, timedelta
from decimal import Decimal

from hypothesis import given
from hypothesis import strategies as st

from engine.catalogue.catalogue import catalogue
from engine.strength.mass import as_told, resistance
from engine.values.exercise import Exercise
from engine.values.ids import AthleteId, SetId
from engine.values.load import SMALLEST_STEP, Basis, Load, Unit
from engine.values.sets import SetKind, SetRecord
from engine.volume.session_work import EASY_RIR, Session, Work, sessions_done
from engine.volume.spacing import NEW_RECOVERY_HOURS, cautions
from engine.volume.tally import tally, tally_each
from tests.engine.volume.invented import MONDAY
from tests.property.strategies import efforts, exercises, loads, sets_done

EXERCISES = catalogue().exercises
BODY = Load(Decimal(80), Unit.KG)


@st.composite
def records(draw: st.DrawFn, most_days: int = 7) -> SetRecord:
    """A set of any kind, of a real exercise, in one week."""
    one = replace(draw(sets_done()), exercise=draw(exercises).name)
    on = MONDAY + timedelta(days=draw(st.integers(0, most_days - 1)))
    return SetRecord(SetId(1), one, on, datetime.combine(on, time(18), UTC), 1)


weeks = st.lists(records(), max_size=12)


@given(weeks)
def test_parts_add_up(week: list[SetRecord]) -> None:
    for one in tally(week, EXERCISES, body_weight=BODY).values():
        assert sum(one.reps.values()) == one.fractional
        assert 0 <= one.direct <= one.fractional
        assert 0 <= one.direct_days <= one.days <= 7
        assert (one.days == 0) == (one.fractional == 0)


@given(weeks, st.randoms(use_true_random=False))
def test_order_does_not_matter(week: list[SetRecord], chance) -> None:
    shuffled = list(week)
    chance.shuffle(shuffled)

    assert tally(shuffled, EXERCISES, body_weight=BODY) == tally(week, EXERCISES, body_weight=BODY)


@given(weeks, records())
def test_a_warm_up_changes_nothing_and_a_work_set_takes_nothing_away(week: list[SetRecord], one: SetRecord) -> None:
    before = tally(week, EXERCISES)
    warm_up = replace(one, done=replace(one.done, kind=SetKind.WARMUP))
    after = tally([*week, one], EXERCISES)

    assert tally([*week, warm_up], EXERCISES) == before
    assert all(after[muscle].fractional >= known.fractional for muscle, known in before.items())


@given(weeks, weeks)
def test_two_athletes_are_what_each_is_alone(week: list[SetRecord], other: list[SetRecord]) -> None:
    ana, ben = AthleteId(1), AthleteId(2)
    both = tally_each([*((ana, one) for one in week), *((ben, one) for one in other)], EXERCISES)

    assert both.get(ana, {}) == tally(week, EXERCISES)
    assert both.get(ben, {}) == tally(other, EXERCISES)


@given(loads(), exercises)
def test_what_a_load_resists_with_leads_back_to_the_load(load: Load, exercise: Exercise) -> None:
    mass = resistance(load, exercise, BODY)

    assert mass is not None
    assert mass >= 0
    if mass > 0 or load.basis is not Basis.BODY:
        assert abs(as_told(mass, load, exercise, BODY).amount - load.amount) <= SMALLEST_STEP


def works() -> st.SearchStrategy[tuple[Work, ...]]:
    hard = st.integers(1, 20).map(lambda halves: Decimal(halves) / 2)
    name = exercises.map(lambda one: one.name)
    return st.lists(st.builds(Work, name, hard, st.booleans(), st.booleans()), max_size=4).map(tuple)


@given(st.lists(st.tuples(st.integers(0, 400), works()), max_size=6))
def test_cautions_are_only_for_sessions_near_each_other_that_share_muscles(drawn) -> None:
    start = datetime(2026, 3, 2, tzinfo=UTC)
    ordered = sorted(drawn, key=lambda pair: pair[0])
    sessions = [Session(f"{n}", start + timedelta(hours=hours), work) for n, (hours, work) in enumerate(ordered)]

    for one in cautions(sessions, EXERCISES):
        assert 0 <= one.hours < min(one.enough, NEW_RECOVERY_HOURS)
        earlier, later = sessions[int(one.earlier)], sessions[int(one.later)]
        assert one.before in {work.exercise for work in earlier.work}
        assert one.after in {work.exercise for work in later.work}
        assert set(one.muscles) <= {*EXERCISES[one.before].prime} & {*EXERCISES[one.after].prime}
        assert one.reason.endswith(".")


@given(st.lists(records(most_days=3), max_size=8), efforts)
def test_easier_sets_never_add_a_caution(week: list[SetRecord], effort) -> None:
    easy = replace(effort, rir=max(effort.rir, EASY_RIR))
    eased = [
        replace(one, done=replace(one.done, effort=easy, failure=False, missed=False, reps=max(1, one.done.reps)))
        for one in week
    ]

    assert cautions(sessions_done(eased, UTC), EXERCISES) == ()

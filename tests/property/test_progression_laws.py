"""Laws of progression, on invented sessions: reps never cost load, an undone set leaves no trace, units commute."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from functools import reduce
from types import ModuleType

from hypothesis import given
from hypothesis import strategies as st

from engine.loading import Loadable
from engine.loading.exercises import _loadable
from engine.loading.gym import KG_GYM
from engine.progression import double, load_step, prescribe, set_wave
from engine.progression.ceiling import CEILING
from engine.progression.terms import terms_of
from engine.values.exercise import Equipment, Loading
from engine.values.load import Load, Unit
from engine.values.plan import Deload, Slot
from engine.values.prescription import Exposure, Prescription
from engine.values.schemes import DoubleProgression, LoadStep, Scheme, SetWave
from tests.property.strategies import any_kg, climbing_slots, exposures, kg_steps

BARBELL: Loadable = _loadable(Loading.BAR, Equipment.BARBELL, KG_GYM, Unit.KG)
WEEK = timedelta(days=7)


def asked(slot: Slot, sessions: tuple[Exposure, ...], deload: Deload | None = None, pain: bool = False) -> Prescription:
    today = (sessions[-1].on if sessions else date(2026, 1, 5)) + WEEK
    return prescribe(slot, sessions, today=today, loadable=BARBELL, deload=deload, pain=pain)


def heaviest(prescription: Prescription) -> Load | None:
    return max((one.load for one in prescription.sets if one.load is not None), default=None)


def with_reps(sessions: tuple[Exposure, ...], session: int, place: int, reps: int) -> tuple[Exposure, ...]:
    sets = sessions[session].sets
    better = replace(sets[place], done=replace(sets[place].done, reps=reps, missed=False))
    changed = replace(sessions[session], sets=(*sets[:place], better, *sets[place + 1 :]))
    return (*sessions[:session], changed, *sessions[session + 1 :])


def without(sessions: tuple[Exposure, ...], session: int, place: int) -> tuple[Exposure, ...]:
    sets = sessions[session].sets
    left = (*sets[:place], *sets[place + 1 :])
    kept = (replace(sessions[session], sets=left),) if left else ()
    return (*sessions[:session], *kept, *sessions[session + 1 :])


@st.composite
def circumstances(draw: st.DrawFn, sessions: tuple[Exposure, ...]) -> tuple[Exposure, ...]:
    """The same sessions, some after time away, some while pain was told of."""
    found = []
    for one in sessions:
        hurt = draw(st.booleans())
        away = draw(st.sampled_from((None, 7, 21, 70)))
        found.append(replace(one, hurt=hurt, held=hurt and draw(st.booleans()), away=away))
    return tuple(found)


@given(climbing_slots(), exposures(any_kg), st.data(), st.booleans(), st.booleans())
def test_more_reps_in_any_past_set_never_lower_the_next_load(
    slot: Slot, sessions: tuple[Exposure, ...], data: st.DataObject, eased: bool, pain: bool
) -> None:
    if not sessions:
        return
    session = data.draw(st.integers(0, len(sessions) - 1))
    sessions = data.draw(circumstances(sessions))
    place = data.draw(st.integers(0, len(sessions[session].sets) - 1))
    reps = sessions[session].sets[place].done.reps + data.draw(st.integers(1, 5))
    deload = Deload() if eased else None

    before = heaviest(asked(slot, sessions, deload, pain))
    after = heaviest(asked(slot, with_reps(sessions, session, place, reps), deload, pain))

    assert before is None or (after is not None and before <= after)


@given(climbing_slots(), exposures(), exposures())
def test_an_undone_session_leaves_no_trace(
    slot: Slot, sessions: tuple[Exposure, ...], more: tuple[Exposure, ...]
) -> None:
    alone = asked(slot, sessions)
    asked(slot, sessions + more)

    assert asked(slot, sessions) == alone


@given(climbing_slots(), exposures(), st.data())
def test_evidence_names_only_sets_that_stand(slot: Slot, sessions: tuple[Exposure, ...], data: st.DataObject) -> None:
    if not sessions:
        return
    session = data.draw(st.integers(0, len(sessions) - 1))
    place = data.draw(st.integers(0, len(sessions[session].sets) - 1))
    gone = sessions[session].sets[place].id
    left = without(sessions, session, place)

    evidence = asked(slot, left).evidence

    assert gone not in evidence
    assert set(evidence) <= {record.id for exposure in left for record in exposure.sets}


@given(climbing_slots().filter(lambda slot: isinstance(slot.load, Load)), exposures(), st.booleans())
def test_a_log_in_pounds_asks_for_the_same_load(slot: Slot, sessions: tuple[Exposure, ...], whole: bool) -> None:
    def told_in_pounds(load: Load) -> Load:
        pounds = load.in_unit(Unit.LB)
        return replace(pounds, amount=pounds.amount.quantize(1)) if whole else pounds

    in_pounds = tuple(
        replace(
            exposure,
            sets=tuple(
                replace(record, done=replace(record.done, load=told_in_pounds(record.done.load)))
                for record in exposure.sets
                if record.done.load is not None
            ),
        )
        for exposure in sessions
    )

    assert asked(slot, in_pounds) == asked(slot, sessions)


@given(climbing_slots(), exposures(any_kg), st.booleans(), st.booleans())
def test_every_load_asked_for_can_be_loaded(
    slot: Slot, sessions: tuple[Exposure, ...], eased: bool, pain: bool
) -> None:
    for one in asked(slot, sessions, Deload() if eased else None, pain).sets:
        assert one.load is None or BARBELL.at_most(one.load) == one.load


@given(climbing_slots(), exposures(any_kg), st.booleans())
def test_a_deload_asks_for_no_more_of_anything(slot: Slot, sessions: tuple[Exposure, ...], pain: bool) -> None:
    full, eased = asked(slot, sessions, None, pain), asked(slot, sessions, Deload(), pain)

    assert 1 <= len(eased.sets) <= len(full.sets)
    for light, heavy in zip(eased.sets, full.sets, strict=False):
        assert light.load is None or (heavy.load is not None and light.load <= heavy.load)


@given(climbing_slots(st.one_of(st.builds(LoadStep, any_kg), st.builds(DoubleProgression, any_kg))), exposures())
def test_no_step_is_larger_than_the_ceiling_unless_nothing_smaller_can_be_loaded(
    slot: Slot, sessions: tuple[Exposure, ...]
) -> None:
    proving = [exposure for exposure in sessions if not exposure.deload]
    next_load = heaviest(asked(slot, sessions))
    if not proving or next_load is None:
        return
    lifted = max(record.done.load.amount for record in proving[-1].sets if record.done.load)
    smallest = BARBELL.at_least(Load(lifted + 1, Unit.KG))

    assert smallest is not None
    assert next_load.amount <= max(lifted * (1 + CEILING), smallest.amount)


@given(climbing_slots(), exposures(any_kg))
def test_a_painful_movement_is_never_asked_for_more_than_was_lifted(slot: Slot, sessions: tuple[Exposure, ...]) -> None:
    proving = [exposure for exposure in sessions if not exposure.deload]
    hurting = heaviest(asked(slot, sessions, pain=True))
    healthy = heaviest(asked(slot, sessions))

    assert hurting is None or healthy is None or hurting <= healthy
    if proving and hurting is not None and asked(slot, sessions).verdict.value in ("add load", "repeat"):
        lifted = max(record.done.load for record in proving[-1].sets if record.done.load is not None)
        assert hurting <= max(lifted, BARBELL.nearest(lifted))


FOLDS: dict[type[Scheme], ModuleType] = {SetWave: set_wave, LoadStep: load_step, DoubleProgression: double}
stepping = st.one_of(st.builds(SetWave, st.just(4), kg_steps), *(st.builds(kind, kg_steps) for kind in list(FOLDS)[1:]))


@given(climbing_slots(stepping), exposures(), exposures())
def test_a_fold_in_two_parts_is_the_fold_over_all(
    slot: Slot, early: tuple[Exposure, ...], late: tuple[Exposure, ...]
) -> None:
    rule = FOLDS[type(slot.scheme)]
    start = rule.start(slot.scheme, terms_of(slot, early + late, BARBELL))

    assert reduce(rule.advance, late, reduce(rule.advance, early, start)) == reduce(rule.advance, early + late, start)

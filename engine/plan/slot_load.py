"""Load, basis and step of a slot, from what its line says and how the exercise is loaded."""

from __future__ import annotations

import re
from dataclasses import dataclass, replace

from engine.plan.defaults import basis_of, step_of
from engine.plan.limits import HEAVIEST_KG
from engine.plan.parts import AtTop, Exertion, LoadOrEffort, Mass, Misses, NoLoad, Step, ToFind, Wave, Weight, WhenMade
from engine.plan.report import Bag, Placed, Report
from engine.values.effort import Effort
from engine.values.exercise import Exercise, Loading
from engine.values.load import Basis, Load, Unit, plain
from engine.values.plan import FindIt

LONE_DASH = re.compile(r" [-–—] $")
SMALL_NUMBER = re.compile(r"(?:@|at|load|weight) ?:? ?\d[\d.,]*(?<![.,])", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class Loads:
    """`step` None: the line names none. `unit` and `basis` are those that a step of this slot takes."""

    load: Load | FindIt | None
    step: Load | None
    unit: Unit
    basis: Basis


def settle_signs(bag: Bag, exercise: Exercise, unit: Unit) -> Bag:
    """The parts with every +5 kg and every @8 decided, as far as the line decides them.

    On a body-weight exercise a bare +5 kg is the load where another step stands on the line, and open where nothing
    else tells. A small number behind @ is the effort where a load is told, and the load where an effort is.
    """
    return _settle_at(_settle_steps(bag, exercise), unit)


def _settle_steps(bag: Bag, exercise: Exercise) -> Bag:
    steps = bag.every(Step)
    bare = [(step, at) for step, at in steps if step.bare]
    if exercise.loading is not Loading.BODY or not bare or bag.has(Weight, ToFind, NoLoad):
        return bag
    first, at = bare[0]
    if len(steps) > 1:
        weight = Weight(replace(first.mass, basis=Basis.BODY))
        return Bag([Placed(weight, at) if placed.part is first else placed for placed in bag.placed], bag.report)
    if not bag.has(WhenMade, AtTop, Misses):
        amount = bag.report.text[at:].split(",")[0].strip()
        bag.report.error(
            at,
            amount,
            "whether that is the load or the step of the load",
            f"at {amount} (load) or then {amount} (step)",
        )
    return bag


def _settle_at(bag: Bag, unit: Unit) -> Bag:
    open_numbers = bag.every(LoadOrEffort)
    if not open_numbers:
        return bag
    number, at = open_numbers[0]
    told_load, told_effort = bag.has(Weight, ToFind, NoLoad), bag.has(Exertion)
    if told_load == told_effort:
        typed = plain(number.amount)
        read = SMALL_NUMBER.search(bag.report.text, at)
        bag.report.error(
            at,
            read[0] if read else typed,
            "whether that is the load or the effort",
            f"at {typed} {unit.value}, or rpe {typed}",
        )
        return bag
    settled = Exertion(Effort.from_rpe(number.amount)) if told_load else Weight(Mass(number.amount))
    return Bag([Placed(settled, at) if placed.part is number else placed for placed in bag.placed], bag.report)


def loads_of(bag: Bag, exercise: Exercise, unit: Unit) -> Loads:
    """Load and step of the slot; what cannot be is reported and left out."""
    load = _load(bag, exercise, unit)
    wave = bag.one("progression", Wave)
    implied = basis_of(exercise)
    step_unit = load.unit if isinstance(load, Load) else (wave[0].maximum.unit if wave else None) or unit
    basis = load.basis if isinstance(load, Load) else implied
    step = bag.one("step", Step)
    if step is None:
        return Loads(load, None, step_unit, basis)
    part, at = step
    told_unit = part.mass.unit or step_unit
    mass = Mass(part.mass.amount, told_unit, part.mass.basis or basis)
    if isinstance(load, FindIt) or load is None:
        step_unit = told_unit
    if told_unit is not step_unit:
        bag.report.error(
            at,
            f"+{part.mass.amount} {told_unit.value}",
            f"a step in {step_unit.value}, like the load",
            f"then +2.5 {step_unit.value}",
        )
        return Loads(load, None, step_unit, basis)
    stepped = load_of(mass, exercise, told_unit, at, bag.report)
    return Loads(load, stepped, told_unit, stepped.basis if stepped else basis)


def default_step(exercise: Exercise, loads: Loads) -> Load:
    """The step where the line names a rule that needs one and no step."""
    return step_of(exercise, loads.unit, loads.basis)


def _load(bag: Bag, exercise: Exercise, unit: Unit) -> Load | FindIt | None:
    told = bag.one("load", Weight, ToFind, NoLoad)
    if told is None:
        return None if exercise.goes_without_load or bag.has(Wave) else FindIt()
    part, at = told
    if isinstance(part, Weight):
        if exercise.loading is Loading.BODY and LONE_DASH.search(bag.report.text, 0, at):
            read = bag.report.text[at:].split(",")[0].strip()
            bag.report.error(at, f"- {read}", "whether it is added or taken off", f"at +{read}, or {read} help")
            return None
        return load_of(part.mass, exercise, unit, at, bag.report)
    return FindIt() if isinstance(part, ToFind) else None


def load_of(mass: Mass, exercise: Exercise, unit: Unit, at: int, report: Report) -> Load | None:
    """The mass as a load of this exercise; None, and a report, where it cannot be one."""
    basis = mass.basis or basis_of(exercise)
    told = mass.unit or unit
    read = report.text[at : at + 30].split(", ")[0].strip()
    if basis is Basis.BODY and exercise.loading not in (Loading.BODY, Loading.STACK, Loading.BAND):
        report.error(
            at, read, f"a load of the {exercise.name}, which is not done on body weight", f"at 40 {told.value}"
        )
        return None
    try:
        load = Load(mass.amount, told, basis)
    except ValueError:
        report.error(at, read, "a load that can be lifted", f"at 40 {told.value}")
        return None
    if abs(load.kilograms()) > HEAVIEST_KG:
        report.error(at, read, f"a load up to {HEAVIEST_KG} kg", f"at 40 {told.value}")
        return None
    return load

"""Equipment in words: what an athlete tells of her gym, and the same told back.

line    = what masses
bar 20 kg                       also: ez bar, trap bar, smith bar
collars 2.5 kg                  what one of the two weighs
plates 25x1 20x2 10 5 2.5       how many pairs after the x; without one there are enough
dumbbells 2-24 by 2, 27.5, 30   single ones, or from - to by a step
kettlebells 8 12 16
stack 5-100 by 5, add 2.5       the pin's row; what may be hung on it

Lines, or parts between semicolons, in any order. What is not told stays as it is. A mass without a unit is in the
athlete's.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from decimal import Decimal

from engine.loading.gym import AMPLE, Bar, Gym, Plates, Stack, default_gym
from engine.values.exercise import Equipment
from engine.values.load import HEAVIEST, SMALLEST_STEP, Load, Unit, plain
from engine.values.problem import Problem

BARS = {
    "bar": Equipment.BARBELL,
    "barbell": Equipment.BARBELL,
    "ez bar": Equipment.EZ_BAR,
    "trap bar": Equipment.TRAP_BAR,
    "smith bar": Equipment.SMITH_MACHINE,
}
BAR_NAMES = {equipment: name for name, equipment in reversed(BARS.items())}

WHAT = re.compile(
    r"(ez bar|trap bar|smith bar|barbell|bar|collars?|plates?|dumbbells?|kettlebells?|stack)\s*:?\s+", re.IGNORECASE
)
MASS = re.compile(r"(\d{1,4}(?:[.,]\d{1,3})?)\s*(kg|lbs?)?", re.IGNORECASE)
TO = re.compile(r"\s*(?:-|–|to)\s*")
BY = re.compile(r"\s*by\s*", re.IGNORECASE)
TIMES = re.compile(r"\s*[x×]\s*(\d{1,2})(?:\s*pairs?)?", re.IGNORECASE)
ADD = re.compile(r"[\s,]*(?:add(?:-on)?s?)\s*", re.IGNORECASE)
GAP = re.compile(r"[\s,]*")
MOST_SIZES = 200

EXAMPLES = {
    "bar": "bar 20 kg",
    "collar": "collars 2.5 kg",
    "plate": "plates 25x1 20x2 10x2 5x2 2.5x2 1.25x2",
    "dumbbell": "dumbbells 2-24 by 2, 27.5",
    "kettlebell": "kettlebells 8 12 16",
    "stack": "stack 5-100 by 5, add 2.5",
}


@dataclass(frozen=True, slots=True)
class GymRead:
    """The gym with everything that could be read in it, and what could not."""

    gym: Gym
    problems: tuple[Problem, ...]


@dataclass(frozen=True, slots=True)
class _Run:
    """One mass (`first` is `last`), or a row of them; `pairs` where they are counted."""

    first: Load
    last: Load
    step: Load | None = None
    pairs: int | None = None


class _Unreadable(Exception):
    """Where a part stops making sense; caught in this module alone."""


def read_gym(text: str, unit: Unit, gym: Gym | None = None) -> GymRead:
    """The gym that the words tell, starting from the one known or the usual one.

    Shape: one problem for each part not read; the parts around it hold.
    """
    told, problems = gym or default_gym(unit), []
    for number, line in enumerate(text.splitlines(), 1):
        for part in filter(None, map(str.strip, line.split(";"))):
            try:
                told = _with(part, unit, told)
            except (_Unreadable, ValueError):
                problems.append(_problem(number, part))
    return GymRead(told, tuple(problems))


def gym_in_words(gym: Gym) -> str:
    """The gym as lines that read back to the same gym."""
    straight = gym.bar(Equipment.BARBELL)
    collars = straight.collars if straight is not None else None
    return "\n".join(
        (
            *(f"{BAR_NAMES[kind]} {bar.mass}" for kind, bar in gym.bars if kind in BAR_NAMES),
            *((f"collars {Load(collars.amount / 2, collars.unit)}",) if collars is not None else ()),
            "plates " + ", ".join(_pair_told(size, held) for size, held in gym.plates.pairs),
            "dumbbells " + _row_told(gym.dumbbells),
            "kettlebells " + _row_told(gym.kettlebells),
            f"stack {gym.stack.first} - {gym.stack.top} by {gym.stack.step}"
            + "".join(f", add {piece}" for piece in gym.stack.add_ons),
        )
    )


def _with(part: str, unit: Unit, gym: Gym) -> Gym:
    what = WHAT.match(part)
    if what is None:
        raise _Unreadable
    name, rest = what[1].lower(), part[what.end() :]
    if name in BARS:
        return _with_bar(gym, BARS[name], _only(rest, unit))
    if name.startswith("collar"):
        collars = _only(rest, unit)
        both = replace(collars, amount=2 * collars.amount)
        return replace(
            gym, bars=tuple((kind, replace(bar, collars=both if both.amount else None)) for kind, bar in gym.bars)
        )
    if name == "stack":
        return replace(gym, stack=_stack(rest, unit))
    runs = tuple(_runs(rest, unit))
    if name.startswith("plate"):
        return replace(gym, plates=Plates(tuple(_pair(run) for run in runs)))
    sizes = tuple(dict.fromkeys(size for run in runs for size in _sizes(run)))
    return replace(gym, dumbbells=sizes) if name.startswith("dumbbell") else replace(gym, kettlebells=sizes)


def _with_bar(gym: Gym, kind: Equipment, mass: Load) -> Gym:
    known = dict(gym.bars)
    collars = known[kind].collars if kind in known else None
    return replace(gym, bars=tuple({**known, kind: Bar(mass, collars)}.items()))


def _stack(text: str, unit: Unit) -> Stack:
    row, *added = ADD.split(text)
    runs = tuple(_runs(row, unit))
    if len(runs) != 1 or runs[0].step is None:
        raise _Unreadable
    pieces = tuple(run.first for piece in added for run in _runs(piece, unit))
    return Stack(runs[0].first, runs[0].step, runs[0].last, pieces)


def _only(text: str, unit: Unit) -> Load:
    runs = tuple(_runs(text, unit))
    if len(runs) != 1 or runs[0].first != runs[0].last or runs[0].pairs is not None:
        raise _Unreadable
    return runs[0].first


def _runs(text: str, unit: Unit) -> Iterator[_Run]:
    at = GAP.match(text).end()  # type: ignore[union-attr]  # a gap may be empty, so it always matches
    if at == len(text):
        raise _Unreadable
    while at < len(text):
        run, at = _run(text, at, unit)
        yield run
        at = GAP.match(text, at).end()  # type: ignore[union-attr]  # as above


def _run(text: str, at: int, unit: Unit) -> tuple[_Run, int]:
    first, at = _mass(text, at, unit)
    if times := TIMES.match(text, at):
        return _Run(first, first, pairs=int(times[1])), times.end()
    to = TO.match(text, at)
    if to is None:
        return _Run(first, first), at
    last, at = _mass(text, to.end(), unit)
    by = BY.match(text, at)
    if by is None:
        raise _Unreadable
    step, at = _mass(text, by.end(), unit)
    return _Run(first.in_unit(step.unit), last.in_unit(step.unit), step), at


def _mass(text: str, at: int, unit: Unit) -> tuple[Load, int]:
    found = MASS.match(text, at)
    if found is None:
        raise _Unreadable
    told = unit if found[2] is None else Unit.KG if found[2].lower() == "kg" else Unit.LB
    amount = Decimal(found[1].replace(",", "."))
    if amount > HEAVIEST or amount != amount.quantize(SMALLEST_STEP):
        raise _Unreadable
    return Load(amount, told), found.end()


def _pair(run: _Run) -> tuple[Load, int]:
    if run.step is not None:
        raise _Unreadable
    return run.first, AMPLE if run.pairs is None else run.pairs


def _sizes(run: _Run) -> Iterable[Load]:
    if run.pairs is not None:
        raise _Unreadable
    if run.step is None:
        return (run.first,)
    if run.step.amount <= 0 or run.last < run.first:
        raise _Unreadable
    steps = int((run.last.amount - run.first.amount) / run.step.amount)
    if steps >= MOST_SIZES:
        raise _Unreadable
    return (Load(run.first.amount + n * run.step.amount, run.step.unit) for n in range(steps + 1))


def _pair_told(size: Load, held: int) -> str:
    return str(size) if held == AMPLE else f"{size} x {held}"


def _row_told(sizes: Sequence[Load]) -> str:
    return ", ".join(f"{plain(size.amount)} {size.unit.value}" for size in sizes)


def _problem(number: int, part: str) -> Problem:
    example = next((text for name, text in EXAMPLES.items() if name in part.lower()), EXAMPLES["plate"])
    return Problem(number, part[:60], "equipment and its masses", example)

"""Messages that say known sets: the truth is thrown first, then written in one of the ways people write.

Each way is one that can only mean these sets (common practice, no source); what is open by nature, such as a light
pair or a falling list of small numbers, is not thrown here.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from random import Random

from engine.catalogue.catalogue import catalogue
from engine.reading.weighing.resolve import BASES
from engine.values.ids import ExerciseName
from engine.values.load import Basis, Load, Unit, plain
from engine.values.sets import SetDone
from tests.property import told_words as words
from tests.property.told_words import Names

HALF = Decimal("2.5")
TIMES = ("x", "x", "x", " x ", " x ", "×", "х", "*", " × ", "X")
UNITS = {
    Unit.KG: ("", "", "", "", "kg", " kg", "kgs", " kilos"),
    Unit.LB: ("", "", "", "lb", "lbs", " lb", "#", " pounds"),
}


@dataclass(frozen=True)
class Told:
    """A message and what it says, told by one who lifts in `unit`. `ways` names the form and the dress it was given."""

    text: str
    sets: tuple[SetDone, ...]
    unit: Unit = Unit.KG
    on: date | None = None
    pain: bool = False
    ways: tuple[str, ...] = ()


@dataclass
class Teller:
    """One message being written: its lift, its language, its load as it is spelled."""

    dice: Random
    language: str
    lift: Names
    unit: Unit = Unit.KG

    def __post_init__(self) -> None:
        self.name = self.dice.choice(self.lift.said.get(self.language) or self.lift.said["en"])
        loading = catalogue().exercises[ExerciseName(self.lift.shown)].loading
        self.basis = BASES.get(loading, Basis.TOTAL)
        self.times = self.dice.choice(TIMES)
        self.unit_word = self.dice.choice(UNITS[self.unit])

    def one(self, reps: int, load: Decimal | None, **more: object) -> SetDone:
        told = None if load is None else Load(load, self.unit, self.basis)
        return SetDone(ExerciseName(self.lift.shown), reps, told, **more)  # type: ignore[arg-type]

    def spelled(self, load: Decimal, unit: bool = True) -> str:
        """The load as this lifter writes it, with a decimal comma on the continent."""
        text = plain(load)
        if self.language != "en" and self.dice.random() < 0.8:
            text = text.replace(".", ",")
        return text + (self.unit_word if unit else "")

    def word(self, table: dict[str, tuple[str, ...]]) -> str:
        return self.dice.choice(table.get(self.language) or table["en"])

    def heavy(self) -> Decimal:
        """A load that is no count of reps, and that is pressed overhead, too. It has halves of 2.5 only where a unit or
        a point makes it one number.
        """
        return HALF * self.dice.randint(14, 54)

    def reps_list(self, least: int = 2, most: int = 5) -> list[int]:
        count, first = self.dice.randint(least, most), self.dice.randint(3, 14)
        reps = [first]
        for _ in range(count - 1):
            reps.append(max(1, reps[-1] - self.dice.choice((0, 0, 1, 1, 2))))
        return reps


Written = tuple[str, list[SetDone]]
Form = Callable[[Teller], Written]


def alike(teller: Teller) -> Written:
    """So many sets of so many reps at one load."""
    dice, x = teller.dice, teller.times
    n, r, load = dice.randint(2, 5), dice.randint(1, 12), teller.heavy()
    w, bare = teller.spelled(load), teller.spelled(load, unit=False)
    ways = [
        f"{n}{x}{r} {w}",
        f"{n}{x}{r} @ {w}",
        f"{n}{x}{r} @{w}",
        f"{n}{x}{r}@{w}",
        f"{n}{x}{r} ({w})",
        f"{n}{x}{r}, {w}",
        f"{n}{x}{r} {teller.word(words.WITH)} {w}",
        f"{w} {n}{x}{r}",
        f"{w}, {n}{x}{r}",
        f"{w}: {n}{x}{r}",
        f"{n}{x}{r}{x}{w}",
        teller.word(words.SETS_OF).format(n=n, r=r, w=w),
        f"{w} {n}s {r}r",
        f"{w} {n}s/{r}r",
        f"{w} x {n}s x {r}r",
        f"{n}s {r}r @ {w}",
        f"({bare}{x}{r}){x}{n}",
        f"({bare} x{r}) {n}x",
        f"{bare} x {r} (x{n})",
        f"{n} x ({r} @ {bare})",
        f"sets {n} reps {r} weight {w}",
        f"reps {r} sets {n} weight {w}",
        f"sets: {n}, reps: {r}, weight: {w}",
        f"weight {w} reps {r} sets {n}",
        f"sets={n} reps={r} weight={bare}",
        f"= {n}{x}{r} @ {w}",
        f"{n}{x}{r} @@ {w}",
        f"{n} by {r} at {w}",
    ]
    if r >= n or r > 6:
        ways.append(f"{w}{x}{r}{x}{n}")
    if load > 2 * n * r:  # near the reps of all sets it may be their sum
        ways.append(f"= {n}{x}{r} = {w}")
    return dice.choice(ways), [teller.one(r, load)] * n


def one_by_one(teller: Teller) -> Written:
    """One load, told again with the reps of each set."""
    x, reps, load = teller.times, teller.reps_list(3), teller.heavy()
    w, bare = teller.spelled(load), plain(load)
    ways = [
        " ".join(f"{bare}{x.strip()}{count}" for count in reps),
        ", ".join(f"{w}{x}{count}" for count in reps),
        "\n".join(f"{w}{x}{count}" for count in reps),
        "; ".join(f"set {at} {w}{x}{count}" for at, count in enumerate(reps, 1)),
    ]
    return teller.dice.choice(ways), [teller.one(count, load) for count in reps]


def one_load(teller: Teller) -> Written:
    """One load, and the reps of each set."""
    dice, x = teller.dice, teller.times
    reps, load = teller.reps_list(3), teller.heavy()
    w, bare = teller.spelled(load), teller.spelled(load, unit=False)
    sign = dice.choice(("/", ",", "-", ", ", " / "))
    tight = dice.choice(("/", ",", "-"))
    listed, packed = sign.join(map(str, reps)), tight.join(map(str, reps))
    spaced = " ".join(map(str, reps))
    ways = [
        f"{w}{x}{packed}",
        f"{w}: {listed}",
        f"{w}: {spaced}",
        f"{w} {spaced}",
        f"{w} {packed}",
        f"{spaced} @ {w}",
        f"{packed} @ {w}",
        f"{spaced} {teller.word(words.WITH)} {w}",
        f"{w} x{reps[0]}" + "".join(f", x{count}" for count in reps[1:]),
        f"{bare}x{reps[0]}" + "".join(f" x{count}" for count in reps[1:]),
        f"reps {spaced} weight {w}",
        f"weight {w} reps {spaced}",
        f"with {w}: {spaced}",
    ]
    return dice.choice(ways), [teller.one(count, load) for count in reps]


def pairs(teller: Teller) -> Written:
    """A load of its own for each set."""
    dice, x = teller.dice, teller.times
    reps = teller.reps_list(2, 5)
    first, step = teller.heavy(), dice.choice((HALF, Decimal(5), Decimal(10)))
    loads = [first + step * at for at in range(len(reps))]
    told = list(zip(reps, loads, strict=True))
    spelled = {load: teller.spelled(load) for load in loads}
    bare = {load: plain(load) for load in loads}
    tight = x.strip()
    ways = [
        " ".join(f"{bare[w]}{tight}{r}" for r, w in told),
        ", ".join(f"{spelled[w]}{x}{r}" for r, w in told),
        "\n".join(f"{spelled[w]}{x}{r}" for r, w in told),
        "; ".join(f"{spelled[w]}{x}{r}" for r, w in told),
        " / ".join(f"{bare[w]}{tight}{r}" for r, w in told),
        " ".join(f"S{at} {bare[w]}{tight}{r}" for at, (r, w) in enumerate(told, 1)),
        ", ".join(f"set {at} {bare[w]}{tight}{r}" for at, (r, w) in enumerate(told, 1)),
        " ".join(f"{at}) {bare[w]}{tight}{r}" for at, (r, w) in enumerate(told, 1)),
        "\n".join(f"- {bare[w]}{tight}{r}" for r, w in told),
        " ".join(f"{r}{tight}{bare[w]}" for r, w in told),
        " ".join(f"{r}@{bare[w]}" for r, w in told),
        ", ".join(f"{spelled[w]} for {r}" for r, w in told),
        "\n".join(f"{bare[w]} {r}" for r, w in told),
    ]
    if all(load == int(load) for load in loads):
        ways.append(" ".join(f"{bare[w]}/{r}" for r, w in told))
    return dice.choice(ways), [teller.one(r, w) for r, w in told]


def shared_reps(teller: Teller) -> Written:
    """A list of loads, and reps that hold for all of them."""
    dice, r = teller.dice, teller.dice.randint(2, 10)
    first, step = HALF * 2 * dice.randint(8, 40), dice.choice((Decimal(5), Decimal(10)))
    loads = [first + step * at for at in range(dice.randint(2, 4))]
    bare = [plain(load) for load in loads]
    ways = [
        f"({','.join(bare)})x{r}",
        f"{'/'.join(bare)} x{r}",
        f"{len(loads)}x{r} {'/'.join(bare)}",
        f"{r}s: {' '.join(bare)}",
        f"{len(loads)}x{r} @ {'/'.join(bare)}",
    ]
    if r == 2:
        ways.append(f"doubles at {', '.join(bare)}")
    if r == 3:
        ways.append(f"triples at {', '.join(bare)}")
    return dice.choice(ways), [teller.one(r, load) for load in loads]

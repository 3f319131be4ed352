"""Sets told with two or three habits at once, their truth thrown first: lists behind counts, open sets, results, marks
of the last set with lighter sets behind, warm-ups up to a top set, groups joined by signs, numbers that are no sets.

Each way can only mean these sets (common practice, no source); the words are from memory.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from decimal import Decimal
from random import Random

from engine.values.effort import Effort
from engine.values.load import plain
from engine.values.sets import SetDone, SetKind, Side
from tests.property import told_words as words
from tests.property.told_messages import Teller, Told

Combined = tuple[str, list[SetDone]]
SETTINGS = (
    "seat 4",
    "seat 3, pad 2",
    "pin 7",
    "tempo 3-1-0",
    "@ 3010",
    "rest 90s",
    "2' rest",
    "(rest 2 min)",
    "2 min between",
)
OPEN = (
    ("max x{n}: {reps}", False),
    ("amrap x{n} {reps}", False),
    ("{n}x amrap: {reps}", False),
    ("x{n} to failure: {reps}", True),
    ("{n}x failure: {reps}", True),
    ("{n} sets to failure: {reps}", True),
)
LAST = (
    ("last set @{e}", "effort"),
    ("last one rpe {e}", "effort"),
    ("rir {k} on the last", "effort"),
    ("last set to failure", "failure"),
    ("last set only {r}", "reps"),
)


def listed_behind_a_count(teller: Teller) -> Combined:
    """ "3x9/8/6 65", "65kg 3x9-8-6"."""
    dice, load = teller.dice, teller.heavy()
    reps = sorted((dice.randint(3, 14) for _ in range(dice.randint(3, 5))), reverse=True)
    told = f"{len(reps)}{teller.times.strip()}{dice.choice('/-').join(map(str, reps))}"
    w = f"{plain(load)}{dice.choice(('', 'kg', ' kg'))}"
    return dice.choice((f"{told} {w}", f"{w} {told}", f"{told} @ {w}")), [teller.one(r, load) for r in reps]


def open_sets(teller: Teller) -> Combined:
    """So many sets without a count of reps, and what came of each."""
    dice, load = teller.dice, teller.heavy()
    reps = teller.reps_list(2, 4)
    way, failed = dice.choice(OPEN)
    text = way.format(n=len(reps), reps=dice.choice((" ", ", ", "/")).join(map(str, reps)))
    return f"{plain(load)}kg {text}", [teller.one(r, load, failure=failed) for r in reps]


def results_of_a_group(teller: Teller) -> Combined:
    """ "65x9x3: 9 9 7"."""
    dice, load, x = teller.dice, teller.heavy() + 30, teller.times.strip()
    n, r = dice.randint(2, 5), dice.randint(6, 12)
    reps = [*[r] * (n - 1), r - dice.randint(0, 3)]
    w = plain(load)
    group = dice.choice((f"{w}{x}{r}{x}{n}", f"{w}{x}{r} {x}{n}", f"{n}{x}{r} {w}", f"{n}{x}{r}{x}{w}"))
    results = dice.choice((f": {' '.join(map(str, reps))}", f" ({','.join(map(str, reps))})"))
    return group + results, [teller.one(one, load) for one in reps]


def _changed(one: SetDone, kind: str, effort: Effort, reps: int) -> SetDone:
    if kind == "effort":
        return replace(one, effort=effort)
    return replace(one, failure=True) if kind == "failure" else replace(one, reps=reps)


def last_and_lighter(teller: Teller) -> Combined:
    """A mark of the last set, and lighter sets behind it."""
    dice, load, x = teller.dice, teller.heavy() + 40, teller.times.strip()
    n, r, count, k = dice.randint(3, 5), dice.randint(5, 10), dice.randint(10, 16), dice.randint(1, 3)
    lighter, fewer = load - 20, r - dice.randint(1, 3)
    way, kind = dice.choice(LAST)
    said = way.format(e=10 - k, k=k, r=fewer)
    effort = Effort(Decimal(k)) if "rir" in way else Effort.from_rpe(Decimal(10 - k))
    drop = dice.random() < 0.5
    link = dice.choice((", drop ", ", drop to ")) if drop else dice.choice((", then ", "; then ", " then "))
    sets = [teller.one(r, load)] * n
    sets[-1] = _changed(sets[-1], kind, effort, fewer)
    sets.append(teller.one(count, lighter, kind=SetKind.DROP if drop else SetKind.WORK))
    return f"{n}{x}{r} {plain(load)}{dice.choice((' ', ', '))}{said}{link}{plain(lighter)}{x}{count}", sets


def effort_and_last(teller: Teller) -> Combined:
    """An effort of the group, and another one, or failure, of its last set."""
    dice, load, x = teller.dice, teller.heavy(), teller.times.strip()
    n, r, k = dice.randint(2, 5), dice.randint(3, 10), dice.randint(2, 4)
    group = Effort(Decimal(k))
    sets = [teller.one(r, load, effort=group)] * n
    said, kind = dice.choice(
        (
            (f"last set rir {k - 1}", "effort"),
            (f"last one rir {k - 1}", "effort"),
            ("last set to failure", "failure"),
        )
    )
    sets[-1] = _changed(sets[-1], kind, Effort(Decimal(k - 1)), r)
    gap = dice.choice((" ", ", "))
    return f"{n}{x}{r} {plain(load)}kg rir {k}{gap}{said}", sets


def up_to_a_top_set(teller: Teller) -> Combined:
    """Warm-ups, a top set, back-off sets."""
    dice, x = teller.dice, teller.times.strip()
    top = teller.heavy() + 60
    first, second, back = top - 50, top - 30, top - 15
    r, n, many = dice.randint(1, 5), dice.randint(1, 3), dice.randint(5, 8)
    word = dice.choice(("top set", "topset", "top set", "work"))
    off = dice.choice(("back off", "backoffs", "back-offs", "then"))
    text = (
        f"{dice.choice(('warm up', 'wu', 'warmups:'))} {plain(first)}{x}8 {plain(second)}{x}4, "
        f"{word} {plain(top)}{x}{r}, {off} " + " ".join([f"{plain(back)}{x}{many}"] * n)
    )
    warm = [teller.one(8, first, kind=SetKind.WARMUP), teller.one(4, second, kind=SetKind.WARMUP)]
    return text, [*warm, teller.one(r, top), *[teller.one(many, back)] * n]


def single_and_group(teller: Teller) -> Combined:
    """A set named by its reps, and a group behind it."""
    dice, top, x = teller.dice, teller.heavy() + 60, teller.times.strip()
    name, count = dice.choice((("single", 1), ("double", 2), ("triple", 3)))
    n, r, light = dice.randint(2, 5), dice.randint(3, 8), top - 20
    link, at = dice.choice((", then ", ", ", " then ")), dice.choice((" at ", " ", " with "))
    return (
        f"{dice.choice(('', 'a ', 'heavy ', 'up to a '))}{name}{at}{plain(top)}{link}{n}{x}{r} {plain(light)}",
        [teller.one(count, top), *[teller.one(r, light)] * n],
    )


def joined_groups(teller: Teller) -> Combined:
    """Two groups of one lift with a sign between them."""
    dice, load, x = teller.dice, teller.heavy() + 40, teller.times.strip()
    n, r, m, s = dice.randint(2, 5), dice.randint(3, 10), dice.randint(1, 3), dice.randint(8, 15)
    one, other, light = plain(load), plain(load - 20), load - 20
    sign = dice.choice((" + ", ", ", "; ", " then ", "\n", " | "))
    ways = (f"{n}{x}{r} {one}kg{sign}{m}{x}{s} {other}kg", f"{one} {n}{x}{r}{sign}{other} {m}{x}{s}")
    return dice.choice(ways), [*[teller.one(r, load)] * n, *[teller.one(s, light)] * m]


def counted_up(teller: Teller) -> Combined:
    """Each set with its number, and a mark of its own."""
    dice, x = teller.dice, teller.times.strip()
    first = teller.heavy()
    reps = teller.reps_list(2, 4)
    loads = [first + 5 * at for at in range(len(reps))]
    label = dice.choice(("#{n} ", "set {n} ", "S{n} ", "{n}) ", "set {n}: ", "#{n}: "))
    marks = [dice.choice(("", " @8", " rpe 9", " (easy)", " to failure")) for _ in reps]
    sets = []
    for r, w, mark in zip(reps, loads, marks, strict=True):
        effort = {" @8": Effort.from_rpe(Decimal(8)), " rpe 9": Effort.from_rpe(Decimal(9))}.get(mark)
        sets.append(teller.one(r, w, effort=effort, failure=mark == " to failure"))
    told = [
        f"{label.format(n=at)}{plain(w)}{x}{r}{mark}"
        for at, (r, w, mark) in enumerate(zip(reps, loads, marks, strict=True), 1)
    ]
    return dice.choice((", ", " ")).join(told), sets


def efforts_each(teller: Teller) -> Combined:
    """An effort for each set of a group."""
    dice, load, x = teller.dice, teller.heavy(), teller.times.strip()
    efforts = sorted(dice.sample(range(6, 11), 3))
    listed = dice.choice((" @{} @{} @{}", " @{}, {}, {}", " rpe {} {} {}", " rpe {}/{}/{}", " rpe {}, {} and {}"))
    r = dice.randint(3, 10)
    sets = [teller.one(r, load, effort=Effort.from_rpe(Decimal(one))) for one in efforts]
    return f"3{x}{r} {plain(load)}kg{listed.format(*efforts)}", sets


def beside_the_sets(teller: Teller) -> Combined:
    """Rest, tempo, a seat, a place in the stack beside sets whose load is told."""
    dice, load, x = teller.dice, teller.heavy(), teller.times.strip()
    n, r, reps = dice.randint(2, 5), dice.randint(5, 12), teller.reps_list(3, 4)
    w, listed = f"{plain(load)}kg", "/".join(map(str, reps))
    text, told = dice.choice(((f"{n}{x}{r} {w}", [r] * n), (f"{w} {listed}", reps), (f"{listed} @ {w}", reps)))
    return f"{text}{dice.choice((' ', ', '))}{dice.choice(SETTINGS)}", [teller.one(one, load) for one in told]


def sides_of_pairs(teller: Teller) -> Combined:
    dice, load = teller.dice, Decimal(teller.dice.randint(5, 16) * 2)
    left, right = dice.randint(6, 12), dice.randint(6, 12)
    w, x = f"{load}kg", teller.times.strip()
    ways = (
        f"left {left}{x}{w}, right {right}{x}{w}",
        f"{w} L {x}{left} R {x}{right}",
        f"{w} {left}L/{right}R",
        f"L{left} R{right} @ {w}",
    )
    return dice.choice(ways), [teller.one(left, load, side=Side.LEFT), teller.one(right, load, side=Side.RIGHT)]


COMBINED: tuple[tuple[Callable[[Teller], Combined], words.Names | None], ...] = (
    (listed_behind_a_count, None),
    (open_sets, None),
    (results_of_a_group, None),
    (last_and_lighter, None),
    (effort_and_last, None),
    (up_to_a_top_set, None),
    (single_and_group, None),
    (joined_groups, None),
    (counted_up, None),
    (efforts_each, None),
    (beside_the_sets, None),
    (sides_of_pairs, words.ON_ONE_SIDE[0]),
)


def combined(dice: Random) -> Told:
    """One lift told with several habits at once, in English, at times on a day or in an odd dress."""
    form, lift = dice.choice(COMBINED)
    teller = Teller(dice, "en", lift or dice.choice(words.ON_A_BAR))
    text, sets = form(teller)
    gap = "\n" if "\n" in text else dice.choice((" ", " ", ": ") if not text.startswith(("#", "L", "{")) else (" ",))
    text = f"{teller.name}{gap}{text}"
    dress = dice.random()
    text = text.upper() if dress < 0.05 else f"- {text}" if dress < 0.1 else text
    return Told(text, tuple(sets), ways=("combined", form.__name__))

"""Forms of sets that are no plain ones: body, hands, sides, drops, warm-ups, misses, holds, carries; and all forms."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

from engine.values.load import Basis, Load, Unit, plain
from engine.values.sets import SetKind, Side
from tests.property import told_words as words
from tests.property.told_messages import HALF, Form, Teller, Written, alike, one_by_one, one_load, pairs, shared_reps
from tests.property.told_words import Names


def of_the_body(teller: Teller) -> Written:
    """Body weight alone, or with weight added."""
    dice, x = teller.dice, teller.times
    reps = teller.reps_list(3, 5)
    n, r = dice.randint(2, 5), dice.randint(3, 15)
    more = HALF * dice.randint(1, 12)
    unit = "" if teller.unit is Unit.KG and dice.random() < 0.5 else teller.unit.value
    w = f"{plain(more).replace('.', ',') if teller.language != 'en' else plain(more)}{unit}"
    spaced, slashed = " ".join(map(str, reps)), "/".join(map(str, reps))
    plainly = [
        (spaced, reps),
        (slashed, reps),
        (", ".join(map(str, reps)), reps),
        (",".join(map(str, reps)), reps),
        ("-".join(map(str, reps)), reps),
        (f"{n}{x}{r}", [r] * n),
        (f"bw {n}{x}{r}", [r] * n),
        (f"{n}{x}{r} bw", [r] * n),
        (" ".join(f"x{count}" for count in reps), reps),
    ]
    added = [
        (f"+{w} {n}{x}{r}", [r] * n),
        (f"{n}{x}{r} +{w}", [r] * n),
        (f"{n}{x}{r} @ +{w}", [r] * n),
        (f"bw+{w} {n}{x}{r}", [r] * n),
        (f"bw + {w} {n}{x}{r}", [r] * n),
        (f"BW +{w} {n}{x}{r}", [r] * n),
        (f"+{w} {slashed}", reps),
        (f"+{w}: {spaced}", reps),
        (f"+{w} x {r}", [r]),
        (f"bw+{w} {slashed}", reps),
        (f"weighted {w} {n}{x}{r}", [r] * n),
    ]
    if dice.random() < 0.4:
        text, told = dice.choice(plainly)
        return text, [
            replace(teller.one(count, Decimal(0)), load=Load(Decimal(0), Unit.KG, Basis.BODY)) for count in told
        ]
    text, told = dice.choice(added)
    return text, [teller.one(count, more) for count in told]


def in_the_hands(teller: Teller) -> Written:
    """Two dumbbells."""
    dice, x = teller.dice, teller.times
    n, r, reps = dice.randint(2, 5), dice.randint(6, 15), teller.reps_list(3, 4)
    load = Decimal(dice.randint(6, 30) * 2)
    unit = teller.unit.value
    spaced = " ".join(map(str, reps))
    ways = [
        (f"{load}s {n}{x}{r}", [r] * n),
        (f"{n}{x}{r} {load}s", [r] * n),
        (f"{n}{x}{r} with the {load}s", [r] * n),
        (f"with the {load}s: {spaced}", reps),
        (f"with {load}s: {spaced}", reps),
        (f"{load}s: {spaced}", reps),
        (f"{load}s, {', '.join(map(str, reps))}", reps),
        (f"{load}s {spaced}", reps),
        (f"{load}s x {r}", [r]),
        (f"{load}{unit} {n}{x}{r}", [r] * n),
        (f"{n}{x}{r} {load}{unit}", [r] * n),
        (f"{n}{x}{r} {load}{unit} {teller.word(words.PER_HAND)}", [r] * n),
        (f"{load}{unit} {teller.word(words.PER_HAND)}, {n}{x}{r}", [r] * n),
        (f"{n}{x}{r} 2x{load}{unit}", [r] * n),
        (f"2x{load}{unit} {'/'.join(map(str, reps))}", reps),
    ]
    text, told = dice.choice(ways)
    return text, [teller.one(count, load) for count in told]


def on_each_side(teller: Teller) -> Written:
    dice = teller.dice
    n, r, load = dice.randint(2, 4), dice.randint(6, 12), Decimal(dice.randint(4, 15) * 2)
    w = f"{load}{teller.unit.value}"
    left, right = dice.randint(5, 12), dice.randint(5, 12)
    sides = [teller.one(left, load, side=Side.LEFT), teller.one(right, load, side=Side.RIGHT)]
    each = teller.word(words.PER_SIDE)
    ways = [
        (f"{n}x{r} {each} {w}", [teller.one(r, load)] * n),
        (f"{w} {n}x{r} {each}", [teller.one(r, load)] * n),
        (f"{w} {n} sets of {r} {each}", [teller.one(r, load)] * n),
        (f"{w} L {left} R {right}", sides),
        (f"{w} {left}L {right}R", sides),
        (f"{w} left {left}, right {right}", sides),
    ]
    return dice.choice(ways)


def dropped(teller: Teller) -> Written:
    """One set, and the same lift lighter at once behind it."""
    dice, x = teller.dice, teller.times.strip()
    first = HALF * 4 * dice.randint(9, 20)
    count = dice.randint(2, 3)
    told = [(first - 20 * at, dice.randint(5, 12)) for at in range(count)]
    sign = dice.choice((">", " > ", " -> ", "->", " → ", " drop ", " drop to ", ", drop ", " dropset "))
    sets = [
        teller.one(r, w, kind=SetKind.DROP if at else SetKind.WORK, failure=False) for at, (w, r) in enumerate(told)
    ]
    text = sign.join(f"{plain(w)}{x}{r}" for w, r in told)
    return text, sets


def rest_paused(teller: Teller) -> Written:
    dice, load = teller.dice, teller.heavy()
    reps = [dice.randint(8, 12), *(dice.randint(1, 4) for _ in range(dice.randint(1, 3)))]
    plus = "+".join(map(str, reps))
    w = teller.spelled(load)
    text = dice.choice((f"{w}x{plus}", f"{w} x {plus}", f"{w} x {'/'.join(map(str, reps))} rest pause"))
    kinds = [SetKind.WORK] + [SetKind.REST_PAUSE] * (len(reps) - 1)
    return text, [teller.one(r, load, kind=kind) for r, kind in zip(reps, kinds, strict=True)]


def warmed_up(teller: Teller) -> Written:
    dice, x = teller.dice, teller.times.strip()
    n, r, load = dice.randint(2, 4), dice.randint(3, 8), teller.heavy() + 40
    light, count = load - 30, dice.randint(3, 10)
    w, less, warm = plain(load), plain(light), teller.word(words.WARMED_UP)
    text = dice.choice(
        (
            f"{less}{x}{count} ({warm}), {n}{x}{r} {w}",
            f"{warm} {less}{x}{count}, then {n}{x}{r} {w}",
            f"{warm}: {less}{x}{count}\n{n}{x}{r} {w}",
            f"{less}{x}{count} (w), {w}{x}{r}" + f", {w}{x}{r}" * (n - 1),
            f"{warm} {less}{x}{count}; {n}{x}{r} {w}",
        )
    )
    return text, [teller.one(count, light, kind=SetKind.WARMUP), *[teller.one(r, load)] * n]


def missed(teller: Teller) -> Written:
    dice, x = teller.dice, teller.times.strip()
    load, r = teller.heavy() + 30, dice.randint(2, 6)
    over = load + 5
    w, more = plain(load), plain(over)
    text = dice.choice((f"{w}{x}{r}, {more}{x}0", f"{w}{x}{r}, {more} miss", f"{w}{x}{r} then missed {more}"))
    return text, [teller.one(r, load), teller.one(0, over, missed=True)]


def held(teller: Teller) -> Written:
    dice, x = teller.dice, teller.times
    n, seconds = dice.randint(2, 4), dice.choice((20, 30, 40, 45, 50, 60, 75, 90))
    minutes, rest = divmod(seconds + 30, 60)
    several = [seconds, seconds - 5, seconds - 10][: dice.randint(2, 3)]
    ways = [
        (f"{n}{x}{seconds}s", [seconds] * n),
        (f"{n}{x}{seconds} sec", [seconds] * n),
        (f"{n}{x}{seconds}", [seconds] * n),
        (f"{n} sets of {seconds}s", [seconds] * n),
        (f"{seconds}s", [seconds]),
        (f'{seconds}"', [seconds]),
        (f"{minutes or 1}:{rest:02}", [(minutes or 1) * 60 + rest]),
        (f"{n}{x}{minutes or 1}:{rest:02}", [(minutes or 1) * 60 + rest] * n),
        (f"{minutes or 1}'{rest:02}\"", [(minutes or 1) * 60 + rest]),
        (" ".join(f"{one}s" for one in several), several),
        (", ".join(f"{one}s" for one in several), several),
        ("/".join(f"{one}s" for one in several), several),
        (f"{seconds}s x {n}", [seconds] * n),
    ]
    text, told = dice.choice(ways)
    return text, [
        replace(teller.one(1, None), load=Load(Decimal(0), Unit.KG, Basis.BODY), seconds=Decimal(one)) for one in told
    ]


def carried(teller: Teller) -> Written:
    dice = teller.dice
    n, metres, load = dice.randint(2, 4), dice.choice((20, 25, 30, 40, 50)), Decimal(dice.randint(8, 24) * 2)
    w = f"{load}{teller.unit.value}"
    ways = [
        (f"{w} {n}x{metres}m", n),
        (f"{n}x{metres}m {w}", n),
        (f"{n} x {metres} m @ {w}", n),
        (f"{w} {metres}m", 1),
        (f"{w} {metres} metres x {n}", n),
        (f"{n}x{metres}m with {w} {teller.word(words.PER_HAND)}", n),
    ]
    text, count = dice.choice(ways)
    return text, [teller.one(1, load, metres=Decimal(metres))] * count


FORMS: tuple[tuple[Form, tuple[Names, ...], int], ...] = (
    (alike, words.ON_A_BAR, 8),
    (one_load, words.ON_A_BAR, 7),
    (one_by_one, words.ON_A_BAR, 3),
    (pairs, words.ON_A_BAR, 6),
    (shared_reps, words.ON_A_BAR, 2),
    (of_the_body, words.WITH_THE_BODY, 5),
    (in_the_hands, words.IN_THE_HANDS, 4),
    (on_each_side, words.ON_ONE_SIDE, 2),
    (dropped, words.ON_A_BAR, 2),
    (rest_paused, words.ON_A_BAR, 2),
    (warmed_up, words.ON_A_BAR, 2),
    (missed, words.ON_A_BAR, 1),
    (held, words.HELD, 2),
    (carried, words.CARRIED, 1),
)
MAY_BE_MARKED = (alike, one_load)
"""Forms whose sets are one group: an effort or failure behind them holds for it."""

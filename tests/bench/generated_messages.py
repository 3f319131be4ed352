"""Messages as a dice throws them: lines of a gym, their parts mixed, slips of the thumb, odd letters, absurd numbers.

One seed gives the same messages again. `tests/bench/reading_fuzz.py` reads a million of them, a test reads a few.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from decimal import Decimal
from functools import cache
from random import Random

from engine.reading.values import Context, Planned
from engine.reading.words.lexicon import lexicon
from engine.values.ids import ExerciseName, SetId
from engine.values.load import Basis, Load, Unit
from engine.values.plan import RepRange, Reps
from engine.values.sets import SetDone, SetRecord

NAMES = (
    "bench",
    "squat",
    "deads",
    "row",
    "ohp",
    "pull ups",
    "dips",
    "plank",
    "rdl",
    "lat raise",
    "hammer curls",
    "1 arm row",
    "leg press",
    "farmers walk",
    "good mornings",
    "hip thrust",
    "t-bar row",
    "Kniebeuge",
    "sentadilla",
    "жим лежа",
    "développé couché",
    "c&j",
    "db bench",
    "incline db press",
    "cable fly",
    "bulgarian split squat",
    "skull crushers",
)
COUNTS = ("1", "2", "3", "5", "8", "10", "12", "15", "20", "25", "100", "0", "3.5", "7½", "two", "five")
LOADS = ("60", "82.5", "100", "52,5", "24k", "80kg", "135lb", "+20", "-15", "30s", "bw", "bar", "2 plates", "17.5 kg")
SIGNS = (
    "x",
    " x ",
    "×",
    "х",
    "*",
    " by ",
    "@",
    " @ ",
    "/",
    " / ",
    "-",
    " - ",
    "+",
    ",",
    ", ",
    "; ",
    ":",
    ": ",
    " ",
    " (",
    ") ",
    "\n",
    " for ",
    " at ",
    " with ",
    " then ",
    ">",
    " -> ",
    "=",
    "?",
    "!",
    "...",
    "%",
    "#",
    "°",
)
WORDS = (
    "rpe",
    "rir",
    "warm up",
    "wu",
    "drop",
    "failed",
    "to failure",
    "each side",
    "per leg",
    "L",
    "R",
    "left",
    "right",
    "last set",
    "3rd",
    "first",
    "same",
    "another",
    "again",
    "rounds",
    "sets of",
    "reps",
    "total",
    "each",
    "both",
    "not",
    "no",
    "sorry",
    "was",
    "should be",
    "delete",
    "undo",
    "swap",
    "for",
    "instead of",
    "skip",
    "remind me",
    "pause",
    "yesterday",
    "monday",
    "on the 12th",
    "12/03",
    "2025-03-14",
    "13.3.",
    "tomorrow",
    "3 days ago",
    "march",
    "rest 90",
    "tempo 3010",
    "seat 4",
    "knee pain 3/10",
    "felt good",
    "shoulder pinching",
    "as planned",
    "except",
    "only",
    "got",
    "in the tank",
    "more",
    "up 2.5",
    "minus 5",
    "plan",
    "week",
    "why",
    "how heavy",
    "date:",
    "said",
    "?",
    "A1",
    "B)",
    "1.",
    "set 2",
    "superset",
    "+",
    "w/",
    "amrap",
    "max",
    "partials",
    "my mate",
    "she",
    "locker 104",
    "zwargl",
)
ABSURD = (
    "1e309",
    "-0",
    "999999x999999",
    "1?5",
    "80qq",
    "00",
    "007",
    "3x-5",
    "1/0",
    "99999999999999999999",
    "0x0",
    "1:99",
    "25:61",
    "31/02",
    "2025-13-45",
    "9" * 40,
    "½½",
    "٣x٤",
    "１２×５",
    "x" * 30,
    "5,5,5,5,5,5,",
    "10^9",
    "NaN",
)
ODD_LETTERS = (
    "\u200b",
    "\u200d",
    "\ufeff",
    "\u202e",
    "\u0301",
    "\x00",
    "\x85",
    "\u2028",
    "🏋️",
    "👩‍👩‍👧",
    "ﬀ",
    "İ",
    "ß",
    "ǅ",
    "𝟛",
    "①",
    "\ud800",
    "ⅷ",
    "′",
    "“",
    "\t",
    "\r\n",
    "﹣",
    "＋",
    "ñ",
    "é",
    "ł",
    "ب",
    "漢",
    "\U0010ffff",
)
NOW = datetime(2025, 3, 14, 18, 20)  # noqa: DTZ001 — the athlete's local time
LONGEST = 4_096


DAYS = ("Monday", "Tuesday", "Thursday", "Friday", "Saturday")
LIFTS = {
    "squat": 100,
    "bench press": 75,
    "barbell row": 70,
    "romanian deadlift": 90,
    "lat pulldown": 65,
    "leg press": 150,
    "hip thrust": 110,
    "seated leg curl": 60,
}


def pasted_week() -> str:
    """Forty lines on five days, 320 sets, as somebody pastes them: about as long as a message may be."""
    lines = []
    for heavier, day in enumerate(DAYS):
        lines.append(day)
        for lift, usual in LIFTS.items():
            load = usual + heavier
            work = f"3x5 {load} @8, 3x8 {load * 9 // 10}kg, last set to failure, felt ok"
            lines.append(f"{lift}: wu {load // 2}kg x10, {load * 7 // 10}x5, then {work}, rest 2 min")
    return "\n".join(lines)


def messages(seed: int) -> Iterator[tuple[str, Context]]:
    """Messages without end, each with what is known before it."""
    dice = Random(seed)
    contexts = _contexts()
    while True:
        text = dice.choices(KINDS, SHARES)[0](dice)
        yield text[:LONGEST], dice.choice(contexts)


def set_line(dice: Random) -> str:
    """One exercise with its numbers, in one of the usual forms."""
    name, load, reps, sets = dice.choice(NAMES), dice.choice(LOADS), dice.choice(COUNTS), dice.choice(COUNTS[:8])
    listed = dice.choice((" ", ", ", "/")).join(dice.choices(COUNTS, k=dice.randint(2, 5)))
    form = dice.choice(
        (
            "{name} {sets}x{reps} {load}",
            "{name} {load} {sets}x{reps}",
            "{name} {load}x{reps}, {load}x{sets}",
            "{sets}x{reps} {name} @ {load}",
            "{name} {load} {listed}",
            "{name} {listed}",
            "{sets}x{reps}",
            "{load} {listed}",
            "{name} {sets} sets of {reps} at {load} rpe 8",
            "{name}: {load} x {reps} x {sets} @8",
        )
    )
    return form.format(name=name, load=load, reps=reps, sets=sets, listed=listed)


def _workout(dice: Random) -> str:
    return dice.choice(("\n", ", ", "; ", " / ")).join(set_line(dice) for _ in range(dice.randint(2, 6)))


def _mixed(dice: Random) -> str:
    """Parts of messages in no order."""
    parts: list[str] = []
    for _ in range(dice.randint(1, 14)):
        parts += (dice.choice(dice.choice((NAMES, COUNTS, LOADS, WORDS, WORDS))), dice.choice(SIGNS))
    return "".join(parts)


def _with_words(dice: Random) -> str:
    """A good line with words and stray numbers put into it."""
    words = set_line(dice).split(" ")
    for _ in range(dice.randint(1, 3)):
        words.insert(dice.randint(0, len(words)), dice.choice(dice.choice((WORDS, COUNTS, ABSURD))))
    return " ".join(words)


def _in_any_language(dice: Random) -> str:
    """Marks of sets, and what the files of all languages know, behind one another."""
    parts = [dice.choice(NAMES)]
    for _ in range(dice.randint(2, 8)):
        parts.append(dice.choice(MARKS) if dice.random() < SHARE_OF_MARKS else dice.choice(_all_known()))
    return " ".join(parts)


@cache
def _all_known() -> tuple[str, ...]:
    return tuple(sorted(lexicon().phrases))


def _slipped(dice: Random) -> str:
    """Letters left out, doubled, swapped, changed or cut off."""
    letters = list(dice.choice((set_line, _workout, _with_words))(dice))
    for _ in range(dice.randint(1, 4)):
        at = dice.randrange(len(letters)) if letters else 0
        slip = dice.randrange(5)
        if slip == 0:
            del letters[at : at + 1]
        elif slip == 1:
            letters[at:at] = letters[at : at + 1]
        elif slip == 2:
            letters[at : at + 2] = reversed(letters[at : at + 2])
        elif slip == 3:
            letters[at : at + 1] = [dice.choice("abxyz0159.,;@/-+ ")]
        else:
            del letters[dice.randint(at, len(letters)) :]
    return "".join(letters)


def _odd(dice: Random) -> str:
    """Letters of other scripts, signs that nobody sees, absurd numbers."""
    text = dice.choice((set_line, _mixed))(dice)
    for _ in range(dice.randint(1, 5)):
        at = dice.randint(0, len(text))
        text = text[:at] + dice.choice(dice.choice((ODD_LETTERS, ABSURD))) + text[at:]
    return text


def _noise(dice: Random) -> str:
    return "".join(
        chr(dice.choice((dice.randrange(32, 127), dice.randrange(0x500)))) for _ in range(dice.randint(0, 60))
    )


def _endless(dice: Random) -> str:
    """One part over and over, up to what a message may hold."""
    return (dice.choice((set_line, _mixed))(dice) + dice.choice(SIGNS)) * dice.randint(2, 40)


KINDS: tuple[Callable[[Random], str], ...] = (
    *(set_line, _workout, _mixed, _with_words, _slipped, _odd, _noise, _endless, _in_any_language),
)
SHARES = (15, 8, 25, 15, 12, 8, 3, 1, 13)
MARKS = (
    *("80x5", "3x5 100", "x8", "x3", "8", "+5", "@8", "(8)", "rpe 8", "at 80", "for 5", "in 30s", "bw", "bar", "L"),
    *("another", "another set", "one more", "same", "same again", "again", "two more", "twice", "drop", "then", "last"),
    *("last set", "each", "per side", "to failure", "failed", "missed", "(", ")", ",", ",", ",", "\n", "/", "-"),
)
SHARE_OF_MARKS = 0.7


def _contexts() -> tuple[Context, ...]:
    bench, squat, row = (ExerciseName(name) for name in ("barbell bench press", "barbell back squat", "barbell row"))
    load = Load(Decimal("82.5"), Unit.KG)
    slots = (Planned(squat, 3, Reps(5), load), Planned(row, 3, RepRange(8, 12), None))
    told = (
        SetDone(squat, 5, load),
        SetDone(bench, 8, Load(Decimal(60), Unit.KG)),
        SetDone(ExerciseName("pull-up"), 7, Load(Decimal(0), Unit.KG, Basis.BODY)),
    )
    records = tuple(
        SetRecord(SetId(place), one, NOW.date(), datetime(2025, 3, 14, 17, place, tzinfo=UTC), place, place)
        for place, one in enumerate(told)
    )
    plain = Context(now=NOW)
    planned = replace(plain, plan=slots, doing=squat, last={squat: load}, best={squat: load})
    return (
        Context(),
        plain,
        planned,
        replace(plain, unit=Unit.LB, doing=bench, load_first=True),
        replace(plain, recent=records, taught={"sq": squat}),
        replace(planned, recent=tuple(replace(one, on=NOW.date() - timedelta(days=1)) for one in records)),
    )

"""Laws of reading: any form that is written is read back, and no text raises."""

from __future__ import annotations

from decimal import Decimal
from operator import itemgetter

from hypothesis import assume, given, settings
from hypothesis import strategies as st

from engine.catalogue.catalogue import catalogue
from engine.reading import read, read_answer
from engine.reading.values import Asked, Context, Logged
from engine.values.load import Unit, plain
from engine.values.sets import SetDone, SetKind, Side

KNOWN = catalogue()
ASKED = read("row 4x11 57.5", Context(), KNOWN)

bar_loads = st.integers(81, 480).map(lambda half: Decimal(half) / 2)
overhead_loads = st.integers(81, 340).map(lambda half: Decimal(half) / 2)
"""More nobody presses overhead for twenty reps."""
near_loads = st.integers(120, 240).map(lambda half: Decimal(half) / 2)
"""None under half of another: a set that falls so far is asked about."""
reps = st.integers(1, 20)
few_sets = st.integers(2, 6)
units = st.sampled_from(["kg", "kgs", " kg", "lb", "lbs", " kilos", "#"])
times = st.sampled_from(["x", " x ", "×", " × ", "х", "X", "xx", "*", " by "])


def sets_of(text: str, context: Context | None = None) -> tuple[SetDone, ...]:
    outcome = read(text, context or Context(), KNOWN)
    assert isinstance(outcome, Logged), (text, outcome)
    return outcome.sets


def told(sets: tuple[SetDone, ...]) -> list[tuple[int, Decimal | None]]:
    return [(one.reps, one.load.amount if one.load else None) for one in sets]


@given(few_sets, reps, bar_loads, times, st.sampled_from([" ", " @ ", " @", " at ", " w ", ", ", " (", ": "]))
def test_sets_by_reps_with_the_load_behind(sets: int, count: int, load: Decimal, sign: str, link: str) -> None:
    close = ")" if link == " (" else ""

    assert told(sets_of(f"bench {sets}{sign}{count}{link}{plain(load)}{close}")) == [(count, load)] * sets


@given(few_sets, reps, bar_loads, times, units)
def test_a_load_with_its_unit_ahead(sets: int, count: int, load: Decimal, sign: str, unit: str) -> None:
    read_back = sets_of(f"squat {plain(load)}{unit} {sets}{sign}{count}")

    assert told(read_back) == [(count, load)] * sets
    assert all(
        one.load and one.load.unit is (Unit.LB if "l" in unit[:1] or unit == "#" else Unit.KG) for one in read_back
    )


@given(
    st.lists(st.tuples(near_loads, reps), min_size=1, max_size=6),
    times,
    st.sampled_from([" ", ", ", "; ", "\n", " / "]),
)
def test_pairs_of_load_and_reps(pairs: list[tuple[Decimal, int]], sign: str, between: str) -> None:
    text = between.join(f"{plain(load)}{sign}{count}" for load, count in pairs)

    assert told(sets_of(f"deadlift {text}")) == [(count, load) for load, count in pairs]


@given(st.lists(st.tuples(reps, near_loads), min_size=1, max_size=6), st.sampled_from([", ", " "]))
def test_pairs_of_reps_and_load(pairs: list[tuple[int, Decimal]], between: str) -> None:
    text = between.join(f"{count}x{plain(load)}" for count, load in pairs)

    assert told(sets_of(f"deadlift {text}")) == pairs


@given(
    bar_loads,
    st.lists(reps, min_size=2, max_size=6),
    st.sampled_from([" ", ", ", "/"]),
    st.sampled_from([" ", "x", ": "]),
)
def test_a_load_and_the_reps_of_each_set(load: Decimal, counts: list[int], between: str, link: str) -> None:
    assume(len(counts) > 2 or counts[0] >= counts[1])  # "80 3 8" may tell three sets of eight
    text = between.join(map(str, counts))

    assert told(sets_of(f"bench {plain(load)}{link}{text}")) == [(count, load) for count in counts]


@given(few_sets, reps, bar_loads)
def test_three_factors_with_the_load_last(sets: int, count: int, load: Decimal) -> None:
    assert told(sets_of(f"bench {sets}x{count}x{plain(load)}")) == [(count, load)] * sets


@given(few_sets, st.integers(7, 20), bar_loads)
def test_three_factors_with_the_load_first(sets: int, count: int, load: Decimal) -> None:
    assert told(sets_of(f"bench {plain(load)}x{count}x{sets}")) == [(count, load)] * sets


@given(few_sets, reps, st.integers(81, 480).filter(lambda half: half % 2))
def test_a_decimal_comma_behind_sets_by_reps_with_a_unit(sets: int, count: int, halves: int) -> None:
    load = Decimal(halves) / 2

    assert told(sets_of(f"Kniebeuge {sets}x{count} {plain(load).replace('.', ',')} kg")) == [(count, load)] * sets


@given(reps, st.lists(st.integers(1, 8), min_size=1, max_size=4), bar_loads)
def test_rest_pause(first: int, more: list[int], load: Decimal) -> None:
    read_back = sets_of(f"leg press {plain(load)}x{first}" + "".join(f"+{count}" for count in more))

    assert told(read_back) == [(count, load) for count in (first, *more)]
    assert [one.kind for one in read_back] == [SetKind.WORK] + [SetKind.REST_PAUSE] * len(more)


@given(
    st.lists(st.tuples(st.integers(70, 200), reps), min_size=2, max_size=4, unique_by=itemgetter(0)),
    st.sampled_from([">", "->", " drop ", " → "]),
)
def test_drops(pairs: list[tuple[int, int]], arrow: str) -> None:
    pairs = sorted(pairs, reverse=True)
    read_back = sets_of("leg extension " + arrow.join(f"{load}x{count}" for load, count in pairs))

    assert told(read_back) == [(count, Decimal(load)) for load, count in pairs]
    assert [one.kind for one in read_back[1:]] == [SetKind.DROP] * (len(pairs) - 1)


@given(few_sets, st.integers(10, 600), st.sampled_from(["s", " sec", " seconds", ""]))
def test_holds(sets: int, seconds: int, unit: str) -> None:
    read_back = sets_of(f"plank {sets}x{seconds}{unit}")

    assert [(one.reps, one.seconds) for one in read_back] == [(1, Decimal(seconds))] * sets


@given(st.integers(1, 9), st.integers(1, 59))
def test_minutes_and_seconds(minutes: int, seconds: int) -> None:
    (one,) = sets_of(f"plank {minutes}:{seconds:02}")

    assert one.seconds == minutes * 60 + seconds


@given(st.integers(8, 60), st.integers(5, 200), few_sets)
def test_carries(load: int, metres: int, sets: int) -> None:
    read_back = sets_of(f"farmers walk {load}kg {sets}x{metres}m")

    assert [(one.metres, one.load.amount if one.load else None) for one in read_back] == [(metres, load)] * sets


@given(st.integers(1, 30), st.integers(1, 30), st.integers(4, 60))
def test_sides_told_apart(left: int, right: int, load: int) -> None:
    read_back = sets_of(f"bss {load}kg L {left} R {right}")

    assert [(one.reps, one.side) for one in read_back] == [(left, Side.LEFT), (right, Side.RIGHT)]


@given(few_sets, reps, bar_loads, st.integers(10, 20).map(lambda half: Decimal(half) / 2))
def test_effort_behind_a_group(sets: int, count: int, load: Decimal, rpe: Decimal) -> None:
    read_back = sets_of(f"squat {sets}x{count} {plain(load)} @{plain(rpe)}")

    assert [one.effort.rpe if one.effort else None for one in read_back] == [rpe] * sets


@given(st.sampled_from(["bench", "squat", "deadlift", "ohp", "rdl"]), few_sets, reps, overhead_loads)
def test_capitals_change_nothing(name: str, sets: int, count: int, load: Decimal) -> None:
    text = f"{name} {sets}x{count} {plain(load)}"

    assert sets_of(text.upper()) == sets_of(text)


@given(few_sets, reps, bar_loads, st.integers(0, 7))
def test_two_neighbouring_letters_swapped(sets: int, count: int, load: Decimal, at: int) -> None:
    name = "deadlift"
    at = min(at, len(name) - 2)
    slipped = name[:at] + name[at + 1] + name[at] + name[at + 2 :]

    assert told(sets_of(f"{slipped} {sets}x{count} {plain(load)}")) == [(count, load)] * sets


@given(st.text(max_size=300))
@settings(max_examples=300)
def test_no_text_raises(text: str) -> None:
    read(text, Context(), KNOWN)


WORDS = (
    "bench squat row plank bss x × х @ / - + , ( ) : ; > ? ! . ½ 3x12 80 5 1e309 -0 999999x999999 52,5 90,5x5 rpe rir",
    "kg lb s m plates bar bw drop wu failed 3rd rep each L R of for and then rounds total sets reps not no sorry same",
    "was last first yesterday 12/03 13.3. 2025-03-02 tomorrow remind me pause until swap skip undo as planned except",
    "1:30 40m 30s ٣ 🏋 \u200d \u202e got half +2.5 -20 6s: triple singles date: \n",
)
SHARDS = st.sampled_from([word for line in WORDS for word in line.split(" ")])


@given(st.lists(st.tuples(SHARDS, st.sampled_from(["", " ", "  ", "\n"])), max_size=30))
@settings(max_examples=500)
def test_no_mixture_of_set_words_raises(shards: list[tuple[str, str]]) -> None:
    text = "".join(word + gap for word, gap in shards)
    outcome = read(text, Context(), KNOWN)

    if isinstance(outcome, Logged):
        assert outcome.sets
    assert isinstance(ASKED, Asked)
    read_answer(text, ASKED, Context(), KNOWN)

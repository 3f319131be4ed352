"""Sets told by pointing at others: once more, in words again, or once for several lifts."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import said, situation


@pytest.mark.parametrize("parting", [", ", ", and ", " and ", "\n"])
@pytest.mark.parametrize(
    ("again", "more"),
    [
        ("another one the same", 1),
        ("another set", 1),
        ("same again twice", 2),
        ("another two sets like that", 2),
        ("two more sets", 2),
        ("3 more sets", 3),
        ("2 more like that", 2),
        ("x2 more", 2),
    ],
)
def test_a_set_told_as_the_one_before_is_that_set_again(parting: str, again: str, more: int) -> None:
    assert said(f"bench 72.5x6{parting}{again}") == f"barbell bench press {more + 1}×6 at 72.5 kg"


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        pytest.param("bench 72.5x6, same weight 5 5", "6 at 72.5 kg, 2×5 at 72.5 kg", id="same weight tells no repeat"),
        pytest.param("bench 3x6 72.5, another set", "4×6 at 72.5 kg", id="one set more behind a group"),
    ],
)
def test_what_is_repeated(text: str, meant: str) -> None:
    assert said(text) == f"barbell bench press {meant}"


@pytest.mark.parametrize(
    "text",
    [
        pytest.param("bench 72.5x6, 2 more", id="reps or sets"),
        pytest.param("bench 72.5 6 6 5, another two sets like that", id="like which of them"),
        pytest.param("bench 72.5 6 6 6, last 4", id="the last of them, or one more"),
    ],
)
def test_a_repeat_that_may_be_two_things_is_asked(text: str) -> None:
    assert said(text).startswith("ask: ")


@pytest.mark.parametrize("link", [", so ", ", that's ", " - ", ", "])
@pytest.mark.parametrize("words", ["three sixes", "three sets of six", "3 sets of 6"])
def test_sets_counted_once_more_in_words_are_no_new_ones(link: str, words: str) -> None:
    assert said(f"bench 6 6 6 at 72.5{link}{words}") == "barbell bench press 3×6 at 72.5 kg"


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        pytest.param("bench 3x6 72.5, three sixes at 60", "3×6 at 72.5 kg, 3×6 at 60 kg", id="a load of its own"),
        pytest.param("bench 72.5 6 6 6 = 18", "3×6 at 72.5 kg", id="the sum of the reps"),
        pytest.param("bench 72.5 6 6 6, total 18", "3×6 at 72.5 kg", id="the total of the reps"),
    ],
)
def test_words_behind_the_sets(text: str, meant: str) -> None:
    assert said(text) == f"barbell bench press {meant}"


def test_words_that_count_other_sets_are_asked() -> None:
    assert said("bench 6 6 6 at 72.5, so four sixes").startswith("ask: ")


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        pytest.param(
            "squat and leg press both 3x9, 85 and 150",
            "barbell back squat 3×9 at 85 kg; leg press 3×9 at 150 kg",
            id="a load for each",
        ),
        pytest.param(
            "squat/bench 4x6 90/70",
            "barbell back squat 4×6 at 90 kg; barbell bench press 4×6 at 70 kg",
            id="with slashes",
        ),
        pytest.param(
            "squat, bench and pendlay row 3x5 at 110, 85 and 65",
            "barbell back squat 3×5 at 110 kg; barbell bench press 3×5 at 85 kg; pendlay row 3×5 at 65 kg",
            id="three lifts",
        ),
        pytest.param(
            "db curl and triceps pushdown, both 3x14/3x11",
            "dumbbell curl 3×14; triceps pushdown 3×11",
            id="a pair for each",
        ),
    ],
)
def test_sets_told_once_for_several_lifts(text: str, meant: str) -> None:
    assert said(text) == meant


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        pytest.param("push ups 22 + 19 + 16", "push-up 22, 19, 16", id="sets with a plus between them"),
        pytest.param("pull ups 13 + 4 + 3", "pull-up 13, 4 rest-pause, 3 rest-pause", id="rest-pause"),
        pytest.param("deadlift 170 single, then 140 for 2x4", "conventional deadlift 1 at 170 kg, 2×4 at 140 kg",
                     id="for sets by reps"),
        pytest.param("squat 130x3, dropped to 105 for 3x7", "barbell back squat 3 at 130 kg, 3×7 at 105 kg",
                     id="several sets at a lower load are back-off sets"),
        pytest.param("squat 130x3, dropped to 105x7", "barbell back squat 3 at 130 kg, 7 at 105 kg drop", id="a drop"),
        pytest.param("cable fly 22x12, dropset 16x10, 11x9",
                     "cable fly 12 at 22 kg, 10 at 16 kg drop, 9 at 11 kg drop", id="a chain of drops"),
        pytest.param("bench 67.5 5 5 5 @8", "barbell bench press 3×5 at 67.5 kg RPE 8", id="an effort of equal sets"),
        pytest.param("3x db curl 14kg 3x9", "dumbbell curl 3×9 at 14 kg each", id="sets counted twice"),
        pytest.param("3x db curl 14kg 9", "dumbbell curl 3×9 at 14 kg each", id="sets counted in front"),
        pytest.param("bench 3 times 7 at 62.5", "barbell bench press 3×7 at 62.5 kg", id="three times seven"),
        pytest.param("farmers 2x26k for 40m, three times", "farmer's walk 3×40 m at 26 kg each", id="a carry thrice"),
    ],
)  # fmt: skip
def test_how_many_sets_were_meant(text: str, meant: str) -> None:
    assert said(text) == meant


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("press banca 72,5x6, otras dos series", 3),
        ("panca 72,5x6, altre due serie", 3),
        ("supino 72,5x6, mais duas séries", 3),
        ("bänkpress 72,5x6, två set till", 3),
        ("bankdrücken 72,5 dreimal sechs", 3),
        ("bench 72.5, twice 6", 2),
        ("bench 72.5 6 reps x 4", 4),
        ("bench 72.5, 6 reps, 3 times", 3),
        ("bench 72.5 6 times, 3 sets", 3),
        ("3 sets of bench, 72.5x6", 3),
        ("bench 1) 72.5x6 2) 72.5x6 3) 72.5x6", 3),
    ],
)
def test_so_many_sets_in_every_language(text: str, meant: int) -> None:
    assert said(text) == f"barbell bench press {meant}×6 at 72.5 kg"


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("plank drei mal 40 sekunden", "plank 3×40 s"),
        ("plank twice 30s", "plank 2×30 s"),
        ("90 push ups in sets of 15", "push-up 6×15"),
        ("pull ups 9 8 7 + 2 negatives", "pull-up 9, 8, 7"),
        ("bench 95x5, 95x4+1 miss", "barbell bench press 5 at 95 kg, 4 at 95 kg missed"),
        ("deadlift 165x2, 175 1 (f)", "conventional deadlift 2 at 165 kg, 0 at 175 kg missed"),
        ("bench 80: 8, 8, 7 dips: 9, 9", "barbell bench press 2×8 at 80 kg, 7 at 80 kg; dip 2×9"),
        ("squat 95 5 (easy) 5 5 (hard)", "barbell back squat 3×5 at 95 kg"),
        ("leg curl 37.5x11 seated", "seated leg curl 11 at 37.5 kg"),
    ],
)
def test_counts_and_what_is_none(text: str, meant: str) -> None:
    assert said(text) == meant


@pytest.mark.parametrize(
    "text",
    [
        pytest.param("bench 130kg 4/9 x 5", id="two numbers and a slash are no ladder"),
        pytest.param("2x db curl 14kg 3x9", id="two counts of sets"),
        pytest.param("bench 80 5 out of 10", id="so many of how many"),
        pytest.param("90 push ups in sets of 20", id="sets that do not make up the whole"),
        pytest.param("squat 140x2+1 (failed third)", id="a miss of one of two"),
        pytest.param("bench plate and a half 8 8", id="plates that nothing counts"),
    ],
)
def test_numbers_that_do_not_agree_are_asked(text: str) -> None:
    assert said(text).startswith("ask: ")


@pytest.mark.parametrize(
    ("text", "sets"),
    [("as planned except i did 4 sets", 4), ("as planned except only 2 sets", 2), ("as written apart from 5 sets", 5)],
)
def test_as_planned_with_another_count_of_sets(text: str, sets: int) -> None:
    context = situation(doing="barbell bench press", plan=[("barbell bench press", 3, 5, "77.5")])

    assert said(text, context) == f"barbell bench press {sets}×5 at 77.5 kg"


SNATCHING = situation(doing="snatch", last={"snatch": "65"})


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        pytest.param("another 3 of the same", "request: repeat 3", id="so many of the same"),
        pytest.param("then another 3 of the same", "request: repeat 3", id="then so many of the same"),
        pytest.param("another two of them", "request: repeat 2", id="so many of them"),
        pytest.param("another 4 of these", "request: repeat 4", id="so many of these"),
        pytest.param("2 of the same again", "request: repeat 2", id="of the same with no another"),
        pytest.param("another 8 of the same", "snatch 8 at 65 kg", id="many are reps"),
        pytest.param("2 of these were ugly", "ask: snatch 2 at 65 kg", id="some of those that stand"),
    ],
)
def test_so_many_of_those_are_sets_like_the_last(text: str, meant: str) -> None:
    assert said(text, SNATCHING) == meant

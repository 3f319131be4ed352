"""The exercises and names that come with the program hold together."""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping
from decimal import Decimal
from importlib.resources import files

import pytest

from engine.catalogue.catalogue import catalogue, normalise
from engine.values.exercise import Equipment, Exercise, FailureGuard, Loading, Measure, Pattern
from engine.values.muscles import Muscle

EXERCISES = tuple(catalogue().exercises.values())

POSSIBLE_LOADING: Mapping[Equipment, frozenset[Loading]] = {
    Equipment.BARBELL: frozenset({Loading.BAR}),
    Equipment.EZ_BAR: frozenset({Loading.BAR}),
    Equipment.TRAP_BAR: frozenset({Loading.BAR}),
    Equipment.SMITH_MACHINE: frozenset({Loading.BAR}),
    Equipment.DUMBBELL: frozenset({Loading.PER_HAND, Loading.IMPLEMENT}),
    Equipment.KETTLEBELL: frozenset({Loading.PER_HAND, Loading.IMPLEMENT}),
    Equipment.CABLE: frozenset({Loading.STACK}),
    Equipment.MACHINE: frozenset({Loading.STACK, Loading.PLATES}),
    Equipment.BODY_WEIGHT: frozenset({Loading.BODY}),
    Equipment.BAND: frozenset({Loading.BAND}),
    Equipment.SLED: frozenset({Loading.PLATES}),
    Equipment.STRONGMAN: frozenset({Loading.IMPLEMENT, Loading.PER_HAND}),
}

LONGEST_CUE = 80


def each_exercise(test: object) -> object:
    return pytest.mark.parametrize("exercise", [pytest.param(e, id=e.name) for e in EXERCISES])(test)


def listed_owner_sets() -> set[frozenset[str]]:
    folder = files("engine.catalogue") / "names"
    lines = [
        line.partition(":")[2]
        for file in folder.iterdir()
        if file.name not in ("short_forms.txt", "ordinary_words.txt")
        for line in file.read_text(encoding="utf-8").splitlines()
        if ":" in line and not line.startswith("#")
    ]
    return {frozenset(owner.strip() for owner in line.split(",")) for line in lines}


@each_exercise
def test_it_has_a_phrase_of_its_own_and_its_full_name_leads_to_it(exercise: Exercise) -> None:
    alone = [phrase for phrase, owners in catalogue().phrases.items() if owners == (exercise.name,)]

    assert alone
    assert exercise.name in catalogue().owners(exercise.name)


@each_exercise
def test_its_movers_are_told_apart(exercise: Exercise) -> None:
    movers = (*exercise.prime, *exercise.secondary)

    assert exercise.prime
    assert len(set(movers)) == len(movers)


@each_exercise
def test_it_is_loaded_as_its_equipment_allows(exercise: Exercise) -> None:
    assert exercise.loading in POSSIBLE_LOADING[exercise.equipment]


@each_exercise
def test_a_share_of_the_body_moves_only_where_the_body_is_the_load(exercise: Exercise) -> None:
    assert 0 <= exercise.body_share <= 1
    if exercise.body_share:
        assert exercise.loading is Loading.BODY


@each_exercise
def test_its_swaps_train_much_the_same(exercise: Exercise) -> None:
    for name in exercise.swaps:
        swap = catalogue().exercises[name]

        assert set(swap.prime) & set(exercise.prime) or swap.pattern is exercise.pattern, name


@each_exercise
def test_its_cues_are_few_short_sentences(exercise: Exercise) -> None:
    assert 1 <= len(exercise.cues) <= 2
    for cue in exercise.cues:
        assert len(cue) <= LONGEST_CUE, cue
        assert cue.endswith("."), cue
        assert cue[0].isupper(), cue


def test_no_cue_is_said_twice() -> None:
    counted = Counter(cue for exercise in EXERCISES for cue in exercise.cues)

    assert [cue for cue, times in counted.items() if times > 1] == []


def test_a_phrase_has_several_owners_only_where_a_file_lists_them() -> None:
    listed = listed_owner_sets()
    by_accident = {
        phrase: owners
        for phrase, owners in catalogue().phrases.items()
        if len(owners) > 1 and not any(set(owners) <= together for together in listed)
    }

    assert by_accident == {}


def test_the_owners_of_a_shared_phrase_can_be_told_apart_by_what_a_person_may_answer() -> None:
    """An answer to "which one?" is a full name, so each full name must lead to its exercise first."""
    for owners in set(catalogue().phrases.values()):
        if len(owners) > 1:
            answers = [catalogue().owners(owner) for owner in owners]

            assert len({answer[0] for answer in answers}) == len(owners), owners


def test_every_muscle_is_some_exercise_s_prime_mover() -> None:
    """The hip flexors, say, must be trainable, or a target for them could never be met."""
    trained = {muscle for exercise in EXERCISES for muscle in exercise.prime}

    assert set(Muscle) - trained == set()


def test_every_pattern_and_piece_of_equipment_is_used() -> None:
    assert {exercise.pattern for exercise in EXERCISES} == set(Pattern)
    assert {exercise.equipment for exercise in EXERCISES} == set(Equipment)


def test_names_are_kept_lower_case_and_trimmed() -> None:
    for name in catalogue().exercises:
        assert name == " ".join(name.lower().split())


def test_longest_phrase_counts_the_words_of_the_longest() -> None:
    assert catalogue().longest_phrase == max(len(phrase.split()) for phrase in catalogue().phrases)


def test_all_phrases_stand_in_their_normal_spelling() -> None:
    assert [phrase for phrase in catalogue().phrases if normalise(phrase) != phrase] == []


@pytest.mark.parametrize(
    ("name", "measure"),
    [
        pytest.param("plank", Measure.TIME, id="a hold is timed"),
        pytest.param("dead hang", Measure.TIME, id="a hang is timed"),
        pytest.param("farmer's walk", Measure.DISTANCE, id="a carry is measured"),
        pytest.param("sled push", Measure.DISTANCE, id="a sled is measured"),
        pytest.param("tyre flip", Measure.REPS, id="flips are counted"),
    ],
)
def test_what_a_set_is_counted_in(name: str, measure: Measure) -> None:
    (owner,) = catalogue().owners(name)

    assert catalogue().exercises[owner].measure is measure


@pytest.mark.parametrize(
    "name", ["barbell bench press", "close-grip bench press", "barbell back squat", "good morning"]
)
def test_a_bar_over_the_face_or_on_the_back_wants_safeties(name: str) -> None:
    """Spotting over-face and on-back lifts: common practice of strength coaches, no source."""
    (owner,) = catalogue().owners(name)

    assert catalogue().exercises[owner].guard is FailureGuard.SPOTTER_OR_SAFETIES


def test_no_olympic_lift_asks_for_a_spotter() -> None:
    """They are bailed, not spotted: common practice, no source."""
    spotted = [
        exercise.name
        for exercise in EXERCISES
        if exercise.pattern is Pattern.EXPLOSIVE and exercise.guard is FailureGuard.SPOTTER_OR_SAFETIES
    ]

    assert spotted == []


@pytest.mark.parametrize(
    ("name", "lowest", "highest"),
    [
        # Mier et al. 2014, Int J Exerc Sci 7(2):161-168, n = 37: arms straight, men 67.0 ± 3.8 %, women 65.1 ± 3.1 %.
        pytest.param("push-up", "0.632", "0.708", id="push-up within one standard deviation of Mier 2014"),
        # Vanderburgh and Edmonds 1997, J Strength Cond Res 11: a pull-up's load is the whole body and what is added.
        pytest.param("pull-up", "1", "1", id="pull-up moves the whole body"),
        # De Leva 1996, J Biomech 29:1223-1230, from memory: body less shanks and feet is 88 to 89 %.
        pytest.param("bodyweight squat", "0.87", "0.90", id="squat moves the body above the shanks"),
    ],
)
def test_published_shares_of_body_weight(name: str, lowest: str, highest: str) -> None:
    (owner,) = catalogue().owners(name)

    assert Decimal(lowest) <= catalogue().exercises[owner].body_share <= Decimal(highest)


@pytest.mark.parametrize(
    ("phrase", "owners"),
    [
        pytest.param("squat", {"barbell back squat"}, id="a bare squat is the barbell's"),
        pytest.param("bench", {"barbell bench press"}, id="a bare bench is the barbell's"),
        pytest.param("deadlift", {"conventional deadlift"}, id="a bare deadlift is the barbell's"),
        pytest.param(
            "row", {"barbell row", "dumbbell row", "seated cable row", "machine row"}, id="a bare row is open"
        ),
        pytest.param("curls", {"barbell curl", "ez-bar curl", "dumbbell curl", "cable curl"}, id="a bare curl is open"),
        pytest.param("calves", {"standing calf raise", "seated calf raise"}, id="calves are open"),
        pytest.param("rudern", {"barbell row", "seated cable row"}, id="open in German too"),
    ],
)
def test_which_bare_names_are_open(phrase: str, owners: set[str]) -> None:
    assert set(catalogue().owners(phrase)) == owners

"""One exercise line: what it may say, in any order and with or without commas, and what it is told when it is wrong."""

from decimal import Decimal

import pytest

from engine.catalogue.catalogue import catalogue
from engine.plan.slot import read_slot
from engine.values.effort import Effort
from engine.values.load import Basis, Load, Unit
from engine.values.plan import FindIt, MaxReps, Metres, RepRange, Reps, Seconds
from engine.values.problem import Severity
from engine.values.schemes import (
    DoubleProgression,
    EffortTarget,
    Hold,
    LoadStep,
    PercentageWave,
    RepGoal,
    RepTotal,
    SetWave,
    TimeOrDistance,
    TopSetBackOff,
)


def read(line, unit=Unit.KG):
    return read_slot(line, lambda _: 7, catalogue(), unit)


def slot(line, unit=Unit.KG):
    found = read(line, unit)

    assert found.slot is not None, [str(problem) for problem in found.problems]
    return found.slot


def errors(line):
    return [problem for problem in read(line).problems if problem.severity is Severity.ERROR]


def kg(amount, basis=Basis.TOTAL):
    return Load(Decimal(amount), Unit.KG, basis)


def lb(amount, basis=Basis.TOTAL):
    return Load(Decimal(amount), Unit.LB, basis)


@pytest.mark.parametrize(
    ("line", "sets", "target"),
    [
        pytest.param("barbell row 3x8", 3, Reps(8), id="sets by reps"),
        pytest.param("barbell row 3 X 8", 3, Reps(8), id="upper case and spaces"),
        pytest.param("barbell row 3×8 reps", 3, Reps(8), id="the times sign and the word reps"),
        pytest.param("barbell row 3 sets of 8", 3, Reps(8), id="sets of"),
        pytest.param("barbell row 8 reps, 3 sets", 3, Reps(8), id="reps first, in words"),
        pytest.param("3x8 barbell row", 3, Reps(8), id="numbers before the name"),
        pytest.param("barbell row 3x8 each side", 3, Reps(8), id="each side is one set"),
        pytest.param("barbell row 3x8-12", 3, RepRange(8, 12), id="a range"),
        pytest.param("barbell row 3 sets of 8 to 12 reps", 3, RepRange(8, 12), id="a range in words"),
        pytest.param("push-up 2x max", 2, MaxReps(), id="maximum reps"),
        pytest.param("push-up 2 x amrap", 2, MaxReps(), id="as many as possible"),
        pytest.param("push-up 2 sets to failure", 2, MaxReps(), id="sets to failure"),
        pytest.param("plank 3x45s", 3, Seconds(Decimal(45)), id="seconds without a space"),
        pytest.param("plank 3x45", 3, Seconds(Decimal(45)), id="a bare number on a timed exercise is seconds"),
        pytest.param("plank 3x1:30", 3, Seconds(Decimal(90)), id="minutes and seconds"),
        pytest.param("plank 3x1.5 min", 3, Seconds(Decimal(90)), id="minutes"),
        pytest.param("plank 3x5 reps", 3, Reps(5), id="reps said aloud stay reps on a timed exercise"),
        pytest.param("farmer's walk 4x20 m at 30 kg", 4, Metres(Decimal(20)), id="metres"),
        pytest.param("sled push 4x20 yd", 4, Metres(Decimal("18.288")), id="yards are kept as metres"),
    ],
)
def test_sets_and_target(line, sets, target):
    found = slot(line)

    assert (found.sets, found.target) == (sets, target)


@pytest.mark.parametrize(
    ("line", "load"),
    [
        pytest.param("barbell row 3x8 at 42.5 kg", kg("42.5"), id="at a load"),
        pytest.param("barbell row 3x8 @ 42,5kg", kg("42.5"), id="decimal comma, no space"),
        pytest.param("barbell row 3x8 42.5", kg("42.5"), id="no word before and no unit: the coach's own"),
        pytest.param("barbell row 3x8x60 kg", kg(60), id="a third factor is the load"),
        pytest.param("barbell row 60 kg x 8 x 3", kg(60), id="load first with its unit"),
        pytest.param("barbell row 3x8 at 135 lb", lb(135), id="pounds"),
        pytest.param("barbell row 3x8 at 135#", lb(135), id="pound sign"),
        pytest.param("dumbbell curl 3x8 at 10 kg", kg(10, Basis.PER_HAND), id="dumbbells count per hand"),
        pytest.param("dumbbell curl 3x8 at 20 kg in all", kg(20), id="unless it says in all"),
        pytest.param("dumbbell curl 3x8 2x10 kg", kg(10, Basis.PER_HAND), id="two of so much"),
        pytest.param("barbell row 3x8 - 60 kg - rest 2 min", kg(60), id="dashes part the line"),
        pytest.param("barbell row 3x8 10 kg per hand", kg(10, Basis.PER_HAND), id="per hand said"),
        pytest.param("seated cable row 3x8 at 50 kg", kg(50, Basis.STACK), id="a stack"),
        pytest.param("chin-up 3x5 at +10 kg", kg(10, Basis.BODY), id="added to body weight"),
        pytest.param("chin-up 3x5 bodyweight + 10 kg", kg(10, Basis.BODY), id="body weight plus"),
        pytest.param("chin-up 3x5 10 kg added", kg(10, Basis.BODY), id="added, in words"),
        pytest.param("chin-up 3x5 at -15 kg", kg(-15, Basis.BODY), id="taken off"),
        pytest.param("chin-up 3x5, 15 kg help", kg(-15, Basis.BODY), id="help, in words"),
        pytest.param(
            "chin-up 3x5 +10 kg, then +2.5 kg", kg(10, Basis.BODY), id="a bare plus before a step is the load"
        ),
        pytest.param("chin-up 3x5 bw", None, id="body weight alone"),
        pytest.param("chin-up 3x5", None, id="nothing said on a body-weight exercise"),
        pytest.param("barbell row 3x8", FindIt(), id="nothing said on a loaded exercise: to be found"),
        pytest.param("barbell row 3x8, find the load", FindIt(), id="find it"),
        pytest.param("barbell row 3x8, no load", None, id="no load"),
    ],
)
def test_load(line, load):
    assert slot(line).load == load


@pytest.mark.parametrize(
    ("line", "scheme"),
    [
        pytest.param("add a set each week up to 5, then +2.5 kg", SetWave(5, kg("2.5")), id="set wave"),
        pytest.param(
            "+1 set every session to 5 then back to 3 with +2.5kg", SetWave(5, kg("2.5")), id="set wave, other words"
        ),
        pytest.param("sets 3 to 5, then +2,5 kg", SetWave(5, kg("2.5")), id="set wave by its bounds"),
        pytest.param("then +2.5 kg", LoadStep(kg("2.5")), id="reps and a step: load step"),
        pytest.param("add 2.5 kg each session", LoadStep(kg("2.5")), id="load step in words"),
        pytest.param(
            "+2.5 kg when all reps are made, after 2 misses down 5 %",
            LoadStep(kg("2.5"), 2, Decimal("0.05")),
            id="load step with its reset",
        ),
        pytest.param(
            "+2.5 kg if all sets are done, drop 15% after 4 misses in a row",
            LoadStep(kg("2.5"), 4, Decimal("0.15")),
            id="reset first",
        ),
        pytest.param("+1 rep each set", RepGoal(1), id="rep goal"),
        pytest.param("add 2 reps to each set", RepGoal(2), id="rep goal by two"),
        pytest.param("30 reps in all, then +5 kg", RepTotal(30, kg(5)), id="rep total"),
        pytest.param("total of 30 reps, then +2 reps in all", RepTotal(30, None, 2), id="rep total without a load"),
        pytest.param(
            "70/80/90 % of 140 kg, then +2.5 kg",
            PercentageWave(kg(140), (Decimal("0.7"), Decimal("0.8"), Decimal("0.9")), kg("2.5")),
            id="percentage wave",
        ),
        pytest.param(
            "70%, 80%, 90% of training max 140kg then +2.5kg",
            PercentageWave(kg(140), (Decimal("0.7"), Decimal("0.8"), Decimal("0.9")), kg("2.5")),
            id="percentage wave with commas",
        ),
        pytest.param("load for rpe 8", EffortTarget(Effort.from_rpe(Decimal(8))), id="effort target by rpe"),
        pytest.param("load for 2 in reserve", EffortTarget(Effort(Decimal(2))), id="effort target by reserve"),
        pytest.param("hold the load", Hold(), id="hold"),
        pytest.param("no progression", Hold(), id="no progression"),
        pytest.param("same weight each week", Hold(), id="the same each week"),
        pytest.param("linear progression +2.5", LoadStep(kg("2.5")), id="linear progression"),
        pytest.param("go up when all sets hit 6", LoadStep(kg("2.5")), id="all sets at the one number asked"),
        pytest.param(
            "(+2.5 kg if all sets are done; 10 % off after 2 misses)", LoadStep(kg("2.5"), 2), id="in brackets"
        ),
        pytest.param("at 80% of 100kg", PercentageWave(kg(100), (Decimal("0.8"),), kg("2.5")), id="one share, always"),
    ],
)
def test_progression_on_sets_of_six(line, scheme):
    assert slot(f"barbell overhead press 3x6 at 42.5 kg, {line}").scheme == scheme


@pytest.mark.parametrize(
    ("line", "scheme"),
    [
        pytest.param(
            "dumbbell curl 3x8-12 at 10 kg, then +1 kg", DoubleProgression(kg(1, Basis.PER_HAND)), id="range and step"
        ),
        pytest.param(
            "dumbbell curl 3x8-12 at 10 kg, +1 kg at the top of the range",
            DoubleProgression(kg(1, Basis.PER_HAND)),
            id="range and step in words",
        ),
        pytest.param(
            "dumbbell curl 3x8-12 at 10 kg, +1 kg when all reps are made",
            LoadStep(kg(1, Basis.PER_HAND)),
            id="a range can have a load step where it says so",
        ),
        pytest.param(
            "barbell back squat 1x5 at 100 kg, top set then 3 back-offs of 8 at 85 %, then +2.5 kg",
            TopSetBackOff(kg("2.5"), 3, Decimal("0.85"), 8),
            id="top set and back-offs",
        ),
        pytest.param(
            "barbell back squat 5 reps at 100 kg, top set + 3x8 back offs, then +2.5 kg",
            TopSetBackOff(kg("2.5"), 3, Decimal("0.9"), 8),
            id="back-offs as sets by reps",
        ),
        pytest.param(
            "top set of 5 barbell back squat 100 kg, then 3x5 back-offs at 85 %",
            TopSetBackOff(kg("2.5"), 3, Decimal("0.85"), 5),
            id="a top set of so many",
        ),
        pytest.param(
            "dumbbell curl 3x8-12 at 10 kg, double progression +1 kg",
            DoubleProgression(kg(1, Basis.PER_HAND)),
            id="double progression by its name",
        ),
        pytest.param(
            "dumbbell curl 3x8-12 at 10 kg, +1 kg once all sets reach 12",
            DoubleProgression(kg(1, Basis.PER_HAND)),
            id="the top of the range told again",
        ),
        pytest.param(
            "chin-up 3 sets, 30 total reps, then +5 kg", RepTotal(30, kg(5, Basis.BODY)), id="a total of reps"
        ),
        pytest.param("plank 3x45 s, +5 s up to 60 s", TimeOrDistance(Decimal(5), Decimal(60)), id="time"),
        pytest.param(
            "farmer's walk 3x20 m at 30 kg, +5 m each week up to 40 m, then +2 kg",
            TimeOrDistance(Decimal(5), Decimal(40), kg(2, Basis.PER_HAND)),
            id="distance",
        ),
        pytest.param("barbell row 3x8 at 40 kg", LoadStep(kg("2.5")), id="unsaid: load step"),
        pytest.param("barbell row 3x8 at 90 lb", LoadStep(lb(5)), id="unsaid: load step in the load's unit"),
        pytest.param("barbell row 3x8-12 at 40 kg", DoubleProgression(kg("2.5")), id="unsaid on a range"),
        pytest.param("push-up 2x max", RepGoal(1), id="unsaid on maximum reps"),
        pytest.param("push-up 3x10", RepGoal(1), id="unsaid without any load"),
        pytest.param("plank 3x45 s", Hold(), id="unsaid on time"),
    ],
)
def test_progression(line, scheme):
    assert slot(line).scheme == scheme


def test_a_gain_in_reps_up_to_a_bound_is_a_rep_range():
    found = slot("barbell row 3x8 at 40 kg, +1 rep up to 12, then +2.5 kg")

    assert (found.target, found.scheme) == (RepRange(8, 12), DoubleProgression(kg("2.5")))


def test_a_progression_left_unsaid_is_noted_in_words_that_can_be_sent():
    (note,) = read("barbell row 3x8 at 40 kg").problems

    assert note.severity is Severity.NOTE
    assert slot(f"barbell row 3x8 at 40 kg, {note.try_instead}").scheme == LoadStep(kg("2.5"))


@pytest.mark.parametrize(
    ("line", "effort"),
    [
        pytest.param("rpe 8", Effort(Decimal(2), as_rpe=True), id="rpe"),
        pytest.param("@8 RPE", Effort(Decimal(2), as_rpe=True), id="rpe behind"),
        pytest.param("@8", Effort(Decimal(2), as_rpe=True), id="a small number behind @ beside a load"),
        pytest.param("rir 2", Effort(Decimal(2)), id="rir"),
        pytest.param("leave 2 in the tank", Effort(Decimal(2)), id="left in the tank"),
        pytest.param("1-2 reps in reserve", Effort(Decimal("1.5")), id="the middle of two"),
        pytest.param("to failure", Effort(Decimal(0)), id="to failure is none in reserve"),
    ],
)
def test_effort(line, effort):
    assert slot(f"barbell row 3x8 at 40 kg {line}").effort == effort


@pytest.mark.parametrize(
    ("line", "seconds"),
    [
        pytest.param("rest 3 min", 180, id="minutes"),
        pytest.param("rest 90s", 90, id="seconds"),
        pytest.param("rest: 1:30", 90, id="clock"),
        pytest.param("2 min rest", 120, id="the word behind"),
        pytest.param("rest 90", 90, id="a large bare number is seconds"),
        pytest.param("rest 2", 120, id="a small bare number is minutes"),
        pytest.param("rest 2 min 30 s", 150, id="minutes and seconds"),
        pytest.param("rest 2-3 min", 150, id="the middle of two"),
    ],
)
def test_rest(line, seconds):
    assert slot(f"barbell row 3x8 at 40 kg, {line}").rest_seconds == seconds


def test_words_of_the_coach():
    found = slot(
        "A1. barbell curl 3x8-12 at 30 kg; cues: elbows still, ribs down; slow down, rest 90 s, "
        'swap hammer curl or cable curl, standard: "arms straight, rest 2 s"'
    )

    assert found.cues == ("elbows still, ribs down", "slow down")
    assert found.swaps == ("hammer curl", "cable curl")
    assert found.standard == "arms straight, rest 2 s"
    assert (found.rest_seconds, found.group) == (90, "A")


def test_the_order_of_the_parts_does_not_matter():
    straight = slot("barbell row 3x8 at 40 kg, rpe 8, then +2.5 kg, rest 2 min")
    turned = slot("rest 2 min, then +2.5 kg, rpe 8, at 40 kg, 3x8 barbell row")

    assert turned == straight


@pytest.mark.parametrize(
    ("line", "expected"),
    [
        pytest.param(
            "row 3x8 at 40 kg", "barbell row, dumbbell row, seated cable row", id="candidates of an open name"
        ),
        pytest.param("blorp 3x8", "an exercise", id="unknown name"),
        pytest.param("3x8 at 40 kg", "an exercise", id="no name"),
        pytest.param("barbell row", "sets and reps", id="no numbers"),
        pytest.param("barbell row 3 sets at 40 kg", "how many reps", id="no reps"),
        pytest.param("barbell row 3-4x8", "one number of sets", id="a range of sets"),
        pytest.param("barbell row 3x12-8", "lower and a higher", id="a range upside down"),
        pytest.param("barbell row 3x0", "can be done", id="no reps at all"),
        pytest.param("barbell row 99x8", "1 to 30 sets", id="too many sets"),
        pytest.param("barbell row 3x8 at 4000 kg", "up to 1000 kg", id="too heavy"),
        pytest.param("barbell row 3x8 rpe 12", "0 to 10", id="no such effort"),
        pytest.param("barbell row 3x8 @8", "the load or the effort", id="load or effort"),
        pytest.param("chin-up 3x5 +10 kg", "the load or the step", id="load or step"),
        pytest.param("barbell row 3x8 at -10 kg", "not done on body weight", id="help on a barbell"),
        pytest.param("barbell row 3x8 at 20 kg per side", "the load in all", id="plates of one side"),
        pytest.param("barbell row 3x8 at 40 kg, at 50 kg", "one load", id="two loads"),
        pytest.param("barbell row 3x8 at 40 kg, then +5 lb", "a step in kg", id="a step in another unit"),
        pytest.param("barbell row 3x8 at 40 kg, then +5 %", "a step in kg or lb", id="a step in per cent"),
        pytest.param("barbell row 3x8 at 40 kg, +1 rep each set, hold the load", "one progression", id="two rules"),
        pytest.param("barbell row 5x8 at 40 kg, add a set each week up to 4", "more sets", id="a wave that ends below"),
        pytest.param("plank 3x45 s, +5 s", "a bound", id="time without a bound"),
        pytest.param("plank 3x45 s, +1 rep each set", "seconds or metres", id="reps on time"),
        pytest.param("push-up 2x max, then +5 kg", "maximum reps", id="a step on maximum reps"),
        pytest.param("barbell row 3x8 at 40 kg, feels good", "sets, load", id="what is not understood"),
        pytest.param("barbell row 3x8 at 85 %", "a share of a training maximum", id="a share of nothing told"),
        pytest.param("chin-up 3x8 - 20 kg", "added or taken off", id="a lone dash before a load on body weight"),
        pytest.param("barbell row 1x5 top set at 60 kg", "its back-offs too", id="a top set without back-offs"),
        pytest.param("barbell row 3x8-12, +2 kg once all sets reach 10", "the top of the rep range", id="another top"),
        pytest.param("barbell row 3x8 at 40 kg, swap press", "one of", id="an open name among the swaps"),
    ],
)
def test_what_cannot_be_used_is_reported_with_its_line(line, expected):
    found = errors(line)

    assert found, "no error"
    assert expected in found[0].expected
    assert found[0].line == 7
    assert found[0].try_instead


def test_a_typo_in_a_name_is_taken_with_a_warning():
    found = read("dumbell lateral rase 3x15 at 8 kg, then +1 kg")

    assert found.slot is not None
    assert found.slot.exercise == "dumbbell lateral raise"
    assert [problem.severity for problem in found.problems] == [Severity.WARNING]


@pytest.mark.parametrize(
    ("line", "cues"),
    [
        pytest.param("tempo 3-1-1", ("tempo 3-1-1",), id="tempo"),
        pytest.param("pause 1 s at the bottom", ("pause 1 s at the bottom",), id="a pause"),
        pytest.param("3 warm-up sets", ("3 warm-up sets",), id="warm-ups, which the bot works out itself"),
        pytest.param("note: belt on", ("belt on",), id="a note"),
    ],
)
def test_what_is_kept_as_a_cue(line, cues):
    found = slot(f"barbell row 3x8 at 40 kg, {line}, rest 2 min")

    assert (found.cues, found.rest_seconds) == (cues, 120)


@pytest.mark.parametrize(
    ("line", "group"),
    [
        pytest.param("A1 barbell row 3x8", "A", id="letter and number"),
        pytest.param("b2) barbell row 3x8", "B", id="small letter"),
        pytest.param("2a. barbell row 3x8", "B", id="number and letter"),
        pytest.param("C. barbell row 3x8", None, id="a letter alone only counts"),
        pytest.param("1 arm row 3x8", None, id="a name that begins with a number"),
    ],
)
def test_superset_letter(line, group):
    assert slot(line).group == group


def test_the_words_of_a_name_in_another_order_are_taken_with_a_warning():
    found = read("leg curl lying 3x12 at 30 kg, then +5 kg")

    assert found.slot is not None
    assert found.slot.exercise == "lying leg curl"
    assert [problem.severity for problem in found.problems] == [Severity.WARNING]

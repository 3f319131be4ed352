"""A slip in a data file is told with its file and line; an athlete's own names come on top."""

from __future__ import annotations

from dataclasses import replace

import pytest

from engine.catalogue.catalogue import catalogue
from engine.catalogue.files import assemble
from engine.catalogue.problems import MalformedData
from engine.values.exercise import FailureGuard, Length, Loading, Measure
from engine.values.ids import ExerciseName

CURL = """\
# Curls.

rope curl
  names: rope curl cable, rc
  prime: biceps
  secondary: forearms
  pattern: isolation
  equipment: cable
  cue: Elbows still.
"""

PRESS = """
pin press
  names: pp
  prime: chest
  pattern: horizontal push
  equipment: barbell
  swaps: rope curl
"""


def test_a_short_stanza_gets_what_is_usual() -> None:
    data = assemble({"curls.txt": CURL}, {})

    curl = data.exercises[ExerciseName("rope curl")]
    assert curl.loading is Loading.STACK
    assert curl.measure is Measure.REPS
    assert curl.length is Length.MIDDLE
    assert curl.guard is FailureGuard.NONE
    assert not curl.one_sided
    assert data.phrases["rc"] == ("rope curl",)


@pytest.mark.parametrize(
    ("curls", "names", "file", "line", "read"),
    [
        pytest.param("  prime: biceps\n", "", "curls.txt", 1, "prime: biceps", id="a field before any name"),
        pytest.param(CURL + "\nRope Curl\n", "", "curls.txt", 11, "Rope Curl", id="capitals in a name"),
        pytest.param(CURL.replace("biceps", "bicep"), "", "curls.txt", 5, "bicep", id="an unknown muscle"),
        pytest.param(CURL.replace("  prime: biceps\n", ""), "", "curls.txt", 3, "rope curl", id="no prime mover"),
        pytest.param(
            CURL.replace("pattern: isolation", "pattern: pull"), "", "curls.txt", 7, "pull", id="no such pattern"
        ),
        pytest.param(CURL.replace("  equipment: cable\n", ""), "", "curls.txt", 3, "rope curl", id="no equipment"),
        pytest.param(CURL + "  colour: red\n", "", "curls.txt", 10, "colour", id="an unknown label"),
        pytest.param(CURL + "  prime: lats\n", "", "curls.txt", 10, "prime", id="a label twice"),
        pytest.param(CURL + "  cue\n", "", "curls.txt", 10, "cue", id="a label without its text"),
        pytest.param(CURL + "  sides: left\n", "", "curls.txt", 10, "left", id="a side that is no count"),
        pytest.param(CURL + "  body share: 1.2\n", "", "curls.txt", 10, "1.2", id="more than the whole body"),
        pytest.param(CURL + "  body share: half\n", "", "curls.txt", 10, "half", id="a share in words"),
        pytest.param(CURL + "  swaps: rope crul\n", "", "curls.txt", 10, "rope crul", id="a swap that is not there"),
        pytest.param(CURL + "  swaps: rope curl\n", "", "curls.txt", 10, "rope curl", id="a swap for itself"),
        pytest.param(CURL + CURL, "", "curls.txt", 12, "rope curl", id="the same exercise twice"),
        pytest.param(CURL, "curl: rope crul\n", "shared.txt", 1, "rope crul", id="an owner that is not there"),
        pytest.param(CURL, "\ncurl\n", "shared.txt", 2, "curl", id="a phrase without owners"),
    ],
)
def test_a_slip_names_its_file_and_line(curls: str, names: str, file: str, line: int, read: str) -> None:
    with pytest.raises(MalformedData) as caught:
        assemble({"curls.txt": curls}, {"shared.txt": names})

    assert (caught.value.file, caught.value.line, caught.value.read) == (file, line, read)
    assert f"{file}, line {line}" in str(caught.value)


def test_a_name_that_two_exercises_claim_must_be_listed() -> None:
    with pytest.raises(MalformedData, match=r"curls\.txt, line 4"):
        assemble({"presses.txt": PRESS.replace("pp", "rc"), "curls.txt": CURL}, {})


def test_a_listed_name_belongs_to_all_its_owners() -> None:
    data = assemble({"presses.txt": PRESS, "curls.txt": CURL}, {"shared.txt": "pin: pin press, rope curl\n"})

    assert data.phrases["pin"] == ("pin press", "rope curl")


def test_short_forms_make_more_spellings_but_never_take_one_that_is_written_out() -> None:
    files = {"presses.txt": PRESS.replace("names: pp", "names: rope c"), "curls.txt": CURL}

    data = assemble(files, {"short_forms.txt": "curl: c, crl\n"})

    assert data.phrases["rope crl"] == ("rope curl",)
    assert data.phrases["rope c"] == ("pin press",)


class TestWithOwn:
    own = replace(catalogue().exercises[ExerciseName("leg extension")], name=ExerciseName("cable hip flexion"))

    def test_nothing_of_her_own_changes_nothing(self) -> None:
        assert catalogue().with_own((), {}) is catalogue()

    def test_her_exercise_is_met_by_its_name_and_its_slips(self) -> None:
        hers = catalogue().with_own([self.own], {})

        assert hers.owners("Cable hip flexions") == ("cable hip flexion",)
        assert hers.owners("cablehipflexion") == ("cable hip flexion",)
        assert hers.closest("cable hip flexoin") == ("cable hip flexion",)
        assert hers.get(self.own.name) is self.own

    def test_her_shorthand_settles_what_was_open(self) -> None:
        hers = catalogue().with_own((), {"Press": ExerciseName("barbell overhead press")})

        assert hers.owners("press") == ("barbell overhead press",)
        assert len(catalogue().owners("press")) > 1

    def test_a_long_shorthand_counts_in_the_longest_phrase(self) -> None:
        phrase = "the one in the corner by the door"

        hers = catalogue().with_own((), {phrase: ExerciseName("leg press")})

        assert hers.owners(phrase) == ("leg press",)
        assert hers.longest_phrase == len(phrase.split())

    def test_a_shorthand_for_nothing_is_left_out(self) -> None:
        hers = catalogue().with_own((), {"zz": ExerciseName("no such lift")})

        assert hers.owners("zz") == ()

    def test_the_catalogue_of_all_stays_as_it_was(self) -> None:
        catalogue().with_own([self.own], {"squat": ExerciseName("leg press")})

        assert catalogue().owners("squat") == ("barbell back squat",)
        assert catalogue().get(self.own.name) is None

"""Which entries are read by their form alone, and which are left to the walk over chunks."""

from __future__ import annotations

from decimal import Decimal

import pytest

from engine.catalogue.catalogue import catalogue
from engine.reading.chunks.choices import Traits
from engine.reading.entries.segments import entries
from engine.reading.prepare import prepare
from engine.reading.shapes.plain_entries import plain_numbers
from engine.reading.values import Context
from engine.reading.weighing.shared_values import load_of, set_of
from engine.values.ids import ExerciseName
from engine.values.load import Basis, Unit

KNOWN = catalogue()


def groups(line: str) -> list[tuple[int, int, str]] | None:
    """The plain groups of a line: sets, reps, and the load as typed; None where the line is not plain."""
    (entry,) = entries(prepare(line, Context(), KNOWN).pieces)
    plain = plain_numbers(entry.pieces)
    found = None if plain is None else plain.groups(Traits.of(KNOWN.exercises[entry.names[0]]))
    return None if found is None else [(one.count, one.reps, one.load.text if one.load else "") for one in found]


@pytest.mark.parametrize(
    ("line", "told"),
    [
        pytest.param("front squat 4x6 72.5", [(4, 6, "72.5")], id="sets, reps and load"),
        pytest.param("front squat 65 4x6 @8", [(4, 6, "65")], id="load ahead, rated"),
        pytest.param("front squat 5x4 @ 70", [(5, 4, "70")], id="load behind a sign"),
        pytest.param("front squat 75x6x4", [(4, 6, "75")], id="load, reps, sets"),
        pytest.param("front squat 65 7 6 6", [(1, 7, "65"), (1, 6, "65"), (1, 6, "65")], id="reps of each set"),
        pytest.param("front squat 65x7,6,6", [(1, 7, "65"), (1, 6, "65"), (1, 6, "65")], id="list behind an x"),
        pytest.param("front squat 60x7, 70x5", [(1, 7, "60"), (1, 5, "70")], id="pairs"),
        pytest.param("chin up 9 7 6", [(1, 9, ""), (1, 7, ""), (1, 6, "")], id="reps of the body"),
        pytest.param("chin up 4x7", [(4, 7, "")], id="sets of the body"),
    ],
)
def test_plain_forms_are_read_by_themselves(line, told):
    assert groups(line) == told


@pytest.mark.parametrize(
    "line",
    [
        pytest.param("front squat 4x6 20", id="a load that may be reps"),
        pytest.param("front squat 12x10", id="no load told"),
        pytest.param("front squat 75x3x5", id="triples or fives"),
        pytest.param("front squat 4x6 @ 8", id="a load or an effort"),
        pytest.param("front squat 65 7 6 6 @8", id="whose effort"),
        pytest.param("front squat 65kg x7, 150x5", id="two units"),
        pytest.param("front squat 65 7 six 6", id="a number in words"),
        pytest.param("front squat 60 70 80 x5", id="reps shared by loads"),
        pytest.param("front squat 65 7F", id="to failure"),
        pytest.param("plank 3x45", id="a hold"),
        pytest.param("hammer curl 2x35 40", id="perhaps a pair of dumbbells"),
    ],
)
def test_what_may_be_read_otherwise_is_not_plain(line):
    assert groups(line) is None


def test_equal_loads_are_one_value_and_stand_as_typed():
    sixty = Decimal("60.375")  # no other test has kept a value of its own for it
    first = load_of(sixty, Unit.KG, Basis.TOTAL)

    assert load_of(sixty, Unit.KG, Basis.TOTAL) is first
    assert str(load_of(Decimal("60.3750"), Unit.KG, Basis.TOTAL).amount) == "60.3750"


def test_equal_plain_sets_are_one_value_at_the_very_load():
    name, load = ExerciseName("barbell front squat"), load_of(Decimal("65.375"), Unit.KG, Basis.TOTAL)

    assert set_of(name, 6, load) is set_of(name, 6, load)
    assert set_of(name, 6, load).load is load
    assert set_of(name, 6, load) != set_of(name, 5, load)

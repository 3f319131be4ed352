"""Sets said to count as a warm-up, and numbers at the end of a remark. Common practice, no source."""

from __future__ import annotations

import pytest

from engine.reading import read
from tests.engine.reading.saying import KNOWN, readings, said, situation

OPEN = """
squat 100x5, 2 count as warm up
squat 5x5 100, 2 count as warm up
squat 5x5 100, two count as warmups
squat 100x5, 2 counted as warm up
squat 5x5 100, first two count as warm up
kniebeuge 5x5 100, 2 zählen als aufwärmen
sentadilla 5x5 100, 2 cuentan como calentamiento
squat 5x5 100, 2 comptent comme échauffement
squat 5x5 100, 2 contano come riscaldamento
agachamento 5x5 100, 2 contam como aquecimento
squat 5x5 100, 2 tellen als opwarming
knäböj 5x5 100, 2 räknas som uppvärmning
przysiad 5x5 100, 2 jako rozgrzewka
присед 5x5 100, 2 как разминка
"""


@pytest.mark.parametrize("text", OPEN.strip().splitlines())
def test_which_sets_count_as_a_warm_up_is_asked(text) -> None:
    assert said(text).startswith("ask:")


TOLD = """
squat 60x5 80x3 100x5, first two count as warm up => barbell back squat 5 at 60 kg warmup, 3 at 80 kg warmup, 5 at 100 kg
squat 60x5 80x3 100x5, first two were warm up => barbell back squat 5 at 60 kg warmup, 3 at 80 kg warmup, 5 at 100 kg
squat 60x5 80x3 100x5, the first counts as warm up => barbell back squat 5 at 60 kg warmup, 3 at 80 kg, 5 at 100 kg
squat 100x5, 60x5 was warm up => barbell back squat 5 at 100 kg, 5 at 60 kg warmup
"""  # noqa: E501 — a line a message


@pytest.mark.parametrize(("text", "context", "meant"), readings(TOLD))
def test_sets_pointed_at_are_the_warm_up(text, context, meant) -> None:
    assert said(text, context) == meant


NOTES = """
belt from set 3
belt on from set 2
chalk after set 2
wraps for set 3
felt good until set 3
shoes size 42
belt hole 4
gürtel ab satz 3
gürtel ab dem 3. satz
cinturón desde la serie 3
ceinture à partir de la série 3
cintura dalla serie 3
cinto a partir da série 3
riem vanaf set 3
bälte från set 3
пояс с подхода 3
"""


@pytest.mark.parametrize("note", NOTES.strip().splitlines())
def test_a_remark_keeps_the_number_at_its_end(note) -> None:
    logged = read(f"squat 3x5 100, {note}", situation(), KNOWN)

    assert (said(f"squat 3x5 100, {note}"), logged.note) == ("barbell back squat 3×5 at 100 kg", note)  # type: ignore[union-attr]


LEFT_OUT = """
squat 3x5 100, skipped 1 set
squat 3x5 100, 1 set skipped
squat 3x5 100, dropped a set
kniebeuge 3x5 100, 1 satz ausgelassen
squat 3x5 100, une série sautée
sentadilla 3x5 100, 1 serie saltada
squat 3x5 100, 1 serie saltata
agachamento 3x5 100, pulei 1 série
squat 3x5 100, 1 set overgeslagen
knäböj 3x5 100, hoppade över 1 set
przysiad 3x5 100, 1 seria pominięta
присед 3x5 100, 1 подход пропустил
"""


@pytest.mark.parametrize("text", LEFT_OUT.strip().splitlines())
def test_whether_a_set_left_out_was_counted_is_asked(text) -> None:
    assert said(text).startswith("ask:")


@pytest.mark.parametrize("note", ["tempo 311", "up from 95", "last week 95", "letzte woche 95", "la semana pasada 95"])
def test_a_number_that_is_compared_with_is_kept(note) -> None:
    logged = read(f"squat 3x5 100, {note}", situation(), KNOWN)

    assert (said(f"squat 3x5 100, {note}"), logged.note) == ("barbell back squat 3×5 at 100 kg", note)  # type: ignore[union-attr]

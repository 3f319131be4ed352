"""Which of two schemes is better is a question, a second to wait is none of a set, and a mistyped way is an answer."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import log_after, said, situation, standing_after

TALK = """
whats better for size, 5x5 or 3x12
what is better, 5x5 or 3x12
was ist besser für masse, 5x5 oder 3x12
qué es mejor, 5x5 o 3x12
c'est quoi le mieux, 5x5 ou 3x12
cosa è meglio, 5x5 o 3x12
wat is beter, 5x5 of 3x12
co jest lepsze, 5x5 czy 3x12
o que é melhor, 5x5 ou 3x12
что лучше, 5x5 или 3x12
vad är bäst, 5x5 eller 3x12
one sec, water
""".strip().splitlines()


@pytest.mark.parametrize("told", TALK)
def test_a_question_or_a_wait_is_talk(told: str) -> None:
    assert standing_after(f"bench 3x8 60 | {told}") == "barbell bench press 3×8 at 60 kg"
    assert said(told, situation(doing="barbell bench press", last={"barbell bench press": "60"})) == "no sets"


@pytest.mark.parametrize(
    ("answer", "lift"),
    [("lieing", "lying leg curl"), ("lyign", "lying leg curl"), ("siting", "seated leg curl")],
)
def test_a_mistyped_way_answers_which_lift(answer: str, lift: str) -> None:
    assert lift in log_after("leg curl 3x12 40", answer)


@pytest.mark.parametrize(
    "asked", ["how many sets of chest is that this week", "how many sets of chest did i do this week"]
)
def test_how_many_sets_that_is_asks_for_the_week(asked: str) -> None:
    assert said(asked) == "request: volume"

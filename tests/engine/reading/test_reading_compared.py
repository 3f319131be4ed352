"""Sets and days that are named to say what those lifted were like: remarks, and no sets nor days of their own."""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import dialogues, readings, said, standing_after

ROW = "barbell row"


@pytest.mark.parametrize(
    ("text", "known", "meant"),
    readings(f"""
barbell row 70x6 felt like 90x6 => {ROW} 6 at 70 kg
barbell row 70 6 6, felt like 90 for 6 => {ROW} 2×6 at 70 kg
barbell row 70x6 moved like 50x6 => {ROW} 6 at 70 kg
barbell row 70x6, easier than 65x6 => {ROW} 6 at 70 kg
barbell row 70x6 heavier than 75x3 => {ROW} 6 at 70 kg
barbell row 70x6 as easy as 60x6 => {ROW} 6 at 70 kg
barbell row 70x6 better than 65x6 last week => {ROW} 6 at 70 kg
barbell row 70x6 seemed like 90x6 => {ROW} 6 at 70 kg
Langhantelrudern 70x6 fühlte sich an wie 90x6 => {ROW} 6 at 70 kg
Langhantelrudern 70x6 leichter als 65x6 => {ROW} 6 at 70 kg
barbell row 70x6, same as last time => {ROW} 6 at 70 kg
barbell row 70x6, same weight as last week => {ROW} 6 at 70 kg
barbell row 70x6, same as wednesday => {ROW} 6 at 70 kg
barbell row 70x6, same as yesterday => {ROW} 6 at 70 kg
barbell row 70x6, same as planned => {ROW} 6 at 70 kg
barbell row 3x6 70 like last time => {ROW} 3×6 at 70 kg
barbell row 3x6 70 beats last week => {ROW} 3×6 at 70 kg
barbell row 70x6, same again => {ROW} 2×6 at 70 kg
barbell row 70x6 felt like an 8 => {ROW} 6 at 70 kg RPE 8
{{doing: barbell row; last: barbell row 70}} felt like 90x6 => no sets
{{doing: barbell row; last: barbell row 70}} did like 70x6 => {ROW} 6 at 70 kg
{{doing: barbell row; last: barbell row 70}} nothing between 21 and 6 => no sets
barbell row 70x6, between 3 and 5 people waiting => {ROW} 6 at 70 kg
barbell row 70 6 6, between 2 and 3 min rest => {ROW} 2×6 at 70 kg
"""),
)
def test_what_sets_are_compared_with_is_a_remark(text: str, known: Context, meant: str) -> None:
    assert said(text, known) == meant


@pytest.mark.parametrize(
    ("told", "standing"),
    dialogues(f"""
barbell row 70x6 | felt like 90x6 => {ROW} 6 at 70 kg
barbell row 70x6 | nothing between 22 and 7 => {ROW} 6 at 70 kg
"""),
)
def test_a_remark_behind_standing_sets_adds_none(told: str, standing: str) -> None:
    assert standing_after(told) == standing

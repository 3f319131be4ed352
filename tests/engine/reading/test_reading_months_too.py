"""The month whose short name is a lift's as well, and days of a month told behind the sets. Common practice."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said

BENCH, SQUAT = "barbell bench press 3×5 at 80 kg", "barbell back squat 3×5 at 100 kg"
TOLD = f"""
dec 2 bench 3x5 80 => {BENCH} on 2024-12-02
dec 12, bench 3x5 80 => {BENCH} on 2024-12-12
dec. 2 bench 3x5 80 => {BENCH} on 2024-12-02
dec 20 2024 bench 3x5 80 => {BENCH} on 2024-12-20
2 dec 2024 bench 3x5 80 => {BENCH} on 2024-12-02
bench 3x5 80 on the 2nd of dec => {BENCH} on 2024-12-02
bench 3x5 80 2nd of dec => {BENCH} on 2024-12-02
bench 3x5 80 dec 2 => {BENCH} on 2024-12-02
bench 3x5 80 (dec 2) => {BENCH} on 2024-12-02
bench 3x5 80, dec 2 => ask: {BENCH}
dec 1st squat 3x5 100 => {SQUAT} on 2024-12-01
1st of dec squat 3x5 100 => {SQUAT} on 2024-12-01
monday dec 2 squat 3x5 100 => {SQUAT} on 2024-12-02
squat 3x5 100 2nd of feb => {SQUAT} on 2025-02-02
squat 3x5 100 mar 2 => {SQUAT} on 2025-03-02
squat 3x5 100, mar 2 2025 => {SQUAT} on 2025-03-02
mar. 2 squat 3x5 100 => {SQUAT} on 2025-03-02
2 ene sentadilla 3x5 100 => {SQUAT} on 2025-01-02
2 mrz kniebeuge 3x5 100 => {SQUAT} on 2025-03-02
2 févr squat 3x5 100 => {SQUAT} on 2025-02-02
2 ott squat 3x5 100 => {SQUAT} on 2024-10-02
2 mrt squat 3x5 100 => {SQUAT} on 2025-03-02
2 paź przysiad 3x5 100 => {SQUAT} on 2024-10-02
2 fev agachamento 3x5 100 => {SQUAT} on 2025-02-02
2 дек присед 3x5 100 => {SQUAT} on 2024-12-02
dec bench 3x5 80 => decline barbell bench press 3×5 at 80 kg
dec 60 8 8 => decline barbell bench press 2×8 at 60 kg
bench 80x5, 60x8 dec => barbell bench press 5 at 80 kg; decline barbell bench press 8 at 60 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(TOLD))
def test_a_day_of_a_month_is_no_lift(text, context, meant) -> None:
    assert said(text, context) == meant


BEHIND = f"""
squat 3x5 100 il 20 febbraio => {SQUAT} on 2025-02-20
squat 3x5 100 op 20 februari => {SQUAT} on 2025-02-20
squat 3x5 100 le 20 février => {SQUAT} on 2025-02-20
squat 3x5 100 2 days back => {SQUAT} on 2025-03-12
squat 3x5 100 12th => ask: {SQUAT}
12th squat 3x5 100 => ask: {SQUAT}
1st squat 3x5 100 => {SQUAT}
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(BEHIND))
def test_a_day_behind_the_sets_is_read_or_asked_about(text, context, meant) -> None:
    assert said(text, context) == meant

"""A lift told of beside the one that is put right, and one set of several taken away. Common practice, no source."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after

BENCH, SQUAT = "barbell bench press", "barbell back squat 3×5 at 100 kg"

BESIDE_A_REMARK = f"""
squat felt heavy, bench was 82.5 => {BENCH} 3×8 at 82.5 kg, {SQUAT}
squat was heavy, bench was 82.5 => {BENCH} 3×8 at 82.5 kg, {SQUAT}
squat good, bench was 82.5 => {BENCH} 3×8 at 82.5 kg, {SQUAT}
squat felt heavy, last bench was 7 => {BENCH} 2×8 at 80 kg, 7 at 80 kg, {SQUAT}
squat fine, bench last set 7 => {BENCH} 2×8 at 80 kg, 7 at 80 kg, {SQUAT}
squat felt heavy, bench was rpe 9 => {BENCH} 3×8 at 80 kg RPE 9, {SQUAT}
kniebeuge war schwer, bank war 82,5 => {BENCH} 3×8 at 82.5 kg, {SQUAT}
squat pesado, bench era 82.5 => {BENCH} 3×8 at 82.5 kg, {SQUAT}
squat was easy but bench was 82.5 => {BENCH} 3×8 at 80 kg, {SQUAT}
squat ok but bench last was 7 => {BENCH} 3×8 at 80 kg, {SQUAT}
before squat, bench was 82.5 => {BENCH} 3×8 at 80 kg, {SQUAT}
bench: last 7 => {BENCH} 2×8 at 80 kg, 7 at 80 kg, {SQUAT}
bench: set 2 7 => {BENCH} 8 at 80 kg, 7 at 80 kg, 8 at 80 kg, {SQUAT}
"""


@pytest.mark.parametrize(("told", "standing"), dialogues(BESIDE_A_REMARK))
def test_what_is_told_of_one_lift_is_put_on_no_other(told, standing):
    stands = standing_after(f"bench 3x8 80 | squat 3x5 100 | {told}")

    assert stands.replace(f"; {SQUAT}", f", {SQUAT}") == standing


@pytest.mark.parametrize("told", ["remove one", "delete one", "scrap one", "borra una", "supprime une", "apaga uma"])
def test_one_taken_away_is_one_set(told):
    assert standing_after(f"bench 3x8 80 | {told}") == f"{BENCH} 2×8 at 80 kg"

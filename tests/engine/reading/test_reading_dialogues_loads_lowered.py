"""A load lowered or raised for some of the sets: no drop set, and an amount is no load."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after


@pytest.mark.parametrize(
    ("told", "standing"),
    dialogues("""
        rdl 70x6 70x6 70x5 | the last one was at 65kg, dropped it a bit => romanian deadlift 2×6 at 70 kg, 5 at 65 kg
        rdl 70x6 70x6 70x5 | last one was 65, dropped the weight => romanian deadlift 2×6 at 70 kg, 5 at 65 kg
        rdl 70x6 70x6 70x5 | last at 65, had to drop it => romanian deadlift 2×6 at 70 kg, 5 at 65 kg
        rdl 70x6 70x6 70x5 | last one 65, dropped a little => romanian deadlift 2×6 at 70 kg, 5 at 65 kg
        rdl 70x6 70x6 70x5 | last set was 65 dropped down => romanian deadlift 2×6 at 70 kg, 5 at 65 kg
        rdl 70x6 70x6 70x5 | last was 65 as i dropped the weight => romanian deadlift 2×6 at 70 kg, 5 at 65 kg
        rdl 70x6 70x6 70x5 | last one was 65 lowered it => romanian deadlift 2×6 at 70 kg, 5 at 65 kg
        rdl 3x6 70 | last two were 65, dropped the load => romanian deadlift 6 at 70 kg, 2×6 at 65 kg
        rdl 3x6 70 | set 3 was 65, dropped a bit => romanian deadlift 2×6 at 70 kg, 6 at 65 kg
        rdl 70x6 70x6 65x5 dropped it a bit => romanian deadlift 2×6 at 70 kg, 5 at 65 kg
        rdl 70x6 70x6 65x5, had to drop the weight => romanian deadlift 2×6 at 70 kg, 5 at 65 kg
        rdl 70x6 70x6 65x5 (dropped a bit) => romanian deadlift 2×6 at 70 kg, 5 at 65 kg
    """),
)
def test_a_load_lowered_is_no_drop_set(told: str, standing: str) -> None:
    assert standing_after(told) == standing


@pytest.mark.parametrize(
    ("told", "standing"),
    dialogues("""
        squat 3x5 100 | last one was 80 drop => barbell back squat 2×5 at 100 kg, 5 at 80 kg drop
        squat 3x5 100 | last one was 80, drop set => barbell back squat 2×5 at 100 kg, 5 at 80 kg drop
        squat 3x5 100 | last set was a drop => barbell back squat 2×5 at 100 kg, 5 at 100 kg drop
        squat 100x5, dropped to 80x8 => barbell back squat 5 at 100 kg, 8 at 80 kg drop
        squat 100x5, dropped it to 80 for 8 => barbell back squat 5 at 100 kg, 8 at 80 kg drop
    """),
)
def test_a_drop_stays_one(told: str, standing: str) -> None:
    assert standing_after(told) == standing


@pytest.mark.parametrize(
    ("told", "standing"),
    dialogues("""
        squat 3x5 100 | dropped 10kg on the last one => barbell back squat 2×5 at 100 kg, 5 at 90 kg
        squat 3x5 100 | dropped 10 for the last one => barbell back squat 2×5 at 100 kg, 5 at 90 kg
        squat 3x5 100 | dropped by 10kg on the last => barbell back squat 2×5 at 100 kg, 5 at 90 kg
        squat 3x5 100 | raised 10kg on the last one => barbell back squat 2×5 at 100 kg, 5 at 110 kg
        squat 3x5 100 | last one 10kg lighter => barbell back squat 2×5 at 100 kg, 5 at 90 kg
        squat 3x5 100 | last one minus 10kg => barbell back squat 2×5 at 100 kg, 5 at 90 kg
        squat 3x5 100 | dropped 2 reps on the last => barbell back squat 2×5 at 100 kg, 3 at 100 kg
        squat 3x5 100 | dropped 2 on the last => barbell back squat 3×5 at 100 kg
        squat 3x5 100 | dropped 95 on the last => barbell back squat 2×5 at 100 kg, 5 at 95 kg
        squat 3x5 100 | dropped to 95 for the last two => barbell back squat 5 at 100 kg, 2×5 at 95 kg
        squat 3x5 100 | had 4 on the last => barbell back squat 2×5 at 100 kg, 4 at 100 kg
    """),
)
def test_an_amount_by_which_it_was_moved_is_no_load(told: str, standing: str) -> None:
    assert standing_after(told) == standing

"""Corrections that name what had been typed: it is what the sets were not, and no number of theirs."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after


@pytest.mark.parametrize(
    ("told", "standing"),
    dialogues("""
        hack squat 4x6 125 | it was 122.5, i typed 125 => hack squat 4×6 at 122.5 kg
        hack squat 4x6 125 | leg curl 3x12 40 | hack squats were 122.5 btw, i typed 125 => hack squat 4×6 at 122.5 kg
        hack squat 4x6 125 | i wrote 125 but it was 122.5 => hack squat 4×6 at 122.5 kg
        hack squat 4x6 125 | typed 125 meant 122.5 => hack squat 4×6 at 122.5 kg
        hack squat 4x6 125 | accidentally put 125, its 122.5 => hack squat 4×6 at 122.5 kg
        hack squat 4x6 125 | was 122.5, no idea why i entered 125 => hack squat 4×6 at 122.5 kg
        hack squat 4x6 125 | it says 125, should say 122.5 => hack squat 4×6 at 122.5 kg
        hack squat 4x6 125 | sorry i wrote 125 instead of 122.5 => hack squat 4×6 at 122.5 kg
        hack squat 4x6 125 | 122.5!! i logged 125 like an idiot => hack squat 4×6 at 122.5 kg
        hack squat 4x6 125 | waren 122.5, hab 125 geschrieben => hack squat 4×6 at 122.5 kg
        hack squat 4x6 125 | eran 122.5, puse 125 => hack squat 4×6 at 122.5 kg
        hack squat 4x6 125 | c'était 122.5, j'ai écrit 125 => hack squat 4×6 at 122.5 kg
        hack squat 4x6 125 | last one was 4 reps, i wrote 6 => hack squat 3×6 at 125 kg, 4 at 125 kg
        hack squat 4x6 125 | i logged 6 reps but it was 5 => hack squat 4×5 at 125 kg
        push press 3x4 55 | it was 5 sets, i wrote 3 => push press 5×4 at 55 kg
        push press 3x4 55 | i wrote 3 sets but did 5 => push press 5×4 at 55 kg
        push press 3x4 55 | 5 sets, i put 3 => push press 5×4 at 55 kg
        push press 3x4 55 | i put 3 sets, it was 5 => push press 5×4 at 55 kg
        push press 3x4 55 | it was 5x4, i wrote 3x4 => push press 5×4 at 55 kg
        push press 3x4 55 | that was five sets, wrote three => push press 5×4 at 55 kg
        push press 5x4 55 | only 3 sets, i wrote 5 => push press 3×4 at 55 kg
        plank 3x60s | it was 45, i typed 60 => plank 3×45 s
        squat 3x5 115 | it was lbs, i wrote kg => barbell back squat 3×5 at 115 lb
        squat 3x5 115 | i put lbs but it was kg => barbell back squat 3×5 at 115 kg
        squat 3x5 115 | i logged squat but it was front squat => barbell front squat 3×5 at 115 kg
    """),
)
def test_what_had_been_typed_is_what_it_was_not(told: str, standing: str) -> None:
    assert standing_after(told) == standing


@pytest.mark.parametrize(
    "beside", ["i typed 125", "coach said 125", "put 125 on the bar and it moved", "it was 122.5, coach said 130"]
)
def test_words_for_typing_alone_change_nothing(beside: str) -> None:
    assert standing_after(f"hack squat 4x6 125 | {beside}") == "hack squat 4×6 at 125 kg"

"""Sets moved to another day, and what is no such move."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after

DIALOGUES = """
squat 3x5 100 | bench 3x5 80 | whole session was yesterday => barbell back squat 3×5 at 100 kg; barbell bench press 3×5 at 80 kg on 2025-03-13
bench 80x5 yesterday | squat 100x5 | yesterday's bench was 85 => barbell back squat 5 at 100 kg; barbell bench press 5 at 85 kg on 2025-03-13
bench 80x5 yesterday | squat 100x5 | yesterday bench should be 6 not 5 => barbell back squat 5 at 100 kg; barbell bench press 6 at 80 kg on 2025-03-13
squat 3x5 95 | no squats on monday => barbell back squat 3×5 at 95 kg
squat 3x5 95 | no, squats were on monday => barbell back squat 3×5 at 95 kg on 2025-03-10
bench 3x5 70 | that was the 31st => barbell bench press 3×5 at 70 kg on 2025-01-31
squat 3x5 95 | bench 3x5 70 | both were yesterday => barbell back squat 3×5 at 95 kg; barbell bench press 3×5 at 70 kg on 2025-03-13
squat 3x5 95 | bench 3x5 70 | all of that was yesterday => barbell back squat 3×5 at 95 kg; barbell bench press 3×5 at 70 kg on 2025-03-13
squat 3x5 95 | bench 3x5 70 | those were both on tuesday => barbell back squat 3×5 at 95 kg; barbell bench press 3×5 at 70 kg on 2025-03-11
squat 3x5 95 | bench 3x5 70 | the squats were yesterday => barbell bench press 3×5 at 70 kg; barbell back squat 3×5 at 95 kg on 2025-03-13
squat 3x5 95 | bench 3x5 70 | the squat was yesterday => barbell bench press 3×5 at 70 kg; barbell back squat 3×5 at 95 kg on 2025-03-13
squat 3x5 95 | bench 3x5 70 | move both to monday => barbell back squat 3×5 at 95 kg; barbell bench press 3×5 at 70 kg on 2025-03-10
squat 3x5 95 | bench 3x5 70 | move everything to monday => barbell back squat 3×5 at 95 kg; barbell bench press 3×5 at 70 kg on 2025-03-10
squat 3x5 95 | bench 3x5 70 | all yesterday => barbell back squat 3×5 at 95 kg; barbell bench press 3×5 at 70 kg on 2025-03-13
squat 3x5 95 | bench 3x5 70 | that was all yesterday => barbell back squat 3×5 at 95 kg; barbell bench press 3×5 at 70 kg on 2025-03-13
squat 3x5 95 | bench 3x5 70 | everything today was actually yesterday => barbell back squat 3×5 at 95 kg; barbell bench press 3×5 at 70 kg on 2025-03-13
squat 3x5 95 | bench 3x5 70 | that was yesterday => barbell back squat 3×5 at 95 kg; barbell bench press 3×5 at 70 kg on 2025-03-13
bench 4x6 70 | move that to 12/03 => barbell bench press 4×6 at 70 kg on 2025-03-12
bench 4x6 70 | that was 12/03 => barbell bench press 4×6 at 70 kg on 2025-03-12
bench 4x6 70 | that was on 12/3 => barbell bench press 4×6 at 70 kg on 2025-03-12
bench 4x6 70 | it was on the 12th => barbell bench press 4×6 at 70 kg on 2025-03-12
bench 4x6 70 | move it to 12.3. => barbell bench press 4×6 at 70 kg on 2025-03-12
bench 4x6 70 | move it to 2025-03-12 => barbell bench press 4×6 at 70 kg on 2025-03-12
bench 4x6 70 | that was 2025-03-12 => barbell bench press 4×6 at 70 kg on 2025-03-12
bench 4x6 70 | move it to march 12 => barbell bench press 4×6 at 70 kg on 2025-03-12
bench 4x6 70 | that was on 12 march => barbell bench press 4×6 at 70 kg on 2025-03-12
bench 4x6 70 | that was the 12th of march => barbell bench press 4×6 at 70 kg on 2025-03-12
bench 4x6 70 | that was 2 days ago => barbell bench press 4×6 at 70 kg on 2025-03-12
bench 4x6 70 | that was two days ago => barbell bench press 4×6 at 70 kg on 2025-03-12
bench 4x6 70 | that was last tuesday => barbell bench press 4×6 at 70 kg on 2025-03-11
bench 4x6 70 | that was tuesday not today => barbell bench press 4×6 at 70 kg on 2025-03-11
bench 4x6 70 | wrong day, it was yesterday => barbell bench press 4×6 at 70 kg on 2025-03-13
bench 4x6 70 | wrong date, should be wednesday => barbell bench press 4×6 at 70 kg on 2025-03-12
bench 4x6 70 | sory that was yesterady => barbell bench press 4×6 at 70 kg on 2025-03-13
bench 4x6 70 | that was yesteday => barbell bench press 4×6 at 70 kg on 2025-03-13
bench 4x6 70 | put it on tusday => barbell bench press 4×6 at 70 kg on 2025-03-11
bench 4x6 70 | that was wedensday => barbell bench press 4×6 at 70 kg on 2025-03-12
bench 4x6 70 | oops yesterday => barbell bench press 4×6 at 70 kg on 2025-03-13
bench 4x6 70 | sorry, yesterday => barbell bench press 4×6 at 70 kg on 2025-03-13
bench 4x6 70 | i did that yesterday => barbell bench press 4×6 at 70 kg on 2025-03-13
bench 4x6 70 | this was from monday => barbell bench press 4×6 at 70 kg on 2025-03-10
bench 4x6 70 | monday's session that was => barbell bench press 4×6 at 70 kg on 2025-03-10
bench 4x6 70 | log that for yesterday => barbell bench press 4×6 at 70 kg on 2025-03-13
bench 4x6 70 | date that yesterday => barbell bench press 4×6 at 70 kg on 2025-03-13
bench 4x6 70 | should be yesterday => barbell bench press 4×6 at 70 kg on 2025-03-13
bench 4x6 70 | that belongs to yesterday => barbell bench press 4×6 at 70 kg on 2025-03-13
bench 4x6 70 | that was this morning => barbell bench press 4×6 at 70 kg
bench 4x6 70 | that was last night => barbell bench press 4×6 at 70 kg on 2025-03-13
yesterday bench 4x6 70 | that was today => barbell bench press 4×6 at 70 kg
yesterday: bench 4x6 70 | no that was today => barbell bench press 4×6 at 70 kg
yesterday: bench 4x6 70 | no wait, monday => barbell bench press 4×6 at 70 kg on 2025-03-10
bench 4x6 70 | das war gestern => barbell bench press 4×6 at 70 kg on 2025-03-13
bench 4x6 70 | das war am dienstag => barbell bench press 4×6 at 70 kg on 2025-03-11
bench 4x6 70 | eso fue ayer => barbell bench press 4×6 at 70 kg on 2025-03-13
bench 4x6 70 | c'etait hier => barbell bench press 4×6 at 70 kg on 2025-03-13
bench 4x6 70 | era ieri => barbell bench press 4×6 at 70 kg on 2025-03-13
bench 4x6 70 | foi ontem => barbell bench press 4×6 at 70 kg on 2025-03-13
bench 4x6 70 | dat was gisteren => barbell bench press 4×6 at 70 kg on 2025-03-13
squat 115x3 | bench 60x6 | both of those were yesterday, posting late => barbell back squat 3 at 115 kg; barbell bench press 6 at 60 kg on 2025-03-13
yesterday: bench 80x5 | squat 100x4 | the squat was yesterday too => barbell bench press 5 at 80 kg; barbell back squat 4 at 100 kg on 2025-03-13
yesterday: bench 80x5 | squat 100x4 | squats also yesterday => barbell bench press 5 at 80 kg; barbell back squat 4 at 100 kg on 2025-03-13
squat 100x5 | still part of thursdays workout: push ups 20 18 15 => barbell back squat 5 at 100 kg; push-up 20, 18, 15 on 2025-03-13
squat 100x5 | date: 8/3 => barbell back squat 5 at 100 kg on 2025-03-08
squat 100x5 | dated 8/3 => barbell back squat 5 at 100 kg on 2025-03-08
squat 100x5 | for yesterday => barbell back squat 5 at 100 kg on 2025-03-13
squat 100x5 | counts for monday => barbell back squat 5 at 100 kg on 2025-03-10
squat 100x5 on the 8th => barbell back squat 5 at 100 kg on 2025-03-08
squat 100 5 5 5 | 4 on the 2nd => barbell back squat 5 at 100 kg, 4 at 100 kg, 5 at 100 kg
bench 60 8 8 7 from yesterday => barbell bench press 2×8 at 60 kg, 7 at 60 kg on 2025-03-13
monday bench 80 5 5 5 | last one was 4 => barbell bench press 2×5 at 80 kg, 4 at 80 kg on 2025-03-10
monday bench 3x5 80 | 82.5 not 80 => barbell bench press 3×5 at 82.5 kg on 2025-03-10
monday bench 80 5 5 5 | sorry, 4 => barbell bench press 2×5 at 80 kg, 4 at 80 kg on 2025-03-10
bench 3x5 80 on monday | only did 2 => barbell bench press 2×5 at 80 kg on 2025-03-10
bench 3x5 80 on monday | that was incline => incline barbell bench press 3×5 at 80 kg on 2025-03-10
bench 3x5 80 on monday | lbs not kg => barbell bench press 3×5 at 80 lb on 2025-03-10
bench 3x5 80 on monday | delete the last set => barbell bench press 2×5 at 80 kg on 2025-03-10
11/03 squat 3x5 100 | sorry that was the 10th => barbell back squat 3×5 at 100 kg on 2025-03-10
bench 60x8, sore from monday => barbell bench press 8 at 60 kg
dl 3x3 150 | this was wednesday by the way => conventional deadlift 3×3 at 150 kg on 2025-03-12
dl 3x3 150 | yesterday btw => conventional deadlift 3×3 at 150 kg on 2025-03-13
dl 3x3 150 | from yesterday btw => conventional deadlift 3×3 at 150 kg on 2025-03-13
dl 3x3 150 | i did it wednesday morning => conventional deadlift 3×3 at 150 kg on 2025-03-12
dl 3x3 150 | it's from monday => conventional deadlift 3×3 at 150 kg on 2025-03-10
dl 3x3 150 | from yesterday => conventional deadlift 3×3 at 150 kg on 2025-03-13
dl 3x3 150 | das ist von gestern => conventional deadlift 3×3 at 150 kg on 2025-03-13
dl 3x3 150 | c'est d'hier => conventional deadlift 3×3 at 150 kg on 2025-03-13
dl 3x3 150 | sono di lunedì => conventional deadlift 3×3 at 150 kg on 2025-03-10
dl 3x3 150 | z poniedziałku => conventional deadlift 3×3 at 150 kg on 2025-03-10
dl 3x3 150 | это за вчера => conventional deadlift 3×3 at 150 kg on 2025-03-13
dl 3x3 150 | the last two were from yesterday => conventional deadlift 3 at 150 kg; conventional deadlift 2×3 at 150 kg on 2025-03-13
dl 3x3 150 | that was monday or tuesday => conventional deadlift 3×3 at 150 kg
dl 3x3 150 | its yesterdays weight => conventional deadlift 3×3 at 150 kg
dl 3x3 150 | forgot one, 4x3 => conventional deadlift 3×3 at 150 kg
dl 3x3 150 | yesterday was leg day btw => conventional deadlift 3×3 at 150 kg
dl 3x3 150 | did i do this wednesday => conventional deadlift 3×3 at 150 kg
dl 3x3 150 | was this wednesday => conventional deadlift 3×3 at 150 kg
"""  # noqa: E501 — one dialogue a line


@pytest.mark.parametrize(("told", "standing"), dialogues(DIALOGUES))
def test_what_stands_after_days(told: str, standing: str) -> None:
    assert standing_after(told) == standing

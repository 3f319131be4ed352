"""Sets that were counted and not done go, where the words point at sets that stand."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after


@pytest.mark.parametrize(
    "told",
    ["skipped the fourth one", "i skipped the fourth set", "actually skipped set 4", "skipped the last set actually",
     "ended up skipping the fourth", "had to skip the last one", "didn't get to the fourth", "left out the fourth",
     "there was no fourth set", "skipped the fourth one, arms were dead", "skipped the fourth one, gym was closing",
     "only did 3, skipped the fourth", "skipped the 4th bc of my elbow", "den vierten hab ich ausgelassen",
     "me salté la cuarta", "vierten satz ausgelassen", "j'ai sauté la quatrième"],
)  # fmt: skip
def test_a_set_left_undone_goes(told: str) -> None:
    assert standing_after(f"lat pulldown 4x10 55 | {told}") == "lat pulldown 3×10 at 55 kg"


@pytest.mark.parametrize(
    "told",
    ["skipped the fifth one", "should i skip the fourth one?", "skipping the next one", "skipped breakfast",
     "skipped the last rep", "skipped my 6th coffee", "no second wind today", "my mate skipped the fourth one"],
)  # fmt: skip
def test_what_was_left_out_otherwise_takes_no_set(told: str) -> None:
    assert standing_after(f"lat pulldown 4x10 55 | {told}") == "lat pulldown 4×10 at 55 kg"


@pytest.mark.parametrize(
    ("told", "standing"),
    dialogues("""
        lat pulldown 4x10 55 | skipped the last two => lat pulldown 2×10 at 55 kg
        lat pulldown 55 10 10 9 8 | skipped the third one => lat pulldown 2×10 at 55 kg, 8 at 55 kg
        lat pulldown 55x10 | 10 | 10 | skipped the last one => lat pulldown 3×10 at 55 kg
        lat pulldown 55x10 | 10 | 10 | skipped the third one => lat pulldown 2×10 at 55 kg
        lat pulldown 4x10 55 | dips 8 | skipped the 4th pulldown set => lat pulldown 3×10 at 55 kg; dip 8
    """),
)
def test_the_sets_pointed_at_alone_go(told: str, standing: str) -> None:
    assert standing_after(told) == standing

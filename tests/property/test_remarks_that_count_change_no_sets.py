"""A remark with a word that counts, repeats or compares ("another good day") changes none of the sets beside it, and
seldom costs a question.

That remarks like these change no set is common practice, no source.
"""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.property.test_remarks_change_no_sets import SELDOM, read_beside

REMARKS = Path(__file__).with_name("remarks_that_count.txt").read_text(encoding="utf-8").splitlines()


@pytest.mark.parametrize("remark", REMARKS)
def test_a_remark_that_counts_something_else_changes_no_set_and_seldom_costs_a_question(remark: str) -> None:
    other, asked = read_beside(remark)

    assert other == {}
    assert len(asked) <= SELDOM

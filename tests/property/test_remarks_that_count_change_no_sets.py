"""A remark with a word that counts, repeats or compares ("another good day") changes none of the sets beside it, and
seldom costs a question.

That remarks like these change no set is common practice, no source.
"""

from __future__ import annotations

from pathlib import Path

import pytest

from engine.catalogue.catalogue import catalogue
from engine.reading import read
from engine.reading.values import Context, Logged
from tests.engine.reading.saying import NOW
from tests.property.test_remarks_change_no_sets import BESIDE, SETS

KNOWN = catalogue()
HERE = Context(now=NOW)
REMARKS = Path(__file__).with_name("remarks_that_count.txt").read_text(encoding="utf-8").splitlines()


def _sets(text: str) -> object:
    outcome = read(text, HERE, KNOWN)
    return outcome.sets if isinstance(outcome, Logged) else None


@pytest.mark.parametrize("remark", REMARKS)
def test_a_remark_that_counts_something_else_changes_no_set(remark: str) -> None:
    alone = {sets: _sets(sets) for sets in SETS}
    beside = {form.format(sets=sets, remark=remark): sets for sets in SETS for form in BESIDE}

    assert [text for text, sets in beside.items() if _sets(text) not in (alone[sets], None)] == []


@pytest.mark.parametrize("remark", REMARKS)
def test_a_remark_that_counts_something_else_seldom_costs_a_question(remark: str) -> None:
    assert len([sets for sets in SETS if _sets(f"{sets}, {remark}") is None]) <= len(SETS) // 5

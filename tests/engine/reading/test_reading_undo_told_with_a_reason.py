"""A step back that is told with why: "undo that, it did count". Common practice, no source."""

from __future__ import annotations

from dataclasses import replace

import pytest

from engine.reading import read
from engine.reading.values import Act
from tests.engine.reading.saying import KNOWN, situation


@pytest.mark.parametrize(
    "told",
    [
        "nah undo that, it did count",
        "undo that, it did count",
        "wait undo that, it counts",
        "nah take that back, it did count",
        "no undo that, it counted",
        "deshaz eso, sí contaba",
    ],
)
def test_undo_with_a_reason_takes_the_latest_step_back_where_nothing_was_undone(told):
    assert read(told, situation(), KNOWN) == Act("undo")


@pytest.mark.parametrize("told", ["nah undo that, it did count", "no, it did count"])
def test_behind_an_undo_it_is_brought_back(told):
    assert read(told, replace(situation(), undone=True), KNOWN) == Act("redo")


@pytest.mark.parametrize("told", ["it did count", "nah bring it back"])
def test_what_asks_for_it_back_alone_is_no_undo(told):
    assert read(told, situation(), KNOWN) == Act("redo")

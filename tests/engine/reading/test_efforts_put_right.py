"""An effort that puts one right is looked for behind an article: whatever stands there breaks nothing."""

from __future__ import annotations

from decimal import Decimal

from engine.reading import read
from engine.reading.corrections.clauses import rated
from engine.reading.values import Logged
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece
from tests.engine.reading.saying import KNOWN, situation


def test_a_number_behind_the_end_of_a_line_is_no_effort() -> None:
    told = read("squat 97x4 @8", situation(), KNOWN)
    assert isinstance(told, Logged)
    clause = [Piece(K.LINE, 0, 1, False, "\n"), Piece(K.NUMBER, 1, 2, False, "9", Decimal(9))]

    assert rated(clause, told.sets[0]) == clause

"""Remarks of nine languages beside sets told in them: the same sets are read, or it is asked; never other sets.

`remarks_in_languages/` holds a file a language, sets first ("sets: ..."), then a remark a line. They are invented;
that they change no set is common practice, no source.
"""

from __future__ import annotations

from pathlib import Path

import pytest

from engine.catalogue.catalogue import catalogue
from engine.catalogue.phrases import fold_accents
from engine.reading import read
from engine.reading.values import Context, Logged
from tests.engine.reading.saying import NOW
from tests.property.test_remarks_change_no_sets import beside

KNOWN = catalogue()
HERE = Context(now=NOW)
BANKS = sorted((Path(__file__).parent / "remarks_in_languages").glob("*.txt"))
HEAD = "sets: "
BESIDE = ("{sets}, {remark}", "{sets} - {remark}", "{sets} ({remark})", "{sets}\n{remark}", "{remark}, {sets}")


def _sets(text: str) -> object:
    outcome = read(text, HERE, KNOWN)
    return (outcome.sets, outcome.days) if isinstance(outcome, Logged) else None


def _other_sets(sets: list[str], remarks: list[str]) -> list[str]:
    """The messages in which a remark changes the sets beside it, in silence."""
    alone = {told: _sets(told) for told in sets}
    assert None not in alone.values(), alone
    texts = (pair for remark in remarks for pair in beside(remark, sets, BESIDE))
    return [text for told, text in texts if _sets(text) not in (alone[told], None)]


@pytest.mark.parametrize("bank", BANKS, ids=lambda bank: bank.stem)
def test_remarks_of_a_language_change_no_sets_told_in_it(bank: Path) -> None:
    lines = bank.read_text(encoding="utf-8").splitlines()
    sets = [line.removeprefix(HEAD) for line in lines if line.startswith(HEAD)]
    remarks = [line for line in lines if not line.startswith(HEAD)]
    bare = [fold_accents(remark) for remark in remarks if bank.stem != "ru" and fold_accents(remark) != remark]

    assert _other_sets(sets, remarks) == []
    assert _other_sets(sets[:2], bare) == []

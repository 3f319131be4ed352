"""The loops that the compiled reader runs come to what the functions of plain Python come to, whose place they take."""

from __future__ import annotations

import importlib
import inspect
from collections.abc import Container
from itertools import product

import pytest
from hypothesis import given
from hypothesis import strategies as st

from deploy import loops_for_c
from engine.catalogue.catalogue import catalogue
from engine.reading.prepare import prepare
from engine.reading.values import Context
from engine.reading.words import cues, pieces
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook
from engine.reading.words.roles import Role

IN_PLACE_OF = [(module, name) for module, names in loops_for_c.IN_PLACE_OF.items() for name in names]
MESSAGES = (
    "",
    "bench 3x8 60 @8, last one to failure",
    "wu 50kg x10, 70x5, then 3x5 100\nKniebeuge 4x8 87,5 kg pro Seite",
    "ok so it felt heavier today, rest 2 min; pull ups 9 8 7",
)
TOLD = [prepare(text, Context(), catalogue()).pieces for text in MESSAGES]


@pytest.mark.parametrize(("module", "name"), IN_PLACE_OF)
def test_each_stands_for_a_function_that_takes_the_same(module: str, name: str) -> None:
    plain = getattr(importlib.import_module(f"engine.reading.{module.replace('/', '.')}"), name)

    assert inspect.signature(getattr(loops_for_c, name)) == inspect.signature(plain)


@pytest.mark.parametrize("told", TOLD)
@pytest.mark.parametrize("name", ["kinds_of", "kinds_in_order", "texts_in_order"])
@pytest.mark.parametrize("shape", [list, tuple, iter])
def test_fields_of_pieces_are_the_same(told: list[pieces.Piece], name: str, shape: type) -> None:
    assert getattr(loops_for_c, name)(shape(told)) == getattr(pieces, name)(shape(told))


@given(st.lists(st.sampled_from((K.NUMBER, K.NAME, K.AT, Role.BARE, "w", "set"))), st.sampled_from((list, tuple)))
def test_places_are_the_same(told: list[object], shape: type) -> None:
    for one in (K.NUMBER, Role.BARE, "set", "".join(("s", "et"))):
        assert loops_for_c.places_of(one, shape(told)) == pieces.places_of(one, shape(told))
    holders: tuple[Container[object], ...] = (frozenset((K.NAME, K.AT)), ("w", K.NUMBER), {})
    for wanted in holders:
        assert loops_for_c.places_in(wanted, shape(told)) == pieces.places_in(wanted, shape(told))


def test_cues_are_the_same() -> None:
    words = ["", "zwargl", *(sorted(phrases)[0] for phrases in phrasebook().cues.values() if phrases)]
    for few in (words[:1], words[:2], words, *product(words[2::9], words[3::11])):
        assert loops_for_c.cues_told(few) == cues.cues_told(few)
        assert loops_for_c.cues_told(iter(few)) == cues.cues_told(iter(few))

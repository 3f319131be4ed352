"""Numbers in brackets behind sets that may be efforts: "bench 80x8 (8) 80x8 (9)", "3x8 80 (7, 8, 9)".

What else they may be, more sets or results, is read already; this adds the reading in which each is an effort.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import replace

from engine.reading.asking import question_of
from engine.reading.prepare import Prepared
from engine.reading.values import Asked, Doubt, Logged, Outcome, Reading
from engine.reading.wording import label_of

EFFORT = re.compile(r"(?<!\d)(?:10|[5-9](?:[.,]5)?)(?!\d)")
"""The usual scale from five on: below it nobody notes an effort. Common practice, no source."""
BETWEEN_EFFORTS = " ,/"
ANY_BRACKETS = re.compile(r"\([^()]*\)")
MOST_READINGS = 3


def with_efforts_in_brackets(asked: Asked, prepared: Prepared, sets_of: Callable[[str], Outcome]) -> Asked:
    """The question with one reading more, where all brackets with numbers may hold efforts; else as it was."""
    found = [bracket for bracket in ANY_BRACKETS.findall(prepared.cleaned) if _holds_numbers(bracket)]
    if not found or asked.doubt is not Doubt.NUMBERS or len(asked.readings) >= MOST_READINGS:
        return asked
    if not all(map(_holds_efforts, found)):
        return asked
    told = sets_of(ANY_BRACKETS.sub(_spelt, prepared.cleaned))
    rated = isinstance(told, Logged) and not told.unread and any(done.effort is not None for done in told.sets)
    known = [reading.sets for reading in asked.readings]
    if not isinstance(told, Logged) or not rated or told.sets in known:
        return asked
    rivals = [told.sets, *known]
    readings = tuple(Reading(sets, 1 / len(rivals), label_of(sets, rivals)) for sets in rivals)
    return replace(asked, question=question_of(Doubt.NUMBERS, "", readings), readings=readings, text="")


def _spelt(found: re.Match[str]) -> str:
    """The efforts as words tell them, a decimal comma as a point; brackets without numbers as they are."""
    if not _holds_numbers(found[0]):
        return found[0]
    numbers = re.findall(EFFORT, found[0])
    return f" rpe {' '.join(number.replace(',', '.') for number in numbers)} "


def _holds_numbers(bracket: str) -> bool:
    return any(sign.isdigit() for sign in bracket)


def _holds_efforts(bracket: str) -> bool:
    """Whether nothing but efforts stands between the brackets."""
    return not EFFORT.sub("", bracket[1:-1]).strip(BETWEEN_EFFORTS)

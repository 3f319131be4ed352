"""The steps of a reading grow as its text does, whatever it says: counted in instructions of Python, not in seconds."""

from __future__ import annotations

import subprocess
import sys
from collections.abc import Callable
from datetime import UTC, datetime
from pathlib import Path
from random import Random
from types import FrameType
from typing import Any

import pytest

from engine.catalogue.catalogue import catalogue
from engine.reading import read
from engine.reading.answers.answers import read_answer
from engine.reading.values import Asked, Context
from engine.reading.words import pieces
from tests.bench.generated_messages import COUNTS, LOADS, MARKS, NAMES, SIGNS, WORDS

LENGTHS = (512, 1_024, 2_048)
LONGEST = 4_096
NO_MORE = 1.5
"""A part that takes the square of the length takes twice the steps for a letter where there are twice as many."""
MIXED = 24
KNOWN = catalogue()
FRAGMENTS = (*NAMES, *COUNTS, *LOADS, *SIGNS, *WORDS, *MARKS, "f4", "4bp", "s1", "a1", "zwargl", "banch", "set 1: ")
REPEATED = (
    *("bench 3x5 100? ", "zwargl ", "banch sqaut rwo ", "f4 ", "4bp 5ck ", "s1 80 ", "x5 5x ", "1 2 3 4 5 6 7 8 9 "),
    *(
        "bench squat row ",
        "another, ",
        "same again\n",
        "(8 8) ",
        "(bench 8 ",
        "x/-+@(",
        "squattt",
        "no, 80x5 ",
        "last set 8, ",
        "set 2, ",
        "A131/02007\n",
    ),
    *(
        "bench or squat ",
        "8 or 9 ",
        "bar, ",
        "up 2.5 up 2.5 bar ",
        "100%: ",
        "1. ",
        "5'5\" ",
        "wk1 d2 ",
        "12/3 ",
        "at 80 for 5 ",
        "x x ",
        "9",
        "2025-03-14rounds ",
        "rest 90 (",
        "no set 2\n",
        "3x-5should be",
        "zwarglB)12/03B), ",
        "3x4100date:",
        "w/25:61rightt-bar row ",
    ),
)


def mixed(seed: int) -> str:
    """A few fragments behind one another."""
    dice = Random(seed)
    between = dice.choice((" ", " ", ""))
    return between.join(dice.choices(FRAGMENTS, k=dice.randint(1, 4))) + dice.choice((" ", "\n", ", "))


def steps(text: str) -> int:
    """How many instructions one reading of the text takes."""
    return steps_of(lambda: read(text, Context(), KNOWN))


def steps_of(work: Callable[[], object]) -> int:
    """How many instructions the work takes, once its words are known."""
    taken = 0

    def count(frame: FrameType, event: str, _: Any) -> Callable[..., Any]:
        nonlocal taken
        frame.f_trace_opcodes, frame.f_trace_lines = True, False
        taken += event == "opcode"
        return count

    work()
    before = sys.gettrace()
    sys.settrace(count)
    try:
        work()
    finally:
        sys.settrace(before)
    return taken


@pytest.mark.parametrize("part", [*REPEATED, *map(mixed, range(MIXED))])
def test_a_letter_of_a_long_text_takes_as_many_steps_as_one_of_a_short(part: str) -> None:
    text = part * (LONGEST // len(part) + 1)

    of_a_long_text = steps(text[:LONGEST]) / LONGEST

    # The dearest letter of the shorter texts counts; the first that is dear enough settles it, the shortest text first.
    assert any(of_a_long_text <= NO_MORE * steps(text[:length]) / length for length in LENGTHS)


WALKED = (",  1/0 right", "total31/02undo\n", "bw 100", "12/03 week", "bench 3x5 100? ", "1 2 3 4 5 6 7 8 9 ")


@pytest.mark.parametrize("part", [*WALKED, *map(mixed, range(MIXED // 2))])
def test_a_letter_of_a_long_text_is_walked_past_as_often_as_one_of_a_short(part: str) -> None:
    text = part * (LONGEST // len(part) + 1)
    read(text[:LONGEST], Context(), KNOWN)

    walked = {length: walked_past(text[:length]) / length for length in (*LENGTHS, LONGEST)}

    assert any(walked[LONGEST] <= NO_MORE * walked[length] for length in LENGTHS)


def walked_past(text: str) -> int:
    """How many pieces one reading hands to what walks a whole list in one instruction, be it `list.count` or a map."""
    taken = 0

    def count(frame: FrameType, event: str, called: Any) -> None:
        nonlocal taken
        if event == "c_call" and isinstance(walked := getattr(called, "__self__", None), list):
            taken += len(walked) if called.__name__ in WALKING else 0
        elif event == "call" and frame.f_code.co_filename == pieces.__file__:
            taken += sum(len(given) for given in frame.f_locals.values() if isinstance(given, list))

    before = sys.getprofile()
    sys.setprofile(count)
    try:
        read(text, Context(), KNOWN)
    finally:
        sys.setprofile(before)
    return taken


WALKING = frozenset(("count", "index", "copy", "remove", "reverse", "sort"))


SLICED = (
    *("knee pain 3/10\n", "3 days ago\n", "wu  , ", "march 12×5, ", "as planned\n", "not x , ", "\nmonday, "),
    *("wu 100 82.5, ", "last set was undo, ", "one hand taped ", "superset80qqshe\n", "in the tank007two\n"),
)
HIDDEN_WORK = Path(__file__).parents[2] / "bench" / "hidden_work.py"


def test_no_instruction_hides_work_that_grows_faster_than_the_text() -> None:
    # In a process of its own, where the reader is loaded with its slices counted.
    told = subprocess.run([sys.executable, HIDDEN_WORK, *SLICED], capture_output=True, text=True, check=False)

    assert (told.returncode, told.stderr) == (0, ""), told.stdout


ONE_WORD = ("éx", "qwertyuiop", "squat", "press", "benchpres", "жим", "ааб")
"""Parts of one endless word: that is what a name is looked for in with slips of the thumb, one letter or two."""
BESIDE = ("squat {}", "bench {} press 3x5 100", "{} bench 3x5 60", "swap {} for squat", "{}")


@pytest.mark.parametrize("beside", BESIDE)
@pytest.mark.parametrize("part", ONE_WORD)
def test_a_letter_of_a_long_word_takes_as_many_steps_as_one_of_a_short(part: str, beside: str) -> None:
    def of_a_letter(letters: int) -> float:
        return steps(beside.format((part * letters)[:letters])) / letters

    assert of_a_letter(256) <= NO_MORE * of_a_letter(64)


MORE_OF_IT = ("{}, rpe 8", "{} and it was yesterday", "{}, barbell", "i meant {}", "{} but the last was 10")


@pytest.mark.parametrize("start", ["hm", "barbell"])
@pytest.mark.parametrize("more", MORE_OF_IT)
def test_an_answer_of_twice_as_many_parts_takes_no_more_than_about_twice_the_steps(start: str, more: str) -> None:
    context = Context(now=datetime(2025, 3, 14, 18, 0, tzinfo=UTC))
    asked = read("row 3x12 55", context, KNOWN)
    assert isinstance(asked, Asked)

    def of_parts(parts: int) -> int:
        text = start
        for _ in range(parts):
            text = more.format(text)
        return steps_of(lambda: read_answer(text, asked, context, KNOWN))

    assert of_parts(12) <= 2 * NO_MORE * of_parts(6)

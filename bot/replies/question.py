"""Ask-back in words: the readings, as buttons and as words to type; and that nothing is saved yet."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import takewhile
from typing import assert_never

from bot.messages import Button
from bot.replies.dates import day
from bot.replies.reply import Reply
from bot.replies.sets import sets_text
from bot.replies.trouble import quoted
from engine.reading.asking import NUMBERS_AGAIN
from engine.reading.values import Asked, Doubt
from engine.values.ids import ExerciseName
from engine.values.sets import SetDone

LABEL = 40
NOTHING_SAVED = "Nothing is saved yet."


def question(asked: Asked, number: int, text: str, *, stands: bool = False, example: str = "") -> Reply:
    """The question with one button a reading. `stands`: an edit is in doubt, so the old sets stand meanwhile.

    `example`: what a set of the lift looks like, shown where its numbers are to be sent again.
    """
    saved = "What was saved stands until then." if stands else "Not saved yet."
    labels = distinct([label(asked, place) for place in range(len(asked.readings))], asked)
    head, hint = _head(asked, text), ""
    if _has_nothing_to_choose(asked):
        head, hint = _in_the_words_of_the_reader(asked)
        hint = f"{hint}, as in {example}" if hint == NUMBERS_AGAIN and example else hint
    lines = [f"{head} {saved}", *([hint] if hint else [])]
    lines += [f"{place} {one}" for place, one in enumerate(labels, start=1)]
    buttons = [Button(one, f"v1:pick:{number}:{place}") for place, one in enumerate(_cut_apart(labels))]
    return Reply(
        "\n".join(lines),
        _rows([*buttons, Button("None of these" if buttons else "Leave it out", f"v1:pick:{number}:9")]),
    )


def _has_nothing_to_choose(asked: Asked) -> bool:
    """Whether no reading is offered, and no single number or name is missing: what to write says the reader alone."""
    return asked.doubt is Doubt.NUMBERS and not asked.readings and not asked.text


def _in_the_words_of_the_reader(asked: Asked) -> tuple[str, str]:
    """What was not clear, and what to send instead."""
    asking, _, hint = asked.question.partition(f" {NOTHING_SAVED}")
    if not hint:
        asking, mark, hint = asked.question.partition("? ")
        asking += mark.strip()
    return asking, hint.strip()


def _head(asked: Asked, text: str) -> str:
    match asked.doubt:
        case Doubt.EXERCISE:
            return f"Which {quoted(asked.typed or asked.term or text, 30)}?"
        case Doubt.UNLIKELY_LOAD | Doubt.UNUSUAL_LOAD | Doubt.WHICH_LOAD:
            return _of_the_load(asked, text)
        case Doubt.RANGE | Doubt.HOW_MANY:
            return f"How many {'sets ' if asked.doubt is Doubt.HOW_MANY else ''}did you do in {quoted(text)}?"
        case Doubt.NUMBERS | Doubt.EFFORT_OR_LOAD:
            gap = asked.text and not asked.readings
            return (
                f"I cannot read one number in {quoted(text)}. What is it?" if gap else f"How is {quoted(text)} meant?"
            )
        case Doubt.WORDS:
            return (
                f"I do not understand {quoted(asked.typed, 30)} in it. Is this right? Else send each set with its reps."
            )
        case Doubt.WHOSE | Doubt.WHETHER | Doubt.DAY:
            return _whether(asked, text)
        case Doubt.UNKNOWN_NAME | Doubt.NO_REPS | Doubt.MORE:
            asking = asked.question.removesuffix(f" {NOTHING_SAVED}")
            several = any(len(_lifts(reading.sets)) > 1 for reading in asked.readings)
            return f"{asking.partition('? ')[0]}?" if several and "? " in asking else asking
        case _:
            assert_never(asked.doubt)


def _of_the_load(asked: Asked, text: str) -> str:
    if asked.doubt is Doubt.WHICH_LOAD:
        return f"At which load did you do {quoted(text)}? Send it, as in 82.5, if it is not this one."
    return f"{quoted(text)} is {asked.doubt.value}. Is it right?"


def _whether(asked: Asked, text: str) -> str:
    if asked.doubt is not Doubt.DAY:
        return f"Yours, or {asked.term}'s?" if asked.term else f"Did you do {quoted(text)}?"
    on = "" if asked.on is None else f", {day(asked.on)}"
    return f"Are these sets of {quoted(asked.typed, 30)}{on}? If not, send them again without it."


def distinct(labels: Sequence[str], asked: Asked) -> list[str]:
    """The labels, with the sets behind those that would read alike."""
    return [
        f"{one} {sets_text(reading.sets)}" if labels.count(one) > 1 else one
        for one, reading in zip(labels, asked.readings, strict=True)
    ]


def label(asked: Asked, place: int) -> str:
    """What sets one reading apart from its rivals: the exercise where that is in doubt; else all sets that a yes
    saves.
    """
    one = asked.readings[place]
    names = _lifts(one.sets)
    if asked.doubt is Doubt.EXERCISE and len(asked.readings) > 1:
        others = {name for rival in asked.readings if rival is not one for name in (d.exercise for d in rival.sets)}
        apart = [name for name in names if name not in others]
        return ", ".join(apart or names)
    told = ((name, [done for done in one.sets if done.exercise == name]) for name in names)
    return "; ".join(f"{name} {sets_text(of_it)}" for name, of_it in told)


def _lifts(sets: Sequence[SetDone]) -> list[ExerciseName]:
    """The exercises of the sets, in the order told."""
    return list(dict.fromkeys(done.exercise for done in sets))


def _cut_apart(labels: Sequence[str]) -> list[str]:
    """The labels as long as a button shows them; where they would read alike, what they share in front is cut off."""
    shown = [_cut(one) for one in labels]
    if len(set(shown)) == len(shown):
        return shown
    shared = sum(1 for _ in takewhile(lambda letters: len(set(letters)) == 1, zip(*labels, strict=False)))
    start = min(shared, max(map(len, labels)) - LABEL + 1)
    start = labels[0].find(" ", start) + 1 or start
    return [_cut(f"…{one[start:]}") for one in labels]


def _cut(words: str) -> str:
    return words if len(words) <= LABEL else words[: LABEL - 1] + "…"


def _rows(buttons: Sequence[Button]) -> Sequence[Sequence[Button]]:
    """At most three short labels to a row, else two, else one."""
    longest = max(len(button.label) for button in buttons)
    wide = 3 if longest <= 10 else 2 if longest <= 18 else 1
    return [buttons[start : start + wide] for start in range(0, len(buttons), wide)]


def never_answered(text: str) -> Reply:
    """A question that another message crowded out."""
    return Reply(f"Still not saved, never answered: {quoted(text)}")


def still_open(text: str) -> str:
    """A question that waits while something else is done."""
    return f"Still asked, and not saved: {quoted(text)}. forget it leaves it out."


def left_out(text: str, before: str) -> Reply:
    """What is asked about was taken back, and what another undo would take back."""
    more = f" undo once more takes back {before}." if before else ""
    return Reply(f"Left out: {quoted(text)}. Nothing was saved for it.{more}")


def dropped(text: str, *, stands: bool = False) -> Reply:
    """The question was let go. `stands`: it was about an edit, and the old sets stay."""
    saved = "The sets from before the edit stay." if stands else "Nothing saved for it."
    return Reply(f"Left out: {quoted(text)}. {saved}")


def too_late(text: str) -> Reply:
    """A button of a question that is settled or too old."""
    what = f" about {quoted(text)}" if text else ""
    return Reply(f"That question{what} is closed. Nothing changed. Send the set again if it is missing.")

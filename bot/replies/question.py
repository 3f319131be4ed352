"""Ask-back in words: the readings, as buttons and as words to type; and that nothing is saved yet."""

from __future__ import annotations

from collections.abc import Sequence

from bot.messages import Button
from bot.replies.reply import Reply
from bot.replies.trouble import quoted
from engine.reading.values import Asked, Reading

LABEL = 40


def question(asked: Asked, number: int, text: str, *, stands: bool = False) -> Reply:
    """The question with one button a reading. `stands`: an edit is in doubt, so the old sets stand meanwhile."""
    saved = "What was saved stands until then." if stands else "Not saved yet."
    lines = [f"{asked.question} {saved}"]
    lines += [f"{place} {one.label}" for place, one in enumerate(asked.readings, start=1)]
    buttons = [Button(_label(one, place), f"v1:pick:{number}:{place}") for place, one in enumerate(asked.readings)]
    return Reply("\n".join(lines), _rows([*buttons, Button("None of these", f"v1:pick:{number}:9")]))


def _label(reading: Reading, place: int) -> str:
    label = reading.label or str(place + 1)
    return label if len(label) <= LABEL else label[: LABEL - 1] + "…"


def _rows(buttons: Sequence[Button]) -> Sequence[Sequence[Button]]:
    """At most three short labels to a row, else two, else one."""
    longest = max(len(button.label) for button in buttons)
    wide = 3 if longest <= 10 else 2 if longest <= 18 else 1
    return [buttons[start : start + wide] for start in range(0, len(buttons), wide)]


def dropped(text: str) -> Reply:
    """The question was let go."""
    return Reply(f"Left out: {quoted(text)}. Nothing saved for it.")


def too_late(text: str) -> Reply:
    """A button of a question that is settled or too old."""
    what = f" about {quoted(text)}" if text else ""
    return Reply(f"That question{what} is closed. Nothing changed. Send the set again if it is missing.")

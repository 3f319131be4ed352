"""Words about pain: plain, urgent where the signs are, never a diagnosis.

The urgent signs are those at which exercise is stopped at once. Source: ACSM's Guidelines for Exercise Testing and
Prescription, general indications for stopping an exercise test (wording ours).
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from bot.messages import Button
from bot.replies.names import listed, title
from bot.replies.reply import UNDO, Reply, row
from engine.values.ids import ExerciseName

URGENT = re.compile(
    r"\b(chest|heart|palpitation|dizz|faint|pass(?:ed|ing)? out|black(?:ed|ing)? out|collaps|light.?headed|unsteady|"
    r"numb|tingl|short(?:ness)? of breath|breathless|can'?t (?:breathe|get|catch)|wheez|confus|dark urine|"
    r"(?:cola|tea)\b|slurred|vision|cold sweat|clammy|blue lips|jaw)",
    re.IGNORECASE,
)


def is_urgent(text: str) -> bool:
    """Whether the words hold a sign that wants help at once."""
    return URGENT.search(text) is not None


def noted(exercise: ExerciseName | None, text: str, *, shared: bool = False) -> Reply:
    """What to do now, and where help is."""
    hold = _hold("its") if exercise else NO_LIFT
    if is_urgent(text):
        # Nothing softer may stand behind this.
        lines = [
            "Stop training now. Chest pain, fainting, new numbness or trouble breathing: call emergency services.",
            "I can't judge this. Train again once a doctor says you may.",
        ]
        hold = hold if exercise else ""
    else:
        stop = f"Stop or ease {exercise} today" if exercise else "Stop what hurts today"
        lines = [
            f"{stop}. I can't judge an injury: if it stays or gets worse, see a doctor or physiotherapist.",
            "Chest pain, fainting or new numbness: get medical help now.",
        ]
    lines.append(hold if shared else f"{hold} Only you see this note.".strip())
    buttons = _buttons(exercise)
    return Reply("\n".join(filter(None, lines)), [row[:-1] for row in buttons if row[:-1]] if shared else buttons)


def held(exercise: ExerciseName) -> Reply:
    """The lift of a pain that was answered before it was known which lift it is."""
    return Reply(_hold(f"{exercise}'s"), _buttons(exercise))


NO_LIFT = "Name a lift that it hurts on, and I won't push its load."


def _hold(whose: str) -> str:
    return f"I won't push {whose} load until you tell me the pain is gone."


def over(exercises: Sequence[ExerciseName]) -> Reply:
    """The load of these lifts may rise again."""
    return Reply(
        f"Good. {title(listed(exercises))} may go up again. Begin easy; if it comes back, stop and see a professional.",
        row(UNDO),
    )


def _buttons(exercise: ExerciseName | None) -> tuple[tuple[Button, ...], ...]:
    share = Button("Share note", "v1:share")
    if exercise is None:
        return ((share,),)
    return ((Button("Skip it", "v1:skip-pain"), Button("Swap it", "v1:swap-pain"), share),)

"""What a reply is made of before anyone knows how it travels: words, buttons, and the machine-readable side."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any

from bot.messages import Attachment, Button
from storage.records import Change


@dataclass(frozen=True, slots=True)
class Reply:
    """Shape: `buttons` in rows; `prescribes` and `volume` as in the replay contract."""

    text: str
    buttons: Sequence[Sequence[Button]] = ()
    prescribes: Sequence[Mapping[str, Any]] = ()
    volume: Mapping[str, Any] = field(default_factory=dict)
    attachment: Attachment | None = None


UNDO = Button("Undo", "v1:undo")


def own_undo(buttons: Sequence[Sequence[Button]], step: Change | None) -> Sequence[Sequence[Button]]:
    """The buttons, with Undo tied to the change of the reply: tapped twice, or late, it takes back no other."""
    if step is None:
        return buttons
    tied = Button(UNDO.label, f"{UNDO.data}:{step.athlete}:{step.id}")
    return [[tied if button == UNDO else button for button in each] for each in buttons]


def row(*buttons: Button) -> tuple[tuple[Button, ...], ...]:
    """One row of buttons."""
    return (tuple(buttons),)

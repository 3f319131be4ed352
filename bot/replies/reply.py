"""What a reply is made of before anyone knows how it travels: words, buttons, and the machine-readable side."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any

from bot.messages import Attachment, Button


@dataclass(frozen=True, slots=True)
class Reply:
    """Shape: `buttons` in rows; `prescribes` and `volume` as in the replay contract."""

    text: str
    buttons: Sequence[Sequence[Button]] = ()
    prescribes: Sequence[Mapping[str, Any]] = ()
    volume: Mapping[str, Any] = field(default_factory=dict)
    attachment: Attachment | None = None


UNDO = Button("Undo", "v1:undo")


def row(*buttons: Button) -> tuple[tuple[Button, ...], ...]:
    """One row of buttons."""
    return (tuple(buttons),)

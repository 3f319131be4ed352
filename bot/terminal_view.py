"""How one outgoing message looks in a terminal."""

from __future__ import annotations

from storage.envelopes import Delivery

INDENT = "  "


def shown(delivery: Delivery) -> str:
    """The message, indented, with its buttons numbered."""
    outgoing = delivery.outgoing
    if outgoing.kind == "react":
        return f"{INDENT}(thumbs up)"
    lines = [f"{INDENT}{line}" for line in outgoing.text.splitlines()]
    if outgoing.attachment_name is not None and outgoing.attachment is not None:
        lines.append(f"{INDENT}(file {outgoing.attachment_name}, {len(outgoing.attachment)} bytes)")
    buttons = [label for row in outgoing.buttons for label, _ in row]
    if buttons:
        lines.append(INDENT + "  ".join(f"[:{place} {label}]" for place, label in enumerate(buttons, start=1)))
    return "\n".join(lines)


def hint(*, demo: bool = False) -> str:
    """How to talk here."""
    lines = ["Type what you did, or help. :1 taps the first button, :edit changes your last message,"]
    lines.append(":send plan.txt sends a file, :as NAME makes you somebody else, :quit leaves.")
    if demo:
        lines.insert(0, "A demo with an invented athlete and her coach (:as kit); nothing is kept. Begin with: today")
    return "\n".join(lines)

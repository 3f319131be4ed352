"""Exercise names and counts as they stand in a sentence."""

from __future__ import annotations

from collections.abc import Sequence


def title(name: str) -> str:
    """An exercise at the start of a line: Barbell row."""
    return name[:1].upper() + name[1:]


def listed(words: Sequence[str], most: int = 6) -> str:
    """squat, bench press and row; a long list is cut with how many more."""
    if len(words) > most:
        return f"{', '.join(words[:most])} and {len(words) - most} more"
    if len(words) < 2:
        return "".join(words)
    return f"{', '.join(words[:-1])} and {words[-1]}"

"""Whether a note of an old log tells of pain."""

from __future__ import annotations

from engine.catalogue.catalogue import Catalogue
from engine.reading.marks.pain import tells_pain as pieces_tell_pain
from engine.reading.prepare import prepare
from engine.reading.values import Context

LONGEST = 1_000


def tells_pain(text: str, catalogue: Catalogue) -> bool:
    """Whether the words tell of pain, an injury or a warning sign; not of sore muscles, not of pain denied."""
    return pieces_tell_pain(prepare(text[:LONGEST], Context(), catalogue).pieces)

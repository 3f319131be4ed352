"""What a number was, told behind it: "55 was the weight", "10 is the reps".

value first = NUMBER [ unit ] "was" [ "the" ] ( load word | "reps" )
"""

from __future__ import annotations

from engine.catalogue.catalogue import Catalogue
from engine.reading.corrections.parts import is_be
from engine.reading.prepare import Prepared, prepare
from engine.reading.values import Context
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K

THE, LOAD = frozenset(("the",)), frozenset(("loadword",))
SHORTEST, LONGEST = 3, 4


def with_value_behind(prepared: Prepared, context: Context, catalogue: Catalogue) -> Prepared:
    """The message as "the weight was 55" tells it; as it is where it is no such message."""
    pieces = prepared.spoken
    if not SHORTEST <= len(pieces) <= LONGEST or pieces[0].kind is not K.NUMBER or not is_be(pieces[1]):
        return prepared
    named = pieces[-1].kind is K.REPS or is_cued(pieces[-1].text, LOAD)
    if not named or (len(pieces) == LONGEST and not is_cued(pieces[2].text, THE)):
        return prepared
    number = prepared.cleaned[pieces[0].start : pieces[0].end]
    said = prepared.cleaned[pieces[1].start : pieces[1].end]
    what = prepared.cleaned[pieces[2].start : pieces[-1].end]
    return prepare(f"{what} {said} {number}", context, catalogue)

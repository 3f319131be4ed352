"""Words that answer a question: which of the readings, which equipment, load or effort."""

from __future__ import annotations

from collections.abc import Iterable
from functools import lru_cache

from engine.reading.words.cues import CUES_OF, any_cued, is_cued
from engine.reading.words.phrasebook import phrasebook
from engine.reading.words.slips import Slips, slips_of

SHORT_FOR = {
    "dumbbell": {
        "db",
        "dbs",
        "dumbbells",
        "dumbells",
        "dumbel",
        "dumbels",
        "dumbles",
        "dumble",
        "kurzhantel",
        "mancuernas",
        "hantel",
    },
    "barbell": {"bb", "bar", "langhantel", "barra"},
    "cable": {"cables", "pulley", "kabel"},
    "machine": {"maschine"},
    "kettlebell": {"kb"},
    "ez bar": {"ez"},
}

KILOS = frozenset(("kilos", "kg"))
LOAD = frozenset(("loadword",))
EFFORT = frozenset(("effortword",))
SIGNS = {"1": 0, "a": 0, "2": 1, "b": 1, "3": 2, "c": 2}
CHOICES = {"choicefirst": 0, "choicesecond": 1, "choicethird": 2, "choicelast": -1}


def says_load(words: Iterable[str]) -> bool:
    """ "12 is the weight", "kilos"."""
    return any(word in KILOS or is_cued(word, LOAD) for word in words)


def says_effort(words: Iterable[str]) -> bool:
    """ "the rpe"."""
    return any_cued(words, EFFORT)


def place_of(said: str) -> int | None:
    """The place among the choices that these words name, -1 for the last; None where they name none."""
    if said in SIGNS:
        return SIGNS[said]
    return next((CHOICES[cue] for cue in CUES_OF[said] if cue in CHOICES), None)


@lru_cache(maxsize=1)
def weighing_words() -> Slips:
    """Words for loads and efforts, for those that are spelt with a slip."""
    cues = phrasebook().cues
    return slips_of(KILOS.union(*(cues[cue] for cue in LOAD | EFFORT)))


PLACE_FILLERS = frozenset(
    (
        "the",
        "one",
        "option",
        "number",
        "reading",
        "please",
        "choice",
        "it",
        "is",
        "was",
        "die",
        "la",
        "le",
        "el",
        "o",
        "il",
    )
)

ANSWER_FILLERS = PLACE_FILLERS | frozenset(
    ("with", "that", "those", "were", "i", "mean", "meant", "sorry", "on", "of", "course", "a", "an", "its", "thats",
     "pls", "no", "oh", "yes", "yeah", "did", "used", "using", "in", "ones", "kind", "version", "variation", "type",
     "this", "they", "for")
)  # fmt: skip

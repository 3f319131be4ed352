"""Mistyped words of a correction put right: "it was 5 nto 6", "that was yesterady", "secnod set was 7"."""

from __future__ import annotations

from functools import lru_cache

from engine.catalogue.catalogue import Catalogue
from engine.reading.prepare import Prepared
from engine.reading.words.kinds import K
from engine.reading.words.lexicon import lexicon
from engine.reading.words.phrasebook import phrasebook
from engine.reading.words.slips import Slips, letters_swapped, slips_of

PUT_RIGHT = frozenset(
    (K.NOT, K.YESTERDAY, K.TODAY, K.WEEKDAY, K.MONTH, K.WARMUP, K.FAILURE, K.LAST, K.FIRST, K.MIDDLE, K.FROM_LAST,
     K.ORDINAL, K.SETS, K.REPS, K.KG, K.LB, K.BOTH, K.ONLY, K.NUMBER_WORD, K.DUMBBELL, K.BARBELL, K.CABLE, K.MACHINE,
     K.AGO, K.EXCEPT, K.EXTREME)
)  # fmt: skip
PLAIN_WORDS = ("weight", "weights", "load", "reps", "were", "with", "both", "that", "those", "instead")
LONG_ENOUGH = 6
CUES = ("slip", "tail", "mean", "be", "make", "delete", "move", "only", "wrongly", "swapped", "undone")


@lru_cache(maxsize=1)
def _slips() -> Slips:
    words = [phrase for phrase, meaning in lexicon().phrases.items() if meaning.kind in PUT_RIGHT]
    cues = [phrase for cue in CUES for phrase in phrasebook().cues[cue]]
    return slips_of((*words, *cues, *PLAIN_WORDS))


def respelt(prepared: Prepared, catalogue: Catalogue) -> str:
    """The message with its unknown words put right; empty where none could be."""
    text = prepared.cleaned
    slips = _slips()
    for piece in reversed(prepared.spoken):
        if piece.kind not in (K.PLAIN, K.NAME) or not piece.text.isalpha() or piece.text in slips.words:
            continue
        if piece.kind is K.NAME and catalogue.owners(piece.text):
            continue
        near = next((word for word in slips.near(piece.text) if _is_slip(piece.text, word)), None)
        if near is not None:
            text = text[: piece.start] + near + text[piece.end :]
    return text if text != prepared.cleaned else ""


def _is_slip(word: str, known: str) -> bool:
    """Whether one is a slip of the other; of short words another letter makes another word: "list" is no "last"."""
    changed = len(word) == len(known) and not letters_swapped(word, known)
    return word != known and (not changed or len(word) >= LONG_ENOUGH)

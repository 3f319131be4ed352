"""Mistyped words of a correction put right: "it was 5 nto 6", "that was yesterady", "secnod set was 7".

Of the little words that corrections are made of (the cue `littleword`) shorter slips are known too: "all of thm",
"first tow were 8", and two of them without the space: "lastone was 6".
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import lru_cache

from engine.catalogue.catalogue import Catalogue
from engine.reading.prepare import Prepared
from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.lexicon import lexicon
from engine.reading.words.phrasebook import SPELT_SHORT, phrasebook
from engine.reading.words.pieces import Piece
from engine.reading.words.slips import Slips, letters_swapped, slips_of

PUT_RIGHT = frozenset(
    (K.NOT, K.YESTERDAY, K.TODAY, K.WEEKDAY, K.MONTH, K.WARMUP, K.FAILURE, K.LAST, K.FIRST, K.MIDDLE, K.FROM_LAST,
     K.ORDINAL, K.SETS, K.REPS, K.KG, K.LB, K.BOTH, K.ONLY, K.NUMBER_WORD, K.DUMBBELL, K.BARBELL, K.CABLE, K.MACHINE,
     K.AGO, K.EXCEPT, K.EXTREME)
)  # fmt: skip
PLAIN_WORDS = ("weight", "weights", "load", "reps", "were", "with", "both", "that", "those", "instead")
LONG_ENOUGH = 6
LITTLE = "littleword"
ONE_OF_THEM = ("one", "set")
SHORTEST = 3
LONGEST_PARTED = 12
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
    for at, piece in reversed(list(enumerate(prepared.spoken))):
        if not _may_be_a_slip(prepared.spoken, at) or not piece.text.isalpha() or piece.text in slips.words:
            continue
        if piece.kind is K.NAME and catalogue.owners(piece.text):
            continue
        near = next((word for word in _meant(piece, slips, catalogue) if _is_slip(piece.text, word)), None)
        if near is not None:
            text = text[: piece.start] + near + text[piece.end :]
    return text if text != prepared.cleaned else ""


def _may_be_a_slip(pieces: Sequence[Piece], at: int) -> bool:
    """Whether the word has no meaning of its own, or one that it cannot have here: "the lat one", "alll three"."""
    piece = pieces[at]
    if piece.kind in (K.PLAIN, K.NAME):
        return True
    if piece.kind is K.FILLER:
        return piece.text in _little_slips() and piece.text not in lexicon().phrases
    behind = pieces[at + 1].text if at + 1 < len(pieces) else ""
    return piece.kind is K.MUSCLE and piece.text in _little_slips() and behind in ONE_OF_THEM


def _meant(piece: Piece, slips: Slips, catalogue: Catalogue) -> tuple[str, ...]:
    """The words that this one may stand for, a little word of corrections first."""
    word = piece.text
    if word in SPELT_SHORT:
        return (SPELT_SHORT[word],)
    unknown = piece.kind in (K.PLAIN, K.NAME)
    known = unknown and (word in catalogue.typos.ordinary or CUES_OF[word] or catalogue.owners(word))
    little = "" if known else _little_slips().get(word) or _parted(word)
    return (little, *slips.near(word)) if little else slips.near(word)


@lru_cache(maxsize=1)
def _little_slips() -> dict[str, str]:
    """The little words by their slips, as far as each is of one of them alone."""
    found: dict[str, set[str]] = {}
    words = phrasebook().cues[LITTLE]
    for word in words:
        turned = (word[:at] + word[at + 1] + word[at] + word[at + 2 :] for at in range(len(word) - 1))
        short = (word[:at] + word[at + 1 :] for at in range(1, len(word)) if len(word) > SHORTEST)
        twice = (word[:at] + word[at : at + 1] + word[at:] for at in range(len(word)))
        for slip in (*turned, *short, *twice):
            if len(slip) >= SHORTEST and slip not in words:
                found.setdefault(slip, set()).add(word)
    return {slip: meant.pop() for slip, meant in found.items() if len(meant) == 1}


def _parted(word: str) -> str:
    """ "lastone", "itwas": two little words with no space between; empty for any other."""
    words = phrasebook().cues[LITTLE]
    cuts = range(2, len(word) - 1) if len(word) <= LONGEST_PARTED else ()
    return next((f"{word[:at]} {word[at:]}" for at in cuts if word[:at] in words and word[at:] in words), "")


def _is_slip(word: str, known: str) -> bool:
    """Whether one is a slip of the other; of short words another letter makes another word: "list" is no "last"."""
    changed = len(word) == len(known) and not letters_swapped(word, known)
    return word != known and (not changed or len(word) >= LONG_ENOUGH)

"""One correction told instead of another in the same message: "last was 4, no, first was 4".

told = correction cut { cut } RETRACTS [ cut ] correction

What stands ahead is taken back. Behind a mere "sorry" or "wait" it may hold as well, and nothing is changed.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.catalogue.catalogue import Catalogue
from engine.reading.corrections.clauses import Alone
from engine.reading.corrections.correcting import cue_at
from engine.reading.corrections.nothing_changed import unclear
from engine.reading.corrections.said_to_be import is_be
from engine.reading.prepare import Prepared, prepare
from engine.reading.values import Context, Correction, NoSets
from engine.reading.words.cues import any_cued
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook, spoken_words

ALSO = frozenset(("also",))


def taken_back(
    told: Sequence[Prepared], prepared: Prepared, context: Context, catalogue: Catalogue, alone: Alone
) -> Correction | NoSets | None:
    """What is told instead; NoSets where it is open whether the first holds too; None where nothing is taken back."""
    for at, clause in enumerate(told[1:], start=1):
        sure, length, words = _slips(clause)
        if not length or any_cued(words[length:], ALSO) or clause.spoken[0].kind is K.AND:
            continue
        behind = told[at + 1 :] if length == len(words) else told[at:]
        if not any(is_be(piece) for one in behind for piece in one.spoken):
            continue  # "eran 77,5, no 80" denies a number
        text = ", ".join(one.cleaned for one in behind)
        new = alone(prepare(text, context, catalogue), context, catalogue)
        if isinstance(new, Correction) and isinstance(alone(told[at - 1], context, catalogue), Correction):
            return new if sure else unclear(prepared)
    return None


def slips_ahead(clause: Prepared) -> int:
    """How many words in front are slips: "no 4", "sorry, 62.5"."""
    return _slips(clause)[1]


def _slips(clause: Prepared) -> tuple[bool, int, list[str]]:
    """Whether the clause begins with what surely takes back, how many of its words slips are, and all its words."""
    cues, words = phrasebook().cues, [word for word, _ in spoken_words(clause.tokens)]
    sure = bool(cue_at(words, 0, cues["retracts"] | cues["mean"]))
    at = 0
    while length := cue_at(words, at, cues["slip"] | cues["retracts"] | cues["mean"]):
        at += length
    return sure, at, words

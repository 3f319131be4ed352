"""So many sets and no more, beside something else: "only 2 sets, 8 and 6", "only 2 sets today, last one 6".

Where the clause that counts is clear by itself and the rules for several things do not know what stands beside it, the
message is of the sets before and adds none.
"""

from __future__ import annotations

from collections.abc import Iterator

from engine.catalogue.catalogue import Catalogue
from engine.reading.corrections.clauses import Alone
from engine.reading.prepare import Prepared, prepare
from engine.reading.values import Context
from engine.reading.words.cues import any_cued, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook, spoken_words
from engine.reading.words.pieces import Role
from engine.reading.words.spoken_clauses import clauses_of

ONLY, ANDS = frozenset(("only",)), frozenset(("andword",))
OF_OTHER_SETS = frozenset((K.NAME, K.TIMES, K.ANOTHER))
MOST = 6
"""So many clauses are looked at."""


def counts_only_so_many(prepared: Prepared, context: Context, catalogue: Catalogue, alone: Alone) -> bool:
    """Whether a clause of the message says how many sets it was only."""
    if not _counts(prepared) or not OF_OTHER_SETS.isdisjoint(prepared.told):
        return False
    clauses = list(_clauses(prepared))
    if len(clauses) < 2:
        return False
    told = (prepare(clause, context, catalogue) for clause in clauses[:MOST])
    return any(_counts(one) and alone(one, context, catalogue) is not None for one in told)


def says_only(told: Prepared) -> bool:
    return K.ONLY in told.told or any_cued((word for word, _ in spoken_words(told.tokens)), ONLY)


def _counts(told: Prepared) -> bool:
    return any(piece.kind is K.NUMBER and piece.role is Role.SETS for piece in told.spoken) and says_only(told)


def _clauses(prepared: Prepared) -> Iterator[str]:
    """The text of each clause, cut at the signs and at each "and"."""
    joints = [piece for piece in prepared.spoken if piece.kind is K.AND or is_cued(piece.text, ANDS)]
    for start, end in clauses_of(prepared.cleaned, spoken_words(prepared.tokens), phrasebook()):
        for joint in joints:
            if start <= joint.start and joint.end <= end:
                yield prepared.cleaned[start : joint.start].strip(" .,")
                start = joint.end
        yield prepared.cleaned[start:end].strip(" .,")

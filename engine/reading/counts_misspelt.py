"""Words behind a number met with a slip of the thumb: "3 stes of 5", "8 rpes", "60 kiols"."""

from __future__ import annotations

from functools import lru_cache

from engine.reading.kinds import K
from engine.reading.lexicon import Meaning, lexicon, plain_word
from engine.reading.pieces import UNIT_ROLES, Piece, Role
from engine.reading.slips import Slips, slips_of

COUNTING = frozenset((K.SETS, K.REPS, K.KG, K.LB))
SHORTEST_MENDED = 4
FREE_SLIP_FROM = 6
"""A shorter word is a slip only where its letters changed places or one came twice. Common practice, no source."""


@lru_cache(maxsize=1)
def _counting() -> tuple[Slips, dict[str, Meaning]]:
    named = {
        phrase: meaning
        for phrase, meaning in lexicon().phrases.items()
        if meaning.kind in COUNTING and " " not in phrase and len(phrase) >= SHORTEST_MENDED
    }
    return slips_of(named), named


def with_counts_mended(pieces: list[Piece]) -> list[Piece]:
    """The pieces with each unknown word behind a number that is one slip from "sets", "reps" or a unit read as that."""
    out: list[Piece] = []
    mended = False
    for piece in pieces:
        number = out[-1] if out else None
        behind = number is not None and number.kind is K.NUMBER and number.role is Role.BARE
        kind = _meant(plain_word(piece.text)) if behind and piece.kind is K.PLAIN else None
        if kind is None or number is None:
            out.append(piece)
            continue
        role, unit = UNIT_ROLES[kind]
        out[-1] = number._replace(role=role, unit=unit, end=piece.end)
        mended = True
    return out if mended else pieces


def _meant(word: str) -> K | None:
    if len(word) < SHORTEST_MENDED:
        return None
    slips, named = _counting()
    near = [known for known in slips.near(word) if known in named and known != word and _is_slip(word, known)]
    kinds = {named[known].kind for known in near}
    return kinds.pop() if len(kinds) == 1 else None


def _is_slip(word: str, known: str) -> bool:
    return len(word) >= FREE_SLIP_FROM or sorted(word) == sorted(known) or _came_twice(word, known)


def _came_twice(word: str, known: str) -> bool:
    return any(word[:at] + word[at + 1 :] == known and word[at] in known for at in range(len(word)))

"""What had been typed, told beside what it was: "112.5, i typed 115", "i wrote 3 sets but did 5", "it says 80".

typed  = clause of what was typed beside the rest, which is read with "not" and the value behind it: "112.5 not 115"
       | clause "instead of" rest
clause = [ "but" | "i" | "no idea why" ... ] TYPED [ "it as" ... ] value [ "by mistake" ... ]
value  = NUMBER [ unit | "sets" | "reps" ] | NUMBER "x" NUMBER | unit | name       one that the sets that stand have
"""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from typing import NamedTuple

from engine.catalogue.catalogue import Catalogue
from engine.reading.corrections.correcting import cue_at
from engine.reading.latest_sets import run_of_it
from engine.reading.prepare import Prepared, prepare
from engine.reading.values import Context
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook, spoken_words
from engine.reading.words.pieces import Piece
from engine.reading.words.tokens import Token

NO_CORRECTION = frozenset((K.QUESTION, K.LINE, K.TOMORROW))
VALUES = frozenset((K.NUMBER, K.KG, K.LB, K.NAME))
UNITS = (K.KG, K.LB)
SIGNS = " ,.;:!-–()\t"
LONGEST = 20

Words = Sequence[tuple[str, Token]]


class Clause(NamedTuple):
    """Where the clause stands in the text, and the pieces of the value in it."""

    start: int
    end: int
    first: Piece
    last: Piece


def with_what_was_typed(prepared: Prepared, context: Context, catalogue: Catalogue) -> Prepared | None:
    """The message with what had been typed as the value that it was not; None where it tells no such thing."""
    if not prepared.told.isdisjoint(NO_CORRECTION) or prepared.told.isdisjoint(VALUES):
        return None
    words = spoken_words(prepared.tokens)
    typed = phrasebook().cues["typed"]
    for at in range(len(words) if len(words) <= LONGEST else 0):
        length = cue_at([word for word, _ in words[at : at + 3]], 0, typed)
        clause = _clause(prepared, words, at, at + length, context) if length else None
        rest = _without(prepared, clause) if clause is not None else ""
        if clause is not None and rest:
            return prepare(f"{rest} not {prepared.cleaned[clause.first.start : clause.last.end]}", context, catalogue)
    return None


def _clause(prepared: Prepared, words: Words, at: int, behind: int, context: Context) -> Clause | None:
    """The clause around the words for typing; None where they tell of no value that stands."""
    values = {piece.start: piece for piece in prepared.spoken if piece.kind in VALUES}
    while behind < len(words) and words[behind][0] in phrasebook().cues["typedas"]:
        behind += 1
    ahead = _ahead(words, at)
    first = values.get(words[behind][1].start) if behind < len(words) else None
    last = _pair(prepared, first) if first is not None else None
    end = last.end if last is not None else words[behind - 1][1].end
    if first is None and at > 1:  # "hab 115 geschrieben"
        ahead = _ahead(words, at - 1)
        first = last = values.get(words[at - 1][1].start) if ahead < at - 1 else None
    if first is None or last is None or not _stand(first, last, context):
        return None
    clause = Clause(words[ahead][1].start, _end(words, end), first, last)
    return clause if _is_apart(prepared, words, clause) else None


def _ahead(words: Words, at: int) -> int:
    """The place of the first word of the clause: "no idea why i typed"."""
    while at and words[at - 1][0] in phrasebook().cues["typedahead"]:
        at -= 1
    return at


def _end(words: Words, end: int) -> int:
    """Where the clause ends, behind "by mistake"."""
    for word, token in words:
        if token.start >= end and word in phrasebook().cues["typedbehind"]:
            end = token.end
        elif token.start >= end:
            break
    return end


def _pair(prepared: Prepared, number: Piece) -> Piece:
    """The last number of the value: of "3x4" the reps."""
    at = prepared.spoken.index(number)
    crossed = [piece.kind for piece in prepared.spoken[at + 1 : at + 3]] == [K.TIMES, K.NUMBER]
    return prepared.spoken[at + 2] if crossed else number


def _is_apart(prepared: Prepared, words: Words, clause: Clause) -> bool:
    """Whether the clause stands apart: a sign, a number or the end of the message beside it, or a word that goes on."""
    before = [token for _, token in words if token.end <= clause.start]
    after = [(word, token) for word, token in words if token.start >= clause.end]
    told = [piece.kind for piece in prepared.spoken if piece.end <= clause.start]
    parted = not before or bool(prepared.cleaned[before[-1].end : clause.start].strip()) or told[-1:] in COUNTED
    if not after or not parted:
        return parted
    signed = bool(prepared.cleaned[clause.end : after[0][1].start].strip())
    return signed or after[0][0] in phrasebook().cues["typednext"] or _denying(prepared, clause) is not None


COUNTED = ([K.NUMBER], [K.KG], [K.LB], [K.SETS], [K.REPS])


def _denying(prepared: Prepared, clause: Clause) -> Piece | None:
    """The "instead of" right behind the clause."""
    behind = next((piece for piece in prepared.spoken if piece.start >= clause.end), None)
    return behind if behind is not None and behind.kind is K.NOT else None


def _stand(first: Piece, last: Piece, context: Context) -> bool:
    """Whether the sets that stand have the value: as load, reps, number or lift."""
    done = [record.done for record in context.recent]
    if first.kind is K.NAME:
        return any(one.exercise in first.names for one in done)
    if first.kind in UNITS:
        return True
    loads = [one.load for one in done if one.load is not None]
    known = {abs(load.amount) for load in loads} | {Decimal(one.reps) for one in done}
    known |= {Decimal(count) for count in (len(run_of_it(context)), *_counts(context))}
    known |= {amount for one in done for amount in (one.seconds, one.metres) if amount is not None}
    return first.value in known and last.value in known


def _counts(context: Context) -> list[int]:
    """How many sets each lift has in each message."""
    told: dict[object, int] = {}
    for record in context.recent:
        key = (record.message, record.done.exercise)
        told[key] = told.get(key, 0) + 1
    return list(told.values())


def _without(prepared: Prepared, clause: Clause) -> str:
    """The rest of the message; empty where it tells nothing of the same kind."""
    kinds = UNITS if clause.first.kind in UNITS else (clause.first.kind,)
    others = [piece for piece in prepared.spoken if piece.kind in kinds]
    denying = _denying(prepared, clause)
    denied = [piece for piece in prepared.spoken if piece.kind is K.NOT and piece is not denying]
    if denied or all(clause.start <= piece.start < clause.end for piece in others):
        return ""
    end = clause.end if denying is None else denying.end
    left, right = prepared.cleaned[: clause.start].strip(SIGNS), prepared.cleaned[end:].strip(SIGNS)
    return f"{left} {_without_link(right)}".strip()


def _without_link(text: str) -> str:
    """ "but it was 112.5" without its "but"."""
    first, _, rest = text.partition(" ")
    return rest if first.lower() in phrasebook().cues["typedlink"] else text

"""Lifts that a correction says to leave as they are: "move squat to yesterday, keep bench", "delete all but the row".

spared = cut LEAVES lift { "and" lift } cut | cut lift { "and" lift } LEAVES cut
       | all ... ( EXCEPT | "but" ) lift { "and" lift } | NOT lift, beside a lift that is moved or deleted

What else the message tells is worked out as if the sets of those lifts did not stand, so that it never reaches them.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from typing import NamedTuple

from engine.catalogue.catalogue import Catalogue
from engine.reading.corrections.correcting import told_of
from engine.reading.corrections.deletes import asks_away, names_the_whole_day
from engine.reading.corrections.parts import is_all, says_all
from engine.reading.corrections.said_to_be import is_be
from engine.reading.latest_sets import standing
from engine.reading.prepare import Prepared, prepare
from engine.reading.values import Context, Correction
from engine.reading.words.cues import any_cued, is_cued
from engine.reading.words.kinds import DENYING, K
from engine.reading.words.phrasebook import phrasebook, spoken_words
from engine.reading.words.pieces import Piece
from engine.reading.words.spoken_clauses import clauses_of

Span = tuple[int, int]
LEAVES, THE, ANDS, BUT = "leaves", frozenset(("the",)), frozenset(("andword",)), frozenset(("but",))
BETWEEN = frozenset((K.FILLER, K.OF, K.FOR, K.WITH, K.AND, K.COMMA))
NOT_SPARED = frozenset((K.QUESTION, K.FUTURE, K.TOMORROW, K.STORY))
JOINTS = " ,.;-–—"


class Spared(NamedTuple):
    """The message without what it leaves as it is, and what stands besides; `denied`: by a no, which may be of a name;
    `open`: the rest names no lift, and is rather of the one that is to stay: "that was 75, bench stays".
    """

    rest: Prepared
    context: Context
    denied: bool
    open: bool


def spared_of(prepared: Prepared, context: Context, catalogue: Catalogue) -> Spared | None:
    """What is left to be put right; None where no lift is said to stay."""
    if K.NAME not in prepared.told or not context.recent:
        return None
    if any(piece.kind in NOT_SPARED and not says_all(piece) for piece in prepared.spoken):
        return None  # "todo" is "to do", and "all" in Spanish
    if K.TIMES in prepared.told and not any(map(is_be, prepared.spoken)):
        return None  # "keep bench, squat 3x5 100" tells new sets
    words = [word for word, _ in spoken_words(prepared.tokens)]
    if prepared.told.isdisjoint(EXCEPTING) and not any_cued(words, BUT) and not _leaves(words):
        return None
    spans, denied, sign = _clauses_left(prepared, words), False, ", "
    if not spans:
        (spans, denied), sign = _excepted(prepared.spoken), " "
    lifts = [standing(piece, context) for piece in prepared.spoken if _is_in(piece, spans)]
    if not spans or None in lifts:
        return None
    left = tuple(record for record in context.recent if record.done.exercise not in lifts)
    rest = prepare(_without(prepared, spans, sign), context, catalogue)
    named = K.NAME in rest.told or any(map(is_all, rest.spoken)) or not left
    is_open = not named and left[-1] is not context.recent[-1]
    return Spared(rest, replace(context, recent=left), denied, is_open) if rest.spoken else None


EXCEPTING = frozenset((K.EXCEPT, *DENYING))


def all_besides(spared: Spared, catalogue: Catalogue) -> Correction | None:
    """ "delete everything" of what is left: the sets of the latest day, the lifts that stay aside."""
    recent = spared.context.recent
    told = told_of(spared.rest, spared.context, catalogue) if recent else None
    if told is None or not told.words or not asks_away(told) or not names_the_whole_day(told):
        return None
    return Correction(removed=tuple(record for record in recent if record.on == recent[-1].on))


def is_half(found: Correction, spared: Spared) -> bool:
    """Whether it reaches fewer than it says: "all but bench were 75" of two lifts more; or others; or a no denied a
    name.
    """
    if spared.open or (spared.denied and (found.changed or found.added)):
        return True
    if not any(map(is_all, spared.rest.spoken)):
        return False
    recent = spared.context.recent
    lifts = {record.done.exercise for record in recent if record.on == recent[-1].on}
    return not lifts <= {record.done.exercise for record in found.reached}


def _leaves(words: Sequence[str]) -> bool:
    """Whether one of the words may begin what says that something stays."""
    openers = {phrase.split(" ", 1)[0] for phrase in phrasebook().cues[LEAVES]}
    return not openers.isdisjoint(words)


def _is_in(piece: Piece, spans: Sequence[Span]) -> bool:
    return piece.kind is K.NAME and any(start <= piece.start < end for start, end in spans)


def _clauses_left(prepared: Prepared, words: Sequence[str]) -> list[Span]:
    """The clauses that say so: "keep bench", "bench stays", and more lifts behind an "and"."""
    if not _leaves(words):
        return []
    spans = list(_clauses(prepared))
    said = [_says(prepared, *span) for span in spans]
    for at, _ in enumerate(spans):
        after_one = bool(at) and said[at - 1] is True  # "keep bench and row, move squat to monday"
        first_of_all = at == 0 and len(spans) > 1 and said[1] is True  # "bench and row stay"
        if said[at] is None and (after_one or first_of_all):
            said[at] = True
    return [span for span, one in zip(spans, said, strict=True) if one]


def _clauses(prepared: Prepared) -> Iterator[Span]:
    """The clauses, cut at signs, at "and" and at "but"."""
    joints = [piece for piece in prepared.spoken if _ties(piece)]
    for start, end in clauses_of(prepared.cleaned, spoken_words(prepared.tokens), phrasebook()):
        inside = [joint for joint in joints if start <= joint.start and joint.end <= end]
        starts, ends = [start, *[one.end for one in inside]], [*[one.start for one in inside], end]
        yield from ((a, b) for a, b in zip(starts, ends, strict=True) if prepared.cleaned[a:b].strip(JOINTS))


def _says(prepared: Prepared, start: int, end: int) -> bool | None:
    """Whether the clause is of lifts that stay; None for one that only names lifts."""
    names = [piece for piece in prepared.spoken if piece.kind is K.NAME and start <= piece.start < end]
    words = [
        word
        for word, token in spoken_words(prepared.tokens)
        if start <= token.start < end and not any(name.start <= token.start < name.end for name in names)
    ]
    told = " ".join(word for word in words if not is_cued(word, THE))
    if not names or (told and told not in phrasebook().cues[LEAVES]):
        return False
    return True if told else None


def _excepted(pieces: Sequence[Piece]) -> tuple[list[Span], bool]:
    """Where "except bench", "but the bench", "not bench" stand, with the lifts behind; and whether by a no."""
    for at, piece in enumerate(pieces):
        wide = piece.kind is K.EXCEPT or is_cued(piece.text, BUT)
        denied = piece.kind in DENYING and any(one.kind is K.NAME for one in pieces[:at])
        end = _last_name(pieces, at + 1)
        if end is None or not (denied or (wide and _is_of_all(pieces[:at], pieces[end + 1 :]))):
            continue
        return [(piece.start, pieces[end].end)], denied
    return [], False


def _is_of_all(ahead: Sequence[Piece], behind: Sequence[Piece]) -> bool:
    """Whether all stand ahead, and what is told behind is of them: "all good except the bench was 75" tells of one."""
    at = next((at for at, piece in enumerate(ahead) if is_all(piece)), len(ahead))
    told = any(piece.kind is K.NUMBER or is_be(piece) for piece in behind)
    return at < len(ahead) and not (told and any(is_be(one) or one.kind not in BETWEEN for one in ahead[at + 1 :]))


def _last_name(pieces: Sequence[Piece], first: int) -> int | None:
    """The last of the lifts that stand in a row from here on."""
    found = None
    for at, piece in enumerate(pieces[first:], start=first):
        if piece.kind is K.NAME:
            found = at
        elif piece.kind not in BETWEEN or (found is not None and piece.kind not in (K.AND, K.COMMA, K.FILLER)):
            break
    return found


def _without(prepared: Prepared, spans: Sequence[Span], sign: str) -> str:
    """The text without these spans, and without the words that tied them to the rest; `sign` in their place."""
    kept, last = [], 0
    for start, end in [*_with_ties(prepared.spoken, spans), (len(prepared.cleaned), len(prepared.cleaned))]:
        kept.append(prepared.cleaned[last : max(last, start)].strip(JOINTS))
        last = end
    return sign.join(part for part in kept if part)


def _with_ties(pieces: Sequence[Piece], spans: Sequence[Span]) -> Iterator[Span]:
    """The spans with the "and" or "but" in front of each, or behind one that begins the message."""
    for start, end in spans:
        ahead = next((piece for piece in reversed(pieces) if piece.end <= start), None)
        behind = next((piece for piece in pieces if piece.start >= end), None)
        if ahead is not None and _ties(ahead):
            start = ahead.start
        elif behind is not None and _ties(behind):
            end = behind.end
        yield start, end


def _ties(piece: Piece) -> bool:
    return piece.kind is K.AND or is_cued(piece.text, ANDS | BUT)

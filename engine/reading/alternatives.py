"""One thing or another: "bench 80x7 or 8", "80 or 82.5 x8", "80x8, maybe 9". Each is a reading, and it is asked.

either = one ( "or" | PERHAPS | "it was" ) one
one    = NUMBER | NUMBER "x" NUMBER ...        both sides of the same shape, or the other side a load alone
"""

from __future__ import annotations

from collections.abc import Callable, Sequence

from engine.reading.asking import question_of
from engine.reading.chunks.beside_sets import tells_otherwise
from engine.reading.prepare import Prepared
from engine.reading.values import Asked, Doubt, Logged, Outcome, Reading
from engine.reading.wording import label_of
from engine.reading.words.cues import CUES_OF, cues_told, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role, kinds_in_order, places_of, texts_in_order

OF_A_SET = frozenset((K.NUMBER, K.TIMES))
TWO = 2
MOST_APART = 2
"""So far apart two counts of sets may be that nobody is sure of. Common practice, no source."""


def either_of(asked: Asked, prepared: Prepared, sets_of: Callable[[str], Outcome]) -> Asked:
    """The question with a reading for each side of the "or"; as it was where the sides are none of the same sets."""
    pieces = prepared.spoken
    links = _links(pieces)
    if len(links) != 1:
        return asked
    texts = _texts(_without_lost_counts(prepared), pieces, *links[0])
    told = [sets_of(text) for text in texts]
    logged = [one for one in told if isinstance(one, Logged)]
    if len(logged) != TWO or logged[0].sets == logged[1].sets:
        return asked
    if len(logged[0].sets) != len(logged[1].sets) and not _are_counts(logged):
        return asked
    rivals = [one.sets for one in logged]
    readings = tuple(Reading(sets, 1 / len(rivals), label_of(sets, rivals)) for sets in rivals)
    question = question_of(Doubt.NUMBERS, "", readings)
    return Asked(question, readings, Doubt.NUMBERS, "either of two", asked.on, asked.note, asked.pain)


def _without_lost_counts(prepared: Prepared) -> str:
    """The message with "lost count" blanked out, each letter in its place: it is why there are two sides."""
    cleaned = prepared.cleaned
    for at in places_of(K.ALTERED, kinds_in_order(prepared.spoken)):
        piece = prepared.spoken[at]
        if "countlost" in CUES_OF[cleaned[piece.start : piece.end]]:
            cleaned = cleaned[: piece.start] + " " * (piece.end - piece.start) + cleaned[piece.end :]
    return cleaned


def _are_counts(logged: Sequence[Logged]) -> bool:
    """ "3 or 4 sets of 8": the same sets, and one or two more of them."""
    sets = {done for one in logged for done in one.sets}
    return len(sets) == 1 and abs(len(logged[0].sets) - len(logged[1].sets)) <= MOST_APART


def _links(pieces: Sequence[Piece]) -> list[tuple[int, int]]:
    """The places of each two numbers with words between them that say that it was one or the other."""
    found: list[tuple[int, int]] = []
    if LEAVING_OPEN.isdisjoint(cues_told(texts_in_order(pieces))):
        return found
    kinds = kinds_in_order(pieces)
    for right in places_of(K.NUMBER, kinds)[1:]:
        left = right - 1
        while left > 0 and kinds[left] in BETWEEN:
            left -= 1
        if kinds[left] is K.NUMBER and left < right - 1 and _leaves_open(pieces[left + 1 : right]):
            found.append((left, right))
    return found


BETWEEN = frozenset((K.FILLER, K.PLAIN, K.NOTE, K.RESERVE_LEFT, K.ASKS, K.COMMA, K.OPEN, K.MORE, K.NOT_DATE, K.ONLY))


def _leaves_open(words: Sequence[Piece]) -> bool:
    """ "or", and not the Dutch "of", which is English too; "maybe", "it was"."""
    if any(piece.text != "of" and is_cued(piece.text, OPEN_CUES) for piece in words):
        return True
    return tells_otherwise(words, len(words))


OPEN_CUES = frozenset(("or", "perhaps", "likely"))
LEAVING_OPEN = OPEN_CUES | {"been"}


def _texts(cleaned: str, pieces: Sequence[Piece], low: int, high: int) -> list[str]:
    """The message with the one side alone, and with the other; empty where no numbers stand on both."""
    first, last = low, high
    while first > 0 and pieces[first - 1].kind in OF_A_SET:
        first -= 1
    while last + 1 < len(pieces) and pieces[last + 1].kind in OF_A_SET:
        last += 1
    left, right = pieces[first : low + 1], pieces[high : last + 1]
    whole = len(left) == len(right) > 1
    one, other = (left[0], right[-1]) if whole else (left[-1], right[0])
    bracketed = K.OPEN in [piece.kind for piece in pieces[low:high]] and pieces[last + 1 : last + 2] != []
    end = pieces[last + 1].end if bracketed and pieces[last + 1].kind is K.CLOSE else other.end
    if one.role is Role.BARE and other.role in (Role.SETS, Role.REPS):
        end = other.start + len(other.text)  # "3 or 4 sets": the word is of both
    without = cleaned[: left[-1].end] + cleaned[end:]
    behind_an_x = len(left) > 1 and left[-2].kind is K.TIMES
    a_load = behind_an_x and len(right) == 1 and other.value > MOST_LOADED_REPS
    if a_load:  # "80x8 or 85": the load alone is in doubt
        return [without, cleaned[: left[0].start] + other.text + cleaned[left[0].end : left[-1].end]]
    return [without, cleaned[: one.start] + cleaned[right[0].start : other.end] + cleaned[max(end, other.end) :]]

"""Words beside a name that make another name of it, in whatever order: "squat paused", "deadlift with the trap bar".

window = ( word | name )* name ( word | name | "(" word ")" )*     nothing but words between two signs or numbers;
                                                                   "2s" of "2s pause" is passed over
The longest window whose words own an exercise is that exercise. Two names in a row are one only where one of them alone
may be the whole ("curl hammer").
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import chain, pairwise

from engine.catalogue.catalogue import Catalogue, normalise
from engine.catalogue.word_order import LITTLE
from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role, kinds_in_order, places_of
from engine.values.ids import ExerciseName

WORDS = frozenset(
    (K.PLAIN, K.NOTE, K.VARIANT, K.PAUSE, K.SETTING, K.JOINT, K.MUSCLE, K.BAND, K.BAR, K.BODY, K.HEADING, K.RESERVE)
) | {K.DUMBBELL, K.BARBELL, K.CABLE, K.MACHINE, K.KETTLEBELL, K.EACH, K.ADDED, K.ASSISTED, K.PLATE}
LINKS = frozenset((K.WITH, K.FILLER))
GLUE = frozenset((K.SLASH, K.DASH))
AT_NO_END = LINKS | GLUE
ANGLES = frozenset(("incline", "decline"))
MOST_BESIDE = 3
"""How many words on each side of a name are tried."""


def may_make_names(kinds: set[K], names: int) -> bool:
    """Whether pieces of these kinds, so many names among them, may hold words that make another name of one."""
    return names > 1 or (names > 0 and not kinds.isdisjoint(WORDS))


def tells_a_pause(text: str) -> bool:
    """Whether a word or a name tells a pause: "3s pause squat"."""
    return text.startswith("paus")


def with_words_beside(pieces: list[Piece], cleaned: str, catalogue: Catalogue) -> list[Piece]:
    """The pieces with each name that words beside it make another of put together with them."""
    out = list(pieces)
    taken = behind = 0
    for place in places_of(K.NAME, kinds_in_order(pieces)):
        at = place - taken
        found = _longest(out, at, cleaned, catalogue) if at >= behind else None
        if found is None:
            continue
        start, end, names = found
        text = " ".join(_words(out[start:end], cleaned))
        out[start:end] = [out[at]._replace(start=out[start].start, end=out[end - 1].end, text=text, names=names)]
        taken, behind = taken + end - start - 1, start + 1
    return out if taken else pieces


def _longest(
    pieces: list[Piece], at: int, cleaned: str, catalogue: Catalogue
) -> tuple[int, int, tuple[ExerciseName, ...]] | None:
    low, high = _reach(pieces, at)
    if high - low < 2:
        return None
    words = [_words(pieces[place : place + 1], cleaned) for place in range(low, high)]
    plain = not any([piece.kind is K.ADDED or _is_misspelt(piece, catalogue) for piece in pieces[low:high]])
    for start, end in _windows(low, high, at):
        window, said = pieces[start:end], list(chain.from_iterable(words[start - low : end - low]))
        names = catalogue.of_words(said) or (() if plain else _named_freely(window, said, catalogue))
        if names and _may_be_one(window, words[end - 1 - low]) and _is_one(window, names, catalogue):
            return start, end, names
    return None


def _named_freely(window: list[Piece], words: list[str], catalogue: Catalogue) -> tuple[ExerciseName, ...]:
    """What the words of a window name without those for a load put on, "decline weighted sit ups", or with slips."""
    added = {piece.text for piece in window if piece.kind is K.ADDED}
    names = catalogue.of_words([word for word in words if word not in added]) if added else ()
    if not names and any(_is_misspelt(piece, catalogue) for piece in window):
        names = catalogue.closest_of_words(words)
    return names


def _may_be_one(window: list[Piece], last: list[str]) -> bool:
    """Whether a window whose last piece holds these words may be one name."""
    if _says_nothing(window[0]) or _says_nothing(window[-1]) or not (_signs_link(window) and _is_closed(window)):
        return False
    worn = bool(last) and "worn" in CUES_OF[last[-1]]  # "squat w/ belt" is no belt squat
    return not worn or LINKS.isdisjoint([piece.kind for piece in window])


def _says_nothing(piece: Piece) -> bool:
    """Whether no name begins or ends with it."""
    return piece.kind in AT_NO_END or piece.text in LITTLE


def _is_misspelt(piece: Piece, catalogue: Catalogue) -> bool:
    """Whether a slip may be in it: a word that nobody knows, or a name that was mended."""
    return piece.kind is K.PLAIN or (piece.kind is K.NAME and piece.text not in catalogue.phrases)


def _signs_link(window: list[Piece]) -> bool:
    """Whether each slash is that of "w/" and each dash a hyphen; any other parts two lifts."""
    if any(before.text != "w" for before, piece in pairwise(window) if piece.kind is K.SLASH):
        return False
    return all(piece.glued and after.glued for piece, after in pairwise(window) if piece.kind is K.DASH)


def _reach(pieces: list[Piece], at: int) -> tuple[int, int]:
    """The run of words around the name at `at`, a few on each side."""
    low, high = at, at + 1
    while low > 0 and at - low < MOST_BESIDE and _is_word(pieces[low - 1]):
        low -= 1
    while high < len(pieces) and high - at <= MOST_BESIDE and _is_word(pieces[high]):
        high += 1
    return low, high


def _windows(low: int, high: int, at: int) -> Iterator[tuple[int, int]]:
    """The parts of a run that hold the name at `at`, longest first; the name alone is none."""
    for length in range(high - low, 1, -1):
        for start in range(max(low, at - length + 1), min(at, high - length) + 1):
            yield start, start + length


def _is_word(piece: Piece) -> bool:
    if piece.kind is K.NUMBER:
        return piece.role in SHORT_TIMES and piece.value <= LONGEST_PAUSE_S
    return (
        piece.kind is K.NAME
        or piece.kind in WORDS
        or piece.kind in LINKS
        or piece.kind in BRACKETS
        or (piece.kind in GLUE and piece.glued)
    )


BRACKETS = frozenset((K.OPEN, K.CLOSE))
SHORT_TIMES = frozenset((Role.SECONDS, Role.PLURAL))
LONGEST_PAUSE_S = 5
"""A longer pause is one between sets. Common practice, no source."""


def _is_closed(window: list[Piece]) -> bool:
    """Whether a bracket holds the last words of the window and opens behind its name; and each time is that of a pause.

    "bench (incline)", "bench 2s pause"
    """
    kinds = [piece.kind for piece in window]
    for piece, after in pairwise(window):
        if piece.kind is K.NUMBER and not tells_a_pause(after.text):
            return False
    if K.OPEN not in kinds and K.CLOSE not in kinds:
        return kinds[-1] is not K.NUMBER
    opened = kinds.index(K.OPEN) if K.OPEN in kinds else 0
    return kinds.count(K.OPEN) == kinds.count(K.CLOSE) == 1 and kinds[-1] is K.CLOSE and K.NAME in kinds[:opened]


def _words(window: list[Piece], cleaned: str) -> list[str]:
    """The normalised words of a window as typed."""
    start = window[0].start
    typed = ""
    for piece in window:
        if piece.kind is K.NUMBER:
            typed, start = f"{typed}{cleaned[start : piece.start]} ", piece.end
    typed += cleaned[start : window[-1].end]
    return [word for part in typed.split() for word in normalise(part).split()]


def _is_one(window: list[Piece], names: tuple[ExerciseName, ...], catalogue: Catalogue) -> bool:
    """Whether the names of a window say one lift: "bench incline" does, "dips, bench" without its comma does not.

    An angle beside a name says how: "flyes incline", "decline weighted sit-ups".
    """
    told = [piece for piece in window if piece.kind is K.NAME and piece.text.split()[0] not in ANGLES]
    return len(told) < 2 or any(set(names) <= set(piece.names) for piece in told)

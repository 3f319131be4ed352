"""The words of a message that are kept as its note: as written, with the numbers that belong to them.

note  = from the first word that tells of feel, technique, kit or pain to the last, and what ties to them
      | a time or "out of" right in front of it                "90s rest", "3 sec pause", "out of gas"
      | behind it a scale, or a number with words around it     "knee 2/10", "slept 5 hours", "20 min run"
"""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections.abc import Callable, Sequence
from operator import itemgetter

from engine.reading.prepare import Prepared
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role, kinds_in_order, places_in, places_of

NOTED = frozenset(
    (
        K.NOTE,
        K.PLAIN,
        K.PAIN,
        K.SORE,
        K.JOINT,
        K.MUSCLE,
        K.DENIED,
        K.DENY,
        K.PARTIAL,
        K.HALF,
        K.SETTING,
        K.VARIANT,
        K.BAND,
        K.PIN,
        K.UNRELATED,
    )
)
CUTS = frozenset((K.COMMA, K.STOP, K.LINE, K.DASH, K.OPEN, K.CLOSE, K.AND, K.THEN))
OF_SETS = frozenset((K.NAME, K.TIMES, K.COUNT, K.SETS, K.REPS, K.EFFORT))
MEASURED = frozenset((Role.SECONDS, Role.METRES, Role.NOT_A_SET))
START: Callable[[Piece], int] = itemgetter(Piece._fields.index("start"))
END: Callable[[Piece], int] = itemgetter(Piece._fields.index("end"))
A_SCALE = (K.NUMBER, K.SLASH, K.NUMBER)


def note_of(pieces: Sequence[Piece], prepared: Prepared) -> str | None:
    """The note that the message tells beside its sets; None where it tells none."""
    noted = [pieces[at] for at in places_in(NOTED, kinds_in_order(pieces)) if _is_noted(pieces[at])]
    if not noted:
        return None
    first, last = noted[0], noted[-1]
    spoken = prepared.spoken
    ahead = bisect_right(spoken, first.start, key=END)
    behind = spoken[bisect_left(spoken, last.end, key=START) :]
    start = spoken[ahead - 1].start if ahead and _belongs_ahead(spoken[ahead - 1]) else first.start
    reach = 0
    if behind:
        reach = _reach(behind, after_a_number=last.text.isdigit(), of_a_setting=_is_of_a_setting(last, prepared))
        reach = reach or _numbers_left_out(behind, pieces)
    end = behind[reach - 1].end if reach else last.end
    told = prepared.cleaned[start:end].strip()
    within = kinds_in_order([piece for piece in spoken[ahead:] if piece.start < last.start])
    parted = K.TIMES in within and K.NAME not in within
    return (_around_the_sets(noted, prepared, start, end) if parted else told) or None


def _around_the_sets(noted: Sequence[Piece], prepared: Prepared, start: int, end: int) -> str:
    """ "140x5 felt easy, 160x3 grindy" notes "felt easy, grindy": the sets between two remarks are no part of them."""
    spoken = prepared.spoken
    cuts: list[tuple[int, int]] = []
    for at in places_of(K.TIMES, kinds_in_order(spoken)):
        first, behind = at, at + 1
        while first and spoken[first - 1].kind in FIGURES:
            first -= 1
        while behind < len(spoken) and spoken[behind].kind in FIGURES:
            behind += 1
        held = [one for one in noted if spoken[first].start <= one.start < spoken[behind - 1].end]
        if start < spoken[at].start < end and not held:
            cuts.append((spoken[first].start, spoken[behind - 1].end))
    parts, began = [], start
    for first_start, last_end in dict.fromkeys(cuts):
        parts.append(prepared.cleaned[began:first_start])
        began = last_end
    bare = [part.strip(BESIDE_A_NOTE) for part in (*parts, prepared.cleaned[began:end])]
    return ", ".join([part for part in bare if part])


BESIDE_A_NOTE = " \n,;.:-()"
FIGURES = frozenset((K.NUMBER, K.TIMES, K.COMMA, K.SLASH, K.LINE, K.OPEN, K.AT, K.AND, K.THEN))


def _is_noted(piece: Piece) -> bool:
    """Whether a piece of such a kind is a word of the note, or a number read as a part of a remark: "5 hours"."""
    return len(piece.text) > 1 or piece.text.isdigit() or piece.kind is K.PARTIAL  # "w połowie"


def _belongs_ahead(piece: Piece) -> bool:
    """ "90s rest", "out of gas"."""
    return _is_measured(piece) or piece.kind is K.OUT_OF


def _is_measured(piece: Piece) -> bool:
    return piece.kind is K.NUMBER and piece.role in MEASURED


def _numbers_left_out(behind: Sequence[Piece], pieces: Sequence[Piece]) -> int:
    """ "tempo | 311", "up from | 95": how many pieces right behind are numbers that were read as none of the sets."""
    end = next((at for at, piece in enumerate(behind) if piece.kind is not K.NUMBER), len(behind))
    if not end or (end < len(behind) and behind[end].kind not in CUTS):
        return 0
    counted = {piece.start for piece in pieces if piece.kind is K.NUMBER}
    return end if counted.isdisjoint([piece.start for piece in behind[:end]]) else 0


def _names_one_of_the_sets(clause: list[K]) -> bool:
    """ "belt | from set 3", "gürtel ab dem | 3. satz": the set that a remark speaks of, at the end of its clause."""
    while clause and clause[-1] is K.FILLER:
        clause = clause[:-1]
    pointed = clause[-2:] in ONE_OF_THE_SETS
    return pointed and clause.count(K.NUMBER) <= 1 and OF_SETS.isdisjoint(clause[:-2])


ONE_OF_THE_SETS = ([K.SETS, K.NUMBER], [K.REPS, K.NUMBER], [K.ORDINAL, K.SETS], [K.ORDINAL, K.REPS])


def _is_of_a_setting(last: Piece, prepared: Prepared) -> bool:
    """ "at rep 4", "set 3", "pin 12", "shoes size 42": the number behind such a word belongs to it."""
    settings = [prepared.spoken[at] for at in places_in(WITH_A_NUMBER, kinds_in_order(prepared.spoken))]
    return any(one.start <= last.start < one.end for one in settings)


WITH_A_NUMBER = frozenset((K.SETTING, K.PIN, K.SETS, K.REPS, K.UNRELATED))


def _reach(behind: Sequence[Piece], *, after_a_number: bool, of_a_setting: bool) -> int:
    """How many pieces behind its last word belong to the note still."""
    if tuple(piece.kind for piece in behind[: len(A_SCALE)]) == A_SCALE:
        return len(A_SCALE)
    end = next((at for at, piece in enumerate(behind) if piece.kind in CUTS), len(behind))
    clause = behind[:end]
    numbers = [piece for piece in clause if piece.kind is K.NUMBER]
    kinds = kinds_in_order(clause)
    if _names_one_of_the_sets(kinds):
        return end
    if not clause or not OF_SETS.isdisjoint(kinds):
        return 0
    if not numbers:
        return end if after_a_number else 0
    with_words = of_a_setting or clause[0] is not numbers[0] or clause[-1] is not numbers[0]
    counts_other = _is_measured(numbers[0]) or (numbers[0].role is Role.BARE and with_words)
    return end if len(numbers) == 1 and counts_other else 0

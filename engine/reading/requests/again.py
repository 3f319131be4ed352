"""The latest set again, so many times: "x2 more", "two more sets", "same x3", "another 2 sets"."""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.latest_sets import run_of_it
from engine.reading.requests.part_read import UNCLEAR
from engine.reading.values import Act, Context
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook, spoken
from engine.reading.words.pieces import Piece, Role
from engine.reading.words.tokens import Token


def repeat_told(words: list[tuple[str, Token]], pieces: Sequence[Piece], context: Context) -> Act | None:
    """ "x2 more", "two more sets", "same x3", "another 2 sets"."""
    numbers = [piece for piece in pieces if piece.kind is K.NUMBER]
    if len(numbers) == 1 and numbers[0].value % 1 != 0:
        return None  # "2.5 more" is of the load
    if len(numbers) == 1 and len(words) <= MOST_WORDS and _counts_those(numbers[0], pieces):
        return Act("repeat", count=int(numbers[0].value))
    return _repeat_counted(words, pieces, numbers, context)


def _repeat_counted(
    words: list[tuple[str, Token]], pieces: Sequence[Piece], numbers: list[Piece], context: Context
) -> Act | None:
    again = [piece for piece in pieces if piece.kind not in NOT_AGAIN and piece.text in phrasebook().cues["again"]]
    kinds = {piece.kind for piece in pieces if piece not in again} | ({K.SAME} if again else set())
    often = [piece.told for piece in pieces if piece.kind is K.ONCE]
    if len(often) == 1 and not numbers and kinds & {K.SAME, K.MORE, K.ANOTHER} and kinds <= REPEAT_KINDS | {K.ONCE}:
        return Act("repeat", count=often[0])
    if len(numbers) != 1 or not kinds <= REPEAT_KINDS or not 1 <= numbers[0].value <= 20 or len(words) > MOST_WORDS:
        return None
    asked = kinds & {K.SAME, K.MORE} or (K.ANOTHER in kinds and numbers[0].role is Role.SETS)
    only_times = kinds == {K.TIMES, K.NUMBER} and pieces[0].kind is K.TIMES and numbers[0].value <= 5
    if only_times and _is_as_many_as_before(numbers[0], context):
        return None  # "x5" behind a set of five is one more
    if not (asked or only_times) or numbers[0].role not in (Role.BARE, Role.SETS, Role.TIMES):
        return None
    if K.MORE in kinds and K.TIMES not in kinds and numbers[0].role is Role.BARE and numbers[0].value > FEW_SETS:
        return None  # "8 more" is a set of eight
    if K.SAME in kinds and not kinds & {K.TIMES, K.MORE} and numbers[0].role is Role.BARE:
        return None  # "same, 8" is a set of eight
    if is_a_sum(numbers[0], pieces):
        return one_to_make(numbers[0], context)
    return Act("repeat", count=int(numbers[0].value))


def _counts_those(number: Piece, pieces: Sequence[Piece]) -> bool:
    """ "another 3 of those", "2 of the same": sets like the last, and no reps; "another 8 of the same" may be a set."""
    at = pieces.index(number)
    ahead, behind = {piece.kind for piece in pieces[:at]}, pieces[at + 1 :]
    most = FEW_OTHERS if K.ANOTHER in ahead else FEW_SETS
    if not behind or number.role is not Role.BARE or not 1 <= number.value <= most or not is_cued(behind[0].text, OF):
        return False
    if K.ANOTHER not in ahead and not any(piece.kind is K.SAME for piece in behind[1:2]):
        return False  # "did all 3 of them" tells of those that stand
    pointed = behind[0].kind is K.ALTERED  # "of those", which is one piece
    those = pointed or any(piece.kind is K.SAME or is_cued(piece.text, THOSE) for piece in behind[1:2])
    return those and ahead | {piece.kind for piece in behind[1 if pointed else 2 :]} <= BESIDE_THOSE


OF, THOSE = frozenset(("of",)), frozenset(("those",))
BESIDE_THOSE = frozenset((K.ANOTHER, K.SAME, K.FILLER, K.SETS, K.COMMA, K.AND, K.STOP, K.THEN))


def _is_as_many_as_before(number: Piece, context: Context) -> bool:
    """Whether the number is the reps of the latest set; give or take one, but "x2" asks for two more."""
    off = abs(context.recent[-1].done.reps - number.value) if context.recent else None
    return off == 0 or (off == 1 and number.value > A_COUPLE)


def one_to_make(number: Piece, context: Context) -> Act | None:
    """One set more where that makes so many; None where it does not."""
    standing = len(run_of_it(context)) if context.recent else 0
    return Act("repeat", count=1) if number.value == standing + 1 else None


def is_a_sum(number: Piece, pieces: Sequence[Piece]) -> bool:
    """ "one more, so 4 sets": of all sets of the lift; "another 2 sets" is of those to come."""
    before = pieces[: pieces.index(number)] if number.role is Role.SETS else ()
    at = next((at for at, piece in enumerate(before) if piece.kind is K.ANOTHER), len(before))
    return any(piece.kind in (K.COMMA, K.STOP, K.AND) for piece in before[at:])


A_COUPLE = 2
NOT_AGAIN = frozenset((K.MORE, K.RESERVE))
""" "noch" alone asks for one more, and "noch drin" for none."""
FEW_SETS, FEW_OTHERS = 3, 5
MOST_WORDS = 6
REPEAT_KINDS = frozenset(
    (K.TIMES, K.NUMBER, K.MORE, K.SAME, K.ANOTHER, K.FILLER, K.SETS, K.COMMA, K.AND, K.STOP, K.OF, K.AT, K.WITH)
)


def sets_added(words: Sequence[str], pieces: Sequence[Piece], context: Context) -> Act | None:
    """ "add a set", "add 2 sets": the latest set again. With reps of its own it is a set of the lift in hand."""
    cues = phrasebook().cues
    length = next((n for n in (2, 1) if " ".join(words[:n]) in cues["addsets"]), 0)
    numbers = [piece for piece in pieces if piece.kind is K.NUMBER]
    if not length or len(words) == length or not context.recent or len(numbers) > 1:
        return None
    counted = {part for piece in numbers for part in spoken(piece.text).split()}
    rest = set(words[length:]) - counted
    if not rest <= cues["aroundadded"] or not rest & SETS_OR_ONE:
        return None
    if not numbers:
        return Act("repeat", count=1)
    whole = numbers[0].value == int(numbers[0].value) and 1 <= numbers[0].value <= MOST_ADDED
    if numbers[0].role is Role.SETS and whole:
        return Act("repeat", count=int(numbers[0].value))
    latest = context.recent[-1].done.exercise
    return Act(UNCLEAR, text=NAME_IT) if context.doing not in (None, latest) and K.OF in _kinds(pieces) else None


def _kinds(pieces: Sequence[Piece]) -> set[K]:
    return {piece.kind for piece in pieces}


SETS_OR_ONE = frozenset(("set", "sets", "one", "another", "more"))
MOST_ADDED = 20
NAME_IT = "the planned sets of the last lift are in, so name the lift of this one, for instance: squat 100x4"
STEPS = frozenset(("undo", "redo"))
BESIDE_STEPS = frozenset((K.NUMBER, K.TIMES, K.ONCE, K.FILLER, K.PLAIN, K.FAR))
NAMING_STEPS = frozenset((K.PLAIN, K.FAR))
STEP_WORDS = frozenset(("step", "steps", "times", "changes", "x"))
COUNTING_STEPS = (Role.BARE, Role.TIMES, Role.NOT_A_SET)
""" "2", "2 times", "2 steps"."""
MOST_STEPS = 5


def several_steps(words: Sequence[str], pieces: Sequence[Piece]) -> Act | None:
    """ "undo x2", "undo twice", "redo 3 times", "undo 2"; None for anything else."""
    name = phrasebook().said.get(words[0], "") if words else ""
    if name not in STEPS or not 2 <= len(words) + len(pieces) <= 2 * MOST_STEPS:
        return None
    behind = pieces[1:]
    if any(one.kind not in BESIDE_STEPS or (one.kind in NAMING_STEPS and one.text not in STEP_WORDS) for one in behind):
        return None
    counts = [int(one.value) for one in behind if one.kind is K.NUMBER and one.role in COUNTING_STEPS]
    counts += [one.told for one in behind if one.kind is K.ONCE]
    return Act(name, count=counts[0]) if len(counts) == 1 and 1 < counts[0] <= MOST_STEPS else None


def counts_steps(pieces: Sequence[Piece]) -> bool:
    """Whether something says that steps are counted; "undo 5" alone may be of the set of five."""
    return any(one.kind in (K.TIMES, K.ONCE) or one.role in (Role.TIMES, Role.NOT_A_SET) for one in pieces)

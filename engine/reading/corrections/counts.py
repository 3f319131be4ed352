"""How many sets it were: "only did 3", "leg press was only 2 sets", "4 sets not 3", "one set too many"."""

from __future__ import annotations

from engine.reading.corrections.correcting import Told
from engine.reading.corrections.parts import Part, part_told, sets_of
from engine.reading.corrections.said_to_be import is_be
from engine.reading.latest_sets import last_message, latest_of_it, run_of_it
from engine.reading.values import Correction
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role
from engine.values.ids import ExerciseName
from engine.values.sets import SetRecord

MOST_SETS = 20
NOT_COUNTS = frozenset((K.TIMES, K.AT, K.ORDINAL, K.ANOTHER, K.MORE, K.SAME, K.QUESTION, K.NOT, K.FUTURE, K.LAST,
                        K.FIRST, K.TOMORROW, K.OTHERS, K.REST))  # fmt: skip


def counted(told: Told) -> Correction | None:
    """Fewer sets, the first of which stand; or more of the same."""
    if told.has("toomany"):
        return _one_fewer(told)
    if (found := _only_the_first(told)) is not None or (found := _one_further(told)) is not None:
        return found
    numbers = told.numbers()
    if len(numbers) != 1 or told.kinds() & NOT_COUNTS:
        return None
    number, only = numbers[0], told.has("only")
    cued = only or told.slipped or told.starts("make") or told.has("mean") or any(map(is_be, told.pieces))
    if not cued or number.value != int(number.value):
        return None
    if K.EACH in told.kinds() and number.role in (Role.BARE, Role.SETS) and len(_lifts_told(told)) > 1:
        return _so_many_of_each(told, int(number.value))
    part = part_told([piece for piece in told.pieces if piece.kind is not K.NUMBER], told.context)
    if part.both and number.role is Role.SETS and not part.places:
        return _so_many_of_both(told, part, int(number.value))
    to_so_many = _sets_changed_to(told, number)
    fewer = only and number.role is Role.BARE and 1 <= number.value < len(group_of(told, part))
    fewer = fewer and not _is_a_place(told, number)
    if not fewer and number.role is not Role.SETS and not to_so_many:
        return None
    return told.correction() if set_count(told, part, int(number.value)) else None


def _lifts_told(told: Told) -> list[list[SetRecord]]:
    """The sets of the latest message, by lift."""
    lifts: dict[ExerciseName, list[SetRecord]] = {}
    for record in last_message(told.context):
        lifts.setdefault(record.done.exercise, []).append(record)
    return list(lifts.values())


def _so_many_of_each(told: Told, count: int) -> Correction | None:
    """ "only did 2 sets of each", "2 of each": of every lift of the message, where each has more of them."""
    lifts = _lifts_told(told)
    if count < 1 or any(len(group) < count for group in lifts):
        return None
    told.removed += [record for group in lifts for record in group[count:]]
    return told.correction()


def _so_many_of_both(told: Told, part: Part, count: int) -> Correction | None:
    """ "both were 4 sets": of each of the two lifts."""
    lifts: dict[ExerciseName, list[SetRecord]] = {}
    for record in part.reached(told.context):
        lifts.setdefault(record.done.exercise, []).append(record)
    if len(lifts) != len(("one", "other")) or not 1 <= count <= MOST_SETS:
        return None
    for group in lifts.values():
        told.removed += group[count:]
        told.added += [group[-1].done] * (count - len(group))
    return told.correction()


def _one_fewer(told: Told) -> Correction | None:
    """ "one set too many", "drop a set of squat": the last one, where it is of today; "what if i drop a set" asks."""
    part = part_told([piece for piece in told.pieces if piece.kind is K.NAME], told.context)
    last = [] if part.named_unknown or told.kinds() & ASKED_OR_AHEAD else group_of(told, part)[-1:]
    told.removed += [record for record in last if told.context.now is None or record.on == told.context.now.date()]
    return told.correction()


ASKED_OR_AHEAD = frozenset((K.ASKS, K.QUESTION, K.FUTURE, K.TOMORROW, K.REPS))


def _sets_changed_to(told: Told, number: Piece) -> bool:
    """ "change sets to 4", "wrong number of sets, 4", "got the sets wrong, it was 4"."""
    ahead = told.pieces[: told.pieces.index(number)]
    before = [piece for piece in ahead if piece.kind not in BESIDE_A_COUNT and not is_be(piece)]
    wrong = [piece for piece in before if piece.text in told.book.cues["wrongly"]]
    last = next((piece for piece in reversed(before) if piece not in wrong), None)
    several = last is not None and last.kind is K.SETS and last.text.endswith("s") and number.role is Role.BARE
    blamed = told.slipped and (bool(wrong) or K.COMMA in [piece.kind for piece in ahead])
    return several and (told.starts("make") > 0 or blamed)


def _is_a_place(told: Told, number: Piece) -> bool:
    """ "set 1 was just the bar": which set, and not how many; "sets only 2" counts them."""
    at = told.pieces.index(number)
    return at > 0 and told.pieces[at - 1].kind is K.SETS


BESIDE_A_COUNT = frozenset((K.FILLER, K.COMMA, K.STOP, K.DASH, K.COLON))


def _only_the_first(told: Told) -> Correction | None:
    """ "only the first three": those stand, and the others go."""
    kinds = told.kinds()
    if K.FIRST not in kinds or not told.has("only") or kinds & MARKING or kinds & (NOT_COUNTS - {K.FIRST}):
        return None
    part = part_told(told.pieces, told.context)
    if part.missing or not part.places or any(number not in part.used for number in told.numbers()):
        return None
    told.removed += [record for record in group_of(told, part) if record not in part.places]
    return told.correction()


def _one_further(told: Told) -> Correction | None:
    """ "there was a fifth set too", "did a 5th": one more like the last, where four stand."""
    ordinals = [piece for piece in told.pieces if piece.kind is K.ORDINAL]
    others = told.kinds() - {K.ORDINAL, K.FILLER, K.SETS, K.STOP, K.AND, K.EXTRA}
    plain = [piece for piece in told.pieces if piece.kind in others and piece.text not in FURTHER]
    group = group_of(told, Part())
    if len(ordinals) != 1 or plain or ordinals[0].told != len(group) + 1 or len(told.pieces) < 2:
        return None
    told.added.append(group[-1].done)
    return told.correction()


FURTHER = frozenset(("there", "was", "did", "too", "also", "even", "forgot", "forgotten", "i", "a"))
MARKING = frozenset((K.EFFORT, K.FAILURE, K.WARMUP, K.MISS, K.NAME, K.KG, K.LB, K.AT, K.WITH))


def counts_what_stands(told: Told) -> bool:
    """ "that's 3 sets" behind three single ones: as many as stand, and nothing to change."""
    numbers = told.numbers()
    if len(numbers) != 1 or numbers[0].role is not Role.SETS or told.kinds() & (NOT_COUNTS | {K.NAME}):
        return False
    run = run_of_it(told.context)
    return len(run) > len(latest_of_it(told.context)) and numbers[0].value == len(run)


def set_count(told: Told, part: Part, count: int) -> bool:
    """Whether there are so many sets now, of the latest message or the exercise named."""
    group = group_of(told, part) if count < len(group_of(told, part)) or part.named else latest_of_it(told.context)
    if part.named_unknown or not group or not 1 <= count <= MOST_SETS:
        return False
    told.removed += group[count:]
    told.added += [group[-1].done] * (count - len(group))
    return count != len(group)


def group_of(told: Told, part: Part) -> list[SetRecord]:
    """The sets that a count of sets is of: the lift's of the latest message, or the row of single ones."""
    if part.named:
        return sets_of(part, told.context)
    latest = latest_of_it(told.context)
    return latest if len(latest) > 1 else run_of_it(told.context)

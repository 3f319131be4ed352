"""New numbers for sets that stand: the latest one, a part, or each of several parts."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal
from itertools import pairwise

from engine.reading.corrections.clauses import clauses, is_of_all_reps, rated, speaks_of_the_last_reps
from engine.reading.corrections.correcting import Told
from engine.reading.corrections.going_on import goes_on_with_it
from engine.reading.corrections.kinds_of_sets import kind_told, with_sets_of_its_kind
from engine.reading.corrections.listed_again import is_listed_again
from engine.reading.corrections.load_or_reps import is_either, is_far_below_the_load
from engine.reading.corrections.load_told import NEAR_THE_REPS, NEAREST, is_far_from_load, weighs
from engine.reading.corrections.marks import mark, marked_too, marks_of
from engine.reading.corrections.old_new import from_to, old_and_new
from engine.reading.corrections.one_of_them import is_of_one_of_them
from engine.reading.corrections.parts import THOSE, Part, part_told, sets_of
from engine.reading.corrections.restated import restated, tells_the_whole
from engine.reading.corrections.retyped import is_retyped_alone
from engine.reading.corrections.said_to_be import is_be
from engine.reading.corrections.what_remains import part_of
from engine.reading.latest_sets import are_two, last_message, names_several, run_of_it
from engine.reading.marks.clocks import HALVES_OF_THE_DAY
from engine.reading.values import Correction
from engine.reading.words.cues import CUES_OF, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, NOTHING, Piece, Role, first_word
from engine.reading.words.token_walk import KNOWN
from engine.values.load import Basis
from engine.values.sets import SetDone, SetRecord

MOST_PLAIN = 1


def new_values(told: Told) -> Correction | None:
    """A new number for the latest set, for a part, or for each of several parts."""
    return told.correction() if are_applied(told) else None


def tells_what_stands(told: Told) -> bool:
    """ "it was 3x5" behind 3x5: what stands, told once more."""
    if K.TIMES not in told.kinds() or not any(map(is_be, told.pieces)):
        return False
    return are_applied(told) and told.correction() is None


def are_applied(told: Told) -> bool:
    """Whether each clause's values could be put where it says."""
    return _may_correct(told) and all(_apply(told, clause) for clause in clauses(told.pieces))


def _may_correct(told: Told) -> bool:
    kinds = told.kinds()
    of_the_bar = K.BAR in kinds and len(told.numbers()) > 1  # "wait, the bar is 15, so 72.5" tells what the bar weighs
    other = kinds & NO_CORRECTION
    other = other - {K.MORE} if K.MORE in other and is_listed_again(told) else other  # "more like 6 5 4"
    if other or told.of_others() or of_the_bar or _tells_a_difference(told.pieces):
        return False
    if is_of_one_of_them(told) or (any(p.role is Role.CHANGE for p in told.numbers()) and not _on_body(told)):
        return False
    if not any(piece.kind in (K.NUMBER, K.COUNT) for piece in told.pieces):
        return False
    verbs = [piece for piece in told.pieces if is_be(piece)]
    if any(p.kind in (K.FUTURE, K.ASKS, K.NEVER) and p not in verbs for p in told.pieces):
        return False
    if told.pieces[0].kind is K.ASKS or is_listed_again(told):
        return told.pieces[0].kind is not K.ASKS
    swaps = "swapping" in CUES_OF[told.pieces[0].text] and K.NAME not in kinds and len(told.numbers()) == 2
    asks = told.starts("make") or swaps
    if told.slipped or asks or _is_told_anew(told) or told.has("mean") or K.NOT in kinds:
        return told.unknown() <= MOST_PLAIN
    if any((piece.kind in TALK and piece not in verbs) or (_compares(piece)) for piece in told.pieces):
        return False
    return says_after(told) if verbs else _is_pointed(told)


def _tells_a_difference(pieces: Sequence[Piece]) -> bool:
    """ "5 kg too much", "2.5 kg under": how far off a load was, and not what it was."""
    far = (a.kind is K.NUMBER and a.unit is not None and is_cued(b.text, APART) for a, b in pairwise(pieces))
    return any(far) or speaks_of_the_last_reps(pieces)


APART = frozenset(("apart",))


def _is_told_anew(told: Told) -> bool:
    return _puts_at(told) or is_retyped_alone(told) or goes_on_with_it(told) or tells_the_whole(told)


def _puts_at(told: Told) -> bool:
    """ "put the rows at 45": one new load for sets that stand, and no set told whole."""
    kinds = told.kinds()
    one = len(told.numbers()) == 1 and K.TIMES not in kinds and bool(told.starts("puts"))
    at = next((at for at, piece in enumerate(told.pieces) if piece.kind is K.NUMBER), 0)
    tied = at > 0 and (told.pieces[at - 1].kind is K.AT or told.pieces[at - 1].text.split()[-1:] in TOWARDS)
    part = part_told(told.pieces, told.context)
    weighs = any(number.role is Role.LOAD or number.value > MOST_LOADED_REPS for number in told.numbers())
    return one and tied and weighs and (part.named is not None or part.points or told.plural)


TOWARDS = (["at"], ["to"])


def _on_body(told: Told) -> bool:
    """Whether "+5" is an added load, and no change of one."""
    load = told.context.recent[-1].done.load
    return load is not None and load.basis is Basis.BODY


def says_after(told: Told) -> bool:
    """Whether a number stands behind "was": "the 20s were taken" says none."""
    verb = next(at for at, piece in enumerate(told.pieces) if is_be(piece))
    number = next((at for at in range(verb, len(told.pieces)) if told.pieces[at].kind in (K.NUMBER, K.COUNT)), -1)
    between = [piece.kind for piece in told.pieces[verb:number]]
    felt = between.index(K.NOTE) if K.NOTE in between else len(between)
    return number >= 0 and CLAUSE_ENDS.isdisjoint(between[felt:])  # "that was hard, 6" is one more set


def tells_how_some_were(told: Told) -> bool:
    """ "bar speed was good on 2", "form was off on the 3": how some of the sets were, and no number of theirs."""
    numbers, verb = told.numbers(), next((at for at, piece in enumerate(told.pieces) if is_be(piece)), None)
    if verb is None or len(numbers) != 1 or numbers[0].role not in (Role.BARE, Role.SETS):
        return False
    at = told.pieces.index(numbers[0])
    ahead = [piece for piece in told.pieces[verb:at] if "the" not in CUES_OF[piece.text]]
    felt = K.NOTE in [piece.kind for piece in ahead[:-1]]
    return felt and first_word(ahead[-1]) in ("on", "for", "in") and numbers[0].value <= len(run_of_it(told.context))


CLAUSE_ENDS = frozenset((K.COMMA, K.STOP, K.DASH))


NO_CORRECTION = frozenset((K.QUESTION, K.TOMORROW, K.ANOTHER, K.SAME, K.MORE))
TALK = frozenset(
    (K.PLAIN, K.UNRELATED, K.STORY, K.SAYING, K.FAR, K.JOINT, K.PAIN, K.REST, K.SORE, K.MUSCLE, K.DATE, K.BAR,
     K.SETTING, K.PLATE, K.PIN, K.BODY, K.PAUSE, K.TEMPO, K.ROUNDS, K.BAND, K.HEADING)
)  # fmt: skip


def _is_pointed(told: Told) -> bool:
    """ "all at 57.5", "last at 65", "second 7, third 6": parts with their numbers, and nothing else."""
    first = next((piece for piece in told.pieces if not _is_ahead_of_a_place(piece)), told.pieces[0])
    part = part_told([first], told.context)
    pointed = first.kind in (K.FIRST, K.ORDINAL, K.MIDDLE, K.FROM_LAST) and bool(part.places)
    whole = part_told(told.pieces, told.context)
    pointed = pointed or (is_cued(first.text, THOSE) and bool(whole.places))  # "those two at 80"
    numbered = first.kind is K.SETS and bool(whole.places)
    several = first.kind is K.LAST and len(whole.places) > 1
    weighed = any(number.role is Role.LOAD or number.value > MOST_LOADED_REPS for number in told.numbers())
    several_told = len(last_message(told.context)) > 1
    tied = bool(told.kinds() & {K.AT, K.WITH}) or (weighed and several_told)
    linked = first.kind is K.LAST and bool(whole.places) and tied
    placed = K.LAST in told.kinds() or (bool(told.kinds() & PLACED) and bool(whole.places))
    several = several or K.REMAINING in told.kinds()
    behind = placed and first.kind in (K.NUMBER, K.ONLY, K.GOT) and any(map(_on_it, told.pieces))
    result = whole.named is not None and bool(whole.places) and bool(told.kinds() & {K.ONLY, K.GOT})
    led = (K.FIRST, K.ORDINAL, K.SETS, *((K.LAST,) if len(sets_of(whole, told.context)) > 1 else ()))
    named = result or (whole.named is not None and bool(whole.places) and first.kind in led)
    fell_short = first.kind is K.LAST and bool(told.kinds() & {K.ONLY, K.GOT}) and (several_told or result)
    behind = behind or _is_of_the_end(told, first, several=several_told or named)
    plain = all(
        piece.kind in POINTED or (named and piece.kind is K.NAME) or _is_before_a_place(told.pieces, at)
        for at, piece in enumerate(told.pieces)
    )
    of_all = part.whole or (part.both and are_two(told.context))  # "both at 60"
    turned = [piece.kind for piece in told.pieces] == [K.NUMBER, K.ARROW, K.NUMBER]
    return turned or (
        (of_all or pointed or numbered or several or linked or behind or fell_short) and plain and not whole.missing
    )


def _is_of_the_end(told: Told, first: Piece, *, several: bool) -> bool:
    """ "last one 4", "last 4": the last of several sets. "Last set 4" behind single sets announces one more."""
    announces = not several and (K.SETS in told.kinds() or any(map(_says_sets, first.text.split())))
    if first.kind is not K.LAST or announces or "rep" in first.text or K.GOT in told.kinds():
        return False
    return len(told.numbers()) == 1 and (several or len(run_of_it(told.context)) > 1)


def _says_sets(word: str) -> bool:
    meaning = KNOWN[word].meaning
    return meaning is not None and meaning.kind is K.SETS


AHEAD_OF_A_PLACE = frozenset((K.AND, K.NAME, K.COMMA, K.COLON))
"""What may stand ahead of the place: "third set of bench i only got 4", "bench, last set i only got 4"."""

COMPARING = frozenset(("up", "down", "above", "below", "heavier", "lighter", "better"))


def _compares(piece: Piece) -> bool:
    return is_cued(piece.text, COMPARING) or piece.text in HALVES_OF_THE_DAY


def _is_ahead_of_a_place(piece: Piece) -> bool:
    return piece.kind in AHEAD_OF_A_PLACE or (piece.kind is K.FILLER and "the" in CUES_OF[piece.text])


def _is_before_a_place(pieces: Sequence[Piece], at: int) -> bool:
    """ "45 for the last", "45kg for set 3", "set 3: 10"."""
    kinds = [piece.kind for piece in pieces[at + 1 : at + 3] if piece.kind is not K.FILLER]
    points = bool(kinds) and kinds[0] in PLACED | {K.LAST, K.SETS}
    headed = pieces[at].kind is K.COLON and at > 0 and pieces[at - 1].kind in PLACED | {K.LAST} - {K.SETS}
    headed = headed or (
        pieces[at].kind is K.COLON and points and at == 1 and pieces[0].kind is K.NAME
    )  # "bench: last 7"
    numbered = headed or (pieces[at].kind is K.COLON and at > 1 and pieces[at - 2].kind is K.SETS)
    return numbered or (pieces[at].kind is K.FOR and points)


PLACED = frozenset((K.ORDINAL, K.FIRST, K.MIDDLE, K.FROM_LAST, K.SETS))


def _on_it(piece: Piece) -> bool:
    """ "4 on the last": the place behind the number."""
    return piece.kind is K.FOR or first_word(piece) in ("on", "for", "in")


POINTED = frozenset((K.FIRST, K.ORDINAL, K.MIDDLE, K.FROM_LAST, K.LAST, K.NUMBER, K.COMMA, K.AND, K.FILLER, K.AT, K.KG,
                     K.LB, K.REPS, K.SETS, K.EACH, K.BOTH, K.OF, K.WITH, K.STOP, K.EFFORT, K.ONLY, K.GOT,
                     K.REMAINING))  # fmt: skip


def _apply(told: Told, clause: list[Piece]) -> bool:
    """Whether the clause's values were put where it says."""
    part = part_of(clause, told.context, told.pointed)
    with_sets_of_its_kind(part, clause, told.context)
    if part.missing or names_several(clause, told.context):
        return False
    reached = part.reached(told.context, told.plural)
    clause = rated(clause, reached[-1].done) if reached else clause
    numbers = _numbers_of(told, clause, part)
    marks = [piece for piece in marks_of(clause) if piece is not kind_told(clause)]
    if not numbers:
        return bool(marks) and not part.named_unknown and mark(told, marks, part)
    if any(piece.kind is K.NOT for piece in clause):
        return old_and_new(told, clause, part, numbers) and marked_too(told, marks, part)
    if from_to(told, clause, part, numbers):
        return marked_too(told, marks, part)
    if any(piece.kind is K.TIMES for piece in clause) or len(numbers) > 1:
        kinds = [piece for piece in marks if piece.kind in (K.DROP, K.WARMUP) and part.places]
        return _apply_several(told, clause, part, numbers) and (not kinds or mark(told, kinds, part))
    if part.named_unknown:
        return False
    reached = _apply_one(told, clause, part, numbers[0])
    if reached and marks:
        part.places = list(reached)
        return mark(told, marks, part)
    return bool(reached)


def _apply_several(told: Told, clause: list[Piece], part: Part, numbers: list[Piece]) -> bool:
    counts = [number for number in numbers if number.role is Role.SETS]
    counted = len(numbers) == 2 and len(counts) == 1 and all(piece.kind is not K.TIMES for piece in clause)
    if counted and (numbers[1] is counts[0] or _is_tied(clause, numbers[1])):
        return _apply_with_count(told, clause, part, sorted(numbers, key=lambda number: number is counts[0]))
    return not part.named_unknown and restated(told, clause, part)


def _apply_with_count(told: Told, clause: list[Piece], part: Part, numbers: list[Piece]) -> bool:
    """ "the leg ext was 50, and only 2 sets": so many of them stand, and with the new number."""
    number, count = numbers[0], int(numbers[1].value)
    group = part.reached(told.context)
    alike = len({record.done for record in group}) == 1
    if part.places or part.named_unknown or number.role is Role.SETS or not 1 <= count <= MOST_SETS:
        return False
    if not weighs(told, clause, number, group[-1].done) or not (count <= len(group) or alike):
        return False
    for record in group[:count]:
        told.set_to(record, told.at_load(told.now(record), number))
    told.removed += group[count:]
    told.added += [told.now(group[-1])] * (count - len(group))
    return True


def _is_tied(clause: Sequence[Piece], number: Piece) -> bool:
    """ "4 sets at 65", "4 sets and 65": the load behind the count."""
    return number in clause and clause[clause.index(number) - 1].kind in (K.AT, K.WITH, K.AND, K.OF)


MOST_SETS = 20


def _numbers_of(told: Told, clause: Sequence[Piece], part: Part) -> list[Piece]:
    """The numbers that tell something new: the reps that all the sets have, in "all 8 at 37.5", tell nothing."""
    numbers = [piece for piece in clause if piece.kind is K.NUMBER and piece not in part.used]
    if not part.whole or part.places or len(numbers) < 2:
        return numbers
    reps = {record.done.reps for record in part.reached(told.context)}
    return [number for number in numbers if number.value not in reps] or numbers


def _apply_one(told: Told, clause: list[Piece], part: Part, number: Piece) -> list[SetRecord]:
    """The sets that the one number changed."""
    group = part.reached(told.context, told.plural)
    if not group or number.role is Role.SETS or is_far_below_the_load(clause, number, group[-1].done):
        return []
    done = group[-1].done
    if is_far_from_load(number, clause, done):
        # Of reps only the full ones count.
        number = number._replace(value=number.value // 1 if abs(number.value - done.reps) <= NEAR_THE_REPS else NOTHING)
    elif weighs(told, clause, number, done) or _is_of_all_loads(told, part, number, group):
        for record in group:
            told.set_to(record, told.at_load(told.now(record), number))
        return group
    if number.value != int(number.value) or number.value < 1 or is_either(told, number, done):
        return []
    alike = len({record.done for record in group}) == 1
    several = part.places or part.whole or part.both or (told.plural and (alike or not part.named))
    several = several or (alike and told.slipped and is_of_all_reps(clause))
    whole = group if several else group[-1:]
    in_total = len(whole) > 1 and any(piece.kind is K.TOTAL for piece in clause)  # "those were 12 in total"
    if in_total or not all(_may_take(record.done, number) for record in whole):
        return []
    for record in whole:
        told.set_to(record, _with_amount(told.now(record), number))
    return whole


def _is_of_all_loads(told: Told, part: Part, number: Piece, group: Sequence[SetRecord]) -> bool:
    """ "all were 12" behind 3x12 at 14: as reps it would change nothing, and as a load it is near the one told."""
    several = (part.whole or part.both or told.plural) and len(group) > 1 and number.role is Role.BARE
    loads = [record.done.load for record in group if record.done.reps == number.value and record.done.seconds is None]
    near = [load for load in loads if load is not None and NEAREST * load.amount <= number.value < load.amount * 2]
    return several and len(near) == len(group)


def _may_take(done: SetDone, number: Piece) -> bool:
    """Seconds are no reps, and metres no seconds."""
    if number.role is Role.SECONDS:
        return done.seconds is not None
    return number.role is not Role.METRES or done.metres is not None


def _with_amount(done: SetDone, number: Piece) -> SetDone:
    if done.seconds is not None:
        return replace(done, seconds=Decimal(number.value))
    if done.metres is not None:
        return replace(done, metres=Decimal(number.value))
    return replace(done, reps=int(number.value))

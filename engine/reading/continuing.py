"""Sets that go on from the ones that stand: "another 5", "+10 for 3", "bench again", "same but 85".

The grammar of sets reads most of it, since reps alone are done at the latest load of the exercise in hand. Told apart
here is what speaks of the latest set itself:

again  = ( "same" | "another" | NUMBER "more" ) [ name ] [ ( "at" | "but" ) load ]
change = ( "up" | "plus" | "minus" ) NUMBER "for" reps | NUMBER ( "more" | "heavier" | "lighter" ) "for" reps
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from engine.catalogue.catalogue import Catalogue
from engine.reading.entries.names import is_near, narrowed
from engine.reading.values import Act, Context, Logged
from engine.reading.weighing.resolve import BASES
from engine.reading.words.cues import CUES_OF, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role, is_one_word, may_count_reps
from engine.values.exercise import Measure
from engine.values.load import HEAVIEST, Basis, Load
from engine.values.sets import SetDone, SetKind, SetRecord

MOST_SETS = 3
"""How many sets "three more at 60" may be; "8 more" is a set of eight. Common practice, no source."""

MOST_CHANGE = 50
UP = frozenset(("up", "plus", "add", "raised"))
DOWN = frozenset(("minus", "down", "fewer", "off", "lighter", "drop"))
HEAVIER = frozenset(("heavier", "more"))
CHANGES = UP | DOWN | HEAVIER
BY_WORD = frozenset(("heavier", "lighter"))
ASKS_FOR_MORE = frozenset((K.SAME, K.ANOTHER, K.MORE))
NAMES_OR_ASKS = ASKS_FOR_MORE | {K.NAME, K.LAST}
BESIDE = frozenset(
    (K.FILLER, K.COMMA, K.STOP, K.AND, K.THEN, K.SETS, K.AT, K.WITH, K.KG, K.LB, K.FOR, K.EXTRA, K.OF, K.REPS, K.EXCEPT,
     K.DASH)
)  # fmt: skip


def in_hand(context: Context) -> Context:
    """The context with the exercise in hand filled in from today's latest set."""
    if context.doing is not None or context.announced or not context.recent:
        return context
    last = context.recent[-1]
    if context.now is not None and last.on != context.now.date():
        return context
    return replace(context, doing=last.done.exercise)


def with_latest_in_hand(pieces: Sequence[Piece], context: Context) -> Context:
    """The context with the lift of the latest set in hand, where "another triple", "one more set of 5", "+10 for 3"
    goes on with it although the plan has another next; as it stands where a load is told that only suits that one.
    """
    latest = context.recent[-1] if context.recent else None
    if latest is None or latest.done.exercise == context.doing or (context.now and latest.on != context.now.date()):
        return context
    if context.named:
        return context
    told = [piece for piece in pieces if piece.kind not in AHEAD_OF_MORE]
    kinds = [piece.kind for piece in told]
    more = kinds[:1] == [K.ANOTHER] or kinds[:1] == [K.EXTRA] or kinds[:2] == [K.NUMBER, K.MORE]
    if not more and any(piece.role is Role.CHANGE for piece in told):
        more = _is_loaded(context)  # on top of a lift of the body "+10" may be all of its load
    if not more or K.NAME in kinds or _suits_the_next(told, latest.done, context):
        return context
    return replace(context, doing=latest.done.exercise)


AHEAD_OF_MORE = frozenset((K.FILLER, K.AND, K.THEN, K.PLUS, K.COMMA, K.GOT, K.STOP))


def _is_loaded(context: Context) -> bool:
    """Whether the lift in hand is one with a load of its own, and not of the body alone."""
    known = _known_load(context)
    return known is not None and known.basis is not Basis.BODY


def _known_load(context: Context) -> Load | None:
    """What the lift in hand is done with: lately, or by the plan."""
    planned = next((slot.load for slot in context.plan if slot.exercise == context.doing), None)
    return (context.last.get(context.doing) if context.doing else None) or planned


def _suits_the_next(told: Sequence[Piece], done: SetDone, context: Context) -> bool:
    """Whether a load is told that is near the one of the lift in hand, and not near that of the latest set."""
    known = _known_load(context)
    if known is None or done.load is None:
        return False
    near, far = float(known.amount), float(done.load.amount)
    numbers = [one for one in told if one.role is not Role.CHANGE]
    loads = [float(one.value) for one in numbers if one.role is Role.LOAD or one.value > MOST_LOADED_REPS]
    return any(is_near(load, near) and not is_near(load, far) for load in loads)


def gone_on(pieces: Sequence[Piece], context: Context, catalogue: Catalogue) -> Logged | Act | None:
    """The latest set again, at another load or of the exercise named; None where the message tells sets of its own."""
    if not context.recent or any(piece.kind is K.TIMES for piece in pieces[:1]):
        return None
    latest = _latest(pieces, context)
    if latest is None:
        return _same_of_another(pieces, context, catalogue)
    return (
        _dropped(pieces, latest.done)
        or _changed(pieces, latest.done)
        or _lowered(pieces, latest.done, context)
        or _again(pieces, latest.done)
    )


def _same_of_another(pieces: Sequence[Piece], context: Context, catalogue: Catalogue) -> Logged | None:
    """ "same for bench at 80", where bench was not done yet: the sets of the latest message, of that lift."""
    names = [narrowed(piece.names, context) for piece in pieces if piece.kind is K.NAME]
    loads = [piece for piece in pieces if piece.kind is K.NUMBER]
    kinds = {piece.kind for piece in pieces}
    if len(names) != 1 or len(names[0]) != 1 or len(loads) != 1 or K.SAME not in kinds:
        return None
    latest, exercise = context.recent[-1], catalogue.exercises.get(names[0][0])
    today = [one for one in context.recent if one.on == latest.on]
    sets = [one.done for one in today if one.message == latest.message]
    counted = all(done.seconds is None and done.metres is None for done in sets)
    counted = counted and len(sets) == sum(one.done.exercise == latest.done.exercise for one in today)
    if exercise is None or not counted or not 0 < loads[0].value < HEAVIEST:
        return None
    plain = kinds <= ASKS_FOR_MORE | BESIDE | {K.NUMBER, K.NAME} and exercise.measure is Measure.REPS
    linked = any(piece.kind in (K.AT, K.WITH) for piece in pieces) or loads[0].role is Role.LOAD
    if not plain or not linked or len({done.exercise for done in sets}) > 1:
        return None
    load = Load(loads[0].value, loads[0].unit or context.unit, BASES.get(exercise.loading, Basis.TOTAL))
    told = tuple(SetDone(exercise.name, done.reps, load, kind=done.kind) for done in sets)
    return Logged(told, why="the sets of the lift before, at this load")


def _dropped(pieces: Sequence[Piece], done: SetDone) -> Logged | None:
    """ "drop 80x8", "drop set: 80 for 8": straight on from the latest set, at less."""
    told = [piece for piece in pieces if piece.kind not in (K.FILLER, K.COLON, K.COMMA, K.SETS)]
    kinds = [piece.kind for piece in told]
    if kinds not in ([K.DROP, K.NUMBER, K.TIMES, K.NUMBER], [K.DROP, K.NUMBER, K.FOR, K.NUMBER]):
        return None
    low, reps = told[1], told[3]
    heavier = done.load is not None and done.load.basis is not Basis.BODY and low.value < done.load.amount
    a_load = low.role is Role.LOAD or (low.role is Role.BARE and low.value > MOST_COUNTED)
    named = told[0].end - told[0].start in (len("drop"), len("drop set"))
    if not (heavier and a_load and named and may_count_reps(reps)):
        return None
    lighter = _at(done, low)
    return Logged((replace(lighter, reps=int(reps.value), kind=SetKind.DROP),), why="a drop set of the latest lift")


MOST_COUNTED = 10
"""Up to this a number in front of an x may count sets: "drop 3x8". Common practice, no source."""


def _lowered(pieces: Sequence[Piece], done: SetDone, context: Context) -> Logged | None:
    """ "dropped to 60 for 10", "backed off to 60, got 10"; and "one more for 3", at the load of the latest set."""
    numbers = [(at, piece) for at, piece in enumerate(pieces) if piece.kind is K.NUMBER]
    if not 1 <= len(numbers) <= 2 or not all(piece.kind in LOWERING or is_cued(piece.text, DOWN) for piece in pieces):
        return None
    at, reps = numbers[-1]
    linked = at > 0 and pieces[at - 1].kind in (K.FOR, K.COMMA, K.GOT)
    if not linked or not may_count_reps(reps):
        return None
    if len(numbers) == 1 and (context.moved or done.exercise in context.told):
        return None  # "105 next", then "got 4": at the load that was told since
    if len(numbers) == 1:
        asked = any(piece.kind in NAMES_OR_ASKS for piece in pieces[:at]) or at == 1
        again = asked and pieces[at - 1].kind in (K.FOR, K.GOT)
        return Logged((_anew(done, int(reps.value)),), why="reps of the latest set's load") if again else None
    down = any(piece.kind is K.DROP or is_cued(piece.text, DOWN) for piece in pieces[: numbers[0][0]])
    low = numbers[0][1].value <= MOST_LOADED_REPS and not any(_goes_to(piece) for piece in pieces[: numbers[0][0]])
    if not down or low or numbers[0][1].role not in (Role.BARE, Role.LOAD):
        return None
    return Logged((_anew(_at(done, numbers[0][1]), int(reps.value)),), why="the latest lift at another load")


LOWERING = BESIDE | frozenset((K.DROP, K.GOT, K.NUMBER, K.ASSISTED, K.NAME, K.ANOTHER, K.MORE, K.LAST))


def _anew(done: SetDone, reps: int) -> SetDone:
    kind = SetKind.WORK if done.kind is SetKind.WARMUP else done.kind
    return SetDone(done.exercise, reps, done.load, kind=kind, side=done.side)


def _latest(pieces: Sequence[Piece], context: Context) -> SetRecord | None:
    """Today's latest set of the exercise named, or of the one in hand."""
    names = [narrowed(piece.names, context) for piece in pieces if piece.kind is K.NAME]
    today = [record for record in context.recent if context.now is None or record.on == context.now.date()]
    if len(names) > 1 or not today:
        return None
    wanted = names[0] if names else (today[-1].done.exercise,)
    return next((record for record in reversed(today) if record.done.exercise in wanted), None)


def _again(pieces: Sequence[Piece], done: SetDone) -> Logged | Act | None:
    """ "same at 85", "two more at 60", "one more bench"."""
    kinds = {piece.kind for piece in pieces}
    numbers = [piece for piece in pieces if piece.kind is K.NUMBER]
    if not kinds & ASKS_FOR_MORE or not kinds <= ASKS_FOR_MORE | BESIDE | {K.NUMBER, K.NAME} or len(numbers) > 2:
        return None
    if (several := _more_sets_of(pieces, numbers, done)) is not None:
        return several
    if any(_is_put_on(a, b, done) for a, b in pairwise(pieces)):
        return None
    loads = [number for number in numbers if _is_load(number, pieces, done)]
    counts = [number for number in numbers if number not in loads]
    if len(loads) == len(counts) == 1 and _more_reps(counts[0], pieces):
        return Logged((_anew(_at(done, loads[0]), int(counts[0].value)),), why="a set of the latest lift at its load")
    if len(loads) > 1 or len(counts) > 1 or not all(_counts_sets(number, pieces) for number in counts):
        return None
    count = int(counts[0].value) if counts else 1
    if loads and _is_far_below(loads[0], done):
        # "one more with 4" behind a hundred kilos: its reps; "another at 8" may tell how hard it was.
        reps = pieces[pieces.index(loads[0]) - 1].text != "at"
        return (
            Logged((_anew(done, int(loads[0].value)),) * count, why="reps of the latest set's load") if reps else None
        )
    if loads:
        return Logged((_at(done, loads[0]),) * count, why="the latest set at another load")
    return Act("repeat", exercise=done.exercise, count=count if counts else None) if K.NAME in kinds else None


def _is_put_on(piece: Piece, after: Piece, done: SetDone) -> bool:
    """ "2kg more", "another 5kg" and "noch 2,5 kg" behind a hundred: what is put on, and no set at it."""
    if piece.kind is K.NUMBER:
        return piece.role is Role.LOAD and after.kind is K.MORE
    loaded = done.load is not None and done.load.basis is not Basis.BODY and done.load.amount > 4 * after.value
    return piece.kind is K.ANOTHER and after.role is Role.LOAD and loaded


def _is_far_below(number: Piece, done: SetDone) -> bool:
    """Whether a bare number that would be a load is less than a fourth of the latest, and can be reps."""
    loaded = done.load is not None and done.load.basis is not Basis.BODY and done.load.amount > 4 * number.value
    return loaded and number.role is Role.BARE and may_count_reps(number)


def _more_reps(number: Piece, pieces: Sequence[Piece]) -> bool:
    """ "8 more at 40": more of them than anyone does sets."""
    after = pieces[pieces.index(number) + 1 :][:1]
    return number.value > MOST_SETS and [piece.kind for piece in after] == [K.MORE] and may_count_reps(number)


def _more_sets_of(pieces: Sequence[Piece], numbers: Sequence[Piece], done: SetDone) -> Logged | None:
    """ "two more sets of 4"."""
    if len(numbers) != 2 or K.MORE not in {piece.kind for piece in pieces}:
        return None
    count, reps = numbers
    before = pieces[pieces.index(reps) - 1]
    if before.kind not in (K.OF, K.MORE) or not _counts_sets(count, pieces) or not may_count_reps(reps):
        return None
    return Logged((_anew(done, int(reps.value)),) * int(count.value), why="more sets at the latest load")


def _is_load(number: Piece, pieces: Sequence[Piece], done: SetDone) -> bool:
    if number.role is Role.LOAD:
        return True
    at = pieces.index(number)
    before = pieces[at - 1] if at else None
    linked = before is not None and (before.kind in (K.AT, K.WITH) or "loadword" in CUES_OF[before.text])
    light = done.load is None or done.load.basis is Basis.BODY
    return number.role is Role.BARE and (linked or (not light and number.value > MOST_LOADED_REPS))


def _counts_sets(number: Piece, pieces: Sequence[Piece]) -> bool:
    at = pieces.index(number)
    more = at + 1 < len(pieces) and pieces[at + 1].kind in (K.MORE, K.SETS)
    whole = number.value == int(number.value) and 1 <= number.value <= MOST_SETS
    return (number.role is Role.SETS and number.value % 1 == 0) or (number.role is Role.BARE and more and whole)


def _at(done: SetDone, number: Piece) -> SetDone:
    old = done.load
    unit = number.unit or (old.unit if old else None)
    if old is None or unit is None:
        raise ValueError("no load to go on from")
    return replace(done, load=Load(number.value, unit, old.basis), effort=None, failure=False, missed=False)


def _changed(pieces: Sequence[Piece], done: SetDone) -> Logged | None:
    """ "up 5 for 3", "10 more for 3", "plus 5, 3 reps"."""
    numbers = [(at, piece) for at, piece in enumerate(pieces) if piece.kind is K.NUMBER]
    if len(numbers) != 2 or done.load is None:
        return None
    (first, delta), (second, reps) = numbers
    sign = _sign(pieces, first)
    between = pieces[first + 1 : second]
    parted = any(piece.kind in PARTING for piece in between)
    if sign < 0 and any(piece.kind is K.TIMES for piece in between):
        return None  # "drop 3x8" counts sets and reps
    others = [piece for at, piece in enumerate(pieces) if at not in (first, second)]
    if not sign or not parted or not all(piece.kind in CHANGING or _says_change(piece) for piece in others):
        return None
    if delta.value > MOST_CHANGE or delta.role not in (Role.BARE, Role.LOAD) or not may_count_reps(reps):
        return None
    if delta.unit not in (None, done.load.unit) or _counts_more_sets(pieces, first):
        return None
    if delta.unit is None and done.reps is not None and done.reps + sign * delta.value == reps.value:
        return None  # "80x8", then "added 2, got 10": reps were added
    if delta.spelled and delta.value == 1 and any(is_cued(piece.text, BY_WORD) for piece in others):
        return Logged(
            (_anew(done, int(reps.value)),), why="a set at a load that was not told"
        )  # "a lighter one for 10"
    load = replace(done.load, amount=done.load.amount + sign * delta.value)
    kind = SetKind.WORK if done.kind is SetKind.WARMUP else done.kind
    return Logged((SetDone(done.exercise, int(reps.value), load, kind=kind),), why="a change of the latest load")


def _counts_more_sets(pieces: Sequence[Piece], at: int) -> bool:
    """ "did 2 more, 5 in all": more sets; "10 more for 3", "2.5 more for 5" are heavier."""
    behind = pieces[at + 1 : at + 2]
    return bool(behind) and behind[0].kind is K.MORE and pieces[at].role is Role.BARE and pieces[at].value in (1, 2, 3)


PARTING = frozenset((K.FOR, K.COMMA, K.TIMES, K.GOT))
CHANGING = BESIDE | frozenset((K.MORE, K.TIMES, K.NAME, K.SAME, K.GOT, K.ADDED, K.BY, K.ASSISTED))


def _sign(pieces: Sequence[Piece], first: int) -> int:
    """1 where the number is put on the load, -1 where it is taken off: "added 5", "bumped it 5", "5 heavier"."""
    ahead = first - 1
    while ahead > 0 and pieces[ahead].kind in BETWEEN and not _says_change(pieces[ahead]):
        ahead -= 1
    before = pieces[ahead] if first and not _goes_to(pieces[ahead]) else None
    after = pieces[first + 1] if first + 1 < len(pieces) else None
    after = pieces[first + 2] if after is not None and after.kind in UNITS and first + 2 < len(pieces) else after
    word = before.text if before is not None else ""
    put_on = is_cued(word, UP) or (before is not None and before.kind is K.ADDED)
    if put_on or (after is not None and (after.kind is K.MORE or is_cued(after.text, PUT_ON))):
        return 1
    return -1 if is_cued(word, DOWN) or (after is not None and is_cued(after.text, DOWN)) else 0


BETWEEN = frozenset((K.FILLER, K.BY))
UNITS = frozenset((K.KG, K.LB))
PUT_ON = HEAVIER | {"add"}


def _goes_to(piece: Piece) -> bool:
    """ "dropped to 50" names the load itself, and no change of one."""
    return piece.kind is K.DROP and not is_one_word(piece)


def _says_change(piece: Piece) -> bool:
    return is_cued(piece.text, CHANGES)

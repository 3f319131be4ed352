"""What is said about the sets just told with numbers that are none of theirs, so that none of them changes.

about = "an" [ word ] NUMBER "/" ( 5 | 10 ) | NUMBER "rep max" | NUMBER "total" | NUMBER "pr"
      | "pr" ( "by" | "of" ) NUMBER
      | NUMBER "sets" ( "of" MUSCLE | "this week" | "today" | "so far" ) | NUMBER "x" "bodyweight"
      | NUMBER "%" "of" NUMBER | "did" NUMBER "things" | "last week" [ "was" ] NUMBER

What may be of the sets all the same is asked about: a record at another load, and how many sets it was so far.
"""

from __future__ import annotations

from collections.abc import Collection, Sequence
from decimal import Decimal
from itertools import pairwise

from engine.reading.corrections.nothing_changed import SETS_SO_FAR, nothing_changed, unclear
from engine.reading.corrections.said_to_be import in_full, is_be
from engine.reading.latest_sets import latest_of_it, run_of_it
from engine.reading.marks.earlier_sets import COMPARES
from engine.reading.prepare import Prepared
from engine.reading.values import Context, NoSets
from engine.reading.words.cues import any_cued, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role, first_word, kinds_in_order
from engine.values.sets import SetRecord

ABOUT_THE_SET = "talk: what is said about the sets that stand"
OF_MORE_THAN_IT = frozenset((K.NAME, K.QUESTION, K.AT, K.NOT, K.EFFORT, K.COMMA, K.STOP, K.LINE))
AN, RECORD, SUM, THINGS = (
    frozenset(("an", "anahead")),
    frozenset(("record",)),
    frozenset(("sumword",)),
    frozenset(("faults",)),
)
WEEK, SO_FAR, SET_BEFORE = frozenset(("week",)), frozenset(("sofar",)), frozenset(("previousone",))
COUNTS_SO_FAR = 9
"""What a NOTE piece's `told` says of "so far", "in the bank"."""
OF_TODAY = frozenset((K.TIMES, K.SAME, K.ANOTHER, K.TODAY))
PERCENT = "%"
TOPS = frozenset((5, 10))
NEITHER = Decimal(2)
"""How many times a number must be the load, or the load it, so that it is none. Common practice, no source."""


def numbers_about_it(prepared: Prepared, context: Context) -> NoSets | None:
    """Why nothing changes, where the numbers of the message are none of the sets; None for any other message."""
    others = OF_MORE_THAN_IT.intersection(prepared.told)
    if not context.recent or K.NUMBER not in prepared.told or not others <= {K.NAME}:
        return None
    pieces = in_full(prepared)
    if others:
        return _of_a_lift_so_far(pieces, prepared)
    numbers = [at for at, piece in enumerate(pieces) if piece.kind is K.NUMBER]
    if len(numbers) > 2:
        return None
    last = pieces[numbers[-1]]
    if len(numbers) == 2:
        return _of_two_numbers(pieces, numbers, prepared)
    if _is_of_things(pieces[numbers[0] :]) or _is_of_times_past(pieces, numbers[0], prepared.told):
        return NoSets(why=ABOUT_THE_SET)
    if not any(map(is_be, pieces)):
        return None
    if last.role is Role.SETS:
        return _counted_so_far(pieces, last, prepared, context)
    return _of_the_load(pieces, numbers[0], prepared, context)


def _of_two_numbers(pieces: Sequence[Piece], numbers: Sequence[int], prepared: Prepared) -> NoSets | None:
    """A score, or a share of another load."""
    if not any(map(is_be, pieces)):
        return None
    share = PERCENT in pieces[numbers[0]].text and pieces[numbers[1] - 1].kind is K.OF
    if share or _is_a_score(pieces, numbers):
        return NoSets(why=ABOUT_THE_SET)
    return unclear(prepared) if _is_some_score(pieces, numbers) else None


def _of_a_lift_so_far(pieces: Sequence[Piece], prepared: Prepared) -> NoSets | None:
    """ "that's 5 sets of bench today": of all of today, which may be more than stand."""
    counts = [piece for piece in pieces if piece.kind is K.NUMBER and piece.role is Role.SETS]
    behind = len(counts) == 1 and K.NAME in [piece.kind for piece in pieces[pieces.index(counts[0]) :]]
    so_far = behind and K.TODAY in prepared.told and any(map(is_be, pieces))
    return nothing_changed(prepared, SETS_SO_FAR) if so_far and K.TIMES not in prepared.told else None


def _is_a_score(pieces: Sequence[Piece], numbers: Sequence[int]) -> bool:
    """ "an 8/10", "a 5/5": how hard it was, or how well it went; "8/10" alone may be a day."""
    first, last = numbers
    of_the_top = pieces[last].value in TOPS and pieces[first].value <= pieces[last].value
    return of_the_top and _is_some_score(pieces, numbers)


def _is_some_score(pieces: Sequence[Piece], numbers: Sequence[int]) -> bool:
    """ "a 7/8": no day has an article."""
    first, last = numbers
    slashed = last == first + 2 and pieces[first + 1].kind is K.SLASH
    return slashed and any(is_cued(piece.text, AN) for piece in pieces[:first])


def _is_of_things(pieces: Sequence[Piece]) -> bool:
    """ "did 3 things wrong"."""
    return len(pieces) > 1 and is_cued(pieces[1].text, THINGS) and pieces[0].role is Role.BARE


def _is_of_times_past(pieces: Sequence[Piece], at: int, told: Collection[K]) -> bool:
    """ "last week it was 7", "last time 7": what was done then. "95 up from last week" and "8 like
    last week" are of today.
    """
    past = next((place for place, piece in enumerate(pieces) if _names_times_past(piece)), len(pieces))
    said = past < at or (past < len(pieces) and any(map(is_be, pieces)))
    return said and OF_TODAY.isdisjoint(told)


def _names_times_past(piece: Piece) -> bool:
    earlier = piece.kind is K.EARLIER and piece.told != COMPARES and not is_cued(first_word(piece), SET_BEFORE)
    return earlier or (piece.kind is K.LAST_TIME and not piece.told)


def _counted_so_far(pieces: Sequence[Piece], number: Piece, prepared: Prepared, context: Context) -> NoSets | None:
    """ "that's 10 sets of chest this week", which are not all of the lift; "that's 5 sets today", which may be."""
    words = [word for piece in pieces for word in piece.text.split()]
    if K.MUSCLE in prepared.told or any_cued(words, WEEK):
        return NoSets(why=ABOUT_THE_SET)
    so_far = K.TODAY in prepared.told or any_cued(words, SO_FAR)
    so_far = so_far or any(piece.kind is K.NOTE and piece.told == COUNTS_SO_FAR for piece in pieces)
    if so_far and number.value in (len(run_of_it(context)), len(latest_of_it(context))):
        return NoSets(why=ABOUT_THE_SET)
    return nothing_changed(prepared, SETS_SO_FAR) if so_far else None


def _of_the_load(pieces: Sequence[Piece], at: int, prepared: Prepared, context: Context) -> NoSets | None:
    """A sum, a record, or so many times the body's weight."""
    number, kinds = pieces[at], kinds_in_order(pieces)
    if any(a is K.TIMES and b is K.BODY for a, b in pairwise(kinds)) or (
        number.role is Role.TIMES and kinds[at + 1 : at + 2] == [K.BODY]
    ):
        return NoSets(why=ABOUT_THE_SET)
    load = context.recent[-1].done.load
    if K.TOTAL in kinds or any(is_cued(word, SUM) for piece in pieces for word in piece.text.split()):
        if number.value in _sums(context):
            return NoSets(why=ABOUT_THE_SET)
        far = load is not None and number.value >= NEITHER * load.amount
        return unclear(prepared) if far else None  # "it was 200 total": both sides of it, or another load
    most_reps = kinds[at + 1 : at + 2] == [K.MAX] or number.role is Role.UNREADABLE  # "a 5rm"
    if not (most_reps or _tells_a_record(pieces, at)):
        return None
    if number.role is Role.REPS or most_reps:
        return NoSets(why=ABOUT_THE_SET) if number.value == context.recent[-1].done.reps else unclear(prepared)
    if load is None or number.value == load.amount or number.value * NEITHER < load.amount:
        return NoSets(why=ABOUT_THE_SET)
    return unclear(prepared)


def _tells_a_record(pieces: Sequence[Piece], at: int) -> bool:
    """ "a 5kg pr", "an 8 rep pr", "a pr by 2", "un record de 5kg"; "a pr, 85" tells its load."""
    behind = [piece for piece in pieces[at + 1 :] if piece.kind is not K.REPS][:1]
    ahead = pieces[max(at - 2, 0) : at]
    by = len(ahead) == 2 and ahead[1].kind in (K.BY, K.OF) and is_cued(first_word(ahead[0]), RECORD)
    return by or any(is_cued(first_word(piece), RECORD) for piece in behind)


def _sums(context: Context) -> set[Decimal]:
    """The reps of the sets that may be meant, and what was lifted with them."""
    groups: list[list[SetRecord]] = [latest_of_it(context), run_of_it(context)]
    reps = {Decimal(sum(one.done.reps for one in group)) for group in groups}
    loads = [
        sum((one.done.reps * one.done.load.amount for one in group if one.done.load), Decimal(0)) for group in groups
    ]
    return reps | set(loads)

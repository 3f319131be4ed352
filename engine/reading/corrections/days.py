"""Sets moved to the day they were done: "that was yesterday", "both were tuesday", "move it to 12/03".

day = a day in words | NUMBER "/" NUMBER | NUMBER "." NUMBER | ORDINAL [ "of" ] [ MONTH ] | MONTH NUMBER
A weekday is the latest past one; a day of a month the latest such day. Nothing is moved ahead.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta
from typing import NamedTuple

from engine.reading.corrections.correcting import Told, cue_at
from engine.reading.corrections.parts import Part, part_told, sets_of
from engine.reading.corrections.said_to_be import is_be
from engine.reading.corrections.sets_having import having
from engine.reading.days.calendar_days import DAYS_OF_A_WEEK, in_year, latest_of_month
from engine.reading.days.dates import with_dates
from engine.reading.days.day_starts import DATE_KINDS
from engine.reading.latest_sets import last_message, run_of_it
from engine.reading.values import Context, Correction
from engine.reading.words.cues import CUES_OF, any_cued, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.lexicon import lexicon, plain_word
from engine.reading.words.pieces import Piece, Role, first_word, kinds_in_order
from engine.values.load import Unit
from engine.values.sets import SetRecord

DEMONSTRATIVE = frozenset(("that", "it", "this", "those", "these", "them", "they", "all", "both", "everything"))
OF_A_DAY = frozenset(("day", "session", "workout", "training", "gym"))
ASIDE = frozenset(("aside",))
OF_ALL = frozenset(("whole", "entire"))
ASKED_WHOLE = frozenset(("all", "everything", "whole"))
NOT_MOVED = frozenset((K.QUESTION, K.TOMORROW, K.TIMES))
MONTHS = 12
FURTHEST_BACK = timedelta(days=60)
"""A day in numbers alone that is further back is asked of no correction: "that was 7.5" in March. Common practice, no
source.
"""
FURTHEST_OUT_OF_TEN, OUT_OF = timedelta(days=14), 10
"""The same for "that was 8/10", which may be how hard it was. Common practice, no source."""
ABOUT_DAYS = frozenset(
    (K.FILLER, K.NAME, K.BOTH, K.LAST, K.FIRST, K.ORDINAL, K.NOT, K.AND, K.SETS, K.HEADING, K.STOP, K.COMMA, K.ONLY,
     K.FOR, K.OF, K.NOT_DATE, K.MIDDLE, K.COLON, K.WITH, K.OTHERS, K.NEVER, K.DATE, K.TODAY, K.THEN, K.EXTRA,
     K.FROM_LAST)
)  # fmt: skip


class Day(NamedTuple):
    """`returns`: a weekday, so that it may be a week earlier."""

    day: date
    returns: bool
    start: int
    end: int


def moved(told: Told) -> Correction | None:
    """The sets meant, on the day told."""
    context = told.context
    if not told.pieces or told.kinds() & NOT_MOVED or told.of_others() or context.now is None or not _is_cued(told):
        return None
    if _leaves_a_lift_out(told) or _tells_two_days(told):
        return None
    found = day_in_words(told, told.pieces) or _in_numbers(told)
    if found is None or _tells_of_several(told) or _is_rather_a_number(found, told):
        return None
    ahead = [piece for piece in told.pieces[: found.start] if not _is_also(piece, told)]
    rest = [*ahead, *_without_remark(told.pieces[found.end :], told)]
    pointed = _at_a_load(rest, told)
    rest = [piece for piece in rest if piece is not pointed]
    placed = _is_placed(told)
    words = [piece for piece in _uncounted(rest) if not (placed and is_cued(piece.text, PLACING))]
    if not all(piece.kind in ABOUT_DAYS or is_be(piece) or is_move_word(piece, told) for piece in words):
        return None
    if any(piece.kind is K.HEADING and piece.text not in OF_A_DAY and not _is_a_part_of(piece, told) for piece in rest):
        return None
    part = _part_of(rest, pointed, told)
    sets = [] if part.missing or part.named_unknown else _meant(told, part)
    day = found.day
    if (
        sets
        and found.returns
        and sets[-1].on != context.now.date()
        and context.plan
        and (placed or told.starts("move"))
    ):
        return None  # rather today's session, to a day ahead
    if found.returns and sets and day == sets[-1].on == context.now.date():
        day -= timedelta(days=DAYS_OF_A_WEEK)
    sets = [record for record in sets if record.on != day]
    return Correction(moved=tuple((record, day) for record in sets)) if sets and day <= context.now.date() else None


def _uncounted(rest: Sequence[Piece]) -> list[Piece]:
    """The pieces without the number of "the last two", "first 3"."""
    ahead = [None, *kinds_in_order(rest)]
    told = zip(rest, ahead, strict=False)
    return [piece for piece, before in told if piece.kind is not K.NUMBER or before not in ENDS]


ENDS = frozenset((K.LAST, K.FIRST))


def _tells_two_days(told: Told) -> bool:
    """ "that was monday or tuesday", "the last to yesterday and the first to monday"; not "tuesday not today"."""
    kinds = kinds_in_order(told.pieces)
    stop = kinds.index(K.NOT) if K.NOT in kinds[1:] else len(kinds)
    places = [at for at in range(stop) if not is_cued(told.pieces[at].text, OF_A_DAY_PAST)]  # "di" is Dienstag, too
    days = [found.day for at in places if (found := day_in_words(told, told.pieces[at : at + 1])) is not None]
    today = told.context.now.date() if told.context.now else None
    return len({*days} - {today}) > 1


def _part_of(rest: Sequence[Piece], pointed: Piece | None, told: Told) -> Part:
    """What the words around the day point at; `pointed`: the load that does."""
    part = part_told([piece for piece in rest if piece.text != "log"], told.context)
    part.whole = part.whole or not OF_ALL.isdisjoint(told.words)
    if pointed is not None:
        part.places = having(pointed._replace(role=Role.LOAD), sets_of(part, told.context))
    return part


def _at_a_load(rest: Sequence[Piece], told: Told) -> Piece | None:
    """The number of "the 100s were yesterday", "the 90 was monday", where sets stand at that load."""
    numbers = [at for at, piece in enumerate(rest) if piece.kind is K.NUMBER]
    if len(numbers) != 1 or not 0 < numbers[0] < len(rest) - 1 or not is_be(rest[numbers[0] + 1]):
        return None
    number = rest[numbers[0]]
    article = any("the" in CUES_OF[word] for word in rest[numbers[0] - 1].text.split()[-1:])
    loads = [record.done.load for record in sets_of(Part(), told.context)]
    stands = any(load is not None and load.amount == number.value for load in loads)
    return number if article and stands and number.role in (Role.BARE, Role.PLURAL, Role.LOAD) else None


def _leaves_a_lift_out(told: Told) -> bool:
    """ "no squats on monday": what will not be done, and no day of what was; "no, squats were on monday" is one."""
    first = told.pieces[0] if told.pieces else None
    return told.retracted and first is not None and first.kind is K.NAME and not any(map(is_be, told.pieces))


def _is_rather_a_number(found: Day, told: Told) -> bool:
    """ "that was 7.5" in March: a day and a month that are so long ago are rather a load, or reps."""
    word, now = told.pieces[found.start].text, told.context.now
    dotted = word.count(".") == 1 and word.replace(".", "").isdecimal()
    dotted = dotted or K.SLASH in [piece.kind for piece in told.pieces[found.start : found.end]]
    asked = bool(told.starts("move") or told.has("move"))
    first, last = told.pieces[found.start], told.pieces[found.end - 1]
    of_ten = dotted and first.value <= last.value == OUT_OF
    furthest = FURTHEST_OUT_OF_TEN if of_ten else FURTHEST_BACK
    return now is not None and dotted and not asked and found.day < now.date() - furthest


def _is_a_part_of(piece: Piece, told: Told) -> bool:
    """ "wednesday morning": the part of the day stands right behind it."""
    at = told.pieces.index(piece)
    ahead = told.pieces[at - 1] if at else None
    dated = ahead is not None and (ahead.day is not None or ahead.kind in DATE_KINDS)
    return dated and is_cued(piece.text, PART_OF_DAY)


PART_OF_DAY = frozenset(("partofday",))


def _without_remark(behind: Sequence[Piece], told: Told) -> list[Piece]:
    """What stands behind the day, without "too" and without talk set apart: "were yesterday, posting late"."""
    for at, piece in enumerate(behind):
        if piece.kind in APART and not SAYING_MORE & {one.kind for one in behind[at:]}:
            behind = behind[:at]
            break
    return [piece for piece in behind if not _is_also(piece, told)]


def _is_also(piece: Piece, told: Told) -> bool:
    return plain_word(piece.text) in told.book.cues["also"]


APART = frozenset((K.COMMA, K.DASH, K.STOP, K.OPEN))
SAYING_MORE = frozenset((K.EFFORT, K.RPE, K.RIR, K.FAILURE, K.WARMUP,
                         K.NUMBER, K.COUNT, K.NAME, K.NOT, K.NEVER, K.ONLY, K.EXCEPT, K.LAST, K.FIRST, K.ORDINAL,
                         K.FUTURE, K.DATE, *DATE_KINDS))  # fmt: skip


def _is_cued(told: Told) -> bool:
    if _asks(told) or (told.starts("move") and _goes_to_plan(told)) or _asks_for_all_of_today(told):
        return False
    if _is_placed(told):
        return True
    also = told.has("also") and K.NAME in told.kinds()  # "squats also yesterday"
    if told.has("mean") or (_names_a_past_day(told) and (_is_for_a_day(told.pieces) or any_cued(told.words, ASIDE))):
        return True  # "yesterday i mean", "for yesterday", "its for yesterday", "yesterday btw"
    if len(told.pieces) == OF_THAT_DAY and is_cued(told.pieces[0].text, OF_A_DAY_PAST) and _names_a_past_day(told):
        return True  # "from yesterday"
    if len(told.pieces) == DENIED and told.pieces[1].kind is K.NOT and told.kinds() <= DAY_DENIED:
        return True
    if told.slipped or also or told.starts("move") or told.starts("make") or told.has("move"):
        return True
    return any(is_be(piece) for piece in told.pieces) or any(word in DEMONSTRATIVE for word in told.words)


def _is_placed(told: Told) -> bool:
    """ "put the chins on monday", "leg die Klimmzüge auf Montag": a lift and a day behind a word for putting."""
    return (
        is_cued(first_word(told.pieces[0]), PLACING)
        and K.NAME in told.kinds()
        and day_in_words(told, told.pieces) is not None
    )


PLACING = frozenset(("placing", "underday"))


def _is_for_a_day(pieces: Sequence[Piece]) -> bool:
    kinds = [piece.kind for piece in pieces[:2]]
    return kinds[:1] == [K.FOR] or kinds == [K.FILLER, K.FOR]


OF_A_DAY_PAST, OF_THAT_DAY = frozenset(("ofaday",)), 2
DAY_DENIED = frozenset((K.DATE, K.NOT, K.TODAY, K.YESTERDAY))
"""What "yesterday, not today" holds."""
DENIED = 3


def _asks(told: Told) -> bool:
    """ "did i do this wednesday", "was that yesterday": a question, as its words stand."""
    turned = len(told.words) > 1 and is_be(told.pieces[0]) and told.words[1] in DEMONSTRATIVE
    return told.pieces[0].kind is K.ASKS or (turned and told.words[0] == told.pieces[0].text)


def _names_a_past_day(told: Told) -> bool:
    now = told.context.now
    return now is not None and any(piece.day is not None and piece.day < now.date() for piece in told.pieces)


def _asks_for_all_of_today(told: Told) -> bool:
    """ "today all": the whole of a long session is asked for, as its card says."""
    first, now = told.pieces[0], told.context.now
    day = with_dates([first], now, told.context.unit)[0].day if first.kind in DATE_KINDS else first.day
    return now is not None and day == now.date() and len(told.words) > 1 and ASKED_WHOLE.issuperset(told.words[1:])


def _goes_to_plan(told: Told) -> bool:
    """ "move to fri" on a day without sets yet: the session is meant, where there is a plan."""
    context = told.context
    objectless = not any(word in DEMONSTRATIVE for word in told.words) and K.NAME not in told.kinds()
    today = context.now.date() if context.now else None
    return objectless and bool(context.plan) and context.recent[-1].on != today


def is_move_word(piece: Piece, told: Told) -> bool:
    """Whether the word is one that moves sets: "move", "belongs"."""
    words = {word for phrase in told.book.cues["move"] for word in phrase.split()}
    return all(plain_word(word).replace("'", "") in words for word in piece.text.split())


def _tells_of_several(told: Told) -> bool:
    """ "squats today but the rows were on wed": a day for each of two lifts."""
    kinds = [piece.kind for piece in told.pieces]
    denied = K.NOT in kinds or K.NEVER in kinds
    return kinds.count(K.NAME) > 1 and kinds.count(K.DATE) + kinds.count(K.TODAY) > 1 and not denied


def day_in_words(told: Told, pieces: Sequence[Piece]) -> Day | None:
    """The last day in words that is not denied: "tuesday not today"."""
    stop = next((at for at, p in enumerate(pieces) if p.kind is K.NOT and at), len(pieces))
    found = None
    for at, piece in enumerate(pieces[:stop]):
        day = piece.day
        if piece.kind in DATE_KINDS:
            day = with_dates([piece], told.context.now, told.context.unit)[0].day
        if day is not None:
            found = Day(day, _is_weekday(piece), at, at + 1)
    return found


def _is_weekday(piece: Piece) -> bool:
    meaning = lexicon().phrases.get(plain_word(piece.text))
    return meaning is not None and meaning.kind is K.WEEKDAY


def _in_numbers(told: Told) -> Day | None:
    placed = told.starts("move") or cue_at(told.words, 0, told.book.cues["be"]) or told.slipped or told.has("move")
    if not placed or told.context.now is None:
        return None
    today = told.context.now.date()
    for at in range(len(told.pieces)):
        for reads in (_slashed, _dotted, _ordinal, _month_first):
            found = reads(told.pieces[at : at + 5], today, told.context)
            if found is not None:
                return found._replace(start=at, end=at + found.end)
    return None


def _slashed(pieces: Sequence[Piece], today: date, context: Context) -> Day | None:
    if len(pieces) < 3 or [piece.kind for piece in pieces[:3]] != [K.NUMBER, K.SLASH, K.NUMBER]:
        return None
    if any(piece.role is not Role.BARE for piece in (pieces[0], pieces[2])) or len(pieces) > 3:
        return None
    first, second = int(pieces[0].value), int(pieces[2].value)
    day, month = (second, first) if context.unit is Unit.LB else (first, second)
    day, month = (month, day) if month > MONTHS else (day, month)
    return _told(in_year(day, month, None, today), 3)


def _dotted(pieces: Sequence[Piece], today: date, context: Context) -> Day | None:
    piece = pieces[0]
    if piece.kind is not K.NUMBER or piece.role is not Role.BARE or piece.text.count(".") != 1:
        return None
    behind = [one.kind for one in pieces[1:]]
    if behind not in ([], [K.STOP]):
        return None
    day, month = piece.text.split(".")
    return _told(in_year(int(day), int(month), None, today), 1 + len(behind)) if (day + month).isdigit() else None


def _ordinal(pieces: Sequence[Piece], today: date, context: Context) -> Day | None:
    """ "the 12th", "the 12th of march", "12 march"."""
    piece = pieces[0]
    month = next((at for at, one in enumerate(pieces) if one.kind is K.MONTH), None)
    if month is not None and piece.kind in (K.ORDINAL, K.NUMBER) and piece.role is Role.BARE:
        return _told(in_year(piece.told or int(piece.value), pieces[month].told, None, today), month + 1)
    if piece.kind is not K.ORDINAL or len(pieces) > 1 or not piece.text[0].isdigit():
        return None
    return _told(latest_of_month(piece.told, today), 1)


def _month_first(pieces: Sequence[Piece], today: date, context: Context) -> Day | None:
    if len(pieces) < 2 or pieces[0].kind is not K.MONTH or pieces[1].kind not in (K.NUMBER, K.ORDINAL):
        return None
    return _told(in_year(pieces[1].told or int(pieces[1].value), pieces[0].told, None, today), 2)


def _told(day: date | None, end: int) -> Day | None:
    return None if day is None else Day(day, False, 0, end)


def _meant(told: Told, part: Part) -> list[SetRecord]:
    context = told.context
    if part.places:
        return part.places
    if part.named:
        names = {name for piece in told.pieces if piece.kind is K.NAME for name in piece.names}
        day = sets_of(part, context)[-1].on
        return [record for record in context.recent if record.done.exercise in names and record.on == day]
    if part.both:
        messages = list(dict.fromkeys(record.message for record in context.recent))[-2:]
        return [record for record in context.recent if record.message in messages]
    latest = context.recent[-1]
    if part.whole:
        return [record for record in context.recent if record.on == latest.on]
    several = last_message(context)
    return several if len(several) > 1 or not told.plural else run_of_it(context)

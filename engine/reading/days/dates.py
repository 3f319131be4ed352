"""Days told in words or numbers: an anchored grammar, and one way out to a general parser behind an explicit marker.

day = "today" | "yesterday" | WEEKDAY | NUMBER "days ago" | ISO | d/m | d.m. | NUMBER MONTH | MONTH NUMBER
    | ORDINAL [ "of" ] MONTH | ORDINAL ( ":" | line end ) NAME | "on" ORDINAL NAME
A day counts where it stands at the start of a line, or behind the sets; "sore from monday" is no day.
The general parser costs hundreds of microseconds and takes "80.5" for a date: it never sees set text.
"""

from __future__ import annotations

from datetime import date, datetime, timedelta

from engine.reading.days.calendar_days import (
    WORD_DAYS,
    in_year,
    latest_of_month,
    weekday_before,
)
from engine.reading.days.day_headings import in_turn
from engine.reading.days.day_pieces import NO_DAY, Doubted, Found, as_day
from engine.reading.days.day_places import (
    ON_A_DAY,
    behind_session,
    between_name_and_number,
    closes_the_sets,
    ends_here,
    follows_an_opening,
    is_from,
    opens_a_clause,
    past_who_did,
)
from engine.reading.days.day_starts import DATE_KINDS, opens_a_line, perhaps_days
from engine.reading.days.days_apart import with_days_apart
from engine.reading.days.days_back import with_days_back
from engine.reading.days.days_in_figures import dotted_day, iso_day, joined, slashed_day
from engine.reading.days.headed_days import BELOW_A_DAY, LAST_DAY_OF_A_MONTH, is_before_a_month, stands_apart
from engine.reading.days.ordinals import MOST_SETS_PLACED, is_a_day_amid, is_plainly_a_day, may_be_a_day
from engine.reading.days.short_dates import told_before
from engine.reading.days.told_of import (
    is_an_entry_from,
    is_hardly_theirs,
    is_of_something_else,
    linked_at,
    may_be_of_the_sets,
    may_start_then,
    opens_with_sleep,
    stands_among_sets,
)
from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.lexicon import lexicon, plain_word
from engine.reading.words.pieces import Piece, Role, is_one_word
from engine.values.load import Unit

FURTHEST_BACK = timedelta(days=400)
LONGEST_DATE_TEXT = 24
BEHIND_A_DAY = frozenset((K.COLON, K.COMMA, K.DASH, K.LINE))
FELT = frozenset((K.NOTE, K.PAIN, K.SORE, K.DENIED))
PLAINLY_DAYS = frozenset(("sat", "sun"))
SHORT_WORDS = frozenset(("di", "mi", "mo", "fr", "so", "do", "sat", "sun", "so."))


def with_dates(pieces: list[Piece], now: datetime | None, unit: Unit) -> list[Piece]:
    """The pieces with each day that is told made one DATE piece (its `day` None where today is not known)."""
    pieces = with_days_back(pieces)
    out: list[Piece] = []
    behind = seen = 0
    anchored = True
    for at in perhaps_days(pieces):
        if at < behind:
            continue
        anchored, seen = opens_a_line(pieces, at, seen, anchored), at
        found = _date_at(pieces, at, now, unit, anchored) if _may_be_date(pieces, at, anchored) else None
        if found is None:
            if pieces[at].text in SHORT_WORDS or not may_be_of_the_sets(pieces, at):
                if _said_last(pieces, at) and pieces[at].kind is K.WEEKDAY:
                    out += [*pieces[behind : at - 1], pieces[at]]  # "sore from last friday" tells of no last set
                    behind = at + 1
                continue
            found = Doubted(_by_word(pieces, at, now.date() if now is not None else None)), at + 1
        day, end = found
        out += pieces[behind:at]
        if out and _belongs_to_a_day(out[-1], pieces, at):
            out.pop()
        out.append(as_day(pieces[at], day, now, pieces[end - 1].end))
        behind = seen = end
    if not behind:
        return pieces
    out += pieces[behind:]
    return with_days_apart(in_turn(out, now.date()), now.date()) if now is not None else out


def _belongs_to_a_day(before: Piece, pieces: list[Piece], at: int) -> bool:
    """ "last monday", "il 20 novembre"."""
    if before.kind is K.LAST:
        return pieces[at].kind is not K.YESTERDAY and pieces[at].kind is not K.TODAY
    return at > 0 and before is pieces[at - 1] and _is_of_two_senses(pieces, at)


def _may_be_date(pieces: list[Piece], at: int, anchored: bool) -> bool:
    piece = pieces[at]
    if piece.kind is K.ORDINAL:
        in_figures = piece.text[:1].isdigit() and is_one_word(piece)  # not "2nd set"
        if in_figures and (_is_of_a_month(pieces, at) or _stands_behind_sets(pieces, at)):
            return True
        return (in_figures and (anchored or _said_on(pieces, at))) or (anchored and _weekday_at(pieces, at) is not None)
    if piece.kind is not K.NUMBER:
        return piece.kind in DATE_KINDS
    return anchored or len(piece.text) == 4 or _said_on(pieces, at) or stands_apart(pieces, at)


def _stands_behind_sets(pieces: list[Piece], at: int) -> bool:
    """ "squat 3x5 100 20th": more than sets or lifts are counted to."""
    return pieces[at].told > MOST_PLACES and kind_at(pieces, at - 1) is K.NUMBER and ends_here(pieces, at + 1)


MOST_PLACES = 10
"""Sets and lifts that are told by their place. Common practice, no source."""


def _is_of_a_month(pieces: list[Piece], at: int) -> bool:
    """ "2nd of march", "2nd march"."""
    behind = [piece.kind for piece in pieces[at + 1 : at + 3]]
    return behind[:1] == [K.MONTH] or behind == [K.OF, K.MONTH]


def _said_on(pieces: list[Piece], at: int) -> bool:
    """ "on 12/03", "on 1 march 1990": an "on" stands before it."""
    if at > 0 and pieces[at - 1].kind is K.OPEN:
        return at + 1 < len(pieces) and K.MONTH in (pieces[at].kind, pieces[at + 1].kind)
    linked = at > 0 and (pieces[at - 1].kind in (K.FILLER, K.OF) or _is_of_two_senses(pieces, at))
    return linked and is_cued(pieces[at - 1].text, ON_A_DAY)


def _is_of_two_senses(pieces: list[Piece], at: int) -> bool:
    """ "il 20 novembre", "op 20 november": words of other senses that lead to a day of a month."""
    return pieces[at - 1].kind in (K.OTHERS, K.WITH) and kind_at(pieces, at + 1) is K.MONTH


def _date_at(pieces: list[Piece], at: int, now: datetime | None, unit: Unit, anchored: bool) -> Found | None:
    piece = pieces[at]
    link = linked_at(pieces, at)
    if link >= 0 and pieces[link].kind is K.NOT_DATE and not _is_from(pieces, at, link, anchored):
        return None
    today = now.date() if now else None
    if piece.kind is K.NUMBER:
        return _numeric(pieces, at, today, unit, anchored)
    if piece.kind is K.ORDINAL:
        weekday = _weekday_at(pieces, at)
        if weekday is not None:
            return (weekday_before(today, weekday) if today else None), at + 1
        return _of_this_month(pieces, at, today)
    if not _is_placed(pieces, at, anchored):
        return None
    in_doubt = piece.kind is K.WEEKDAY and _is_in_doubt(pieces, at, anchored)
    if piece.text in SHORT_WORDS and not in_doubt and not _is_short_day(pieces, at, anchored):
        return None
    if piece.kind not in WORD_DAYS:
        return _month_first(pieces, at, today)
    day = _by_word(pieces, at, today)
    return (Doubted(day) if in_doubt or (piece.kind is K.WEEKDAY and may_start_then(pieces, at)) else day), at + 1


def _by_word(pieces: list[Piece], at: int, today: date | None) -> date | None:
    """The latest day that the word here tells."""
    return WORD_DAYS[pieces[at].kind](pieces[at], today, _said_last(pieces, at)) if today else None


def _is_from(pieces: list[Piece], at: int, link: int, anchored: bool) -> bool:
    return is_from(pieces, at, link, anchored) or is_an_entry_from(pieces, at, link)


def _is_placed(pieces: list[Piece], at: int, anchored: bool) -> bool:
    """Whether a day in words stands where days are told."""
    if (pieces[at].kind is K.TODAY and at and pieces[at - 1].kind in FELT) or is_of_something_else(pieces, at):
        return False  # "tired today"
    if anchored or between_name_and_number(pieces, at):
        return not opens_with_sleep(pieces, at)
    if ends_here(pieces, at + 1) or (pieces[at].kind is K.MONTH and _ends_with_its_day(pieces, at)):
        return not is_hardly_theirs(pieces, at)
    said_on = pieces[at].kind is K.MONTH and _said_on(pieces, at)
    if said_on or follows_an_opening(pieces, at) or closes_the_sets(pieces, at) or opens_a_clause(pieces, at):
        return True
    return stands_among_sets(pieces, at)


def _ends_with_its_day(pieces: list[Piece], at: int) -> bool:
    """ "squat 3x5 100 mar 2", "squat 3x5 100 mar 2 2026"."""
    end = at + 2
    if kind_at(pieces, at + 1) not in DAYS_OF_A_MONTH or pieces[at + 1].value > LAST_DAY_OF_A_MONTH:
        return False
    return ends_here(pieces, end + (end < len(pieces) and _is_year(pieces[end])))


DAYS_OF_A_MONTH = frozenset((K.NUMBER, K.ORDINAL))


def _weekday_at(pieces: list[Piece], at: int) -> int | None:
    """The day of the week that an ordinal in words is where a lift stands behind it: "quinta: supino 3x8 60"."""
    weekday = lexicon().also_weekdays.get(plain_word(pieces[at].text))
    ahead = at + 1
    while ahead < len(pieces) and pieces[ahead].kind in BEHIND_A_DAY:
        ahead += 1
    return weekday if ahead < len(pieces) and pieces[ahead].kind in BELOW_A_DAY else None


def _is_in_doubt(pieces: list[Piece], at: int, anchored: bool) -> bool:
    """ "mo squat 3x5 100", "squat 3x5 100 ter": a day cut short, or a name or a word of another language."""
    short = pieces[at].text in SHORT_WORDS and pieces[at].text not in PLAINLY_DAYS
    another = is_cued(pieces[at].text, ANOTHER_WORD)
    heads = anchored and kind_at(pieces, at + 1) is K.NAME and kind_at(pieces, at + 2) is K.NUMBER
    return ((short or another) and heads) or (another and ends_here(pieces, at + 1))


ANOTHER_WORD = frozenset(("shortdayindoubt",))


def _is_short_day(pieces: list[Piece], at: int, anchored: bool) -> bool:
    """Whether "mo" or "sat" is a day: a sign or the line's end stands behind it, or a date: "mo 10.3."."""
    behind = tuple([piece.kind for piece in pieces[at + 1 : at + 3]])
    dated = behind in DATES_BEHIND
    heads = anchored or follows_an_opening(pieces, at) or (opens_a_clause(pieces, at) and told_before(pieces, at))
    if pieces[at].text in PLAINLY_DAYS:
        ahead = behind_session(pieces, past_who_did(pieces, at + 1))
        named = [piece.kind for piece in pieces[ahead : ahead + 1]] in BEHIND_A_SHORT_DAY
        said_on = at > 0 and is_cued(pieces[at - 1].text, ON_A_DAY)
        if ((heads or said_on) and named) or closes_the_sets(pieces, at):
            return True
    headed = dated or _colon_at(pieces, behind_session(pieces, at + 1))
    return (heads and headed) or ends_here(pieces, at + 1) or _in_brackets(pieces, at)


BEHIND_A_SHORT_DAY = ([K.NAME], [K.NUMBER], [K.COUNT], [K.WITH], [K.WARMUP], [K.BAR])


def _in_brackets(pieces: list[Piece], at: int) -> bool:
    around = [piece.kind for piece in pieces[at - 1 : at + 2]] if at else []
    return around == [K.OPEN, pieces[at].kind, K.CLOSE]


DATES_BEHIND = frozenset(
    (
        (K.NUMBER, K.STOP),
        (K.NUMBER, K.SLASH),
        (K.NUMBER, K.MONTH),
        (K.MONTH, K.NUMBER),
        (K.MONTH, K.ORDINAL),
        (K.ORDINAL, K.MONTH),
        (K.ORDINAL, K.OF),
    )
)


def _said_last(pieces: list[Piece], at: int) -> bool:
    return at > 0 and pieces[at - 1].kind is K.LAST


def _colon_at(pieces: list[Piece], at: int) -> bool:
    return at < len(pieces) and pieces[at].kind in (K.COLON, K.COMMA, K.DASH)


def _numeric(pieces: list[Piece], at: int, today: date | None, unit: Unit, anchored: bool) -> Found | None:
    said_on = _said_on(pieces, at) or (today is not None and stands_apart(pieces, at))
    anchored = anchored or said_on
    numbers, signs, end = joined(pieces, at)
    pointed = end + 1 < len(pieces) and is_before_a_month(pieces[end]) and pieces[end + 1].kind is K.MONTH
    end += pointed  # "8. März", "10 de marzo"
    after = pieces[end].kind if end < len(pieces) else None
    if len(numbers) == 1 and after is K.MONTH and anchored:
        return _behind_month(pieces, end + 1, int(numbers[0].value), pieces[end].told, today)
    if after is K.TIMES or any(number.role is not Role.BARE for number in numbers):
        return None
    if signs == "--" and len(numbers[0].text) == 4 and numbers[0].text.isdigit():
        return iso_day(numbers, end)
    if not anchored:
        return None
    return dotted_day(numbers, pieces, at, today) or slashed_day(numbers, signs, pieces, at, today, unit, said_on)


def _of_this_month(pieces: list[Piece], at: int, today: date | None) -> Found | None:
    """ "12th march", "on the 12th: squat": the latest such day. "2nd set", "the 3rd: 9" tell of sets."""
    day, end = pieces[at].told, at + 1
    month = end + (end < len(pieces) and pieces[end].kind is K.OF)
    if month < len(pieces) and pieces[month].kind is K.MONTH:
        return _behind_month(pieces, month + 1, day, pieces[month].told, today)
    ahead = end
    while ahead < len(pieces) and pieces[ahead].kind in BEHIND_A_DAY:
        ahead += 1
    said_on = any(piece.text == "on" for piece in pieces[max(at - 2, 0) : at])
    if (day > MOST_SETS_PLACED and is_a_day_amid(pieces, at)) or is_plainly_a_day(pieces, at):
        return (latest_of_month(day, today) or NO_DAY if today else None), end  # "squat 3x5 100 on the 12th"
    heads = day > MOST_PLACES and at == 0 and kind_at(pieces, at + 1) is K.NAME  # "20th squat 3x5 100"
    if heads or _stands_behind_sets(pieces, at) or may_be_a_day(pieces, at, day):
        return Doubted(latest_of_month(day, today) if today else None), end
    parted = ahead > end or said_on
    if not parted or [piece.kind for piece in pieces[ahead : ahead + 1]] != [K.NAME]:
        return None
    if ahead + 1 < len(pieces) and pieces[ahead + 1].kind is K.SETS:
        return None
    return (latest_of_month(day, today) or NO_DAY if today else None), end


def _behind_month(pieces: list[Piece], end: int, day: int, month: int, today: date | None) -> Found | None:
    """The day of that month, of the year behind it where one stands there."""
    if not 1 <= day <= LAST_DAY_OF_A_MONTH:
        return None
    number = pieces[end] if end < len(pieces) else None
    after = pieces[end + 1].kind if end + 1 < len(pieces) else None
    year = int(number.text) if number is not None and _is_year(number) and after is not K.TIMES else None
    found = in_year(day, month, year, today)
    return (found if found or today is None else NO_DAY), end + (year is not None)


def _is_year(number: Piece) -> bool:
    four = len(number.text) == 4 and number.text.isdigit()
    return number.kind is K.NUMBER and number.role is Role.BARE and four and number.text[:2] in ("19", "20")


def _month_first(pieces: list[Piece], at: int, today: date | None) -> Found | None:
    if pieces[at].kind is not K.MONTH or at + 1 >= len(pieces):
        return None
    day = at + 1 + (pieces[at + 1].kind is K.STOP and pieces[at + 1].glued)  # "mar. 2"
    number, after = (pieces[day] if day < len(pieces) else pieces[at]), kind_at(pieces, day + 1)
    if after is K.TIMES or number.kind not in DAYS_OF_A_MONTH:
        return None
    return _behind_month(pieces, day + 1, number.told or int(number.value), pieces[at].told, today)


def load_days_in_words() -> None:
    """Nothing; what `said_freely` needs is loaded, so that the first day told in free words does not wait for it."""
    import dateparser

    dateparser.parse("1 march", languages=["en"])


def said_freely(text: str, now: datetime, unit: Unit) -> date | None:
    """The day that a marked piece of text ("date: 3 march") tells, or None; never one of the future or long past."""
    import dateparser

    settings = {
        "RELATIVE_BASE": now,
        "PREFER_DATES_FROM": "past",
        "DATE_ORDER": "MDY" if unit is Unit.LB else "DMY",
        "REQUIRE_PARTS": ["day", "month"],
    }
    found = dateparser.parse(text[:LONGEST_DATE_TEXT], languages=["en"], settings=settings)
    if found is None or not now - FURTHEST_BACK <= found.replace(tzinfo=None) <= now + timedelta(days=1):
        return None
    return found.date()

"""Days told by words that mean something else as well, put to what they are where they stand: names of days and months
cut short, "mié", "2 set", and the days of a month behind their little words, "dia 20", "am 20.".

day    = SHORT [ "." ] ( date | ":" | lift ) at the head of a line | sets SHORT [ date ] end | "(" SHORT ")"
month  = [ WEEKDAY | lead ] number SHORT ( lift | ":" | year | end )
number = lead number ( "." | ":" | lift ) at the head of a line | sets lead number end
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import islice

from engine.reading.days.headed_days import LAST_DAY_OF_A_MONTH
from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import CUES_OF, NO_CUES
from engine.reading.words.kept import Kept
from engine.reading.words.kinds import K
from engine.reading.words.pieces import (
    MOST_SETS,
    NOTHING,
    ROLE,
    Piece,
    Role,
    is_one_word,
    kinds_in_order,
    texts_in_order,
)


def _number_told(cue: str, text: str) -> int:
    """The number in the name of the cue, "shortday 3", that the word is of, and one more; 0 where it is of none."""
    return next((int(name.split()[1]) + 1 for name in CUES_OF[text] if name.startswith(cue)), 0)


def _short_word(text: str) -> int:
    """Which of the three the word may be, a sum: a day of the week, a month, what leads to a day of a month."""
    cues = CUES_OF[text]
    leads = MONTH_DAY in cues or MONTH_DAY_THE in cues
    return DAY * bool(_number_told(DAY_CUE, text)) + MONTH * bool(_number_told(MONTH_CUE, text)) + LEAD * leads


DAY, MONTH, LEAD = 1, 2, 4
DAY_CUE, MONTH_CUE, MONTH_DAY, MONTH_DAY_THE = "shortday ", "shortmonth ", "monthday", "monthdaythe"
NEVER_NEXT_TO_A_DAY = "monthdayneveralone"
SHORT_WORDS_KEPT = Kept(_short_word)


def with_short_dates(pieces: list[Piece], kinds: set[K]) -> list[Piece]:
    """The pieces, which are of these kinds, with each such word, and each such number, made the day of the week, the
    month or the day it is.
    """
    if Role.SETS in map(ROLE, pieces):
        pieces = _with_months_apart(pieces)
    texts = texts_in_order(pieces)
    places = [at for at, text in enumerate(texts) if SHORT_WORDS_KEPT[text]]
    out = pieces
    for at in places:
        which = SHORT_WORDS_KEPT[texts[at]]
        made = _made(out, at, which)
        if made:
            out = list(out) if out is pieces else out
            for place, piece in made:
                out[place] = piece
    return _without_points(out) if K.STOP in kinds else out


def _with_months_apart(pieces: list[Piece]) -> list[Piece]:
    """The pieces with "2 set" in two behind what leads to a day or ahead of a year: the month, and no count of sets."""
    out: list[Piece] = []
    for at, piece in enumerate(pieces):
        if piece.role is Role.SETS and _may_end_in_a_month(piece) and _is_dated(pieces, at):
            start = piece.end - len(SET)
            out.append(piece._replace(role=Role.BARE, end=start))
            out.append(piece._replace(kind=K.PLAIN, role=Role.BARE, text=SET, start=start, value=NOTHING))
        else:
            out.append(piece)
    return out


SET = "set"


def _may_end_in_a_month(piece: Piece) -> bool:
    """Whether the number and its unit are no longer than "2 set"."""
    apart = piece.end - piece.start - len(piece.text) - len(SET)
    return apart in (0, 1) and piece.text.isdigit() and 1 <= piece.value <= LAST_DAY_OF_A_MONTH


def _is_dated(pieces: list[Piece], at: int) -> bool:
    ahead, behind = at - 1, at + 1 + _is_point(pieces, at + 1)
    led = ahead >= 0 and SHORT_WORDS_KEPT[pieces[ahead].text] & LEAD > 0
    before = kind_at(pieces, ahead - 1)
    led = led and (before in LINE_STARTS or (before in ENDS_OF_SETS and kind_at(pieces, behind) in ENDS))
    of_a_year = behind < len(pieces) and pieces[behind].kind is K.NUMBER and _is_a_year(pieces[behind])
    return led or of_a_year or (kind_at(pieces, ahead) is K.WEEKDAY and pieces[at].value > MOST_SETS)


def _made(pieces: list[Piece], at: int, which: int) -> list[tuple[int, Piece]]:
    """The pieces that the word here changes, each with its place."""
    piece = pieces[at]
    if not is_one_word(piece):
        return []  # "do upadku"
    if which & DAY and (day := _number_told(DAY_CUE, piece.text)) and _tells_a_day(pieces, at):
        return [(at, piece._replace(kind=K.WEEKDAY, told=day - 1, names=(), role=Role.BARE))]
    if which & MONTH and (month := _number_told(MONTH_CUE, piece.text)) and _tells_a_month(pieces, at):
        return [(at, piece._replace(kind=K.MONTH, told=month - 1, names=(), role=Role.BARE))]
    if which & LEAD and _leads_to_a_day(pieces, at):
        number = pieces[at + 1]
        placed = number._replace(kind=K.ORDINAL, told=int(number.value))
        leads = range(_first_lead(pieces, at), at + 1)
        made = [(lead, pieces[lead]._replace(kind=K.FILLER, text=ON)) for lead in leads] + [(at + 1, placed)]
        return [*made, (at + 2, pieces[at + 2]._replace(kind=K.FILLER))] if _is_point(pieces, at + 2) else made
    return []


ON = "on"


def _tells_a_day(pieces: list[Piece], at: int) -> bool:
    """Whether the short name of a day stands where days are told."""
    piece = pieces[at]
    if piece.kind is K.WEEKDAY:
        return False
    pointed = _is_point(pieces, at + 1)
    behind, ahead = at + 1 + pointed, kind_at(pieces, at - 1)
    heads = ahead in LINE_STARTS or (ahead in PARTS and _heads_a_part(pieces, at, behind))
    if _begins_a_date(pieces, behind):
        return heads or kind_at(pieces, at - 1) in ENDS_OF_SETS
    cues = CUES_OF[piece.text] if piece.text.isascii() else NO_CUES
    if heads and piece.kind is not K.ORDINAL:
        return _heads_sets(pieces, behind, pointed, cues)
    if piece.kind is K.MONTH and _is_a_day(pieces[at - 1]):
        return False  # "3x5 100 12 mar"
    if piece.kind in COUNTING or NEVER_ALONE in cues or not _sets_are_told(pieces, at):
        return False
    before, after = kind_at(pieces, at - 1), kind_at(pieces, behind)
    return (before in ENDS_OF_SETS and after in ENDS) or (before is K.OPEN and after is K.CLOSE)


def _heads_a_part(pieces: list[Piece], at: int, behind: int) -> bool:
    """ "do: bank 3x8 80. sa: kniebeuge 3x5 100": behind the sets of another day."""
    return kind_at(pieces, behind) is K.COLON and told_before(pieces, at)


def told_before(pieces: list[Piece], at: int) -> bool:
    """Whether another day stands not far in front."""
    return not NAMED_DAYS.isdisjoint([piece.kind for piece in pieces[max(0, at - FAR_BACK) : at]])


NAMED_DAYS = frozenset((K.WEEKDAY, K.LAST_WEEKDAY, K.YESTERDAY, K.TODAY, K.DAYS_AGO, K.DATE))
FAR_BACK = 30


def _heads_sets(pieces: list[Piece], behind: int, pointed: bool, cues: frozenset[str]) -> bool:
    """ "mié sentadilla 3x5 100", "do: kniebeuge 3x5 100", "sam. squat 3x5 100"; "sam: squat 3x5 100" is asked."""
    parted = kind_at(pieces, behind) is K.COLON
    named = kind_at(pieces, behind + parted) in BELOW_A_DAY
    return named and (pointed or NAME_TOO not in cues) and (parted or pointed or NEVER_ALONE not in cues)


NEVER_ALONE, NAME_TOO = "shortdayandword", "shortdayandname"
LINE_STARTS = frozenset((None, K.LINE))
PARTS = frozenset((K.COMMA, K.STOP))
ENDS = frozenset((None, K.LINE))
COUNTING = frozenset((K.SECONDS, K.MORE, K.NUMBER, K.SETS))
BELOW_A_DAY = frozenset((K.NAME, K.LINE))
ENDS_OF_SETS = frozenset((K.NUMBER, K.KG, K.LB, K.REPS, K.EFFORT, K.COMMA, K.OPEN))


def _begins_a_date(pieces: Sequence[Piece], at: int) -> bool:
    """ "25 nov", "25. nov", "25/11", "25.11.", "2026-11-25", "25 de nov"."""
    number = pieces[at] if at < len(pieces) else None
    if number is None or number.kind is K.ORDINAL:
        return number is not None and kind_at(pieces, at + 1) in MONTH_BEHIND
    if number.kind is not K.NUMBER or number.spelled or number.value > LAST_DAY_OF_A_MONTH:
        return False
    behind = at + 1
    if kind_at(pieces, behind) is K.SLASH and pieces[behind].glued:
        return True
    if "." in number.text or (_is_point(pieces, behind) and kind_at(pieces, behind + 1) in (K.NUMBER, K.NAME)):
        return True
    behind += kind_at(pieces, behind) in (K.STOP, K.OF)
    return kind_at(pieces, behind) is K.MONTH or (
        behind < len(pieces) and SHORT_WORDS_KEPT[pieces[behind].text] & MONTH > 0
    )


MONTH_BEHIND = frozenset((K.MONTH, K.OF))


def _is_point(pieces: Sequence[Piece], at: int) -> bool:
    return at < len(pieces) and pieces[at].kind is K.STOP and pieces[at].glued and pieces[at].text == "."


def _tells_a_month(pieces: list[Piece], at: int) -> bool:
    """Whether the short name of a month stands behind its day, where dates are told."""
    if pieces[at].kind is K.MONTH or not at:
        return False
    number = at - 1 - (_is_point(pieces, at - 1) or kind_at(pieces, at - 1) is K.OF)
    if number < 0 or not _is_a_day(pieces[number]):
        return False
    ahead, behind = number - 1, at + 1 + _is_point(pieces, at + 1)
    ahead -= ahead > 0 and _is_point(pieces, ahead)
    dated = kind_at(pieces, behind) is K.NUMBER and _is_a_year(pieces[behind])
    led = kind_at(pieces, ahead) is K.WEEKDAY or (ahead >= 0 and SHORT_WORDS_KEPT[pieces[ahead].text] & LEAD > 0)
    if dated or led:
        return True
    if kind_at(pieces, ahead) in LINE_STARTS:
        return kind_at(pieces, behind) in BEHIND_A_MONTH
    alone = MONTH_AND_COUNT in CUES_OF[pieces[at].text]
    return not alone and kind_at(pieces, behind) in ENDS and kind_at(pieces, ahead) in ENDS_OF_SETS


MONTH_AND_COUNT = "shortmonthandword"
BEHIND_A_MONTH = frozenset((K.NAME, K.COLON, K.LINE))


def _is_a_day(piece: Piece) -> bool:
    bare = piece.kind is K.NUMBER and piece.role is Role.BARE and not piece.spelled and piece.text.isdigit()
    return bare and 1 <= piece.value <= LAST_DAY_OF_A_MONTH


def _is_a_year(piece: Piece) -> bool:
    return len(piece.text) == len("2026") and piece.text.isdigit() and piece.text[:2] in ("19", "20")


def _leads_to_a_day(pieces: list[Piece], at: int) -> bool:
    """Whether the number behind the word here is that of a day: "dia 20 supino 3x8 60", "squat 3x5 100 le 20"."""
    if at + 1 >= len(pieces) or not _is_a_day(pieces[at + 1]):
        return False
    start = _first_lead(pieces, at)
    cues = CUES_OF[pieces[at].text]
    if NEVER_NEXT_TO_A_DAY in cues:
        return False  # Portuguese "no dia 20"; "3x5 35, no 6"
    if start == at and MONTH_DAY in cues and pieces[at].kind is K.HEADING and pieces[at + 1].value <= PROGRAMME_DAYS:
        return False  # "día 2: sentadilla 3x5 100": the second day of a programme
    point = _is_point(pieces, at + 2)
    behind = at + 2 + point
    before, after = kind_at(pieces, start - 1), kind_at(pieces, behind)
    if before in LINE_STARTS:
        heads = after is K.COLON and kind_at(pieces, behind + 1) in BELOW_A_DAY
        return heads or (after is K.NAME and K.TIMES in kinds_in_order(pieces[behind : behind + NEAR]))
    if before is K.NAME:
        return after is K.NUMBER and kind_at(pieces, behind + 1) is K.TIMES
    if MONTH_DAY not in cues and not point and not _tells_more_than_sets_and_reps(pieces, at):
        return False  # "bench 3x8 le 20": the only load
    return after in ENDS and before in ENDS_OF_SETS and _sets_are_told(pieces, at)


def _sets_are_told(pieces: Sequence[Piece], before: int) -> bool:
    """Whether sets stand ahead of a place; nearly always they are among the first pieces."""
    return any(pieces[at].kind is K.TIMES for at in range(before))


def _tells_more_than_sets_and_reps(pieces: Sequence[Piece], before: int) -> bool:
    numbers = (at for at in range(before) if pieces[at].kind is K.NUMBER)
    return len(list(islice(numbers, SETS_AND_REPS + 1))) > SETS_AND_REPS


def _first_lead(pieces: list[Piece], at: int) -> int:
    """The place of the first of the little words: "no dia", "op de"."""
    start = at
    while start and at - start < MOST_LEADS and _may_lead(pieces[start - 1]):
        start -= 1
    return start


MOST_LEADS, SETS_AND_REPS = 3, 2
NEAR = 6
PROGRAMME_DAYS = 7
"""Days of a programme are numbered up to the days of a week. Common practice, no source."""


LEADING = frozenset((K.FILLER, K.WITH, K.OF, K.OTHERS, K.NOT, K.DENY))


def _may_lead(piece: Piece) -> bool:
    return piece.kind in LEADING and SHORT_WORDS_KEPT[piece.text] & LEAD > 0


def _without_points(pieces: list[Piece]) -> list[Piece]:
    """The pieces without the points of names cut short, "fr. 27.11.", "12 jan. 2026", where nothing else ends there."""
    kinds = kinds_in_order(pieces)
    drop = [at for at in range(1, len(kinds)) if kinds[at] is K.STOP and kinds[at - 1] in CUT_SHORT]
    if not drop:
        return pieces
    gone = {at for at in drop if _is_point(pieces, at) and _shortens(pieces, at)}
    return [_pointed(piece, at + 1 in gone) for at, piece in enumerate(pieces) if at not in gone] if gone else pieces


def _pointed(piece: Piece, is_pointed: bool) -> Piece:
    """A short day of the week with its point is no other word: "do.", "so."."""
    return piece._replace(text=f"{piece.text}.") if is_pointed and piece.kind is K.WEEKDAY else piece


def _shortens(pieces: list[Piece], at: int) -> bool:
    word, behind = pieces[at - 1], kind_at(pieces, at + 1)
    if len(word.text) > LONGEST_CUT_SHORT:
        return False
    if word.kind is K.MONTH:
        return behind in ENDS or behind is K.COLON or (behind is K.NUMBER and _is_a_year(pieces[at + 1]))
    heads = kind_at(pieces, at - 2) in LINE_STARTS
    return behind in ENDS or (behind in (K.COLON, K.NAME) and heads) or _begins_a_date(pieces, at + 1)


CUT_SHORT = frozenset((K.MONTH, K.WEEKDAY))
LONGEST_CUT_SHORT = 5

"""Lines that head a part of a pasted workout, and the numbers in them that count no sets.

heading = HEADING [ NUMBER ]                              push day     week 3 day 1
        | ( "superset" | "session" | "round" ... ) [ "#" ] NUMBER [ ":" | "-" ] at the start of a line that ends there,
          or with a lift behind it                                           exercise 2: bench     session 14 squat
"""

from __future__ import annotations

from engine.reading.words.ahead import aside, kind_at
from engine.reading.words.cues import is_cued
from engine.reading.words.kept import Kept
from engine.reading.words.kinds import K
from engine.reading.words.pieces import KIND, TEXT, Piece, Role, is_one_word, kinds_in_order, places_of

NUMBERED_KINDS = frozenset((K.SUPERSET, K.ROUNDS))
HEADING_KINDS = NUMBERED_KINDS | {K.HEADING}
COUNTED_OF_ALL = frozenset(("day", "week", "daycounted", "workout", "exercise", "entry"))


def _is_counted(text: str) -> bool:
    return is_cued(text, WORDS_COUNTED)


WORDS_COUNTED = frozenset(("workout", "exercise", "entry"))
NUMBERED_WORDS = Kept(_is_counted)
MOST_HEADED = 400
"""A number above this counts no sessions. Common practice, no source."""
BEHIND_A_HEADING = frozenset((K.COLON, K.DASH, K.STOP, K.CLOSE))


def without_headings(pieces: list[Piece]) -> list[Piece]:
    """The pieces without headings and the bare numbers behind them."""
    if HEADING_KINDS.isdisjoint(map(KIND, pieces)) and True not in map(NUMBERED_WORDS.__getitem__, map(TEXT, pieces)):
        return pieces
    out: list[Piece] = []
    line_start = True
    at = 0
    while at < len(pieces):
        piece = pieces[at]
        end = _numbered_line(pieces, at) if line_start else at
        if line_start and end == at and _may_be_rounds(pieces, at):
            out.append(piece._replace(kind=K.UNCLEAR))  # "superset 3 bench 60x8, row 50x10": the third, or three times
            at += 2
            continue
        if end > at:
            at = end
            line_start = False
            continue
        behind = at > 0 and pieces[at - 1].kind is K.HEADING and piece.kind is K.NUMBER and piece.role is Role.BARE
        before_x = at + 1 < len(pieces) and pieces[at + 1].kind is K.TIMES
        if piece.kind is not K.HEADING and not (behind and not before_x):
            out.append(piece)
        line_start = piece.kind is K.LINE or (line_start and piece.kind in (K.DATE, K.DASH))
        at += 1
    return out


def without_days_counted(pieces: list[Piece]) -> list[Piece]:
    """The pieces without the numbers of "day 4/30", "session 3 of 4", which is one of so many and no set or date."""
    out: list[Piece] = []
    at = 0
    while at < len(pieces):
        piece = pieces[at]
        counted = is_cued(piece.text, COUNTED_OF_ALL) and is_one_word(piece)
        kinds = [one.kind for one in pieces[at : at + 4]]
        placed = counted and kinds[1:2] == [K.NUMBER] and pieces[at + 1].role is Role.BARE
        of_all = placed and len(kinds) > 2 and (kinds[2] in PARTING or is_cued(pieces[at + 2].text, OF_ALL))
        of_all = of_all and not _is_a_date(pieces[at + 1 : at + 4])
        if of_all and kinds[3:] == [K.NUMBER]:
            of_reps = at > 0 and pieces[at - 1].kind is K.NUMBER  # "5 5 5 week 3 of 8" is no "5 weeks"
            out.append(aside(piece) if of_reps else piece)
            at += 4
        else:
            out.append(piece)
            at += 1
    return out


def without_sessions_headed(pieces: list[Piece]) -> list[Piece]:
    """The pieces without "session 14 of the block," and the like in front of the lift of a line."""
    starts = [0, *[at + 1 for at in places_of(K.LINE, kinds_in_order(pieces))]]
    ends = [(at, end) for at in starts if (end := _behind_a_session(pieces, at))]
    for at, end in reversed(ends):
        pieces = [*pieces[:at], *pieces[end:]]
    return pieces


def _behind_a_session(pieces: list[Piece], at: int) -> int:
    """The place of the lift behind a session that heads the line there; 0 where none does."""
    if kind_at(pieces, at + 1) is not K.NUMBER or not is_cued(pieces[at].text, COUNTED_OF_ALL):
        return 0
    if pieces[at + 1].role is not Role.BARE or not is_one_word(pieces[at]):
        return 0
    end = at + 2
    while end < len(pieces) and end - at < LONGEST_OF_A_SESSION and pieces[end].kind in OF_A_SESSION:
        end += 1
    parted = kind_at(pieces, end) in BEHIND_A_SESSION
    of_all = end > at + 2 and is_cued(pieces[end - 1].text, COUNTED_OF_ALL | SPANS)
    return end + parted if (parted or of_all) and kind_at(pieces, end + parted) is K.NAME else 0


OF_A_SESSION = frozenset((K.FILLER, K.OF, K.OUT_OF, K.WITH, K.PLAIN, K.HEADING, K.SETTING))
BEHIND_A_SESSION = frozenset((K.COLON, K.COMMA, K.DASH))
SPANS = frozenset(("span",))
LONGEST_OF_A_SESSION = 6


def _is_a_date(pair: list[Piece]) -> bool:
    """ "session 12/03", "gym 12/3": no session is the twelfth of three."""
    if len(pair) < len(("12", "/", "03")) or pair[1].kind is not K.SLASH or pair[2].kind is not K.NUMBER:
        return False
    return pair[2].text.startswith("0") or pair[0].text.startswith("0") or pair[0].value > pair[2].value


PARTING = frozenset((K.SLASH, K.OF, K.OUT_OF))
OF_ALL = frozenset(("of",))


def counts_headings(pieces: list[Piece], at: int) -> bool:
    """Whether the number here tells which session it was: "session 5 - monday 10 march"."""
    number, before = pieces[at], pieces[at - 1] if at else None
    if before is None or number.kind is not K.NUMBER or number.role is not Role.BARE:
        return False
    return before.kind is K.HEADING or _is_numbered(before)


def is_against_the_clock(pieces: list[Piece]) -> bool:
    """Whether the sets were done by the clock, and no number says how often: "EMOM 10", "AMRAP 12 min" above them."""
    for at, piece in enumerate(pieces):
        if piece.kind not in CLOCKED_KINDS or (at and pieces[at - 1].kind is not K.LINE):
            continue
        amount = pieces[at + 1] if at + 1 < len(pieces) else None
        if amount is None or amount.kind is not K.NUMBER:
            continue
        timed = amount.role is Role.SECONDS
        if (piece.text == EVERY_MINUTE or (piece.kind is K.MAX and timed)) and _heads(pieces, at + 2):
            return True
    return False


def _heads(pieces: list[Piece], at: int) -> bool:
    return at + 1 < len(pieces) and pieces[at].kind in (K.LINE, K.COLON)


EVERY_MINUTE = "emom"
CLOCKED_KINDS = frozenset((K.HEADING, K.MAX))


def _is_numbered(piece: Piece) -> bool:
    return piece.kind in NUMBERED_KINDS or NUMBERED_WORDS[piece.text]


def _numbered_line(pieces: list[Piece], at: int) -> int:
    """The place behind "superset 2:", "session 23", where nothing else stands on the line; `at` where it does."""
    if not _is_numbered(pieces[at]) or at + 1 >= len(pieces):
        return at
    signed = pieces[at + 1].text == "#" and at + 2 < len(pieces)
    number = pieces[at + 1 + signed]
    if number.kind is not K.NUMBER or number.role is not Role.BARE or not 0 < number.value <= MOST_HEADED:
        return at
    end = at + 2 + signed
    while end < len(pieces) and pieces[end].kind in BEHIND_A_HEADING:
        end += 1
    after = pieces[end].kind if end + 1 < len(pieces) else None
    told = pieces[end - 1].kind is K.COLON or NUMBERED_WORDS[pieces[at].text] or _counts_its_sets(pieces, end)
    return end if (told and after is K.NAME) or after in (K.LINE, K.DATE) else at


def _counts_its_sets(pieces: list[Piece], at: int) -> bool:
    """ "superset 2 bench 60 8 8 8": the lift tells more than one set of its own."""
    numbers = 0
    for behind in range(at + 1, len(pieces)):
        kind = pieces[behind].kind
        if numbers == NUMBERS_OF_SETS or kind in (K.NAME, K.LINE):
            break
        numbers += kind is K.NUMBER
    return numbers >= NUMBERS_OF_SETS


NUMBERS_OF_SETS = 3
"""A load and the reps of two sets, or sets, reps and a load."""


def _may_be_rounds(pieces: list[Piece], at: int) -> bool:
    """Whether "superset 3" stands right in front of a lift."""
    numbered = pieces[at].kind is K.SUPERSET and [piece.kind for piece in pieces[at + 1 : at + 3]] == [K.NUMBER, K.NAME]
    return numbered and pieces[at + 1].role is Role.BARE

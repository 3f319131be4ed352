"""Where a day told in words stands: behind a bullet, behind opening words, behind the sets, at the end of a clause.

opening = words [ "," ] day ( ":" | "," | name | number | line end )     logging this late, fri: bench 4x5 82.5
between = name [ "on" ] day [ "was" | "i did" ] number                    bench on monday was 3x5 80
clause  = sets ( "," | ";" | "." ) day name sets                             mon squat 3x5 100, tue bench 3x8 60
behind  = sets day ( "," | "." | ";" | "-" | "(" | ")" | remark )         bench 3x5 80 yesterday - felt good
"""

from __future__ import annotations

from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import any_cued, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role

ON_A_DAY = frozenset(("onday", "the"))
TELLING_WHAT_WAS = frozenset(("was", "were", "did", "me", "had", "made", "hasbeen"))
WHO_DID = TELLING_WHAT_WAS | {"we", "my"}
COMPARING = frozenset(("better", "heavier", "lighter"))
MOST_VERBS = 4
SAID = frozenset((K.NUMBER, K.NAME, K.DATE, K.BAR, K.COUNT))
COUNTED = frozenset((K.NUMBER, K.COUNT, K.BODY))
BEHIND_AN_OPENING = frozenset((K.COLON, K.NAME, K.LINE, K.DASH, K.WITH, K.OPEN, K.BODY))
CLOSING = frozenset((K.STOP, K.OPEN, K.CLOSE))
RATING = frozenset((K.AT, K.RPE, K.RIR, K.FAILURE))
FEELINGS = frozenset((K.NOTE, K.SORE, K.PAIN))
REMARKS = frozenset((K.NOTE, K.PAIN, K.JOINT, K.SORE, K.DENIED, K.MUSCLE))
TELLING_NO_SETS = frozenset((K.NOT_DATE, K.ASKS, K.OTHERS, K.FUTURE, K.TOMORROW, K.STORY, K.SAYING, K.NEVER, K.SAME,
                             K.LAST_TIME, K.EARLIER))  # fmt: skip
MOST_WORDS_OF_AN_OPENING = 8
LONGEST_REMARK = 20
REACH = 12
"""How many pieces behind the numbers of a set its day may stand. Common practice, no source."""


def is_bullet(pieces: list[Piece], at: int) -> bool:
    """ "1. monday: ...", "* monday: ...": the label of a line, in front of its day."""
    if pieces[at].text == "*":
        return True
    if pieces[at].kind is K.TIMES:
        return at == 0 or pieces[at - 1].kind is K.LINE
    after = pieces[at + 1] if at + 1 < len(pieces) else None
    pointed = after is not None and after.kind in (K.STOP, K.CLOSE) and after.glued
    return (pieces[at].kind is K.NUMBER and pointed) or (pieces[at].kind is K.CLOSE and pieces[at].glued)


def past_who_did(pieces: list[Piece], at: int) -> int:
    """The place behind "i did", "we had": "on sat i did squat 3x5 100"."""
    end = min(len(pieces), at + MOST_VERBS)
    while at < end and is_cued(pieces[at].text, WHO_DID):
        at += 1
    return at


def ends_here(pieces: list[Piece], at: int) -> bool:
    """Whether a clause ends here, but for filler words."""
    while at < len(pieces) and pieces[at].kind in (K.STOP, K.CLOSE, K.FILLER, K.TODAY):
        at += 1
    return at >= len(pieces) or pieces[at].kind in (K.LINE, K.COMMA)


def between_name_and_number(pieces: list[Piece], at: int) -> bool:
    """ "bench yesterday 60 3x5", "bench on monday was 3x5 60"."""
    ahead = at + 1
    while ahead < min(len(pieces), at + MOST_VERBS) and is_cued(pieces[ahead].text, TELLING_WHAT_WAS):
        ahead += 1
    behind = pieces[ahead].kind if ahead < len(pieces) else None
    named = at - 1
    while at - named <= MOST_TIES and named > 0 and _ties_to_a_name(pieces[named]):
        named -= 1
    if pieces[named].kind is K.NAME and behind in BEHIND_A_NAME_AND_DAY:
        return True
    return _is_set_apart(pieces, at) or _parts_load_and_sets(pieces, at)


BEHIND_A_NAME_AND_DAY = (K.NUMBER, K.BAR, K.BODY, K.COLON, K.AT, K.WITH)


def _is_set_apart(pieces: list[Piece], at: int) -> bool:
    """ "bench (yesterday) 3x5 80", "bench - yesterday - 3x5 80"."""
    sign = at - 1
    while sign > 0 and at - sign <= MOST_TIES and _ties_to_a_name(pieces[sign]):
        sign -= 1
    signs = (kind_at(pieces, sign), kind_at(pieces, at + 1))
    return signs in ((K.OPEN, K.CLOSE), (K.DASH, K.DASH)) and kind_at(pieces, sign - 1) is K.NAME


def _parts_load_and_sets(pieces: list[Piece], at: int) -> bool:
    """ "bench 80kg yesterday 3x5"."""
    ahead = [piece.kind for piece in pieces[max(0, at - 3) : at]]
    loaded = ahead in ([K.NAME, K.NUMBER, K.KG], [K.NAME, K.NUMBER, K.LB]) or (
        ahead[-2:] == [K.NAME, K.NUMBER] and pieces[at - 1].role is Role.LOAD
    )
    return loaded and [piece.kind for piece in pieces[at + 1 : at + 3]] == [K.NUMBER, K.TIMES]


def _ties_to_a_name(piece: Piece) -> bool:
    """ "bench on monday 3x5 80", "bench last monday 3x5 80", "bench from monday 3x5 80"."""
    return piece.kind in (K.COLON, K.LAST) or is_cued(piece.text, FROM) or is_cued(piece.text, ON_A_DAY)


MOST_TIES = 3
FROM = frozenset(("fromwhen",))


def opens_a_clause(pieces: list[Piece], at: int) -> bool:
    """ "mon squat 3x5 100, tue bench 3x8 60": behind the sets of another day, with a lift and its numbers behind it;
    "squat yesterday 100x3, today 105x3": with numbers alone, where another day was told.
    """
    before = at - 1
    while before > 0 and pieces[before].kind not in PARTING and _leads_to_a_day(pieces[before]):
        before -= 1
    if before <= 0 or pieces[before].kind not in PARTING:
        return False
    ahead = at + 1
    while ahead < len(pieces) and pieces[ahead].kind in (K.COLON, K.FILLER, K.DASH):
        ahead += 1
    behind = [piece.kind for piece in pieces[ahead : ahead + 1 + NEAR]]
    dated = behind[:1] == [K.NUMBER] and K.TIMES in behind and _is_told(DAYS, pieces, before)
    return (dated or (behind[:1] == [K.NAME] and K.NUMBER in behind)) and _is_told(COUNTED, pieces, before)


def _is_told(kinds: frozenset[K], pieces: list[Piece], before: int) -> bool:
    """Whether one of the kinds stands ahead of a place; nearly always it is one of the first."""
    return any(pieces[at].kind in kinds for at in range(before))


def _leads_to_a_day(piece: Piece) -> bool:
    return piece.kind in (K.FILLER, K.FOR, K.LAST) or is_cued(piece.text, FROM) or is_cued(piece.text, SAID_FIRST)


DAYS = frozenset((K.TODAY, K.YESTERDAY, K.DAYS_AGO, K.WEEKDAY, K.LAST_WEEKDAY, K.AGO))
PARTING = frozenset((K.COMMA, K.STOP, K.SLASH, K.DASH, K.OTHER_SIGN, K.THEN, K.AND))
NEAR = 4


def follows_an_opening(pieces: list[Piece], at: int) -> bool:
    """ "logging this late, fri: bench 4x5 82.5", "oh and on monday bench 4x5 82.5": only words stand before it on its
    line, and it heads what follows.
    """
    start = _start_of_line(pieces, at)
    if not start < at:
        return False
    behind = pieces[at + 1].kind if at + 1 < len(pieces) else None
    if behind in OF_A_SESSION and (end := behind_session(pieces, at + 1)) < len(pieces):
        behind = K.COLON if pieces[end].kind is K.COLON else behind
    before = at - 1 - (at > start + 1 and pieces[at - 1].kind in (K.FILLER, K.LAST))
    parted = pieces[before].kind in (K.COMMA, K.COLON, K.STOP, K.DASH, K.OPEN)
    heads = behind is K.COLON or (parted and (behind in BEHIND_AN_OPENING or behind in (K.NUMBER, K.COMMA)))
    heads = heads or (behind is K.NAME and all([_opens_speech(pieces, place) for place in range(start, at)]))
    bulleted = 2 if pieces[start].kind is K.NUMBER and is_bullet(pieces, start) else 0
    return heads and SAID.isdisjoint([piece.kind for piece in pieces[start + bulleted : at]])


def may_head_a_lift(pieces: list[Piece], at: int) -> bool:
    """ "slept badly yesterday bench 3x5 80": only words in front of the day on its line, a lift with numbers behind; or
    it stands between two lifts, or beside another day.
    """
    start = _start_of_line(pieces, at)
    ahead = [piece.kind for piece in pieces[start:at]]
    told = pieces[at].kind is not K.TODAY and bool(ahead) and NO_DAY_OF_SETS.isdisjoint(ahead)
    name = at + 1 + (kind_at(pieces, at + 1) is K.COMMA)
    if pieces[at].kind is not K.TODAY and (_stands_between_lifts(pieces, at) or _is_one_of_two(pieces, at)):
        return True
    return told and kind_at(pieces, name) is K.NAME and kind_at(pieces, name + 1) in COUNTED


def _stands_between_lifts(pieces: list[Piece], at: int) -> bool:
    """ "squat 3x5 100 yesterday bench 3x5 80": the day of the one, or of the other."""
    behind = (kind_at(pieces, at + 1), kind_at(pieces, at + 2))
    return kind_at(pieces, at - 1) in (K.NUMBER, K.KG, K.LB) and behind == (K.NAME, K.NUMBER)


def _is_one_of_two(pieces: list[Piece], at: int) -> bool:
    """ "bench on mon and tue 3x5 80": whose sets they are of both days nobody can say."""
    other = at + 2 + (kind_at(pieces, at + 2) is K.FILLER)
    joined = kind_at(pieces, at + 1) in (K.AND, K.PLUS, K.SLASH) and kind_at(pieces, other) in DAYS
    return joined and kind_at(pieces, other + 1) is K.NUMBER and K.NAME in [p.kind for p in pieces[max(0, at - 2) : at]]


NO_DAY_OF_SETS = SAID | TELLING_NO_SETS


def _start_of_line(pieces: list[Piece], at: int) -> int:
    """Where the line of this place begins; the place itself where that is too far in front for opening words."""
    start = at
    while start > 0 and pieces[start - 1].kind is not K.LINE:
        start -= 1
        if at - start > MOST_WORDS_OF_AN_OPENING:
            return at
    return start


def _opens_speech(pieces: list[Piece], at: int) -> bool:
    """Whether the word says nothing of the day behind it: "oh and yesterday bench", "with tom on monday bench"."""
    piece = pieces[at]
    beside = piece.kind is K.PLAIN and at > 0 and pieces[at - 1].kind is K.WITH
    return piece.kind in OPENING_SPEECH or beside or is_cued(piece.text, SAID_FIRST)


OPENING_SPEECH = frozenset(
    (K.FILLER, K.AND, K.THEN, K.FOR, K.ADDED, K.ONLY, K.ANOTHER, K.EXTRA, K.HEADING, K.LAST, K.WITH, K.OF, K.COMMA,
     K.COLON, K.STOP, K.DASH, K.OPEN, K.OTHER_SIGN)
)  # fmt: skip
SAID_FIRST = frozenset(("slip", "chatter", "polite"))
OF_A_SESSION = frozenset((K.HEADING, K.FILLER))
MOST_OF_A_SESSION = 3


def behind_session(pieces: list[Piece], at: int) -> int:
    """The place behind the words of "friday's workout", "monday's push day"."""
    end = at
    while end < min(len(pieces), at + MOST_OF_A_SESSION) and pieces[end].kind in OF_A_SESSION:
        end += 1
    return end


def closes_the_sets(pieces: list[Piece], at: int) -> bool:
    """ "bench 3x5 80 yesterday - felt good", "3x5 80 (fri) tired": a day behind the sets, and a remark."""
    after = pieces[at + 1] if at + 1 < len(pieces) else None
    if after is None:
        return False
    if COUNTED.isdisjoint([piece.kind for piece in pieces[max(0, at - REACH) : at]]):
        return False
    if after.kind in RATING:
        return True  # "3x5 100 yesterday @8"
    ends = after.kind in CLOSING or (after.kind is K.DASH and not after.glued)
    remarked = _is_remark(pieces, at + 1) and not _opens_a_remark(pieces, at)
    return (ends and _no_more_sets(pieces, at + 2)) or remarked


def _opens_a_remark(pieces: list[Piece], at: int) -> bool:
    """ "squat 3x5 100, yesterday sick": the day of what its own clause tells, or that of the sets."""
    link = at - 1 - is_cued(pieces[at - 1].text, ON_A_DAY)
    return kind_at(pieces, link) in PARTED and pieces[at + 1].kind in TELLING_OF_A_DAY


PARTED = frozenset((K.COMMA, K.STOP))
TELLING_OF_A_DAY = frozenset((K.PLAIN, K.PAIN, K.SORE, K.UNRELATED))


def _is_remark(pieces: list[Piece], at: int) -> bool:
    """ "tired", "with a belt"; and not "felt better", which sets the day against another, nor "was rough", which tells
    what the day was like.
    """
    if is_cued(pieces[at].text, WAS):
        return False
    at += pieces[at].kind in (K.WITH, K.FILLER)
    behind = pieces[at : at + 2]
    if not behind or any_cued([piece.text for piece in behind], COMPARING):
        return False
    of_the_bar = behind[0].kind is K.BAR and behind[1:] and behind[1].kind in (K.PLAIN, K.NOTE)
    return (
        bool(of_the_bar)
        or behind[0].kind in REMARKS
        or (behind[0].kind is K.PLAIN and SAID.isdisjoint(_rest_of_line(pieces, at)))
    )


WAS = frozenset(("was", "were"))


def _rest_of_line(pieces: list[Piece], at: int) -> list[K]:
    kinds = [piece.kind for piece in pieces[at : at + LONGEST_REMARK]]
    return kinds[: kinds.index(K.LINE)] if K.LINE in kinds else kinds


def _no_more_sets(pieces: list[Piece], at: int) -> bool:
    """Whether no number of the same lift follows: "80x5 (fri) 85x5" tells two days, or a day and a set."""
    behind = [piece.kind for piece in pieces[at : at + 2]]
    return behind[:1] != [K.TIMES] and (
        behind[:1] != [K.NUMBER] or pieces[at].role in APART or behind[1:][:1] in BESIDE_NO_SET
    )


BESIDE_NO_SET = tuple([kind] for kind in (K.PLAIN, K.SETTING, K.UNRELATED, K.OTHERS, K.FAR, K.NOTE))
APART = frozenset((Role.SECONDS, Role.NOT_A_SET, Role.PLURAL))


def is_from(pieces: list[Piece], at: int, link: int, anchored: bool) -> bool:
    """ "from monday: bench 3x8 60", "bench 3x8 60 from monday", "bench from monday 3x8 60"; "sore from monday" tells of
    no sets. Shape: "from" stands at `link`.
    """
    if not is_cued(pieces[link].text, FROM):
        return False
    before, after = kind_at(pieces, link - 1), kind_at(pieces, at + 1)
    if kind_at(pieces, at + 1) is K.COLON and follows_an_opening(pieces, at):
        return before not in FEELINGS  # "catch up from friday: bench 3x8 60"; "tired from friday: bench 3x8 60"
    if anchored or (before is K.NAME and after is K.NUMBER) or (before in PARTING and after in (K.NAME, K.COLON)):
        return True
    ahead = link - 1 - (before in (K.COMMA, K.OPEN, K.DASH, K.STOP))
    return link > 0 and kind_at(pieces, ahead) in ENDS_OF_SETS and ends_here(pieces, at + 1)


ENDS_OF_SETS = frozenset((K.NUMBER, K.KG, K.LB, K.REPS, K.COUNT, K.EFFORT))

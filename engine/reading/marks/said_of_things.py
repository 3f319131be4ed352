"""What is said of the bar or of a plate, which then is no load: "5 5 5, bar kept rolling", "1 plate wobbled".

bar   = WORD "bar" ")" | "bar" WORD+ | [ "," ] "the bar" WORD+ | WORD "bar"       behind a set whose load is told
plate = NUMBER "plate" [ "was" ] WORD+                            the same; "2 plates felt heavy" is left to be asked
An empty bar told as such stays a load ("empty bar", "with the bar"), and so does what has numbers behind it: "bar x10".
"""

from __future__ import annotations

from itertools import islice

from engine.reading.words.ahead import aside, kind_at
from engine.reading.words.cues import CUES_OF, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role

REACH_OF_A_QUESTION = 3
REACH_OF_A_LIFT = 100
"""Pieces; more of one lift nobody tells ahead of a word about its bar."""
SAID_OF_A_BAR = frozenset((K.PLAIN, K.NOTE, K.GOT, K.SETTING, K.RESERVE_LEFT))
COUNTING = frozenset((K.TIMES, K.NUMBER))
ENDS = frozenset((None, K.COMMA, K.STOP, K.LINE, K.THEN, K.CLOSE, K.DASH))
SETS_GO_ON = frozenset((K.NUMBER, K.TIMES, K.COUNT, K.FOR, K.AT, K.WITH, K.PLUS, K.AND, K.EACH, K.BAR, K.PLATE, K.NAME))
LINKS = frozenset((K.WITH, K.AT, K.PLUS, K.ONLY, K.TIMES))
PARTS = frozenset((K.COMMA, K.STOP, K.LINE, K.DASH, K.OPEN))
MOST_PLATES, HEAVIEST_BAR = 8, 25
"""Plates on a bar, and its kilograms. Common practice, no source."""
WAS, SHAPED = frozenset(("was", "were", "is")), frozenset(("barshape",))


def said_of_the_bar(pieces: list[Piece], at: int, out: list[Piece]) -> int:
    """The place behind the bar, put to the pieces read so far as a load or as part of a remark."""
    bar = pieces[at]
    if kind_at(out, len(out) - 1) is K.SAME and kind_at(pieces, at + 1) is K.NUMBER:
        out.append(bar._replace(kind=K.FILLER))  # "same bar 3": as it was loaded
        return at + 1
    if out and is_cued(out[-1].text, SHAPED) and kind_at(pieces, at + 1) in ENDS:
        out.append(aside(bar))  # "pushdown 25 12 12 10, straight bar"
        return at + 1
    if any(piece.kind is K.ASKS for piece in out[-REACH_OF_A_QUESTION:]):
        out.append(aside(bar))  # "no idea what was on the bar"
        return at + 1
    if tells_its_weight(pieces, at + 1):
        out.append(bar._replace(kind=K.UNCLEAR))
        return at + 1
    said = kind_at(pieces, at + 1) in SAID_OF_A_BAR and kind_at(pieces, at + 2) not in COUNTING
    parted = _parts_a_set(out)
    if parted is not None and _load_told(out):
        # "60 8 8 7, then 15 with the bar felt easy" is a set with it; behind a comma nobody can say.
        out.append(bar._replace(kind=K.UNCLEAR) if parted is K.COMMA and said else bar)
        return at + 1
    if said or (_is_plain(bar) and _is_remarked(pieces, at, out)):
        bar = aside(bar)
    out.append(bar)
    return at + 1


def tells_its_weight(pieces: list[Piece], at: int) -> bool:
    """ "the bar was 15, 35 then": what it weighed, and no reps with it; "bar was 5x5" are sets."""
    near = range(at + 1, at + REACH_OF_A_QUESTION)
    number = next((place for place in near if kind_at(pieces, place) is K.NUMBER), 0)
    if not number or not any(is_cued(piece.text, WAS) for piece in pieces[at:number]):
        return False
    return kind_at(pieces, number + 1) not in SETS_GO_ON and MOST_PLATES < pieces[number].value <= HEAVIEST_BAR


def _parts_a_set(out: list[Piece]) -> K | None:
    """What parts "15 with" from the sets before it; None where nothing does."""
    linked = kind_at(out, len(out) - 1) is K.WITH and kind_at(out, len(out) - 2) is K.NUMBER
    before = kind_at(out, len(out) - 3)
    return before if linked and before in PARTING else None


PARTING = frozenset((K.COMMA, K.THEN, K.AND, K.LINE, K.STOP))


def _is_remarked(pieces: list[Piece], at: int, out: list[Piece]) -> bool:
    before = kind_at(out, len(out) - 1)
    if before in LINKS:  # "then 15 with the bar", and "60 5 5 5 with the bar on my back"
        return before is K.WITH and _words_behind(pieces, at + 1) and _load_told(out)
    if _words_behind(pieces, at + 1):
        then = before is K.NUMBER and kind_at(out, len(out) - 2) is K.THEN  # "then 15 bar, easy"
        return not then and before is not None and (before in PARTS or _load_told(out))
    sort = kind_at(pieces, at + 1) in ENDS and bool(out) and (before is K.PLAIN or "barsort" in CUES_OF[out[-1].text])
    bracketed = kind_at(out, len(out) - 2) is K.OPEN  # "25 12 12 10 (straight bar)"
    return sort and (bracketed or _load_told(out))


def _is_plain(bar: Piece) -> bool:
    """ "bar", "the bar", and not "empty bar", "bar only"."""
    return len(bar.text) == bar.end - bar.start or "the" in CUES_OF[bar.text]


def _load_told(out: list[Piece]) -> bool:
    """Whether a load stands before it, among the sets of the same lift."""
    for piece in islice(reversed(out), REACH_OF_A_LIFT):
        if piece.kind is K.NAME:
            return False
        heavy = piece.role is Role.BARE and piece.value > MOST_LOADED_REPS
        if piece.kind is K.NUMBER and (heavy or piece.role is Role.LOAD):
            return True
    return False


def _words_behind(pieces: list[Piece], at: int) -> bool:
    """Whether words and nothing of a set stand there, up to the end of the clause."""
    start = at
    while kind_at(pieces, at) not in ENDS:
        if pieces[at].kind in SETS_GO_ON and not is_cued(pieces[at].text, WAS):
            return False  # the Swedish "var" is "was" and "each"
        at += 1
    return at > start


def said_of_a_plate(pieces: list[Piece], at: int, out: list[Piece]) -> bool:
    """Puts "1 plate wobbled" to the pieces read so far as a remark, and says whether it is one."""
    number = out[-1] if out and out[-1].kind is K.NUMBER else None
    if pieces[at].kind is not K.PLATE or number is None or number.role is not Role.BARE or number.value > MOST_PLATES:
        return False
    behind = at + 1
    while kind_at(pieces, behind) is K.FILLER and is_cued(pieces[behind].text, WAS):
        behind += 1
    before = kind_at(out, len(out) - 2)
    happened = kind_at(pieces, behind) in (K.PLAIN, K.RESERVE_LEFT) and _words_behind(pieces, behind)
    loaded = happened and before not in LINKS and _load_told(out[:-1])
    if not happened or before in LINKS or not (loaded or before in PARTS):
        return False
    if loaded and before is K.NUMBER and number.value > 1:
        out.append(aside(pieces[at]))  # "60 8 8 8 plates rattled": the last of the reps
    elif loaded:
        out[-1] = aside(number)
        out.append(aside(pieces[at]))
    else:
        out.append(pieces[at]._replace(kind=K.ALTERED))  # "5 5, 1 plate wobbled": a remark, or the load
    return True

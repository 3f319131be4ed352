"""Which of the sets one was, told behind it: "60x8 3rd of 3", "100x5, last of 5", "60x8 2/3".

place = ( ORDINAL | "first" | "last" ) [ SET ] ( "of" | "out of" ) [ words ] NUMBER     a remark, and no set of three;
                                                             with a number behind it asked: "3rd of 3 at 55";
                                                             with none ahead only the place: "2nd of 3 was 4"
      | PAIR NUMBER ( "of" | "/" ) NUMBER END     asked: the place of the set, or more sets, or a day; "8/7" are reps
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.ahead import aside, kind_at
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook, spoken
from engine.reading.words.pieces import Piece, Role, kinds_in_order, places_in

LINKS = frozenset((K.OF, K.OUT_OF, K.SLASH))
PLACES = frozenset((K.ORDINAL, K.FIRST, K.LAST))
NUMBERED = frozenset((K.SETS, K.FIRST, K.LAST))
"""What a number may stand behind that tells which sets: "set 2 of 3", "first two of three"."""
WORDS = frozenset((K.FILLER,))
LITTLE = WORDS | {K.SETS}
""" "The 3rd set of 3"; "of set 3" is another place."""
COUNTING = frozenset((Role.BARE, Role.SETS))
ENDS = frozenset((None, K.COMMA, K.STOP, K.LINE, K.CLOSE, K.DASH, K.NOTE, K.FILLER, K.NAME))
TELLING = frozenset((K.NUMBER, K.WITH, K.AT))
BESIDE_A_PAIR = frozenset((K.COMMA, K.DASH, K.REPS, K.OPEN))
MOST = 12
"""More sets of a lift nobody counts so. Common practice, no source."""


def with_places_counted(pieces: list[Piece], kinds: set[K]) -> list[Piece]:
    """The pieces, which are of these kinds, with such places as remarks, or in doubt."""
    if kinds.isdisjoint(LINKS):
        return pieces
    out: list[Piece] | None = None
    for at in reversed(places_in(LINKS, kinds_in_order(pieces))):
        count = _past(pieces, at + 1, WORDS, 1)
        if not _is_count(pieces, count):
            continue
        place = _past(pieces, at - 1, LITTLE, -1)
        if _is_counted_alone(pieces, place, at, count):
            out = list(pieces) if out is None else out
            alone = kind_at(pieces, place) is K.NUMBER and kind_at(pieces, count + 1) in ENDS
            out[place if alone else at : count + 1] = [aside(pieces[place])] if alone else []
            continue
        meant = _place_of(pieces, place, at, count)
        if meant is not None:
            out = list(pieces) if out is None else out
            out[place : count + 1] = [meant._replace(end=pieces[count].end)]
    return pieces if out is None else out


def with_places_alone(pieces: list[Piece]) -> list[Piece]:
    """The pieces of a correction without the number of sets that each place is one of."""
    links = [at for at, piece in enumerate(pieces) if piece.kind in LINKS]
    for at in reversed(links):
        count, place = _past(pieces, at + 1, WORDS, 1), _past(pieces, at - 1, LITTLE, -1)
        if _is_count(pieces, count) and _is_counted_alone(pieces, place, at, count):
            pieces = [*pieces[:at], *pieces[count + 1 :]]
    return pieces


def with_numbered_places(pieces: list[Piece]) -> list[Piece]:
    """The pieces of a correction with "number 2 was" and "nr 2 war" as "set 2 was"."""
    kinds = kinds_in_order(pieces)
    out = pieces
    for at in range(len(pieces) - 2):
        numbered = kinds[at : at + 2] == [K.SETTING, K.NUMBER] and is_cued(pieces[at].text, NUMBERED_SO)
        if numbered and pieces[at + 1].role is Role.BARE and spoken(pieces[at + 2].text) in phrasebook().copulas:
            out = [*out[:at], pieces[at]._replace(kind=K.SETS, text="set"), *out[at + 1 :]]
    return out


NUMBERED_SO = frozenset(("placenumber",))


def _place_of(pieces: Sequence[Piece], place: int, link: int, count: int) -> Piece | None:
    """What such words come to together; None where they tell no place."""
    ended, unclear = kind_at(pieces, count + 1) in ENDS, K.UNCLEAR
    if kind_at(pieces, place) not in PLACES or pieces[link].kind is K.SLASH:
        asked = ended and place == link - 1 and _may_be_a_place(pieces, link, count)
        return pieces[place]._replace(kind=unclear) if asked else None
    if not _is_told_behind_sets(pieces, place) or pieces[place].told > pieces[count].value:
        return None
    if ended or kind_at(pieces, count + 2) is K.TIMES:  # "60x8 60x8, last of 3 60x7"
        return aside(pieces[place])
    return pieces[place]._replace(kind=unclear) if kind_at(pieces, count + 1) in TELLING else None


def _is_counted_alone(pieces: Sequence[Piece], place: int, link: int, count: int) -> bool:
    """ "2nd of 3 was 4", "first of three at 90", "set 2 of 3": of how many it is one, with no sets told ahead."""
    if pieces[link].kind is K.SLASH or place < 0:
        return False
    kind, before = pieces[place].kind, kind_at(pieces, place - 1)
    numbered = kind is K.NUMBER and before in NUMBERED
    seconds = kind is K.SECONDS and before is not K.NUMBER  # "second of three"
    if kind not in PLACES and not numbered and not seconds:
        return False
    which = pieces[place].value if numbered else pieces[place].told
    return which <= pieces[count].value and not _is_told_behind_sets(pieces, place)


def _past(pieces: Sequence[Piece], at: int, kinds: frozenset[K], step: int) -> int:
    """The place behind, or ahead of, a word of these kinds; "la última fue de 4" tells what the last was."""
    skipped = kind_at(pieces, at) in kinds and spoken(pieces[at].text) not in phrasebook().copulas
    return at + step if skipped else at


def _is_count(pieces: Sequence[Piece], at: int) -> bool:
    if kind_at(pieces, at) is not K.NUMBER:
        return False
    return pieces[at].role in COUNTING and 1 < pieces[at].value <= MOST


def _is_told_behind_sets(pieces: Sequence[Piece], at: int) -> bool:
    """Whether numbers stand ahead in the same line."""
    while at and pieces[at - 1].kind not in (K.LINE, K.NUMBER):
        at -= 1
    return at > 0 and pieces[at - 1].kind is K.NUMBER


def _may_be_a_place(pieces: Sequence[Piece], at: int, count: int) -> bool:
    """ "60x8 2/3", "60x8 3 of 3": right behind one pair, and no more than it is counted of."""
    if not _is_count(pieces, count) or count != at + 1 or kind_at(pieces, at - 1) is not K.NUMBER:
        return False
    place, of = pieces[at - 1], pieces[count]
    rising = place.value < of.value if pieces[at].kind is K.SLASH else place.value == of.value  # "2 of 3" is asked
    reps = _past(pieces, at - 2, BESIDE_A_PAIR, -1)
    paired = kind_at(pieces, reps) is K.NUMBER and kind_at(pieces, reps - 1) is K.TIMES
    return rising and paired and place.role is of.role is Role.BARE and kind_at(pieces, reps - 2) is K.NUMBER

"""Which of the sets it was, in figures as other languages write them: "2. Satz", "2a serie", "2e set", "w 3 serii".

place = NUMBER "." SET | NUMBER ENDING [ SET ] | IN NUMBER SET      SET: the word for one of them
      | NUMBER ( "." | ENDING ) "of" NUMBER                         "2. von 3"
      | "1" SET sets "2" SET sets ...                               counting up: "1 seria 60x10, 2 seria 65x8"
Behind a place with its word a bare one that goes on counts, too: "1a serie 60x10, 2a 65x8".
"""

from __future__ import annotations

from typing import NamedTuple

from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.pieces import ROLE, Piece, Role, kinds_in_order, places_of

LAST_PLACE = 12
ENDINGS = frozenset((K.FILLER, K.AND, K.PLAIN))
MAY_FOLLOW = frozenset((K.SETS, K.OF))
IN = frozenset((K.FILLER, K.WITH))
LEAST_RUN = 2


class _Place(NamedTuple):
    """A number that may tell a place: how many pieces it takes, and whether its word for a set stands behind it."""

    at: int
    taken: int
    sure: bool
    word: str


def with_places_in_figures(pieces: list[Piece], kinds: set[K], cleaned: str) -> list[Piece]:
    """The pieces, which are of these kinds, with such numbers as ordinals."""
    if K.NUMBER not in kinds or (kinds.isdisjoint(MAY_FOLLOW) and Role.SETS not in map(ROLE, pieces)):
        return pieces
    found = [place for at in places_of(K.NUMBER, kinds_in_order(pieces)) if (place := _place(pieces, at, cleaned))]
    meant = _counted_up([place for place in found if place.word], pieces)
    before = 0
    for place in found:
        number = int(pieces[place.at].value)
        if place.sure or (before and number == before + 1 and not place.word):
            meant = [*meant, place]
            before = number
    out = pieces
    for place in sorted(meant, reverse=True):
        typed = out[place.at]
        ordinal = typed._replace(kind=K.ORDINAL, told=int(typed.value), role=Role.BARE, text=f"{typed.value}.")
        word = [typed._replace(kind=K.SETS, text=place.word, role=Role.BARE)] if place.word else []
        out = [*out[: place.at], ordinal, *word, *out[place.at + place.taken :]]
    return _with_words_of_sets(out)


def _with_words_of_sets(pieces: list[Piece]) -> list[Piece]:
    """The pieces with the word for one set made part of the place in front of it, as in "2nd set 65x8"."""
    kinds = kinds_in_order(pieces)
    at_words = [at for at in places_of(K.SETS, kinds[:-1]) if kind_at(pieces, at - 1) is K.ORDINAL]
    at_words = [at for at in at_words if _is_one(pieces[at]) and _heads_a_pair(kinds, at + 1)]
    for at in reversed(at_words):
        place = pieces[at - 1]._replace(text=f"{pieces[at - 1].told} {SET}", end=pieces[at].end)
        pieces = [*pieces[: at - 1], place, *pieces[at + 1 :]]
    return pieces


def _heads_a_pair(kinds: list[K], at: int) -> bool:
    at += kinds[at] is K.COLON
    return kinds[at : at + 2] == [K.NUMBER, K.TIMES]


def _is_one(word: Piece) -> bool:
    return not CUES_OF[word.text].isdisjoint(ONE_SET)


SET = "set"
ONE_SET = frozenset(("setword", "setoblique"))


def _place(pieces: list[Piece], at: int, cleaned: str) -> _Place | None:
    number = pieces[at]
    if number.value % 1 or not 1 <= number.value <= LAST_PLACE:
        return None
    if number.role is Role.SETS:
        word = cleaned[number.start : number.end].split()[-1].lower()
        led = kind_at(pieces, at - 1) in IN and "setoblique" in CUES_OF[word]
        return _Place(at, 1, led, word)
    ended = _ending(pieces, at, cleaned)
    if not ended:
        return None
    behind = at + ended
    one = kind_at(pieces, behind) is K.SETS and _is_one(pieces[behind])
    one = one or (kind_at(pieces, behind) is K.OF and kind_at(pieces, behind + 1) is K.NUMBER)
    return _Place(at, ended, one, "") if one or cleaned[number.end - 1] != "." else None


def _ending(pieces: list[Piece], at: int, cleaned: str) -> int:
    """How many pieces "2.", "2a", "2e" or "1re" takes; 0 for a bare number."""
    number = pieces[at]
    typed = cleaned[number.start : number.end].lower().lstrip("0123456789")
    if typed:
        return 1 if "ordinalend" in CUES_OF[typed] else 0
    after = pieces[at + 1] if at + 1 < len(pieces) else None
    if after is None or after.start != number.end:
        return 0
    if after.kind is K.DASH and kind_at(pieces, at + 2) is not None and pieces[at + 2].start == after.end:
        return 3 if "ordinalend" in CUES_OF[pieces[at + 2].text] else 0  # "3-м"
    pointed = after.kind is K.STOP and after.text == "." and kind_at(pieces, at + 2) in MAY_FOLLOW
    return 2 if pointed or (after.kind in ENDINGS and "ordinalend" in CUES_OF[after.text]) else 0


def _counted_up(told: list[_Place], pieces: list[Piece]) -> list[_Place]:
    """ "1 seria 60x10, 2 seria 65x8": places, where the word is of one set; "set" and "serie" may be of several."""
    places = [pieces[place.at].value for place in told]
    counting = len(told) >= LEAST_RUN and places == list(range(1, len(told) + 1))
    several = {place.word for place in told}
    if not counting or len(several) != 1 or not all(kind_at(pieces, place.at + 1) is K.NUMBER for place in told):
        return []
    cues = CUES_OF[told[0].word]
    return told if "setword" in cues and ("setsasone" not in cues or len(told) > LEAST_RUN) else []

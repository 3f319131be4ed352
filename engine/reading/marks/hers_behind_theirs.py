"""Her own sets behind another's, of the lift that those name: "my sister did 95x3 on deadlift, i did 130x4".

message = THEIRS [ LIFT ] sets SEPARATOR [ "then" | "but" ] ME [ DID | ":" ] sets
THEIRS  = OTHERS | SOMEBODY DID | SOMEBODY "'s" LIFT | "spotted" ( OTHERS | SOMEBODY )    they name one lift
ME      = "me" | "mine" | "my" [ "own" | "sets" ]
Theirs are left out, and the lift is put behind ME.
Where theirs has a load and hers has none, nobody can say at which load hers was, and the lift is left to be asked.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.days.day_starts import DATE_KINDS
from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import CUES_OF, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.people import is_somebody, possessor, verb_behind
from engine.reading.words.pieces import COUNTED, MOST_LOADED_REPS, Piece, Role, kinds_in_order, kinds_of, places_in

ME, MY_TURN, HELPING = frozenset(("myturn", "my")), "myturn", "helping"
SEPARATORS = frozenset((K.COMMA, K.STOP, K.LINE, K.THEN, K.AND, K.DASH))
LEADING = frozenset((K.THEN, K.AND, K.FILLER, K.COMMA, K.AT, K.WITH))
BEHIND_ME = frozenset((K.FILLER, K.SETS, K.COLON, K.GOT, K.ONLY, K.PLAIN, K.WORKING, K.WITH))
PEOPLE = frozenset((K.OTHERS, K.PLAIN))
OF_TWO_SENSES = frozenset(("of", "relative"))
OF_ANOTHER_SENSE = DATE_KINDS | {K.SAYING, K.FUTURE, K.STORY, K.NEVER, K.ASKS, K.PAIN}
"""What makes of their clause more than the sets that they did: a day, which may be of hers too, a plan, a story."""
REACH = 4
"""Words from "me" to the numbers. Common practice, no source."""


def may_be_hers_behind_theirs(pieces: Sequence[Piece], kinds: set[K]) -> bool:
    """Whether somebody may head these pieces, which are of these kinds, and a lift with numbers stands in them."""
    return {K.NAME, K.NUMBER} <= kinds and not PEOPLE.isdisjoint([piece.kind for piece in pieces[:REACH]])


def with_hers_behind_theirs(pieces: list[Piece], called: str) -> list[Piece]:
    """The pieces, or hers alone with the lift that theirs name."""
    if not _somebody_heads(pieces, called.casefold().split()):
        return pieces
    for at in places_in(SEPARATORS, kinds_in_order(pieces)):
        me, numbers = _me_behind(pieces, at)
        if me and not COUNTED.isdisjoint(kinds_of(pieces[:at])):
            return _hers_alone(pieces, at, me, numbers)
    return pieces


def _somebody_heads(pieces: Sequence[Piece], own: Sequence[str]) -> bool:
    """Whether the message begins with somebody who does something, or is helped by her."""
    first = pieces[0]
    if HELPING in CUES_OF[first.text]:
        return kind_at(pieces, 1) in PEOPLE and _may_be(pieces[1], own)
    start = 0
    while start < REACH and kind_at(pieces, start) in AHEAD_OF_WHO and MY_TURN not in CUES_OF[pieces[start].text]:
        start += 1
    if kind_at(pieces, start) is K.OTHERS:
        return True
    named = start < len(pieces) and pieces[start].kind is K.PLAIN and _may_be(pieces[start], own)
    lifted = kind_at(pieces, start + 1) is K.NAME and pieces[start + 1].text.endswith(LIFTED)
    return (named and (lifted or verb_behind(pieces, start) > 0)) or _owns_a_lift(pieces, start)


def _owns_a_lift(pieces: Sequence[Piece], at: int) -> bool:
    """ "my wife's bench 50x5, mine 80x5"."""
    owned = kind_at(pieces, at) is K.PLAIN and possessor(pieces[at].text) != pieces[at].text
    return owned and kind_at(pieces, at + 1) is K.NAME


LIFTED = "ed"
AHEAD_OF_WHO = frozenset((K.FILLER, K.NAME, K.COLON, K.COMMA))


def _may_be(piece: Piece, own: Sequence[str]) -> bool:
    return piece.kind is K.OTHERS or (is_somebody(piece) and piece.text not in own and not CUES_OF[piece.text])


def _me_behind(pieces: Sequence[Piece], at: int) -> tuple[int, int]:
    """The place of "me", "my own" behind the separator there, and of the first number or lift of hers; 0 for none."""
    me = at + 1
    while kind_at(pieces, me) in LEADING and not _is_me(pieces, me):
        me += 1
        if me > at + REACH:
            return 0, 0
    if not _is_me(pieces, me):
        return 0, 0
    numbers = me + 1
    while kind_at(pieces, numbers) in BEHIND_ME and numbers <= me + REACH:
        numbers += 1
    # "i 80x5" is "and 80x5" in Polish.
    bare = numbers == me + 1 and kind_at(pieces, numbers) is not K.NAME and "andword" in CUES_OF[pieces[me].text]
    counted = numbers + (kind_at(pieces, numbers) is K.NAME)  # "i squatted 100x5"
    return (me, numbers) if kind_at(pieces, counted) in COUNTED and not bare else (0, 0)


def _is_me(pieces: Sequence[Piece], at: int) -> bool:
    if at >= len(pieces) or pieces[at].kind not in (K.FILLER, K.PLAIN, K.AND):
        return False
    return is_cued(pieces[at].text, ME)


def _hers_alone(pieces: list[Piece], end: int, me: int, numbers: int) -> list[Piece]:
    """Her clause with its lift, without the clause up to `end`; all pieces where it is not clear."""
    theirs, hers = pieces[:end], pieces[numbers:]
    # "di" is a weekday, too, and "who" may ask
    senses = kinds_of([piece for piece in theirs if not is_cued(piece.text, OF_TWO_SENSES)])
    if not OF_ANOTHER_SENSE.isdisjoint(senses) or not _told_as_fully(theirs, hers):
        return pieces
    names = {piece.names: piece for piece in theirs if piece.kind is K.NAME}
    named = kind_at(pieces, numbers) is K.NAME
    if not named and len(names) != 1:
        return pieces
    words = [piece._replace(kind=K.FILLER) for piece in pieces[me:numbers] if piece.kind is not K.COLON]
    behind = pieces[numbers - 1].end
    lift = [] if named else [next(iter(names.values()))._replace(start=behind, end=behind)]
    return [*words, *lift, *hers]


def _told_as_fully(theirs: Sequence[Piece], hers: Sequence[Piece]) -> bool:
    """Whether hers has a load where theirs has one; each may be a list of reps."""
    return _has_load(hers) or not _has_load(theirs)


def _has_load(sets: Sequence[Piece]) -> bool:
    numbers = [piece for piece in sets if piece.kind is K.NUMBER]
    return any(one.role is Role.LOAD or one.value > MOST_LOADED_REPS for one in numbers)

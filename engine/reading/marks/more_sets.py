"""How many more sets there were, told ahead of their reps: "two more at 35, both 14", "two more sets of 8".

more   = NUMBER "more" [ "sets" ] ( joined | [ ( "at" | "with" ) load ] [ "," | ":" ] ( alike | REPS{NUMBER} ) )
       | ( "another" | "one more" ) TRIPLE
joined = ( "of" | "x" ) REPS | TRIPLES            "2 more of 10", "two more x 8", "3 more triples"
       | ( "for" | "with" ) REPS "reps"           also without "reps", where sets were named: "2 more sets for 8"
       | [ ":" | "at" ] LOAD ( "x" | "for" ) REPS "2 more 90x5", "2 more at 90 for 5"
alike  = ( "both" | "all" ) [ "for" ] REPS        so many sets of these reps
As many reps as sets are told: the count says nothing more. Fewer or more of them: it is asked, as before.
More sets that nobody counts are asked about ("a few more sets of 8"), and so is "10 more x 3": sets, or kilos.
Behind "with" a bare number is reps where the lift in hand is loaded far above it: "noch zwei Sätze mit 8".
"""

from __future__ import annotations

from decimal import Decimal

from engine.reading.marks.announced_ones import sets_listed
from engine.reading.values import Context
from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import CUES_OF, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role, kinds_in_order, places_of
from engine.values.load import Load

FEWEST, MOST = 2, 6
"""So many sets more may be told at once. Common practice, no source."""
BOTH = 2
WITH = "with"
BESIDE_A_LOAD = frozenset((K.FILLER, K.ADDED, K.NOTE, K.PLATE))
AHEAD_OF_REPS = frozenset((K.COMMA, K.COLON, K.DASH))
BETWEEN_REPS = frozenset((K.COMMA, K.AND, K.SLASH))
ENDS = frozenset((None, K.COMMA, K.STOP, K.LINE, K.CLOSE, K.THEN, K.NOTE))
ENDS_OF_ALIKE = ENDS - {K.NOTE}
"""In "3 more, all 5 felt good" the five may count sets."""
REPS_ROLES = (Role.BARE, Role.REPS)
MOST_JOINED = 10
"""So many sets more may be told with the reps of each: "10 more sets of 3". Common practice, no source."""
TIMED = frozenset((Role.SECONDS, Role.METRES))
SAYING_REPS = frozenset((K.OF, K.TIMES))
GOES_ON = frozenset((K.TIMES, K.MORE, K.FOR, K.BY))
"""Behind the reps these make another form of them."""
LINKS = frozenset((K.COLON, K.AT, K.WITH))
MOST_OF_AN_X = 3
"""With an x behind it "10 more" may tell of a load as well. Common practice, no source."""
REACH = 3
COUNTING = frozenset((K.NUMBER, K.ANOTHER, K.COUNT, K.ONCE))
SAYING_SETS = frozenset(("more", "aset"))
ASKING_FOR_MORE = frozenset((K.MORE, K.ANOTHER))
FAR_BELOW = 4
"""A number that goes so often into the load in hand is no load beside it. Common practice, no source."""


def with_more_sets(pieces: list[Piece], context: Context) -> list[Piece]:
    """The pieces, with counts of more sets put to the reps behind them."""
    pieces = _with_reps_at_hand(pieces, context)
    out: list[Piece] = []
    at = 0
    while at < len(pieces):
        end = _more_at(pieces, at)
        if end:
            told = _listed_pairs(pieces, at, end) or _joined(pieces, at, end) or _loaded(pieces, at, end)
            told = told or _told_of(pieces, at, end)
        else:
            told = _one_more(pieces, at) or _uncounted(pieces, at)
        if told is None:
            out.append(pieces[at])
            at += 1
        else:
            out += told[0]
            at = told[1]
    return out


def _more_at(pieces: list[Piece], at: int) -> int:
    """The place behind "two more sets"; 0 where no such count stands here."""
    count = pieces[at]
    if count.kind is not K.NUMBER or count.role not in (Role.BARE, Role.SETS) or count.value > MOST_JOINED:
        return 0
    if count.value != int(count.value):
        return 0  # "2.5 more x 5" is heavier
    end = at + 1
    while kind_at(pieces, end) in (K.MORE, K.SETS) or _names_a_set(pieces, end):
        end += 1
    return end if any(piece.kind is K.MORE for piece in pieces[at + 1 : end]) else 0


def _listed_pairs(pieces: list[Piece], at: int, end: int) -> tuple[list[Piece], int] | None:
    """ "two more: 80x5, 80x5": the sets themselves stand behind, as many as it counts; another number is asked."""
    start = end + (kind_at(pieces, end) in AHEAD_OF_REPS)
    if kind_at(pieces, start + 1) not in (K.TIMES, K.FOR):
        return None
    told = sets_listed(pieces, start)
    if told < FEWEST:
        return None
    return ([] if told == pieces[at].value else [pieces[at]._replace(kind=K.ALTERED)]), start


def _names_a_set(pieces: list[Piece], at: int) -> bool:
    """ "1 more set of 8": the word for one set, with its "of"."""
    return kind_at(pieces, at) is K.FILLER and "aset" in CUES_OF[pieces[at].text]


def _joined(pieces: list[Piece], at: int, end: int) -> tuple[list[Piece], int] | None:
    """What stands for a count whose reps are joined to it, "two more sets of 8"; the place of the reps behind it."""
    count, link = pieces[at], kind_at(pieces, end)
    sets = count._replace(role=Role.SETS)
    of = pieces[at + 1]._replace(kind=K.OF, text="of", told=0)
    if link is K.COUNT:
        return [sets, of, _named_reps(pieces[end])], end + 1
    named = _names_sets(pieces, at, end)
    one_set = _names_a_set(pieces, end - 1) or (named and link is K.NUMBER and kind_at(pieces, end + 1) in ENDS)
    reps = end if one_set else end + 1
    if kind_at(pieces, reps) is not K.NUMBER or kind_at(pieces, reps + 1) in GOES_ON:
        return None
    number = pieces[reps]
    timed = number.role in TIMED or (number.role is Role.PLURAL and link is K.OF)  # "2 more sets of 45 s"
    counts = timed or (number.role in REPS_ROLES and 0 < number.value <= MOST_LOADED_REPS)
    if not counts:
        return None
    if link is K.TIMES and not named and count.value > MOST_OF_AN_X:
        return [count, pieces[at + 1]._replace(kind=K.ALTERED)], end
    if one_set or link in SAYING_REPS or "setsof" in CUES_OF[pieces[end].text]:
        return [sets, of], reps
    told = number.role is not Role.BARE or (link is K.FOR and named)
    return ([sets, of], reps) if link in (K.FOR, K.WITH) and told else None


def _names_sets(pieces: list[Piece], at: int, end: int) -> bool:
    """Whether the count says that it is one of sets."""
    words = pieces[at + 1 : end]
    return pieces[at].role is Role.SETS or K.SETS in [one.kind for one in words] or _says_sets(words)


def _loaded(pieces: list[Piece], at: int, end: int) -> tuple[list[Piece], int] | None:
    """ "2 more 90x5", "2 more at 90 for 5": so many sets of these reps, at this load; the place behind the reps."""
    load = end + (kind_at(pieces, end) in LINKS)
    if kind_at(pieces, load) is not K.NUMBER or kind_at(pieces, load + 1) not in (K.TIMES, K.FOR):
        return None
    number = pieces[load]
    heavy = number.role is Role.LOAD or (number.role is Role.BARE and number.value > MOST_LOADED_REPS)
    if not heavy or not _is_reps(pieces, load + 2) or kind_at(pieces, load + 3) not in ENDS:
        return None
    sets = pieces[at]._replace(role=Role.SETS)
    of = pieces[at + 1]._replace(kind=K.OF, text="of", told=0)
    with_ = pieces[at + 1]._replace(kind=K.WITH, text="with", told=0)
    return [sets, of, pieces[load + 2], with_, number], load + 3


def _one_more(pieces: list[Piece], at: int) -> tuple[list[Piece], int] | None:
    """ "another triple", "one more double at 110"."""
    if pieces[at].kind is not K.ANOTHER or kind_at(pieces, at + 1) is not K.COUNT:
        return None
    sets = pieces[at]._replace(kind=K.NUMBER, value=Decimal(1), role=Role.SETS, told=0)
    of = pieces[at]._replace(kind=K.OF, text="of", told=0)
    return [sets, of, _named_reps(pieces[at + 1])], at + 2


def _uncounted(pieces: list[Piece], at: int) -> tuple[list[Piece], int] | None:
    """ "a few more sets of 8", "more sets of 8": how many is not told."""
    if pieces[at].kind is not K.MORE or kind_at(pieces, at + 1) is not K.OF:
        return None
    ahead = pieces[max(0, at - REACH) : at]
    cues = {cue for piece in ahead for cue in CUES_OF[piece.text]}
    one = "an" in cues and "vaguely" not in cues  # "una serie más de 8"
    counted = one or not COUNTING.isdisjoint(kinds_in_order(ahead)) or kind_at(pieces, at + 2) is not K.NUMBER
    return None if counted else ([pieces[at]._replace(kind=K.ALTERED)], at + 1)


def _says_sets(words: list[Piece]) -> bool:
    """ "2 more sets for 8", where "more sets" is one phrase."""
    return any(len(one.text) < one.end - one.start and is_cued(one.text, SAYING_SETS) for one in words)


def _named_reps(name: Piece) -> Piece:
    """ "triples" as the three reps that they are."""
    return name._replace(kind=K.NUMBER, value=Decimal(name.told), role=Role.REPS, told=0)


def _with_reps_at_hand(pieces: list[Piece], context: Context) -> list[Piece]:
    """The pieces, with "noch zwei Sätze mit 8" told as sets of eight, where the load in hand is far above that."""
    numbers, load = places_of(K.NUMBER, kinds_in_order(pieces)), _load_in_hand(context)
    if load is None or not numbers or kind_at(pieces, numbers[-1] - 1) is not K.WITH:
        return pieces
    at = numbers[-1]
    said, reps, ahead = pieces[at - 1], pieces[at], pieces[: at - 1]
    named = any(piece.kind is K.SETS or piece.role is Role.SETS for piece in ahead) or _says_sets(ahead)
    more = not ASKING_FOR_MORE.isdisjoint(kinds_in_order(ahead)) and len(numbers) < 3
    low = _is_reps(pieces, at) and reps.role is Role.BARE and reps.value * FAR_BELOW <= load.amount
    whole = reps.value == int(reps.value) and kind_at(pieces, at + 1) in ENDS
    if not (named and more and low and whole) or said.text == "at":
        return pieces
    return [*ahead, said._replace(kind=K.OF, text="of"), *pieces[at:]]


def _load_in_hand(context: Context) -> Load | None:
    if context.recent:
        return context.recent[-1].done.load
    return None if context.doing is None else context.last.get(context.doing)


def _told_of(pieces: list[Piece], at: int, end: int) -> tuple[list[Piece], int] | None:
    """What stands for the count, and the place behind it; None where the reps behind it do not settle it."""
    if not FEWEST <= pieces[at].value <= MOST:
        return None
    count, loaded = pieces[at], _load_behind(pieces, end)
    reps = loaded
    while kind_at(pieces, reps) in AHEAD_OF_REPS:
        reps += 1
    alike = _alike(pieces, reps, count)
    if alike:
        sets = count._replace(role=Role.SETS)
        of = pieces[at + 1]._replace(kind=K.OF, text="of", told=0)
        return [sets, of, pieces[alike], *pieces[end:loaded]], alike + 1
    if reps > end and _listed(pieces, reps) == count.value:
        return _headed_by_load(pieces, end, loaded), reps
    return None


def _headed_by_load(pieces: list[Piece], at: int, end: int) -> list[Piece]:
    """The load of the reps behind it, with its words and no sign between; nothing where none is told."""
    if at == end:
        return []
    load = pieces[at + 1]
    words = [one._replace(kind=K.FILLER) if one.kind is K.PLATE else one for one in pieces[at + 2 : end]]
    return [load._replace(role=Role.LOAD) if load.role is Role.BARE else load, *words]


def _load_behind(pieces: list[Piece], at: int) -> int:
    """The place behind "at 35", "with 5 kg on the belt"; the same place where no load stands there."""
    linked = kind_at(pieces, at) is K.WITH or (kind_at(pieces, at) is K.FILLER and pieces[at].text == WITH)
    if not linked or kind_at(pieces, at + 1) is not K.NUMBER or kind_at(pieces, at + 2) is K.TIMES:
        return at
    if pieces[at + 1].role not in (Role.BARE, Role.LOAD, Role.CHANGE):
        return at
    end = at + 2
    while kind_at(pieces, end) in BESIDE_A_LOAD and pieces[end].text not in phrasebook().cues["all"]:
        end += 1
    return end


def _alike(pieces: list[Piece], at: int, count: Piece) -> int:
    """The place of the reps of "both 14", "all for 14"; 0 where no such word stands here."""
    if at >= len(pieces):
        return 0
    both = pieces[at].kind is K.BOTH and count.value == BOTH
    every = pieces[at].text in phrasebook().cues["all"] and count.value > BOTH
    reps = at + 1
    while kind_at(pieces, reps) in (K.FOR, K.FILLER):
        reps += 1
    if not (both or every) or not _is_reps(pieces, reps):
        return 0
    behind = reps + 1 + (kind_at(pieces, reps + 1) is K.REPS)
    return reps if kind_at(pieces, behind) in ENDS_OF_ALIKE and not _is_reps(pieces, behind + 1) else 0


def _is_reps(pieces: list[Piece], at: int) -> bool:
    if kind_at(pieces, at) is not K.NUMBER or kind_at(pieces, at + 1) in (K.TIMES, K.MORE, K.FOR, K.AT, K.WITH):
        return False
    return pieces[at].role in REPS_ROLES and 0 < pieces[at].value <= MOST_LOADED_REPS


def _listed(pieces: list[Piece], at: int) -> int:
    """How many reps are listed from there on, up to what ends the list; 0 where anything else goes on from it."""
    told = 0
    while _is_reps(pieces, at):
        told += 1
        at += 1
        if kind_at(pieces, at) in BETWEEN_REPS and kind_at(pieces, at + 1) is K.NUMBER:
            at += 1
    return told if kind_at(pieces, at) in ENDS else 0

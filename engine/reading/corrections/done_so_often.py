"""How often the set that stands was done: "did that 3 times", "3 sets of that", "for 3 sets", "that x3".

often = [ DID ] THAT ( NUMBER "times" | "x" NUMBER | NUMBER "x" ) | NUMBER "times" | NUMBER "sets" [ "of" THAT ]
      | ( DID | "there were" ) NUMBER "of those"
The number counts all of them, the one that stands too: more of the same are added. Where it is no count that can be,
nothing is changed, and no set of so few reps is made of it. So with "one rep less", of which nobody can say whether it
is of the set before or of one more.
"""

from __future__ import annotations

from engine.reading.corrections.correcting import Told
from engine.reading.corrections.said_to_be import is_be
from engine.reading.latest_sets import latest_of_it, run_of_it
from engine.reading.values import Correction
from engine.reading.words.cues import any_cued, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role

MOST = 10
"""So often one does the same set. Common practice, no source."""
LITTLE = frozenset((K.FILLER, K.FOR, K.OF, K.STOP, K.NUMBER, K.TIMES, K.ALTERED, K.GOT))
THAT, OF_THOSE = frozenset(("that",)), frozenset(("ofthose",))
DIFFERENCE = frozenset(("fewer", "more", "lighter", "add", "plus"))
BESIDE_REPS = frozenset(
    (K.FILLER, K.NUMBER, K.REPS, K.MORE, K.ANOTHER, K.STOP, K.PLAIN, K.SAME, K.NOTE, K.AND, K.ADDED)
)
MOST_REPS_APART = 5


def done_so_often(told: Told) -> Correction | None:
    """As many sets as the words count, like the one that stands; none where another lift is in hand."""
    count, latest = _count(told), latest_of_it(told.context)
    run = run_of_it(told.context)
    if count <= len(latest) or (len(run) > len(latest) and count <= len(run)):
        return None
    told.added += [latest[-1].done] * (count - len(run))
    return told.correction()


def tells_how_often(told: Told) -> bool:
    """Whether the words count sets like those that stand, be it that nothing is to change."""
    return _count(told) > 0


def says_as_many(told: Told) -> bool:
    """ "did that 3 times", "that's 3 now" behind three: as many as stand."""
    run, count = run_of_it(told.context), _count(told)
    return count == len(run) > 1 or (_counts_so_far(told) and int(told.numbers()[0].value) == len(run) > 1)


def _counts_so_far(told: Told) -> bool:
    """ "that's 3 now"."""
    numbers, words = told.numbers(), [piece.text for piece in told.pieces]
    plain = told.kinds() <= {K.FILLER, K.NUMBER, K.STOP} and len(numbers) == 1 and numbers[0].role is Role.BARE
    return plain and any_cued(words, frozenset(("sofar",))) and numbers[0].value == int(numbers[0].value)


def tells_reps_apart(told: Told) -> bool:
    """ "one rep less", "one more rep", "add a rep": by so many, but of the set before or of one more nobody can say."""
    if not told.kinds() <= BESIDE_REPS or told.kinds().isdisjoint((K.REPS, K.NUMBER)):
        return False
    numbers = [piece for piece in told.pieces if piece.kind is K.NUMBER]
    reps = K.REPS in told.kinds() or any(piece.role is Role.REPS for piece in numbers)
    few = all(piece.value <= MOST_REPS_APART for piece in numbers)
    apart = K.MORE in told.kinds() or K.ANOTHER in told.kinds() or any_cued(told.words, DIFFERENCE)
    unknown = [piece for piece in told.pieces if piece.kind is K.PLAIN and not is_cued(piece.text, DIFFERENCE)]
    return reps and few and apart and len(numbers) <= 1 and not unknown


def _count(told: Told) -> int:
    """The number of sets told; 0 where none is."""
    numbers = told.numbers()
    known = all((piece.kind in LITTLE and _may_stand(piece)) or is_be(piece) for piece in told.pieces)
    if len(numbers) != 1 or not known or not 1 < numbers[0].value <= MOST or numbers[0].value % 1:
        return 0
    number, kinds = numbers[0], told.kinds()
    fillers = [piece for piece in told.pieces if piece.kind is K.FILLER]
    points = any(is_be(piece) or is_cued(piece.text.split()[0], THAT) for piece in fillers)
    crossed = (K.TIMES in kinds and points) or _did_of_those(told)
    in_hand = told.context.doing in (None, told.context.recent[-1].done.exercise)
    counted = number.role is Role.TIMES or (number.role is Role.SETS and (points or in_hand))
    return int(number.value) if crossed or counted else 0


def _did_of_those(told: Told) -> bool:
    """ "did 4 of those", "i did 5 of em", "there were 3 of them"; "eine davon war 7" tells of one of them."""
    if told.pieces[-1] == told.numbers()[0]:
        return False
    words = [piece.text for piece in told.pieces]
    ended = any_cued(words, OF_THOSE) or any_cued([" ".join(words[-2:])], OF_THOSE)
    done = any_cued(told.words, DID) or any(map(is_be, told.pieces))
    return ended and done and told.numbers()[0].role is Role.BARE


DID = frozenset(("did",))


def _may_stand(piece: Piece) -> bool:
    return piece.kind is not K.ALTERED or is_cued(piece.text, OF_THOSE)

"""Numbers that count or name other things than sets: people, machines, hours, weeks, dumbbells owned.

thing    = NUMBER [ MORE ] ( plural word | person | [ name ] FIXTURE )     "3 guys", "2 squat racks"
people   = NUMBER "of" PEOPLE                                              "2 of us fit on it"
fixture  = ( name | word ) NUMBER [ "and" NUMBER ] [ "is" ] TAKEN          "bench 3 is free", "machine 7 broken"
hour     = ( SINCE | UNTIL ) NUMBER                                        "up since 5", "gym until 7"
often    = NUMBER "x" "a" week                                             "squat 3x a week"
span     = NUMBER week                                                     "a 2 week break"
owned    = equipment ( "are" | "weigh" ) NUMBER                            "my dumbbells are 2x24kg"
Each of them makes talk of its clause. Parts in capitals are cues of the language files.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import lru_cache

from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook, spoken
from engine.reading.words.pieces import COUNTED, Piece, Role, is_one_word

SET_SIGNS = frozenset((K.TIMES, K.AT, K.NAME))
MARKING = frozenset((K.MISS, K.FAILURE, K.EFFORT, K.DROP, K.WARMUP, K.ONLY, K.GOT))
LEAST_PLURAL = 4
MOST_THINGS = 30
"""More than so many of a thing that no word is known for may be a load: "140 bonnes sensations". Common practice, no
source.
"""
OWNED = frozenset((K.DUMBBELL, K.BARBELL, K.KETTLEBELL, K.PLATE, K.BAR, K.MACHINE, K.PIN))
THINGS = frozenset((K.OTHERS, K.FAR, K.UNRELATED, K.MINUTES, K.SECONDS))
LAST_HOUR = 24
LONGEST_HOLD = 300
"""Seconds; from here on a time is no hold. Common practice, no source."""
COUNTED_UP = frozenset((K.REPS, K.SETS))
"""In the singular ahead of a number: "on rep 4", "on set 2"."""
OTHER_COUNTS = frozenset((Role.NOT_A_SET, Role.SECONDS))
BEFORE_A_FIXTURE = frozenset((K.NAME, K.MACHINE, K.PLAIN, K.CABLE, K.UNRELATED))


def counts_other_things(clause: Sequence[Piece], kinds: Sequence[K]) -> bool:
    """Whether the numbers of a clause count no reps: "3 guys are waiting", "bench 3 is free", "up since 5"."""
    if K.TIMES in kinds:
        return _tells_how_often(clause, kinds) or _is_owned(clause, kinds)
    numbers = [at for at, kind in enumerate(kinds) if kind in COUNTED]
    if not numbers:
        return False
    if _is_fixture(clause, numbers) or _is_owned(clause, kinds) or _shares_fixtures(clause, numbers):
        return True
    if len(numbers) == 2 and kinds[numbers[0] + 1] is K.OUT_OF and K.NAME not in kinds:
        return kinds[numbers[1] + 1 : numbers[1] + 2] in ([K.PLAIN], [K.OTHERS], [K.MACHINE], [K.UNRELATED])
    return _one_counts(clause, kinds, numbers)


def _one_counts(clause: Sequence[Piece], kinds: Sequence[K], numbers: Sequence[int]) -> bool:
    left = [at for at in numbers if clause[at].role not in OTHER_COUNTS] if len(numbers) > 1 else numbers
    if len(left) != 1:
        return False
    at = left[0]
    if clause[at].role is Role.SECONDS and clause[at].value >= LONGEST_HOLD and K.NAME not in kinds:
        return at + 1 < len(clause) and clause[at + 1].kind in (K.PLAIN, K.UNRELATED)  # "then a 20 min drive"
    if clause[at].role is Role.TIMES:
        return at + 1 < len(clause) and _word(clause[at + 1]) in phrasebook().cues["often"]
    if _counts_fixtures(clause, at) or _is_hour(clause, at) or _is_span(clause, at, kinds):
        return True
    if at and clause[at - 1].kind is K.UNRELATED and clause[at].role is Role.BARE:
        return True  # "the platform costs 5 extra"
    if not SET_SIGNS.isdisjoint(kinds[: at + 1]) or K.AT in kinds:
        return False
    return _counts_a_thing(clause, at, K.NAME in kinds)


def _counts_a_thing(clause: Sequence[Piece], at: int, named: bool) -> bool:
    """ "3 guys are waiting", "2 exercises left", "a twinge on rep 4": the only number counts no reps."""
    before, after = clause[at - 1] if at else None, clause[at + 1] if at + 1 < len(clause) else None
    bare = clause[at].role is Role.BARE
    if named:
        return bare and after is not None and after.kind is K.OTHERS
    if any(piece.kind is K.FOR for piece in clause[max(0, at - 1) : at + 2]):
        return False
    if any(piece.kind is K.PAIN for piece in clause[:at]):
        return True
    if before is not None and before.kind in COUNTED_UP and not before.text.endswith("s"):
        marked = not MARKING.isdisjoint([piece.kind for piece in clause])  # "missed the third on set 3"
        return before.kind is K.REPS or (at > 1 and after is None and not marked)  # "i am on set 3"
    return bare and after is not None and _is_a_thing(clause, at)


def _is_a_thing(clause: Sequence[Piece], at: int) -> bool:
    """Whether what stands behind the number there is a thing that is counted."""
    after = clause[at + 1]
    behind = clause[at + 2] if at + 2 < len(clause) else after
    if after.kind is K.OF:
        return _word(behind) in phrasebook().cues["people"]
    if "sort" in CUES_OF[after.text] and behind.kind in OWNED:
        return True
    if after.kind is K.MORE or ("sort" in CUES_OF[after.text] and behind.kind is K.PLAIN) or _is_told_of(after, behind):
        after = behind  # "got 2 new collars", "3 different people asked me"
    few = clause[at].value <= MOST_THINGS
    plural = few and after.kind is K.PLAIN and len(after.text) >= LEAST_PLURAL and after.text.endswith("s")
    return plural or after.kind in THINGS or _word(after) in phrasebook().cues["things"]


def _is_told_of(word: Piece, thing: Piece) -> bool:
    """Whether a word says what people or plural things are like, and not how the reps of a set went."""
    return word.kind is K.PLAIN and (thing.kind in (K.FAR, K.OTHERS, K.PLAIN) or thing.kind in THINGS)


def _counts_fixtures(clause: Sequence[Piece], at: int) -> bool:
    """ "only 2 squat racks here"."""
    after = clause[at + 1] if at + 1 < len(clause) else None
    plural = after is not None and after.kind is K.NAME and after.end - after.start == len(after.text) + len("es")
    if plural and after is not None and f"{after.text}es" in phrasebook().cues["fixture"]:
        return True
    behind = at + 1 + (at + 1 < len(clause) and clause[at + 1].kind is K.NAME)
    return (
        clause[at].role is Role.BARE and behind < len(clause) and _word(clause[behind]) in phrasebook().cues["fixture"]
    )


def _shares_fixtures(clause: Sequence[Piece], numbers: Sequence[int]) -> bool:
    """ "3 benches for 40 lifters"."""
    if len(numbers) != 2 or numbers[1] + 1 >= len(clause) or not _counts_fixtures(clause, numbers[0]):
        return False
    between = [piece.kind for piece in clause[numbers[0] + 1 : numbers[1]]]
    return K.FOR in between and clause[numbers[1] + 1].kind in (K.PLAIN, K.OTHERS)


def _is_fixture(clause: Sequence[Piece], numbers: Sequence[int]) -> bool:
    """ "bench 2 and 3 are taken": what stands there, by its numbers."""
    first, last = numbers[0], numbers[-1]
    listed = all(clause[at].kind in (K.NUMBER, K.AND) for at in range(first, last + 1))
    if not listed or len(numbers) > 2 or not first or clause[first - 1].kind not in BEFORE_A_FIXTURE:
        return False
    cues = phrasebook().cues
    name = clause[first - 1]
    if name.kind is K.NAME and f"{name.text}es" not in cues["fixture"] and K.LEFT in [one.kind for one in clause]:
        return False  # "side plank 30s left shaky"
    behind = [_word(piece) for piece in clause[last + 1 :]]
    told = next((word for word in behind if word not in cues["aroundtaken"]), "")
    if name.kind is K.NAME and f"{name.text}es" not in cues["fixture"]:
        # "leg press 3 is free"; "plank 60s full range", "pull ups 12 out of breath" tell of a set
        return told in _states_of_fixtures() and behind[-1:] == [told] and is_one_word(clause[-1])
    return told in _states_of_fixtures()


@lru_cache(maxsize=1)
def _states_of_fixtures() -> frozenset[str]:
    """The first words of "taken", "out of order", "free"."""
    cues = phrasebook().cues
    return frozenset(state.split()[0] for state in (*cues["taken"], *cues["free"]))


def _is_hour(clause: Sequence[Piece], at: int) -> bool:
    before = clause[at - 1] if at else None
    if before is None or before.kind is not K.NOT_DATE or clause[at].role is not Role.BARE:
        return False
    cues = phrasebook().cues
    told = _word(before) in cues["untilday"] or _word(before) in cues["since"]
    return told and clause[at].value <= LAST_HOUR and all(piece.kind is not K.NAME for piece in clause)


def _is_span(clause: Sequence[Piece], at: int, kinds: Sequence[K]) -> bool:
    """ "back from a 2 week break"; and not "8 week 3"."""
    if at + 1 >= len(clause) or clause[at].role is not Role.BARE or K.NAME in kinds:
        return False
    return _word(clause[at + 1]) in phrasebook().cues["span"] and K.NUMBER not in kinds[at + 2 :]


def _tells_how_often(clause: Sequence[Piece], kinds: Sequence[K]) -> bool:
    at = kinds.index(K.TIMES)
    if kinds.count(K.TIMES) != 1 or at + 1 >= len(clause) or not COUNTED.isdisjoint(kinds[at + 1 :]):
        return False
    after = clause[at + 1]
    spanned = at + 2 < len(clause) and _word(clause[at + 2]) in phrasebook().cues["span"]
    return (spanned or after.kind in (K.FILLER, K.PLAIN, K.EACH)) and _word(after) in phrasebook().cues["often"]


def _is_owned(clause: Sequence[Piece], kinds: Sequence[K]) -> bool:
    first = next((at for at, kind in enumerate(kinds) if kind in COUNTED), len(kinds))
    if K.NAME in kinds or OWNED.isdisjoint(kinds[:first]):
        return False
    return not phrasebook().cues["weighs"].isdisjoint([_word(piece) for piece in clause[:first]])


def _word(piece: Piece) -> str:
    return spoken(piece.text)

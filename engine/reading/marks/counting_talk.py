"""Words that count, repeat or compare sets, where a remark counts something else with them: "another good day".

clause  = words between separators, behind the last number or lift of it
more    = ANOTHER word* THING             "another good day", "one more session"; an unknown word is asked
anew    = WORD word* AGAIN                "slow again", "back at it again"
alike   = FELT word* SAME                 "all sets felt the same"
times   = ONCE AS WORD                    "twice as tired"
each    = EVERY COUNT                     "every single rep counted"
one     = COUNT word                      "double shift at work"; asked, where a set stands right before it
amount  = TOTAL word | EXTRA word | OUT-OF word     "total mess", "extra rests", "out of breath"; without a number
placed  = ( FIRST | MIDDLE | LAST ) [ of ] THING     "first week done", "last one of the year"
things  = NUMBER WORDED word              "80x8 four eyes on my form": asked
limb    = NUMBER WORDED LIMB word         "one hand taped", "one side slower"
part    = HALF-OF THING                   "half the gym was empty"
A clause that names sets or reps, or tells a number behind the word, keeps the word what it is.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from typing import NamedTuple

from engine.reading.marks.sets_called_warm_ups import with_sets_called_warm_ups
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role, kinds_in_order, kinds_of, places_in, places_of

PLACED = frozenset((K.FIRST, K.MIDDLE, K.LAST))
COUNTING = PLACED | {K.ANOTHER, K.SAME, K.ONCE, K.COUNT, K.TOTAL, K.ADDED, K.OUT_OF, K.ALTERED}
COUNTING_PERHAPS = COUNTING | {K.PLAIN, K.OTHERS, K.FAR, K.NOTE, K.SORE}
OF_OTHER_SETS = frozenset((K.ANOTHER, K.ONCE, K.TOTAL, K.ADDED))
"""Beside words for sets or reps these are of them: "another good set"."""
ENDS = frozenset((K.COMMA, K.STOP, K.LINE, K.OPEN, K.CLOSE, K.THEN, K.QUESTION, K.AND))
OF_SETS = frozenset(
    (K.NUMBER, K.NAME, K.TIMES, K.KG, K.LB, K.SECONDS, K.METRES, K.MINUTES, K.AT, K.SLASH, K.PLUS, K.MISS, K.FAILURE,
     K.DROP, K.EACH, K.EFFORT, K.COLON, K.EQUALS, K.ARROW, K.WARMUP, K.GOT)
)  # fmt: skip
"""Behind the last of them a clause tells no set with numbers."""
NAMING_SETS = frozenset((K.SETS, K.REPS, K.COUNT, K.ROUNDS))
THINGS = frozenset((K.HEADING, K.UNRELATED, K.FAR, K.REST, K.OTHERS, K.STORY, K.BAR, K.MACHINE))
NOUNS = frozenset(("workout", "day", "week", "span", "record", "notaset", "worn"))
DESCRIBING = frozenset((K.NOTE, K.FILLER, K.PLAIN, K.OF))
DESCRIBED = frozenset((K.NOTE, K.JOINT, K.MUSCLE, K.SORE, K.UNRELATED, K.HEADING, K.OTHERS, K.PAIN, K.DENIED, K.REST))
CONTENT = frozenset((K.NOTE, K.PLAIN, K.UNRELATED, K.HEADING, K.FAR, K.REST, K.JOINT, K.MUSCLE))
SINGLED = frozenset((K.PLAIN, K.UNRELATED, K.REST, K.OTHERS, K.BODY))
ALIKE = frozenset(("all", "every"))
REPEATING, NEVER = frozenset(("aroundagain",)), frozenset(("notagain",))
ANEW, FELT = frozenset(("anew",)), frozenset(("felt", "seemed"))
AS, EVERY, SURPLUS, ONE = frozenset(("asmuch",)), frozenset(("every",)), frozenset(("surplus",)), frozenset(("an",))
LINKING, HALVED = frozenset(("of", "the", "onlift")), frozenset(("halfof",))
COUNTED_PERHAPS, OR = frozenset((K.PLAIN, K.OTHERS, K.FAR)), frozenset(("or",))
ARTICLE, COMPARED = frozenset(("the",)), frozenset(("heavier", "lighter"))
SPANS = frozenset(("span",))
WORDS_OF_IT = frozenset((K.PLAIN, K.NOTE, K.UNRELATED))
SIDES = frozenset((K.LEFT, K.RIGHT, K.EACH))
PLURAL = "s"
REACH, REACH_OF_A_FEEL = 10, 2


def with_counting_talk(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with such words made remarks where they count no sets, or unclear where they may."""
    kinds = kinds_in_order(pieces)
    if K.WARMUP in kinds:
        pieces = with_sets_called_warm_ups(pieces)
        kinds = kinds_in_order(pieces)
    worded = [at for at in places_of(K.NUMBER, kinds) if pieces[at].spelled]
    told = places_in(COUNTING, kinds)
    out: list[Piece] = []
    behind = 0
    for at in sorted({*told, *worded}) if worded else told:
        if at < behind:
            continue
        start, end = at, at + 1
        while start > behind and not _ends_a_clause(pieces[start - 1]):
            start -= 1
        while end < len(pieces) and not _ends_a_clause(pieces[end]):
            end += 1
        out += [*pieces[behind:start], *_settled(pieces[start:end], bool(worded))]
        behind = end
    return [*out, *pieces[behind:]]


def _ends_a_clause(piece: Piece) -> bool:
    """Whether a clause ends there; in "deux fois plus fatigué" the word that adds a set says how much."""
    if piece.kind in ENDS:
        return piece.kind is not K.AND or not is_cued(piece.text, AS)
    return piece.kind is K.DASH and not piece.glued


def _settled(clause: list[Piece], worded: bool) -> list[Piece]:
    """The clause with its words settled. `worded`: the message holds numbers in words."""
    if worded:
        clause = _with_things_counted(clause)
    if COUNTING.isdisjoint(kinds_of(clause)):
        return clause
    tail = next((at + 1 for at in range(len(clause) - 1, -1, -1) if clause[at].kind in OF_SETS), 0)
    words = clause[tail:]
    of_sets = not NAMING_SETS.isdisjoint(kinds_of(words))
    out = clause[:tail]
    for at, piece in enumerate(words):
        rule = RULES.get(piece.kind)
        if rule is None or (of_sets and piece.kind in OF_OTHER_SETS):
            out.append(piece)
            continue
        around = Around(piece, words[max(0, at - REACH) : at], words[at + 1 : at + 1 + REACH], bool(tail))
        meant = rule(around)
        out.append(piece if meant is None else piece._replace(kind=meant, told=0))
    return out


def _with_things_counted(clause: list[Piece]) -> list[Piece]:
    """A number in words that may count something else is unclear."""
    out = clause
    for at in range(len(clause) - 1):
        number, before = clause[at], clause[at - 1] if at else None
        if not number.spelled or number.kind is not K.NUMBER:
            continue
        if (before is None or before.kind is K.NUMBER) and _is_a_limb_told_of(clause, at + 1):
            out = list(clause) if out is clause else out
            out[at : at + 2] = [number._replace(kind=K.NOTE), clause[at + 1]._replace(kind=K.NOTE)]
            continue
        behind = at + 1 + 2 * is_cued(clause[at + 1].text, OR)
        thing = clause[behind] if behind < len(clause) else None
        heads = behind + 1 < len(clause) and clause[behind + 1].kind is K.COLON  # "then two real ones: 80x6, 80x5"
        if thing is not None and not heads and not is_cued(thing.text, SPANS) and _may_count(number, before, thing):
            out = list(clause) if out is clause else out
            out[at] = number._replace(kind=K.UNCLEAR)
    return out


def _is_a_limb_told_of(clause: list[Piece], at: int) -> bool:
    """ "one hand taped", "one side was slower": words, and no number, behind a limb or a side."""
    if clause[at].kind is not K.EACH or at + 1 == len(clause):
        return False
    word = clause[at + 1]
    worded = word.kind in DESCRIBING_A_LIMB or is_cued(word.text, SPEAKING)
    return worded and not any(clause[place].kind in OF_SETS for place in range(at + 1, len(clause)))


SPEAKING = frozenset(("was", "were", "felt", "is"))
DESCRIBING_A_LIMB = DESCRIBING | {K.WITH}
""" "one side at a time"."""


def _may_count(number: Piece, before: Piece | None, thing: Piece) -> bool:
    """Whether a number in words may count the thing behind it: "80x8 four eyes", "one rep felt off"."""
    if number.role is Role.REPS:
        return is_cued(thing.text, FELT)
    if number.role is not Role.BARE:
        return False
    if before is None:
        return thing.kind is K.PLAIN and not thing.text.endswith(PLURAL)  # "three coins" are no reps: talk
    counted = thing.kind in COUNTED_PERHAPS or is_cued(thing.text, SPEAKING)  # "two were ugly"
    return before.kind is K.NUMBER and not before.spelled and counted


class Around(NamedTuple):
    """A word and those beside it in its clause; `joined`: sets are told ahead of them without a separator."""

    word: Piece
    before: Sequence[Piece]
    behind: Sequence[Piece]
    joined: bool


def _another(one: Around) -> K | None:
    """ "another good day", "one more session"; "another sneaky" may be a set that was it."""
    unknown = False
    for word in one.behind:
        if word.kind in THINGS or is_cued(word.text, NOUNS):
            return K.NOTE
        if word.kind not in DESCRIBING or is_cued(word.text, ONE):
            return None
        unknown = unknown or word.kind is K.PLAIN
    return K.UNCLEAR if unknown else None


def _same(one: Around) -> K | None:
    """ "slow again", "all sets felt the same", "all the same"; not "never again", "did it again"."""
    if any(is_cued(piece.text, FELT) for piece in one.before[-REACH_OF_A_FEEL:]):
        return K.NOTE
    if not is_cued(one.word.text, ANEW):
        return K.NOTE if not one.joined and any(is_cued(piece.text, ALIKE) for piece in one.before) else None
    if any(is_cued(piece.text, NEVER) for piece in one.before):
        return None
    if any(is_cued(piece.text, REPEATING) for piece in one.before[:1]):
        return None
    kinds = kinds_of(one.before)
    return K.NOTE if not kinds.isdisjoint(DESCRIBED) else K.UNCLEAR if K.PLAIN in kinds else None


def _once(one: Around) -> K | None:
    """ "twice as tired", "twice the fun", "twice heavier"; "twice as planned" counts sets."""
    if one.behind and is_cued(one.behind[0].text, COMPARED):
        return K.NOTE
    if len(one.behind) == 1 or not one.behind or one.behind[1].kind not in CONTENT:
        return None
    if one.behind[0].kind is K.MORE or is_cued(one.behind[0].text, AS):
        return K.NOTE
    return (K.UNCLEAR if one.joined else K.NOTE) if is_cued(one.behind[0].text, ARTICLE) else None


def _count(one: Around) -> K | None:
    """ "every single rep counted", "double shift at work"."""
    if one.before and is_cued(one.before[-1].text, EVERY):
        return K.NOTE
    thing = one.behind[0] if one.behind and not one.before else None
    if thing is None or (thing.kind not in SINGLED and not is_cued(thing.text, NOUNS)):
        return None
    return K.UNCLEAR if thing.kind is K.PLAIN or one.joined else K.NOTE


def _amount(one: Around) -> K | None:
    """ "total mess", "extra rests", "out of breath": no number stands beside it; "80x8 total pump" is asked."""
    if one.joined and one.word.kind is K.TOTAL and not one.before:
        return K.UNCLEAR if one.behind and one.behind[0].kind in WORDS_OF_IT else None
    if one.joined or CONTENT.isdisjoint(kinds_of(one.behind)):
        return None
    return None if one.word.kind is K.ADDED and not is_cued(one.word.text, SURPLUS) else K.NOTE


def _placed(one: Around) -> K | None:
    """ "first week done", "middle of the night": a time has its parts, too; "left first", "weak side first"."""
    if one.word.kind is K.FIRST and one.before and not one.behind and one.before[-1].kind in SIDES:
        return K.NOTE
    thing = _linked(one)
    return K.NOTE if thing is not None and _is_a_time(thing) else None


def _half_of(one: Around) -> K | None:
    """ "half the gym was empty", "felt like half the weight"; "half of them" are sets."""
    thing = _linked(one) if not one.joined and is_cued(one.word.text, HALVED) else None
    if thing is None:
        return None
    felt = any(is_cued(piece.text, FELT) for piece in one.before)
    return K.NOTE if felt or _is_a_time(thing) or thing.kind is K.PLAIN else None


def _linked(one: Around) -> Piece | None:
    """The word behind "of the", "in the"."""
    return next((word for word in one.behind if not is_cued(word.text, LINKING)), None)


def _is_a_time(word: Piece) -> bool:
    return word.kind in (K.HEADING, K.HALF, K.FAR) or is_cued(word.text, NOUNS)


RULES: Mapping[K, Callable[[Around], K | None]] = {
    K.ANOTHER: _another,
    K.SAME: _same,
    K.ONCE: _once,
    K.COUNT: _count,
    K.TOTAL: _amount,
    K.ADDED: _amount,
    K.OUT_OF: _amount,
    K.ALTERED: _half_of,
    **dict.fromkeys(PLACED, _placed),
}

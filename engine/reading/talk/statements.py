"""Sets in a sentence that states something of them, or of somebody who did better: whether they were done is not told.

statement = sets name IS ( feel | unknown word )        30 sec plank is boring        5x5 squat is brutal
          | name IS sets                                bench is 90x5
          | name sets IS ( feel | unknown word )        squat 5x5 is brutal
          | ( "the" | "that" ) sets ... SEEMS feel            that 4x8 at 50 looks too easy: of the plan, and no set
counts    = NUMBER word "on" "the" name                 3 fellas on the bench
habit     = sets DAILY                                  60 push ups a day
wished    = sets SOON | PLAN ... ":" sets | ... "would" name sets        bench 100x5 soon        menu: squat 5x5 100
beaten    = PERSON BEAT ... "," sets                    my sister beat me, 12 push ups
done_by   = sets [ "by" | "for" ] PERSON                bench 60x8, 70x8 my sister
          | sets ... sets ( "by" | "for" ) WORD         bench 60x8, 70x8 for tove     WORD: one that no list knows
          | sets "me" ... sets WORD                     bench 60x8 me, 70x8 tove
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import lru_cache
from itertools import pairwise

from engine.reading.lexing.name_words import ANGLES
from engine.reading.marks.plan_sections import PLANS
from engine.reading.talk.clauses_of_talk import counted
from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import CUES_OF, any_cued, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.people import is_somebody
from engine.reading.words.phrasebook import phrasebook, spoken, spoken_words
from engine.reading.words.pieces import (
    COUNTED,
    TEXT,
    Piece,
    Role,
    first_word,
    is_one_word,
    kinds_in_order,
    kinds_of,
)
from engine.reading.words.tokens import Token

SENTENCE_ENDS = frozenset((K.LINE, K.STOP))
CLAUSE_ENDS = SENTENCE_ENDS | {K.COMMA, K.DASH, K.THEN}
THINGS = frozenset((K.NAME, K.BAR, K.MACHINE, K.PLATE))
SPOKEN_OF = THINGS | COUNTED | {K.KG, K.LB, K.REPS}
FEW = 3
FELT = frozenset((K.NOTE, K.PAIN, K.SORE))
TOLD_OF_IT = FELT | {K.PLAIN, K.ASKS, K.SAYING}


def is_a_statement(pieces: Sequence[Piece]) -> bool:
    """Whether it is said of sets how they are, and not how they were."""
    for at in range(1, len(pieces) - 1):
        seems = _seems(pieces[at])
        if not (seems or _is_is(pieces[at])) or pieces[at - 1].kind not in SPOKEN_OF:
            continue
        start = at
        while start and pieces[start - 1].kind not in CLAUSE_ENDS:
            start -= 1
        if pieces[at - 1].kind in THINGS and pieces[at + 1].kind in COUNTED and not seems:
            return True  # "team average on bench is 90x5"
        if COUNTED.isdisjoint([piece.kind for piece in pieces[start:at]]):
            continue
        behind = [piece for piece in pieces[at + 1 : at + 1 + FEW] if piece.kind is not K.FILLER]
        if (
            behind
            and behind[0].kind in TOLD_OF_IT
            and "wellknown" not in CUES_OF[behind[0].text]
            and (behind[0].kind in FELT or not seems)
        ):
            return True
    return False


def is_an_opinion(clause: Sequence[Piece]) -> bool:
    """ "the 3x10 at 60 you gave me looks light": said of sets that are pointed at, and not yet done."""
    told = [piece for piece in clause if piece.kind not in CLAUSE_ENDS]
    if not told or not is_cued(told[0].text, POINTING) or told[0].kind in COUNTED:
        return False
    last = max((at for at, piece in enumerate(told) if piece.kind in COUNTED), default=-1)
    verb = next((at for at in range(last + 1, len(told)) if _seems(told[at]) or _is_is(told[at])), 0)
    felt = [piece.kind for piece in told[verb + 1 :] if piece.kind is not K.FILLER]
    return last > 0 and verb > 0 and felt[:1] == [K.NOTE] and "wellknown" not in CUES_OF[told[verb + 1].text]


POINTING = frozenset(("the", "that", "those"))


def asks_or_waits(sentence: Sequence[Piece]) -> bool:
    """Whether the sentence asks which scheme is better, or asks to wait a second."""
    if not sentence or sentence[0].kind is K.NAME:
        return False
    return asks_to_wait(sentence) if sentence[0].role is Role.SECONDS else asks_which(sentence)


def asks_which(sentence: Sequence[Piece]) -> bool:
    """ "what's better for size, 5x5 or 3x12": two schemes to choose from, and no loads."""
    kinds = kinds_in_order(sentence)
    if kinds.count(K.TIMES) != TWO or kinds.count(K.NUMBER) != TWO * TWO:
        return False
    first = kinds.index(K.NUMBER)
    joint = first + len(A_PAIR)
    paired = kinds[first:joint] == A_PAIR == kinds[joint + 1 : joint + 1 + len(A_PAIR)]
    asked = any_cued(map(TEXT, sentence), CHOOSING) or K.ASKS in kinds[:first]
    return paired and is_cued(sentence[joint].text, OR) and asked


def asks_to_wait(sentence: Sequence[Piece]) -> bool:
    """ "one sec, water": a second and words, and no set of it."""
    return sentence[0].value == 1 and WORDS.issuperset([piece.kind for piece in sentence[1:]])


WORDS = frozenset((K.PLAIN, K.FILLER, K.NOTE, K.UNRELATED, K.COMMA, K.DASH, K.SETTING))


CHOOSING, OR = frozenset(("choosing",)), frozenset(("or",))
A_PAIR = [K.NUMBER, K.TIMES, K.NUMBER]
TWO = 2


def sets_a_machine(clause: Sequence[Piece], kinds: Sequence[K]) -> bool:
    """ "treadmill incline 12", "cardio incline 12 speed 5": a machine's setting, and no lift on an incline."""
    if K.UNRELATED not in kinds or K.TIMES in kinds:
        return False
    names = [piece.text for piece in clause if piece.kind is K.NAME]
    return bool(names) and ANGLES.issuperset(names)


def is_marked_planned(behind: Sequence[Piece]) -> bool:
    """ "deadlift 3x5 140 (planned)": the last word, in brackets or right behind the numbers; "140 was planned but"."""
    planned = phrasebook().cues["markedplanned"]
    for at in range(2, len(behind)):
        if is_cued(behind[at - 1].text, WAS) and spoken(behind[at].text) in planned and not counted(list(behind[at:])):
            return behind[at - 2].kind in ENDS_OF_SETS
    told = behind[:-1] if behind[-1].kind is K.CLOSE else behind
    if len(told) <= 1 or spoken(told[-1].text) not in planned:
        return False
    return told[-2].kind in (K.OPEN, *ENDS_OF_SETS)


WAS = frozenset(("was", "were"))


def names_sets_alone(pieces: Sequence[Piece]) -> bool:
    """ "set 2 and 3", "sets 1, 2": which sets, and nothing told of them."""
    if len(pieces) < LEAST_NAMED or pieces[0].kind is not K.SETS or pieces[2].kind is not K.AND:
        return False
    numbers = pieces[1::2]
    rising = all(one.value + 1 == other.value for one, other in pairwise(numbers))
    plain = all(piece.kind is K.NUMBER and piece.role is Role.BARE for piece in numbers)
    return plain and rising and all(piece.kind in (K.AND, K.COMMA) for piece in pieces[2::2]) and len(pieces) % 2 == 0


LEAST_NAMED = 4


def speaks_of_several(pieces: Sequence[Piece]) -> bool:
    """ "the first two were easy", "those two felt better", "first 2 had straps": sets that stand, and what they were
    like; "last 8 easy" is a set.
    """
    told = [piece for piece in pieces if piece.kind not in CLAUSE_ENDS]
    if len(told) < LEAST_OF_A_REMARK or not may_speak_of_several(told[0]) or told[1].kind is not K.NUMBER:
        return False
    count, said = told[1], told[2:]
    several = count.role is Role.BARE and 1 < count.value <= MOST_SPOKEN_OF
    had = K.RESERVE_LEFT in [piece.kind for piece in said] or told[0].kind is K.FIRST
    had = had or ((said[0].kind in HAVING or is_cued(first_word(said[0]), KIT)) and count.value <= MOST_HAVING)
    plainly = count.spelled or had or any(piece.text in PLURAL for piece in said)
    return several and plainly and {piece.kind for piece in said} <= OF_A_REMARK and said[-1].kind in ENDS_OF_A_REMARK


def may_speak_of_several(first: Piece) -> bool:
    """Whether the word may point at sets that stand: "first", "last", "those"."""
    return first.kind in (K.FIRST, K.LAST) or is_cued(first.text, THOSE)


THOSE = frozenset(("those",))
LEAST_OF_A_REMARK = 3
MOST_SPOKEN_OF = 6
HAVING = frozenset((K.WITH, K.PAUSE))
KIT = frozenset(("withkit",))
MOST_HAVING = 3
""" "last 2 with a belt" are sets; "last 5 with a belt" may be five reps. Common practice, no source."""
PLURAL = frozenset(("were", "are", "felt"))
ENDS_OF_A_REMARK = frozenset((K.NOTE, K.PAUSE, K.PLAIN))
OF_A_REMARK = ENDS_OF_A_REMARK | {K.FILLER, K.RESERVE_LEFT, K.WITH, K.NEVER, K.DENY, K.NOT}


def _seems(piece: Piece) -> bool:
    """ "looks light", "are too heavy": a plan is spoken of so."""
    return piece.kind is not K.NUMBER and "seems" in CUES_OF[piece.text]


def _is_is(piece: Piece) -> bool:
    """The present tense: what was done is told in the past. Common practice, no source. A bare "e" is "and"."""
    return "is" in CUES_OF[piece.text] and piece.text != "e"


def may_count_others(pieces: Sequence[Piece]) -> bool:
    """ "3 fellas on the bench", "8 tidy ones on bench": the only number counts something that no list knows."""
    numbers = [at for at, piece in enumerate(pieces) if piece.kind in COUNTED and piece.role is not Role.SECONDS]
    if len(numbers) != 1 or pieces[numbers[0]].role is not Role.BARE:
        return False
    behind = [piece.kind for piece in pieces[numbers[0] + 1 : numbers[0] + 1 + REACH]]
    name = behind.index(K.NAME) if K.NAME in behind else 0
    return name > 1 and behind[0] is K.PLAIN and LINKING.issuperset(behind[1:name])


LINKING = frozenset((K.FILLER, K.WITH, K.PLAIN, K.FOR))
REACH = 5


def may_be_ahead(pieces: Sequence[Piece], tokens: list[Token]) -> bool:
    """ "bench 100x5 soon", "today's menu: squat 5x5 100", "younger me would squat 150x5": a wish as much as a set."""
    counts = [at for at, piece in enumerate(pieces) if piece.kind in COUNTED]
    if not counts:
        return False
    last = counts[-1] + (pieces[counts[-1] + 1 : counts[-1] + 2] != [] and pieces[counts[-1] + 1].kind is K.NAME)
    said_of_all = spoken_words(tokens)
    if K.SAYING not in kinds_of(pieces) and _words_of_other_times().isdisjoint([word for word, _ in said_of_all]):
        return _is_headed(pieces) or _is_imagined(pieces[: counts[0]])
    behind = [word for word, token in said_of_all if token.start >= pieces[last].end]
    words = " ".join(behind)
    ahead = [word for word, token in said_of_all if token.start < pieces[counts[0]].start]
    unsure = words in phrasebook().cues["unsure"] and _clause_up_to(pieces, counts[-1]) <= OF_SETS
    unsure = unsure or _is_behind_or_ahead(pieces, words) or _may_be_to_come(pieces)
    parted = any(piece.kind in PARTED_OFF for piece in pieces[: counts[0]])  # "one day late, squat 3x5 100"
    said = last + 1 < len(pieces) and pieces[last + 1].kind is K.SAYING  # "bench 140x1 says the app"
    said = said and "shown" not in CUES_OF[pieces[last + 1].text]
    if unsure or said or (not parted and (_opens_elsewhere(ahead) or _opens_elsewhere(_opening(pieces, said_of_all)))):
        return True
    habit = any(" ".join(behind[:length]) in phrasebook().cues["daily"] for length in (1, 2, 3))
    wished = (words in phrasebook().cues["someday"] or _ends_some_day(said_of_all)) and all(
        piece.kind is not K.FUTURE for piece in pieces
    )
    return wished or habit or _is_headed(pieces) or _is_imagined(pieces[: counts[0]])


@lru_cache(maxsize=1)
def _words_of_other_times() -> frozenset[str]:
    """The longest word of each phrase for what is in doubt, done daily, to come, or done as a habit: without it the
    phrase cannot stand.
    """
    cues = phrasebook().cues
    return frozenset(max(phrase.split(), key=len) for cue in OF_OTHER_TIMES for phrase in cues[cue])


OF_OTHER_TIMES = ("unsure", "daily", "someday", "later", "habitual", "trailingthen", "stilltocome")


def _is_behind_or_ahead(pieces: Sequence[Piece], words: str) -> bool:
    """ "bench 3x8 65 after": of one lift alone it may be done, or what comes behind that of another message."""
    if words not in phrasebook().cues["trailingthen"]:
        return False
    kinds = [piece.kind for piece in pieces]
    return kinds.count(K.NAME) == 1 and kinds[:1] == [K.NAME] and K.THEN not in kinds[:-1] and K.LINE not in kinds


def _may_be_to_come(pieces: Sequence[Piece]) -> bool:
    """ "noch bankdrücken 3x8 80", "next bench 3x8 80", "bankdrücken 80x8, noch 3 sätze": done, or still to be done."""
    if is_cued(pieces[0].text, STILL_TO_COME) and is_one_word(pieces[0]):
        counted = kind_at(pieces, 1) is K.NUMBER and pieces[1].role is Role.SETS
        if kind_at(pieces, 1 + counted) is K.NAME:
            return True
    last, more = pieces[-1], pieces[-2] if len(pieces) > 1 else pieces[-1]
    counts = last.kind is K.NUMBER and last.role is Role.SETS and K.NAME in kinds_in_order(pieces[:-2])
    return counts and more.kind is K.ANOTHER and is_cued(more.text, STILL_TO_COME)


STILL_TO_COME = frozenset(("stilltocome",))


def _ends_some_day(said: Sequence[tuple[str, Token]]) -> bool:
    """ "bench 100x2 in two weeks": the words that count the time to come stand right behind the numbers."""
    words = [word for word, _ in said[-LONGEST_TIME:]]
    someday = phrasebook().cues["someday"]
    return any(" ".join(words[at:]) in someday and words[at - 1].isdigit() for at in range(1, len(words) - 1))


LONGEST_TIME = 4
""" "100x2 in two weeks". Common practice, no source."""


PARTED_OFF = frozenset((K.COMMA, K.STOP))


def _opening(pieces: Sequence[Piece], said: Sequence[tuple[str, Token]]) -> list[str]:
    """The first words of a message up to its lift, where a number stands among them: "in two weeks bench 100x2"."""
    name = next((piece for piece in pieces[: REACH + 1] if piece.kind is K.NAME), None)
    return [word for word, token in said if token.start < name.start] if name is not None else []


def _opens_elsewhere(ahead: Sequence[str]) -> bool:
    """ "one day squat 200x1", "later: bench 3x5 80", "i usually squat 3x5 100": of no set of now."""
    cues = phrasebook().cues
    first = ahead[0] if ahead else ""
    some_day = any(" ".join(ahead[:length]) in cues["someday"] for length in (1, 2, 3))
    return some_day or first in cues["later"] or not cues["habitual"].isdisjoint(ahead)


def _clause_up_to(pieces: Sequence[Piece], at: int) -> set[K]:
    """The kinds of the clause that goes up to a place."""
    start = next((place for place in range(at, 0, -1) if pieces[place - 1].kind in CLAUSE_ENDS), 0)
    return {piece.kind for piece in pieces[start : at + 1]}


OF_SETS = frozenset((K.NAME, K.NUMBER, K.COUNT, K.TIMES, K.KG, K.LB, K.SETS, K.REPS, K.FOR, K.FILLER, K.OF, K.WITH))
""" "3x8 60 @8 maybe" doubts the effort alone, and "could do 7 maybe" tells of none that were done."""


def _is_headed(pieces: Sequence[Piece]) -> bool:
    """ "program for monday - squat 5x5 100"."""
    name = next((at for at, piece in enumerate(pieces) if piece.kind is K.NAME), 0)
    ahead = pieces[:name]
    if not ahead or ahead[-1].kind not in (K.COLON, K.DASH) or any(piece.kind is K.LINE for piece in pieces):
        return False
    return any_cued([piece.text for piece in ahead], PLANS)


def _is_imagined(ahead: Sequence[Piece]) -> bool:
    start = next((at for at in range(len(ahead), 0, -1) if ahead[at - 1].kind in CLAUSE_ENDS), 0)
    named = any(piece.kind is K.NAME for piece in ahead)
    return named and any("would" in CUES_OF[piece.text] and piece.kind is K.ASKS for piece in ahead[start:])


def beaten_by(pieces: Sequence[Piece]) -> Piece | None:
    """Who did better in a clause of its own in front of the sets; None where nobody is told."""
    beats = phrasebook().cues["beats"]
    who: Piece | None = None
    for piece, after in pairwise(pieces):
        if piece.kind in COUNTED or piece.kind in SENTENCE_ENDS:
            return None
        if piece.kind is K.OTHERS:
            who = piece
        elif who is not None and (spoken(piece.text) in beats or f"{spoken(piece.text)} {spoken(after.text)}" in beats):
            return who
    return None


def done_by(pieces: Sequence[Piece]) -> Piece | None:
    """Who is told right behind the numbers of a clause, as those that are theirs; None for nobody, or one who is
    spoken to: "100x5, mate".
    """
    for at in range(1, len(pieces)):
        who = pieces[at]
        if who.kind not in MAY_BE_WHO or (at + 1 < len(pieces) and pieces[at + 1].kind not in CLAUSES_PARTED):
            continue
        if who.kind is K.PLAIN:
            if _did_the_others(pieces, at):
                return who
            continue
        several = not is_one_word(who) or "him" in CUES_OF[who.text]
        before = pieces[at - 1 - (pieces[at - 1].kind in BY_WHOM or pieces[at - 1].kind is K.OF)]
        if several and before.kind in COUNTED:
            return who
    return None


def _did_the_others(pieces: Sequence[Piece], at: int) -> bool:
    """ "60x8, 70x8 for tove", "60x8 me, 70x8 tove": a word behind numbers that others stand in front of."""
    told = pieces[at - 1].kind in BY_WHOM
    numbers = at - 1 - told
    numbers -= numbers > 0 and pieces[numbers].kind is K.OPEN
    if not is_somebody(pieces[at]) or CUES_OF[pieces[at].text] or pieces[numbers].kind not in ENDS_OF_SETS:
        return False
    start = next((place for place in range(numbers, 0, -1) if pieces[place].kind in CLAUSES_PARTED), 0)
    ahead = pieces[:start]
    if COUNTED.isdisjoint([piece.kind for piece in ahead]):
        return False
    return told or any("myturn" in CUES_OF[piece.text] for piece in ahead)


MAY_BE_WHO = frozenset((K.OTHERS, K.PLAIN))
ENDS_OF_SETS = COUNTED | {K.KG, K.LB, K.REPS}
CLAUSES_PARTED = CLAUSE_ENDS | {K.AND, K.CLOSE, K.PLUS}
BY_WHOM = frozenset((K.BY, K.FOR))

"""Sets that were to be done and were not, told by words apart from each other: "ging squat 5x5 100 doen".

meant  = [ day | word ] MEANT sets TO_BE_DONE        had squat 5x5 100 planned
       | [ day | word ] WOULD lift ...               skulle knäböj 5x5 100 idag
missed = sets [ day ] NEVER                          squat 5x5 100 was on today, squat 5x5 100 fell through
       | sets "was" ON ( "but" | "," )               squat 5x5 100 was on but no time
       | sets PUT_OFF [ word ] day | PUT_OFF sets [ word ] day      squat 5x5 100 moved to friday
       | lift sets YET | YET [ ":" ] lift ...                       bench 3x8 65 still to go
Behind anything else such a NEVER or YET is a remark: "squat 5x5 100, the heating was on today", "80x8, 2 to go". Parts
in capitals are cues or labels of the language files; what is behind "but" is told by the rules of talk.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.talk.clauses_of_talk import BEHIND_ITS_SETS, CLAUSE_ENDS, turns
from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import CUES_OF, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import COUNTED, Piece, kinds_of

ENDS_OF_SETS = COUNTED | {K.KG, K.LB, K.REPS, K.NAME}
SETS = ENDS_OF_SETS | {K.TIMES, K.AT, K.FOR, K.OF, K.SETS, K.WITH, K.EFFORT}
DAYS = frozenset((K.DATE, K.TODAY, K.FILLER))
MEANT, TO_BE_DONE, WOULD = frozenset(("meantto",)), frozenset(("tobedone",)), frozenset(("wouldhave",))
DONE = frozenset(("did", "finished", "nailed"))
DENYING = frozenset((K.DENY, K.NEVER, K.NOT, K.FUTURE, K.TOMORROW))
PUT_OFF = frozenset(("putoff",))
STILL_TO_DO = 2
"""What the languages' files label words for what is still to be done with."""
WAS, ON = frozenset(("was", "were")), frozenset(("wason",))


def with_what_was_meant(sentence: list[Piece]) -> list[Piece]:
    """The sentence, with what tells that its sets were only meant made a word of a wish, or of something left out."""
    told = _with_what_is_left(_settled(sentence))
    lead = next((at for at, piece in enumerate(told) if piece.kind not in DAYS or _may_lead(piece)), len(told))
    if lead < len(told) and _tells_what_was_meant(told, lead):
        return [*told[:lead], told[lead]._replace(kind=K.FUTURE), *told[lead + 1 :]]
    at = _still_on(told) or _put_off(told)
    if not at and told and _says_put_off(told[0]) and _last_day(told):
        return [told[0]._replace(kind=K.FUTURE), *told[1:]]
    return [*told[:at], told[at]._replace(kind=K.NEVER, told=BEHIND_ITS_SETS), *told[at + 1 :]] if at else told


def _settled(sentence: list[Piece]) -> list[Piece]:
    """The sentence, with words that tell of sets right ahead of them made a remark behind anything else, or where they
    were done after all.
    """
    places = [at for at, piece in enumerate(sentence) if piece.kind is K.NEVER and piece.told == BEHIND_ITS_SETS]
    out = list(sentence)
    for at in places:
        if not _ends_sets(sentence[:at]):
            out[at] = sentence[at]._replace(kind=K.NOTE)
        elif _are_done(sentence[at + 1 :]):
            out[at] = sentence[at]._replace(kind=K.FILLER)
    return out if places else sentence


def _with_what_is_left(sentence: list[Piece]) -> list[Piece]:
    """The sentence, with "still to go" made what was not done behind a lift with its sets, and a wish ahead of one."""
    places = [at for at, piece in enumerate(sentence) if piece.kind is K.UNRELATED and piece.told == STILL_TO_DO]
    out = list(sentence) if places else sentence
    for at in places:
        ahead = at + 1 + (kind_at(sentence, at + 1) is K.COLON)
        if kind_at(sentence, ahead) is K.NAME:
            out[at] = sentence[at]._replace(kind=K.FUTURE, told=0)
        elif _ends_sets(sentence[:at]) and _tells_a_lift(_clause_ahead(sentence, at)):
            out[at] = sentence[at]._replace(kind=K.NEVER, told=BEHIND_ITS_SETS)
    return out


def _clause_ahead(sentence: list[Piece], at: int) -> list[Piece]:
    start = next((place for place in range(at, 0, -1) if sentence[place - 1].kind in CLAUSE_ENDS), 0)
    return sentence[start:at]


def _tells_a_lift(clause: list[Piece]) -> bool:
    """ "bench 3x8", and neither "2" nor "5 reps"."""
    kinds = [piece.kind for piece in clause]
    return K.TIMES in kinds or (K.NAME in kinds and not COUNTED.isdisjoint(kinds))


def _are_done(behind: Sequence[Piece]) -> bool:
    """ "squat 5x5 100 was the plan and done", "..., did it"."""
    kinds = kinds_of(behind)
    turned = any(map(turns, behind)) or not DENYING.isdisjoint(kinds) or not COUNTED.isdisjoint(kinds)
    return not turned and any(is_cued(piece.text, DONE) for piece in behind)


def _ends_sets(ahead: Sequence[Piece]) -> bool:
    """Whether sets, and at most their day, stand right ahead."""
    last = len(ahead) - 1
    while last > 0 and ahead[last].kind is K.DATE:
        last -= 1
    return last >= 0 and ahead[last].kind in ENDS_OF_SETS and not COUNTED.isdisjoint(kinds_of(ahead))


def _may_lead(piece: Piece) -> bool:
    return is_cued(piece.text, MEANT | WOULD)


def _tells_what_was_meant(told: Sequence[Piece], lead: int) -> bool:
    """Whether the word leads sets that end in one for what is to be done, or is enough by itself ahead of a lift."""
    cues = CUES_OF[told[lead].text]
    if not WOULD.isdisjoint(cues) and kind_at(told, lead + 1) is K.NAME:
        return True
    if MEANT.isdisjoint(cues):
        return False
    end = lead + 1
    while end < len(told) and told[end].kind in SETS | DAYS and not is_cued(told[end].text, TO_BE_DONE):
        end += 1
    kinds = kinds_of(told[lead + 1 : end])
    return end < len(told) and is_cued(told[end].text, TO_BE_DONE) and {K.NAME, K.NUMBER} <= kinds


def _still_on(told: Sequence[Piece]) -> int:
    """The place of "on" in "squat 5x5 100 was on but"; 0 for none."""
    for at in range(2, len(told) - 1):
        if is_cued(told[at].text, ON) and is_cued(told[at - 1].text, WAS) and _ends_sets(told[: at - 1]):
            return at if turns(told[at + 1]) or told[at + 1].kind in CLAUSE_ENDS else 0
    return 0


def _put_off(told: Sequence[Piece]) -> int:
    """The place of "moved" in "squat 5x5 100 moved to friday", of "verschoben" behind its day; 0 for none."""
    for at in range(2, len(told)):
        if not _says_put_off(told[at]) or not COUNTED.isdisjoint(kinds_of(told[at:])):
            continue
        behind = [piece.kind for piece in told[at + 1 : at + 3]]
        led = behind[:1] != [] and behind[0] in LEADING and behind[1:] != [] and behind[1] in WHEN
        if led and _ends_sets(told[:at]):
            return at
        day = [piece.kind for piece in told[at - 2 : at]]
        if day[0] in LEADING and day[1] in WHEN and _ends_sets(told[: at - 2]) and not behind:
            return at
    return 0


def _says_put_off(piece: Piece) -> bool:
    """ "moved", and not "moved well"."""
    return piece.kind in WORDS and is_cued(piece.text, PUT_OFF)


WORDS = frozenset((K.FILLER, K.PLAIN))
LEADING = frozenset((K.FILLER, K.NOT_DATE, K.WITH, K.FOR, K.PLAIN, K.BY))
WHEN = frozenset((K.DATE, K.WEEKDAY, K.TOMORROW, K.FUTURE))


def _last_day(told: Sequence[Piece]) -> bool:
    """Whether a day ends the clause right behind the word that leads to it, "squat 5x5 100 to friday"."""
    kinds = [piece.kind for piece in told]
    led = kinds[-2:-1] == [K.FILLER] and not COUNTED.isdisjoint(kinds)
    return kinds[-1] is K.DATE and led and kinds.count(K.DATE) == 1

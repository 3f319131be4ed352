"""Sets that may be none of today's own, and are asked: behind somebody's name, or told as what one does these days.

line = WORD ":" LIFT ...        WORD: one that no list knows, and not the writer's own name    tom: bench 3x8 60
     | WORD ":" line end, above lines of lifts                                         tom: / bench 3x8 60
     | WORD DID sets                                          one that may be somebody           tom got 100x3 on bench
     | ... LIFT-ING ...         a lift told as a habit                                 still squatting 100 for 5
     | a statement, or somebody who did better (`statements.py`)                        30 sec plank is boring
"""

from __future__ import annotations

from engine.reading.prepare import Prepared
from engine.reading.talk.handed_plans import may_head_a_plan
from engine.reading.talk.on_for_a_day import may_be_on_for_a_day
from engine.reading.talk.sets_of_whom import told_as_theirs
from engine.reading.talk.somebody import may_be_somebody
from engine.reading.talk.statements import (
    MAY_BE_WHO,
    beaten_by,
    done_by,
    is_a_statement,
    may_be_ahead,
    may_count_others,
)
from engine.reading.talk.supposed import may_be_supposed
from engine.reading.talk.undone_after_all import may_be_undone
from engine.reading.values import Asked, Context, Doubt, Logged, Reading
from engine.reading.wording import label_of
from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.people import is_somebody, possessor
from engine.reading.words.pieces import kinds_in_order, places_of

SHORTEST, LONGEST = 3, 14
"""Letters of a name; shorter words in front of a colon are labels. Common practice, no source."""


def asked_whose(logged: Logged, prepared: Prepared, context: Context) -> Logged | Asked:
    """The sets, or the question whose they are where a line begins with a name that is not the writer's."""
    if logged.days:
        return logged  # a question holds one day
    denied = not context.recent and _denies_a_lift(prepared)
    if denied or _may_be_ahead(prepared) or _is_a_habit(prepared) or _is_stated(prepared):
        return asked_if_done(logged, prepared)
    name = _named(prepared, context) or _told_of_others(prepared) or _told_as_theirs(prepared, context)
    name = name if name and ("\n" not in prepared.cleaned.strip() or _heads_all(prepared)) else ""
    name = name or _heads_some(prepared, context)
    if not name:
        return logged
    label = label_of(logged.sets)
    other = "somebody else" if not NOBODY_NAMED.isdisjoint(CUES_OF[name.lower()]) else possessor(name)
    said = f"Whose sets are these, yours or {other}’s? {label}. Nothing is saved yet."
    mine = (Reading(logged.sets, 1.0, label),)
    return Asked(said, mine, Doubt.WHOSE, name, logged.on, logged.note, logged.pain, typed=name)


def _heads_all(prepared: Prepared) -> bool:
    """ "tom:" alone on the first line: the lines below it are of one turn."""
    if [piece.kind for piece in prepared.spoken[:3]] != A_TURN or not is_somebody(prepared.spoken[0]):
        return False
    return CUES_OF[prepared.spoken[0].text] <= MAY_BE_A_NAME  # "planned:" heads a plan


def _heads_some(prepared: Prepared, context: Context) -> str:
    """ "squat 100x5 // tom: // bench 80x5": who heads a later part, as typed; empty where nobody may."""
    if not prepared.told >= LABELLED:
        return ""
    kinds = kinds_in_order(prepared.spoken)
    for at in places_of(K.COLON, kinds):
        heads = at > 1 and kinds[at - 2] in PARTING and kinds[at - 1] is K.PLAIN
        if heads and kinds[at + 1 : at + 2] in HEADED:
            word = prepared.spoken[at - 1]
            typed = prepared.cleaned[word.start : word.end]
            if is_somebody(word) and CUES_OF[word.text] <= MAY_BE_A_NAME and _is_another(typed, context):
                return typed
    return ""


def _is_another(typed: str, context: Context) -> bool:
    """Whether it is as long as a name, and not her own."""
    return typed.isalpha() and SHORTEST <= len(typed) <= LONGEST and typed.casefold() not in _own_names(context)


def _own_names(context: Context) -> list[str]:
    return context.called.casefold().split()


LABELLED = frozenset((K.PLAIN, K.COLON))
PARTING = frozenset((K.LINE, K.COMMA, K.STOP))
HEADED = ([K.LINE], [K.NAME])
A_TURN = [K.PLAIN, K.COLON, K.LINE]
MAY_BE_A_NAME = frozenset(("alsoaname",))


def _denies_a_lift(prepared: Prepared) -> bool:
    """ "no squat 5x5 100 today": told of what was not done; behind other sets it puts their lift right."""
    ahead = prepared.spoken[:3]
    denied = [piece.kind for piece in ahead] == [K.DENY, K.NAME, K.NUMBER] and "nottoday" in CUES_OF[ahead[0].text]
    return denied and K.TODAY in prepared.told


def _is_a_habit(prepared: Prepared) -> bool:
    """ "still squatting 100 for 5" may tell what she can do; "benching 60x8 today" tells of a set."""
    if HABITUALLY not in prepared.cleaned.lower() or not TODAY.isdisjoint(prepared.told):
        return False
    return any([piece.text.endswith(HABIT) for piece in prepared.spoken if piece.kind is K.NAME])


def _may_be_ahead(prepared: Prepared) -> bool:
    if prepared.cleaned.lower().startswith(NEXT_UP) or _is_an_invitation(prepared):
        return True
    if prepared.told <= NUMBERS_AND_SIGNS:
        return False
    pieces = prepared.spoken
    if may_be_on_for_a_day(pieces) or may_head_a_plan(pieces) or may_be_supposed(pieces):
        return True
    if may_be_undone(pieces, prepared.cleaned):
        return True
    return may_be_ahead(prepared.spoken, prepared.tokens)


def _is_stated(prepared: Prepared) -> bool:
    if K.PLAIN in prepared.told and (may_count_others(prepared.spoken) or _is_a_riddle(prepared)):
        return True
    return not SAYING_HOW_IT_IS.isdisjoint(prepared.told) and is_a_statement(prepared.spoken)


def _is_a_riddle(prepared: Prepared) -> bool:
    """ "guess who did 120 for 4: tom": whose they are stands behind; without a word there they are hers."""
    return any("riddle" in CUES_OF[piece.text] for piece in prepared.spoken[:2])


def _told_of_others(prepared: Prepared) -> str:
    """ "my sister beat me, 12 push ups", "bench 60x8, 70x8 my sister": she, as typed; empty where nobody is told."""
    if MAY_BE_WHO.isdisjoint(prepared.told):
        return ""
    who = beaten_by(prepared.spoken) or done_by(prepared.spoken)
    return prepared.cleaned[who.start : who.end] if who is not None else ""


def _told_as_theirs(prepared: Prepared, context: Context) -> str:
    """ "squat 3x5 60 for tove", "tove - squat 3x5 60": whom they are told of, as typed; empty for nobody but her."""
    if MAY_BE_THEIRS.isdisjoint(prepared.told):
        return ""
    who = told_as_theirs(prepared.spoken)
    typed = prepared.cleaned[who.start : who.end] if who is not None else ""
    return "" if possessor(typed.casefold()) in context.called.casefold().split() else typed


MAY_BE_THEIRS = frozenset((K.PLAIN, K.OTHERS, K.NOT))
NOBODY_NAMED = frozenset(("him", "myturn", "my"))


def _is_an_invitation(prepared: Prepared) -> bool:
    """ "saturday: 3x5 squat 100, who is in?": a day as a heading and a question to others behind tell of a plan."""
    pieces = prepared.spoken
    if not prepared.cleaned.rstrip().endswith("?") or TODAY.isdisjoint(prepared.told) or K.COLON not in prepared.told:
        return False
    ends = [at for at, piece in enumerate(pieces) if piece.kind in (K.COMMA, K.STOP, K.DASH)]
    behind = pieces[ends[-1] + 1 :] if ends else []
    return bool(behind) and "who" in CUES_OF[behind[0].text.removesuffix("s").removesuffix("'")]


def asked_if_done(logged: Logged, prepared: Prepared) -> Asked:
    label = label_of(logged.sets)
    said = f"Did you do that? {label}. Nothing is saved yet."
    done = (Reading(logged.sets, 1.0, label),)
    return Asked(said, done, Doubt.WHETHER, "", logged.on, logged.note, logged.pain, typed=prepared.cleaned.strip())


NUMBERS_AND_SIGNS = frozenset((K.NAME, K.NUMBER, K.TIMES, K.COMMA, K.AT, K.LINE, K.KG, K.LB, K.SLASH, K.WITH, K.NOTE))
SAYING_HOW_IT_IS = frozenset((K.ASKS, K.PLAIN))
NEXT_UP = "next up:"
"""At the head of a message it may announce a set as well as tell of one."""
HABIT, HABITUALLY = ("squatting", "benching", "deadlifting"), "ing"
TODAY = frozenset((K.TODAY, K.YESTERDAY, K.DATE, K.WEEKDAY, K.DAYS_AGO))


def _named(prepared: Prepared, context: Context) -> str:
    """The name in front; empty where none stands there."""
    kinds = [piece.kind for piece in prepared.spoken[:3]]
    labelled = kinds == [K.PLAIN, K.COLON, K.NAME] or _heads_all(prepared)
    first = prepared.spoken[0] if labelled else may_be_somebody(prepared.spoken)
    if first is None or "leftbehind" in CUES_OF[first.text]:
        return ""  # "missing: bench 3x8 80"
    typed = prepared.cleaned[first.start : first.end]
    return typed if _is_another(typed, context) else ""

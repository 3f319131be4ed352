"""Sets told behind a group of the same lift with "i did": more of them, or what that group came to.

retold = [ me ] DID sets "x" reps         behind 3x5 "i did 5x5" may be two sets more, five more, or five in all
       | FORGOTTEN "," sets "x" reps                  behind 3x5 "forgot one, 4x5" may be one set more, or four
       | ( DID | GOT ) reps reps ...      behind 3x8 "got 8 7 7", as many as there were sets
       | NUMBER LEFT NUMBER RIGHT         behind a set of ten "10 left 8 right" may be its sides
       | NUMBER SIDE                      behind sets of both sides "9 left", "9 on the left": what one of them came to
       | ONLY DID NUMBER                              "only did 2": of the sets before, or the reps of one more
share  = NUMBER "/" NUMBER DONE | NUMBER "/10" | NUMBER ( "of" | "/" ) FEW
                                                      alone in a message: so many of those to do, or out of ten
step   = ( UP | DOWN | "or" | ADD ) NUMBER             alone in a message: of the load, or of what stands
A word for more ("another", "then") or a load of its own makes them new ones. Parts in capitals are cues.
"""

from __future__ import annotations

from engine.reading.announced_load import is_held_up
from engine.reading.asking import question_of
from engine.reading.latest_sets import latest_of_it
from engine.reading.prepare import Prepared
from engine.reading.values import Asked, Context, Doubt, Logged, NoSets, Reading, Unread
from engine.reading.wording import label_of
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, Role, kinds_in_order
from engine.reading.words.token_walk import KNOWN
from engine.values.effort import TOP_OF_SCALE

PLAIN = frozenset((K.FILLER, K.NUMBER, K.TIMES, K.GOT, K.STOP, K.TODAY, K.DATE, K.KG, K.LB))


COUNTED = PLAIN | {K.COMMA, K.SLASH, K.AND, K.ONLY}

BOTH_SIDES = frozenset((K.LEFT, K.RIGHT))
SIDED = COUNTED | BOTH_SIDES | {K.REPS, K.WITH, K.FOR, K.LAST, K.SETS}


def asked_if_more(logged: Logged, prepared: Prepared, context: Context) -> Logged | Asked:
    """The sets, or the question whether they are more than those that stand."""
    if context.recent and not BOTH_SIDES.isdisjoint(prepared.told) and prepared.told <= SIDED:
        return _asked(logged, prepared) if _are_its_sides(logged, context) else logged
    if not context.recent or not prepared.told <= COUNTED:
        return logged
    if K.ONLY in prepared.told:
        return _asked(logged, prepared) if _only_did(logged, prepared, context) else logged
    if len(logged.sets) < 2:
        return logged
    forgot = K.TIMES in prepared.told and _forgot_some(logged, prepared, context)
    crossed = forgot or (K.TIMES in prepared.told and prepared.told <= PLAIN)
    listed = not crossed and K.GOT in prepared.told and K.THEN not in prepared.told
    told = forgot or listed or _says_did(prepared)
    same = told and (_are_of_the_group(logged, context) if crossed else _are_its_reps(logged, prepared, context))
    return _asked(logged, prepared) if same else logged


def _are_its_sides(logged: Logged, context: Context) -> bool:
    """ "10 left 8 right" behind a set of ten: what its sides came to, or one more of each; "9 left" behind sets
    without sides: of one side of theirs, or one more of that side alone.
    """
    latest = [record.done for record in latest_of_it(context)]
    today = context.now is None or context.recent[-1].on == context.now.date()
    of_it = all(one.exercise == latest[-1].exercise and one.load == latest[-1].load for one in logged.sets)
    reps = {one.reps for one in logged.sets}
    if len({one.side for one in logged.sets}) == 1:
        return today and of_it and logged.sets[0].side is not None and all(one.side is None for one in latest)
    return today and of_it and len(latest) == 1 and latest[0].side is None and latest[0].reps == max(reps)


def _asked(logged: Logged, prepared: Prepared) -> Asked:
    label = label_of(logged.sets)
    said = f"Are these more sets? {label}. If they are the ones before, say “it was” in front. Nothing is saved yet."
    more = (Reading(logged.sets, 1.0, label),)
    return Asked(said, more, Doubt.MORE, "", logged.on, logged.note, logged.pain, typed=prepared.cleaned.strip())


def _only_did(logged: Logged, prepared: Prepared, context: Context) -> bool:
    """ "only did 2", "i just did 4": a number alone; "only got 4" tells the reps of one more."""
    alone = sum(piece.kind is K.NUMBER for piece in prepared.spoken) == len(logged.sets) == 1
    return alone and _says_did(prepared) and logged.sets[0].exercise == context.recent[-1].done.exercise


def _says_did(prepared: Prepared) -> bool:
    """ "i did"; and not "then i did"."""
    told = [KNOWN[word].meaning for piece in prepared.spoken for word in piece.text.split()]
    next_ones = any(meaning is not None and meaning.kind is K.THEN for meaning in told)
    return not next_ones and any(is_cued(piece.text, DONE) for piece in prepared.spoken)


def _forgot_some(logged: Logged, prepared: Prepared, context: Context) -> bool:
    """ "forgot one, 4x5" behind three sets: the one more, or four more."""
    forgot = any(is_cued(piece.text, FORGOTTEN) for piece in prepared.spoken)
    return forgot and len(logged.sets) > len(latest_of_it(context))


def _are_of_the_group(logged: Logged, context: Context) -> bool:
    """Whether the lift and the load are those of a group that was told last; or the lift is taken to be the next one of
    the plan, whose sets are others.
    """
    latest = [record.done for record in latest_of_it(context)]
    today = context.now is None or context.recent[-1].on == context.now.date()
    first, before = logged.sets[0], latest[-1]
    grouped = len({one.reps for one in latest}) == 1 and len({one.reps for one in logged.sets}) == 1
    if first.exercise != before.exercise:
        planned = any(slot.exercise == first.exercise and slot.sets == len(logged.sets) for slot in context.plan)
        return today and grouped and first.reps == before.reps and not planned
    same = first.load == before.load
    return today and grouped and same and (first.reps == before.reps or len(latest) == len(logged.sets))


def _are_its_reps(logged: Logged, prepared: Prepared, context: Context) -> bool:
    """Whether reps alone are told, as many as the group before had sets, of one count each."""
    latest = latest_of_it(context)
    numbers = [piece for piece in prepared.spoken if piece.kind is K.NUMBER]
    today = context.now is None or context.recent[-1].on == context.now.date()
    alone = K.TIMES not in prepared.told and len(numbers) == len(logged.sets) == len(latest)
    first, group = logged.sets[0], {record.done.reps for record in latest}
    return today and alone and len(group) == 1 and first.exercise == latest[-1].done.exercise


def asked_if_sets(logged: Logged, prepared: Prepared, context: Context) -> Logged | Asked | NoSets:
    """The sets, or the question whether a number or two alone are any: "2/5 done", "8/10", "up 5", "or 6"."""
    if len(prepared.spoken) > LONGEST_ALONE:
        return logged
    if K.FILLER in prepared.told and context.recent and is_held_up(prepared.spoken):
        shown = prepared.cleaned.strip()
        return NoSets(unread=(Unread(shown, A_LOAD_ALONE),), why=A_LOAD_ALONE)
    if not (_is_a_share(prepared, context) or _is_a_step(prepared, context) or _is_affirmed(prepared, context)):
        return logged
    reading = (Reading(logged.sets, 1.0, label_of(logged.sets)),)
    asked = question_of(Doubt.WHETHER, "", reading)
    return Asked(asked, reading, Doubt.WHETHER, "", logged.on, logged.note, logged.pain, typed=prepared.cleaned.strip())


LONGEST_ALONE = 4
A_LOAD_ALONE = "no reps"


def _is_affirmed(prepared: Prepared, context: Context) -> bool:
    """ "8 reps yes", "8, yes", "yes 8 reps": of what stands, where nothing was asked, or one more set."""
    if not context.recent or not prepared.told <= AFFIRMED:
        return False
    told = [piece for piece in prepared.spoken if piece.kind not in (K.COMMA, K.STOP, K.REPS)]
    if not told:
        return False
    first, *others = told
    reps = K.REPS in prepared.told or any(piece.role is Role.REPS for piece in prepared.spoken)
    if first.kind is not K.NUMBER:
        return reps and _says_yes(first.text)
    return len(others) == 1 and _says_yes(others[0].text)


def _says_yes(word: str) -> bool:
    return is_cued(word, YES) and not is_cued(word, CHATTER)


AFFIRMED = frozenset((K.NUMBER, K.FILLER, K.REPS, K.COMMA, K.STOP))
YES, CHATTER = frozenset(("yes",)), frozenset(("chatter",))


def _is_a_share(prepared: Prepared, context: Context) -> bool:
    pieces = prepared.spoken
    first, link, last = (*kinds_in_order(pieces[:3]), None, None, None)[:3]
    if first is not K.NUMBER or link not in SHARING or last is not K.NUMBER or pieces[0].value > pieces[2].value:
        return False
    if pieces[0].value == pieces[2].value and link is K.SLASH:
        return False
    if len(pieces) > 3:
        return is_cued(pieces[3].text, DONE)
    few = bool(context.recent) and pieces[2].value <= FEW and pieces[0].role is pieces[2].role is Role.BARE
    return few or (link is K.SLASH and pieces[2].value == TOP_OF_SCALE)


SHARING = frozenset((K.SLASH, K.OF, K.OUT_OF))
FEW = 6
"""Of more sets than these nobody says how many are done. Common practice, no source."""


DONE = frozenset(("did", "finished"))
FORGOTTEN = frozenset(("leftbehind",))


def _is_a_step(prepared: Prepared, context: Context) -> bool:
    pieces = [piece for piece in prepared.spoken if not is_cued(piece.text, WEIGHT)]  # "weight up 5"
    if K.ASSISTED in prepared.told and kinds_in_order(pieces).count(K.NUMBER) == 1:
        return any(is_cued(piece.text, TAKEN) for piece in pieces)  # "took 10 off"
    if len(pieces) != 2 or pieces[1].kind is not K.NUMBER or pieces[1].role is not Role.BARE:
        return False
    if pieces[0].kind is K.NAME or pieces[1].value > MOST_LOADED_REPS:
        return False
    if is_cued(pieces[0].text, STEPS) or pieces[0].kind is K.TIMES_WORD:
        return True
    as_before = bool(context.recent) and context.recent[-1].done.reps == pieces[1].value
    return is_cued(pieces[0].text, ADDING) and pieces[1].value % PLATES == 0 and not as_before


TAKEN, WEIGHT = frozenset(("take",)), frozenset(("loadword",))
STEPS, ADDING = frozenset(("up", "down", "or")), frozenset(("add", "plus"))
PLATES = 5
"""What is put on a bar goes up in fives: "add 5" may be of the load, "add 8" is a set of eight. Common practice, no
source.
"""

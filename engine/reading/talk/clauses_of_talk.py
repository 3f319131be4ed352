"""A sentence cut at its clauses: at separators, and where the talk in front of sets or behind them ends.

"wanted 3x8 | but got 3x6", "gym closes at 9 | so bench 3x5 80", "3 coffees | and bench 3x8 80"
"""

from __future__ import annotations

from engine.reading.talk.counts import counts_other_things
from engine.reading.talk.other_lifts_planned import may_be_of_both, plan_of_another_lift
from engine.reading.words.cues import CUES_OF, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook
from engine.reading.words.pieces import COUNTED, KIND, MOST_LOADED_REPS, Piece, Role

TOLD_OF = frozenset((K.LAST, K.FIRST, K.MIDDLE, K.FROM_LAST, K.EXTREME, K.ORDINAL))
CLAUSE_ENDS = frozenset((K.COMMA, K.THEN, K.DASH))
AHEAD = frozenset((K.FUTURE, K.TOMORROW, K.OTHERS, K.STORY, K.NEVER, K.SAYING))
BEHIND = frozenset((K.FUTURE, K.TOMORROW, K.NEVER))
OPENING_ANOTHER = frozenset(
    (K.FILLER, K.PLAIN, K.MORE, K.ONLY, K.OTHERS, K.SAYING, K.AND, K.PLUS, K.SLASH, K.GOT, K.COLON)
)
LEAVING_OUT = TOLD_OF | {K.NEVER}
MAY_PART = CLAUSE_ENDS | LEAVING_OUT | OPENING_ANOTHER | {K.OPEN, K.CLOSE, K.UNRELATED, K.FUTURE, K.TOMORROW}
"""Kinds that may open a clause, or close a remark."""
NEAR = 3
LONGEST_REMARK = 20
BEHIND_ITS_SETS = 1
"""What a NEVER piece tells where it counts only right behind sets."""
REMARKING = frozenset((K.UNRELATED, K.OTHERS, K.STORY))
LONGEST_SENTENCE = 120
"""Pieces; whoever writes more without a stop lists sets, and turns no sentence. Common practice, no source."""


def clauses_of(sentence: list[Piece]) -> list[list[Piece]]:
    """The sentence's clauses, each with the separator that opens it; behind talk, "but" opens one that tells what was
    done ("skipped the extensions but did leg press").
    """
    found: list[list[Piece]] = [[]]
    step = _step_of_a_wish(sentence)
    if step:
        return [*clauses_of(sentence[:step]), sentence[step:]]
    plan = plan_of_another_lift(sentence)
    if plan and tells_a_whole_set(sentence[:plan]):
        doubt = [sentence[plan - 1]._replace(kind=K.UNCLEAR)] if may_be_of_both(sentence[plan:]) else []
        return [*clauses_of([*sentence[:plan], *doubt]), sentence[plan:]]
    turning = len(sentence) <= LONGEST_SENTENCE
    in_remark = False
    for at, piece in enumerate(sentence):
        kind = piece.kind
        if kind not in MAY_PART:
            found[-1].append(piece)
            continue
        ends = kind in CLAUSE_ENDS and not (kind is K.DASH and piece.glued)
        opens = kind is K.OPEN and at > 0 and _brackets_talk(sentence, at)
        ends = ends or opens or _turns_elsewhere(sentence, at) or _leaves_one_out(sentence, at)
        ends = ends or (turning and _turns_to_a_goal(sentence, at))
        if ends or (turning and kind in OPENING_ANOTHER and _opens_another(sentence, at)):
            subject = _subject_of(found[-1]) if kind is K.SAYING else 0
            found[-1], said = found[-1][: len(found[-1]) - subject], found[-1][len(found[-1]) - subject :]
            found.append([*said, piece])
        else:
            found[-1].append(piece)
        in_remark = in_remark or opens
        if in_remark and kind is K.CLOSE:
            in_remark = False
            found.append([])
    return found


def _subject_of(clause: list[Piece]) -> int:
    """How many words at the end of a clause may be what "says" is said of: "80x5 the app", "80x5 plan"."""
    last = len(clause)
    while last and clause[last - 1].kind in SUBJECTS:
        last -= 1
    return len(clause) - last


SUBJECTS = frozenset((K.PLAIN, K.FILLER))


def _step_of_a_wish(sentence: list[Piece]) -> int:
    """The place of the step that a whole set is to be raised by: "100x5 +2.5 next time"; 0 where none is told."""
    wish = next((at for at in range(1, len(sentence)) if sentence[at].kind in BEHIND), 0)
    step = wish - 1 if wish and sentence[wish - 1].role is Role.CHANGE else 0
    return step if step and tells_a_whole_set(sentence[:step]) and not counted(sentence[wish:]) else 0


def _leaves_one_out(sentence: list[Piece], at: int) -> bool:
    """ "squat 3x5 60 skipped the last set", "3x5 60 laatste overgeslagen": words that take one of the sets away."""
    if sentence[at].kind not in LEAVING_OUT:
        return False
    behind = [piece.kind for piece in sentence[at : at + 1 + NEAR]]
    pair = {*behind[:2], *behind[2:3]} if behind[:1] == [K.NEVER] else {*behind[:2]}
    if K.NEVER not in pair or TOLD_OF.isdisjoint(pair):
        return False
    apart = at > 0 and sentence[at - 1].kind not in LEAVING_OUT
    return apart and counted(sentence[:at]) > 0 and not counted(sentence[at:])


def _lists_sets(sentence: list[Piece], at: int) -> bool:
    """ "my kid counted my reps: bench 80x8": not theirs for sure, as "my kid: bench 80x8" is; it is asked."""
    ahead, behind = [piece.kind for piece in sentence[:at]], [piece.kind for piece in sentence[at + 1 :]]
    if K.OTHERS not in ahead[:-1] or ahead[-1] is K.OTHERS or behind[:1] != [K.NAME] or K.TIMES not in behind:
        return False
    if not COUNTED.isdisjoint(ahead):  # "coach says 3x5: bench 3x5 80": a rule, and what was done by it
        return K.NAME not in ahead and (OF_ANOTHER_TIME - {K.SAYING}).isdisjoint(ahead)
    return OF_ANOTHER_TIME.isdisjoint(ahead)


OF_ANOTHER_TIME = (AHEAD - {K.OTHERS}) | {K.ASKS}


def _turns_elsewhere(sentence: list[Piece], at: int) -> bool:
    """ "12, 12, 10 pulse 150": the number in front is a set's, the one behind the word is not."""
    if sentence[at].kind is not K.UNRELATED or at == 0 or sentence[at - 1].kind is not K.NUMBER:
        return False
    behind = [piece.kind for piece in sentence[at + 1 : at + 1 + NEAR]]
    told = next((kind for kind in behind if kind in COUNTED or kind is K.NAME), None)
    return told in COUNTED


def _turns_to_a_goal(sentence: list[Piece], at: int) -> bool:
    """ "squat 3x5 90 goal is 100", "80x5 could have made 6": a wish with its own number behind sets with their load."""
    word = sentence[at]
    if word.kind is K.NEVER and word.told == BEHIND_ITS_SETS:
        return False  # "squat 5x5 100 was on today but did 5x3 90"
    if word.kind is K.NEVER:
        paired = [piece.kind for piece in sentence[at + 1 :] if piece.kind is not K.FILLER][:2] == [K.NUMBER, K.TIMES]
        would = "would" in CUES_OF[word.text] and counted(sentence[at:]) > 0
        return (would or paired) and tells_a_whole_set(sentence[:at])
    if word.kind not in TIMES_AHEAD:
        return False
    behind = [piece.kind for piece in sentence[at + 1 :]]
    if K.TIMES in behind and K.NAME not in behind and tells_a_whole_set(sentence[:at]):
        return True  # "100x5 should be good for 110x5"
    if word.kind is K.TOMORROW:
        return False
    told = [kind for kind in behind if kind not in LEADING_TO_A_GOAL]
    led = behind[:1] == [K.NUMBER] or (told[:1] == [K.NUMBER] and K.TIMES not in told)
    return led and tells_a_whole_set(sentence[:at])


TIMES_AHEAD = frozenset((K.FUTURE, K.TOMORROW))
LEADING_TO_A_GOAL = frozenset((K.FILLER, K.FOR, K.GOT))
""" "bench 80x5 will go for 82.5 on friday"."""


def tells_a_whole_set(ahead: list[Piece]) -> bool:
    """Whether a load and its reps, or a lift with three numbers, stand in front, and nothing says that they are not
    done: "100x5", "squat 3x5 100".
    """
    kinds = [piece.kind for piece in ahead]
    if K.NAME in kinds and counted(ahead) >= LEAST_OF_A_WHOLE:
        worded = any(piece.role is Role.SETS for piece in ahead) and AHEAD.isdisjoint(kinds)  # "3 sets of 8 with 70"
        if K.TIMES in kinds or worded:
            return True
    if AHEAD.isdisjoint(kinds) and _lists_reps_at_a_load(ahead, kinds):
        return True
    if K.TIMES not in kinds or not AHEAD.isdisjoint(kinds):
        return False
    load = kinds.index(K.TIMES) - 1
    return load >= 0 and ahead[load].kind is K.NUMBER and ahead[load].value > MOST_LOADED_REPS


def _lists_reps_at_a_load(ahead: list[Piece], kinds: list[K]) -> bool:
    """ "t-bar row 50-9-9-8", "bench 60kg 8"."""
    numbers = [piece for piece in ahead if piece.kind is K.NUMBER]
    if K.NAME not in kinds or K.TIMES in kinds or len(numbers) < LEAST_OF_A_WHOLE - 1:
        return False
    loaded = numbers[0].value > MOST_LOADED_REPS and numbers[0].role in (Role.BARE, Role.LOAD)
    return loaded and all(one.value <= MOST_LOADED_REPS and one.role in OF_REPS for one in numbers[1:])


OF_REPS = frozenset((Role.BARE, Role.REPS))


def parted_from_remarks(clauses: list[list[Piece]]) -> list[list[Piece]]:
    """The clauses, with whole sets parted from words about another time behind them, so that they are asked about."""
    parted: list[list[Piece]] = []
    for clause in clauses:
        told = _sets_ahead_of_a_remark(clause)
        parted += [[*clause[:told], clause[told - 1]._replace(kind=K.UNCLEAR)], clause[told:]] if told else [clause]
    return parted


def _sets_ahead_of_a_remark(clause: list[Piece]) -> int:
    """The place behind whole sets that words, or a number of its own, part from a time to come or past: "squat 3x5 100
    more chalk next time", "squat 3x5 100 my best is 130"; 0 for others, "squat 3x5 105 next week".
    """
    cue = next((at for at, piece in enumerate(clause) if _is_of_another_day(piece)), 0)
    if not cue:
        return 0
    for at in range(2, cue + 1):
        ends = clause[at - 1].kind in ENDS_OF_A_SET and clause[at].kind not in GOING_ON
        if ends and _may_be_whole(clause[:at]):
            words = {K.MORE if is_cued(piece.text, UP) else piece.kind for piece in clause[at:cue]}
            own = counted(clause[at:]) > 0 and not {K.TIMES, K.NAME} & {piece.kind for piece in clause[at:]}
            return at if own or clause[cue].kind is K.NEVER or not words.isdisjoint(SAYING_MORE) else 0
    return 0


def _is_of_another_day(piece: Piece) -> bool:
    """ "next time", "my best", "could have done more"."""
    return piece.kind in OF_ANOTHER_DAY or (piece.kind is K.NEVER and is_cued(piece.text, WOULD))


def _may_be_whole(ahead: list[Piece]) -> bool:
    """Whether sets stand there that may be done: with their load, or a list of reps, "pull ups 10 8 7"."""
    kinds = [piece.kind for piece in ahead]
    listed = K.NAME in kinds and counted(ahead) >= LEAST_OF_A_LIST and AHEAD.isdisjoint(kinds)
    return tells_a_whole_set(ahead) or listed


GOING_ON = frozenset((K.NUMBER, K.TIMES, K.COMMA, K.AT, K.SLASH, K.DASH, K.KG, K.LB, K.REPS, K.SETS, K.FOR, K.EFFORT))
WOULD = frozenset(("would",))
LEAST_OF_A_LIST = 2
OF_ANOTHER_DAY = BEHIND - {K.NEVER} | {K.STORY}
SAYING_MORE = frozenset((K.PLAIN, K.NOTE, K.UNRELATED, K.HEADING, K.REST, K.FAR, K.MUSCLE, K.JOINT, K.MORE))
UP = frozenset(("up",))
LEAST_OF_A_WHOLE = 3
"""Sets, reps and a load."""


def _brackets_talk(sentence: list[Piece], at: int) -> bool:
    """ "(pulse 150)", "(gym closes at 9)", "(2 guys waiting)": a remark in brackets that counts no sets of hers, as
    those of "(my dad 60x5)" are not.
    """
    inside = []
    for piece in sentence[at + 1 : at + 1 + LONGEST_REMARK]:
        if piece.kind is K.CLOSE:
            break
        inside.append(piece)
    kinds = [piece.kind for piece in inside]
    if K.NAME not in kinds and (kinds[:1] == [K.STORY] or kinds[:2] == [K.OTHERS, K.NUMBER]):
        return True  # "(old best 75x5)"
    counts = not COUNTED.isdisjoint(kinds)
    if K.NAME in kinds and not counts and not TELLING_OF_ANOTHER_TIME.isdisjoint(kinds):
        return True  # "(rows tomorrow)", "(skipped lunges)"
    if K.NAME in kinds and counts and not BEHIND.isdisjoint((kinds[0], kinds[-1])):
        return tells_a_whole_set(sentence[:at])  # "(bench 3x8 65 still to go)"
    planned = not BEHIND.isdisjoint(kinds) and (counts or not TOLD_FOR_THEN.isdisjoint(kinds))
    cued = planned or not REMARKING.isdisjoint(kinds) or counts_other_things(inside, kinds)
    return cued and K.TIMES not in kinds and K.NAME not in kinds


TELLING_OF_ANOTHER_TIME = AHEAD | {K.EARLIER, K.LAST_TIME}
TOLD_FOR_THEN = frozenset((K.MORE, K.SAME, K.PLAIN, K.NOTE, K.UNRELATED, K.REST, K.HEADING, K.MUSCLE))
"""What a bracket says of another time, "(more tomorrow)", where the time alone says it of the sets: "(tomorrow)"."""


def _opens_another(sentence: list[Piece], at: int) -> bool:
    """ "wanted 3x8 but got 3x6", "3x5 80 but next week 85", "bench 80x5 and my mate did 100x5"."""
    piece = sentence[at]
    if piece.kind is K.COLON:
        return _lists_sets(sentence, at)
    if piece.kind in ADDING and _goes_on_with_others(sentence, at):
        return True
    if piece.kind is K.AND:
        return _goes_on_with_me(sentence, at) or _goes_on_behind_things(sentence, at)
    if piece.kind is K.GOT or (piece.kind is K.FILLER and is_cued(piece.text, DID)):
        wished = any(one.kind is K.FUTURE or tells_a_plan(one) for one in sentence[:at])
        ends = sentence[at - 1].kind in ENDS_OF_A_SET or (
            sentence[at - 1].kind is K.NAME and counted(sentence[:at]) > 0
        )
        return wished and ends and counted(sentence[at:]) > 0
    if piece.text in phrasebook().cues["thatiswhy"]:
        return _goes_on_with_sets(sentence, at)
    if piece.kind in OF_OTHERS:
        return _somebody_else_did(sentence, at) if piece.kind is K.OTHERS else _says_so(sentence, at)
    ahead, behind = sentence[:at], sentence[at + 1 :]
    if turns(piece):
        cued = any(one.kind in AHEAD for one in ahead)
        return _tells_what_was_done(behind) if cued else counted(ahead) > 0 and any(one.kind in AHEAD for one in behind)
    return False


DID = frozenset(("did",))


def tells_a_plan(piece: Piece) -> bool:
    """ "plan was", "the plan was"; other stories tell of old lifts."""
    return piece.kind is K.STORY and piece.text in PLANNED_THEN


PLANNED_THEN = frozenset(("plan", "the"))


def _somebody_else_did(sentence: list[Piece], at: int) -> bool:
    """ "bench 80x5 my mate did 100x5", "bench 60x8 my brother 70x8", "bench 80x5 coach wants 85x5"."""
    ahead, behind = sentence[:at], sentence[at + 1 :]
    if not counted(ahead) or not counted(behind):
        return False
    if sentence[at - 1].kind in BEFORE_THEIRS and behind[0].kind in COUNTED:
        return True  # "bench 60x8 my brother 70x8"
    if behind[0].text in phrasebook().cues["didso"] or (behind[0].kind is K.NAME and behind[0].text.endswith("ed")):
        return True
    told = _up_to_the_numbers(behind)
    if any(not {"me", "tome", "doneto"}.isdisjoint(CUES_OF[piece.text]) for piece in told):
        return False  # "bench 80x5 my mate spotted me for 85x5"
    was = bool(told) and (is_cued(told[-1].text, WAS) or told[-1].kind is K.STORY)  # "hers was 60x5", "her pr is 60x5"
    return tells_a_whole_set(ahead) and (was or any(is_cued(piece.text, DOING_OR_WANTING) for piece in told))


def _up_to_the_numbers(behind: list[Piece]) -> list[Piece]:
    """The words from here to the numbers; none where the clause ends before them, or they are far."""
    first = next((at for at, piece in enumerate(behind) if piece.kind in COUNTED or piece.kind in CLAUSE_ENDS), 0)
    return behind[:first] if first <= NEAR and behind[first].kind in COUNTED else []


def _says_so(sentence: list[Piece], at: int) -> bool:
    """ "bench 80x5 app says 85x5", "bench 80x5 the plan has 85x5"; "bench 80x5 video 85x5" was filmed."""
    if "shown" in CUES_OF[sentence[at].text] or not tells_a_whole_set(sentence[:at]):
        return False
    behind = [piece.kind for piece in sentence[at + 1 :] if piece.kind is not K.FILLER]
    return behind[:2] == [K.NUMBER, K.TIMES]


WAS = frozenset(("was", "were"))
DOING_OR_WANTING = frozenset(("theydo", "did", "atit", "theywant"))


OF_OTHERS = frozenset((K.OTHERS, K.SAYING))
ADDING = frozenset((K.AND, K.PLUS, K.SLASH))


def _goes_on_with_others(sentence: list[Piece], at: int) -> bool:
    """ "bench 60x8 plus my brother 60x8", "and he 80x5", "& my mate the same": another's sets behind hers."""
    told = [piece for piece in sentence[at + 1 :] if piece.kind is not K.FILLER]
    if told and told[0].kind in BEHIND and counted(told) > 0 and tells_a_whole_set(sentence[:at]):
        return True  # "squat 100x5 and tomorrow bench 60x8"
    other = bool(told) and told[0].kind is K.OTHERS and counted(sentence[:at]) > 0
    return other and bool(told[1:]) and (told[1].kind in COUNTED or told[1].kind is K.SAME)


def _goes_on_with_me(sentence: list[Piece], at: int) -> bool:
    """ "my mate benched 100x5 and i did 80x5"."""
    others = any(piece.kind is K.OTHERS for piece in sentence[:at])
    me = at + 1 < len(sentence) and "me" in CUES_OF[sentence[at + 1].text]
    return others and me and counted(sentence[at:]) > 0


ENDS_OF_A_SET = frozenset((K.NUMBER, K.COUNT, K.KG, K.LB, K.REPS, K.SETS))
BEFORE_THEIRS = ENDS_OF_A_SET | {K.NAME, K.NOTE, K.EARLIER, K.NOT_DATE}
""" "60x8 my brother 70x8", "60x8 vs his 70x8"."""


def _goes_on_behind_things(sentence: list[Piece], at: int) -> bool:
    """ "3 coffees and bench 3x8 80"."""
    ahead = sentence[:at]
    return counts_other_things(ahead, [one.kind for one in ahead]) and _goes_on_with_sets(sentence, at)


def _goes_on_with_sets(sentence: list[Piece], at: int) -> bool:
    """ "gym closes at 9 so only bench 3x8 80": a reason, then a lift and its sets."""
    told = [piece.kind for piece in sentence[at + 1 :] if piece.kind not in (K.FILLER, K.ONLY, K.NOTE)]
    if told[:2] == [K.NAME, K.NUMBER] and K.TIMES in told and _says_that_i_did(sentence, at):
        return True
    ahead = [piece.kind for piece in sentence[:at]]
    if K.OTHERS in ahead and ABOUT_OTHERS.issuperset(ahead):
        return told[:2] == [K.NAME, K.NUMBER] and K.TIMES in told  # "my kid was sick so only bench 3x8 80"
    paired = told[:2] == [K.NUMBER, K.TIMES] and counts_other_things(sentence[:at], ahead)
    return (
        (paired or told[:1] == [K.NAME]) and K.TIMES in told and K.TIMES not in ahead and not COUNTED.isdisjoint(ahead)
    )


def _says_that_i_did(sentence: list[Piece], at: int) -> bool:
    """ "my coach says 3x8 so i did rdl 3x8 90": somebody's rule, then what was done by it."""
    if not any(piece.kind is K.OTHERS for piece in sentence[:at]):
        return False
    who = [piece.text for piece in sentence[at + 1 : at + 3]]
    return len(who) > 1 and "me" in CUES_OF[who[0]] and "didso" in CUES_OF[who[1]]


ABOUT_OTHERS = frozenset((K.OTHERS, K.NEVER, K.FILLER, K.PLAIN, K.NOTE, K.UNRELATED, K.COMMA))


def turns(piece: Piece) -> bool:
    return piece.kind in TURNING and piece.text in phrasebook().cues["but"]


TURNING = frozenset((K.FILLER, K.PLAIN, K.MORE, K.ONLY))
"""Kinds of the word for "but": in French it is the Portuguese "more", in Dutch "only", too."""


def _tells_what_was_done(clause: list[Piece]) -> bool:
    named = bool(clause) and clause[0].kind is K.NAME and AHEAD.isdisjoint([piece.kind for piece in clause])
    did = named or any(piece.kind in (K.GOT, K.ONLY) for piece in clause)
    did = did or not phrasebook().cues["didso"].isdisjoint(piece.text for piece in clause)
    return counted(clause) > 0 and (did or _is_pair(clause))


def _is_pair(clause: list[Piece]) -> bool:
    """ "hoped for 5 but 100x4"."""
    told = [piece.kind for piece in clause if piece.kind is not K.FILLER]
    return told[:2] == [K.NUMBER, K.TIMES] and AHEAD.isdisjoint(told)


def counted(pieces: list[Piece]) -> int:
    return sum(map(COUNTED.__contains__, map(KIND, pieces)))

"""What a message means: sets to log, a question, an intent, a correction, or nothing for the log.

prepare the pieces -> an intent? -> a correction? -> leave talk aside -> cut at the names -> candidate readings ->
one outcome
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import date
from itertools import pairwise

from engine.catalogue.catalogue import Catalogue
from engine.reading.alternatives import either_of
from engine.reading.announced_count import asked_how_many
from engine.reading.asking import as_typed, asked_of, nothing_read, question_of
from engine.reading.bracketed_efforts import with_efforts_in_brackets
from engine.reading.chunks.repeats import SAYS_WEIGHT
from engine.reading.continuing import gone_on, in_hand, with_latest_in_hand
from engine.reading.corrections.corrections import correction_of
from engine.reading.corrections.nothing_changed import SURELY
from engine.reading.days.dates import said_freely
from engine.reading.days_in_doubt import asked_if_that_day, without_a_day_ahead
from engine.reading.entries.entry import Entry
from engine.reading.entries.segments import entries
from engine.reading.later_today import asked_if_later
from engine.reading.lexing.too_many import MOST_NAMES
from engine.reading.lift_before import asked_if_other_lift
from engine.reading.marks.efforts import with_efforts
from engine.reading.marks.left_out_ahead import MAY_LEAVE_OUT, with_left_out
from engine.reading.marks.pain import MAY_TELL_PAIN, tells_pain
from engine.reading.marks.reps_of_each_load import with_reps_of_each_load
from engine.reading.moved_load import AT_WHICH_LOAD, asked_at_which_load
from engine.reading.noted import NOTED, note_of
from engine.reading.one_named import with_one_named
from engine.reading.pastes import LEAST_CLEAR, LEAST_OF_A_PASTE, lines_of, passed_over, settled
from engine.reading.places_of_sets import in_their_places
from engine.reading.prepare import Prepared, prepare
from engine.reading.remark_or_set import asked_if_a_remark
from engine.reading.requests.begun import begun_request
from engine.reading.requests.part_read import UNCLEAR
from engine.reading.requests.requests import request_of
from engine.reading.requests.spelt import forgets
from engine.reading.requests.undone_further import undone_further
from engine.reading.retold import asked_if_more, asked_if_sets
from engine.reading.tables import Misfit, told_in_lines
from engine.reading.talk.left_out import sets_left_out
from engine.reading.talk.questions_behind import is_a_request, sets_before_a_question
from engine.reading.talk.statements import may_speak_of_several, speaks_of_several
from engine.reading.talk.talk import REACHED, without_talk
from engine.reading.talk.whose import asked_whose
from engine.reading.values import Act, Asked, Context, Correction, Doubt, Logged, NoSets, Outcome, Reading, Unread
from engine.reading.weighing.deciding import NONE_OF_THESE, Part, crowded, part_of
from engine.reading.weighing.planned_sets import CHANGING, as_planned
from engine.reading.wording import label_of
from engine.reading.words.kinds import K
from engine.reading.words.pieces import COUNTED, Piece, kinds_of
from engine.values.load import Load


def read(text: str, context: Context, catalogue: Catalogue) -> Outcome:
    """What the message means, as far as it can be told; never an exception, whatever the text."""
    context = in_hand(context)
    try:
        return _read(told_in_lines(text, context.unit) or text, context, catalogue)
    except Misfit as misfit:
        return NoSets(False, (Unread(str(misfit), MISFIT),), MISFIT)


def _read(text: str, context: Context, catalogue: Catalogue) -> Outcome:
    prepared = prepare(text, context, catalogue)
    if prepared.is_too_much:
        return NoSets(False, (_too_much(prepared),), TOO_MUCH)
    further = undone_further(prepared, context)
    if further is not None:
        return _done(further, prepared, context, catalogue) if further.name == UNCLEAR else further
    meant = _about_what_stands(prepared, context, catalogue)
    if isinstance(meant, Correction | Act) or (isinstance(meant, NoSets) and meant.why in SURELY):
        return meant
    again = _by_name(prepared, context, catalogue)
    if again is not None:
        return again
    asked = request_of(prepared, context, catalogue)
    if asked is not None:
        if asked.name == "repeat" and context.moved:
            return NoSets(unread=(Unread(prepared.cleaned.strip(), AT_WHICH_LOAD),), why=AT_WHICH_LOAD)
        return _done(asked, prepared, context, catalogue) if asked.name in SAID_WITH_MORE else asked
    if isinstance(meant, NoSets):
        return replace(meant, pain=tells_pain(prepared.pieces))
    outcome = _told(prepared, context, catalogue)
    outcome = asked_whose(outcome, prepared, context) if isinstance(outcome, Logged) else outcome
    outcome = asked_if_more(outcome, prepared, context) if isinstance(outcome, Logged) else outcome
    outcome = asked_at_which_load(outcome, prepared, context) if isinstance(outcome, Logged) else outcome
    outcome = in_their_places(outcome, prepared, context) if isinstance(outcome, Logged) else outcome
    outcome = asked_if_sets(outcome, prepared, context) if isinstance(outcome, Logged) else outcome
    outcome = asked_how_many(outcome, prepared, context) if isinstance(outcome, Logged) else outcome
    outcome = asked_if_a_remark(outcome, prepared) if context.recent and isinstance(outcome, Logged) else outcome
    outcome = asked_if_other_lift(outcome, prepared, context) if isinstance(outcome, Logged) else outcome
    outcome = without_a_day_ahead(outcome, prepared, context) if isinstance(outcome, Logged) else outcome
    outcome = asked_if_later(outcome, prepared, context) if isinstance(outcome, Logged) else outcome
    return asked_if_that_day(outcome, prepared) if K.DATE in kinds_of(prepared.pieces) else outcome


def _of_a_request(prepared: Prepared, why: str) -> Unread:
    return Unread(prepared.cleaned.strip(), why, of_a_request=True)


def _told(prepared: Prepared, context: Context, catalogue: Catalogue) -> Outcome:
    """The sets that go on from the latest, those of the plan, or those that are told in full."""
    told: Outcome | None = gone_on(prepared.spoken, context, catalogue)
    if told is None and K.PLANNED in prepared.told:
        told = _by_the_plan(prepared, context, catalogue)
        if isinstance(told, Asked) and not told.readings:
            told = _told_in_full(prepared, context, catalogue) or told
    if told is not None:
        return told
    meant = with_latest_in_hand(prepared.spoken, context)
    return read_sets(with_one_named(prepared, meant), meant, catalogue)


def _by_the_plan(prepared: Prepared, context: Context, catalogue: Catalogue) -> Outcome | None:
    """The planned sets with what was changed, the remarks beside them and the pain told; None where none are meant."""
    told = as_planned(with_efforts(prepared.spoken), context, catalogue)
    if not isinstance(told, Logged):
        return told
    note = None if prepared.told.isdisjoint(NOTED) else note_of(prepared.pieces, prepared)
    return replace(told, note=note, pain=tells_pain(prepared.pieces))


def _done(asked: Act, prepared: Prepared, context: Context, catalogue: Catalogue) -> Outcome:
    """The request with the pain that it tells of; or the planned sets, where something about them was changed."""
    if asked.name == UNCLEAR:
        return NoSets(tells_pain(prepared.pieces), (_of_a_request(prepared, asked.text),), asked.text)
    if asked.as_planned and not CHANGING.isdisjoint([piece.kind for piece in prepared.pieces]):
        return _by_the_plan(prepared, context, catalogue) or asked
    return replace(asked, pain=True) if tells_pain(prepared.pieces) else asked


SAID_WITH_MORE = frozenset(("skip", "swap", "done", "move", "pause", UNCLEAR))
"""Requests that pain is a reason for, or that are not understood in full."""


def _told_in_full(prepared: Prepared, context: Context, catalogue: Catalogue) -> Logged | None:
    """ "leg press 3x10 120 as planned": the sets themselves, where all of them are told and nothing is left out."""
    if K.EXCEPT in prepared.told or not {K.NAME, K.TIMES} <= prepared.told:
        return None
    kinds = [*[piece.kind for piece in prepared.pieces[1:]], None]
    bare = [
        piece
        for piece, after in zip(prepared.pieces, kinds, strict=True)
        if piece.kind is not K.PLANNED and not (piece.kind is K.SAME and after is K.PLANNED)
    ]
    found = read_sets(prepared._replace(pieces=bare, other=None), context, catalogue)
    full = isinstance(found, Logged) and all(one.load is not None for one in found.sets) and not found.unread
    return found if isinstance(found, Logged) and full else None


def _about_what_stands(prepared: Prepared, context: Context, catalogue: Catalogue) -> Outcome | None:
    """A correction of the standing sets, or that it is none that can be told."""
    if not context.recent:
        return None
    return forgets(prepared.cleaned) or correction_of(prepared, context, catalogue)


def _too_much(prepared: Prepared) -> Unread:
    return Unread(f"{prepared.cleaned[:SHOWN_OF_A_LONG_ONE].strip()}…", TOO_MUCH)


def _by_name(prepared: Prepared, context: Context, catalogue: Catalogue) -> Outcome | None:
    """ "bench again, same": with a lift named, "same" is that lift's latest set."""
    return gone_on(prepared.spoken, context, catalogue) if K.NAME in prepared.told else None


SHOWN_OF_A_LONG_ONE = 40
MISFIT = "it does not fit in its table, of which no row is saved; columns can be lift, sets, reps, load, RPE and RIR"
TOO_MUCH = "more than I can read in one message; send it in parts, a few exercises each, or all of it as a .txt file"


def read_sets(prepared: Prepared, context: Context, catalogue: Catalogue) -> Outcome:
    """The message read as sets: logged, asked or none."""
    unfinished = begun_request(prepared)
    if unfinished:
        return NoSets(tells_pain(prepared.pieces), (_of_a_request(prepared, unfinished),), unfinished)
    outcome = _read_pieces(prepared.pieces, prepared, context, catalogue)
    if prepared.other is not None:
        outcome = _either(outcome, _read_pieces(prepared.other, prepared, context, catalogue))
    if isinstance(outcome, Asked):
        outcome = _listed_or_asked(outcome, prepared, context, catalogue)
    marked = prepared.cleaned[: len(DATE_MARK)].lower() == DATE_MARK
    return _on_marked_day(outcome, prepared, context) if marked and isinstance(outcome, Logged) else outcome


def _listed_or_asked(asked: Asked, prepared: Prepared, context: Context, catalogue: Catalogue) -> Outcome:
    """The sets of two lists, loads and the reps of each; or the question with all that is open."""
    listed = with_reps_of_each_load(prepared.pieces)
    outcome = asked if listed is prepared.pieces else _read_pieces(listed, prepared, context, catalogue)
    return _with_rivals(outcome, prepared, context, catalogue) if isinstance(outcome, Asked) else outcome


def _with_rivals(asked: Asked, prepared: Prepared, context: Context, catalogue: Catalogue) -> Asked:
    """The question with the readings that other wordings of the same message give."""

    def sets_of(text: str) -> Outcome:
        return read_sets(prepare(text, context, catalogue), context, catalogue)

    return with_efforts_in_brackets(either_of(asked, prepared, sets_of), prepared, sets_of)


DATE_MARK = "date:"


def _on_marked_day(logged: Logged, prepared: Prepared, context: Context) -> Logged:
    """A day in free words behind "date:", where the grammar of days did not know it: "date: the 3rd of march"."""
    if logged.on is not None or context.now is None:
        return logged
    name = next((piece.start for piece in prepared.pieces if piece.kind is K.NAME), len(prepared.cleaned))
    told = prepared.cleaned[len(DATE_MARK) : name].partition("\n")[0].strip(" ,;:-")
    return replace(logged, on=said_freely(told, context.now, context.unit)) if told else logged


def _either(listed: Outcome, joined: Outcome) -> Outcome:
    """ "90,5x5" read both ways: where both make sense, it is asked."""
    if not isinstance(joined, Logged | Asked) or (isinstance(joined, Asked) and not joined.readings):
        return listed
    if not isinstance(listed, Logged | Asked) or (isinstance(listed, Asked) and not listed.readings):
        return joined
    told = _readings(listed)
    readings = (*told, *[one for one in _readings(joined) if one.sets not in [each.sets for each in told]])
    if len(readings) == 1:
        return listed
    total = sum(one.plausibility for one in readings) + NONE_OF_THESE
    readings = tuple(replace(one, plausibility=one.plausibility / total) for one in readings)
    base = listed if isinstance(listed, Asked) else joined
    note, pain, on = base.note, base.pain, base.on
    return Asked(question_of(Doubt.NUMBERS, "", readings), readings, Doubt.NUMBERS, "a comma", on, note, pain)


def _readings(outcome: Logged | Asked) -> tuple[Reading, ...]:
    if isinstance(outcome, Asked):
        return outcome.readings
    return (Reading(outcome.sets, 1.0, label_of(outcome.sets)),)


def _read_pieces(pieces: list[Piece], prepared: Prepared, context: Context, catalogue: Catalogue) -> Outcome:
    kinds = kinds_of(pieces)
    pain = not kinds.isdisjoint(MAY_TELL_PAIN) and tells_pain(pieces)
    if kinds.isdisjoint(COUNTED):
        lacks_reps = K.SAME in kinds and (K.NAME in kinds or K.VARIANT in kinds)
        unread = (Unread(prepared.cleaned.strip(), NO_REPS),) if lacks_reps and _says_same_weight(pieces) else ()
        return NoSets(pain, unread, "no numbers that could be sets")
    if may_speak_of_several(pieces[0]) and speaks_of_several(pieces):
        return NoSets(pain=pain, why="talk: what sets that stand were like")
    pieces = pieces if kinds.isdisjoint(MAY_LEAVE_OUT) else with_left_out(pieces)
    spoken, talk = (pieces, False) if kinds.isdisjoint(REACHED) else without_talk(pieces)
    told = entries(spoken, kinds if spoken is pieces else None)
    if not told:
        return _talk(pieces, prepared, context, catalogue, pain) if talk else NoSets(pain=pain, why="no sets")
    if len(told) > MOST_NAMES:
        return NoSets(pain, (_too_much(prepared),), TOO_MUCH)
    parts: list[Part] = []
    before: dict[str, Load | None] = {}
    for entry in told:
        part = part_of(entry, context, catalogue, before)
        parts.append(part)
        if part.readings and len(told) > 1:
            last = part.readings[0].sets[-1]
            before.pop(last.exercise, None)
            before[last.exercise] = last.load
    note = None if kinds.isdisjoint(NOTED) else note_of(pieces, prepared)
    outcome = _outcome(parts, told, note, pain, prepared, context)
    if talk and isinstance(outcome, Logged):
        return replace(outcome, unread=(*outcome.unread, *sets_left_out(pieces, spoken, prepared.cleaned)))
    return outcome


def _says_same_weight(pieces: Sequence[Piece]) -> bool:
    """ "same weight on incline"."""
    return any(piece.kind is K.SAME and piece.told & SAYS_WEIGHT for piece in pieces)


NO_REPS = "no reps to it; send the lift with its reps, for example: bench same weight 8"


def _talk(
    pieces: list[Piece], prepared: Prepared, context: Context, catalogue: Catalogue, pain: bool
) -> NoSets | Asked | Logged:
    """Talk; a set line with a question mark or a question behind it is asked about, "rdl 3x8 80?", or unread if it
    makes none.
    """
    kinds = [piece.kind for piece in pieces]
    marked = any(a is K.NUMBER and b is K.QUESTION for a, b in pairwise(kinds))
    several = K.TIMES in kinds or kinds.count(K.NUMBER) > 1 or kinds[0] is K.NAME
    several = several or (context.doing is not None and kinds[:2] == [K.NUMBER, K.QUESTION])
    doubted = kinds[0] in (K.NAME, K.NUMBER) and marked and several and not set(kinds) & TALKING
    told, wondered = sets_before_a_question(pieces)
    if not doubted and not told:
        return NoSets(pain=pain, why="talk: a question, a plan, a story or somebody else's lift")
    bare = told or [piece for piece in pieces if piece.kind is not K.QUESTION]
    meant = _read_pieces(bare, prepared, context, catalogue)
    readings = _readings(meant) if isinstance(meant, Asked | Logged) else ()
    whole = bool(readings) and all(one.load is not None for reading in readings for one in reading.sets)
    if isinstance(meant, Asked) and whole:
        return meant
    if isinstance(meant, Logged) and whole and is_a_request(wondered, prepared.cleaned):
        return meant
    if isinstance(meant, Logged) and whole and not meant.unread and not meant.days:
        asked = question_of(Doubt.WHETHER, "", readings)
        return Asked(asked, readings, Doubt.WHETHER, "", meant.on, meant.note, pain)
    if told:
        return NoSets(pain=pain, why="talk: a question about sets")
    return NoSets(pain, (Unread(prepared.cleaned.strip(), DOUBTED),), DOUBTED)


TALKING = frozenset((K.ASKS, K.FUTURE, K.TOMORROW, K.STORY, K.OTHERS, K.PLAIN))
DOUBTED = "with a question mark behind it I am not sure that it is a set; send it without"


def _outcome(
    parts: Sequence[Part], told: Sequence[Entry], note: str | None, pain: bool, prepared: Prepared, context: Context
) -> Outcome:
    if len(parts) == 1 and parts[0].readings and parts[0].doubt is None and not crowded(parts):
        return _logged(parts, told, note, pain, context, prepared)
    parts = settled(parts, told, prepared) or parts
    come_to_sets = [part for part in parts if part.readings]
    lost = [part for part in parts if not part.readings and not part.is_bare_name]
    if not come_to_sets:
        return nothing_read(lost or parts, pain, prepared)
    clear = not [part for part in come_to_sets if part.doubt is not None] and not crowded(come_to_sets)
    if clear and (not lost or _is_paste(parts, lost, told, prepared)):
        return _logged(parts, told, note, pain, context, prepared)
    return asked_of(parts, lost, told, note, pain, prepared)


def _is_paste(parts: Sequence[Part], lost: Sequence[Part], told: Sequence[Entry], prepared: Prepared) -> bool:
    """A workout of several lines or days: one bad line never costs the good lines around it."""
    several_days = len({entry.day for entry in told}) > 1
    lines = lines_of(prepared) >= LEAST_OF_A_PASTE and len(parts) - len(lost) >= LEAST_CLEAR
    return several_days or lines


BETWEEN_LINES = frozenset((K.LINE, K.STOP, K.QUESTION))


def _unread(part: Part, prepared: Prepared) -> Unread:
    pieces = [piece for piece in part.entry.pieces if piece.kind not in BETWEEN_LINES] if part.entry else []
    if not pieces or part.is_bare_name:
        return Unread(as_typed(part.term, prepared), part.why)
    start = prepared.cleaned.rfind("\n", 0, pieces[0].start) + 1
    return Unread(prepared.cleaned[start : max(piece.end for piece in pieces)].strip(), part.why)


def _logged(
    parts: Sequence[Part], told: Sequence[Entry], note: str | None, pain: bool, context: Context, prepared: Prepared
) -> Logged:
    unread = tuple([_unread(part, prepared) for part in parts if not part.readings]) + passed_over(told, prepared)
    if unread:
        told = [entry for part, entry in zip(parts, told, strict=True) if part.readings]
        parts = [part for part in parts if part.readings]
    sets = tuple([one for part in parts for one in part.readings[0].sets])
    rejected = tuple([reading for part in parts for reading in part.rejected])
    days = _days(parts, told)
    why = "the only reading" if not rejected else "the plainest reading"
    return Logged(sets, _day(told, context), note, pain, unread, rejected, why, days)


def _days(parts: Sequence[Part], told: Sequence[Entry]) -> tuple[date | None, ...]:
    """The day of each set, where the message tells more than one."""
    if len(told) < 2 or len({entry.day for entry in told}) < 2:
        return ()
    return tuple(entry.day for part, entry in zip(parts, told, strict=True) for _ in part.readings[0].sets)


def _day(told: Sequence[Entry], context: Context) -> date | None:
    days = [entry.day for entry in told if entry.day is not None]
    if not days or (context.now is not None and set(days) == {context.now.date()}):
        return None
    return days[0]
